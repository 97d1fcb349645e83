/** What is said of the search for ways out: apart from what the first screen says of the solver. */

export const LOOKING = 'Looking for ways out…';
export const MEASURING_ROOM = 'Looking how much room there is…';
export const NOT_LOOKED = 'The search broke off. Change a value, or try again.';

/** Below the ways out, where looking at every change would have taken too long. */
export const CUT_SHORT = 'The search was cut short; there may be other ways out.';

/** For readers of the page by ear, once the search is done. */
export function foundText(count: number): string {
  if (count === 0) return 'No way out found';
  return count === 1 ? 'One way out found' : `${count} ways out found`;
}
