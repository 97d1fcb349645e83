/** How much of the world the figures of filaments show. It moves in steps, so that a joint moves and not the paper. */
import type { Span } from '../charts/frame.ts';

export interface Papers {
  /** Of the small curves. */
  readonly small: Span;
  /** Of the figure of all curves. */
  readonly cycles: Span;
  readonly strain: Span;
}

const FLOORS: readonly number[] = [0.003, 0.001, 0.0003, 0.0001];
const CEILINGS: readonly number[] = [0.6, 2, 6];
const CLEARANCE = 1.2;

/** 0.3 to 60 % strain, stretched where the joint lies outside. */
export function sharedPaper(strain: number | undefined): Papers {
  const [least, most] = strain === undefined || strain <= 0 ? [1, 0] : [strain / CLEARANCE, strain * CLEARANCE];
  return {
    small: [1, 2e6],
    cycles: [1, 1e7],
    strain: [
      FLOORS.find((floor) => floor <= least) ?? (FLOORS.at(-1) as number),
      CEILINGS.find((ceiling) => ceiling >= most) ?? (CEILINGS.at(-1) as number),
    ],
  };
}
