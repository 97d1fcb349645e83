/**
 * Source [normal-distribution]: values of the normal distribution as any table prints them. Fair: the table is not made from
 * the series, continued fraction or first guess used here. And the npm package jstat, which has rational approximations of its
 * own.
 */
import { jStat } from 'jstat';
import { describe, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/core/numeric/normal.ts';
import { expectClose } from '../support/close.ts';

describe('share below z', () => {
  it.each([
    [0, 0.5, 10],
    [0.5, 0.6914624613, 10],
    [1, 0.8413447461, 10],
    [2, 0.9772498681, 10],
    [3, 0.998650102, 10],
    [-1, 0.1586552539, 10],
    [-3, 0.0013498980316, 13],
    [-4, 3.1671241833e-5, 15],
    [-5, 2.8665157188e-7, 17],
    [-6, 9.86587645e-10, 19],
  ])('z = %s', (z, share, printedTo) => {
    expectClose(normalCdf(z), share, { printedTo });
  });
});

describe('z below which a share lies', () => {
  it.each([
    [0.5, 0],
    [0.75, 0.67448975],
    [0.9, 1.281551566],
    [0.95, 1.644853627],
    [0.975, 1.959963985],
    [0.99, 2.326347874],
    [0.995, 2.575829304],
    [0.999, 3.090232306],
    [0.1, -1.281551566],
  ])('share %s', (share, z) => {
    expectClose(normalQuantile(share), z, { printedTo: 9 });
  });
});

describe('agrees with jstat', () => {
  it.each([-5, -2.5, -1, -0.1, 0, 0.3, 1.7, 4])('below z = %s', (z) => {
    expectClose(normalCdf(z), jStat.normal.cdf(z, 0, 1), { abs: 1e-12, because: 'what jstat computes to' });
  });

  it.each([0.001, 0.01, 0.05, 0.1, 0.5, 0.78, 0.9, 0.95, 0.99, 0.999])('the quantile of %s', (share) => {
    expectClose(normalQuantile(share), jStat.normal.inv(share, 0, 1), { abs: 1e-7, because: 'what jstat computes to' });
  });
});
