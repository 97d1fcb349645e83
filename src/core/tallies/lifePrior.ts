import { doubtSigma } from '../life/scatter.ts';
import { SUREST_LIMITS } from '../material/ownLimits.ts';
import type { StrainLifeCurve } from '../material/types.ts';

/**
 * What is believed of a curve before anything is counted: by how many decades its median may be off, as a straight line over the
 * decades x of the life that it foretells,
 *
 *     δ(x) = level + slope·(x − pivot)
 *
 * level and slope normal about nought and independent, and how specimens scatter about the median.
 */
export interface LifePrior {
  /** log10 of a life. */
  readonly pivot: number;
  /** Standard deviations, in decades and in decades each decade. */
  readonly level: number;
  readonly slope: number;
  /** Root mean square of σ of log10 N between specimens. */
  readonly scatter: number;
}

/** Between lives of ten and of a million flexes the doubt of a row is taken to hold: decades. */
const ENDS = { from: 1, to: 6 } as const;
/** How alike the doubts at both ends are: a filament that is better where it breaks soon is not always so later. Our judgement. */
const ALIKE = 0.25;
/** A curve said to be beyond all doubt still moves a little when many strips say otherwise: decades. */
const LEAST_DOUBT = 0.01;

/**
 * What is believed of the curve of a row before anything is counted.
 *
 * Of a row whose doubt is the same everywhere, δ at x = 1 and at x = 6 has the standard deviation
 *
 *     1.155·s,   s = log10 f/1.6449,   correlation ρ = 0.25
 *
 * for then the mean variance of δ over these decades is that of the doubt of the row:
 *
 *     ∫(1 − 2w(1 − w)(1 − ρ))dw = 1 − (1 − ρ)/3 = 0.75 = 1/1.155²,   w from 0 to 1
 *
 * so that before any count the doubt of the row stands on the average. Half-way, at x = 3.5, level and slope are independent:
 *
 *     s_level² = v·(1 + ρ)/2,   s_slope² = 2v·(1 − ρ)/5²,   v = s²/0.75
 *
 * A row that tests have taught before says itself where it is surest.
 *
 * @param life - curve of the row whose figures stand where nothing was tested [-]
 * @returns pivot and standard deviations in decades of life [-]
 *
 * Source: bayes-rule.
 * @example lifePriorOf({ sigmaLog10N: 0.6, doubtFactor: 10 }).level // → 0.554986
 */
export function lifePriorOf(
  life: Pick<StrainLifeCurve, 'sigmaLog10N' | 'doubtFactor' | 'surestLife' | 'doubtPerDecade'>,
): LifePrior {
  const { sigmaLog10N: scatter, surestLife, doubtPerDecade } = life;
  const s = Math.max(LEAST_DOUBT, doubtSigma(life.doubtFactor));
  if (surestLife !== undefined && doubtPerDecade !== undefined) {
    return { pivot: Math.log10(surestLife), level: s, slope: Math.max(LEAST_DOUBT, doubtPerDecade), scatter };
  }
  const variance = (s * s) / (1 - (1 - ALIKE) / 3);
  const slope = Math.sqrt(2 * variance * (1 - ALIKE)) / (ENDS.to - ENDS.from);
  return {
    pivot: (ENDS.from + ENDS.to) / 2,
    level: Math.sqrt((variance * (1 + ALIKE)) / 2),
    // No row of the table comes near this; past it no life would be long enough to be sure of.
    slope: Math.min(slope, SUREST_LIMITS.doubtPerDecade.max),
    scatter,
  };
}
