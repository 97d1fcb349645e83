/** How closely a printer keeps the sizes that it is set to. */
import { outsideRange, type Problem, type Range } from '../problems.ts';
import type { Mm } from '../units.ts';

/** Nine prints in ten lie within these, to either side. Settings of a profile are exact; what comes out is not. */
export interface PrinterSpread {
  /** Of the width of a line, as a share of it [-]: how evenly filament is pushed, how even it is itself. */
  readonly lineWidth: number;
  /** Of the thickness of layers on the plate [mm]: mostly of the first one, which takes up how the plate lies. */
  readonly layers: Mm;
  /** Of lengths in the plane of the plate [mm]. */
  readonly lengths: Mm;
}

export type SpreadName = keyof PrinterSpread;

/** A desktop printer that has been looked after. Common practice, no source. */
export const USUAL_SPREAD: PrinterSpread = { lineWidth: 0.04, layers: 0.03, lengths: 0.1 };

/** What can be believed of a printer. Common practice, no source. */
export const SPREAD_LIMITS: Readonly<Record<SpreadName, Range & { readonly step: number }>> = {
  lineWidth: { min: 0, max: 0.3, step: 0.01, because: 'a printer that keeps no better than that lays no whole lines' },
  layers: { min: 0, max: 0.2, step: 0.01, because: 'a plate that uneven carries no first layer' },
  lengths: { min: 0, max: 1, step: 0.05, because: 'a printer that far out wants its axes set first' },
};

const WHAT: Readonly<Record<SpreadName, readonly [what: string, unit: '' | 'mm']>> = {
  lineWidth: ['A line width kept within', ''],
  layers: ['A thickness of layers kept within', 'mm'],
  lengths: ['Lengths kept within', 'mm'],
};

/**
 * What is wrong with how closely a printer is said to keep its sizes.
 *
 * @param spread - as typed or read: share of the line width [-], layers and lengths [mm]
 * @returns problems [-], empty when it can be used
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`.
 *
 * Source: common-practice.
 * @example checkSpread({ lineWidth: 0.04, layers: 0.03, lengths: 0.1 }) // → []
 */
export function checkSpread(spread: PrinterSpread): readonly Problem[] {
  return (['lineWidth', 'layers', 'lengths'] as const).flatMap((name) => {
    const [what, unit] = WHAT[name];
    return outsideRange(`spread.${name}`, what, spread[name], SPREAD_LIMITS[name], unit) ?? [];
  });
}

/** Standard deviation of a reading of good calipers on a thin section that gives a little [mm]. Common practice, no source. */
export const CALIPER_SIGMA: Mm = 0.02;
