import { outsideRange, plain, type Problem, type Range } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { PrintProfile } from './profile.ts';

/** What one length of the profile may be: smallest, largest and one press of an arrow key [mm]. */
export interface ProfileLimit extends Range {
  readonly step: Mm;
}

export type ProfileLength = 'nozzle' | 'lineWidth' | 'layerHeight' | 'firstLayerHeight';

/** Limits that hold whatever the other settings are; `SHARES` narrows them for one nozzle. */
export const PROFILE_LIMITS: { readonly [K in ProfileLength]: ProfileLimit } = {
  nozzle: {
    min: 0.1,
    max: 1.5,
    step: 0.05,
    because: 'desktop filament printers carry nozzles of 0.1 to 1.5 mm; common practice, no source',
  },
  lineWidth: {
    min: 0.05,
    max: 3.75,
    step: 0.01,
    because: 'half the smallest nozzle to two and a half times the largest; common practice, no source',
  },
  layerHeight: {
    min: 0.04,
    max: 1.5,
    step: 0.02,
    because:
      'thinner layers are finer than the steps of a usual lift axis, thicker ones exceed any nozzle; common practice, no source',
  },
  firstLayerHeight: {
    min: 0.05,
    max: 1.5,
    step: 0.02,
    because: 'a thinner first layer is less than the unevenness of a plate; common practice, no source',
  },
};

/**
 * Limits as multiples of the nozzle (of the layer height for the first layer). `hard` ones are refused, `soft` ones noted.
 * All are common practice without a source.
 */
export const SHARES = {
  /** Below half a nozzle the melt tears; above two and a half the flat of the nozzle no longer covers the line. */
  lineWidthHard: { min: 0.5, max: 2.5 },
  /** Narrower lines come out uneven; wider ones press poorly onto the line beside them. */
  lineWidthSoft: { min: 0.9, max: 1.6 },
  /** A layer as high as the nozzle is wide is not pressed down at all. */
  layerHard: 1,
  /** Above this share layers are pressed down little and bond weakly. */
  layerSoft: 0.8,
  /** A first layer outside one to two layers changes the thickness of what lies on the plate. */
  firstLayerSoft: { min: 1, max: 2 },
} as const;

/** Shares are products of decimals such as 0.4·0.9; a part in 10⁹ is no reason to refuse one. */
const ROUND_OFF = 1e-9;

/** Whether a length is above a limit by more than round-off. */
export function isAbove(value: Mm, limit: Mm): boolean {
  return value > limit * (1 + ROUND_OFF);
}

/** Whether a length is not at least a limit, but for round-off; NaN never is. */
export function isBelow(value: Mm, limit: Mm): boolean {
  return !(value >= limit * (1 - ROUND_OFF));
}

/**
 * Line widths that a nozzle can lay at all, and those that it lays well.
 *
 * @param nozzle - diameter of the nozzle [mm], > 0
 * @returns smallest and largest line width [mm], hard and soft
 *
 * Source: common-practice.
 * @example layableWidths(0.4) // → { hard: { min: 0.2, max: 1.0 }, soft: { min: 0.36, max: 0.64 } }
 */
export function layableWidths(nozzle: Mm): {
  readonly hard: { readonly min: Mm; readonly max: Mm };
  readonly soft: { readonly min: Mm; readonly max: Mm };
} {
  const times = (share: { readonly min: number; readonly max: number }) => ({
    min: share.min * nozzle,
    max: share.max * nozzle,
  });
  return { hard: times(SHARES.lineWidthHard), soft: times(SHARES.lineWidthSoft) };
}

/**
 * Refusals and cautions about a print profile. The filament key is looked up by whoever owns the filament table.
 *
 * @param profile - what the printer is set to [mm], any numbers
 * @returns `problems` [-] that refuse the profile, empty when it can be used; `notes` [-] that deserve a caution,
 *   given only when nothing is refused
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `layer-above-line-width`.
 * Notes: `line-narrow-for-nozzle`, `line-wide-for-nozzle`, `layer-above-nozzle-share`, `first-layer-differs`.
 *
 * Source: common-practice.
 */
export function checkProfile(profile: PrintProfile): {
  readonly problems: readonly Problem[];
  readonly notes: readonly Problem[];
} {
  const own = checkLengths(profile);
  if (own.length > 0) return { problems: own, notes: [] };
  const problems = checkAgainstNozzle(profile);
  return { problems, notes: problems.length > 0 ? [] : [...noteLineWidth(profile), ...noteLayers(profile)] };
}

const NAMES: { readonly [K in ProfileLength]: string } = {
  nozzle: 'A nozzle of',
  lineWidth: 'A line width of',
  layerHeight: 'A layer height of',
  firstLayerHeight: 'A first layer of',
};
const LENGTHS = ['nozzle', 'lineWidth', 'layerHeight', 'firstLayerHeight'] as const;

function checkLengths(profile: PrintProfile): Problem[] {
  return LENGTHS.flatMap(
    (name) => outsideRange(`profile.${name}`, NAMES[name], profile[name], PROFILE_LIMITS[name]) ?? [],
  );
}

function checkAgainstNozzle(profile: PrintProfile): Problem[] {
  const { nozzle, lineWidth, layerHeight, firstLayerHeight } = profile;
  const width = layableWidths(nozzle).hard;
  const highest = SHARES.layerHard * nozzle;
  const problems: Problem[] = [];
  const refuse = (name: ProfileLength, code: Problem['code'], limit: Mm, why: string) =>
    problems.push({
      code,
      message: `${NAMES[name]} ${plain(profile[name])} mm is ${why}`,
      field: `profile.${name}`,
      value: profile[name],
      limit,
    });

  const forNozzle = `for a ${plain(nozzle)} mm nozzle`;
  if (isBelow(lineWidth, width.min)) {
    refuse(
      'lineWidth',
      'below-minimum',
      width.min,
      `below ${plain(width.min)} mm ${forNozzle}, where the melt tears; widen the line or take a finer nozzle`,
    );
  }
  if (isAbove(lineWidth, width.max)) {
    refuse(
      'lineWidth',
      'above-maximum',
      width.max,
      `above ${plain(width.max)} mm ${forNozzle}, wider than the flat of its tip; narrow the line or take a larger nozzle`,
    );
  }
  if (isAbove(layerHeight, highest)) {
    refuse(
      'layerHeight',
      'above-maximum',
      highest,
      `above the ${plain(highest)} mm of the nozzle, so layers are not pressed together; lower it`,
    );
  }
  if (isAbove(firstLayerHeight, highest)) {
    refuse(
      'firstLayerHeight',
      'above-maximum',
      highest,
      `above the ${plain(highest)} mm of the nozzle, so it is not pressed onto the plate; lower it`,
    );
  }
  // A bead higher than wide has no stadium section, and every area and spacing here rests on one.
  if (isAbove(layerHeight, lineWidth)) {
    refuse(
      'layerHeight',
      'layer-above-line-width',
      lineWidth,
      `above the line width ${plain(lineWidth)} mm, so lines do not lie flat; lower the layer or widen the line`,
    );
  }
  return problems;
}

function noteLineWidth({ nozzle, lineWidth }: PrintProfile): Problem[] {
  const { min, max } = layableWidths(nozzle).soft;
  const note = (code: Problem['code'], limit: Mm, why: string): Problem => ({
    code,
    message: `A line width of ${plain(lineWidth)} mm is ${why} for a ${plain(nozzle)} mm nozzle (common practice, no source)`,
    field: 'profile.lineWidth',
    value: lineWidth,
    limit,
  });
  if (isBelow(lineWidth, min))
    return [note('line-narrow-for-nozzle', min, `under ${plain(min)} mm, where lines come out uneven,`)];
  if (isAbove(lineWidth, max))
    return [note('line-wide-for-nozzle', max, `over ${plain(max)} mm, where lines are pressed together poorly,`)];
  return [];
}

function noteLayers({ nozzle, layerHeight, firstLayerHeight }: PrintProfile): Problem[] {
  const notes: Problem[] = [];
  const well = SHARES.layerSoft * nozzle;
  if (isAbove(layerHeight, well)) {
    notes.push({
      code: 'layer-above-nozzle-share',
      message: `A layer height of ${plain(layerHeight)} mm is over ${plain(well)} mm, 0.8 of the nozzle, where layers bond weakly; lower it (common practice, no source)`,
      field: 'profile.layerHeight',
      value: layerHeight,
      limit: well,
    });
  }
  const first = SHARES.firstLayerSoft;
  if (isBelow(firstLayerHeight, first.min * layerHeight) || isAbove(firstLayerHeight, first.max * layerHeight)) {
    notes.push({
      code: 'first-layer-differs',
      message: `A first layer of ${plain(firstLayerHeight)} mm is not between one and two layers of ${plain(layerHeight)} mm, so what lies on the plate is not the thickness the layer count suggests; bring them together`,
      field: 'profile.firstLayerHeight',
      value: firstLayerHeight,
      limit: layerHeight,
    });
  }
  return notes;
}
