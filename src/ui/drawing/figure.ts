import { findFamily } from '../../core/flexures/index.ts';
import { bounds, flatten, type Bounds } from '../../core/geometry/flatten.ts';
import type { Path, Piece, Point } from '../../core/geometry/outline.ts';
import { rollPoint } from '../../core/geometry/roll.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { asRad, type Mm, type Rad } from '../../core/units.ts';
import { densified, gridInside } from './polygon.ts';

/**
 * How the lines lie in the plane that is drawn, which is the plane of bending: `along` the leaf, seen from above;
 * as `layers`, seen from the side; or in layers `across` the leaf, seen from the side.
 */
export type Laid = 'along' | 'layers' | 'across';

/** One flexure with its pads as it is drawn [mm], leaf from x = 0 to `length` on y = 0. */
export interface Figure {
  readonly laid: Laid;
  readonly outline: Path;
  /** What has been taken off each pad. */
  readonly cut: Mm;
  /** The outline as points, closed, its start not repeated. */
  readonly points: readonly Point[];
  readonly box: Bounds;
  readonly length: Mm;
  readonly thickness: Mm;
  readonly fillet: Mm;
  /** Whether the pad stands out below the leaf too, or the leaf is flush with it there. */
  readonly padBelow: boolean;
  /** Angle at full travel of this flexure. */
  readonly angle: Rad;
  readonly bothWays: boolean;
}

/** How far a chord may lie from its arc [mm]: under a tenth of a px at 20 : 1. */
const TOLERANCE = 0.001;

/** A pad may be drawn shorter, but never shorter than its contours and a core of this length [mm]. */
const SHORTEST_CORE = 0.5;
const SHORTEST_PAD = 1.3;

/** Wider than a line by a hair, so that an inset of half a line does not collapse. */
const PASSABLE = 1.001;

const LAID = { flat: 'along', crease: 'layers', upright: 'across' } as const;

/** How much may be taken off each pad before its contours no longer fit [mm]. */
export function sparePad(a: Assessment): Mm {
  const { outline } = figureOf(a, 0);
  const pad = -bounds([outline]).left - a.fillet;
  return Math.max(0, pad - Math.max(SHORTEST_PAD, a.section.thickness + SHORTEST_CORE));
}

function outlineOf(a: Assessment, thickness: Mm, cut: Mm): Path {
  const family = findFamily(a.joint.family);
  if (!family) throw new RangeError(`assessed a joint of no known family: ${a.joint.family}`);
  const { inRow, pad } = family.roles;
  // One flexure of a row is drawn: the others are alike. A pad thinner than its roots need cannot be outlined.
  const sizes = { ...a.joint.sizes, [inRow]: 1, [pad]: Math.max(a.padThickness, thickness + 2 * a.fillet) };
  const [whole] = family.outline(sizes, thickness);
  if (!whole) throw new RangeError(`${family.id} has no outline`);
  return cut > 0 ? withShorterPads(whole, a.length, a.fillet, cut) : whole;
}

/** The same pads on a leaf that two halves of a line just pass, for contours that close at the root. */
export function passableOutline(a: Assessment, { cut, outline }: Figure): Path {
  const passable = a.joint.profile.lineWidth * PASSABLE;
  return passable > a.section.thickness ? outlineOf(a, passable, cut) : outline;
}

/** What there is to draw of a joint, its pads cut shorter by so much. */
export function figureOf(a: Assessment, cut: Mm): Figure {
  const { thickness } = a.section;
  const outline = outlineOf(a, thickness, cut);
  const box = bounds([outline]);
  return {
    laid: LAID[a.joint.profile.lying],
    outline,
    cut,
    points: flatten(outline, TOLERANCE).slice(0, -1),
    box,
    length: a.length,
    thickness,
    fillet: a.fillet,
    padBelow: box.bottom < -thickness / 2 - 1e-9,
    angle: a.angleEach,
    bothWays: a.joint.movement.ways === 'both ways',
  };
}

/** The far half of each pad moved towards the leaf. Pads are bodies that go on elsewhere, so their length says nothing. */
function withShorterPads(path: Path, length: Mm, fillet: Mm, cut: Mm): Path {
  const { left, right } = bounds([path]);
  const [before, after] = [(left - fillet) / 2, (right + length + fillet) / 2];
  const moved = (p: Point): Point => ({ x: p.x < before ? p.x + cut : p.x > after ? p.x - cut : p.x, y: p.y });
  const pieces = path.pieces.map((piece): Piece =>
    piece.kind === 'line'
      ? { kind: 'line', to: moved(piece.to) }
      : { ...piece, to: moved(piece.to), centre: moved(piece.centre) },
  );
  return { start: moved(path.start), pieces };
}

/** Where a point goes when the joint is bent by a fraction of its full travel; below 0 the other way. */
export function bentPoint(figure: Figure, point: Point, fraction: number): Point {
  return rollPoint(point, figure.length, asRad(figure.angle * fraction));
}

/** Points on the edge and inside of all that moves, close enough together that nothing wider than `step` slips through. */
export function movingPoints({ points, box, length }: Figure, step: Mm): readonly Point[] {
  const closed = [...points, ...points.slice(0, 1)];
  const edge = densified(closed, step).filter(({ x }) => x > 0);
  const inside = gridInside(points, step, length);
  // The far face of the moving pad is what sweeps furthest; its middle is on the centre line.
  return [...edge, ...inside, { x: box.right, y: 0 }];
}

/** Fractions of the travel at which to look: as many as keep the far end from moving more than `step` between two. */
export function travelSteps({ angle, box }: Figure, step: Mm): readonly number[] {
  const steps = Math.min(60, Math.max(6, Math.ceil((angle * (box.right + box.top)) / step)));
  return Array.from({ length: steps + 1 }, (_, i) => i / steps);
}

/** The rectangle that holds the joint at rest and everywhere it goes [mm]; with the other way too where it is drawn. */
export function sweptBox(figure: Figure, ways: 'drawn' | 'one way' = 'drawn'): Bounds {
  const corners = figure.points.filter(({ x }) => x > 0);
  const there = travelSteps(figure, Math.max(1, figure.box.right / 20));
  const fractions = figure.bothWays && ways === 'drawn' ? [...there, ...there.map((f) => -f)] : there;
  const all = fractions.flatMap((fraction) => corners.map((point) => bentPoint(figure, point, fraction)));
  const { left, right, bottom, top } = figure.box;
  return {
    left: Math.min(left, ...all.map(({ x }) => x)),
    right: Math.max(right, ...all.map(({ x }) => x)),
    bottom: Math.min(bottom, ...all.map(({ y }) => y)),
    top: Math.max(top, ...all.map(({ y }) => y)),
  };
}
