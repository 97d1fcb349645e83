import type { Quantity } from '../material/types.ts';

/** Minutes of a day, the time that figures of held bends are given for. */
export const DAY_MINUTES = 1440;

/**
 * Share of the push that is left of what is held bent, against its push one minute after it was bent.
 *
 *     E(t)/E(1 min) = (t/1 min)^−n
 *
 * A single power, for small strains in a room. Nothing is said of the first minute.
 *
 * @param minutes - t since it was bent [min], ≥ 1
 * @param exponent - n of a filament row [-], ≥ 0
 * @returns share [-], 0 to 1
 *
 * Source: common-practice.
 * @example stressLeft(1440, 0.05) // → 0.695155
 */
export function stressLeft(minutes: number, exponent: number): number {
  if (!(minutes >= 1)) throw new RangeError(`a time of a minute or more is needed, not ${minutes}`);
  return minutes ** -exponent;
}

/**
 * How much of what is lost in a day is lost by a time.
 *
 *     (1 − (t/1 min)^−n)/(1 − 1440^−n),   for n = 0 its limit ln t/ln 1440
 *
 * @param minutes - t since it was bent [min], ≥ 1
 * @param exponent - n of a filament row [-], ≥ 0
 * @returns share [-], ≥ 0; 1 after a day
 *
 * Source: common-practice.
 * @example shareOfDay(60, 0.05) // → 0.607268
 */
export function shareOfDay(minutes: number, exponent: number): number {
  const [by, day] = [minutes, DAY_MINUTES].map((t) => Math.log(t)) as [number, number];
  return exponent > 0 ? Math.expm1(-exponent * by) / Math.expm1(-exponent * day) : by / day;
}

/** Shares of the push left, 0 to 1. */
export interface PushLeft {
  readonly usual: number;
  readonly least: number;
  readonly most: number;
}

/**
 * The same with the range of the exponent: the largest exponent leaves least.
 *
 * @param minutes - since it was bent [min], ≥ 1
 * @param exponent - of a filament row, with its range where it has one [-]
 * @returns shares [-]
 *
 * Source: common-practice.
 */
export function pushLeft(
  minutes: number,
  { typical, low = typical, high = typical }: Pick<Quantity, 'typical' | 'low' | 'high'>,
): PushLeft {
  return { usual: stressLeft(minutes, typical), least: stressLeft(minutes, high), most: stressLeft(minutes, low) };
}
