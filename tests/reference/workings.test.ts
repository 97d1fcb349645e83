/**
 * The formulas as the working writes them, worked out by the computer algebra, against figures from outside this program:
 * rows of checkvalues (computed elsewhere in higher precision), five-digit values of a published table and exact shapes,
 * each as its own reference test cites it ([plane-bending], [end-loaded-elastica], [leaf-about-pin], [notch-hinge],
 * [crossed-leaves], [saint-venant-torsion]). Fair, because no figure of the core is looked at here.
 */
import { describe, it } from 'vitest';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { workedOf } from '../support/workedOf.ts';

describe('strain of what bends to an arc', () => {
  describe.each(checkValues('A', 'A-eps-'))('$id', (row) => {
    const [thickness, length, angle] = [input(row, 't_mm'), input(row, 'L_mm'), radians(input(row, 'theta_deg'))];

    it('leaf', () => {
      expectRow(row, workedOf('straightLeaf', { length }, { drive: 'turned', amount: angle, thickness })('ε'));
    });

    it('crease', () => {
      const sizes = { length, pad: 4 };
      expectRow(row, workedOf('crease', sizes, { drive: 'turned', amount: angle, thickness })('ε'));
    });

    it('four leaves between slats, wrapped four times as far', () => {
      const sizes = { cells: 4, cell: length + 10, leaf: length };
      expectRow(row, workedOf('cellPanel', sizes, { drive: 'wrapped', amount: 4 * angle, thickness })('ε'));
    });
  });
});

describe('a leaf pushed at its tip, published five-digit values', () => {
  it.each([
    [1, 0.30172, 0.05643],
    [2, 0.49346, 0.16064],
    [5, 0.71379, 0.38763],
    [10, 0.81061, 0.555],
  ])('load %s: travel %s, approach %s', (load, travel, approach) => {
    const amount = travel * 20;
    const worked = workedOf('straightLeaf', { length: 20 }, { drive: 'pushed', amount, thickness: 0.4 });
    // a² = P·L²/(E·I) rises more steeply the farther the tip goes: as 2·a³/0.586, from 1 − w/L = 0.586/a, and less.
    const steepest = (2 * load ** 1.5) / 0.585;
    const printed = { abs: 0.5e-5 * Math.max(steepest, 4), because: 'half of the last printed place of the travel' };
    expectClose(worked('a') ** 2, load, printed);
    // The moment at the clamp is the force times its lever.
    expectClose(worked('m_0'), load * (1 - approach), {
      abs: 2 * printed.abs,
      because: 'the same, and of the approach',
    });
  });
});

describe('a leaf turned about a pin, exact shapes', () => {
  it.each([
    [0.05, 0.5, 0.1, 1.59851, 0.00370782],
    [0.05, 0.25, 0.3, 2.4837, 0.0171856],
    [0.1, 0.9, 0.3, 2.9568, 0.0536841],
  ])('t/L %s, pin at %s, %s rad', (thin, centre, angle, torque, strain) => {
    const sizes = { length: 10, centre };
    const worked = workedOf('straightLeaf', sizes, { drive: 'centred', amount: angle, thickness: thin * 10 });
    const slopes = { rel: 0.0005 + 0.06 * angle ** 2, because: 'small slopes: the next term, of the order of θ²' };
    expectClose(worked('k_T'), torque, slopes);
    expectClose(worked('ε'), strain, { ...slopes, rel: 0.0005 + 0.15 * angle ** 2 });
  });
});

describe('a neck between round notches', () => {
  it.each(checkValues('D', 'D-circ-').filter((row) => input(row, 't_over_R') >= 0.05))('$id', (row) => {
    const radius = 2;
    const thickness = input(row, 't_over_R') * radius;
    const sizes = { along: radius, deep: radius, straight: 0 };
    const worked = workedOf('neck', sizes, { drive: 'turned', amount: radians(5), thickness });
    // E·b·t²·θ/M
    expectRow(row, worked('C_n') * worked('E') * worked('b') * thickness ** 2);
  });
});

/** Where leaves may cross, by the limits of the kind. */
const within = (lam: number) => lam >= 0.05 && lam <= 0.95;

describe('two crossed leaves', () => {
  const MOVED = { drive: 'turned', amount: radians(5), thickness: 0.8 };

  it.each(checkValues('G', 'G-k-').filter((row) => within(input(row, 'lam'))))('$id', (row) => {
    const worked = workedOf('crossedLeaves', { crossing: input(row, 'lam'), length: 40 }, MOVED);
    expectRow(row, (worked('K') * worked('L')) / (worked('E') * worked('I')));
  });

  it.each(checkValues('G', 'G-eps-').filter((row) => within(input(row, 'lam'))))('$id', (row) => {
    const worked = workedOf('crossedLeaves', { crossing: input(row, 'lam'), length: 40 }, MOVED);
    expectRow(row, worked('m_λ'));
    expectRow(row, (worked('ε') * 2 * 40) / (0.8 * MOVED.amount));
  });
});

describe('strips of a sheet with slits', () => {
  const rows = checkValues('F', 'F-').filter((row) => /^F-\d/.test(row.id) && input(row, 'b_over_t') <= 8);

  it.each(rows)('$id', (row) => {
    const ratio = input(row, 'b_over_t');
    const sizes = { pitch: 2.8, slitWidth: 0.8, slit: 24 };
    const moved = { drive: 'wrapped', amount: radians(90) };
    for (const thickness of [2 / ratio, 2 * ratio]) {
      const worked = workedOf('slitPanel', sizes, { ...moved, thickness });
      expectRow(row, worked('c_J'), worked('k_τ'));
    }
  });

  it.each(checkValues('F', 'F-ex-'))('$id, one row of strips after the other', (row) => {
    const [width, length, thickness] = [input(row, 'b_mm'), input(row, 'L_mm'), input(row, 't_mm')];
    const sizes = { rows: 2, pitch: width + 1, slitWidth: 1, slit: 2 * length + 2, bridge: 2, depth: 200 };
    const moved = { drive: 'wrapped', amount: radians(input(row, 'theta_deg')), thickness };
    const worked = workedOf('slitPanel', sizes, moved);
    expectRow(row, (worked('M') / worked('m_p') / worked('G')) * input(row, 'G_MPa'), worked('γ_s'));
  });
});
