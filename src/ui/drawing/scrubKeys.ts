import { within, type Reach } from './reach.ts';

const PRESSES: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

/** How many steps a key asks for, ten times as many with Shift; undefined for keys that ask for none. */
export function stepsOf(key: string, isShifted: boolean): number | undefined {
  const presses = PRESSES[key];
  return presses === undefined ? undefined : presses * (isShifted ? 10 : 1);
}

/** Where a key leads on a scale between two ends: on whole steps, and always on the ends themselves, which need not be such. */
export function keyedTo(key: string, isShifted: boolean, at: number, ends: Reach, step: number) {
  if (key === 'Home') return ends.from;
  if (key === 'End') return ends.to;
  const steps = stepsOf(key, isShifted);
  if (steps === undefined) return undefined;
  const whole = (at + steps * step) / step;
  const value = step * (steps > 0 ? Math.floor(whole + 1e-6) : Math.ceil(whole - 1e-6));
  return within(ends, value);
}
