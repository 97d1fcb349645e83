import type { Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import { nearestWhole, type NearestCount } from './nearestCount.ts';
import type { PrintProfile } from './profile.ts';

/** The settings that decide how thick stacked layers come out. */
export type LayerSettings = Pick<PrintProfile, 'layerHeight' | 'firstLayerHeight'>;

/**
 * Thickness of n layers that start on the plate, the first layer counted.
 *
 *     t = h₁ + (n − 1)·h
 *
 * @param count - layers through n [-], whole, ≥ 1
 * @param settings - layer height h and first layer h₁ [mm]
 * @returns thickness t [mm], > 0
 *
 * Source: common-practice.
 * @example thicknessOfLayers(3, { layerHeight: 0.2, firstLayerHeight: 0.24 }) // → 0.64
 */
export function thicknessOfLayers(count: number, { layerHeight, firstLayerHeight }: LayerSettings): Mm {
  return firstLayerHeight + (count - 1) * layerHeight;
}

/**
 * How many layers lie in a thickness on the plate, with the fraction: the inverse of `thicknessOfLayers`; below the
 * first layer it is the share of that layer.
 *
 * @param thickness - t [mm], > 0
 * @param settings - layer height and first layer [mm]
 * @returns layers [-], > 0
 *
 * Source: common-practice.
 * @example exactLayers(0.5, { layerHeight: 0.2, firstLayerHeight: 0.2 }) // → 2.5
 */
export function exactLayers(thickness: Mm, { layerHeight, firstLayerHeight }: LayerSettings): number {
  return thickness < firstLayerHeight ? thickness / firstLayerHeight : 1 + (thickness - firstLayerHeight) / layerHeight;
}

/**
 * The whole number of layers nearest to a thickness, at least one. Ties go down: see `nearestWhole`.
 *
 * @param thickness - t [mm], > 0
 * @param settings - layer height and first layer [mm]
 * @returns exact and nearest count [-], thickness of the nearest [mm], and whether it was a tie
 *
 * Source: common-practice.
 * @example nearestLayers(0.5, { layerHeight: 0.2, firstLayerHeight: 0.2 }) // → { exact: 2.5, count: 2, thickness: 0.4, tie: true }
 */
export function nearestLayers(thickness: Mm, settings: LayerSettings): NearestCount {
  const exact = exactLayers(thickness, settings);
  const { count, tie } = nearestWhole(exact);
  return { exact, count, thickness: thicknessOfLayers(count, settings), tie };
}

/**
 * What deserves a caution about a number of layers through.
 *
 * @param count - layers through [-], whole, ≥ 1
 * @returns notes [-]: `single-layer`, or none
 *
 * Source: common-practice.
 */
export function explainLayers(count: number): readonly Problem[] {
  if (count !== 1) return [];
  return [
    {
      code: 'single-layer',
      message:
        'A single layer folds well (creases are often about 0.2 mm thick) but has no second layer to bridge a gap between its lines, and its thickness is whatever the first layer comes out as; two layers are safer (common practice, no source)',
      field: 'sizes.layers',
      value: count,
      limit: 2,
    },
  ];
}
