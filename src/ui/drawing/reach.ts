/** How far a joint can be shown moved: in shares of the wanted amount, or in what a scale counts in. */
export interface Reach {
  readonly from: number;
  readonly to: number;
}

/** The nearest to what is asked for. */
export function within({ from, to }: Reach, asked: number): number {
  return Math.min(to, Math.max(from, asked));
}
