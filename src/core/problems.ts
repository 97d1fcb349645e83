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
  'thinner-than-one-layer',
  'single-line',
  'odd-lines',
  'single-layer',
  'not-whole-lines',
  'not-whole-layers',
  'tie-rounded-down',
  'width-not-layable',
  // geometry
  'leaf-too-thick-for-length',
  'pad-thinner-than-leaf',
  'sharp-root',
  'fillet-outside-table',
  'fillet-under-one-line',
  'leaf-too-deep-for-length',
  // strength and life
  'breaks-on-first-flex',
  'past-yield',
  'takes-a-set',
  'beyond-data',
  'across-layers',
  'thick-pp',
  'sags-when-held',
  'weak-data',
  'no-answer',
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
}
