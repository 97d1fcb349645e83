import { findDrive } from '../flexures/drives.ts';
import type { Drive, FlexureFamily } from '../flexures/family.ts';
import { outsideRange, type Problem, type Range } from '../problems.ts';
import { A_ROOM, leastOf, type Movement, type Surroundings, type Swing } from './joint.ts';

/**
 * What a movement may ask for besides how far: number of flexes [-], share of prints [-], effort [N·mm] or [N], hours held
 * at a time [h], movements beside its own [-].
 */
export const MOVEMENT_LIMITS = {
  cycles: {
    min: 1,
    max: 1e9,
    because: 'a joint flexes at least once, and once a second for thirty years is 1e9',
  },
  chance: {
    min: 0.5,
    max: 0.99,
    because: 'below one half most prints fail, and past 99 in 100 nominal data know nothing',
  },
  effortAtMost: {
    min: 0.001,
    max: 1e6,
    because: 'less is felt by nobody, and nothing from a desktop printer pushes back so hard',
  },
  heldHours: {
    min: 1 / 60,
    max: 87_600,
    because: 'less is no holding, and past ten years nothing is known',
  },
  also: { min: 0, max: 12, because: 'nobody tells more apart' },
} as const satisfies Record<'cycles' | 'chance' | 'effortAtMost' | 'heldHours' | 'also', Range>;

/** The warmest and coldest that anything printed in a filament is used in, common practice, no source [°C]. */
export const TEMPERATURE_LIMITS = {
  min: -40,
  max: 150,
  because: 'beyond, no filament of the table is known',
} as const satisfies Range;

type Drives = Pick<FlexureFamily, 'id' | 'drives'>;

function noSuchDrive({ id, drives }: Drives, drive: string): Problem {
  const possible = drives.map((one) => one.id).join(', ');
  const message = `A ${id} cannot be “${drive}”; choose from ${possible}`;
  return { code: 'not-one-of', message, field: 'movement.drive', value: drive, limit: possible };
}

type Checked = Problem | undefined;

function checkCycles(cycles: number, field: string): Checked {
  const outside = outsideRange(field, 'number of flexes', cycles, MOVEMENT_LIMITS.cycles, '');
  if (outside || Number.isInteger(cycles)) return outside;
  return { code: 'not-whole', message: `number of flexes ${cycles} is not whole; give a count`, field, value: cycles };
}

/**
 * One swing, compared in the drive's own measure and said in degrees where that is an angle: how far it goes, and back short of
 * that, and no farther to the other side than `farthest`.
 */
function checkSwing(swing: Swing, field: string, range: Range, farthest: number, unit: '°' | 'mm'): readonly Checked[] {
  const { amount, ways, cycles } = swing;
  const back = {
    min: Math.max(-amount, farthest),
    // What comes back to the very end that it goes to is no swing.
    max: amount * (1 - 1e-12),
    because: 'it comes back short of where it goes, and no farther than it or a larger swing goes',
  };
  const end = `${field}.${ways === 'between' ? 'least' : 'ways'}`;
  return [
    outsideRange(`${field}.amount`, unit === '°' ? 'angle' : 'travel', amount, range, unit) ??
      outsideRange(end, 'other end', leastOf(swing), back, unit),
    checkCycles(cycles, `${field}.cycles`),
  ];
}

/** The joint's own swing, and smaller ones beside it: none reaches farther to either side than it does. */
function checkSwings(movement: Movement, drive: Drive): readonly Checked[] {
  const { also = [], amount } = movement;
  const unit = drive.measure === 'turn' ? '°' : 'mm';
  const within = { min: drive.min, max: amount, because: 'beside the joint’s own, which goes farthest' };
  const most = MOVEMENT_LIMITS.also;
  return [
    ...checkSwing(movement, 'movement', drive, -amount, unit),
    outsideRange('movement.also', 'number of movements beside it', also.length, most, ''),
    ...also
      .slice(0, most.max)
      .flatMap((swing, i) => checkSwing(swing, `movement.also[${i}]`, within, leastOf(movement), unit)),
  ];
}

/** A figure that need not be given. */
function checkGiven(
  name: 'effortAtMost' | 'heldHours',
  what: string,
  value: number | undefined,
  unit: '' | 'h',
): Checked {
  return value === undefined ? undefined : outsideRange(`movement.${name}`, what, value, MOVEMENT_LIMITS[name], unit);
}

/**
 * What is wrong with where a joint is used; empty when nothing is.
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`.
 *
 * @param surroundings - temperature [°C], −40 to 150; a room when absent
 * @returns refusals [-] with the field `surroundings.temperatureC`
 */
export function checkSurroundings({ temperatureC }: Surroundings = A_ROOM): Problem[] {
  const outside = outsideRange('surroundings.temperatureC', 'temperature', temperatureC, TEMPERATURE_LIMITS, '°C');
  return outside ? [outside] : [];
}

/**
 * What is wrong with the figures of a movement; empty when it can be assessed.
 *
 * Problems: `not-one-of` (no such drive), `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`.
 *
 * @param movement - what is wanted: amount [rad] or [mm] within its drive's limits; other end of the swing, −amount to less than
 *   the amount; at most 12 more within it; cycles [-], whole, 1 to 1e9; chance [-], 0.5 to 0.99; effort [N·mm] or [N], 0.001 to
 *   1e6; time held [h], a minute to ten years
 * @param family - the kind of flexure, as far as its drives go [-]
 * @returns refusals [-] whose fields begin with `movement.`, as in `movement.also[1].amount`
 */
export function checkMovement(movement: Movement, family: Drives): Problem[] {
  const { effortAtMost, heldHours } = movement;
  const drive = findDrive(family, movement.drive);
  return [
    ...(drive
      ? checkSwings(movement, drive)
      : [noSuchDrive(family, movement.drive), checkCycles(movement.cycles, 'movement.cycles')]),
    outsideRange('movement.chance', 'chance', movement.chance, MOVEMENT_LIMITS.chance, ''),
    checkGiven('effortAtMost', 'effort at most', effortAtMost, ''),
    checkGiven('heldHours', 'time held', heldHours, 'h'),
  ].filter((problem) => problem !== undefined);
}
