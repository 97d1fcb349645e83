/** The top of a smooth hill in a few dimensions, by Newton's steps that are shortened until they rise. */
import { choleskyRoot, solvedWith, type Matrix } from './smallMatrix.ts';

/** Height, slope and curvature of a hill at a place. */
export interface Hill {
  readonly value: number;
  readonly gradient: readonly number[];
  /** Second derivatives. */
  readonly curvature: Matrix;
}

export interface Top {
  readonly at: readonly number[];
  readonly hill: Hill;
  /** Whether it came to rest: no step raises it any more. */
  readonly rests: boolean;
}

const MOST_STEPS = 200;
/** A step that promises less than this share of the height, or of a unit, is lost in round-off. */
const AT_REST = 1e-14;
/** So much is added to the curvature where a step does not rise, and taken off where one does. */
const DAMPING = { first: 1e-3, more: 10, most: 1e12 } as const;

/**
 * Where a function is highest, from a place to start at.
 *
 *     (−H + μ·|diag H|)·step = g
 *
 * with μ nought wherever that rises, so that it ends as quickly as Newton's method does; a step that is not a number or does
 * not rise is taken back and shortened.
 *
 * @param hill - height [-] with first and second derivatives; may be −Infinity where nothing is allowed
 * @param start - a place where it is finite [any unit]
 * @param free - which numbers may change [-]; all where absent
 * @returns the top [-] and whether it came to rest there
 */
export function ascend(
  hill: (place: readonly number[]) => Hill,
  start: readonly number[],
  free: readonly number[] = start.map((_, i) => i),
): Top {
  let [at, here, damping] = [start, hill(start), 0];
  for (let tries = 0; tries < MOST_STEPS && damping < DAMPING.most; tries += 1) {
    const step = stepOf(here, free, damping);
    if (step && step.rise <= AT_REST * Math.max(1, Math.abs(here.value))) return restingAt(at, here, free, hill);
    const next = step && at.map((value, i) => value + (step.by[i] ?? 0));
    const there = next && hill(next);
    const isRise = there !== undefined && there.value > here.value;
    if (next && isRise) [at, here] = [next, there];
    damping = isRise ? eased(damping) : Math.max(DAMPING.first, damping * DAMPING.more);
  }
  return { at, hill: here, rests: false };
}

/** One bare step more, too short for heights to tell: it makes half of the figures of the place into all of them. */
function restingAt(
  at: readonly number[],
  here: Hill,
  free: readonly number[],
  hill: (place: readonly number[]) => Hill,
): Top {
  const last = stepOf(here, free, 0);
  if (!last) return { at, hill: here, rests: true };
  const place = at.map((value, i) => value + (last.by[i] ?? 0));
  return { at: place, hill: hill(place), rests: true };
}

function eased(damping: number): number {
  return damping > DAMPING.first ? damping / DAMPING.more : 0;
}

/** A step in the numbers that may change, and by how much the hill would rise if it were a bowl turned over. */
interface Step {
  readonly by: readonly number[];
  readonly rise: number;
}

function stepOf({ gradient, curvature }: Hill, free: readonly number[], damping: number): Step | undefined {
  const bowl = free.map((i) =>
    free.map((j) => {
      const bend = curvature[i]?.[j] ?? 0;
      return -bend + (i === j ? damping * Math.max(1, Math.abs(bend)) : 0);
    }),
  );
  const root = choleskyRoot(bowl);
  if (!root) return undefined;
  const slope = free.map((i) => gradient[i] ?? 0);
  const solved = solvedWith(root, slope);
  if (!solved.every(Number.isFinite)) return undefined;
  const rise = solved.reduce((sum, value, i) => sum + (value * (slope[i] ?? 0)) / 2, 0);
  return { by: gradient.map((_, i) => solved[free.indexOf(i)] ?? 0), rise };
}
