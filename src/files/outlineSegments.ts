/** Outlines as drawing files want them: straight segments and arcs of at most half a turn. */
import type { Path, Point } from '../core/geometry/outline.ts';
import { bearing, distance, sweep, type Arc } from '../core/geometry/vector.ts';
import type { Mm } from '../core/units.ts';

/** A nanometre: finer than any drawing program keeps, coarser than round-off. */
const FINEST: Mm = 1e-6;

/** Outlines that belong together in a file: a plane of a joint that has several. */
export interface Layer {
  /** Letters, figures and hyphens only. */
  readonly name: string;
  readonly paths: readonly Path[];
}

export interface Segment {
  readonly from: Point;
  readonly to: Point;
  /** 0 for a straight segment [mm]. */
  readonly radius: Mm;
  /** tan of a quarter of the angle swept, positive counter-clockwise; 0 for a straight segment. */
  readonly bulge: number;
}

/** Arcs past half a turn are halved: the shorter of two arcs is then always meant, and no bulge passes 1. */
function arcSegments(from: Point, arc: Arc): readonly Segment[] {
  const radius = distance(arc.centre, from);
  if (radius < FINEST) return [{ from, to: arc.to, radius: 0, bulge: 0 }];
  const swept = sweep(from, arc);
  if (Math.abs(swept) <= Math.PI + FINEST) return [{ from, to: arc.to, radius, bulge: Math.tan(swept / 4) }];
  const angle = bearing(arc.centre, from) + swept / 2;
  const middle = { x: arc.centre.x + radius * Math.cos(angle), y: arc.centre.y + radius * Math.sin(angle) };
  return [...arcSegments(from, { ...arc, to: middle }), ...arcSegments(middle, arc)];
}

/** The segments of a path; a side that its two rounded corners have used up is left out. */
export function segmentsOf(path: Path): readonly Segment[] {
  let from = path.start;
  const segments = path.pieces.flatMap((piece) => {
    const start = from;
    from = piece.to;
    return piece.kind === 'arc' ? arcSegments(start, piece) : [{ from: start, to: piece.to, radius: 0, bulge: 0 }];
  });
  return segments.filter((segment) => segment.radius > 0 || distance(segment.from, segment.to) >= FINEST);
}

export function isClosed({ start, pieces }: Path): boolean {
  const end = pieces.at(-1)?.to;
  return end !== undefined && distance(start, end) < FINEST;
}
