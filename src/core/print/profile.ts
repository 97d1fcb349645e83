import type { Mm } from '../units.ts';

/**
 * How the flexure lies in the print: **flat** (bends in the plate plane, lines run along it),
 * **crease** (thin in the build direction), **upright** (layers stack along it, so bending pulls them apart).
 */
export type Lying = 'flat' | 'crease' | 'upright';
export const LYINGS: readonly Lying[] = ['flat', 'crease', 'upright'];

/**
 * How thick n lines side by side come out. Toolpath programs differ:
 * **nominal** n·w, or **overlapped** beads (n − 1)·s + w with the spacing s that conserves area.
 */
export type FitRule = 'nominal' | 'overlapped';
export const FIT_RULES: readonly FitRule[] = ['nominal', 'overlapped'];

/** What the printer is set to when this joint is laid. */
export interface PrintProfile {
  readonly nozzle: Mm;
  readonly lineWidth: Mm;
  readonly layerHeight: Mm;
  readonly firstLayerHeight: Mm;
  readonly lying: Lying;
  readonly fitRule: FitRule;
  /** Key of a row in the filament table. */
  readonly filament: string;
}
