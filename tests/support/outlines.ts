import type { Path, Piece, Point } from '../../src/core/geometry/outline.ts';

/** Distance of a point from a straight line between two others. */
function fromSegment(p: Point, a: Point, b: Point): number {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const share = ((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy || 1);
  const on = Math.min(1, Math.max(0, share));
  return Math.hypot(p.x - a.x - on * ux, p.y - a.y - on * uy);
}

/** Shortest distance of a point from a run of straight lines: brute force, to check cleverer code with. */
export function distanceFrom(p: Point, points: readonly Point[]): number {
  return Math.min(...points.slice(1).map((b, i) => fromSegment(p, points[i] ?? b, b)));
}

/** Points along straight lines no further apart than `step`. */
export function sampled(points: readonly Point[], step: number): readonly Point[] {
  return points.slice(1).flatMap((b, i) => {
    const a = points[i] ?? b;
    const parts = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / step));
    return Array.from({ length: parts }, (_, k) => {
      const share = (k + 1) / parts;
      return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    });
  });
}

/** Every point a path is built on: ends of its pieces and centres of its arcs. */
export function nodes(path: Path): readonly Point[] {
  return [
    path.start,
    ...path.pieces.flatMap((piece) => (piece.kind === 'line' ? [piece.to] : [piece.to, piece.centre])),
  ];
}

export function arcs(path: Path): readonly Extract<Piece, { kind: 'arc' }>[] {
  return path.pieces.filter((piece) => piece.kind === 'arc');
}
