import { computed, memory, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PA12: Filament = {
  id: 'pa12',
  name: 'PA12',
  fullName: 'PA12 (nylon 12, unfilled)',
  printable: true,
  crystalline: true,
  properties: {
    youngsModulus: memory([1300, 1000, 1700], 'MPa', 'along lines'),
    flexuralModulus: memory([1250, 950, 1600], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1150, 850, 1500], 'MPa', 'across layers'),
    yieldStress: memory([36, 28, 45], 'MPa', 'along lines'),
    yieldStrain: memory([0.06, 0.04, 0.1], '', 'along lines'),
    strainAtBreak: memory([0.5, 0.1, 2], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.05, 0.015, 0.15], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.5, 0.3, 0.7], '', 'across layers'),
    poissonsRatio: memory([0.4, 0.38, 0.43], '', 'any'),
    sustainedStrainLimit: memory([0.012, 0.006, 0.02], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.042, 0.028, 0.07],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0252, 0.0168, 0.042],
      '',
      'along lines',
    ),
    glassTransition: memory([45, 38, 55], '°C', 'any'),
    heatDeflection: memory([110, 80, 150], '°C', 'any'),
  },
  life: strainLife({
    A: 0.03831,
    b: -0.08,
    B: 5.6239,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 1,
    sigmaLog10N: 0.65,
    maxReportableCycles: 1_000_000,
    certainty: 'high-cycle: weak (sintered stands in); low-cycle: weak',
    provenance: {
      kind: 'computed',
      from: 'judgement from published sintered PA12; anchor from memory',
      inputs: 'published and memory',
    },
  }),
};
