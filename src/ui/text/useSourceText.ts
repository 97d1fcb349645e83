/** Where the numbers of “In use” come from: wear, the other end of a swing, holding, warmth and damp. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { cited } from './filamentValueText.ts';
import { quantityRow, row, type SourceRow } from './sourceRow.ts';

type Whole = Assessment & { readonly filament: WholeFilament };

/** What several kinds of flex add up to, and what the other end of a swing counts for. */
export function wearRows({ life, filament }: Whole): readonly SourceRow[] {
  const several = row(
    'memory',
    'Wear of several movements',
    'each takes its flexes over the life that it alone would leave',
    ['in what order they come is left out', cited('palmgren-miner')],
  );
  const exponent = row(
    'memory',
    `Exponent of the other end of a swing, ${filament.life.gamma}`,
    'largest strain × (1 − ratio of its two ends) to this power',
    [
      '0 says that the largest strain alone counts, 1 that its range does; for PLA flexed often 0 was found, and what flows goes by its range',
      cited('strain-life'),
      cited('s1-pla-fatigue'),
      cited('mean-stress'),
    ],
  );
  return [
    ...(life.wear.length > 1 ? [several] : []),
    ...(life.wear.some(({ ratio }) => ratio !== 0) ? [exponent] : []),
  ];
}

/** What holding it bent, warmth and damp rest on. */
export function holdingRows({ filament: { properties: p } }: Whole): readonly SourceRow[] {
  return [
    quantityRow('How fast its push fades when held, a power of time', p.relaxationExponent),
    quantityRow('What stays after a day held', p.setAfterDayHeld),
    quantityRow('Where it turns from glassy to rubbery', p.glassTransition),
    quantityRow('Where a loaded bar sags', p.heatDeflection),
    ...(p.youngsModulusDry ? [quantityRow('Modulus when dry', p.youngsModulusDry)] : []),
    ...(p.conditionedOverDryModulus ? [quantityRow('Damp modulus over dry', p.conditionedOverDryModulus)] : []),
    ...(p.yieldStrainDry ? [quantityRow('Strain at which it stays bent when dry', p.yieldStrainDry, true)] : []),
  ];
}
