/** How far a joint is moved and how hard it pushes back, whether its drive measures a turn or a travel. */
import type { Drive } from '../../core/flexures/family.ts';
import { asRad } from '../../core/units.ts';
import {
  angle,
  angleWithin,
  effortFigure,
  length,
  MINUS,
  NO_BREAK,
  setLength,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';

export type Measure = Drive['measure'];

/** An amount that somebody set, without idle decimals: “35°”, “3 mm”. */
export function setAmount(amount: number, measure: Measure, unit: LengthUnit): string {
  const said =
    measure === 'turn' ? angle(asRad(amount)) : `${setLength(amount, unit, unit === 'mm' ? 0 : 3)}${unitAfter(unit)}`;
  return said.replace('-', MINUS);
}

/** One that was computed: “35°”, “3.14 mm”. */
export function amountText(amount: number, measure: Measure, unit: LengthUnit): string {
  return measure === 'turn' ? angle(asRad(amount)) : length(amount, unit);
}

/** One that is only known roughly: “54°”, “3.1 mm”. */
export function roughAmount(amount: number, measure: Measure, unit: LengthUnit): string {
  return measure === 'turn' ? angle(asRad(amount), 0) : length(amount, unit, unit === 'mm' ? 1 : 2);
}

/** One that must not be passed, rounded down. */
export function amountWithin(amount: number, measure: Measure, unit: LengthUnit): string {
  return measure === 'turn' ? angleWithin(asRad(amount)) : length(Math.floor(amount * 100 + 1e-6) / 100, unit);
}

export const EFFORT_UNIT: Readonly<Record<Measure, string>> = { turn: 'N·mm', travel: 'N' };

/** “30.2 N·mm”, “4.12 N”. */
export function effortText(effort: number, measure: Measure): string {
  return `${effortFigure(effort)}${NO_BREAK}${EFFORT_UNIT[measure]}`;
}
