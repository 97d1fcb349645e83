import type { BeamNode, Member, Support } from '../beam/model.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf, padOutline } from './commonNetwork.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import type { ParallelSizes } from './parallelLeaves.ts';
import { acrossAtMost } from './reach.ts';

/** Shares of the length: past the first a leaf is pulled along rather than pushed across; a held one is torn by less. */
const FAR = { free: 0.7, held: 0.25 };

/**
 * Leaves along y, evenly spaced about x = 0, from the fixed pad below to the moving one above, which moves along x. Its
 * place is told in the middle between the leaf ends.
 */
export const parallelLeavesNetwork: Mechanics<ParallelSizes> = {
  network: parallelNetwork,
  reach: ({ length }, _, drive) => (drive === 'held' ? FAR.held : FAR.free) * length,
  // Heads are never further across than their leaves are long; held ones are stretched from the beginning.
  limit: ({ length }, _, drive) => (drive === 'held' ? acrossAtMost(length, length) : length),
};

function parallelNetwork(sizes: ParallelSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { length, depth, sideBySide } = sizes;
  const leaves = placesOf(sizes).map((x, i) => ({ x, foot: `foot${i + 1}`, head: `head${i + 1}`, id: `leaf${i + 1}` }));
  const nodes: readonly BeamNode[] = leaves.flatMap(({ x, foot, head }) => [
    { id: foot, x, y: 0 },
    { id: head, x, y: length },
  ]);
  const members: readonly Member[] = leaves.map(({ id, foot, head }) => ({
    id,
    from: foot,
    to: head,
    shape: { kind: 'straight' },
    thickness,
    width: depth,
    widthRatio: asked.widthRatio,
  }));
  return {
    model: modelOf({
      nodes,
      members,
      pads: [
        { id: 'fixed', nodes: leaves.map(({ foot }) => foot) },
        { id: 'moving', nodes: leaves.map(({ head }) => head), at: { x: 0, y: length } },
      ],
      supports: [hold('fixed'), ...guides(asked.drive)],
      motions: [{ at: 'moving', x: asked.amount }],
    }),
    driven: { at: 'moving', direction: 'x' },
    moving: 'moving',
    alike: sideBySide,
    bodies: parallelBodies(sizes, thickness),
    dimensions: parallelDimensions(sizes),
  };
}

/** Where the leaves stand [mm]. */
function placesOf({ leaves, spacing }: ParallelSizes): readonly Mm[] {
  return Array.from({ length: leaves }, (_, i) => (i - (leaves - 1) / 2) * spacing);
}

function guides(drive: string): readonly Support[] {
  if (drive === 'guided') return [{ at: 'moving', turn: true }];
  return drive === 'held' ? [{ at: 'moving', y: true, turn: true }] : [];
}

/** What a pad reaches beyond the outermost leaf and its fillet, so that a core is left between the lines of its edge. */
const BESIDE = 1;

function padHalf({ leaves, spacing, fillet }: ParallelSizes, thickness: Mm): Mm {
  return ((leaves - 1) * spacing + thickness) / 2 + fillet + BESIDE;
}

function parallelBodies(sizes: ParallelSizes, thickness: Mm): readonly Body[] {
  const { length, fillet, pad } = sizes;
  const right = padHalf(sizes, thickness);
  const places = placesOf(sizes);
  const feet = places.map((x) => ({ side: 'top', end: { x, y: 0 }, heading: Math.PI / 2, thickness, fillet }) as const);
  const heads = places.map(
    (x) => ({ side: 'bottom', end: { x, y: length }, heading: -Math.PI / 2, thickness, fillet }) as const,
  );
  const [floor, ceiling] = [-fillet, length + fillet];
  return [
    { pad: 'fixed', outlines: [padOutline({ left: -right, right, bottom: floor - pad, top: floor }, feet)] },
    { pad: 'moving', outlines: [padOutline({ left: -right, right, bottom: ceiling, top: ceiling + pad }, heads)] },
  ];
}

function parallelDimensions(sizes: ParallelSizes): readonly Dimension[] {
  const { length, spacing, fillet, pad } = sizes;
  const [first = 0] = placesOf(sizes);
  const foot = { x: first, y: 0 };
  return [
    { kind: 'distance', parameter: 'length', from: foot, to: { x: first, y: length }, off: 8 },
    { kind: 'distance', parameter: 'spacing', from: { x: first + spacing, y: 0 }, to: foot, off: fillet + pad + 4 },
    { kind: 'thickness', parameter: 'lines', member: 'leaf2', share: 0.5 },
    {
      kind: 'distance',
      parameter: 'pad',
      from: { x: first, y: -fillet - pad },
      to: { x: first, y: -fillet },
      off: 12,
    },
  ];
}
