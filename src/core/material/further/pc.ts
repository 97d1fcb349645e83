import { computed, memory, published } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PC: FurtherRow = {
  notes: {
    youngsModulus: 'S15 bulk 2200',
    poissonsRatio: 'bulk card',
    sustainedStrainLimit: 'stress cracking with oils and solvents',
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
    glassTransition: 'easy-print blends as low as 110',
  },
  life: 'Elastic term: S3 moulded points fitted, times 1.414 (R −1 to R 0) and 0.7 (print, judgement); anchor 20 flexes at 0.147 from memory',
  properties: {
    tensileStrength: published(
      's17-pc-tension',
      '60–70 quoted; best own specimen 67.5',
      [60, 45, 67.5],
      'MPa',
      'along lines',
      'n = 1 per condition',
    ),
    stressAtBreak: memory([52, 40, 65], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory(
      [0.5, 0.25, 0.8],
      '',
      'across layers',
      'S17 reports the opposite sign (up to 64.7 % stronger upright) from single specimens; not used',
    ),
    density: published('s15-bulk-cards', 'material card, bulk value', [1200, 1180, 1220], 'kg/m³', 'any'),
    setAfterDayHeld: memory([8, 3, 20], '% of held strain', 'along lines'),
    waterUptake: memory([0.15, 0.1, 0.35], '% mass', 'any'),
    permissibleStrainSingleHandbook: published(
      's6-snap-fit-guide',
      'second-hand, through two notes',
      [0.04, 0.04, 0.04],
      '',
      'any',
      'moulded, unreinforced; read through third-party notes, two independent notes agree',
    ),
    relaxationExponent: memory(
      [0.022, 0.015, 0.035],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [8.6, 6, 13.4],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [14.8, 10.3, 22.5],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: computed(
      'S3, table; published stress / from-memory strength',
      'published and memory',
      [0.11, 0.08, 0.2],
      '',
      'any',
      'stress amplitude / tensile strength at 10⁶ cycles; moulded, reversed flexure 6.9 MPa at 10⁶ over UTS 62 MPa (from memory); 0.22 at 10⁵',
    ),
  },
};
