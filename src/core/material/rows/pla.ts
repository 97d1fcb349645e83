import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PLA: Filament = {
  id: 'pla',
  name: 'PLA',
  fullName: 'PLA (polylactide)',
  printable: true,
  crystalline: false,
  properties: {
    youngsModulus: memory([3200, 2500, 3600], 'MPa', 'along lines'),
    flexuralModulus: memory([3100, 2300, 3600], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([2800, 2000, 3300], 'MPa', 'across layers'),
    yieldStress: memory([45, 35, 58], 'MPa', 'along lines'),
    yieldStrain: memory([0.022, 0.017, 0.03], '', 'along lines'),
    strainAtBreak: memory([0.05, 0.02, 0.2], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.012, 0.005, 0.025], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.4, 0.2, 0.6], '', 'across layers'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.36, 0.33, 0.4], '', 'any'),
    sustainedStrainLimit: memory([0.005, 0.003, 0.008], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0154, 0.0119, 0.021],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0092, 0.0071, 0.0126],
      '',
      'along lines',
    ),
    glassTransition: memory([60, 55, 65], '°C', 'any'),
    heatDeflection: memory([54, 48, 58], '°C', 'any'),
  },
  life: strainLife({
    A: 0.0314,
    b: -0.1449,
    B: 0.2998,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 0.2,
    sigmaLog10N: 0.55,
    maxReportableCycles: 2_000_000,
    certainty: 'high-cycle end: fair (published, one laboratory); low-cycle end: weak (practice only)',
    provenance: {
      kind: 'computed',
      from: 'high-cycle published; modulus and low-cycle anchor from memory',
      inputs: 'published and memory',
    },
  }),
};
