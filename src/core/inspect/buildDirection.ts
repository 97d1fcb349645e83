/** The part as it stands on the plate: which way is up, and how high a place of it lies. */
import { dot3 } from '../geometry/mesh/vector3.ts';
import type { Box3, Point3 } from '../geometry/mesh/triangleMesh.ts';
import type { Mm } from '../units.ts';
import type { PlateUp, PrintedAs } from './judged.ts';

const UPS: Readonly<Record<PlateUp, Point3>> = {
  '+z': { x: 0, y: 0, z: 1 },
  '-z': { x: 0, y: 0, z: -1 },
  '+x': { x: 1, y: 0, z: 0 },
  '-x': { x: -1, y: 0, z: 0 },
  '+y': { x: 0, y: 1, z: 0 },
  '-y': { x: 0, y: -1, z: 0 },
};

/**
 * The direction of the file that points away from the plate.
 *
 * @param up - as named [-]
 * @returns direction of length 1 [-]
 *
 * @example upDirection('-y') // → { x: 0, y: -1, z: 0 }
 */
export function upDirection(up: PlateUp): Point3 {
  return UPS[up];
}

/** What of `PrintedAs` says where a place of the part comes to lie. */
export type Stands = Pick<PrintedAs, 'scale' | 'up'>;

/**
 * How high a place of the part lies above the plate as it is printed.
 *
 * @param point - a place of the part as in the file [mm]
 * @param box - of the part as in the file [mm]
 * @param stands - scale [-] and which direction is up
 * @returns height [mm], 0 on the plate
 *
 * @example heightAbovePlate({ x: 1, y: 2, z: 3 }, { min: { x: 0, y: 0, z: 1 }, max: { x: 9, y: 9, z: 9 } }, { scale: 2, up: '+z' }) // → 4
 */
export function heightAbovePlate(point: Point3, box: Box3, { scale, up }: Stands): Mm {
  const direction = UPS[up];
  const lowest = Math.min(dot3(box.min, direction), dot3(box.max, direction));
  return scale * (dot3(point, direction) - lowest);
}

/**
 * How high the part stands on the plate.
 *
 * @param box - of the part as in the file [mm]
 * @param stands - scale [-] and which direction is up
 * @returns height [mm]
 *
 * @example printedHeight({ min: { x: 0, y: 0, z: 1 }, max: { x: 9, y: 9, z: 9 } }, { scale: 2, up: '-z' }) // → 16
 */
export function printedHeight(box: Box3, { scale, up }: Stands): Mm {
  const direction = UPS[up];
  return scale * Math.abs(dot3(box.max, direction) - dot3(box.min, direction));
}

/**
 * How large the part comes out in each direction of the file.
 *
 * @param box - of the part as in the file [mm]
 * @param scale - of the print [-], > 0
 * @returns width, depth and height along x, y and z of the file [mm]
 *
 * @example printedSize({ min: { x: 0, y: 0, z: 1 }, max: { x: 9, y: 8, z: 9 } }, 2) // → { x: 18, y: 16, z: 16 }
 */
export function printedSize({ min, max }: Box3, scale: number): Point3 {
  return { x: scale * (max.x - min.x), y: scale * (max.y - min.y), z: scale * (max.z - min.z) };
}
