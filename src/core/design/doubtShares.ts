import { additiveShares } from '../numeric/additiveShares.ts';
import { normalCdf, normalQuantile } from '../numeric/normal.ts';
import type { CauseName, CauseShare, DoubtAnswer } from './doubtAnswer.ts';
import type { Cause } from './doubtCauses.ts';

/** What one print comes to: median life of prints alike in size and filament, peak strain, effort. */
export interface Print {
  readonly median: number;
  readonly strain: number;
  readonly effort: number;
}

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
 * sampling. The logarithms are nearly sums of what the others make, because strains, efforts and lives are nearly products of
 * powers: so they are told apart by a sum of functions, each of one cause (`additiveShares`).
 *
 * @param causes - all that vary [-]
 * @param points - shares of the causes at which the prints were made [-]
 * @param prints - what they came to [-]
 * @returns shares [-] by cause, most of the doubt about life first, and what several make together
 *
 * Source: additive-shares.
 */
export function doubtShares(
  causes: readonly Cause[],
  points: readonly (readonly number[])[],
  prints: readonly Print[],
): Pick<DoubtAnswer, 'causes' | 'together'> {
  const places = causes.flatMap((cause, i) => (isAdded(cause) ? [] : [i]));
  const normal = points.map((point) => places.map((i) => normalQuantile(point[i] ?? 0.5)));
  const of = (figure: (print: Print) => number) => additiveShares(normal, prints.map(figure));
  const life = of(({ median }) => Math.log10(Math.max(LEAST_LIFE, median)));
  const effort = of((print) => Math.log10(print.effort));
  const added = new Map(causes.filter(isAdded).map((cause) => [cause.name, cause.at(ONE_SIGMA) ** 2] as const));
  const total = [...added.values()].reduce((sum, variance) => sum + variance, life.variance);
  const ofLife = (variance: number) => (total > 0 ? variance / total : 0);
  const place = (name: CauseName) => places.findIndex((i) => causes[i]?.name === name);
  const shares = causes.map(({ name, provenance }): CauseShare => ({
    cause: name,
    provenance,
    life: ofLife(added.get(name) ?? (life.alone[place(name)] ?? 0) * life.variance),
    effort: effort.alone[place(name)] ?? 0,
  }));
  return {
    causes: shares.toSorted((one, other) => other.life - one.life || other.effort - one.effort),
    together: { life: ofLife(life.together * life.variance), effort: effort.together },
  };
}
