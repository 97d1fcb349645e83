/**
 * Source [carlson-duplication]: B. C. Carlson, Numer. Algorithms 10, 1995, 13–26. The paper's own check values of R_F and
 * R_D, fourteen digits, read as quoted in the public test-suites of several numerical libraries; the complete integrals
 * from p. 608 of M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, read as quoted in one of them.
 * Besides, identities that hold for any argument, and the defining integrals by Simpson's rule.
 */
import { describe, expect, it } from 'vitest';
import { carlsonRD, carlsonRF, completeE, completeK, ellipticE, ellipticF } from '../../src/core/numeric/elliptic.ts';
import { expectClose } from '../support/close.ts';
import { integral } from '../support/quadrature.ts';
import { noteResidual } from '../support/residuals.ts';

const ROUND_OFF = { rel: 2e-15, because: 'round-off' } as const;

describe('Carlson’s check values', () => {
  it.each([
    [carlsonRF(1, 2, 0), 1.3110287771461, 13],
    [carlsonRF(0.5, 1, 0), 1.8540746773014, 13],
    [carlsonRF(2, 3, 4), 0.58408284167715, 14],
    [carlsonRD(0, 2, 1), 1.7972103521034, 13],
    [carlsonRD(2, 3, 4), 0.16510527294261, 14],
  ])('%s is %s', (actual, printed, places) => {
    noteResidual('Carlson 1995', actual, printed);
    expectClose(actual, printed, { printedTo: places });
  });

  it.each([
    [0.2, 1.659623598610528],
    [0.48, 1.837491363355796],
  ])('complete integral of the first kind at parameter %s, p. 608', (parameter, printed) => {
    noteResidual('table p. 608', completeK(Math.sqrt(parameter)), printed);
    expectClose(completeK(Math.sqrt(parameter)), printed, { printedTo: 15, because: 'printed places' });
  });
});

describe('identities', () => {
  const moduli = [0, 1e-4, 0.1, 0.3, Math.SQRT1_2, 0.9, 0.99, 0.99999];

  it.each(moduli.filter((k) => k > 0))('of Legendre, between both kinds and the complementary modulus, at %s', (k) => {
    const other = Math.sqrt((1 - k) * (1 + k));
    const sum = completeE(k) * completeK(other) + completeE(other) * completeK(k) - completeK(k) * completeK(other);
    // near either end K·K is large and the sum is not
    const rel = 4e-16 * completeK(k) * completeK(other);
    expectClose(sum, Math.PI / 2, { rel, because: 'round-off of the products' });
  });

  it('of homogeneity and symmetry', () => {
    expectClose(carlsonRF(8, 12, 16), carlsonRF(2, 3, 4) / 2, ROUND_OFF);
    expectClose(carlsonRD(8, 12, 16), carlsonRD(2, 3, 4) / 8, ROUND_OFF);
    expectClose(carlsonRF(4, 2, 3), carlsonRF(2, 3, 4), ROUND_OFF);
    const sum = carlsonRD(2, 3, 4) + carlsonRD(3, 4, 2) + carlsonRD(4, 2, 3);
    expectClose(sum, 3 / Math.sqrt(24), ROUND_OFF);
  });

  it('of the lemniscate: K at 45° by the gamma function of a quarter', () => {
    const gammaOfQuarter = 3.625609908221908; // common tables
    expectClose(completeK(Math.SQRT1_2), gammaOfQuarter ** 2 / (4 * Math.sqrt(Math.PI)), ROUND_OFF);
  });

  it('at the ends of the modulus: angle and sine, and the Gudermannian', () => {
    for (const angle of [-1.2, 0.3, 1.5]) {
      expectClose(ellipticF(angle, 0), angle, ROUND_OFF);
      expectClose(ellipticE(angle, 0), angle, ROUND_OFF);
      expectClose(ellipticE(angle, 1), Math.sin(angle), ROUND_OFF);
      const cancelling = { rel: 1e-13, because: 'round-off of 1 − sin² near a quarter turn' };
      expectClose(ellipticF(angle, 1), Math.asinh(Math.tan(angle)), cancelling);
    }
    expect(completeE(1)).toBe(1);
  });

  it.each(moduli)('of whole half turns and of sign, at %s', (k) => {
    const nearOne = { rel: 1e-14, because: 'round-off of 1 − k²·sin², which is small near a quarter turn' };
    expectClose(ellipticF(Math.PI / 2, k), completeK(k), nearOne);
    expectClose(ellipticE(Math.PI / 2, k), completeE(k), nearOne);
    expectClose(ellipticF(0.4 + 2 * Math.PI, k), ellipticF(0.4, k) + 4 * completeK(k), nearOne);
    expectClose(ellipticE(-0.4 - Math.PI, k), -ellipticE(0.4, k) - 2 * completeE(k), nearOne);
  });
});

describe('the defining integrals', () => {
  it.each([
    [0.3, 0.5],
    [1, 0.9],
    [2.8, 0.7],
    [1.4, 0.99],
  ])('up to %s with modulus %s', (angle, k) => {
    const root = (x: number) => Math.sqrt(1 - (k * Math.sin(x)) ** 2);
    const simpson = { rel: 1e-11, because: 'Simpson’s rule on 2000 steps' };
    expectClose(
      ellipticF(angle, k),
      integral((x) => 1 / root(x), 0, angle, 2000),
      simpson,
    );
    expectClose(ellipticE(angle, k), integral(root, 0, angle, 2000), simpson);
  });
});

describe('arguments outside their range', () => {
  it('are refused', () => {
    expect(() => carlsonRF(0, 0, 1)).toThrow(RangeError);
    expect(() => carlsonRF(-1, 1, 1)).toThrow(RangeError);
    expect(() => carlsonRF(Number.NaN, 1, 1)).toThrow(RangeError);
    expect(() => carlsonRD(1, 1, 0)).toThrow(RangeError);
    expect(() => carlsonRD(0, 0, 1)).toThrow(RangeError);
    expect(() => completeK(1)).toThrow(RangeError);
  });
});
