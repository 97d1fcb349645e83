import { familyOf } from '../../core/flexures/known.ts';
import { bounds, flatten, type Bounds } from '../../core/geometry/flatten.ts';
import type { Path, Piece, Point } from '../../core/geometry/outline.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { leastOf } from '../../core/design/joint.ts';
import { asRad, type Mm, type Rad } from '../../core/units.ts';

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
  /** Angle at full travel of this flexure; 0 where it does not roll to an arc and is drawn at rest only. */
  readonly angle: Rad;
  /** Where it comes back to, as a share of full travel: −1 both ways, 0 to rest. */
  readonly otherEnd: number;
}

/** How far a chord may lie from its arc [mm]: under a tenth of a px at 20 : 1. */
const TOLERANCE = 0.001;

/** A pad may be drawn shorter, but never shorter than its contours and a core of this length [mm]. */
const SHORTEST_CORE = 0.5;
const SHORTEST_PAD = 1.3;

/** Wider than a line by a hair, so that an inset of half a line does not collapse. */
const PASSABLE = 1.001;

export const LAID = { flat: 'along', crease: 'layers', upright: 'across' } as const;

/** How much may be taken off each pad of a figure before its contours no longer fit [mm]. */
export function sparePad({ box, fillet, thickness }: Figure): Mm {
  return Math.max(0, -box.left - fillet - Math.max(SHORTEST_PAD, thickness + SHORTEST_CORE));
}

function outlineOf(a: Assessment, thickness: Mm, cut: Mm): Path {
  const family = familyOf(a.joint);
  const { inRow, pad } = family.roles;
  // One flexure of a row is drawn: the others are alike. A pad thinner than its roots need cannot be outlined.
  const sizes = {
    ...a.sizes,
    ...(inRow === undefined ? {} : { [inRow]: 1 }),
    ...(pad === undefined ? {} : { [pad]: Math.max(a.padThickness ?? 0, thickness + 2 * a.fillet) }),
  };
  const [whole] = family.outline?.(sizes, thickness) ?? [];
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
    angle: asRad(a.travel ? a.amountEach : 0),
    otherEnd: leastOf(a.joint.movement) / a.joint.movement.amount,
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
