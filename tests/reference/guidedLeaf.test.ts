/**
 * Source [tie-beam], Source [small-deflection], Source [end-loaded-elastica]: a leaf whose ends stay parallel. The rows of
 * checkvalues/C.json were computed outside this program: the large travels from Legendre's integrals, the held leaf from
 * tanh forms checked against a boundary-value solution, the loaded leaf from tan m/m. Here the held and the loaded leaf
 * come from power series of the beam-column, so that the two ways share no formula.
 */
import { describe, expect, it } from 'vitest';
import { beamColumn } from '../../src/core/closedForms/beamColumn.ts';
import {
  foldedPullStiffness,
  foldedPullStrain,
  foldedTurnStiffness,
  foldedTurnStrain,
} from '../../src/core/closedForms/foldedLeaf.ts';
import {
  guidedApproach,
  guidedFreeLeaf,
  guidedHeldLeaf,
  guidedMoment,
  guidedStiffness,
  guidedStiffnessUnderLoad,
  guidedStrain,
  guidedTravelAtStrain,
} from '../../src/core/closedForms/guidedLeaf.ts';
import { asRad } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

describe('little travel', () => {
  it.each(checkValues('C', 'C-k-'))('$id: two leaves', (row) => {
    const [modulus, width] = [input(row, 'E_MPa'), input(row, 'b_mm')];
    const [thickness, length] = [input(row, 't_mm'), input(row, 'L_mm')];
    expectRow(row, 2 * guidedStiffness(modulus, width, thickness, length));
    // moments of both ends turn against the couple of the force
    const moment = guidedMoment(modulus, width, thickness, length, 1);
    expectClose(2 * moment, (row.expected[0]! / 2) * length, ROUND_OFF);
    expectClose((6 * moment) / (modulus * width * thickness ** 2), guidedStrain(thickness, length, 1), ROUND_OFF);
  });

  it.each(checkValues('C', 'C-eps-'))('$id', (row) => {
    const [thickness, length, travel] = [input(row, 't_mm'), input(row, 'L_mm'), input(row, 'delta_mm')];
    expectRow(row, guidedStrain(thickness, length, travel));
    expectClose(guidedTravelAtStrain(thickness, length, row.expected[0]!), travel, ROUND_OFF);
  });

  it.each(checkValues('C', 'C-short-'))('$id', (row) => {
    expectRow(row, guidedApproach(input(row, 'L_mm'), input(row, 'delta_mm')));
  });
});

describe('any travel, ends free to approach', () => {
  it.each(checkValues('C', 'C-large-'))('$id', (row) => {
    const { load, approach, endMoment, midSlope } = guidedFreeLeaf(input(row, 'delta_over_L'));
    expectRow(row, load, approach, endMoment, midSlope);
  });

  it('little travel is the linear form', () => {
    const { load, approach, endMoment } = guidedFreeLeaf(0.001);
    const small = { rel: 3e-6, because: 'the next term, of the order of (δ/L)²' };
    expectClose(load, 12 * 0.001, small);
    expectClose(endMoment, 6 * 0.001, small);
    expectClose(approach, guidedApproach(1, 0.001), small);
  });
});

describe('ends held at their distance', () => {
  it.each(checkValues('C', 'C-over-'))('$id', (row) => {
    const { force, tension } = guidedHeldLeaf(input(row, 'delta_over_t'));
    expectRow(row, force, tension);
  });

  it.each([0.05, 0.7, 4, 60, 3000])('%s thicknesses: the form written out in tanh gives the travel back', (travel) => {
    const { force, tension, strain } = guidedHeldLeaf(travel);
    const lambda = Math.sqrt(tension) / 2;
    const tanh = Math.tanh(lambda);
    const g = 1.5 - tanh ** 2 / 2 - (1.5 * tanh) / lambda;
    const amplitude = Math.sqrt(tension / (6 * g));
    const cancelling = { rel: 1e-15 / lambda ** 4 + 1e-12, because: 'g loses figures as λ⁴' };
    expectClose(amplitude * (1 - tanh / lambda), travel, cancelling);
    expectClose(tension * amplitude, force, cancelling);
    expectClose(strain, (force * tanh) / (4 * lambda) + tension / 12, cancelling);
  });

  it('little travel is the linear form', () => {
    expect(guidedHeldLeaf(0)).toEqual({ force: 0, tension: 0, strain: 0 });
    expectClose(guidedHeldLeaf(1e-4).force, 12e-4, { rel: 1e-7, because: '0.72·(δ/t)²' });
    expectClose(guidedHeldLeaf(1e-4).strain, 3e-4, { rel: 1e-3, because: 'the stretch, of the order of δ/t' });
    expect(() => guidedHeldLeaf(-1)).toThrow(RangeError);
  });
});

describe('a load along the leaf', () => {
  it.each(checkValues('C', 'C-axial-'))('$id', (row) => {
    expectRow(row, guidedStiffnessUnderLoad(input(row, 'V_over_Vcr')));
  });

  it('has the slope of the linear form at rest and is zero at the critical load', () => {
    expectClose((guidedStiffnessUnderLoad(1e-6) - 12) / (1e-6 * Math.PI ** 2), -1.2, { rel: 1e-5, because: 'secant' });
    expectClose(guidedStiffnessUnderLoad(1), 0, { abs: 1e-13, because: 'round-off' });
    expect(() => guidedStiffnessUnderLoad(4)).toThrow(RangeError);
  });

  it.each([-4000, -41, -40.5, -39.5, -1, 0.5, 10, 30])('of n = %s: bowing is the falling off of stiffness', (n) => {
    const step = 1e-4 * Math.max(1, Math.abs(n));
    const [low, high] = [beamColumn(n - step).stiffness, beamColumn(n + step).stiffness];
    const { bowing } = beamColumn(n);
    const secant = { rel: 1e-5, because: 'numerical derivative' };
    expectClose((low.ofS - high.ofS) / (2 * step), bowing.ofS, secant);
    expectClose((low.ofC - high.ofC) / (2 * step), bowing.ofC, secant);
  });
});

/** Source [plane-bending]: runs of a folded leaf one behind the other share the movement and carry the same load. */
describe('a folded leaf', () => {
  it('of n runs is n times as soft and strained as one run with an nth of the movement', () => {
    expectClose(4 * foldedTurnStiffness(1200, 20, 0.42, 5, 4), 29.6352, { printedTo: 4 });
    expectClose(4 * foldedPullStiffness(1500, 8, 0.42, 15, 4), 0.526848 / 2, ROUND_OFF);
    expectClose(foldedTurnStrain(0.84, 10, 3, asRad(1.5)), (0.84 * 0.5) / 20, ROUND_OFF);
    expectClose(foldedPullStrain(0.42, 15, 4, 4), 0.0056, ROUND_OFF);
  });
});
