import { asRad, degrees, radians } from '../../core/units.ts';
import type { Measure } from '../text/amountText.ts';

/** An amount as it lies on the axis across: an angle in degrees, a travel in mm. */
export function onAxis(amount: number, measure: Measure): number {
  return measure === 'turn' ? degrees(asRad(amount)) : amount;
}

/** The amount that lies at a place of the axis. */
export function fromAxis(at: number, measure: Measure): number {
  return measure === 'turn' ? radians(at) : at;
}

/** A pointer reads to a tenth of a degree and keys go in halves [deg]; a hundredth and a twentieth of a mm. */
export const GRIDS = { turn: { fine: 0.1, step: 0.5 }, travel: { fine: 0.01, step: 0.05 } } as const;
