import { xoroshiro128plus } from 'pure-rand/generator/XoroShiro';

/** Draws one share after another, each strictly between 0 and 1. */
export type RandomShares = () => number;

const HALF_BITS = 26;

/**
 * Shares spread evenly between 0 and 1, always the same ones for the same seed.
 *
 * Two draws of the generator make one share of 52 bits, set in the middle of its step: so it is never 0 nor 1, where
 * a normal law has no value.
 *
 * @param seed - any whole number of 32 bits [-]
 * @returns what draws them [-]
 *
 * Source: xoroshiro.
 * @example randomShares(1)() // → 0.896544229
 */
export function randomShares(seed: number): RandomShares {
  const generator = xoroshiro128plus(seed);
  const bits = () => generator.unsafeNext() >>> (32 - HALF_BITS);
  // It begins close to the seed itself; a few draws mix it.
  for (let i = 0; i < MIXING; i += 1) generator.unsafeNext();
  return () => (bits() * 2 ** HALF_BITS + bits() + 0.5) / 2 ** (2 * HALF_BITS);
}

const MIXING = 16;
