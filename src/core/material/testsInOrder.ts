/** Tests with their fields in the order in which files have them, so that the same ones give the same text. */
import type { Bend, Tally, Tests } from './tally.ts';
import type { Filament, LaidThickness } from './types.ts';

const BEND_FIELDS = ['way', 'radius', 'turn', 'length'] as const;

/** Fields of every kind of tally; each kind has some of them. */
const TALLY_FIELDS = [
  'kind',
  'id',
  'date',
  'bend',
  'countOf',
  'count',
  'set',
  'measured',
  'radius',
  'force',
  'sag',
  'length',
  'thickness',
  'depth',
  'lying',
  'ways',
  'cycles',
  'ended',
  'looks',
  'hours',
  'held',
  'left',
  'direction',
  'strength',
  'modulus',
  'seen',
  'leftOut',
] as const;

function picked(from: object, names: readonly string[]): Readonly<Record<string, unknown>> {
  const all = from as Readonly<Record<string, unknown>>;
  return Object.fromEntries(names.flatMap((name) => (all[name] === undefined ? [] : [[name, all[name]] as const])));
}

/**
 * A tally with its fields in order, and without any that are strange to all of its kinds.
 *
 * @param tally - of any kind [-]
 * @returns the same tally [-]
 */
export function tallyInOrder(tally: Tally): Tally {
  const fields = picked(tally, TALLY_FIELDS);
  const bend = 'bend' in tally ? { bend: picked(tally.bend, BEND_FIELDS) as unknown as Bend } : {};
  return { ...fields, ...bend } as unknown as Tally;
}

/** Where tests were made, and their tallies, with fields in order. */
export function testsInOrder({ printer, spool, like, tallies }: Tests): Tests {
  return { printer, spool, like, tallies: tallies.map(tallyInOrder) };
}

function thicknessInOrder({ factor, offset, sigma }: LaidThickness): LaidThickness {
  return { factor, offset, sigma };
}

/** What a ladder has told of lines and layers, with fields in order. */
export function laidInOrder({ lines, layers }: NonNullable<Filament['laid']>): NonNullable<Filament['laid']> {
  return {
    ...(lines === undefined ? {} : { lines: thicknessInOrder(lines) }),
    ...(layers === undefined ? {} : { layers: thicknessInOrder(layers) }),
  };
}
