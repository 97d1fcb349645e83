/** What is said while the solver works, and when it breaks off. */

/** In the place of the chance, which an estimate does not know so well. */
export const ESTIMATED = 'By a hand form for now; the solver is at work.';

/** Beside a drawing or curves that are about to change. */
export const WORKING = 'working…';

export const TRY_AGAIN = 'Try again';

/** The worker has failed; what is said of the joint is an estimate until it answers. */
export function brokenOffText(message: string): string {
  return `The solver broke off: ${message}. What is said of the joint is estimated by a hand form; change a value, or try again`;
}
