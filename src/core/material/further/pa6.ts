import { computed, memory, published } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PA6: FurtherRow = {
  notes: {
    youngsModulus: 'conditioned; see dry value',
    yieldStress: 'conditioned',
    yieldStrain: 'conditioned, broad yield; dry 0.04',
    poissonsRatio: 'bulk card',
    sustainedStrainLimit: 'conditioned',
    permissibleStrainSingle:
      '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory. Conditioned',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published). Conditioned',
    glassTransition: 'dry; falls to about 0–20 °C when conditioned',
    youngsModulusDry: 'S15 bulk dry 2930',
  },
  life: 'High-cycle end set by judgement from the very flat S3 line for moulded PA66 (b −0.034); low-cycle anchor 1500 flexes at 0.147 from practice. S2: printed nylon folded fewer than 1000 times (fold strain not visible)',
  properties: {
    conditionedOverDryModulus: memory(
      [0.45, 0.3, 0.6],
      '',
      'any',
      'moulded PA6 about 3000 dry to 1000–1200 MPa at 50 % RH; S22/S23 abstracts confirm the direction, not the number',
    ),
    tensileStrength: memory([45, 35, 60], 'MPa', 'along lines', 'conditioned; dry print 55–70; bulk dry 75.5 (S15)'),
    stressAtBreak: memory([42, 30, 60], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory([0.6, 0.35, 0.85], '', 'across layers'),
    density: published(
      's15-bulk-cards',
      'material card, bulk value',
      [1150, 1120, 1150],
      'kg/m³',
      'any',
      'range from memory',
    ),
    setAfterDayHeld: memory([25, 10, 45], '% of held strain', 'along lines', 'recovers further over days'),
    waterUptake: memory([2.7, 2.3, 3.2], '% mass at 50 % RH', 'any', 'saturation about 9 %'),
    permissibleStrainSingleHandbook: memory(
      [0.06, 0.04, 0.06],
      '',
      'any',
      'recalled guide value, conditioned moulded nylon, single use; about 0.03 for frequent use; dry 0.04 / 0.02',
    ),
    relaxationExponent: memory(
      [0.06, 0.03, 0.08],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [21.8, 11.6, 27.9],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [35.4, 19.6, 44.1],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: computed(
      'S3, table; published stress / from-memory strength',
      'published and memory',
      [0.3, 0.2, 0.44],
      '',
      'any',
      'stress amplitude / tensile strength at 10⁶ cycles; moulded unfilled PA66: 36.5 MPa at 10⁶ over UTS 83 MPa (from memory) = 0.44; printed taken lower by judgement',
    ),
    wetFilamentStrengthLoss: published(
      's20-damp-nylon',
      'abstract',
      43.1,
      '%',
      'along lines',
      'loss of tensile strength when the filament had lain in air 35 days instead of 7 before printing; a print-quality effect, not conditioning',
    ),
  },
};
