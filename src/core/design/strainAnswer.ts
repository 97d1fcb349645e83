import { bendingStrain } from '../closedForms/leafBending.ts';
import { rootFactor, NOTCH_SENSITIVITY } from '../strength/rootFactor.ts';
import { shoulderConcentration } from '../strength/stressConcentration.ts';
import type { Problem } from '../problems.ts';
import { asRad, type Mm } from '../units.ts';
import type { StrainAnswer } from './assessment.ts';
import type { Understood } from './understand.ts';

/**
 * Strain of the skin at the wanted angle: along the leaf, and at the root where the fillet concentrates it.
 *
 *     ε = t·θ/(2L),   ε_peak = ε·(1 + q·(Kt − 1))
 *
 * θ is shared equally by the flexures of a row, because each carries the same moment.
 *
 * @param understood - a checked joint [-]
 * @returns strains as fractions, with the factors between them
 *
 * Source: plane-bending; root factor roark-17.1.
 */
export function strainAnswer(understood: Understood): {
  readonly strain: StrainAnswer;
  readonly notes: readonly Problem[];
} {
  const { joint, family, section, length, inRow } = understood;
  const { fillet, shoulder } = family.root(joint.sizes, section.thickness);
  const root = shoulderConcentration('bending', section.thickness, shoulder, fillet);
  const factor = rootFactor(root.factor, NOTCH_SENSITIVITY.value);
  const nominal = bendingStrain(section.thickness, length, asRad(joint.movement.angle / inRow));
  const strain: StrainAnswer = {
    nominal,
    peak: nominal * factor,
    concentration: root.factor,
    rootFactor: factor,
    notchSensitivity: NOTCH_SENSITIVITY.value,
    where: factor > 1 ? 'root' : 'along the leaf',
  };
  return {
    strain,
    notes: root.outsideTable ? [outsideTable(fillet, (shoulder - section.thickness) / 2)] : [],
  };
}

function outsideTable(fillet: Mm, step: Mm): Problem {
  const why =
    fillet < step
      ? 'is sharper than the table of root factors reaches, so the strain at the root is at least what is said; enlarge it'
      : 'is wider than the table of root factors reaches; the factor at its edge is used, which errs on the safe side';
  const message = `A root fillet of ${fillet} mm ${why}`;
  return { code: 'fillet-outside-table', message, field: 'sizes.fillet', value: fillet, limit: step };
}
