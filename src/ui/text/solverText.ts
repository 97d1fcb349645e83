/** What is said while the solver works, and when it breaks off. */

/** In the place of the chance, which an estimate does not know so well. */
export const ESTIMATED = 'By a hand form for now; the solver is at work.';

/** Beside a drawing or curves that are about to change. */
export const WORKING = 'working…';

export const LOOKING = 'Looking for ways out…';
export const MEASURING_ROOM = 'Looking how much room there is…';
export const NOT_LOOKED = 'The search broke off. Change a value, or try again.';
export const TRY_AGAIN = 'Try again';
/** Below the ways out, where looking at every change would have taken too long. */
export const CUT_SHORT = 'The search was cut short; there may be other ways out.';

/** For readers of the page by ear, once the search is done. */
export function foundText(count: number): string {
  if (count === 0) return 'No way out found';
  return count === 1 ? 'One way out found' : `${count} ways out found`;
}

/** The worker has failed; what is said of the joint is an estimate until it answers. */
export function brokenOffText(message: string): string {
  return `The solver broke off: ${message}. What is said of the joint is estimated by a hand form; change a value, or try again`;
}
