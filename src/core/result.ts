import type { Problem } from './problems.ts';

/**
 * A value with notes, or problems. The user, the file and the physics end here;
 * a broken precondition inside the core throws a `RangeError` instead.
 */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly notes: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

export function ok<T>(value: T, notes: readonly Problem[] = []): Result<T> {
  return { ok: true, value, notes };
}

export function fail<T>(first: Problem, ...more: Problem[]): Result<T> {
  return { ok: false, problems: [first, ...more] };
}

/** Fails with these problems; a list that may be empty passes as `undefined`. */
export function failIfAny(problems: readonly Problem[]): { ok: false; problems: [Problem, ...Problem[]] } | undefined {
  const [first, ...more] = problems;
  return first === undefined ? undefined : { ok: false, problems: [first, ...more] };
}
