import { strainFactorAcrossLayers } from '../material/choose.ts';
import type { Filament, Quantity } from '../material/types.ts';
import type { Allowable, AllowableName, Grade } from './assessment.ts';
import type { Movement } from './joint.ts';

/** Limits of one filament under one lying, as fractions. */
export type Limits = Readonly<Record<AllowableName, { readonly value: number; readonly quantity: Quantity }>>;

/**
 * What this filament may see, reduced by its across-layer factor when bending pulls layers apart.
 *
 * @param filament - row of the filament table [-]
 * @param acrossLayers - whether layers stack along the flexure [-]
 * @returns limits of peak strain as fractions
 */
export function limitsOf(filament: Filament, acrossLayers: boolean): Limits {
  const p = filament.properties;
  const factor = acrossLayers ? strainFactorAcrossLayers(filament).typical : 1;
  // Across layers the break strain has a row of its own, far below the along-lines value times the factor.
  const broken = (acrossLayers ? p.strainAtBreakAcrossLayers : undefined) ?? p.strainAtBreak;
  const breaks = broken === p.strainAtBreak ? broken.typical * factor : broken.typical;
  const limit = (quantity: Quantity) => ({ value: Math.min(quantity.typical * factor, breaks), quantity });
  return {
    repeated: limit(p.permissibleStrainRepeated),
    single: limit(p.permissibleStrainSingle),
    yield: limit(p.yieldStrain),
    break: { value: breaks, quantity: broken },
    held: limit(p.sustainedStrainLimit),
  };
}

/**
 * One limit of a joint by its name; every joint has all of them.
 *
 * @param allowables - the limits of a joint [-]
 * @param name - which [-]
 * @returns that limit
 */
export function allowableNamed(allowables: readonly Allowable[], name: AllowableName): Allowable {
  const found = allowables.find((allowable) => allowable.name === name);
  if (!found) throw new RangeError(`there is no limit called ${name}`);
  return found;
}

/**
 * Every limit against the peak strain of a joint.
 *
 * Over the repeated limit is no fault while the life curve still promises the wanted cycles; over the single or the
 * yield limit it stays a little bent; over the break limit it fails; held over its limit it sags.
 *
 * @param peak - peak strain as a fraction [-], ≥ 0
 * @param limits - what the filament may see [-]
 * @param movement - the brief [-]
 * @param lifeGrade - grade of the life answer [-]
 * @returns one entry a limit, from the smallest concern to the largest
 */
export function allowablesOf(peak: number, limits: Limits, movement: Movement, lifeGrade: Grade): readonly Allowable[] {
  const over = (name: AllowableName, grade: Grade): Grade => (peak <= limits[name].value ? 'pass' : grade);
  const heldGrade: Grade = peak > limits.yield.value ? 'fail' : 'caution';
  const graded: readonly [AllowableName, boolean, Grade][] = [
    ['repeated', movement.cycles > 1, over('repeated', lifeGrade === 'pass' ? 'pass' : 'caution')],
    ['held', movement.held, over('held', heldGrade)],
    ['single', true, over('single', 'caution')],
    ['yield', true, over('yield', 'caution')],
    ['break', true, over('break', 'fail')],
  ];
  return graded.map(([name, applies, grade]) => ({
    name,
    limit: limits[name].value,
    strain: peak,
    margin: peak > 0 ? limits[name].value / peak : Infinity,
    applies,
    grade: applies ? grade : 'pass',
    provenance: limits[name].quantity.provenance,
  }));
}
