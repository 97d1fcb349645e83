/** Splits a flat face of many corners into triangles that cover it and nothing else, whether it bulges or not. */
import earcut, { deviation } from 'earcut';

/** Round-off of areas; faces that cross themselves are off by far more. */
const SAME_AREA = 1e-6;

export interface Split {
  /** Three numbers of corners a triangle, turning as the face does. */
  readonly triangles: readonly number[];
  /** Whether the face crosses itself, so that no split can be right. */
  readonly isCrossed: boolean;
}

/**
 * Triangles of a face with three corners or more; as many as it has corners, less two, so that none is left out of an edge
 * that the neighbours share.
 *
 * @param corners - x, y and z of one corner of the face after the other
 */
export function splitPolygon(corners: readonly number[]): Split {
  if (corners.length === 9) return { triangles: [0, 1, 2], isCrossed: false };
  const flat = flattened(corners);
  const triangles = earcut(flat);
  // A face without any area is split like one that bulges, so that its edges are still there.
  if (triangles.length === 0) return { triangles: fan(flat.length / 2), isCrossed: false };
  return { triangles, isCrossed: !(deviation(flat, null, 2, triangles) <= SAME_AREA) };
}

function fan(count: number): readonly number[] {
  return Array.from({ length: count - 2 }, (_, i) => [0, i + 1, i + 2]).flat();
}

/**
 * The face seen along the axis that it faces most, counter-clockwise. Dropping a coordinate instead of turning the face
 * leaves the others exact, and corners that lie in a row in a row.
 */
function flattened(corners: readonly number[]): number[] {
  const normal = [0, 1, 2].map((axis) => areaAlong(corners, axis));
  const drop = [0, 1, 2].reduce((most, axis) => (Math.abs(normal[axis]!) > Math.abs(normal[most]!) ? axis : most), 0);
  const [across, up] = normal[drop]! < 0 ? [(drop + 2) % 3, (drop + 1) % 3] : [(drop + 1) % 3, (drop + 2) % 3];
  const flat: number[] = [];
  for (let at = 0; at < corners.length; at += 3) flat.push(corners[at + across]!, corners[at + up]!);
  return flat;
}

/** Twice the area of a face as seen along an axis, counter-clockwise positive. */
function areaAlong(corners: readonly number[], axis: number): number {
  const [across, up] = [(axis + 1) % 3, (axis + 2) % 3];
  let area = 0;
  for (let at = 0, before = corners.length - 3; at < corners.length; before = at, at += 3) {
    // Measured from the first corner, so that a small face far out keeps its digits.
    const [u0, v0] = [corners[before + across]! - corners[across]!, corners[before + up]! - corners[up]!];
    const [u1, v1] = [corners[at + across]! - corners[across]!, corners[at + up]! - corners[up]!];
    area += u0 * v1 - u1 * v0;
  }
  return area;
}
