import { chanceOfReaching, totalSigma } from '../life/scatter.ts';
import { ok, type Result } from '../result.ts';
import { assessUnderstood } from './assess.ts';
import type { Assessment } from './assessment.ts';
import type { Checked } from './doubtAnswer.ts';
import { printedAs, type Draft } from './doubtCauses.ts';
import type { Respond } from './response.ts';
import type { Understood } from './understand.ts';

/** Prints that are solved themselves. */
const PRINTS = 8;

function far({ thickness = 1, length = 1 }: Draft): number {
  return Math.hypot(Math.log(thickness), Math.log(length));
}

/** From the print that strays least in thickness and length to the one that strays most, evenly. */
function fromNearToFar(drafts: readonly Draft[]): readonly Draft[] {
  const sorted = drafts.toSorted((one, other) => far(one) - far(other));
  return Array.from({ length: PRINTS }, (_, i) => sorted[Math.round((i * (sorted.length - 1)) / (PRINTS - 1))] ?? {});
}

/**
 * How far what is carried over lies from solving the same prints, the farthest of all among them.
 *
 * Problems: those of the solver.
 *
 * @param understood - a checked joint [-]
 * @param drafts - the prints that were sampled [-]
 * @param by - what is carried over, and what solves [-]
 * @param tell - called after each solve with the share that is done [-]
 * @returns worst differences of strain and effort as shares [-], and the difference of the mean chance [-]
 */
export function checkPrints(
  understood: Understood,
  drafts: readonly Draft[],
  by: { readonly carried: Respond; readonly solver: Respond },
  tell: (share: number) => void,
): Result<Checked> {
  const worst = { strain: 0, effort: 0 };
  let chances = 0;
  const checked = fromNearToFar(drafts);
  for (const [i, draft] of checked.entries()) {
    const print = printedAs(understood, draft);
    const solved = assessUnderstood(print, by.solver);
    const carried = assessUnderstood(print, by.carried);
    if (!solved.ok) return solved;
    if (!carried.ok) return carried;
    const off = (figure: (a: Assessment) => number) => Math.abs(figure(carried.value) / figure(solved.value) - 1);
    worst.strain = Math.max(
      worst.strain,
      off(({ strain }) => strain.peak),
    );
    worst.effort = Math.max(
      worst.effort,
      off(({ effort }) => effort.effort),
    );
    chances += chanceOf(carried.value) - chanceOf(solved.value);
    tell((i + 1) / checked.length);
  }
  return ok({ prints: checked.length, ...worst, chance: Math.abs(chances) / checked.length });
}

/** With the doubt of curve and specimens taken in full: a share of eight prints would be too coarse to differ. */
function chanceOf({ life, filament, joint }: Assessment): number {
  return chanceOfReaching(life.median, joint.movement.cycles, totalSigma(filament.life, life.median));
}
