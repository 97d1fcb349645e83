/** Where the numbers of “In use” come from: wear, the other end of a swing, holding, warmth and damp. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { cited } from './filamentValueText.ts';
import { quantityRow, row, telling, type SourceRow } from './sourceRow.ts';

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
    ...(life.wear.length > 1 ? [telling('wear', several)] : []),
    ...(life.wear.some(({ ratio }) => ratio !== 0) ? [telling('ratio', exponent)] : []),
  ];
}

/** Crystals carry some filaments past their glass transition; of each one row tells where it softens. */
function aboutWarmth(crystalline: boolean, isSagging: boolean, of: SourceRow): SourceRow {
  return crystalline === isSagging ? telling('warmth', of) : of;
}

/** How closely a printer keeps its sizes, on which it rests how sure the answer is. */
export function printerRow(): SourceRow {
  return telling(
    'printer',
    row('memory', 'How closely a printer keeps its sizes', 'what a desktop printer that is looked after keeps', [
      'nine prints in ten lie within; set your own where it is asked how sure the answer is',
      cited('common-practice'),
    ]),
  );
}

/** What holding it bent, warmth and damp rest on. */
export function holdingRows({ filament: { properties: p, crystalline } }: Whole): readonly SourceRow[] {
  return [
    telling('push', quantityRow('How fast its push fades when held, a power of time', p.relaxationExponent)),
    telling('held', quantityRow('What stays after a day held', p.setAfterDayHeld)),
    aboutWarmth(crystalline, false, quantityRow('Where it turns from glassy to rubbery', p.glassTransition)),
    aboutWarmth(crystalline, true, quantityRow('Where a loaded bar sags', p.heatDeflection)),
    ...(p.youngsModulusDry ? [quantityRow('Modulus when dry', p.youngsModulusDry)] : []),
    ...(p.conditionedOverDryModulus ? [quantityRow('Damp modulus over dry', p.conditionedOverDryModulus)] : []),
    ...(p.yieldStrainDry ? [quantityRow('Strain at which it stays bent when dry', p.yieldStrainDry, true)] : []),
  ];
}
