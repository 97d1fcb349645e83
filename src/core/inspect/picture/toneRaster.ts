import type { Box3 } from '../../geometry/mesh/triangleMesh.ts';
import type { PlateUp } from '../judged.ts';
import type { DepthBuffer } from './depthBuffer.ts';
import type { Facing } from './facing.ts';
import type { Grid } from './onScreen.ts';
import { INSIDE_TONE, TONES, type ToneRaster } from './picture.ts';
import { axonometricForm, type Form } from './placing.ts';

/** Where the light comes from: above, in front and a little from the left, so that top, front and right sides fall well apart. */
const LIGHT = { across: -0.35, away: -0.45, up: 0.82 } as const;
/** How the right side stands to it, the darkest that is common; what looks farther away is no darker. */
const DARKEST = LIGHT.across;

/**
 * The tone of what is seen at each pixel, by which way it looks.
 *
 * @param grid - of the picture [-]
 * @param buffer - what is seen where [-]
 * @param facing - which way triangles look [-]
 * @param box - of the part [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @returns tones, 0 where nothing is seen
 */
export function toneRaster(grid: Grid, { seen }: DepthBuffer, facing: Facing, box: Box3, up: PlateUp): ToneRaster {
  const light = axonometricForm(box, up, LIGHT.across, LIGHT.away, LIGHT.up);
  const pixels = new Uint8Array(seen.length);
  for (let i = 0; i < pixels.length; i += 1) {
    const triangle = seen[i]!;
    if (triangle >= 0) pixels[i] = facing.side[triangle]! < 0 ? INSIDE_TONE : toneOf(facing.normals, triangle, light);
  }
  return { ...grid, pixels };
}

function toneOf(normals: Float32Array, triangle: number, light: Form): number {
  const at = 3 * triangle;
  const bright = light[0] * normals[at]! + light[1] * normals[at + 1]! + light[2] * normals[at + 2]!;
  const dark = (LIGHT.up - bright) / (LIGHT.up - DARKEST);
  return 1 + Math.round((TONES - 1) * Math.min(1, Math.max(0, dark)));
}
