/** How thick lines or layers come out, from the rungs of a ladder under a caliper. */
import type { Tally, ThicknessTally } from '../material/tally.ts';
import type { LaidThickness } from '../material/types.ts';
import { CALIPER_SIGMA } from '../print/spread.ts';
import type { Mm } from '../units.ts';
import type { LearnedFigure } from './learned.ts';
import { oddLimit } from './oddStrips.ts';

/** What is likely of any printer before it is measured, as standard deviations: factor about 1, offset about 0 [mm]. Our judgement. */
const BEFORE = { factor: 0.05, offset: 0.1 } as const;
/** Rungs of one print differ by so much beside what the caliper makes of it [mm]. Our judgement, corrected by the readings. */
const RUNG_SIGMA: Mm = 0.01;
/** So many readings are that judgement worth. */
const JUDGED_AS = 4;

/** A straight line t = offset + factor·t_set with what is left in doubt of it. */
interface Line {
  readonly offset: number;
  readonly factor: number;
  /** Variances of offset and factor, and what they share. */
  readonly offsetVariance: number;
  readonly factorVariance: number;
  readonly covariance: number;
}

/** The line by readings of one noise and what is likely before. */
function lineBy(readings: readonly ThicknessTally[], noise: Mm): Line {
  const weight = noise ** -2;
  let [a, b, c] = [BEFORE.offset ** -2, 0, BEFORE.factor ** -2];
  let [d, e] = [0, BEFORE.factor ** -2];
  for (const { set, measured } of readings) {
    a += weight;
    b += weight * set;
    c += weight * set ** 2;
    d += weight * measured;
    e += weight * set * measured;
  }
  const whole = a * c - b * b;
  return {
    offset: (c * d - b * e) / whole,
    factor: (a * e - b * d) / whole,
    offsetVariance: c / whole,
    factorVariance: a / whole,
    covariance: -b / whole,
  };
}

function at({ offset, factor }: Line, set: Mm): Mm {
  return offset + factor * set;
}

function varianceAt({ offsetVariance, factorVariance, covariance }: Line, set: Mm): number {
  return offsetVariance + 2 * set * covariance + set ** 2 * factorVariance;
}

/** Of one reading: caliper and rung, by what is judged and by how far the readings lie from their line. */
function noiseOf(readings: readonly ThicknessTally[]): Mm {
  const judged = CALIPER_SIGMA ** 2 + RUNG_SIGMA ** 2;
  const line = lineBy(readings, Math.sqrt(judged));
  const off = readings.reduce((sum, { set, measured }) => sum + (measured - at(line, set)) ** 2, 0);
  return Math.sqrt((JUDGED_AS * judged + off) / (JUDGED_AS + Math.max(0, readings.length - 2)));
}

function isOdd(reading: ThicknessTally, others: readonly ThicknessTally[]): boolean {
  const noise = noiseOf(others);
  const line = lineBy(others, noise);
  const sigma = Math.sqrt(varianceAt(line, reading.set) + noise ** 2);
  return Math.abs(reading.measured - at(line, reading.set)) > oddLimit(others.length + 1) * sigma;
}

/**
 * How thick lines or layers come out on a printer.
 *
 *     t = offset + factor·t_set
 *
 * by least squares, with what is likely of any printer as a prior (factor 1 ± 0.05, offset 0 ± 0.1 mm), so that one reading already
 * says something and many say all. The doubt that stays is that of the line at a thickness in the middle of those measured, together with
 * how much one rung differs from the next without the caliper.
 *
 * @param tallies - all of a row; other kinds and those set aside are passed over [-]
 * @param countOf - lines or layers [-]
 * @returns offset [mm], factor [-] and standard deviation [mm], and which readings lie far off; undefined where none was made
 *
 * Source: bayes-rule, linear-regression.
 */
export function linesLaid(
  tallies: readonly Tally[],
  countOf: ThicknessTally['countOf'],
): LearnedFigure<LaidThickness> | undefined {
  const by = tallies
    .filter((tally) => tally.kind === 'thickness')
    .filter((tally) => tally.countOf === countOf && !tally.leftOut);
  if (by.length === 0) return undefined;
  const noise = noiseOf(by);
  const line = lineBy(by, noise);
  const middle = by.reduce((sum, { set }) => sum + set, 0) / by.length;
  const rung = Math.max(RUNG_SIGMA ** 2, noise ** 2 - CALIPER_SIGMA ** 2);
  const { offset, factor } = line;
  return {
    value: { factor, offset, sigma: Math.sqrt(varianceAt(line, middle) + rung) },
    by,
    odd: by.filter((reading, i) => isOdd(reading, by.toSpliced(i, 1))),
  };
}
