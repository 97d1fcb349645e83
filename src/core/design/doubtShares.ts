import { normalCdf } from '../numeric/normal.ts';
import { sampleCube } from '../numeric/sampling.ts';
import { varianceShares } from '../numeric/varianceShares.ts';
import type { CauseName, CauseShare, DoubtAnswer } from './doubtAnswer.ts';
import type { Cause, Draft } from './doubtCauses.ts';

/** What one print comes to: median life of prints alike in size and filament, peak strain, effort. */
export interface Print {
  readonly median: number;
  readonly strain: number;
  readonly effort: number;
}

/** Pairs of points at which shares are found: enough for a hundredth of the variance. */
const PAIRS = 1024;
/** A life of nought has no logarithm; it counts as half a flex. */
const LEAST_LIFE = 0.5;
/** What a normal law has below one standard deviation. */
const ONE_SIGMA = normalCdf(1);

/** Causes that only add decades to a life, whatever the others do. */
function isAdded({ name }: Cause): boolean {
  return name === 'specimens' || name === 'curve';
}

/**
 * Shares of the causes in the variance of the logarithms of life and effort.
 *
 * Specimens and curve multiply every life by factors of their own, so that what they make of the variance is known without
 * sampling; only the others are picked and frozen, each alone at points that are common to all, where little noise is left.
 *
 * @param causes - all that vary [-]
 * @param printOf - what a print comes to [-]
 * @param seed - any whole number of 32 bits [-]
 * @param tell - called on the way with the share that is done [-]
 * @returns shares [-] by cause, most of the doubt about life first, and what several make together
 *
 * Source: jansen-shares.
 */
export function doubtShares(
  causes: readonly Cause[],
  printOf: (draft: Draft) => Print,
  seed: number,
  tell: (share: number) => void,
): Pick<DoubtAnswer, 'causes' | 'together'> {
  const picked = causes.filter((cause) => !isAdded(cause));
  const figures = pickAndFreeze(picked, printOf, seed, tell);
  const life = varianceShares(figures((print) => Math.log10(Math.max(LEAST_LIFE, print.median))));
  const effort = varianceShares(figures((print) => Math.log10(print.effort)));
  const added = new Map(causes.filter(isAdded).map((cause) => [cause.name, cause.at(ONE_SIGMA) ** 2] as const));
  const total = [...added.values()].reduce((sum, variance) => sum + variance, life.variance);
  const lifeOf = (name: CauseName) => {
    const alone = (life.alone[picked.findIndex((cause) => cause.name === name)] ?? 0) * life.variance;
    return total > 0 ? (added.get(name) ?? alone) / total : 0;
  };
  const shares = causes.map(({ name, provenance }): CauseShare => ({
    cause: name,
    provenance,
    life: lifeOf(name),
    effort: effort.alone[picked.findIndex((cause) => cause.name === name)] ?? 0,
  }));
  const rest = (of: 'life' | 'effort', variance: number) =>
    variance > 0 ? Math.max(0, 1 - shares.reduce((sum, share) => sum + share[of], 0)) : 0;
  return {
    causes: shares.toSorted((one, other) => other.life - one.life || other.effort - one.effort),
    together: { life: rest('life', total), effort: rest('effort', effort.variance) },
  };
}

/** Prints at common points, to be read for any figure. */
function pickAndFreeze(
  causes: readonly Cause[],
  printOf: (draft: Draft) => Print,
  seed: number,
  tell: (share: number) => void,
) {
  const { sets } = sampleCube('quasi-random', PAIRS, 2 * causes.length, seed);
  const points = sets.flat();
  const prints = points.map((point, k) => {
    tell(k / points.length);
    const at = (i: number, half: 'a' | 'b') => causes[i]?.at(point[half === 'a' ? i : i + causes.length] ?? 0.5) ?? 0;
    const draft = (from: (i: number) => 'a' | 'b') =>
      printOf(Object.fromEntries(causes.map(({ name }, i) => [name, at(i, from(i))])));
    return {
      a: draft(() => 'a'),
      b: draft(() => 'b'),
      mixed: causes.map((_, own) => draft((i) => (i === own ? 'b' : 'a'))),
    };
  });
  return (figure: (print: Print) => number) => ({
    a: prints.map(({ a }) => figure(a)),
    b: prints.map(({ b }) => figure(b)),
    mixed: causes.map((_, i) => prints.map(({ mixed, a }) => figure(mixed[i] ?? a))),
  });
}
