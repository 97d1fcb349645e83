import type { Filament, Provenance, ProvenanceKind, Quantity } from './types.ts';

/** The usual shares: of the yield strain what is allowed once, and of that what is allowed again and again (source s5-allowable-strain). */
export const ALLOWED = { once: 0.7, againOfOnce: 0.6 } as const;

/**
 * Modulus to bend with.
 *
 * Along lines the flexural modulus, where a row has one; else the design modulus (a secant, for rubbery filaments);
 * else Young's modulus. Across layers Young's modulus across layers; a row without one keeps its value along lines,
 * and the note says so.
 *
 * @param filament - row of the filament table [-]
 * @param acrossLayers - whether bending pulls layers apart [-]
 * @returns modulus [MPa] with its range and provenance

 */
export function bendingModulus(filament: Filament, acrossLayers: boolean): Quantity {
  const { flexuralModulus, designModulus, youngsModulus, youngsModulusAcrossLayers } = filament.properties;
  const along = flexuralModulus ?? designModulus ?? youngsModulus;
  if (!acrossLayers) return along;
  return youngsModulusAcrossLayers ?? { ...along, note: 'no value across layers known; the one along lines stands in' };
}

/**
 * Share of the strain allowed along lines that is left when bending pulls layers apart.
 *
 * @param filament - row of the filament table [-]
 * @returns factor [-], 0 to 1; 1 for a moulded row, which has no layers

 */
export function strainFactorAcrossLayers(filament: Filament): Quantity {
  return (
    filament.properties.acrossLayersStrainFactor ?? {
      typical: 1,
      unit: '',
      direction: 'any',
      provenance: { kind: 'memory', because: 'no layers' },
      note: 'moulded: there are no layers to pull apart, so nothing is taken off',
    }
  );
}

/**
 * Where a filament softens: past its glass transition, or, where crystals carry it past that, where it sags under load.
 *
 * @param filament - row of the filament table [-]
 * @returns temperature [°C] with its range and provenance
 */
export function softensAt({ crystalline, properties }: Pick<Filament, 'crystalline' | 'properties'>): Quantity {
  return crystalline ? properties.heatDeflection : properties.glassTransition;
}

/**
 * How sound a number is, judged by what it rests on: a computed one counts as from memory
 * as soon as one of its inputs is.
 *
 * @param provenance - where a number comes from [-]
 * @returns kind of provenance that it deserves [-]
 *
 * @example soundness({ kind: 'computed', from: 'a rule', inputs: 'published and memory' }) // → 'memory'
 */
export function soundness(provenance: Provenance): ProvenanceKind {
  return provenance.kind === 'computed' && provenance.inputs !== 'published' ? 'memory' : provenance.kind;
}

/** From weak to strong. `computed` is no step of its own: arithmetic makes its inputs neither better nor worse. */
const STRENGTH = ['memory', 'published', 'measured'] as const;

/**
 * The weakest of several kinds of provenance, which is what a result built on all of them deserves.
 *
 * @param kinds - kinds of provenance [-], at least one
 * @returns the weakest [-]; `computed` only when all are
 *
 * @example weakest('published', 'memory', 'computed') // → 'memory'
 */
export function weakest(...kinds: ProvenanceKind[]): ProvenanceKind {
  return STRENGTH.find((kind) => kinds.includes(kind)) ?? 'computed';
}
