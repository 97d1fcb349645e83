/**
 * What is learned on a row holds as often as it says: over hundreds of sets of strips that were never flexed, with truths drawn with
 * seeds from what is believed of the row.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { curveSigma } from '../../../src/core/life/scatter.ts';
import { normalQuantile } from '../../../src/core/numeric/normal.ts';
import { believedAt } from '../../../src/core/tallies/expectedDoubt.ts';
import { lifePosterior, type LifePosterior } from '../../../src/core/tallies/lifePosterior.ts';
import { chanceOf, drawsOf, flexedOnce, PRIOR, shiftOf, truthFrom, type Truth } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

const RUNS = 300;
const SURE = 0.9;
/** Three standard deviations of a binomial law. */
const BY_CHANCE = chanceOf(SURE, RUNS);
const NINE_IN_TEN = normalQuantile(0.95);

function hits(runs: readonly boolean[]): number {
  return runs.filter(Boolean).length / runs.length;
}

describe.each([
  ['three strips at one strain', [3, 3, 3], Infinity],
  ['six strips at three strains', [2, 2, 3, 3, 4, 4], Infinity],
  ['six strips, counting stopped at 2000', [2, 2, 3, 3, 4, 4], Math.log10(2000)],
  ['nine strips, most still whole', [3, 3, 3, 4, 4, 4, 5, 5, 5], 3],
] as const)('a row taught by %s', (_, lives, stop) => {
  const draws = drawsOf(42 + lives.length);
  let runs: readonly { readonly truth: Truth; readonly now: LifePosterior }[] = [];
  beforeAll(() => {
    runs = Array.from({ length: RUNS }, () => {
      const truth = truthFrom(draws);
      return {
        truth,
        now: lifePosterior(
          PRIOR,
          lives.map((x) => flexedOnce(draws, truth, x, stop)),
        ),
      };
    });
  });

  it.each([2, 3, 4.3, 6])('the curve lies where its doubt says, at a foretold life of 10^%d', (x) => {
    const share = hits(
      runs.map(({ truth, now }) => {
        const { shift, variance } = believedAt(now, x);
        return Math.abs(shiftOf(truth, x) - shift) <= NINE_IN_TEN * Math.sqrt(variance);
      }),
    );
    expect(Math.abs(share - SURE)).toBeLessThan(BY_CHANCE);
  });

  it('ever the next strip lies where scatter and doubt together say', () => {
    const share = hits(
      runs.map(({ truth, now }) => {
        const { shift, variance } = believedAt(now, 3.5);
        const next = shiftOf(truth, 3.5) + truth.sigma * draws.normal();
        return Math.abs(next - shift) <= NINE_IN_TEN * Math.hypot(Math.sqrt(variance), now.scatter);
      }),
    );
    expect(Math.abs(share - SURE)).toBeLessThan(BY_CHANCE);
  });
});

/** Strips at three foretold lives, asked for in their middle. */
const SPREAD_OVER = [2.5, 3.5, 3] as const;
const MANY_RUNS = 400;

/** How far off the curve is and says that it may be, as standard deviations in decades, and how often it is within nine in ten. */
function learnedFrom(count: number, stop: number) {
  const draws = drawsOf(77);
  const runs = Array.from({ length: MANY_RUNS }, () => {
    const truth = truthFrom(draws);
    const strips = Array.from({ length: count }, (_, i) => flexedOnce(draws, truth, SPREAD_OVER[i % 3]!, stop));
    const { shift, variance } = believedAt(lifePosterior(PRIOR, strips), 3);
    return { off: shiftOf(truth, 3) - shift, variance };
  });
  const mean = (of: (run: (typeof runs)[number]) => number) => runs.reduce((sum, run) => sum + of(run), 0) / MANY_RUNS;
  return {
    off: Math.sqrt(mean(({ off }) => off * off)),
    said: Math.sqrt(mean(({ variance }) => variance)),
    within: hits(runs.map(({ off, variance }) => Math.abs(off) <= NINE_IN_TEN * Math.sqrt(variance))),
  };
}

describe.each([
  ['all broken', Infinity],
  ['counting stopped at 2000', Math.log10(2000)],
] as const)('three counts already help and thirty dominate: %s', (_, stop) => {
  const [none, three, thirty] = [0, 3, 30].map((count) => learnedFrom(count, stop)) as [
    ReturnType<typeof learnedFrom>,
    ReturnType<typeof learnedFrom>,
    ReturnType<typeof learnedFrom>,
  ];

  it('three leave under six tenths of the error, which is more weight to them than to the row', () => {
    expect(three.off / none.off).toBeLessThan(0.6);
    // What is left of the variance is the weight of the row.
    expect((three.said / none.said) ** 2).toBeLessThan(0.5);
  });

  it('thirty leave about a quarter, and a twentieth of the weight to the row', () => {
    expect(thirty.off / none.off).toBeLessThan(0.26);
    expect((thirty.said / none.said) ** 2).toBeLessThan(0.06);
  });

  it.each([
    ['three', three],
    ['thirty', thirty],
  ])('%s: the band is as wide as it is off', (_count, { off, said, within }) => {
    expectClose(off, said, {
      rel: 3 / Math.sqrt(2 * MANY_RUNS),
      because: 'three standard errors of a standard deviation of 400 runs',
    });
    expect(Math.abs(within - SURE)).toBeLessThan(chanceOf(SURE, MANY_RUNS));
  });
});

it('before any count the mean variance from 10 to 10⁶ flexes is that of the row', () => {
  const row = filament('petg').life;
  const steps = Array.from({ length: 5000 }, (_, i) => 1 + (i + 0.5) / 1000);
  const mean =
    steps.reduce((sum, x) => sum + PRIOR.level ** 2 + (PRIOR.slope * (x - PRIOR.pivot)) ** 2, 0) / steps.length;
  expectClose(mean, curveSigma(row, 1) ** 2, { rel: 1e-6, because: 'summed in steps' });
});
