/** Once there and back takes so long [ms]. */
export const TRAVEL_TIME = 1600;

/** How far a joint is bent after some time [ms]: 0 to 1 and back along a cosine, so that it starts and ends gently. */
export function throughTravel(elapsed: number): number {
  const share = Math.min(1, Math.max(0, elapsed / TRAVEL_TIME));
  return (1 - Math.cos(2 * Math.PI * share)) / 2;
}
