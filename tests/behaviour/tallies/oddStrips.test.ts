import { describe, expect, it } from 'vitest';
import { learnLife } from '../../../src/core/tallies/learnLife.ts';
import { lifePosterior } from '../../../src/core/tallies/lifePosterior.ts';
import { isOddBy, oddLimit, offAll, offOthers } from '../../../src/core/tallies/oddStrips.ts';
import type { FlexTally } from '../../../src/core/material/tally.ts';
import { chanceOf, drawsOf, flexed, flexedOnce, PRIOR, truthFrom } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

function told(flexes: readonly FlexTally[]) {
  const result = learnLife(filament('petg'), flexes);
  if (!result.ok || !result.value) throw new Error('something is learned');
  return result.value;
}

const ALIKE = [210, 260, 300, 240, 330, 280].map((cycles, i) => flexed(10, cycles, 'broke', `t${i}`));

describe('a strip far from the others', () => {
  it.each([
    ['lived a thousand times as long', flexed(10, 260_000, 'broke', 'odd'), true],
    ['broke at once', flexed(10, 1, 'broke', 'odd'), true],
    ['is still whole after a thousand times as many', flexed(10, 260_000, 'whole', 'odd'), true],
    ['was stopped at once and is whole', flexed(10, 1, 'whole', 'odd'), false],
    ['lived as long', flexed(10, 270, 'broke', 'odd'), false],
  ] as const)('that %s', (_, strip, isOdd) => {
    const { strips } = told([...ALIKE, strip]).told;
    expect(strips.filter((one) => one.isOdd).map(({ tally }) => tally.id)).toEqual(isOdd ? ['odd'] : []);
  });

  it('is told and counted, never dropped', () => {
    const odd = flexed(10, 260_000, 'broke', 'odd');
    const [all, others] = [told([...ALIKE, odd]), told(ALIKE)];
    expect(all.told.strips).toHaveLength(7);
    expect(all.told.broke).toBe(7);
    expect(all.life.sigmaLog10N).toBeGreaterThan(1.5 * others.life.sigmaLog10N);
  });

  it('set aside is still told to be far off', () => {
    const odd: FlexTally = { ...flexed(10, 260_000, 'broke', 'odd'), leftOut: true };
    const strip = told([...ALIKE, odd]).told.strips.find(({ tally }) => tally.id === 'odd');
    expect(strip).toMatchObject({ isOdd: true });
    expect(strip!.off).toBeGreaterThan(4);
  });
});

it('a single strip is judged by what the row says', () => {
  expect(told([flexed(10, 300)]).told.strips[0]).toMatchObject({ isOdd: false });
  expect(told([flexed(10, 50_000_000)]).told.strips[0]).toMatchObject({ isOdd: true });
});

it('the limit is the quantile of one in a hundred, both sides, shared out', () => {
  expectClose(oddLimit(1), 2.5758293, { printedTo: 7 });
  expect(oddLimit(100)).toBeGreaterThan(oddLimit(10));
  expect(isOddBy(oddLimit(5) + 0.01, true, 5)).toBe(true);
  expect(isOddBy(-oddLimit(5) - 0.01, false, 5)).toBe(true);
});

describe('where nothing is odd', () => {
  it('one set in a hundred is said to hold an odd strip, and offs are as a normal law has them', () => {
    const draws = drawsOf(11);
    const sets = Array.from({ length: 150 }, () => {
      const truth = truthFrom(draws);
      const strips = [2, 2.5, 3, 3.5, 4, 4.5].map((x) => flexedOnce(draws, truth, x, Infinity));
      return offOthers(PRIOR, strips, lifePosterior(PRIOR, strips));
    });
    const odd = sets.filter((offs) => offs.some((off) => isOddBy(off, false, offs.length))).length / sets.length;
    expect(odd).toBeLessThanOrEqual(0.01 + chanceOf(0.01, sets.length));
    const first = sets.map(([off = 0]) => off);
    const within = first.filter((off) => Math.abs(off) < 1.6448536).length / first.length;
    expect(Math.abs(within - 0.9)).toBeLessThan(chanceOf(0.9, first.length));
  });
});

it('of many strips one left out by weights is as one left out in full', () => {
  const draws = drawsOf(3);
  const truth = { level: 0.3, slope: -0.1, sigma: 0.5 };
  const strips = Array.from({ length: 18 }, (_, i) => flexedOnce(draws, truth, 2 + (i % 6) / 2, 3.4));
  const weighed = offOthers(PRIOR, strips, lifePosterior(PRIOR, strips));
  for (const [i, strip] of strips.entries()) {
    const inFull = offAll(strip, lifePosterior(PRIOR, strips.toSpliced(i, 1)));
    expectClose(weighed[i]!, inFull, { abs: 0.02, because: 'weights stand on the grid of all eighteen' });
  }
});
