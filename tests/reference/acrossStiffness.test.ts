/**
 * Source [unit-load-method]: closed forms of linear bars. A bar guided at both ends gives 12·EI/ℓ³ with shear as
 * Φ = 12·EI/(κGA·ℓ²), stretches by EA/ℓ and twists by GJ/ℓ (texts on strength of materials, from memory); bars side by
 * side add by parallel axes, rows one behind the other by their gives. Source [saint-venant-torsion]: mechanics.md,
 * section F, row F-ex-6-0.84-15-45. Fair, because each is the same linear theory written out by hand; and the frame of
 * bars turned into the plane is what the solver's own linear frame answers by another code.
 */
import { describe, it } from 'vitest';
import { acrossStiffness, type BarsAcross } from '../../src/core/beam/acrossStiffness.ts';
import type { BeamModel } from '../../src/core/beam/model.ts';
import { sectionStiffness } from '../../src/core/beam/section.ts';
import { spatialStiffness } from '../../src/core/beam/spatialStiffness.ts';
import { twistStiffness } from '../../src/core/closedForms/torsion.ts';
import { radians } from '../../src/core/units.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';

const MATERIAL = { modulus: 2100, poisson: 0.4 } as const;
const SHEAR = MATERIAL.modulus / (2 * (1 + MATERIAL.poisson));
const ROUND_OFF = { rel: 1e-9, because: 'round-off of a quadrature and of three inversions' } as const;
const HERE = { x: 0, y: 0 } as const;

/** One bar 2.2 × 1.2 mm, 9 long, whose middle lies at the place that is asked about. */
const ONE: BarsAcross = { alongX: 2.2, alongY: 1.2, length: 9, middles: [{ z: 0, share: 1 }], rows: [HERE] };

/** What a guided bar resists in each direction, written out by hand. */
function byHand({ alongX, alongY, length: l }: BarsAcross) {
  const { modulus: E, poisson } = MATERIAL;
  const { shear } = sectionStiffness(alongX, alongY, E, poisson, 1);
  const guided = (side: number, other: number) => {
    const EI = (E * other * side ** 3) / 12;
    const phi = (12 * EI) / (shear * l ** 2);
    return { move: (12 * EI) / l ** 3 / (1 + phi), turn: EI / l };
  };
  const [x, y] = [guided(alongX, alongY), guided(alongY, alongX)];
  const twist = twistStiffness(SHEAR, alongX, alongY, l);
  return { x: x.move, y: y.move, z: (E * alongX * alongY) / l, turnX: y.turn, turnY: x.turn, turnZ: twist };
}

const NAMES = ['x', 'y', 'z', 'turnX', 'turnY', 'turnZ'] as const;

describe('one bar across the plane', () => {
  const { free, held, matrix } = acrossStiffness(ONE, HERE, MATERIAL);

  it('about its own middle bends, stretches and twists apart, as guided bars do', () => {
    const hand = byHand(ONE);
    for (const name of NAMES) {
      noteResidual(name, held[name], hand[name]);
      expectClose(held[name], hand[name], ROUND_OFF);
      expectClose(free[name], hand[name], ROUND_OFF);
    }
    const sizes = matrix.map((row, i) => Math.sqrt(row[i]!));
    const mixed = matrix.flatMap((row, i) => row.map((k, j) => (i === j ? 0 : k / (sizes[i]! * sizes[j]!))));
    expectClose(Math.max(...mixed.map(Math.abs)), 0, { abs: 1e-9, because: 'round-off' });
  });

  it('twists as the printed row of the mechanics says', () => {
    const material = { modulus: 2 * 750 * 1.4, poisson: 0.4 };
    const row: BarsAcross = { ...ONE, alongX: 6, alongY: 0.84, length: 15 };
    const torque = acrossStiffness(row, HERE, material).held.turnZ * radians(45);
    expectClose(torque, 42.443455, { printedTo: 6 });
  });
});

describe('bars side by side and rows one behind the other', () => {
  it('add by parallel axes: a bar off the middle resists turns by its arm, and a share of it by that share', () => {
    const pair: BarsAcross = {
      ...ONE,
      middles: [
        { z: 7, share: 1 },
        { z: -7, share: 1 },
        { z: 0, share: 0.25 },
      ],
    };
    const { held } = acrossStiffness(pair, HERE, MATERIAL);
    const hand = byHand(ONE);
    const moves = { x: 2.25 * hand.x, y: 2.25 * hand.y, z: 2.25 * hand.z };
    const arms = { turnX: 2.25 * hand.turnX + 98 * hand.y, turnY: 2.25 * hand.turnY + 98 * hand.x };
    const all = { ...moves, ...arms, turnZ: 2.25 * hand.turnZ };
    for (const name of NAMES) expectClose(held[name], all[name], ROUND_OFF);
  });

  it('give together: a pad beyond its rows sinks by their moves and by their turns times their arms', () => {
    const rows = [3, 8, 13].map((x) => ({ x, y: 0 }));
    const { free } = acrossStiffness({ ...ONE, rows }, { x: 15, y: 0 }, MATERIAL);
    const hand = byHand(ONE);
    const arms = 12 ** 2 + 7 ** 2 + 2 ** 2;
    const hands = {
      x: 3 / hand.x,
      y: 3 / hand.y + arms / hand.turnZ,
      z: 3 / hand.z + arms / hand.turnY,
      turnX: 3 / hand.turnX,
      turnY: 3 / hand.turnY,
      turnZ: 3 / hand.turnZ,
    };
    for (const name of NAMES) expectClose(free[name], 1 / hands[name], ROUND_OFF);
  });
});

/**
 * The same bars and rows with z, x, y of theirs as x, y, z of a plane: bars lie in it then, and their rows are pads.
 */
function turnedIntoPlane(
  { alongX, alongY, length, middles, rows }: BarsAcross,
  at: { x: number; y: number },
): BeamModel {
  const bars = rows.flatMap(({ x }, k) => middles.map(({ z }, i) => ({ x, z, k, id: `${k}-${i}` })));
  const ends = (k: number) => [
    ...bars.filter((bar) => bar.k === k).map(({ id }) => `from${id}`),
    ...bars.filter((bar) => bar.k === k - 1).map(({ id }) => `to${id}`),
  ];
  return {
    ...MATERIAL,
    nodes: bars.flatMap(({ id, x, z }) => [
      { id: `from${id}`, x: z - length / 2, y: x },
      { id: `to${id}`, x: z + length / 2, y: x },
    ]),
    members: bars.map(({ id }) => ({
      id,
      from: `from${id}`,
      to: `to${id}`,
      shape: { kind: 'straight' },
      thickness: alongX,
      width: alongY,
    })),
    pads: [...rows, at].map((_, k) => ({
      id: `row${k}`,
      nodes: ends(k),
      at: k === rows.length ? { x: 0, y: at.x } : { x: 0, y: 0 },
    })),
    supports: [{ at: 'row0', x: true, y: true, turn: true }],
    motions: [],
    loads: [],
    springs: [],
    ties: [],
  };
}

describe('a frame of bars', () => {
  it.each([
    ['one row', [2], [-3, 4]],
    ['four rows, off their middle', [1, 4, 7, 10], [-20, -9, 2, 13]],
  ])('of %s resists as the linear frame of the plane does once it is turned into it', (_, xs, zs) => {
    const frame: BarsAcross = {
      ...ONE,
      middles: zs.map((z) => ({ z, share: 1 })),
      rows: xs.map((x) => ({ x, y: 0 })),
    };
    const at = { x: 12, y: 0 };
    const told = acrossStiffness(frame, at, MATERIAL);
    const plane = spatialStiffness(turnedIntoPlane(frame, at), `row${xs.length}`);
    const order = [1, 2, 0, 4, 5, 3];
    const size = (i: number) => Math.sqrt(told.matrix[i]![i]!);
    for (const [i, p] of order.entries()) {
      for (const [j, q] of order.entries()) {
        expectClose((told.matrix[i]![j]! - plane.matrix[p]![q]!) / (size(i) * size(j)), 0, {
          abs: 1e-8,
          because: 'round-off, times how much stiffer one direction is than another',
        });
      }
    }
    expectClose(told.free.turnZ, plane.free.turnX, ROUND_OFF);
    expectClose(told.free.y, plane.free.z, { rel: 1e-7, because: 'round-off of rows that give a thousand times more' });
  });
});
