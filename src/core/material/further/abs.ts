import { computed, memory, published } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const ABS: FurtherRow = {
  notes: {
    youngsModulus: 'bulk: S15 2300, S16 2100',
    poissonsRatio: 'bulk card',
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
  },
  life: 'Both ends from memory: 0.0040 at 2·10⁶; median 20 flexes at peak strain 0.147',
  properties: {
    tensileStrength: memory([34, 26, 42], 'MPa', 'along lines', 'bulk 38.8 (S15), 40 (S16)'),
    stressAtBreak: memory([30, 22, 38], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory([0.45, 0.2, 0.75], '', 'across layers'),
    density: published(
      's15-bulk-cards',
      'material card 1060, with S16 1040: the mean',
      [1050, 1030, 1070],
      'kg/m³',
      'any',
    ),
    setAfterDayHeld: memory([18, 8, 35], '% of held strain', 'along lines'),
    waterUptake: memory([0.5, 0.2, 0.8], '% mass', 'any'),
    permissibleStrainSingleHandbook: memory(
      [0.025, 0.018, 0.03],
      '',
      'any',
      'recalled guide value for moulded resin, single use',
    ),
    relaxationExponent: memory(
      [0.045, 0.03, 0.06],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [16.8, 11.6, 21.8],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [27.9, 19.6, 35.4],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: memory(
      [0.22, 0.12, 0.3],
      '',
      'along lines',
      'largest stress of the cycle / tensile strength at 10⁶ cycles',
    ),
  },
};
