import { computed, memory, published, publishedRange } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PP_MOULDED: FurtherRow = {
  notes: {
    youngsModulus: 'bulk card; range from memory',
    permissibleStrainSingle:
      '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory. Solid moulded PP, not the drawn hinge',
    permissibleStrainRepeated:
      '0.60 × the single-use value (rule: S5, published). Solid moulded PP, not the drawn hinge',
    thickSectionStrainFactor:
      'multiply the strain-life curve when the hinge is thicker than about 0.5 mm (no drawing and orientation); judgement',
  },
  life: '10⁶ at 0.30 from the computed nominal strain of the S7 geometry and the published statement that such hinges pass a million flexes (S24). Only for thin (t ≤ 0.5 mm) oriented, warm-flexed hinges',
  properties: {
    tensileStrength: memory(
      [34, 25, 40],
      'MPa',
      'flow',
      'S15 prints 79.7 MPa ultimate (oriented / film value, not used)',
    ),
    stressAtBreak: memory([25, 15, 40], 'MPa', 'flow'),
    density: published('s15-bulk-cards', 'material card, bulk value', [916, 895, 920], 'kg/m³', 'any'),
    setAfterDayHeld: memory([35, 15, 60], '% of held strain', 'flow'),
    waterUptake: memory([0.02, 0.01, 0.05], '% mass', 'any'),
    relaxationExponent: memory(
      [0.09, 0.06, 0.12],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [30.8, 21.8, 38.8],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [48, 35.4, 58.2],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: memory([0.4, 0.3, 0.5], '', 'any', 'stress amplitude / tensile strength at 10⁶ cycles'),
    hingeThickness: publishedRange(
      's7-moulded-hinge',
      'opening section',
      [0.3, 0.2, 0.4],
      'mm',
      'flow',
      '0.2–0.4 mm; S21 start 0.20–0.25, maximum 0.38 mm',
    ),
    hingeLandLength: published(
      's7-moulded-hinge',
      'opening section',
      [1.5, 1, 2],
      'mm',
      'flow',
      'typical 1.5 mm; range from memory',
    ),
    hingeNominalStrain: computed(
      'S7, geometry',
      'published',
      [0.31, 0.21, 0.42],
      '',
      'flow',
      't·θ/(2L), θ = π, L = 1.5 mm',
    ),
  },
};
