import { computed, memory, published } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PETG: FurtherRow = {
  notes: {
    youngsModulus: 'S14 measured 1630 ± 100 by crosshead travel (reads low); S16 lists 2000 bulk',
    strainAtBreak: '77.1 ± 8.7 % (n=3, crosshead); other printed tests as low as 5 %, from memory',
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
    glassTransition: '78–80 more usual, from memory',
  },
  life: 'Both ends from memory: 0.0055 at 2·10⁶; median 200 flexes at peak strain 0.147',
  properties: {
    tensileStrength: published(
      's14-print-tension',
      'README, results table (n = 3)',
      [34.8, 32, 52],
      'MPa',
      'along lines',
      '34.8 ± 0.1 (n=3) printed; 50 bulk in S16; range from memory',
    ),
    stressAtBreak: memory([28, 18, 45], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory([0.6, 0.35, 0.9], '', 'across layers'),
    density: published(
      's16-bulk-supplier',
      'section 2.1, supplier bulk values',
      [1270, 1230, 1290],
      'kg/m³',
      'any',
      'supplier value',
    ),
    setAfterDayHeld: memory(
      [20, 8, 40],
      '% of held strain',
      'along lines',
      '1 h after release, held near 1.5 % strain',
    ),
    waterUptake: memory([0.3, 0.1, 0.6], '% mass', 'any'),
    relaxationExponent: memory(
      [0.045, 0.03, 0.08],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [16.8, 11.6, 27.9],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [27.9, 19.6, 44.1],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: memory(
      [0.25, 0.15, 0.35],
      '',
      'along lines',
      'largest stress of the cycle / tensile strength at 10⁶ cycles; printed PETG S-N (R 0.2) exists in Martins et al. 2024 but its numbers were not visible',
    ),
  },
};
