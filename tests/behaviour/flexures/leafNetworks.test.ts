import { describe, expect, it } from 'vitest';
import type { Drive, Sizes } from '../../../src/core/flexures/family.ts';
import type { FlexureNetwork } from '../../../src/core/flexures/network.ts';
import { radians } from '../../../src/core/units.ts';
import { LEAF_KINDS } from '../../support/leafKinds.ts';
import { faultsOf, typicalSizes } from '../../support/networks.ts';

const T = 0.84;

function networkOf(id: string, change: Sizes, drive: string, amount: number, thickness = T): FlexureNetwork {
  const kind = LEAF_KINDS.find(({ family }) => family.id === id);
  if (!kind) throw new Error(`no kind ${id}`);
  const sizes = typicalSizes(kind.family, change);
  const network = kind.mechanics.network(sizes, thickness, { drive, amount, widthRatio: 1.05 });
  expect(faultsOf(kind, sizes, network)).toEqual([]);
  return network;
}

function reachOf(id: string, change: Sizes, drive: string, thickness = T): number {
  const kind = LEAF_KINDS.find(({ family }) => family.id === id);
  return kind?.mechanics.reach(typicalSizes(kind.family, change), thickness, drive) ?? Number.NaN;
}

function nodeOf({ model }: FlexureNetwork, id: string) {
  const { x, y } = model.nodes.find((node) => node.id === id) ?? { x: Number.NaN, y: Number.NaN };
  return { x, y };
}

const shapesOf = ({ model }: FlexureNetwork) => model.members.map(({ shape }) => shape.kind);

const ALL_DRIVES = LEAF_KINDS.flatMap(({ family }) => family.drives.map((drive) => ({ id: family.id, drive })));

describe('networks at typical sizes', () => {
  it.each(ALL_DRIVES)(
    '$id $drive.id: moves what it is asked to, by so much, and holds the fixed pad',
    ({ id, drive }) => {
      const network = networkOf(id, {}, drive.id, drive.typical);
      const [motion] = network.model.motions;
      expect(network.model.motions).toHaveLength(1);
      expect(motion?.[network.driven.direction]).toBe(drive.typical);
      expect(measureOf(network)).toBe(drive.measure);
      expect(network.model.supports[0]).toEqual({ at: 'fixed', x: true, y: true, turn: true });
      expect(network.model.members.every(({ widthRatio }) => widthRatio === 1.05)).toBe(true);
      expect(reachOf(id, {}, drive.id)).toBeGreaterThan(drive.typical);
    },
  );
});

function measureOf({ driven }: FlexureNetwork): Drive['measure'] {
  return driven.direction === 'turn' ? 'turn' : 'travel';
}

describe('a straight leaf', () => {
  it('runs along x from one pad to the other, free to go anywhere when it is turned', () => {
    const network = networkOf('straightLeaf', { length: 12 }, 'turned', 0.5);
    expect([nodeOf(network, 'from1'), nodeOf(network, 'to1')]).toEqual([
      { x: 0, y: 0 },
      { x: 12, y: 0 },
    ]);
    expect(network.model.supports).toHaveLength(1);
    expect(network.model.members).toMatchObject([{ id: 'leaf1', thickness: T, width: 6 }]);
  });

  it('tapers from the root to the tip that is pushed, which is free to turn', () => {
    const network = networkOf('straightLeaf', { taper: 0.5 }, 'pushed', 2);
    expect(network.model.members[0]?.thickness).toEqual({ kind: 'taper', from: T, to: T / 2 });
    expect(network.driven).toEqual({ at: 'moving', direction: 'y' });
    expect(network.model.supports).toHaveLength(1);
  });

  it('turns about a pin at its share of the length', () => {
    const network = networkOf('straightLeaf', { length: 10, centre: 0.25 }, 'centred', 0.1);
    expect(network.model.pads.at(-1)).toEqual({ id: 'moving', nodes: ['to1'], at: { x: 2.5, y: 0 } });
    expect(network.model.supports).toContainEqual({ at: 'moving', x: true, y: true });
  });

  it('stands in a row with pads between, each as long as the others', () => {
    const network = networkOf('straightLeaf', { length: 8, inRow: 3, fillet: 0.5, sideBySide: 4 }, 'turned', 1);
    expect(network.model.pads.map(({ id }) => id)).toEqual(['fixed', 'between1', 'between2', 'moving']);
    expect(network.model.members.map(({ from, to }) => nodeOf(network, to).x - nodeOf(network, from).x)).toEqual([
      8, 8, 8,
    ]);
    // A pad of 2.5 mm and a fillet on either side of it.
    expect(nodeOf(network, 'from2').x).toBe(8 + 2.5 + 2 * 0.5);
    expect(network.alike).toBe(4);
  });
});

describe('a crease', () => {
  it('lies on the plate with its plates: their lower sides are flush with its own', () => {
    const network = networkOf('crease', { length: 3, pad: 2, fillet: 0.4, inRow: 2 }, 'turned', 1, 0.44);
    const lowest = network.bodies.map(({ outlines }) =>
      Math.min(...outlines.flatMap(({ start, pieces }) => [start.y, ...pieces.map(({ to }) => to.y)])),
    );
    expect(lowest).toEqual([-0.22, -0.22, -0.22]);
  });
});

describe('a neck', () => {
  it('is one notch over twice its half length', () => {
    const network = networkOf('neck', { along: 3, deep: 1.5 }, 'turned', 0.1);
    expect(nodeOf(network, 'to1').x).toBe(6);
    expect(network.model.members[0]?.thickness).toEqual({ kind: 'notch', least: T, deep: 1.5, part: 'whole' });
  });

  it('with a straight part grows out of one pad and into the other', () => {
    const network = networkOf('neck', { along: 1, deep: 1, straight: 4 }, 'centred', 0.05);
    expect(network.model.members.map(({ id, thickness }) => [id, thickness])).toEqual([
      ['opening1', { kind: 'notch', least: T, deep: 1, part: 'opening' }],
      ['neck1', T],
      ['closing1', { kind: 'notch', least: T, deep: 1, part: 'closing' }],
    ]);
    expect(['thin1', 'thick1'].map((id) => nodeOf(network, id).x)).toEqual([1, 5]);
    expect(network.model.pads.at(-1)?.at).toEqual({ x: 3, y: 0 });
  });

  it('is one notch still with a straight part no one can see', () => {
    expect(networkOf('neck', { straight: 0.005 }, 'turned', 0.1).model.members).toHaveLength(1);
  });
});

describe('crossed leaves', () => {
  it('pass each other in two planes, their crossing at the origin', () => {
    const network = networkOf('crossedLeaves', { length: 10, crossing: 0.25 }, 'turned', 0.2);
    const { x, y } = nodeOf(network, 'footA');
    expect(x).toBeCloseTo(-2.5 * Math.SQRT1_2, 12);
    expect(y).toBeCloseTo(-2.5 * Math.SQRT1_2, 12);
    expect(nodeOf(network, 'headB').x).toBeCloseTo(-7.5 * Math.SQRT1_2, 12);
    expect(network.model.members.map(({ id, plane }) => [id, plane])).toEqual([
      ['leafA', 0],
      ['leafB', 1],
    ]);
    expect(network.model.pads[1]?.at).toEqual({ x: 0, y: 0 });
    expect(network.bodies.map(({ pad, plane }) => [pad, plane])).toEqual([
      ['fixed', 0],
      ['moving', 0],
      ['fixed', 1],
      ['moving', 1],
    ]);
  });

  it('grown together are four parts that meet in a node of no pad', () => {
    const network = networkOf('crossedLeaves', { length: 20, crossing: 0.4, fused: 1, fillet: 0.4 }, 'turned', 0.1);
    expect(network.model.members.map(({ from, to, plane }) => [from, to, plane])).toEqual([
      ['footA', 'crossing', 0],
      ['crossing', 'headA', 0],
      ['footB', 'crossing', 0],
      ['crossing', 'headB', 0],
    ]);
    expect(nodeOf(network, 'crossing')).toEqual({ x: 0, y: 0 });
  });

  it('hold their crossing where it is only when they are centred', () => {
    expect(networkOf('crossedLeaves', {}, 'turned', 0.1).model.supports).toHaveLength(1);
    expect(networkOf('crossedLeaves', {}, 'centred', 0.1).model.supports).toContainEqual({
      at: 'moving',
      x: true,
      y: true,
    });
  });

  it('turn less far the flatter they lie', () => {
    const reaches = [30, 60, 90, 120, 150].map((deg) => reachOf('crossedLeaves', { between: radians(deg) }, 'turned'));
    expect(reaches).toEqual(reaches.toSorted((a, b) => b - a));
  });
});

describe('parallel leaves', () => {
  it('stand evenly about the middle of the pad, whose place is told there', () => {
    const network = networkOf('parallelLeaves', { leaves: 4, spacing: 6, length: 20 }, 'shifted', 1);
    expect(network.model.members.map(({ from }) => nodeOf(network, from).x)).toEqual([-9, -3, 3, 9]);
    expect(network.model.pads[1]?.at).toEqual({ x: 0, y: 20 });
  });

  it.each([
    { drive: 'shifted', held: [] },
    { drive: 'guided', held: [{ at: 'moving', turn: true }] },
    { drive: 'held', held: [{ at: 'moving', y: true, turn: true }] },
  ])('$drive: the moving pad is kept from $held', ({ drive, held }) => {
    const network = networkOf('parallelLeaves', {}, drive, 1);
    expect(network.model.supports.slice(1)).toEqual(held);
    expect(network.driven).toEqual({ at: 'moving', direction: 'x' });
  });
});

describe('a folded leaf', () => {
  it.each([
    { runs: 1, end: { x: 0, y: 15 }, turns: [] },
    { runs: 2, end: { x: 5, y: 0 }, turns: [-1] },
    { runs: 5, end: { x: 20, y: 15 }, turns: [-1, 1, -1, 1] },
  ])('of $runs runs ends at $end', ({ runs, end, turns }) => {
    const network = networkOf('foldedLeaf', { runs, spacing: 5, length: 15 }, 'pulled', 1);
    expect(nodeOf(network, `end${runs}`)).toEqual(end);
    const turned = network.model.members.flatMap(({ shape }) => (shape.kind === 'arc' ? [shape.turn / Math.PI] : []));
    expect(turned).toEqual(turns);
    expect(shapesOf(network).filter((kind) => kind === 'straight')).toHaveLength(runs);
  });

  it.each([
    { drive: 'pulled', direction: 'x', held: [{ at: 'moving', y: true, turn: true }] },
    { drive: 'shifted', direction: 'y', held: [{ at: 'moving', x: true, turn: true }] },
    { drive: 'turned', direction: 'turn', held: [] },
  ])('$drive moves in $direction', ({ drive, direction, held }) => {
    const network = networkOf('foldedLeaf', {}, drive, 0.5);
    expect(network.driven.direction).toBe(direction);
    expect(network.model.supports.slice(1)).toEqual(held);
  });
});
