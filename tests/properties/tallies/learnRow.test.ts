/** Whatever tests are permitted, the row that they make can be kept, read back and taught again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { checkFilament } from '../../../src/core/material/ownCheck.ts';
import { ownFrom } from '../../../src/core/material/ownFilament.ts';
import { MOST_TALLIES, type FlexTally, type MarkTally, type Tally } from '../../../src/core/material/tally.ts';
import type { Filament, OwnFilament } from '../../../src/core/material/types.ts';
import type { Learned } from '../../../src/core/tallies/learned.ts';
import { learnRow, newTests, withoutTally, withTally } from '../../../src/core/tallies/learnRow.ts';
import { readFilamentFile } from '../../../src/files/filamentFile.ts';
import { writeFilaments } from '../../../src/files/filamentText.ts';
import { flexed } from '../../support/countedLives.ts';
import { filament } from '../../support/filament.ts';
import { anyTally, anyTests } from '../../support/tallies.ts';

function rowWith(prior: Filament, tallies: readonly Tally[]): OwnFilament {
  const made = newTests(prior, 'spool', 'own-spool', '', '');
  return { ...made, own: { ...made.own, tests: { ...made.own.tests!, tallies } } };
}

describe('a row that tests have taught', () => {
  it('is one that can be kept, and comes back from a file the same', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FILAMENTS), anyTests, (prior, { tallies }) => {
        const { row: taught } = learnRow(rowWith(prior, tallies), prior);
        expect(checkFilament(taught)).toEqual([]);
        const read = readFilamentFile(writeFilaments([taught]));
        expect(read.ok && read.value[0]).toEqual(taught);
        expect(learnRow(taught, prior).row).toEqual(taught);
      }),
      { numRuns: 60 },
    );
  });
});

/** Every number anywhere in what was learned. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Figures are numbers, and each range lies about its middle. */
function expectSound({ row, learned }: { readonly row: OwnFilament; readonly learned: Learned }): void {
  expect(numbersIn([row, learned]).filter((value) => !Number.isFinite(value))).toEqual([]);
  expect(checkFilament(row)).toEqual([]);
  const said = Object.values(learned).flatMap((one) =>
    'value' in one && typeof one.value === 'object' ? [one.value] : [],
  );
  for (const quantity of [...Object.values(row.properties), ...said]) {
    if (quantity === undefined || !('typical' in quantity)) continue;
    const { typical, low = typical, high = typical } = quantity;
    expect(low).toBeLessThanOrEqual(typical);
    expect(typical).toBeLessThanOrEqual(high);
  }
}

/** Lives evenly over the decades that may be counted, the ends among them. */
const cycles = fc.oneof(
  fc.constantFrom(1, 1e9),
  fc.double({ min: 0, max: 9, noNaN: true }).map((decades) => Math.round(10 ** decades)),
);
const strip: fc.Arbitrary<FlexTally> = fc
  .tuple(
    fc.double({ min: 0.8, max: 60, noNaN: true }),
    cycles,
    fc.constantFrom('broke' as const, 'whole' as const),
    fc.boolean(),
  )
  .map(([length, count, ended, aside]) => ({ ...flexed(length, count, ended), ...(aside ? { leftOut: true } : {}) }));

const several = fc
  .array(fc.oneof(anyTally, strip), { minLength: 1, maxLength: 24 })
  .map((tallies) => tallies.map((tally, i) => ({ ...tally, id: `t-${i}` })));

/** What the tallies made of a row, without the list of them, which keeps the order of entry. */
function taughtBy(prior: Filament, tallies: readonly Tally[]) {
  const { row, learned } = learnRow(rowWith(prior, tallies), prior);
  const { life, ...others } = learned;
  const strips = life?.strips.toSorted((one, other) => (one.tally.id < other.tally.id ? -1 : 1));
  return { ...row, own: row.own.from, learned: { ...others, life: life && { ...life, strips } } };
}

describe('whatever tallies are entered', () => {
  const rows = fc.constantFrom(...FILAMENTS.filter(({ printable }) => printable));

  it('what is learned is made of figures, and each range lies about its middle', () => {
    fc.assert(
      fc.property(rows, several, (prior, tallies) => expectSound(learnRow(rowWith(prior, tallies), prior))),
      { numRuns: 100 },
    );
  });

  it('the order of entry changes nothing, to the last figure', () => {
    fc.assert(
      fc.property(
        rows,
        several.chain((tallies) =>
          fc.tuple(fc.constant(tallies), fc.shuffledSubarray(tallies, { minLength: tallies.length })),
        ),
        (prior, [tallies, shuffled]) => {
          expect(taughtBy(prior, shuffled)).toEqual(taughtBy(prior, tallies));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('adding one and removing it gives back the same row', () => {
    fc.assert(
      fc.property(rows, several, anyTally, (prior, tallies, more) => {
        const before = learnRow(rowWith(prior, tallies), prior);
        const added = learnRow(withTally(before.row, { ...more, id: 'more' }), prior);
        expect(learnRow(withoutTally(added.row, 'more'), prior)).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  it('setting one aside teaches what removing it does', () => {
    fc.assert(
      fc.property(rows, several, anyTally, (prior, tallies, more) => {
        const aside = learnRow(rowWith(prior, [...tallies, { ...more, id: 'more', leftOut: true }]), prior).row;
        const { row } = learnRow(rowWith(prior, tallies), prior);
        expect([aside.properties, aside.life, aside.laid]).toEqual([row.properties, row.life, row.laid]);
      }),
      { numRuns: 40 },
    );
  });
});

const many = (make: (index: number) => Tally): readonly Tally[] =>
  Array.from({ length: MOST_TALLIES }, (_, i) => ({ ...make(i), id: `t-${i}` }));

const over = (radius: number, looks: MarkTally['looks']): MarkTally => ({
  kind: 'mark',
  id: '',
  date: '2026-11-25',
  seen: '',
  radius,
  thickness: 0.84,
  lying: 'flat',
  looks,
});

describe('as many tallies as a row may have', () => {
  const LOOKS = ['unmarked', 'whitened', 'cracked'] as const;

  it.each([
    ['broken at one strain, all alike', many(() => flexed(10, 300))],
    ['broken at one strain on the first flex', many(() => flexed(10, 1))],
    ['broken at one strain after a billion', many(() => flexed(40, 1e9))],
    ['none broken', many((i) => flexed(5 + (i % 20), 5000, 'whole'))],
    ['none broken after a billion', many(() => flexed(100, 1e9, 'whole'))],
    ['living the longer the harder they are bent', many((i) => flexed(i % 2 ? 5 : 30, i % 2 ? 1e7 : 3))],
    [
      'living far less long where they are bent less',
      many((i) => flexed(3 + (i % 40), Math.round(10 ** (6 - (i % 40) / 8)))),
    ],
    ['all set aside', many(() => ({ ...flexed(10, 300), leftOut: true as const }))],
    ['marked and unmarked over the same bar', many((i) => over(8, LOOKS[i % 3]!))],
    [
      'marked over wide bars, unmarked over narrow ones',
      many((i) => over(1 + (i % 50), i % 50 < 25 ? 'unmarked' : 'cracked')),
    ],
    ['each over a bar of its own', many((i) => over(2 + i / 40, LOOKS[i % 3]!))],
  ])('%s', (_, tallies) => {
    for (const id of ['petg', 'tpu95a'] as const) expectSound(learnRow(rowWith(filament(id), tallies), filament(id)));
  });
});

describe('a row whose own figures leave no doubt', () => {
  it('is still taught', () => {
    const sure = ownFrom(filament('petg'), 'sure', 'own-sure');
    const properties = Object.fromEntries(
      Object.entries(sure.properties).map(([name, quantity]) => [
        name,
        { ...quantity, low: quantity.typical, high: quantity.typical },
      ]),
    ) as unknown as OwnFilament['properties'];
    const prior = { ...sure, properties, life: { ...sure.life, doubtFactor: 1 } };
    const sag = {
      kind: 'sag',
      id: 's',
      date: '2026-11-25',
      seen: '',
      lying: 'flat',
      force: 0.1,
      sag: 20,
      length: 71,
      thickness: 0.84,
      depth: 6,
    } as const;
    const tallies = [flexed(10, 30), over(20, 'cracked'), sag].map((tally, i) => ({ ...tally, id: `t-${i}` }));
    const taught = learnRow(rowWith(prior, tallies), prior);
    expectSound(taught);
    expect(taught.learned.refused).toBeUndefined();
  });
});
