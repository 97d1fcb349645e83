/** Values as they can be shown: what a field puts in force is what stands in it. */
import { asRad, degrees, radians } from '../../core/units.ts';
import { MM_PER_INCH, type LengthUnit } from '../text/numbers.ts';
import type { QuantityKind } from './quantity.ts';

function toGrid(value: number, perUnit: number): number {
  return Math.round(value * perUnit) / perUnit;
}

/** To a micrometre or a ten-thousandth of an inch, a hundredth of a degree, a thousandth: finer than anything that is printed. */
export function settled(value: number, kind: QuantityKind, unit: LengthUnit): number {
  if (kind === 'angle') return radians(toGrid(degrees(asRad(value)), 100));
  if (kind === 'count') return value;
  if (kind !== 'length') return toGrid(value, 1000);
  return unit === 'mm' ? toGrid(value, 1000) : toGrid(value / MM_PER_INCH, 10_000) * MM_PER_INCH;
}

/** A step in the chosen unit: itself in mm, the nearest of 1, 2, 5 × 10ⁿ inch. */
export function stepIn(unit: LengthUnit, step: number): number {
  if (unit === 'mm') return step;
  const inches = step / MM_PER_INCH;
  const decade = 10 ** Math.floor(Math.log10(inches));
  const nearest = [1, 2, 5, 10].reduce((a, b) =>
    Math.abs(Math.log((b * decade) / inches)) < Math.abs(Math.log((a * decade) / inches)) ? b : a,
  );
  return nearest * decade * MM_PER_INCH;
}

/** One press on an effort: half of its decade, so that 20 N steps by 5 and 0.8 N by 0.05. */
export function effortStep(effort: number, up: boolean): number {
  // Below a round figure the steps of the decade below it are taken, as for flexes.
  const from = up ? effort : effort * (1 - 1e-9);
  return 10 ** Math.floor(Math.log10(Math.max(from, 0.01))) / 2;
}

/** One press on a number of flexes: half of its decade, so that 5 000 steps by 500 and 40 by 5; below 20, by one. */
export function cyclesStep(cycles: number, up: boolean): number {
  const from = up ? cycles : cycles - 1;
  return from < 20 ? 1 : 10 ** Math.floor(Math.log10(from)) / 2;
}
