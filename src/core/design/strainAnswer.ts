import { rootFactor, NOTCH_SENSITIVITY } from '../strength/rootFactor.ts';
import { shoulderConcentration } from '../strength/stressConcentration.ts';
import type { Problem } from '../problems.ts';
import type { FlexureFamily, Sizes } from '../flexures/family.ts';
import type { Mm } from '../units.ts';
import type { StrainAnswer } from './assessment.ts';
import type { Response } from './response.ts';
import type { Understood } from './understand.ts';

/** How the root of a flexure raises strain: its step to the pad [mm], concentration, and the factor on strain. */
interface RootStrain {
  readonly fillet: Mm;
  readonly step: Mm;
  readonly concentration: number;
  readonly outsideTable: boolean;
  readonly factor: number;
}

/**
 * How much the root of a flexure raises the strain along it.
 *
 * @param family - the kind of flexure [-]
 * @param sizes - its sizes [mm] and counts, checked
 * @param thickness - thickness of the section as it bends [mm], > 0
 * @param sensitivity - how much of the peak is felt q [-], 0 to 1
 * @returns step and fillet [mm], concentration Kt and factor 1 + q·(Kt − 1) [-]
 *
 * Source: roark-17.1.
 */
export function rootOf(
  family: FlexureFamily,
  sizes: Sizes,
  thickness: Mm,
  sensitivity: number = NOTCH_SENSITIVITY.value,
): RootStrain {
  const { fillet, shoulder } = family.root(sizes, thickness);
  const { factor: concentration, outsideTable } = shoulderConcentration('bending', thickness, shoulder, fillet);
  const factor = rootFactor(concentration, sensitivity);
  return { fillet, step: (shoulder - thickness) / 2, concentration, outsideTable, factor };
}

/**
 * Strain of the skin at the wanted amount: along the leaf, and at the root where the fillet concentrates it.
 *
 *     ε_peak = ε·(1 + q·(Kt − 1))
 *
 * @param understood - a checked joint [-]
 * @param response - strains of the skin on the way, without the root, as fractions [-]
 * @returns strains as fractions, with the factors between them
 *
 * Source: roark-17.1.
 */
export function strainAnswer(
  understood: Understood,
  { nominalStrain, strainWithin, strainAtRoots }: Response,
): {
  readonly strain: StrainAnswer;
  readonly notes: readonly Problem[];
} {
  const { sizes, family, section, notchSensitivity = NOTCH_SENSITIVITY.value } = understood;
  const root = rootOf(family, sizes, section.thickness, notchSensitivity);
  const { fillet, step, concentration, outsideTable, factor } = root;
  const strain: StrainAnswer = {
    nominal: nominalStrain,
    peak: Math.max(strainWithin, strainAtRoots * factor),
    concentration,
    rootFactor: factor,
    notchSensitivity,
    where: factor > 1 && strainAtRoots * factor >= strainWithin ? 'root' : 'along the leaf',
  };
  return {
    strain,
    notes: outsideTable ? [beyondTable(fillet, step)] : [],
  };
}

function beyondTable(fillet: Mm, step: Mm): Problem {
  const why =
    fillet < step
      ? 'is sharper than the table of root factors reaches, so the strain at the root is at least what is said; enlarge it'
      : 'is wider than the table of root factors reaches; the factor at its edge is used, which errs on the safe side';
  const message = `A root fillet of ${fillet} mm ${why}`;
  return { code: 'fillet-outside-table', message, field: 'sizes.fillet', value: fillet, limit: step };
}
