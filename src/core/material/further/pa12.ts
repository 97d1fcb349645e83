import { computed, memory } from '../row.ts';
import type { FurtherRow } from '../types.ts';

export const PA12: FurtherRow = {
  notes: {
    permissibleStrainSingle: '0.70 × yield strain (rule: S5, published); the yield strain itself is from memory',
    permissibleStrainRepeated: '0.60 × the single-use value (rule: S5, published)',
  },
  life: '0.012 at 10⁶ by judgement below sintered PA12 (29.3 MPa / about 1650 MPa = 0.018, S4); low-cycle anchor 1000 flexes at 0.147 from practice',
  properties: {
    tensileStrength: memory([42, 32, 50], 'MPa', 'along lines'),
    stressAtBreak: memory([40, 30, 50], 'MPa', 'along lines'),
    acrossLayersStrengthRatio: memory(
      [0.65, 0.4, 0.9],
      '',
      'across layers',
      'carbon-filled PA12 extrusion: 8.78 / 27.71 MPa = 0.32 (S18, published)',
    ),
    acrossLayersFatigueRatio: computed(
      'S4, p. 155',
      'published',
      0.57,
      '',
      'across layers',
      'sintered, not extruded: 16.8 MPa (Z, R 0) / 29.3 MPa (X, Y, R 0.1) at 10⁶',
    ),
    density: memory([1010, 1000, 1030], 'kg/m³', 'any'),
    setAfterDayHeld: memory([22, 10, 40], '% of held strain', 'along lines'),
    waterUptake: memory([0.7, 0.4, 0.9], '% mass at 50 % RH', 'any'),
    relaxationExponent: memory(
      [0.05, 0.03, 0.07],
      '',
      'any',
      'E(t) = E(1 min) · (t/1 min)^−n, small strain, 23 °C, held strain; Findley-like single power',
    ),
    stressLossHour: computed(
      'relaxation exponent of this row',
      'memory',
      [18.5, 11.6, 24.9],
      '%',
      'any',
      '1 − 60^−n, exponent from memory',
    ),
    stressLossDay: computed(
      'relaxation exponent of this row',
      'memory',
      [30.5, 19.6, 39.9],
      '%',
      'any',
      '1 − 1440^−n, exponent from memory',
    ),
    fatigueFraction: computed(
      'S4, p. 155; published stress / from-memory strength',
      'published and memory',
      [0.35, 0.25, 0.6],
      '',
      'any',
      'largest stress of the cycle / tensile strength at 10⁶ cycles; sintered PA12 29.3 MPa at 10⁶ over UTS 48 MPa (from memory) = 0.61; printed taken lower by judgement',
    ),
  },
};
