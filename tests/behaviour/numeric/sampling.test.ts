import { describe, expect, it } from 'vitest';
import { latticeSteps } from '../../../src/core/numeric/quasiRandom.ts';
import { randomShares } from '../../../src/core/numeric/random.ts';
import {
  quantileOf,
  sampleCube,
  sampledShare,
  SAMPLINGS,
  type SamplingHow,
} from '../../../src/core/numeric/sampling.ts';
import { expectClose } from '../../support/close.ts';

describe('random shares', () => {
  it('are the same for the same seed, and others for another', () => {
    const [one, same, other] = [5, 5, 6].map(randomShares).map((draw) => [draw(), draw(), draw()]);
    expect(same).toEqual(one);
    expect(other).not.toEqual(one);
  });

  it.each([0, 1, -1, 2 ** 31 - 1, 123_456_789])('are spread evenly, from seed %i', (seed) => {
    const draw = randomShares(seed);
    const shares = Array.from({ length: 40_000 }, draw);
    const tenths = Array.from({ length: 10 }, (_, i) => shares.filter((s) => Math.floor(10 * s) === i).length);
    // χ² of nine degrees of freedom exceeds 27.9 once in a thousand.
    const chi = tenths.reduce((sum, count) => sum + (count - 4000) ** 2 / 4000, 0);
    expect(chi).toBeLessThan(27.9);
    expect(Math.min(...shares)).toBeGreaterThan(0);
    expect(Math.max(...shares)).toBeLessThan(1);
  });
});

function kernel(x: number): number {
  return 2 * Math.PI ** 2 * (x * x - x + 1 / 6);
}

/** Worst error of a lattice of 64 points in two dimensions, counted anew by the definition; a constant aside. */
function worst(step: number): number {
  const products = Array.from(
    { length: 64 },
    (_, k) => (1 + kernel(k / 64)) * (1 + kernel(((k * step) % 64) / 64) / 2),
  );
  return products.reduce((sum, value) => sum + value, 0);
}

describe('a lattice', () => {
  it.each([16, 64, 256])('of %i points visits every step of each axis once', (points) => {
    for (const step of latticeSteps(points, 12)) {
      expect(new Set(Array.from({ length: points }, (_, k) => (k * step) % points)).size).toBe(points);
    }
  });

  it('is chosen better in two dimensions than any other of its kind', () => {
    const [, second = 0] = latticeSteps(64, 2);
    const all = Array.from({ length: 32 }, (_, i) => worst(2 * i + 1));
    expectClose(worst(second), Math.min(...all), { rel: 1e-12, because: 'the same sum in another order' });
  });
});

/** A smooth figure of all dimensions whose mean over the cube is 1. */
function bump(point: readonly number[]): number {
  return point.reduce((product, share, j) => product * (1 + (12 * (share - 0.5) ** 2 - 1) / (j + 2)), 1);
}

/** Root of the mean square error of a mean over the cube, over many seeds. */
function errorOf(
  how: SamplingHow,
  samples: number,
  figure: (point: readonly number[]) => number,
  mean: number,
): number {
  const SEEDS = 24;
  const squares = Array.from({ length: SEEDS }, (_, seed) => {
    const points = sampleCube(how, samples, 6, seed).sets.flat();
    return (points.reduce((sum, point) => sum + figure(point), 0) / points.length - mean) ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / SEEDS);
}

describe('samples of a cube', () => {
  it.each(SAMPLINGS)('are the same for the same seed: %s', (how) => {
    expect(sampleCube(how, 128, 5, 9)).toEqual(sampleCube(how, 128, 5, 9));
    expect(sampleCube(how, 128, 5, 10)).not.toEqual(sampleCube(how, 128, 5, 9));
    expect(sampleCube(how, 128, 5, 9).sets.flat()).toHaveLength(128);
  });

  it('err as expected: plain ones by the root of their number, quasi-random ones much less', () => {
    const plain = [512, 2048, 8192].map((samples) => errorOf('plain', samples, bump, 1));
    const quasi = [512, 2048, 8192].map((samples) => errorOf('quasi-random', samples, bump, 1));
    // Four times as many halve the error twice over; the spread of 24 squares is a third, so of their root a sixth.
    expectClose((plain[0] ?? 0) / (plain[2] ?? 1), 4, { rel: 0.45, because: 'ratio of two roots of 24 squares' });
    expect((quasi[0] ?? 0) / (quasi[2] ?? 1)).toBeGreaterThan(8);
    expect((plain[2] ?? 0) / (quasi[2] ?? 1)).toBeGreaterThan(10);
  });

  it('need a power of two', () => {
    expect(() => sampleCube('plain', 1000, 2, 1)).toThrow(RangeError);
    expect(() => sampleCube('quasi-random', 32, 2, 1)).toThrow(RangeError);
  });
});

function isIn(point: readonly number[]): boolean {
  return point.reduce((sum, share) => sum + share, 0) < 2.2;
}

describe('a sampled share', () => {
  it.each(SAMPLINGS)('says how far off it is: %s', (how) => {
    const SEEDS = 60;
    const told = Array.from({ length: SEEDS }, (_, seed) =>
      sampledShare(sampleCube(how, 1024, 4, seed).sets.map((set) => set.map(isIn))),
    );
    const fine = sampleCube('quasi-random', 65_536, 4, 1);
    const truth = sampledShare(fine.sets.map((set) => set.map(isIn))).share;
    const rms = Math.sqrt(told.reduce((sum, { share }) => sum + (share - truth) ** 2, 0) / SEEDS);
    const said = Math.sqrt(told.reduce((sum, { error }) => sum + error ** 2, 0) / SEEDS);
    expectClose(said, rms, {
      rel: 0.3,
      because: 'a root of 60 squares is known to a tenth, and three of that are allowed',
    });
  });

  it('is never without error', () => {
    for (const sets of [[[true, true]], [[true], [true]]]) expect(sampledShare(sets).error).toBeGreaterThan(0);
  });
});

describe('a quantile', () => {
  it('is read between two values, and stays within them', () => {
    expect(quantileOf([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantileOf([1, 2, 3, 4], 0)).toBe(1);
    expect(quantileOf([1, 2, 3, 4], 1)).toBe(4);
    expect(quantileOf([7], 0.3)).toBe(7);
  });
});
