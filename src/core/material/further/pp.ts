import { computed, memory } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PP: FurtherRow = {
  notes: {
    youngsModulus: 'print grades are often soft random copolymers; S15 bulk 1470',
    flexuralModulus: 'S19: printed PP flexural modulus equal to or above moulded',
    poissonsRatio: 'bulk card',
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
    thickSectionStrainFactor:
      'multiply the strain-life curve when the hinge is thicker than about 0.5 mm (no drawing and orientation); judgement',
  },
  life: 'Anchored at S2: printed PP hinges endured 10⁶ folds. The fold strain was not visible; 0.18 assumed, the value at which every S2 result agrees with these curves',
  properties: {
    tensileStrength: memory(
      [22, 15, 32],
      'MPa',
      'along lines',
      'S19: loss against moulded below 11.5 % at the hotter nozzle setting',
    ),
    stressAtBreak: memory([18, 12, 28], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory([0.65, 0.4, 0.9], '', 'across layers'),
    density: memory([905, 890, 920], 'kg/m³', 'any', 'S15 lists 916; typical from memory'),
    setAfterDayHeld: memory([35, 15, 60], '% of held strain', 'along lines'),
    waterUptake: memory([0.03, 0.01, 0.1], '% mass', 'any'),
    permissibleStrainSingleHandbook: memory(
      [0.06, 0.05, 0.08],
      '',
      'any',
      'recalled guide values for moulded PP, single use',
    ),
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
    fatigueFraction: memory(
      [0.4, 0.25, 0.5],
      '',
      'any',
      'largest stress of the cycle / tensile strength at 10⁶ cycles',
    ),
  },
};
