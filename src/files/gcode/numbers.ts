/** Numbers of words, of any digits. */

/** Digits that a number of 53 bits holds for sure. */
const EXACT_DIGITS = 15;

/** Powers of ten that such a number holds for sure. */
export const TENS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => 10 ** i);

/**
 * A number of any digits: exact up to 15 of them, as near as can be beyond.
 *
 * @param bytes - with digits and at most one point from one place to before another
 * @returns the number [-]; Infinity where it is too large
 */
export function numberIn(bytes: Uint8Array, from: number, to: number): number {
  let whole = 0;
  let digits = 0;
  let decimals = -1;
  for (let i = from; i < to; i += 1) {
    const c = bytes[i]!;
    if (c === 46) decimals = 0;
    else {
      whole = 10 * whole + c - 48;
      digits += 1;
      if (decimals >= 0) decimals += 1;
    }
  }
  if (digits <= EXACT_DIGITS) return decimals > 0 ? whole / TENS[decimals]! : whole;
  return Number(new TextDecoder().decode(bytes.subarray(from, to)));
}
