/**
 * Every way in which an input, a file or the physics can be refused or deserve a caution.
 * The wording on screen for each code is in `src/ui/text/problemText.ts`; a test checks that none is missing.
 */
export const PROBLEM_CODES = [
  // a number that cannot be used at all
  'not-a-number',
  'not-whole',
  'below-minimum',
  'above-maximum',
  'not-one-of',
  // print profile
  'layer-above-line-width',
  'layer-above-nozzle-share',
  'line-narrow-for-nozzle',
  'line-wide-for-nozzle',
  'first-layer-differs',
  'lying-not-possible',
  // whole lines and layers
  'thinner-than-one-line',
  'single-line',
  'odd-lines',
  'single-layer',
  'not-whole-lines',
  'not-whole-layers',
  'tie-rounded-down',
  'width-not-layable',
  // geometry
  'leaf-too-thick-for-length',
  'thicker-than-long',
  'pad-thinner-than-leaf',
  'sharp-root',
  'fillet-outside-table',
  'fillet-under-one-line',
  'fillet-in-steps',
  'neck-too-thick',
  'notch-too-sharp',
  'planes-fuse',
  'roots-merge',
  'turn-too-tight',
  'no-room',
  'nearly-touch',
  'slits-must-overlap',
  'strip-too-short',
  'no-second-rest',
  'frame-must-be-stiff',
  // strength and life
  'takes-a-set',
  'beyond-data',
  'across-layers',
  'thick-pp',
  'sags-when-held',
  'softens',
  'brittle-cold',
  'warmer-than-counted',
  'nylon-dry',
  'too-warm-to-hold',
  'held-past-yield',
  'no-answer',
  // a wish for an effort
  'does-not-snap',
  'effort-out-of-reach',
  // a part file
  'stands-in',
  // a search
  'none-ticked',
  'none-can',
  'no-depth-between',
  // the solver
  'no-convergence',
  'cancelled',
  'over-budget',
  // networks
  'no-such-id',
  'network-shape',
  'network-conflict',
  'network-loose',
  'network-idle',
  // files
  'unreadable',
  'not-our-file',
  'newer-version',
  'missing-field',
  'wrong-type',
  'unknown-filament',
  'unknown-family',
  'too-large',
  'unknown-field',
  'repaired-id',
  'changed-name',
  'given-twice',
  // part files
  'file-damaged',
  'left-out',
] as const;

export type ProblemCode = (typeof PROBLEM_CODES)[number];

/** One thing wrong or worth knowing, in a form that a screen, a script and a test can all use. */
export interface Problem {
  readonly code: ProblemCode;
  /** English, no full stop: the value given, the limit, and what would help. Lengths in mm, angles in degrees. */
  readonly message: string;
  /** Path of the field, for example `sizes.length` or `joints[2].profile.nozzle`. */
  readonly field?: string;
  readonly value?: number | string;
  readonly limit?: number | string;
  /** What value and limit are in, where the field does not tell. */
  readonly unit?: 'rad' | 'mm';
}

/** What a number may be, and why. */
export interface Range {
  readonly min: number;
  readonly max: number;
  readonly because: string;
}

/** What would help a number that is outside its range; the usual words fit a size that can be chosen freely. */
export interface Cures {
  readonly low: string;
  readonly high: string;
}

const USUAL_CURES: Cures = { low: 'raise it', high: 'lower it' };

/** Twelve figures, so that an angle of 359.99999999999994° reads as 360°. */
function inDegrees(angle: number): string {
  return `${Number(((angle * 180) / Math.PI).toPrecision(12))}°`;
}

/** A number as messages print it: no more than three decimals, no trailing zeros. */
export function plain(value: number): string {
  return String(Number(value.toFixed(3)));
}

/**
 * What is wrong with a number that has to lie in a range, or undefined when nothing is.
 *
 * @param field - path of the field [-], for example `sizes.length`
 * @param what - name of the quantity in a sentence [-]
 * @param value - the number given [unit], anything, NaN too
 * @param range - smallest and largest value [unit] and the reason for them
 * @param unit - unit as printed [-], '' for a count; ° (not °C) where the value is in [rad]
 * @param cures - what would help where it is too low or too high [-]
 * @returns the problem [-]: `not-a-number`, `below-minimum` or `above-maximum`
 */
export function outsideRange(
  field: string,
  what: string,
  value: number,
  range: Range,
  unit: '' | 'mm' | '°' | '°C' | 'h' = 'mm',
  cures: Cures = USUAL_CURES,
): Problem | undefined {
  const say = (n: number) => (unit === '°' ? inDegrees(n) : unit === '' ? plain(n) : `${plain(n)} ${unit}`);
  const inRad: Pick<Problem, 'unit'> = unit === '°' ? { unit: 'rad' } : {};
  if (!Number.isFinite(value)) {
    return {
      code: 'not-a-number',
      message: `${what} ${value} is not a number; give one from ${say(range.min)} to ${say(range.max)}`,
      field,
      value: String(value),
    };
  }
  if (value < range.min) {
    return {
      code: 'below-minimum',
      message: `${what} ${say(value)} is below ${say(range.min)} (${range.because}); ${cures.low}`,
      field,
      value,
      limit: range.min,
      ...inRad,
    };
  }
  if (value > range.max) {
    return {
      code: 'above-maximum',
      message: `${what} ${say(value)} is above ${say(range.max)} (${range.because}); ${cures.high}`,
      field,
      value,
      limit: range.max,
      ...inRad,
    };
  }
  return undefined;
}
