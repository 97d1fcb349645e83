/** Solids drawn as outlines and pulled up, turned and placed, for tests of the finder. */
import earcut from 'earcut';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import type { Point } from '../../src/core/geometry/outline.ts';

/** A turn about an axis and a shift after it. */
export interface Placing {
  readonly axis: readonly [number, number, number];
  readonly angle: number;
  readonly shift: readonly [number, number, number];
}

/**
 * A solid between two heights with an outline and holes in it.
 *
 * @param outer - counter-clockwise
 * @param holes - clockwise
 */
export function pulledUp(
  outer: readonly Point[],
  low: number,
  high: number,
  holes: readonly (readonly Point[])[] = [],
): TriangleMesh {
  const all = [...outer, ...holes.flat()];
  const starts = holes.map((_, i) => outer.length + holes.slice(0, i).reduce((sum, { length }) => sum + length, 0));
  const cap = earcut(
    all.flatMap(({ x, y }) => [x, y]),
    starts,
  );
  const n = all.length;
  const corners: number[] = [];
  for (let i = 0; i < cap.length; i += 3) {
    const [a = 0, b = 0, c = 0] = cap.slice(i, i + 3);
    const [p, q, r] = [all[a]!, all[b]!, all[c]!];
    const isLeft = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0;
    const [x, y, z] = isLeft ? [a, b, c] : [a, c, b];
    corners.push(x + n, y + n, z + n, x, z, y);
  }
  const wall = (from: number, count: number) => {
    for (let i = 0; i < count; i += 1) {
      const a = from + i;
      const b = from + ((i + 1) % count);
      corners.push(a, b, b + n, a, b + n, a + n);
    }
  };
  wall(0, outer.length);
  for (const [i, hole] of holes.entries()) wall(starts[i]!, hole.length);
  const level = (z: number) => all.flatMap(({ x, y }) => [x, y, z]);
  return { points: Float64Array.from([...level(low), ...level(high)]), corners: Uint32Array.from(corners) };
}

/** Several meshes as one file holds them. */
export function together(...meshes: readonly TriangleMesh[]): TriangleMesh {
  const points = meshes.flatMap((mesh) => [...mesh.points]);
  let before = 0;
  const corners = meshes.flatMap((mesh) => {
    const own = [...mesh.corners].map((corner) => corner + before);
    before += mesh.points.length / 3;
    return own;
  });
  return { points: Float64Array.from(points), corners: Uint32Array.from(corners) };
}

/** A point or, without the shift, a direction as placed; Rodrigues' turn. */
export function placed(
  [x, y, z]: readonly number[],
  { axis, angle, shift }: Placing,
  isDirection = false,
): readonly [number, number, number] {
  const length = Math.hypot(...axis);
  const [u, v, w] = axis.map((part) => part / length) as [number, number, number];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const dot = (u * x! + v * y! + w * z!) * (1 - c);
  const [dx, dy, dz] = isDirection ? [0, 0, 0] : shift;
  return [
    x! * c + (v * z! - w * y!) * s + u * dot + dx,
    y! * c + (w * x! - u * z!) * s + v * dot + dy,
    z! * c + (u * y! - v * x!) * s + w * dot + dz,
  ];
}

export function placedMesh({ points, corners }: TriangleMesh, placing: Placing): TriangleMesh {
  const moved = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 3)
    moved.set(placed([points[i]!, points[i + 1]!, points[i + 2]!], placing), i);
  return { points: moved, corners };
}

/** Points of an arc, both ends in it. */
export function arc(x: number, y: number, radius: number, from: number, to: number, facets: number): readonly Point[] {
  return Array.from({ length: facets + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / facets;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });
}

export const rectangle = (x: number, y: number, width: number, height: number): readonly Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

export interface LeafSizes {
  readonly thickness: number;
  /** From pad to pad. */
  readonly length: number;
  /** 0 for sharp roots. */
  readonly fillet: number;
  readonly pad: number;
  readonly height: number;
  readonly facets: number;
}

/** Two square-cut pads with a leaf between them, its middle at the origin, running along x. */
export function leafOutline({ thickness: t, length, fillet: r, pad, height, facets }: LeafSizes): readonly Point[] {
  const end = length / 2;
  const quarter = Math.PI / 2;
  const corner = (x: number, y: number, from: number): readonly Point[] =>
    r > 0 ? arc(x, y, r, from, from - quarter, facets) : [{ x: Math.sign(x) * end, y: Math.sign(y) * (t / 2) }];
  const [cx, cy] = [end - r, t / 2 + r];
  return [
    { x: -end - pad, y: -height / 2 },
    { x: -end, y: -height / 2 },
    ...corner(-cx, -cy, 2 * quarter),
    ...corner(cx, -cy, quarter),
    { x: end, y: -height / 2 },
    { x: end + pad, y: -height / 2 },
    { x: end + pad, y: height / 2 },
    { x: end, y: height / 2 },
    ...corner(cx, cy, 0),
    ...corner(-cx, cy, 3 * quarter),
    { x: -end, y: height / 2 },
    { x: -end - pad, y: height / 2 },
  ];
}
