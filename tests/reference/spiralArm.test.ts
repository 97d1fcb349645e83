/**
 * Source [spiral-arm]: flat spiral of even pitch under a pure moment. The rows of checkvalues/H.json were computed outside
 * this program from the arc length in higher precision; the length is taken here once more by Simpson's rule.
 */
import { describe, it } from 'vitest';
import { spiralLength, spiralStiffness, spiralStrain } from '../../src/core/closedForms/spiralArm.ts';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { integral } from '../support/quadrature.ts';

const woundAs = (row: CheckValue) => [input(row, 'r0_mm'), input(row, 'r1_mm'), input(row, 'turns')] as const;

describe('length of a spiral arm', () => {
  it.each(checkValues('H', 'H-L-'))('$id', (row) => {
    const [inner, outer, turns] = woundAs(row);
    expectRow(row, spiralLength(inner, outer, turns), Math.PI * turns * (inner + outer));
    const pitch = (outer - inner) / (2 * Math.PI * turns);
    const byParts = integral((angle) => Math.hypot(inner + pitch * angle, pitch), 0, 2 * Math.PI * turns, 4000);
    expectClose(spiralLength(inner, outer, turns), byParts, { rel: 1e-11, because: 'Simpson’s rule on 4000 steps' });
    expectClose(spiralLength(outer, inner, turns), byParts, { rel: 1e-11, because: 'Simpson’s rule on 4000 steps' });
  });

  it('without pitch is a circle', () => {
    expectClose(spiralLength(5, 5, 1.5), 15 * Math.PI, { rel: 1e-12, because: 'round-off' });
    expectClose(spiralLength(5, 5.001, 1.5), 15.0015 * Math.PI, { rel: 1e-7, because: 'round-off over the pitch' });
  });
});

describe('a hub on spiral arms', () => {
  it.each(checkValues('H', 'H-ex-'))('$id', (row) => {
    const length = spiralLength(...woundAs(row));
    const [thickness, angle] = [input(row, 't_mm'), radians(input(row, 'theta_deg'))];
    const stiffness = spiralStiffness(input(row, 'E_MPa'), input(row, 'b_mm'), thickness, length, input(row, 'arms'));
    expectRow(row, length, stiffness, stiffness * angle, spiralStrain(thickness, length, angle));
  });
});
