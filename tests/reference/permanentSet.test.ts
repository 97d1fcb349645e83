/**
 * Source [elastic-plastic]: elastic–perfectly plastic bending of a rectangular section. Figures of checkvalues/J.json,
 * computed outside this program and confirmed there by quadrature; the quadrature is repeated here for the moment.
 * The rows `J-ro` and `J-roM` (Ramberg-Osgood curves) wait for a stress–strain curve with hardening.
 */
import { describe, expect, it } from 'vitest';
import { bendingStrain } from '../../src/core/closedForms/leafBending.ts';
import { plasticMoment, residualSurfaceStress, setAfterOneBend } from '../../src/core/strength/permanentSet.ts';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

describe('moment, set and residual stress after one bend', () => {
  it.each(checkValues('J', 'J-epp-'))('$id', (row) => {
    const ratio = input(row, 'kappa_over_ky');
    const { fraction } = setAfterOneBend(ratio * 0.015, 2000, 30);
    const moment = plasticMoment(ratio);
    expectRow(row, moment, fraction * ratio, fraction, 1 - fraction, ratio - moment, residualSurfaceStress(ratio));
  });

  it.each(checkValues('J', 'J-ex-'))('$id', (row) => {
    const angleDeg = input(row, 'theta_deg');
    const strain = bendingStrain(input(row, 't_mm'), input(row, 'L_mm'), radians(angleDeg));
    const { kappaRatio, fraction } = setAfterOneBend(strain, input(row, 'E_MPa'), input(row, 'sy_MPa'));
    expectRow(row, strain, kappaRatio, angleDeg * fraction, angleDeg * (1 - fraction));
  });

  it.each([0.5, 1, 1.2, 1.5, 2, 5, 100])('moment at k = %s is the sum of stress times lever', (ratio) => {
    const strips = 20_000;
    let sum = 0;
    for (let i = 0; i < strips; i++) {
      const height = (i + 0.5) / strips;
      sum += (Math.min(1, ratio * height) * height) / strips;
    }
    expectClose(plasticMoment(ratio), 3 * sum, { rel: 1e-6, because: 'midpoint rule with 20 000 strips' });
  });

  /** The same set, written as the spring-back formula of sheet-metal work. */
  it.each([1.1, 1.5, 3, 7.33, 50])('equals the sheet-metal spring-back formula at k = %s', (ratio) => {
    const [modulus, yieldStress, thickness] = [2000, 30, 0.84];
    const strain = (ratio * yieldStress) / modulus;
    const radius = thickness / (2 * strain);
    const share = (radius * yieldStress) / (modulus * thickness);
    const { fraction } = setAfterOneBend(strain, modulus, yieldStress);
    expectClose(fraction, 4 * share ** 3 - 3 * share + 1, { abs: 1e-14, because: 'round-off' });
  });

  it('leaves no set up to yield', () => {
    expect(setAfterOneBend(0.015, 2000, 30)).toEqual({ kappaRatio: 1, fraction: 0 });
    expect(setAfterOneBend(0, 2000, 30)).toEqual({ kappaRatio: 0, fraction: 0 });
  });
});
