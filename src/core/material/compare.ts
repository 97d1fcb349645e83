/** What is compared of filaments, one name for each: what tells how it flexes. */
import { soundness } from './choose.ts';
import type { Quantity, WholeFilament } from './types.ts';

export const TRAITS = [
  'stiffness',
  'yields',
  'repeated',
  'breaks',
  'layers',
  'glass',
  'sags',
  'water',
  'kept',
] as const;

export type Trait = (typeof TRAITS)[number];

/** Per cent that is left of what is lost. */
function leftOf(lost: Quantity): Quantity {
  const { low, high, ...kept } = lost;
  return {
    ...kept,
    typical: 100 - lost.typical,
    ...(high === undefined ? {} : { low: 100 - high }),
    ...(low === undefined ? {} : { high: 100 - low }),
  };
}

/**
 * One trait of a filament.
 *
 * @param row - a whole row [-]
 * @param trait - which [-]
 * @returns the quantity in the unit of its row [MPa], [°C], [%] or a fraction; `undefined` where the row has none
 */
export function traitOf({ properties: p }: WholeFilament, trait: Trait): Quantity | undefined {
  const traits: Readonly<Record<Trait, Quantity | undefined>> = {
    stiffness: p.youngsModulus,
    yields: p.yieldStrain,
    repeated: p.permissibleStrainRepeated,
    breaks: p.strainAtBreak,
    layers: p.acrossLayersStrainFactor,
    glass: p.glassTransition,
    sags: p.heatDeflection,
    water: p.waterUptake,
    kept: leftOf(p.stressLossDay),
  };
  return traits[trait];
}

/**
 * How many of the values compared are from memory, alone or in what they were computed from.
 *
 * @param rows - whole rows [-]
 * @returns counts of values [-]
 */
export function fromMemory(rows: readonly WholeFilament[]): { readonly memory: number; readonly all: number } {
  const values = rows.flatMap((row) => TRAITS.flatMap((trait) => traitOf(row, trait) ?? []));
  return { memory: values.filter(({ provenance }) => soundness(provenance) === 'memory').length, all: values.length };
}

/**
 * The same of every number that is known of one filament.
 *
 * @param row - a whole row [-]
 * @returns counts of values [-]
 */
export function numbersFromMemory({ properties }: WholeFilament): ReturnType<typeof fromMemory> {
  const values = Object.values(properties) as readonly Quantity[];
  return { memory: values.filter(({ provenance }) => soundness(provenance) === 'memory').length, all: values.length };
}
