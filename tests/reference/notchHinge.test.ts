/**
 * Source [notch-hinge]: J. M. Paros and L. Weisbord, Machine Design, 1965, form from memory; paper not opened. The rows of
 * checkvalues/D.json are the bending integral over the thickness, computed outside this program in higher precision; the
 * same integral is taken here once more by Simpson's rule. Fair, because a wrong form would not meet an integral.
 *
 * Source [notch-concentration]: a fit from memory; the rows only repeat its formula, so they check the typing, not the fit.
 */
import { describe, expect, it } from 'vitest';
import {
  circularNotch,
  ellipticNotch,
  filletedLeaf,
  filletLength,
  notchAngleAtStrain,
  notchConcentration,
  notchStrain,
  thinCircularNotch,
} from '../../src/core/closedForms/notchHinge.ts';
import { asRad } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { integral } from '../support/quadrature.ts';

const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

/** E·b·θ/M of a notch of semi-axes a along and c deep, by the angle on the ellipse. */
const byQuadrature = (neck: number, along: number, deep: number): number =>
  12 *
  integral(
    (angle) => (along * Math.cos(angle)) / (neck + 2 * deep * (1 - Math.cos(angle))) ** 3,
    -Math.PI / 2,
    Math.PI / 2,
    4000,
  );

describe('turning per moment of a circular notch', () => {
  it.each(checkValues('D', 'D-circ-'))('$id', (row) => {
    const neck = input(row, 't_over_R');
    expectRow(row, circularNotch(1, 1, neck, 1) * neck ** 2);
    expectRow(row, circularNotch(1800, 7, 3 * neck, 3) * 1800 * 7 * 9 * neck ** 2);
  });

  it.each([0.003, 0.05, 0.3, 1, 2, 7])('is the integral over the thickness, t/R = %s', (neck) => {
    const simpson = { rel: 1e-10, because: 'Simpson’s rule on 4000 steps' };
    expectClose(circularNotch(1, 1, neck, 1), byQuadrature(neck, 1, 1), simpson);
    expectClose(ellipticNotch(1, 1, neck, 2.5, 1), byQuadrature(neck, 2.5, 1), simpson);
  });

  it.each(checkValues('D', 'D-thin-'))('$id', (row) => {
    const neck = input(row, 't_over_R');
    const thin = thinCircularNotch(1, 1, neck, 1);
    expectRow(row, thin * neck ** 2, thin / circularNotch(1, 1, neck, 1));
  });

  it.each(checkValues('D', 'D-ell-'))('$id', (row) => {
    expectRow(row, ellipticNotch(1, 1, input(row, 't_mm'), input(row, 'a_mm'), input(row, 'c_mm')));
  });
});

describe('a leaf with fillets', () => {
  it.each(checkValues('D', 'D-fil-'))('$id', (row) => {
    const thickness = input(row, 't_mm');
    const compliance = filletedLeaf(1, 1, thickness, input(row, 'L_mm'), input(row, 'r_mm'));
    expectRow(row, compliance, (compliance * thickness ** 3) / 12);
  });

  it.each(checkValues('D', 'D-filadd-'))('$id', (row) => {
    expectRow(row, filletLength(1, input(row, 'r_over_t')));
  });

  it('without fillets is the leaf', () => {
    expect(filletLength(0.84, 0)).toBe(0);
    expectClose(filletedLeaf(1200, 20, 0.42, 5, 0), 1 / 29.6352, ROUND_OFF);
  });
});

describe('strain of the neck', () => {
  it.each(checkValues('D', 'D-strain-'))('$id', (row) => {
    const neck = input(row, 't_over_R');
    expectRow(row, notchAngleAtStrain(neck, 1, 1));
    expectClose(notchStrain(neck, 1, asRad(row.expected[0]!)), 1, ROUND_OFF);
    expectClose(notchStrain(2 * neck, 2, asRad(-0.1)), 0.1 / row.expected[0]!, ROUND_OFF);
  });

  it.each(checkValues('D', 'D-Kt-'))('$id', (row) => {
    expectRow(row, notchConcentration(input(row, 't_over_R'), 1));
  });
});
