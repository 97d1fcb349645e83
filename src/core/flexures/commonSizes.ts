import type { Mm } from '../units.ts';
import type { Parameter } from './family.ts';

/** Sizes that more than one family has; a family changes what differs for it. All limits are common practice. */
export const LENGTH: Parameter = {
  kind: 'length',
  min: 0.5,
  max: 200,
  step: 0.5,
  typical: 12,
  because: 'shorter is about one line and no flexure, longer does not fit a usual plate',
};

export const DEPTH: Parameter = {
  kind: 'length',
  min: 0.4,
  max: 300,
  step: 0.5,
  typical: 6,
  because: 'less is a single thick layer or line, more does not fit a usual plate',
};

export const FILLET: Parameter = {
  kind: 'length',
  min: 0,
  max: 10,
  step: 0.1,
  typical: 0.8,
  because: 'a larger one is a tapered leaf, for which constant thickness does not hold',
};

export const PAD: Parameter = {
  kind: 'length',
  min: 0.4,
  max: 50,
  step: 0.5,
  typical: 4,
  because: 'thinner bends along with the flexure, thicker changes nothing at the root',
};

export const IN_ROW: Parameter = {
  kind: 'count',
  min: 1,
  max: 20,
  step: 1,
  typical: 1,
  because: 'at least one flexure bends; with more than 20 the pads between them need a study of their own',
};

export const SIDE_BY_SIDE: Parameter = {
  kind: 'count',
  min: 1,
  max: 24,
  step: 1,
  typical: 1,
  because: 'springs side by side add force without adding strain; more than 24 hardly share one pad evenly',
};

/** The common roles of kinds whose sizes have these names; a kind changes what differs for it. */
export const ROLES = {
  count: 'lines',
  length: 'length',
  depth: 'depth',
  fillet: 'fillet',
  pad: 'pad',
  sideBySide: 'sideBySide',
} as const;

/**
 * How long each pad is drawn and exported, from its face to its far end.
 *
 * The contours of both edges need as much room as the leaf is thick; 1 mm more leaves a core between them, and 2.5 mm
 * is about the least that can be joined to a body in a drawing program. Common practice, no source.
 *
 * @param thickness - thickness of the thin section [mm], > 0
 * @returns length of a pad along x [mm]
 *
 * Source: common-practice.
 * @example padLength(0.84) // → 2.5
 */
export function padLength(thickness: Mm): Mm {
  return Math.max(2.5, thickness + 1);
}
