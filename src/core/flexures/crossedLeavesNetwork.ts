import type { BeamNode, Member } from '../beam/model.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { CENTRED } from './commonDrives.ts';
import { hold, modelOf, padOutline, standOff, type Box } from './commonNetwork.ts';
import type { CrossedSizes } from './crossedLeaves.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { pinnedReach } from './reach.ts';

/**
 * The crossing lies at x = y = 0, the fixed pad below it, the moving pad above; leaf A leans to the right on its way
 * up, leaf B to the left. The moving pad is turned, and its place told, at the crossing.
 */
export const crossedLeavesNetwork: Mechanics<CrossedSizes> = {
  network: crossedNetwork,

  reach: (sizes, thickness) => Math.min(Math.PI / 2, padsMeet(sizes, thickness)),
  limit: padsMeet,
};

/** The moving pad turns nearly about the crossing, whether a pin holds it there or not. */
function padsMeet(sizes: CrossedSizes, thickness: Mm): number {
  const { fixed, moving } = padBoxes(sizes, thickness);
  return pinnedReach(moving.bottom, -fixed.top, fixed.right);
}

/** One leaf: its foot on the fixed pad, its head on the moving one, and the plane it lies in. */
interface Leaf {
  readonly key: 'A' | 'B';
  readonly foot: Point;
  readonly head: Point;
  /** Direction from foot to head [rad]. */
  readonly heading: number;
  readonly plane: number;
}

function leavesOf({ length, between, crossing, fused }: CrossedSizes): readonly [Leaf, Leaf] {
  const leaf = (key: 'A' | 'B', lean: 1 | -1): Leaf => {
    const way = { x: lean * Math.sin(between / 2), y: Math.cos(between / 2) };
    const at = (s: Mm): Point => ({ x: s * way.x, y: s * way.y });
    return {
      key,
      foot: at(-crossing * length),
      head: at((1 - crossing) * length),
      heading: Math.atan2(way.y, way.x),
      plane: key === 'B' && fused !== 1 ? 1 : 0,
    };
  };
  return [leaf('A', 1), leaf('B', -1)];
}

function crossedNetwork(sizes: CrossedSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { fused, sideBySide } = sizes;
  const leaves = leavesOf(sizes);
  const ends: readonly BeamNode[] = leaves.flatMap(({ key, foot, head }) => [
    { id: `foot${key}`, ...foot },
    { id: `head${key}`, ...head },
  ]);
  const centre = { x: 0, y: 0 };
  const held = asked.drive === CENTRED.id ? [{ at: 'moving', x: true, y: true }] : [];
  return {
    model: modelOf({
      nodes: fused === 1 ? [...ends, { id: 'crossing', ...centre }] : ends,
      members: leaves.flatMap((leaf) => membersOf(leaf, sizes, thickness, asked.widthRatio)),
      pads: [
        { id: 'fixed', nodes: ['footA', 'footB'] },
        { id: 'moving', nodes: ['headA', 'headB'], at: centre },
      ],
      supports: [hold('fixed'), ...held],
      motions: [{ at: 'moving', turn: asked.amount }],
    }),
    driven: { at: 'moving', direction: 'turn' },
    moving: 'moving',
    alike: sideBySide,
    bodies: crossedBodies(leaves, sizes, thickness),
    dimensions: crossedDimensions(leaves, sizes, thickness),
  };
}

/** A stacked leaf is one member, a fused one two that end in the crossing. */
function membersOf(leaf: Leaf, sizes: CrossedSizes, thickness: Mm, widthRatio: number): readonly Member[] {
  const { key, plane } = leaf;
  const member = (id: string, from: string, to: string): Member => ({
    id,
    from,
    to,
    shape: { kind: 'straight' },
    thickness,
    width: sizes.depth,
    plane,
    widthRatio,
  });
  const [foot, head] = [`foot${key}`, `head${key}`];
  if (sizes.fused !== 1) return [member(`leaf${key}`, foot, head)];
  return [member(`lower${key}`, foot, 'crossing'), member(`upper${key}`, 'crossing', head)];
}

/** What a pad reaches beyond the outermost foot, so that a core is left between the lines round its edge. */
const BESIDE = 1;

/** Both pads alike, wide enough for the wider pair of feet. */
function padBoxes(sizes: CrossedSizes, thickness: Mm): { readonly fixed: Box; readonly moving: Box } {
  const { length, between, crossing, fillet, pad } = sizes;
  const half = between / 2;
  const off = standOff(fillet, thickness, half);
  const [below, above] = [crossing * length + off, (1 - crossing) * length + off];
  const foot = thickness / (2 * Math.cos(half)) + fillet * Math.tan(Math.PI / 4 - half / 2);
  const right = Math.sin(half) * Math.max(below, above) + foot + BESIDE;
  const [floor, ceiling] = [-Math.cos(half) * below, Math.cos(half) * above];
  return {
    fixed: { left: -right, right, bottom: floor - pad, top: floor },
    moving: { left: -right, right, bottom: ceiling, top: ceiling + pad },
  };
}

/** Each pad once in every plane, with the roots of the leaves that lie there. */
function crossedBodies(leaves: readonly Leaf[], sizes: CrossedSizes, thickness: Mm): readonly Body[] {
  const { fused, fillet } = sizes;
  const { fixed, moving } = padBoxes(sizes, thickness);
  return (fused === 1 ? [0] : [0, 1]).flatMap((plane): readonly Body[] => {
    const here = leaves.filter((leaf) => leaf.plane === plane);
    const feet = here.map(({ foot, heading }) => ({ side: 'top', end: foot, heading, thickness, fillet }) as const);
    const heads = here.map(
      ({ head, heading }) => ({ side: 'bottom', end: head, heading: heading + Math.PI, thickness, fillet }) as const,
    );
    return [
      { pad: 'fixed', outlines: [padOutline(fixed, feet)], plane },
      { pad: 'moving', outlines: [padOutline(moving, heads)], plane },
    ];
  });
}

function crossedDimensions(leaves: readonly [Leaf, Leaf], sizes: CrossedSizes, thickness: Mm): readonly Dimension[] {
  const [{ foot, head, heading }, other] = leaves;
  const { fixed } = padBoxes(sizes, thickness);
  const centre = { x: 0, y: 0 };
  const corner = { x: fixed.right, y: fixed.bottom };
  return [
    { kind: 'distance', parameter: 'length', from: head, to: foot, off: 8 },
    { kind: 'distance', parameter: 'crossing', from: centre, to: foot, off: 3 },
    { kind: 'angle', parameter: 'between', centre, radius: sizes.length / 4, from: heading, to: other.heading },
    {
      kind: 'thickness',
      parameter: 'lines',
      member: sizes.fused === 1 ? 'upperB' : 'leafB',
      share: sizes.fused === 1 ? 0.6 : 0.8,
    },
    { kind: 'distance', parameter: 'pad', from: { x: fixed.right, y: fixed.top }, to: corner, off: 4 },
  ];
}
