/**
 * Source [elastic-plastic], [ramberg-osgood]: one bend and its release for two kinds of stress–strain curve. Figures of
 * checkvalues/J.json, computed outside this program. First moments are summed again here by Simpson's rule.
 */
import { describe, expect, it } from 'vitest';
import { bentOnce, elasticPerfectlyPlastic, rambergOsgood } from '../../src/core/strength/bendingResponse.ts';
import { plasticCurvature, plasticMoment, residualSurfaceStress } from '../../src/core/strength/permanentSet.ts';
import { checkValues, expectRow, input, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { integral } from '../support/quadrature.ts';

const [MODULUS, YIELD] = [2000, 30];
const plastic = elasticPerfectlyPlastic(MODULUS, YIELD);
const hardening = (row: CheckValue) => rambergOsgood(input(row, 'E_MPa'), input(row, 'K_MPa'), input(row, 'n'));

describe('elastic–perfectly plastic', () => {
  it.each(checkValues('J', 'J-epp-'))('$id', (row) => {
    const ratio = input(row, 'kappa_over_ky');
    const onset = YIELD / MODULUS;
    const bent = bentOnce(plastic, ratio * onset);
    expectRow(
      row,
      (6 * bent.moment) / YIELD,
      bent.share * ratio,
      bent.share,
      1 - bent.share,
      bent.residualStrain / onset,
      bent.residualStress / YIELD,
    );
  });

  it.each([0.5, 1, 1.2, 2, 50])('is the closed form at k = %s', (ratio) => {
    const bent = bentOnce(plastic, (ratio * YIELD) / MODULUS);
    const roundOff = { abs: 1e-12, because: 'round-off' } as const;
    expectClose((6 * bent.moment) / YIELD, plasticMoment(ratio), roundOff);
    expectClose(bent.residualStress / YIELD, residualSurfaceStress(ratio), roundOff);
    expectClose(plasticCurvature(plasticMoment(ratio)) / ratio, 1, {
      rel: 1e-11,
      because: 'round-off, magnified by k² where the moment hardly grows',
    });
  });
});

describe('Ramberg and Osgood', () => {
  it.each(checkValues('J', 'J-ro-'))('$id: stress', (row) => {
    expectRow(row, hardening(row).stress(input(row, 'eps')));
  });

  it.each(checkValues('J', 'J-roM-'))('$id: moment, and the share that stays', (row) => {
    const { moment, share } = bentOnce(hardening(row), input(row, 'eps_surface'));
    expectRow(row, moment, share);
  });
});

it.each([
  ['elastic–perfectly plastic', plastic, 0.06],
  ['Ramberg and Osgood', rambergOsgood(1500, 45, 0.2), 0.03],
] as const)('the first moment of %s is a sum of stress times strain', (_, curve, strain) => {
  const summed = integral((e) => curve.stress(e) * e, 0, strain, 6000);
  expectClose(curve.firstMoment(strain), summed, {
    rel: 1e-7,
    because: 'Simpson’s rule across the corner of the curve',
  });
});

it('a strain below 0 is a mistake of the caller', () => {
  expect(() => rambergOsgood(1500, 45, 0.2).stress(-0.01)).toThrow(RangeError);
});
