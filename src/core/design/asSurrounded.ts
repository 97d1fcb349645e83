import { ALLOWED } from '../material/choose.ts';
import type { Filament, Quantity } from '../material/types.ts';
import type { Joint } from './joint.ts';
import { isDryNylon } from './warmth.ts';

/** So many times a quantity. */
function times(quantity: Quantity, factor: number): Quantity {
  const { low = quantity.typical, high = quantity.typical, typical } = quantity;
  return {
    ...quantity,
    typical: factor * typical,
    low: factor * low,
    high: factor * high,
    provenance: { kind: 'computed', from: 'what this row says of it dry', inputs: 'memory' },
  };
}

/**
 * A filament row as it is where the joint is used: nylon that is kept dry is stiffer and yields at less strain.
 *
 *     E = E_dry, or E/(E_damp/E_dry) where only the ratio is known
 *
 * Other moduli keep their proportion to it; the yield strain and what is allowed of it are those for dry nylon where they are known.
 * Yield stress and life curve stay those of damp nylon.
 *
 * @param filament - row of the filament table, for a room [-]
 * @param joint - where it is used [-]
 * @returns the row, or one with the figures for dry air
 *
 * Source: s5-allowable-strain.
 */
export function asSurrounded(filament: Filament, joint: Pick<Joint, 'surroundings'>): Filament {
  if (!isDryNylon(joint, filament)) return filament;
  const p = filament.properties;
  const young = p.youngsModulus;
  const dry = p.youngsModulusDry ?? times(young, 1 / (p.conditionedOverDryModulus?.typical ?? 1));
  const like = (name: 'flexuralModulus' | 'youngsModulusAcrossLayers') =>
    p[name] && { [name]: times(dry, p[name].typical / young.typical) };
  const strain = p.yieldStrainDry;
  const allowed = (share: number) => strain && times(strain, share);
  return {
    ...filament,
    properties: {
      ...p,
      youngsModulus: dry,
      ...like('flexuralModulus'),
      ...like('youngsModulusAcrossLayers'),
      yieldStrain: strain ?? p.yieldStrain,
      permissibleStrainSingle: allowed(ALLOWED.once) ?? p.permissibleStrainSingle,
      permissibleStrainRepeated: allowed(ALLOWED.once * ALLOWED.againOfOnce) ?? p.permissibleStrainRepeated,
    },
  };
}
