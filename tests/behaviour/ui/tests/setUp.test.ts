/** A test that was proposed stands in the sentence as it was proposed, and goes on with the very strip that it names. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FlexTally } from '../../../../src/core/material/tally.ts';
import { newTests, withTally } from '../../../../src/core/tallies/learnRow.ts';
import { radians } from '../../../../src/core/units.ts';
import { FIRST_TESTS, useTests } from '../../../../src/store/tests.ts';
import { setUp } from '../../../../src/ui/tests/next/setUp.ts';
import { isSpool, trialNow, type Trial } from '../../../../src/ui/tests/trial.ts';
import { flexed } from '../../../support/countedLives.ts';
import { made } from '../../../support/coupons.ts';
import { filament } from '../../../support/filament.ts';

const PIECES = (['comb', 'radii', 'creases'] as const).map((id) => made(id));
const FOLDS = made('creases').strips;

function trialWith(...tallies: readonly FlexTally[]): Trial {
  const empty = newTests(filament('petg'), 'spool', 'own-spool', '', '');
  const row = tallies.reduce((spool, tally) => withTally(spool, tally), empty);
  if (!isSpool(row)) throw new Error('tests are of a spool');
  return { ...trialNow(), row, spool: row };
}

const now = () => useTests.getState().values;

beforeEach(() => {
  vi.stubGlobal('document', { querySelector: () => null });
  useTests.setState({ values: FIRST_TESTS });
});
afterEach(() => vi.unstubAllGlobals());

describe('going on', () => {
  it('is with the strip that was proposed, not with the first that is whole', () => {
    const [first, wanted] = [flexed(10, 2000, 'whole', 'first'), flexed(16, 3000, 'whole', 'wanted')];
    const turned = { ...wanted, ways: 'both ways', lying: 'upright' } as const;
    setUp(
      { what: 'goOn', piece: 'comb', bend: wanted.bend, strips: 1, from: 'wanted' },
      trialWith(first, turned),
      PIECES,
    );
    expect(now()).toMatchObject({ piece: 'comb', doing: 'flexes', way: 'to', length: 16, turn: radians(90) });
    expect(now()).toMatchObject({ ways: 'both ways', lying: 'upright', counting: { cycles: 3000, from: 'wanted' } });
  });

  it.each(FOLDS.map(({ count, length, thickness }) => [count, length, thickness] as const))(
    'a fold of %d layers is one on the piece of folds',
    (count, length, thickness) => {
      const strip = { ...flexed(length, 500, 'whole', 'fold'), thickness, lying: 'crease' } as const;
      setUp({ what: 'goOn', piece: 'creases', bend: strip.bend, strips: 1, from: 'fold' }, trialWith(strip), PIECES);
      expect(now()).toMatchObject({ piece: 'creases', way: 'to', count, length, lying: FIRST_TESTS.lying });
      expect(now().counting).toEqual({ cycles: 500, from: 'fold' });
    },
  );
});

it('fresh strips are counted from nought', () => {
  useTests.setState({ values: { ...FIRST_TESTS, counting: { cycles: 9, from: 'gone' } } });
  const bend = { way: 'over', radius: 8 } as const;
  setUp({ what: 'flexes', piece: 'radii', bend, strips: 3 }, trialWith(), PIECES);
  expect(now()).toMatchObject({ piece: 'radii', doing: 'flexes', way: 'over', radius: 8, strips: 3 });
  expect(now().counting).toBeUndefined();
});
