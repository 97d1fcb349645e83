/** What tests ask of the solver's paths, and the limit in which classical theory and the solver speak of the same rod. */
import type { PathPoint, Reaction } from '../../src/core/beam/answer.ts';
import type { BeamModel } from '../../src/core/beam/model.ts';
import { followPath, type SolveAsked } from '../../src/core/beam/solve.ts';
import type { CheckValue } from './checkValues.ts';
import { expectClose, type Allowance } from './close.ts';
import { noteResidual } from './residuals.ts';

/** The state at the end of what was asked; a path that ends early is a mistake of the test. */
export function endOf(model: BeamModel, asked: SolveAsked = {}): PathPoint {
  const { points, stopped } = followPath(model, { parts: 10, second: false, ...asked });
  const last = points.at(-1);
  if (stopped || !last || Math.abs(last.share - (asked.to ?? 1)) > 1e-12) {
    throw new Error(`the path ended early: ${stopped?.message ?? 'no reason given'}`);
  }
  return last;
}

/** What holds a pad or free node in a state; one that nothing holds is a mistake of the test. */
export function reactionAt({ reactions }: PathPoint, at: string): Reaction {
  const found = reactions.find((reaction) => reaction.at === at);
  if (!found) throw new Error(`nothing holds ${at}`);
  return found;
}

/** Where a pad or free node is in a state. */
export function poseOf({ poses }: PathPoint, at: string) {
  const pose = poses[at];
  if (!pose) throw new Error(`there is no ${at}`);
  return pose;
}

/**
 * Figures of the thin limit. The classical rod neither stretches nor shears; the solver's does, by shares of (t/L)².
 * Two slendernesses s and 2s therefore leave, once that share is taken off, only terms of s⁴, 1e-10 and less here.
 */
export function thinLimit(figures: (slenderness: number) => readonly number[], slenderness = 5e-4): readonly number[] {
  const thin = figures(slenderness);
  const thicker = figures(2 * slenderness);
  return thin.map((value, i) => value + (value - (thicker[i] ?? Number.NaN)) / 3);
}

/** Compares the solver's figures with those of a row, within an allowance of their own instead of the row's: one for all, or one for each. */
export function expectSolved(
  row: CheckValue,
  allowances: Allowance | readonly Allowance[],
  ...actual: readonly number[]
): void {
  for (const [index, value] of actual.entries()) {
    const expected = row.expected[index];
    if (expected === undefined || Number.isNaN(expected)) throw new Error(`${row.id} has no figure ${index}`);
    const allowance = Array.isArray(allowances)
      ? (allowances as readonly Allowance[])[index]
      : (allowances as Allowance);
    if (!allowance) throw new Error(`no allowance for figure ${index} of ${row.id}`);
    const group = /^[A-Z]-[A-Za-z]*/.exec(row.id)?.[0] ?? row.id;
    if ('abs' in allowance) noteResidual(`${group} (solver, as a difference)`, value - expected, 0);
    else noteResidual(`${group} (solver)`, value, expected);
    expectClose(value, expected, allowance);
  }
}
