import { latticePoint, latticeSteps } from './quasiRandom.ts';
import { randomShares } from './random.ts';

export type SamplingHow = 'quasi-random' | 'plain';
export const SAMPLINGS: readonly SamplingHow[] = ['quasi-random', 'plain'];

/** Independent sets of points in the unit cube. */
export interface Sampling {
  readonly how: SamplingHow;
  /** Sets that know nothing of each other; plain points are one set, since each of them stands alone. */
  readonly replicates: number;
  /** Points of one set. */
  readonly each: number;
  /** Each set with its points, a share for every dimension. */
  readonly sets: readonly (readonly (readonly number[])[])[];
}

/** Shifts of a lattice: enough that their spread tells the error to about a fifth. */
const SHIFTS = 16;
/** Four points of each shift: fewer are no lattice. */
export const LEAST_SAMPLES = 4 * SHIFTS;

function drawn(count: number, draw: () => number): readonly number[] {
  return Array.from({ length: count }, draw);
}

/**
 * Points spread over a cube of as many dimensions as there are doubts, always the same ones for the same seed.
 *
 * Quasi-random ones are a lattice that is shifted sixteen times, each time at random: each shift is an even sample of its
 * own, and how far their answers lie apart is the error of their mean.
 *
 * @param how - quasi-random or plain [-]
 * @param samples - how many in all [-], a power of 2, at least `LEAST_SAMPLES`
 * @param dimensions - how many [-], ≥ 1
 * @param seed - any whole number of 32 bits [-]
 * @returns sets of points, all shares strictly between 0 and 1
 *
 * Source: lattice-rules, cranley-patterson, xoroshiro.
 */
export function sampleCube(how: SamplingHow, samples: number, dimensions: number, seed: number): Sampling {
  if (!(samples >= LEAST_SAMPLES) || !Number.isInteger(Math.log2(samples))) {
    throw new RangeError(`a power of 2 of at least ${LEAST_SAMPLES} samples is needed, not ${samples}`);
  }
  const draw = randomShares(seed);
  if (how === 'plain') {
    const set = Array.from({ length: samples }, () => drawn(dimensions, draw));
    return { how, replicates: 1, each: samples, sets: [set] };
  }
  const each = samples / SHIFTS;
  const steps = latticeSteps(each, dimensions);
  const sets = Array.from({ length: SHIFTS }, () => {
    const shift = drawn(dimensions, draw);
    return Array.from({ length: each }, (_, k) => latticePoint(k, each, steps, shift));
  });
  return { how, replicates: SHIFTS, each, sets };
}

/** A share and how far chance alone may have moved it: one standard deviation. */
export interface SampledShare {
  readonly share: number;
  readonly error: number;
}

/**
 * The share of points for which something holds, with its sampling error.
 *
 *     plain:  s = √(p̃·(1 − p̃)/n),   p̃ = (k + 1)/(n + 2)
 *     sets:   s = √(Σ(p_r − p)²/(r·(r − 1)))
 *
 * Never 0: where all points agree, a rarer exception than one in all of them cannot be ruled out.
 *
 * @param sets - for each set, for each of its points, whether it holds [-]
 * @returns share [-], 0 to 1, and its standard error [-], > 0
 *
 * Source: normal-distribution, cranley-patterson.
 * @example sampledShare([[true, true, false, false]]).error // → 0.25
 */
export function sampledShare(sets: readonly (readonly boolean[])[]): SampledShare {
  const counts = sets.map((set) => set.filter(Boolean).length);
  const points = sets.reduce((sum, set) => sum + set.length, 0);
  const held = counts.reduce((sum, count) => sum + count, 0);
  const share = held / points;
  if (sets.length === 1) {
    const near = (held + 1) / (points + 2);
    return { share, error: Math.sqrt((near * (1 - near)) / points) };
  }
  const off = counts.reduce((sum, count, i) => sum + (count / (sets[i]?.length ?? 1) - share) ** 2, 0);
  return { share, error: Math.max(1 / points, Math.sqrt(off / (sets.length * (sets.length - 1)))) };
}

/**
 * The value below which a share of equally likely values lies, by a straight line between the two nearest.
 *
 * @param sorted - finite values in rising order, at least one [any unit]
 * @param share - 0 to 1 [-]
 * @returns the value
 *
 * @example quantileOf([1, 2, 3, 5], 0.5) // → 2.5
 */
export function quantileOf(sorted: readonly number[], share: number): number {
  const at = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5));
  const low = sorted[Math.floor(at)] ?? Number.NaN;
  const high = sorted[Math.ceil(at)] ?? low;
  return low + (at - Math.floor(at)) * (high - low);
}
