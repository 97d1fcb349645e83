/**
 * What going on with strips that are still whole is expected to leave of the doubt is what learning again leaves, on average over
 * truths that are drawn from what is believed now and lives that have survived so far.
 */
import { describe, expect, it } from 'vitest';
import { logLikelihood } from '../../../src/core/life/countedLikelihood.ts';
import { normalCdf, normalQuantile } from '../../../src/core/numeric/normal.ts';
import { believedAt } from '../../../src/core/tallies/expectedDoubt.ts';
import { varianceGoingOn } from '../../../src/core/tallies/goingOn.ts';
import { lifePosterior, type SeenStrip } from '../../../src/core/tallies/lifePosterior.ts';
import { drawsOf, PRIOR, shiftOf, truthFrom, type Normals, type Truth } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';

const RUNS = 400;
/** Draws of the forecast. */
const DRAWS = 128;
/** Truths before they are weighed: by what was counted a hundredth of them may be likely. */
const BEFORE = 40_000;

/**
 * From what was believed before, each as often as what was counted is likely by it: knows no grid and no normal law. Evenly
 * spread over all of them, so that few come twice.
 */
function truthsGiven(strips: readonly SeenStrip[], draws: Normals): readonly Truth[] {
  const all = Array.from({ length: BEFORE }, () => truthFrom(draws));
  const logged = strips.map(({ foretold, counted, whole }) => ({
    x: foretold - PRIOR.pivot,
    y: counted - foretold,
    whole,
  }));
  const logs = all.map(({ level, slope, sigma }) => logLikelihood(logged, [level, slope, Math.log(sigma)]));
  const top = logs.reduce((most, log) => Math.max(most, log), -Infinity);
  const weights = logs.map((log) => Math.exp(log - top));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const taken: Truth[] = [];
  let below = 0;
  for (const [i, truth] of all.entries()) {
    below += (RUNS * weights[i]!) / sum;
    while (taken.length + 0.5 <= below && taken.length < RUNS) taken.push(truth);
  }
  return taken;
}

/** One that has survived its count goes on. */
function goneOn({ share }: Normals, truth: Truth, { foretold, counted }: SeenStrip, stop: number): SeenStrip {
  const middle = foretold + shiftOf(truth, foretold);
  const alive = normalCdf((middle - counted) / truth.sigma);
  const life = middle - truth.sigma * normalQuantile(Math.max(1e-300, share() * alive));
  return { foretold, counted: Math.min(life, stop), whole: life > stop };
}

const broke = (foretold: number, ...counts: readonly number[]): readonly SeenStrip[] =>
  counts.map((counted) => ({ foretold, counted, whole: false }));
const whole = (count: number, foretold: number, counted: number): readonly SeenStrip[] =>
  Array.from({ length: count }, () => ({ foretold, counted, whole: true }));

describe.each([
  ['one, as far as foretold', [], whole(1, 3.3, 3.3), 3.7, 4.2],
  ['one, far past what was foretold', [], whole(1, 3, 3.7), 4, 4.2],
  ['one, stopped early', [], whole(1, 4.2, 3), 4, 4.2],
  ['one, far from where the joint is', [], whole(1, 5, 4), 5.5, 3],
  ['two beside three that broke', broke(3, 2.6, 2.78, 2.54), whole(2, 3.9, 3.3), 4, 4.2],
  ['two that outlive three alike', broke(3, 2.2, 2.3, 2.1), whole(2, 3, 3.3), 3.8, 4.2],
  ['two, twice as far as foretold and as far again', [], whole(2, 3, 4), 4.3, 4.2],
  ['five, twice as far', [], whole(5, 3.5, 3.3), 3.6, 4.2],
  ['forty, twice as far', [], whole(40, 3.5, 3.3), 3.6, 4.2],
] as const)('going on with strips that are still whole: %s', (_, others, strips, stop, joint) => {
  const draws = drawsOf(11);
  const now = lifePosterior(PRIOR, [...others, ...strips]);
  const { foretold } = strips[0]!;
  const forecast = varianceGoingOn(now, { foretold, stop, from: strips.map(({ counted }) => counted) }, joint);

  it('leaves what learning again leaves on average', () => {
    const left = truthsGiven([...others, ...strips], draws).map((truth) => {
      const next = strips.map((strip) => goneOn(draws, truth, strip, stop));
      return believedAt(lifePosterior(PRIOR, [...others, ...next]), joint).variance;
    });
    const mean = left.reduce((sum, variance) => sum + variance, 0) / RUNS;
    const spread = Math.sqrt(left.reduce((sum, variance) => sum + (variance - mean) ** 2, 0) / (RUNS - 1));
    expectClose(forecast, mean, {
      abs: 3 * spread * Math.sqrt(1 / RUNS + 1 / DRAWS),
      because: 'three standard errors of both means: of these runs and of the draws of the forecast',
    });
  });

  it('leaves less than there is', () => {
    expect(forecast).toBeLessThan(believedAt(now, joint).variance);
  });
});
