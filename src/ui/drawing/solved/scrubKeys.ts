import { asRad, degrees, radians } from '../../../core/units.ts';
import type { Measure } from '../../text/amountText.ts';
import { keyedTo } from '../scrubKeys.ts';
import type { Travelled } from './travelled.ts';

/** One press of an arrow: half a degree over a short turn, else a degree; 0.05 mm. */
function stepOf({ from, to }: Travelled, measure: Measure): number {
  if (measure === 'travel') return 0.05;
  return degrees(asRad(Math.max(to, -from))) < 30 ? 0.5 : 1;
}

/** Where a key takes the joint from an amount [rad] or [mm]; undefined for keys that do nothing. N goes from mark to mark. */
export function scrubbed(
  key: string,
  isShifted: boolean,
  amount: number,
  way: Travelled,
  measure: Measure,
): number | undefined {
  if (key === 'n' || key === 'N') return nextMark(amount, way);
  const isTurn = measure === 'turn';
  const shown = (value: number) => (isTurn ? degrees(asRad(value)) : value);
  const ends = { from: shown(way.from), to: shown(way.to) };
  const to = keyedTo(key, isShifted, shown(amount), ends, stepOf(way, measure));
  // Back in radians the ends are themselves again, to the last digit.
  if (to === ends.from) return way.from;
  if (to === ends.to) return way.to;
  return to !== undefined && isTurn ? radians(to) : to;
}

/** The next marked state, or the first after rest where there is none further on. */
function nextMark(amount: number, { marks, wanted, from, to }: Travelled): number {
  const stops = [from, 0, ...marks.map((mark) => mark.amount), wanted, to].toSorted((p, q) => p - q);
  return stops.find((stop) => stop > amount + 1e-6 * Math.abs(to)) ?? from;
}
