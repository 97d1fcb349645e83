import { describe, expect, it } from 'vitest';
import type { BeamModel } from '../../../src/core/beam/model.ts';
import { softStiff } from '../../../src/core/beam/softStiff.ts';
import { DIRECTIONS, spatialStiffness } from '../../../src/core/beam/spatialStiffness.ts';
import { between, cantilever, HELD, network, sectionOfFirst } from '../../support/beamModels.ts';
import { expectClose } from '../../support/close.ts';

const STRAIGHT = { kind: 'straight' } as const;
const EXACT = { rel: 1e-9, because: 'round-off' } as const;
const TIP = { x: 10, y: 0 };
const NONE = { x: 0, y: 0, z: 0, turnX: 0, turnY: 0, turnZ: 0 };

/** Two straight leaves in a row with a free node between them. */
const inRow = (rest: Partial<BeamModel> = {}) =>
  network({
    nodes: [
      { id: 'root', x: 0, y: 0 },
      { id: 'middle', x: 10, y: 0 },
      { id: 'tip', x: 20, y: 0 },
    ],
    members: ['root', 'middle'].map((from, i) => ({
      id: `leaf${i}`,
      from,
      to: ['middle', 'tip'][i]!,
      shape: STRAIGHT,
      thickness: 0.84,
      width: 6,
    })),
    supports: [{ at: 'root', ...HELD }],
    ...rest,
  });

describe('a pad that moves freely', () => {
  it('resists nothing where nothing is held', () => {
    const model = cantilever(STRAIGHT, TIP, {}, { supports: [] });
    expect(spatialStiffness(model, 'tip')).toEqual({
      matrix: DIRECTIONS.map(() => DIRECTIONS.map(() => 0)),
      free: NONE,
      held: NONE,
    });
  });

  it('swings on a member that is hinged at its root: stiff along it, not across it', () => {
    const model = cantilever(STRAIGHT, TIP, { hinged: 'from' });
    const { free, held } = spatialStiffness(model, 'tip');
    const { EA } = sectionOfFirst(model);
    expectClose(free.x, EA / 10, EXACT);
    expect([free.y, free.turnZ]).toEqual([0, 0]);
    // Held against turning, it bends like a leaf that is pinned at its root.
    expect(held.y).toBeGreaterThan(0);
    expect(free.z).toBeGreaterThan(0);
  });

  it('turns on a slanted member that is hinged at both ends, and gives along x and y but not along the member', () => {
    const { free, matrix } = spatialStiffness(cantilever(STRAIGHT, { x: 8, y: 6 }, { hinged: 'both' }), 'tip');
    expect([free.x, free.y, free.turnZ]).toEqual([0, 0, 0]);
    expectClose(matrix[0]![1]! / matrix[0]![0]!, 6 / 8, EXACT);
  });

  it('hanging on a mechanism resists nothing in the plane', () => {
    const model = inRow();
    const members = model.members.map((member) => ({ ...member, hinged: 'both' as const }));
    const { free } = spatialStiffness({ ...model, members }, 'tip');
    expect([free.y, free.turnZ]).toEqual([0, 0]);
    expect(free.x).toBeGreaterThan(0);
  });
});

describe('what acts on the pad that is asked about', () => {
  const plain = spatialStiffness(inRow(), 'tip');

  it.each([
    [
      'supports',
      {
        supports: [
          { at: 'root', ...HELD },
          { at: 'tip', ...HELD },
        ],
      },
    ],
    ['motions', { motions: [{ at: 'tip', y: 3 }] }],
    ['ties', { ties: [{ at: 'tip', like: 'root', y: 1 }] }],
    ['loads', { loads: [{ at: 'tip', x: -5 }] }],
  ] as const)('%s are left off', (_, acting) => {
    expect(spatialStiffness(inRow(acting), 'tip')).toEqual(plain);
  });

  it('springs add, with what a bar twisting about z adds by its shear modulus', () => {
    const springs = [{ at: 'tip', x: 1, y: 2, turn: 3, twist: 0.5 }];
    const { held } = spatialStiffness(inRow({ springs }), 'tip');
    expectClose(held.x, plain.held.x + 1, EXACT);
    expectClose(held.y, plain.held.y + 2, EXACT);
    expectClose(held.turnZ, plain.held.turnZ + 3 + (0.5 * 2000) / 2.7, EXACT);
    expect(held.z).toBe(plain.held.z);
  });

  it('a spring to another pad adds to a spring of what that one stands on', () => {
    const springs = [{ at: 'tip', to: 'other', x: 4 }];
    const nodes = [...inRow().nodes, { id: 'other', x: 30, y: 0 }];
    const loose = spatialStiffness(inRow({ nodes, springs }), 'tip');
    expectClose(loose.free.x, plain.free.x, EXACT);
    const onSpring = inRow({ nodes, springs: [...springs, { at: 'other', x: 4 }] });
    expectClose(spatialStiffness(onSpring, 'tip').free.x, plain.free.x + 2, EXACT);
    const held = inRow({
      nodes,
      springs,
      supports: [
        { at: 'root', ...HELD },
        { at: 'other', x: true },
      ],
    });
    expectClose(spatialStiffness(held, 'tip').free.x, plain.free.x + 4, EXACT);
  });
});

describe('what acts on others', () => {
  const short = spatialStiffness(cantilever(STRAIGHT, TIP), 'tip');

  it('a held node between ends the leaf there', () => {
    const held = inRow({
      supports: [
        { at: 'root', ...HELD },
        { at: 'middle', ...HELD },
      ],
    });
    expectClose(spatialStiffness(held, 'tip').free.y, short.free.y, EXACT);
  });

  it('any support holds across the plane as well, and nothing in it that it does not name', () => {
    const { free } = spatialStiffness(
      inRow({
        supports: [
          { at: 'root', ...HELD },
          { at: 'middle', x: true },
        ],
      }),
      'tip',
    );
    expectClose(free.z, short.free.z, EXACT);
    expect(free.y).toBeLessThan(short.free.y / 2);
  });

  it('a motion holds what it drives, in the plane alone', () => {
    const { free } = spatialStiffness(inRow({ motions: [{ at: 'middle', x: 0, y: 1, turn: 0 }] }), 'tip');
    expectClose(free.y, short.free.y, EXACT);
    expect(free.z).toBeLessThan(short.free.z / 2);
  });

  it('a tie to the pad makes the other follow it', () => {
    // The middle goes half as far along: both leaves stretch alike, as they do by themselves.
    const half = spatialStiffness(inRow({ ties: [{ at: 'middle', like: 'tip', x: 0.5 }] }), 'tip');
    expectClose(half.free.x, spatialStiffness(inRow(), 'tip').free.x, EXACT);
    // Going as far as the tip, it leaves all the stretch to the first leaf.
    const whole = spatialStiffness(inRow({ ties: [{ at: 'middle', like: 'tip', x: 1 }] }), 'tip');
    expectClose(whole.free.x, short.free.x, EXACT);
    const still = spatialStiffness(inRow({ ties: [{ at: 'middle', like: 'root', x: 1, y: 1, turn: 1 }] }), 'tip');
    expectClose(still.free.y, short.free.y, EXACT);
  });
});

describe('asking', () => {
  it('for what is not there, or for a node that a pad carries, is a mistake of the program', () => {
    const model = between([{ from: { x: 0, y: 0 }, to: TIP }], TIP);
    expect(() => spatialStiffness(model, 'nobody')).toThrow(RangeError);
    expect(() => spatialStiffness(model, 'm0')).toThrow(RangeError);
  });

  it('a chain of a hundred leaves is still told from a mechanism', () => {
    const ids = Array.from({ length: 101 }, (_, i) => `n${i}`);
    const nodes = ids.map((id, i) => ({ id, x: i * Math.SQRT1_2, y: i * Math.SQRT1_2 }));
    const members = ids
      .slice(1)
      .map((to, i) => ({ id: to, from: ids[i]!, to, shape: STRAIGHT, thickness: 0.42, width: 6 }));
    const chain = network({ nodes, members, supports: [{ at: 'n0', ...HELD }] });
    const { kGA, EI, GJ } = sectionOfFirst(chain);
    const { free } = spatialStiffness(chain, 'n100');
    const because = 'a hundred members make it 8 million times softer than one of them';
    expectClose(free.turnZ, EI / 100, { rel: 1e-6, because });
    // Along x it gives half of what it gives across itself: the other half is turned away.
    const across = 100 ** 3 / (3 * EI) + 100 / kGA;
    expectClose(free.x, 2 / (across + 100 / (2000 * 6 * 0.42)), { rel: 1e-6, because });
    expect(free.turnX).toBeGreaterThan(GJ / 100);
  });
});

describe('soft and stiff on one footing', () => {
  it('weighs turns by the radius and sorts', () => {
    const told = softStiff({ x: 100, y: 0.5, z: 50, turnX: 900, turnY: 4500, turnZ: 30 }, 3);
    expect(told.gives.map(({ direction }) => direction)).toEqual(['y', 'turnZ', 'z', 'x', 'turnX', 'turnY']);
    expect(told.soft).toEqual({ direction: 'y', give: 2 });
    expect(told.stiff).toEqual({ direction: 'turnY', give: 0.002 });
    expectClose(told.ratio, 1000, EXACT);
    expectClose(told.apart, 2 / 0.3, EXACT);
  });

  it('of a pad that moves freely is told without a number that is none', () => {
    expect(softStiff({ ...NONE, x: 5 }, 3)).toMatchObject({ ratio: Infinity, apart: 1, stiff: { direction: 'x' } });
    expect(softStiff(NONE, 3)).toMatchObject({ ratio: 1, apart: 1, soft: { give: Infinity } });
  });

  it.each([0, -1, Number.NaN])('at a radius of %d is a mistake of the program', (radius) => {
    expect(() => softStiff(NONE, radius)).toThrow(RangeError);
  });
});
