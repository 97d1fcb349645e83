import type { TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import type { Form, Placing } from './placing.ts';

/** Room round the part in the grid [pixels], so that what is beside its edge can be looked up. */
const MARGIN = 3;
/** How many pixels a grid may have; beyond it they are larger. */
const MOST_PIXELS = 2e6;

/** The grid of pixels behind a picture. */
export interface Grid {
  readonly width: number;
  readonly height: number;
  /** Per mm on paper. */
  readonly pixelsPerMm: number;
  /** Pixels between the edge of the grid and that of the picture. */
  readonly margin: number;
}

/** Vertices on a grid: pixels to the right and downwards, and how near the eye. */
export interface OnScreen {
  readonly grid: Grid;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Greater is nearer [mm of the part]. */
  readonly near: Float64Array;
  /** How long a pixel is on the part, along an axis drawn in full [mm]. */
  readonly pixel: number;
}

/**
 * A grid for a picture.
 *
 * @param placing - of the picture [mm]
 * @param pixelsPerMm - how fine [pixels per mm on paper], > 0
 * @returns its size [-]
 */
export function gridOf({ width, height }: Placing, pixelsPerMm: number): Grid {
  const wanted = width * height * pixelsPerMm ** 2;
  const fineness = wanted > MOST_PIXELS ? pixelsPerMm * Math.sqrt(MOST_PIXELS / wanted) : pixelsPerMm;
  const size = (length: number) => Math.max(1, Math.ceil(length * fineness)) + 2 * MARGIN;
  return { width: size(width), height: size(height), pixelsPerMm: fineness, margin: MARGIN };
}

/**
 * The vertices of a part on the grid of its picture.
 *
 * @param mesh - the part [mm]
 * @param placing - of the picture [mm]
 * @param grid - its grid [-]
 * @returns places [pixels] and nearness [mm]
 */
export function onScreen({ points }: TriangleMesh, placing: Placing, grid: Grid): OnScreen {
  const { pixelsPerMm, margin } = grid;
  return {
    grid,
    x: valuesOf(points, placing.right, pixelsPerMm, margin),
    y: valuesOf(points, placing.down, pixelsPerMm, margin),
    near: valuesOf(points, placing.nearer, 1, 0),
    pixel: 1 / (pixelsPerMm * placing.scale),
  };
}

function valuesOf(points: Float64Array, [x, y, z, plus]: Form, by: number, and: number): Float64Array {
  const values = new Float64Array(points.length / 3);
  for (let i = 0; i < values.length; i += 1) {
    values[i] = (x * points[3 * i]! + y * points[3 * i + 1]! + z * points[3 * i + 2]! + plus) * by + and;
  }
  return values;
}
