/**
 * Source [end-loaded-elastica]: K. E. Bisshopp and D. C. Drucker, Q. Appl. Math. 3, 1945, 272–275; K. Mattiasson, Int. J.
 * Numer. Meth. Eng. 17, 1981, 145–153. The papers were not opened. Five-digit values of the second were read as quoted in
 * two public test-suites and are compared to the last printed digit. The rows of checkvalues/B.json were computed outside
 * this program, in higher precision, from Legendre's integrals; here Carlson's are used, with the differences of complete
 * and incomplete ones taken by the addition theorem.
 */
import { describe, expect, it } from 'vitest';
import { endLoadAtTravel, strainOfMoment } from '../../src/core/closedForms/endLoadedLeaf.ts';
import { endLoadedLeaf } from '../../src/core/closedForms/leafUnderForce.ts';
import { asRad, radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { integral } from '../support/quadrature.ts';

const ROWS = checkValues('B', 'B-');
const FORWARD = ROWS.filter((row) => /^B-\d/.test(row.id));
const directionOf = (row: CheckValue) => radians(row.id.startsWith('B-90') ? 90 : input(row, 'psi_deg'));

describe('published five-digit values, force across the leaf', () => {
  it.each([
    [1, 0.30172, 0.05643],
    [2, 0.49346, 0.16064],
    [5, 0.71379, 0.38763],
    [10, 0.81061, 0.555],
  ])('load %s: travel %s, approach %s', (load, travel, approach) => {
    const leaf = endLoadedLeaf(load, radians(90));
    console.log(
      `Mattiasson ${load}: off by ${leaf.travel - travel} of travel, ${leaf.approach - approach} of approach`,
    );
    expectClose(leaf.travel, travel, { printedTo: 5 });
    expectClose(leaf.approach, approach, { printedTo: 5 });
  });

  /** A third test-suite quotes this one. */
  it('load 1: tip angle 0.46135', () => {
    const { tipAngle } = endLoadedLeaf(1, radians(90));
    console.log(`Mattiasson 1: off by ${tipAngle - 0.46135} rad of tip angle`);
    expectClose(tipAngle, 0.46135, { printedTo: 5 });
  });
});

describe('a force in any direction', () => {
  it.each(FORWARD)('$id', (row) => {
    const { travel, approach, tipAngle, rootMoment } = endLoadedLeaf(input(row, 'alpha'), directionOf(row));
    expectRow(row, travel, approach, tipAngle, rootMoment);
  });

  it.each(FORWARD)('$id: root moment is force times its lever, and the leaf turns as its curvature says', (row) => {
    const [load, direction] = [input(row, 'alpha'), directionOf(row)];
    const { travel, approach, tipAngle, rootMoment } = endLoadedLeaf(load, direction);
    const lever = (1 - approach) * Math.sin(direction) - travel * Math.cos(direction);
    expectClose(load * lever, rootMoment, { rel: 1e-12, because: 'round-off' });
    // (dθ/ds)² = 2α(cos(ψ − θ_tip) − cos(ψ − θ)); with θ = θ_tip(1 − q²) the end of the integral is smooth
    const length = integral(
      (q) => {
        const angle = tipAngle * (1 - q * q);
        const [sum, difference] = [direction - (tipAngle + angle) / 2, (tipAngle - angle) / 2];
        const square = 4 * load * Math.sin(sum) * Math.sin(difference);
        return q === 0 ? limit(load, direction, tipAngle) : (2 * q * tipAngle) / Math.sqrt(square);
      },
      0,
      1,
      2000,
    );
    expectClose(length, 1, { rel: 1e-7, because: 'Simpson’s rule on 2000 steps; a strong pull is sharp at the tip' });
  });
});

/** 2·q·θ/√(4α·sin(ψ − θ)·θ·q²/2) as q goes to 0. */
function limit(load: number, direction: number, tipAngle: number): number {
  return Math.sqrt((2 * tipAngle) / (load * Math.sin(direction - tipAngle)));
}

describe('the force for a travel', () => {
  it.each(checkValues('B', 'B-inv-'))('$id', (row) => {
    const { load, approach, tipAngle, rootMoment } = endLoadAtTravel(input(row, 'w_over_L'));
    expectRow(row, load, approach, tipAngle, rootMoment);
  });

  it.each([1e-6, 0.01, 0.5, 0.9, 0.99, 0.995])('%s of the length leads back to it', (travel) => {
    const { load, rootMoment } = endLoadAtTravel(travel);
    const back = endLoadedLeaf(load, radians(90));
    expectClose(back.travel, travel, { rel: 1e-9, because: 'round-off of a small travel against the length' });
    expectClose(back.rootMoment, rootMoment, { rel: 1e-9, because: 'round-off' });
  });
});

describe('strain at the clamp', () => {
  it.each(checkValues('B', 'B-eps-'))('$id', (row) => {
    const { rootMoment } = endLoadedLeaf(input(row, 'alpha'), radians(90));
    expectRow(row, strainOfMoment(input(row, 't_mm'), input(row, 'L_mm'), rootMoment));
  });
});

describe('limits', () => {
  it('goes over into small deflection', () => {
    const { travel, tipAngle, rootMoment } = endLoadedLeaf(1e-4, radians(90));
    const small = { rel: 1e-8, because: 'the next term, of the order of α²' };
    expectClose(travel, 1e-4 / 3, small);
    expectClose(tipAngle, 0.5e-4, small);
    expectClose(rootMoment, 1e-4, small);
  });

  it('bends a column above π²/4 only, and a pull along the leaf never', () => {
    expect(endLoadedLeaf(2.467, radians(180)).travel).toBe(0);
    expect(endLoadedLeaf(2.468, radians(180)).travel).toBeGreaterThan(0.01);
    expect(endLoadedLeaf(1e6, radians(0))).toMatchObject({ travel: 0, approach: 0, rootMoment: 0 });
  });

  /** Classical table of the buckled column (Timoshenko, Gere, Theory of Elastic Stability, from memory): tip at 20°, 60°, 120°. */
  it.each([
    [20, 1.015, 0.97, 0.22],
    [60, 1.152, 0.741, 0.593],
    [120, 1.884, 0.123, 0.803],
  ])('of a buckled column with its tip at %s°: load ratio %s', (angleDeg, ratio, along, across) => {
    const state = endLoadedLeaf((ratio * Math.PI ** 2) / 4, radians(180));
    const rounded = { abs: 0.5, because: 'the load is printed to three places, and the angle goes as its root' };
    expectClose((state.tipAngle * 180) / Math.PI, angleDeg, rounded);
    expectClose(1 - state.approach, along, { abs: 3e-3, because: 'the load is printed to three places' });
    expectClose(state.travel, across, { abs: 6e-3, because: 'the load is printed to three places' });
  });

  it('stays a number for any force', () => {
    for (const load of [0, 1e-12, 1e-3, 1, 1e3, 1e5]) {
      for (const direction of [0, 1e-6, 0.5, 1.5, 3, Math.PI - 1e-6, Math.PI]) {
        const state = endLoadedLeaf(load, asRad(direction));
        expect(Object.values(state).every(Number.isFinite), `${load} at ${direction}`).toBe(true);
      }
    }
  });

  it('refuses what is no load, direction or travel', () => {
    expect(() => endLoadedLeaf(-1, radians(90))).toThrow(RangeError);
    expect(() => endLoadedLeaf(Number.NaN, radians(90))).toThrow(RangeError);
    expect(() => endLoadedLeaf(1, radians(181))).toThrow(RangeError);
    expect(() => endLoadAtTravel(0.996)).toThrow(RangeError);
    expect(() => endLoadAtTravel(Number.NaN)).toThrow(RangeError);
  });
});
