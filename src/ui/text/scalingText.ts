/** Words of the table that says what scaling somebody else's part does. */
import type { WholeByScale } from '../../core/design/scalePart.ts';
import type { Measure } from './amountText.ts';
import { counted, setLength, share, unitAfter, type LengthUnit } from './numbers.ts';

export const SCALING_HEAD = 'Scaled to whole lines';
export const SCALING_HEAD_LAYERS = 'Scaled to whole layers';
export const scalingColumns = (measure: Measure) =>
  ['whole', 'scale', 'strain', measure === 'turn' ? 'torque' : 'force', 'instead'] as const;
export const SCALING_SAYS: Readonly<Record<Measure, string>> = {
  turn: 'Scaling leaves strain as it was: what bends grows as long as it grows thick. It makes the section whole, not the bend gentler.',
  travel: 'A part that is scaled up strains less over the same travel, as that is a smaller share of it.',
};

/** One row: the count, the scale, the strain and the torque against now, and the line width that needs no scaling. */
export function scalingRow(row: WholeByScale, what: 'line' | 'layer', unit: LengthUnit): readonly string[] {
  return [
    counted(row.count, what),
    share(row.scale),
    row.strainRatio === 1 ? 'as it was' : `× ${row.strainRatio.toFixed(2)}`,
    `× ${row.effortRatio >= 10 ? row.effortRatio.toFixed(0) : row.effortRatio.toFixed(2)}`,
    row.lineWidthInstead === undefined ? '' : `${setLength(row.lineWidthInstead, unit)}${unitAfter(unit)} lines`,
  ];
}
