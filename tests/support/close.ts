import { expect } from 'vitest';

/** Why two numbers may differ. A tolerance without a reason does not compile. */
export type Allowance =
  | { readonly printedTo: number; readonly because?: string } // half a unit in the last printed place
  | { readonly rel: number; readonly because: string }
  | { readonly abs: number; readonly because: string };

/** Half a unit in the last place is a decimal too; its own round-off must not fail a number printed right on it. */
const ROUND_OFF = 1e-9;

function roomFor(expected: number, allowance: Allowance): number {
  if ('printedTo' in allowance) return 0.5 * 10 ** -allowance.printedTo * (1 + ROUND_OFF);
  return 'rel' in allowance ? allowance.rel * Math.abs(expected) : allowance.abs;
}

/** Fails unless `actual` is a number within the allowance of `expected`; says the difference and the reason. */
export function expectClose(actual: number, expected: number, allowance: Allowance): void {
  const room = roomFor(expected, allowance);
  const off = Math.abs(actual - expected);
  const reason = allowance.because ?? 'printed places';
  expect(
    off <= room,
    `${actual} is not within ${room} of ${expected} (off by ${off}); allowed because: ${reason}`,
  ).toBe(true);
}
