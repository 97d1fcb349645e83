import { softensAt } from '../material/choose.ts';
import type { Problem } from '../problems.ts';
import type { WarmthAnswer } from './assessment.ts';
import type { Finding } from './feel.ts';
import { A_ROOM, type Joint } from './joint.ts';
import type { Understood } from './understand.ts';

/** Kelvins below where it softens at which a joint sags, and at which that is doubtful: judgement, no source. */
const ROOM_BELOW = { sags: 5, doubtful: 20 } as const;
/** Above this lives and limits, counted in a room, are said with a caution: judgement, no source [°C]. */
const WARM = 30;
const ROOM = A_ROOM.temperatureC;

/**
 * How a joint stands the warmth it is used in: by how much it stays below where its filament softens.
 *
 * @param used - where it is used, and its filament [-]
 * @returns temperatures [°C], and whether it is too cold for what is tough only above its glass transition
 */
export function warmthOf(used: {
  readonly joint: Pick<Joint, 'surroundings'>;
  readonly filament: Understood['filament'];
}): WarmthAnswer {
  const { joint, filament } = used;
  const { temperatureC } = joint.surroundings ?? A_ROOM;
  const { typical } = softensAt(filament);
  const spare = typical - temperatureC;
  const glass = filament.properties.glassTransition.typical;
  const isBrittle = glass < ROOM && temperatureC < glass;
  const grade = spare <= ROOM_BELOW.sags ? 'fail' : spare <= ROOM_BELOW.doubtful || isBrittle ? 'caution' : 'pass';
  return { temperatureC, softensAt: typical, spare, isBrittle, grade };
}

/**
 * What warmth has to do with the verdict.
 *
 * @param warmth - how it stands it [°C]
 * @returns a finding with the room that is left over the room wanted as its margin [-]
 */
export function warmthFinding({ grade, spare, isBrittle }: WarmthAnswer): Finding {
  return { grade, reason: 'warmth', margin: isBrittle ? 0 : spare / ROOM_BELOW.doubtful };
}

/**
 * Cautions that follow from where a joint is used.
 *
 * @param understood - a checked joint [-]
 * @param warmth - how it stands the warmth [°C]
 * @returns notes [-]: `softens`, `brittle-cold`, `warmer-than-counted`, `nylon-dry`, or none
 */
export function surroundingsNotes({ joint, filament }: Understood, warmth: WarmthAnswer): readonly Problem[] {
  const { temperatureC: value, softensAt: limit, grade, isBrittle } = warmth;
  const { name, properties } = filament;
  const glass = properties.glassTransition.typical;
  const notes: Problem[] = [];
  const note = (code: Problem['code'], message: string, at: number) =>
    notes.push({ code, message, field: 'surroundings.temperatureC', value, limit: at });
  if (isBrittle) note('brittle-cold', `Below ${glass} °C ${name} turns brittle; keep it warmer`, glass);
  else if (grade !== 'pass') {
    note(
      'softens',
      `${name} softens at about ${limit} °C, and it gets ${value} °C; choose one that softens later`,
      limit,
    );
  }
  if (value > WARM) {
    note('warmer-than-counted', `Lives and limits hold for ${ROOM} °C; at ${value} °C it stays bent sooner`, ROOM);
  }
  if (isDryNylon(joint, filament)) {
    const message =
      'Stiffness is that of dry nylon, the life that of damp nylon; moisture moves it by more than PA6 and PA12 differ';
    notes.push({ code: 'nylon-dry', message, field: 'surroundings.moisture', value: 'dry' });
  }
  return notes;
}

/**
 * Whether a joint is of a nylon that is kept dry.
 *
 * @param joint - where it is used [-]
 * @param filament - row of the filament table [-]
 * @returns true where its figures for damp air do not hold [-]
 */
export function isDryNylon(
  { surroundings = A_ROOM }: Pick<Understood['joint'], 'surroundings'>,
  { properties }: Pick<Understood['filament'], 'properties'>,
): boolean {
  const { youngsModulusDry, conditionedOverDryModulus } = properties;
  return surroundings.moisture === 'dry' && (youngsModulusDry ?? conditionedOverDryModulus) !== undefined;
}
