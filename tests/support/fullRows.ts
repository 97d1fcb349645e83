/** Rows of the user's own filled to the last letter: what a file may have to carry at most. */
import { PROPERTY_LIMITS, PROPERTY_NAMES } from '../../src/core/material/ownLimits.ts';
import { inOrder } from '../../src/core/material/ownFilament.ts';
import { MOST_TALLIES, type FlexTally } from '../../src/core/material/tally.ts';
import type { OwnFilament, PropertyName, Quantity } from '../../src/core/material/types.ts';
import { newTests } from '../../src/core/tallies/learnRow.ts';
import { LONGEST_KEY, LONGEST_SAID } from '../../src/core/tallies/tallyLimits.ts';
import { MAX_NAME, MAX_WORDS } from '../../src/files/names.ts';
import { flexed } from './countedLives.ts';
import { filament } from './filament.ts';

/** A letter that takes four bytes. */
const WIDE = '𝄞';

/** Figures to the last digit, and as many letters as are kept. */
function fullTally(index: number): FlexTally {
  const key = String(index).padStart(4, '0');
  return {
    ...flexed(12.345678901234567, 999_999_999),
    id: `${WIDE.repeat(LONGEST_KEY - key.length)}${key}`,
    seen: WIDE.repeat(LONGEST_SAID),
    thickness: 0.8412345678901234,
    lying: 'upright',
    ways: 'both ways',
    leftOut: true,
  };
}

const TALLIES = Array.from({ length: MOST_TALLIES }, (_, index) => fullTally(index));

/** What the row of the table does not have, at its least. */
function absent(name: PropertyName): Quantity {
  const { min, units } = PROPERTY_LIMITS[name];
  return { typical: min, unit: units[0], direction: 'any', provenance: { kind: 'memory' } };
}

/** A row with every value there is, each with all the words that are kept, and as many tallies as it may have. */
export function fullRow(index: number): OwnFilament {
  const row = newTests(filament('petg'), WIDE.repeat(MAX_NAME), `own-${index}`, '', '');
  const said = WIDE.repeat(MAX_WORDS);
  const full = (name: PropertyName): Quantity => ({
    ...(row.properties[name] ?? absent(name)),
    provenance: { kind: 'published', source: 'named-by-user', place: said },
    note: said,
  });
  const properties = Object.fromEntries(PROPERTY_NAMES.map((name) => [name, full(name)]));
  const line = WIDE.repeat(LONGEST_SAID);
  return inOrder({
    ...row,
    fullName: WIDE.repeat(MAX_NAME),
    properties: properties as unknown as OwnFilament['properties'],
    life: { ...row.life, certainty: said, note: said, provenance: { kind: 'measured', what: said } },
    own: { ...row.own, remark: said, tests: { ...row.own.tests!, printer: line, spool: line, tallies: TALLIES } },
  });
}

export const fullRows = (count: number): readonly OwnFilament[] => Array.from({ length: count }, (_, i) => fullRow(i));
