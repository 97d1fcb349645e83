/** What a bar that is pulled should show by what is known of its filament: stands in the form until something is read off. */
import type { PullTally } from '../../../core/material/tally.ts';
import type { Filament } from '../../../core/material/types.ts';
import { wholeRow } from '../../../core/material/wholeRow.ts';
import type { MPa } from '../../../core/units.ts';

type Direction = PullTally['direction'];

/** Stress at which it should break, to two figures. */
export function expectedStrength(row: Filament, direction: Direction): MPa {
  const { tensileStrength, tensileStrengthAcrossLayers, acrossLayersStrengthRatio } = wholeRow(row).properties;
  const along = tensileStrength.typical;
  const across = tensileStrengthAcrossLayers?.typical ?? along * (acrossLayersStrengthRatio?.typical ?? 1);
  return Number((direction === 'across layers' ? across : along).toPrecision(2));
}

/** How stiff it should be when pulled, to two figures. */
export function expectedStiffness({ properties }: Filament, direction: Direction): MPa {
  const { youngsModulus, youngsModulusAcrossLayers } = properties;
  const across = direction === 'across layers' ? youngsModulusAcrossLayers : undefined;
  return Number((across ?? youngsModulus).typical.toPrecision(2));
}
