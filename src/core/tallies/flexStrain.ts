import { severity } from '../life/assessLife.ts';
import type { FlexTally } from '../material/tally.ts';
import type { Filament } from '../material/types.ts';
import { strainOfBend } from './strainOfBend.ts';

/** What the skin of a flexed strip goes through. */
export interface FlexStrain {
  /** Peak strain, as a fraction. */
  readonly peak: number;
  /** R, least over largest strain: −1 where it is bent as far to both sides. */
  readonly ratio: -1 | 0;
}

/**
 * Strains of a flexed strip: pure bending, so that the form is exact at any angle.
 *
 *     ε = t/(2R + t) over a bar,   t·θ/(2L) to a turn
 *
 * @param tally - a strip with its bend, thickness [mm] and ways [-]
 * @returns peak strain as a fraction and strain ratio [-]
 *
 * Source: plane-bending.
 * @example flexStrain({ bend: { way: 'over', radius: 5 }, thickness: 0.84, ways: 'one way' }).peak // → 0.0774907749
 */
export function flexStrain({ bend, thickness, ways }: Pick<FlexTally, 'bend' | 'thickness' | 'ways'>): FlexStrain {
  return { peak: strainOfBend(bend, thickness), ratio: ways === 'both ways' ? -1 : 0 };
}

/**
 * The strain of a flexed strip that goes into the curve of a filament.
 *
 *     ε_eq = ε_peak·s,   s = (1 − R)^γ/(f_layers·f_thick)
 *
 * Layers are pulled apart where the strip was printed upright.
 *
 * @param tally - a strip with its bend, thickness [mm], lying and ways [-]
 * @param filament - row whose curve it goes into [-]
 * @returns equivalent strain as a fraction [-]
 *
 * Source: strain-life.
 */
export function equivalentOf(
  tally: Pick<FlexTally, 'bend' | 'thickness' | 'ways' | 'lying'>,
  filament: Filament,
): number {
  const { peak, ratio } = flexStrain(tally);
  return peak * severity({ ratio, acrossLayers: tally.lying === 'upright', thickness: tally.thickness, filament });
}
