import { asRad, degrees, radians } from '../../../core/units.ts';
import type { Measure } from '../../text/amountText.ts';
import type { Travelled } from './travelled.ts';

const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

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
  if (key === 'Home') return way.from;
  if (key === 'End') return way.to;
  if (key === 'n' || key === 'N') return nextMark(amount, way);
  const presses = KEYS[key];
  if (presses === undefined) return undefined;
  const step = stepOf(way, measure);
  const at = measure === 'turn' ? degrees(asRad(amount)) : amount;
  // On whole steps, and always on the ends themselves, which need not be such.
  const steps = presses * (isShifted ? 10 : 1);
  const whole = (at + steps * step) / step;
  const value = step * (steps > 0 ? Math.floor(whole + 1e-6) : Math.ceil(whole - 1e-6));
  const to = measure === 'turn' ? radians(value) : value;
  return Math.min(way.to, Math.max(way.from, to));
}

/** The next marked state, or the first after rest where there is none further on. */
function nextMark(amount: number, { marks, wanted, from, to }: Travelled): number {
  const stops = [from, 0, ...marks.map((mark) => mark.amount), wanted, to].toSorted((p, q) => p - q);
  return stops.find((stop) => stop > amount + 1e-6 * Math.abs(to)) ?? from;
}
