import { computed, memory } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const ASA: FurtherRow = {
  notes: {
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
  },
  life: 'Both ends from memory: 0.0045 at 2·10⁶; median 30 flexes at peak strain 0.147',
  properties: {
    tensileStrength: memory([40, 30, 48], 'MPa', 'along lines'),
    stressAtBreak: memory([34, 25, 44], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory([0.5, 0.25, 0.75], '', 'across layers'),
    density: memory([1070, 1050, 1090], 'kg/m³', 'any'),
    setAfterDayHeld: memory([18, 8, 35], '% of held strain', 'along lines'),
    waterUptake: memory([0.5, 0.2, 0.9], '% mass', 'any'),
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
      'largest stress of the cycle / tensile strength at 10⁶ cycles; printed ASA rotating-bending S-N exists (Polymers 2021, 13, 1020) but its numbers were not visible',
    ),
  },
};
