/**
 * Source [end-loaded-elastica]: elliptic integrals for the end-loaded rod, after K. E. Bisshopp and D. C. Drucker, Quarterly of Applied
 * Mathematics 3 (1945) 272–275 and K. Mattiasson, International Journal for Numerical Methods in Engineering 17 (1981)
 * 145–153. The rows of checkvalues/B.json were computed outside this program; the five-digit figures below are those of
 * Mattiasson's table as read in two public test suites.
 *
 * The solver's whole network (one straight member, held at its root, a force of fixed direction at its tip) is compared
 * with rods that neither stretch nor shear, so its figures are taken to the thin limit (`thinLimit`). The load of a row
 * is reached from rest, which is the first branch that the rows speak of, also where the force presses more than it bends.
 */
import { describe, expect, it } from 'vitest';
import { followPath, type SolveAsked } from '../../../src/core/beam/solve.ts';
import { radians } from '../../../src/core/units.ts';
import { cantilever, sectionOfFirst } from '../../support/beamModels.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { noteResidual } from '../../support/residuals.ts';
import { endOf, expectSolved, poseOf, reactionAt, thinLimit } from '../../support/solved.ts';

const L = 100;
const LEAF = cantilever({ kind: 'straight' }, { x: L, y: 0 }, { width: 1 });

function leafOf(slenderness: number) {
  const model = cantilever({ kind: 'straight' }, { x: L, y: 0 }, { width: 1, thickness: slenderness * L });
  return { model, EI: sectionOfFirst(model).EI };
}

/** Tip travel, approach, tip angle and root moment under a load P·L²/(E·I) at an angle from the axis. */
function underLoad(load: number, direction: number, asked: SolveAsked) {
  return (slenderness: number): readonly number[] => {
    const { model, EI } = leafOf(slenderness);
    const force = (load * EI) / L ** 2;
    const at = { at: 'tip', x: force * Math.cos(direction), y: force * Math.sin(direction) };
    const end = endOf({ ...model, loads: [at] }, asked);
    const { x, y, turn } = poseOf(end, 'tip');
    return [y / L, 1 - x / L, turn, (-reactionAt(end, 'root').moment * L) / EI];
  };
}

/** Load, approach, tip angle and root moment where the tip is moved across and otherwise free. */
function atTravel(travel: number, asked: SolveAsked) {
  return (slenderness: number): readonly number[] => {
    const { model, EI } = leafOf(slenderness);
    const end = endOf({ ...model, motions: [{ at: 'tip', y: travel * L }] }, asked);
    const { x, turn } = poseOf(end, 'tip');
    const moment = -reactionAt(end, 'root').moment;
    return [(reactionAt(end, 'tip').y * L ** 2) / EI, 1 - x / L, turn, (moment * L) / EI];
  };
}

const ACCURACIES = [
  ['interactive', { rel: 1e-6, because: 'what interactive accuracy aims at' }],
  ['refined', { rel: 1e-9, because: 'what refined accuracy aims at' }],
] as const;

const FORCED = [
  ...checkValues('B', 'B-90-').map((row) => ({ row, direction: Math.PI / 2 })),
  ...['30', '45', '60', '120', '135', '150', '170'].flatMap((angle) =>
    checkValues('B', `B-${angle}-`).map((row) => ({ row, direction: radians(input(row, 'psi_deg')) })),
  ),
];

describe.each(ACCURACIES)('the end-loaded leaf, solved as a network, %s', (accuracy, allowance) => {
  it.each(FORCED)('$row.id', ({ row, direction }) => {
    const figures = thinLimit(underLoad(input(row, 'alpha'), direction, { accuracy }));
    expectSolved(row, allowance, ...figures);
  });

  it.each(checkValues('B', 'B-inv-'))('$id: moved by so much', (row) => {
    expectSolved(row, allowance, ...thinLimit(atTravel(input(row, 'w_over_L'), { accuracy })));
  });

  it.each(checkValues('B', 'B-eps-'))('$id: largest strain', (row) => {
    // Per t/(2L) it is the root moment; the thickness of the row is put back afterwards.
    const perHalf = (slenderness: number) => {
      const { model, EI } = leafOf(slenderness);
      const loads = [{ at: 'tip', y: (input(row, 'alpha') * EI) / L ** 2 }];
      const { peak } = endOf({ ...model, loads }, { accuracy });
      expect(peak.along).toBe(0);
      return [Math.abs(peak.strain) / (slenderness / 2)];
    };
    const [moment] = thinLimit(perHalf);
    expectSolved(row, allowance, (moment ?? Number.NaN) * (input(row, 't_mm') / (2 * input(row, 'L_mm'))));
  });
});

/** Load, tip travel and approach over the length, as printed. */
const PRINTED = [
  [1, 0.30172, 0.05643],
  [2, 0.49346, 0.16064],
  [5, 0.71379, 0.38763],
  [10, 0.81061, 0.555],
] as const;

describe('five-digit figures of the published table', () => {
  it.each(PRINTED)('P·L²/(E·I) = %d', (load, travel, approach) => {
    const [w = Number.NaN, u = Number.NaN] = thinLimit(underLoad(load, Math.PI / 2, {}));
    noteResidual('published table', w, travel);
    noteResidual('published table', u, approach);
    expectClose(w, travel, { printedTo: 5 });
    expectClose(u, approach, { printedTo: 5 });
  });
});

const asked = (elements: number) => ({ elements, accuracy: 'refined', parts: 10 }) as const;
const told = (figures: readonly number[]) => figures.map((figure) => figure.toPrecision(3)).join(', ');

describe('the order of the method', () => {
  const { EI } = sectionOfFirst(LEAF);
  const loaded = { ...LEAF, loads: [{ at: 'tip', y: (200 * EI) / L ** 2 }] };
  const tipAt = (elements: number) => poseOf(endOf(loaded, asked(elements)), 'tip');
  const exact = tipAt(128);
  const errorOf = (elements: number) => {
    const { x, y } = tipAt(elements);
    return Math.hypot(x - exact.x, y - exact.y) / L;
  };

  it('is twice the degree of its polynomials, 8, until round-off', () => {
    const errors = [8, 16, 32].map(errorOf);
    const orders = errors.slice(1).map((error, i) => Math.log2((errors[i] ?? Number.NaN) / error));
    console.log(`orders of convergence ${told(orders)} of errors ${told(errors)}`);
    for (const order of orders)
      expectClose(order, 8, { abs: 0.7, because: 'the next term still shows on coarse meshes' });
  });

  it.each([8, 16])('with %d elements is not missed by the estimate of error', (elements) => {
    expect(followPath(loaded, asked(elements)).error.position).toBeGreaterThan(errorOf(elements));
  });
});
