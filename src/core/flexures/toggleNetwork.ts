import type { BeamNode, Member, Pad } from '../beam/model.ts';
import type { Path, Point } from '../geometry/outline.ts';
import { roundedOutline } from '../geometry/roundedOutline.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf, padOutline } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics } from './network.ts';
import { roofHeight, springThickness, thrustArm, type ToggleSizes } from './toggleSizes.ts';
import { rootOnWall, sharpCorner } from './wallRoots.ts';

/** A little past the mirror image of the roof, where it comes to rest at the latest. */
const PAST_MIRRORED = 2.05;

/**
 * x along the line of thrust from the wall, y up; the roof stands above that line and is pressed down on the end of the
 * first link, where the middle neck begins. The spring leaf hangs from the end pad down to the base.
 */
export const toggleNetwork: Mechanics<ToggleSizes> = {
  network: (sizes, thickness, { amount, widthRatio }): FlexureNetwork => {
    const nodes = nodesOf(sizes, thickness);
    return {
      model: modelOf({
        nodes: Object.values(nodes),
        members: membersOf(sizes, thickness, widthRatio),
        pads: PADS,
        supports: [hold('frame')],
        motions: [{ at: 'firstLink', y: -amount }],
      }),
      driven: { at: 'firstLink', direction: 'y' },
      moving: 'firstLink',
      alike: sizes.sideBySide,
      bodies: bodiesOf(sizes, thickness, nodes),
      dimensions: dimensionsOf(nodes),
    };
  },

  reach: (sizes) => PAST_MIRRORED * roofHeight(sizes),
  // The first link hangs straight down from the wall: it and its neck are no longer than they are.
  limit: (sizes) => roofHeight(sizes) + sizes.hinge + sizes.link,
};

/** The first node of a pad is where it is told; the first link is pushed at its upper end. */
const PADS: readonly Pad[] = [
  { id: 'frame', nodes: ['wall', 'foot'] },
  { id: 'firstLink', nodes: ['firstUp', 'firstLow'] },
  { id: 'secondLink', nodes: ['secondUp', 'secondLow'] },
  { id: 'end', nodes: ['end', 'tip'] },
];

const NODES = ['wall', 'firstLow', 'firstUp', 'secondUp', 'secondLow', 'end', 'tip', 'foot'] as const;
type Nodes = Readonly<Record<(typeof NODES)[number], BeamNode>>;

function nodesOf(sizes: ToggleSizes, thickness: Mm): Nodes {
  const { hinge, link, incline, spring, fillet } = sizes;
  const [run, height] = [link * Math.cos(incline), roofHeight(sizes)];
  const right = 4 * hinge + 2 * run;
  const axis = right + fillet + endWidth(sizes, thickness) / 2;
  const low = -thrustArm(sizes);
  return {
    wall: { id: 'wall', x: 0, y: 0 },
    firstLow: { id: 'firstLow', x: hinge, y: 0 },
    firstUp: { id: 'firstUp', x: hinge + run, y: height },
    secondUp: { id: 'secondUp', x: 3 * hinge + run, y: height },
    secondLow: { id: 'secondLow', x: right - hinge, y: 0 },
    end: { id: 'end', x: right, y: 0 },
    tip: { id: 'tip', x: axis, y: low },
    foot: { id: 'foot', x: axis, y: low - spring },
  };
}

function membersOf(sizes: ToggleSizes, thickness: Mm, widthRatio: number): readonly Member[] {
  const common = { shape: { kind: 'straight' }, width: sizes.depth, widthRatio } as const;
  return [
    { id: 'firstNeck', from: 'wall', to: 'firstLow', thickness, ...common },
    { id: 'middleNeck', from: 'firstUp', to: 'secondUp', thickness, ...common },
    { id: 'lastNeck', from: 'secondLow', to: 'end', thickness, ...common },
    { id: 'spring', from: 'foot', to: 'tip', thickness: springThickness(sizes, thickness), ...common },
  ];
}

/**
 * Width of the end pad along the thrust: that of the spring leaf with its fillets, and a line's worth more.
 *
 * @param sizes - of the toggle, checked [mm]
 * @param thickness - of the necks [mm], > 0
 * @returns width [mm]
 */
export function endWidth(sizes: ToggleSizes, thickness: Mm): Mm {
  const leaf = springThickness(sizes, thickness);
  return Math.max(padLength(thickness), leaf + 2 * sizes.fillet + 1);
}

function bodiesOf(sizes: ToggleSizes, thickness: Mm, nodes: Nodes): readonly Body[] {
  const { firstLow, firstUp, secondUp, secondLow } = nodes;
  return [
    { pad: 'frame', outlines: [frameOutline(sizes, thickness, nodes)] },
    { pad: 'firstLink', outlines: [linkOutline(sizes, thickness, firstLow, firstUp)] },
    { pad: 'secondLink', outlines: [linkOutline(sizes, thickness, secondUp, secondLow)] },
    { pad: 'end', outlines: [endOutline(sizes, thickness, nodes)] },
  ];
}

/** A slanting bar with upright ends, a level neck growing out of each. */
function linkOutline({ fillet, pad }: ToggleSizes, thickness: Mm, left: Point, right: Point): Path {
  const [from, to] = [left.x + fillet, right.x - fillet];
  return roundedOutline([
    sharpCorner(from, left.y - pad / 2),
    sharpCorner(to, right.y - pad / 2),
    ...rootOnWall(to, right.x, right.y, thickness, fillet),
    sharpCorner(to, right.y + pad / 2),
    sharpCorner(from, left.y + pad / 2),
    ...rootOnWall(from, left.x, left.y, thickness, fillet).toReversed(),
  ]);
}

function endOutline(sizes: ToggleSizes, thickness: Mm, { end, tip }: Nodes): Path {
  const { fillet, pad } = sizes;
  const left = end.x + fillet;
  const box = { left, right: left + endWidth(sizes, thickness), bottom: -pad / 2, top: pad / 2 };
  const leaf = springThickness(sizes, thickness);
  return padOutline(box, [
    { side: 'left', end, heading: Math.PI, thickness, fillet },
    { side: 'bottom', end: tip, heading: -Math.PI / 2, thickness: leaf, fillet },
  ]);
}

/** A wall on a base, with the root of the first neck on the one and of the spring leaf on the other. */
function frameOutline(sizes: ToggleSizes, thickness: Mm, { foot }: Nodes): Path {
  const { fillet, pad } = sizes;
  const [wall, half] = [padLength(thickness), springThickness(sizes, thickness) / 2];
  const [face, floor] = [-fillet, foot.y - fillet];
  const right = foot.x + half + fillet + wall;
  const top = Math.max(pad / 2, thickness / 2 + fillet + 1);
  return roundedOutline([
    sharpCorner(face - wall, floor - wall),
    sharpCorner(right, floor - wall),
    sharpCorner(right, floor),
    { x: foot.x + half, y: floor, radius: fillet },
    sharpCorner(foot.x + half, foot.y),
    sharpCorner(foot.x - half, foot.y),
    { x: foot.x - half, y: floor, radius: fillet },
    sharpCorner(face, floor),
    ...rootOnWall(face, 0, 0, thickness, fillet),
    sharpCorner(face, top),
    sharpCorner(face - wall, top),
  ]);
}

function dimensionsOf({ wall, firstLow, firstUp, tip, foot }: Nodes): readonly Dimension[] {
  const incline = Math.atan2(firstUp.y - firstLow.y, firstUp.x - firstLow.x);
  return [
    { kind: 'distance', parameter: 'hinge', from: wall, to: firstLow, off: -5 },
    { kind: 'distance', parameter: 'link', from: firstLow, to: firstUp, off: 6 },
    { kind: 'angle', parameter: 'incline', centre: firstLow, radius: 12, from: 0, to: incline },
    { kind: 'distance', parameter: 'spring', from: foot, to: tip, off: -6 },
    { kind: 'thickness', parameter: 'lines', member: 'firstNeck', share: 0.5 },
    { kind: 'thickness', parameter: 'springLines', member: 'spring', share: 0.4 },
  ];
}
