/** Pieces that the networks of several families share. */
import type { Support } from '../beam/model.ts';
import type { Path, Point } from '../geometry/outline.ts';
import { roundedOutline, type Corner } from '../geometry/roundedOutline.ts';
import { along, distance, dot, from } from '../geometry/vector.ts';
import type { Mm } from '../units.ts';
import type { FlexureNetwork } from './network.ts';

type Model = FlexureNetwork['model'];

/**
 * A network without loads, springs and ties, unless some are given.
 *
 * @param given - nodes [mm], members, pads, supports and motions [mm] and [rad]
 * @returns the same with empty lists for what was left out
 */
export function modelOf(
  given: Pick<Model, 'nodes' | 'members' | 'pads' | 'supports' | 'motions'> & Partial<Model>,
): Model {
  return { loads: [], springs: [], ties: [], ...given };
}

/**
 * A pad or free node held in every direction.
 *
 * @param at - id of the pad or free node [-]
 * @returns its support
 *
 * @example hold('fixed') // → { at: 'fixed', x: true, y: true, turn: true }
 */
export function hold(at: string): Support {
  return { at, x: true, y: true, turn: true };
}

/** Outer corners of pads, rounded so that they can be laid without slowing; smaller where there is little room. */
const CORNER = 0.5;

/** A rectangle square to the axes [mm]. */
export interface Box {
  readonly left: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
}

/** Where a leaf grows out of a pad: its fillets belong to the pad, which reaches out to the end of what bends. */
export interface PadRoot {
  readonly side: 'left' | 'right' | 'bottom' | 'top';
  /** End of the middle line of the leaf. */
  readonly end: Point;
  /** Direction in which the leaf leaves the pad [rad]. */
  readonly heading: number;
  readonly thickness: Mm;
  readonly fillet: Mm;
}

/**
 * How far the end of a leaf stands off the face of its pad, so that the longer of its two root fillets just fits.
 *
 *     e = r·tan(π/4 + |λ|/2) + (t/2)·tan |λ|
 *
 * @param fillet - root fillet r [mm], ≥ 0
 * @param thickness - of the leaf, t [mm], > 0
 * @param lean - angle λ between the leaf and square to the face [rad], less than a quarter turn
 * @returns stand-off along the leaf [mm], r for a leaf square to its pad
 *
 * @example standOff(0.8, 0.84, 0) // → 0.8
 */
export function standOff(fillet: Mm, thickness: Mm, lean: number): Mm {
  const slant = Math.abs(lean);
  return fillet * Math.tan(Math.PI / 4 + slant / 2) + (thickness / 2) * Math.tan(slant);
}

/**
 * Outline of a pad as drawn: a rectangle with rounded corners and the filleted roots of the leaves that grow out of it.
 *
 * @param box - the rectangle [mm]
 * @param roots - leaves that grow out of it [mm], apart from each other and from the corners
 * @param corner - radius of its corners where there is room [mm], ≥ 0
 * @returns closed outline [mm], counter-clockwise
 *
 * @example padOutline({ left: 0, right: 4, bottom: 0, top: 2 }, []).start // → { x: 0, y: 1 }
 */
export function padOutline(box: Box, roots: readonly PadRoot[], corner: Mm = CORNER): Path {
  const { left, right, bottom, top } = box;
  const walk = [
    { side: 'bottom', start: { x: left, y: bottom }, stop: { x: right, y: bottom }, way: { x: 1, y: 0 } },
    { side: 'right', start: { x: right, y: bottom }, stop: { x: right, y: top }, way: { x: 0, y: 1 } },
    { side: 'top', start: { x: right, y: top }, stop: { x: left, y: top }, way: { x: -1, y: 0 } },
    { side: 'left', start: { x: left, y: top }, stop: { x: left, y: bottom }, way: { x: 0, y: -1 } },
  ] as const;
  const sides = walk.map((face) => ({
    ...face,
    corners: roots.filter(({ side }) => side === face.side).map((root) => rootCorners(root, face.start, face.way)),
  }));
  const room = Math.min(...sides.map(({ start, stop, corners }) => roomAtEnds(start, stop, corners)));
  const radius = Math.min(corner, Math.max(0, room) / 2);
  return roundedOutline(
    sides.flatMap(({ start, way, corners }) => [
      { ...start, radius },
      ...corners.toSorted((a, b) => dot(from(start, a[0]), way) - dot(from(start, b[0]), way)).flat(),
    ]),
  );
}

type RootCorners = readonly [Corner, Corner, Corner, Corner];

/** Foot, end, end and foot of a root, in the order in which a walk round the pad meets them. */
function rootCorners({ end, heading, thickness, fillet }: PadRoot, start: Point, way: Point): RootCorners {
  const out = { x: way.y, y: -way.x };
  const ahead = { x: Math.cos(heading), y: Math.sin(heading) };
  // A quarter turn back from the leaf lies the side that is met first.
  const across = { x: ahead.y, y: -ahead.x };
  const sign = dot(across, way) < 0 ? 1 : -1;
  const corner = (side: 1 | -1) => along(end, across, (side * sign * thickness) / 2);
  const foot = (tip: Point) => along(tip, ahead, -dot(from(start, tip), out) / dot(ahead, out));
  const [first, second] = [corner(1), corner(-1)];
  return [
    { ...foot(first), radius: fillet },
    { ...first, radius: 0 },
    { ...second, radius: 0 },
    { ...foot(second), radius: fillet },
  ];
}

/** What is left for the rounding of a pad's corners beside its roots. */
function roomAtEnds(start: Point, stop: Point, roots: readonly RootCorners[]): Mm {
  // A fillet reaches along the face no further than along the leaf, and there up to the leaf's end.
  const beside = roots.flatMap(([first, firstEnd, secondEnd, second]) => [
    distance(start, first) - Math.max(first.radius, distance(first, firstEnd)),
    distance(stop, second) - Math.max(second.radius, distance(second, secondEnd)),
  ]);
  return Math.min(distance(start, stop), ...beside);
}
