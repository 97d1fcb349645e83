import fc from 'fast-check';
import {
  MOISTURES,
  WAYS,
  type Joint,
  type Movement,
  type Part,
  type Surroundings,
  type Swing,
} from '../../src/core/design/joint.ts';
import { understand } from '../../src/core/design/understand.ts';
import type { Drive, FlexureFamily, Parameter } from '../../src/core/flexures/family.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { FIT_RULES, type PrintProfile } from '../../src/core/print/profile.ts';
import { asRad } from '../../src/core/units.ts';
import { cleanName } from '../../src/files/names.ts';
import { angle, count, length } from './generators.ts';

/** Names of every script, cleaned as reading cleans them. */
const name = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 100 })
  .map(cleanName)
  .filter((text) => text !== '');

/** Angles as typed in degrees, and angles in radians that no short figure in degrees gives back. */
const anyAngle = fc.oneof(
  angle(0.1, 360),
  length(0.002, 6.283).map(asRad),
  fc.double({ min: 0.002, max: 6.283, noNaN: true }).map(asRad),
);

const amountOf = ({ measure, min, max }: Drive): fc.Arbitrary<number> =>
  measure === 'turn' ? anyAngle.map((any) => Math.min(max, any)) : length(min, max);

/** A smaller movement of the same kind, no farther to either side. */
function besides({
  share,
  amount,
  ways,
  least,
  cycles,
}: Swing & { readonly share: number; readonly least: number }): Swing {
  if (ways !== 'between') return { amount: share * amount, ways, cycles };
  const middle = (amount * (1 + least)) / 2;
  return {
    amount: middle + share * (amount - middle),
    ways,
    least: middle + share * (least * amount - middle),
    cycles,
  };
}

const surroundings: fc.Arbitrary<Surroundings> = fc.record({
  temperatureC: length(-20, 40),
  moisture: fc.constantFrom(...MOISTURES),
});

const movementBy = (drive: Drive): fc.Arbitrary<Movement> =>
  fc
    .record({
      amount: amountOf(drive),
      ways: fc.constantFrom(...WAYS),
      cycles: count(1e9),
      held: fc.boolean(),
      chance: length(0.5, 0.99),
      effort: fc.option(length(0.01, 1000), { freq: 3 }),
      stays: fc.option(fc.boolean(), { freq: 3 }),
      hours: fc.option(length(0.1, 1000), { freq: 3 }),
      least: length(-1, 0.9),
      also: fc.option(fc.array(fc.record({ share: length(0.1, 1), cycles: count(1e6) }), { maxLength: 3 }), {
        freq: 3,
      }),
    })
    .map(({ effort, stays, hours, least, also, ...always }) => ({
      drive: drive.id,
      ...always,
      ...(always.ways === 'between' ? { least: least * always.amount } : {}),
      ...(also === null ? {} : { also: also.map(({ share, cycles }) => besides({ ...always, share, cycles, least })) }),
      ...(hours === null ? {} : { heldHours: hours }),
      ...(effort === null ? {} : { effortAtMost: effort }),
      ...(stays === null ? {} : { stays }),
    }));

const movement = ({ drives }: FlexureFamily): fc.Arbitrary<Movement> => fc.oneof(...drives.map(movementBy));

const profile = (family: FlexureFamily): fc.Arbitrary<PrintProfile> =>
  fc
    .record({
      nozzle: length(0.1, 1.5),
      line: length(0.6, 2),
      layer: length(0.45, 1),
      first: length(0.5, 1),
      lying: fc.constantFrom(...family.lyings),
      fitRule: fc.constantFrom(...FIT_RULES),
      filament: fc.constantFrom(...FILAMENTS.map(({ id }) => id)),
    })
    .map(({ nozzle, line, layer, first, ...kept }) => {
      const lineWidth = nozzle * line;
      const highest = Math.min(nozzle, lineWidth);
      return { ...kept, nozzle, lineWidth, layerHeight: highest * layer, firstLayerHeight: highest * first };
    });

const size = ({ kind, min, max }: Parameter): fc.Arbitrary<number> =>
  kind === 'count' ? fc.integer({ min, max }) : length(min, max);

const sizes = (family: FlexureFamily): fc.Arbitrary<Record<string, number>> =>
  fc.record(Object.fromEntries(Object.entries(family.parameters).map(([key, parameter]) => [key, size(parameter)])));

const jointOf = (family: FlexureFamily): fc.Arbitrary<Joint> =>
  fc
    .record({
      id: name,
      name,
      family: fc.constant(family.id),
      sizes: sizes(family),
      movement: movement(family),
      profile: profile(family),
      measured: fc.option(length(0.05, 20), { freq: 3 }),
      used: fc.option(surroundings, { freq: 3 }),
    })
    .map(({ measured, used, ...joint }) => ({
      ...joint,
      ...(used === null ? {} : { surroundings: used }),
      ...(measured === null ? {} : { measuredThickness: measured }),
    }));

const understoodOf = (families: readonly FlexureFamily[]): fc.Arbitrary<Joint> =>
  fc.oneof(...families.map(jointOf)).filter((candidate) => understand(candidate).ok);

/** A joint of any family that the core understands. */
export const joint: fc.Arbitrary<Joint> = understoodOf(FAMILIES);

/** One of a family that draws its own outline. */
export const outlinedJoint: fc.Arbitrary<Joint> = understoodOf(FAMILIES.filter((family) => 'outline' in family));

/** A part of joints that the core understands, each with its own id. */
export const part: fc.Arbitrary<Part> = fc.record({
  name,
  invented: fc.boolean(),
  joints: fc.uniqueArray(joint, { selector: ({ id }) => id, maxLength: 5 }),
});

/** Any value that JSON can hold, keys that touch prototypes included. */
export const anyJson = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.oneof(fc.constant(null), fc.boolean(), fc.double(), fc.string()),
    fc.array(tie('value'), { maxLength: 5 }),
    fc.dictionary(
      fc.oneof(fc.string(), fc.constantFrom('__proto__', 'constructor', 'part', 'joints', 'length', 'toString')),
      tie('value'),
      { maxKeys: 5 },
    ),
  ),
})).value;
