/** Figures of filaments with their units and ranges. */
import type { Quantity } from '../../core/material/types.ts';
import { grouped, MINUS, NO_BREAK } from './numbers.ts';

/** Three figures at most: “1 900”, “3.5”, “−10”. */
export function bareFigure(value: number): string {
  const text = Math.abs(value) >= 1000 ? grouped(value) : String(Number(value.toPrecision(3)));
  return text.replace('-', MINUS);
}

export function figureIn(value: number, asStrain: boolean): string {
  return bareFigure(asStrain ? value * 100 : value);
}

function unitIn({ unit }: Pick<Quantity, 'unit'>, asStrain: boolean): string {
  if (asStrain) return `${NO_BREAK}%`;
  return unit === '' ? '' : `${NO_BREAK}${unit}`;
}

/** “1 900 MPa”; a strain in per cent. */
export function valueText(quantity: Quantity, asStrain: boolean): string {
  return `${figureIn(quantity.typical, asStrain)}${unitIn(quantity, asStrain)}`;
}

/** “1 500 to 2 200”; empty where the row has one figure only. */
export function rangeText({ low, high }: Quantity, asStrain: boolean): string {
  return low === undefined || high === undefined ? '' : `${figureIn(low, asStrain)} to ${figureIn(high, asStrain)}`;
}
