import type { Assessment } from './assessment.ts';

/** Figures that a small change is told by. */
export const NUDGE_FIGURES = ['strain', 'chance', 'effort', 'set'] as const;
export type NudgeFigure = (typeof NUDGE_FIGURES)[number];

/** A figure after a change, and by how much it has changed; absent where one of the two is not known or is nought. */
export interface Moved {
  readonly now: number;
  readonly by?: number;
}

/** Absent where nobody has counted so far. */
export type MovedFigures = Readonly<Partial<Record<NudgeFigure, Moved>>>;

function byRatio(before: number, now: number): Moved {
  return before > 0 ? { now, by: now / before - 1 } : { now };
}

/** The share of prints that reach what is wanted, where that can be said. */
function chanceOf({ life }: Assessment): number | undefined {
  return life.beyond === 'wanted' ? undefined : life.chance;
}

/**
 * By how much a change moves each figure of a joint.
 *
 * @param before - the joint as it is [-]
 * @param after - with the change [-]
 * @returns strain as a fraction and effort [N·mm] or [N], changed by a ratio less one; the chance [-] and what stays bent
 *   [rad] or [mm], changed by a difference
 */
export function movedFigures(before: Assessment, after: Assessment): MovedFigures {
  const [was, chance] = [chanceOf(before), chanceOf(after)];
  return {
    strain: byRatio(before.strain.peak, after.strain.peak),
    ...(chance === undefined ? {} : { chance: { now: chance, ...(was === undefined ? {} : { by: chance - was }) } }),
    effort: byRatio(before.effort.effort, after.effort.effort),
    set: { now: after.set.amount, by: after.set.amount - before.set.amount },
  };
}

/**
 * The largest change of each figure among some.
 *
 * @param rows - figures of each change; absent where it cannot be [-]
 * @returns for each figure the place of its largest change [-]; absent where nothing changes it
 */
export function largestOf(rows: readonly (MovedFigures | undefined)[]): Readonly<Partial<Record<NudgeFigure, number>>> {
  const largest = NUDGE_FIGURES.flatMap((figure) => {
    const sizes = rows.map((row) => Math.abs(row?.[figure]?.by ?? 0));
    const most = Math.max(0, ...sizes);
    return most > 0 ? [[figure, sizes.indexOf(most)] as const] : [];
  });
  return Object.fromEntries(largest);
}
