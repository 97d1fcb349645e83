/** What the simple formulas of a kind say beside the solver. */
import type { Assessment } from '../../../core/design/assessment.ts';
import { effortByHand } from '../../../core/design/curves.ts';
import { isRefusal } from '../../../core/flexures/checkSizes.ts';
import { familyOf } from '../../../core/flexures/known.ts';
import type { Mm } from '../../../core/units.ts';
import type { Span } from '../frame.ts';
import { isByFormula, strainByLength } from '../strainByLength.ts';

export interface FormPoint {
  readonly amount: number;
  readonly effort: number;
}

const SAMPLES = 48;

/** What a formula says, or nothing where it has nothing to say: some throw, some give no number. */
function figureOf(ask: () => number): number | undefined {
  try {
    const value = ask();
    return Number.isFinite(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Effort by the simple formula [N·mm] or [N] on the way there; nothing where it has none. */
export function formEffort(a: Assessment, amount: number): number | undefined {
  if (amount === 0) return 0;
  return figureOf(() => effortByHand(a, amount).typical);
}

/**
 * The simple formula's curve to an amount; empty where it is exact and so not worth a line of its own. Of the way back
 * formulas say nothing: they do not know one way from the other.
 */
export function formCurve(a: Assessment, end: number): readonly FormPoint[] {
  if (isByFormula(a)) return [];
  return Array.from({ length: SAMPLES + 1 }, (_, i) => (end * i) / SAMPLES).flatMap((amount) => {
    const effort = formEffort(a, amount);
    return effort === undefined ? [] : [{ amount, effort }];
  });
}

/** The lengths about the present one at which the formula gives a strain and nothing refuses the joint. */
export function lengthsByForm(a: Assessment, lengths: readonly Mm[]): Span | undefined {
  const family = familyOf(a.joint);
  const can = (length: Mm) => {
    const sizes = { ...a.sizes, [family.roles.length]: length };
    if (family.check(sizes, a.section.thickness, a.joint.profile).some(isRefusal)) return false;
    return (figureOf(() => strainByLength(a, length)) ?? 0) > 0;
  };
  if (!can(a.length)) return undefined;
  const shorter = lengths.filter((length) => length < a.length).toReversed();
  const longer = lengths.filter((length) => length > a.length);
  const span: Span = [lastThat(shorter, can) ?? a.length, lastThat(longer, can) ?? a.length];
  return span[1] > span[0] ? span : undefined;
}

/** The last that can, of those that can up to some place and not beyond. */
function lastThat(tried: readonly Mm[], can: (length: Mm) => boolean): Mm | undefined {
  let [known, beyond] = [-1, tried.length];
  while (beyond - known > 1) {
    const middle = Math.floor((known + beyond) / 2);
    if (can(tried[middle] as Mm)) known = middle;
    else beyond = middle;
  }
  return tried[known];
}
