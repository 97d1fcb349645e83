import type { BeamNode, Member, Pad } from '../beam/model.ts';
import type { Path, Point } from '../geometry/outline.ts';
import { roundedOutline } from '../geometry/roundedOutline.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf, padOutline, type PadRoot } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { acrossAtMost } from './reach.ts';
import { flexing, type SnapArchSizes } from './snapArchSizes.ts';
import { rootOnWall, sharpCorner } from './wallRoots.ts';

/** A little past the mirror image of the arch as printed, where it comes to rest at the latest. */
const PAST_MIRRORED = 2.05;

/** x along the span from the left wall, y up from the ends of the lower arch; the block is pushed down. */
export const snapArchNetwork: Mechanics<SnapArchSizes> = {
  network: (sizes, thickness, asked): FlexureNetwork => ({
    model: modelOf({
      ...archParts(sizes, thickness, asked),
      supports: [hold('frame'), ...(asked.drive === 'guided' ? [{ at: 'block', turn: true }] : [])],
      motions: [{ at: 'block', y: -asked.amount }],
    }),
    driven: { at: 'block', direction: 'y' },
    moving: 'block',
    alike: sizes.sideBySide,
    bodies: [
      { pad: 'frame', outlines: [frameOutline(sizes, thickness)] },
      { pad: 'block', outlines: [blockOutline(sizes, thickness)] },
    ],
    dimensions: dimensionsOf(sizes),
  }),

  reach: ({ rise }) => PAST_MIRRORED * rise,
  limit: farthest,
};

/**
 * Down to where each half wave is pulled straight and half as long again. It is at most as long as its mean square slope
 * makes it: L² ≤ a² + π²·h²/8, a the way along and h the rise.
 */
function farthest(sizes: SnapArchSizes): Mm {
  const along = flexing(sizes) / 2;
  const length = Math.hypot(along, (Math.PI * sizes.rise) / Math.sqrt(8));
  return sizes.rise + acrossAtMost(length, along);
}

/** Heights of the ends of the arches above those of the lower one. */
function levels({ arches, apart }: SnapArchSizes): readonly Mm[] {
  return arches === 1 ? [0] : [0, apart];
}

function middleOf({ span, rise, arches, apart }: SnapArchSizes): Point {
  return { x: span / 2, y: rise + (arches === 1 ? 0 : apart / 2) };
}

/**
 * Two half waves for each arch, from the frame to the block. The block is pushed half-way between the arches, at its
 * middle, and may go aside; unless it is guided, nothing but the arches keeps it upright.
 */
function archParts(
  sizes: SnapArchSizes,
  thickness: Mm,
  { widthRatio }: NetworkAsked,
): { nodes: BeamNode[]; members: Member[]; pads: Pad[] } {
  const { span, rise, block, depth } = sizes;
  const numbered = levels(sizes).map((level, k) => ({ level, k }));
  const ends = numbered.flatMap(({ level, k }) => [
    { id: `left${k}`, x: 0, y: level },
    { id: `right${k}`, x: span, y: level },
  ]);
  // Without a block both halves meet at one node.
  const sides = block > 0 ? (['before', 'behind'] as const) : (['middle', 'middle'] as const);
  const held = numbered.flatMap(({ level, k }) => [
    { id: `${sides[0]}${k}`, x: (span - block) / 2, y: level + rise },
    ...(block > 0 ? [{ id: `${sides[1]}${k}`, x: (span + block) / 2, y: level + rise }] : []),
  ]);
  const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: depth, widthRatio } as const;
  return {
    nodes: [...ends, ...held],
    members: numbered.flatMap(({ k }) => [
      { id: `rising${k}`, from: `left${k}`, to: `${sides[0]}${k}`, ...half },
      { id: `falling${k}`, from: `${sides[1]}${k}`, to: `right${k}`, ...half },
    ]),
    pads: [
      { id: 'frame', nodes: ends.map(({ id }) => id) },
      { id: 'block', nodes: held.map(({ id }) => id), at: middleOf(sizes) },
    ],
  };
}

/** Two walls on a base; the base lies clear of the arch when it has snapped. */
function frameOutline(sizes: SnapArchSizes, thickness: Mm): Path {
  const { span, rise, fillet, apart, arches } = sizes;
  const wall = padLength(thickness);
  const top = (arches === 1 ? 0 : apart) + thickness / 2 + fillet + 1;
  const floor = -Math.max((PAST_MIRRORED - 1) * rise, fillet) - thickness / 2 - 1;
  const [left, right] = [-fillet, span + fillet];
  const leftRoots = levels(sizes).flatMap((level) => rootOnWall(left, 0, level, thickness, fillet));
  const rightRoots = levels(sizes).flatMap((level) => rootOnWall(right, span, level, thickness, fillet));
  return roundedOutline([
    sharpCorner(left - wall, floor - wall),
    sharpCorner(right + wall, floor - wall),
    sharpCorner(right + wall, top),
    sharpCorner(right, top),
    ...rightRoots.toReversed(),
    sharpCorner(right, floor),
    sharpCorner(left, floor),
    ...leftRoots,
    sharpCorner(left, top),
    sharpCorner(left - wall, top),
  ]);
}

/** From below the lower arch to a nose above the upper one; without a block a nose as wide as the arch is thick. */
function blockOutline(sizes: SnapArchSizes, thickness: Mm): Path {
  const { span, rise, block, fillet } = sizes;
  const half = block > 0 ? block / 2 - fillet : thickness / 2;
  const heights = levels(sizes).map((level) => level + rise);
  const below = block > 0 ? thickness / 2 + fillet : thickness / 2;
  const root = (side: 'left' | 'right', y: Mm): PadRoot => ({
    side,
    end: { x: span / 2 + (side === 'left' ? -block : block) / 2, y },
    heading: side === 'left' ? Math.PI : 0,
    thickness,
    fillet,
  });
  const box = {
    left: span / 2 - half,
    right: span / 2 + half,
    bottom: rise - below,
    top: (heights.at(-1) ?? rise) + thickness / 2 + fillet + padLength(thickness),
  };
  const roots = block > 0 ? heights.flatMap((y) => [root('left', y), root('right', y)]) : [];
  return padOutline(box, roots);
}

function dimensionsOf(sizes: SnapArchSizes): readonly Dimension[] {
  const { span, rise, apart, arches, block } = sizes;
  const middle = span / 2;
  const foot: Point = { x: 0, y: 0 };
  const between: readonly Dimension[] =
    arches === 1
      ? []
      : [{ kind: 'distance', parameter: 'apart', from: foot, to: { x: 0, y: apart }, off: padLength(0) + 6 }];
  const width: readonly Dimension[] =
    block > 0
      ? [
          {
            kind: 'distance',
            parameter: 'block',
            from: { x: middle - block / 2, y: rise },
            to: { x: middle + block / 2, y: rise },
            off: middleOf(sizes).y + 6,
          },
        ]
      : [];
  return [
    { kind: 'distance', parameter: 'span', from: foot, to: { x: span, y: 0 }, off: -(PAST_MIRRORED * rise + 8) },
    { kind: 'distance', parameter: 'rise', from: { x: span / 4, y: 0 }, to: { x: span / 4, y: rise }, off: 3 },
    ...between,
    ...width,
    { kind: 'thickness', parameter: 'lines', member: 'rising0', share: 0.5 },
  ];
}
