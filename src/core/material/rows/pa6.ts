import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PA6: Filament = {
  id: 'pa6',
  name: 'PA6',
  fullName: 'PA6 (nylon 6, unfilled, conditioned)',
  printable: true,
  properties: {
    youngsModulus: memory([1200, 800, 1800], 'MPa', 'along lines'),
    flexuralModulus: memory([1100, 700, 1700], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1000, 600, 1600], 'MPa', 'across layers'),
    yieldStress: memory([40, 28, 50], 'MPa', 'along lines'),
    yieldStrain: memory([0.08, 0.05, 0.2], '', 'along lines'),
    strainAtBreak: memory([0.8, 0.15, 2], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.05, 0.015, 0.15], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.5, 0.3, 0.7], '', 'across layers'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.39, 0.37, 0.42], '', 'any'),
    sustainedStrainLimit: memory([0.015, 0.008, 0.025], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.056, 0.035, 0.14],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0336, 0.021, 0.084],
      '',
      'along lines',
    ),
  },
  life: strainLife({
    A: 0.0388,
    b: -0.08,
    B: 6.9099,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 1,
    sigmaLog10N: 0.65,
    maxReportableCycles: 1_000_000,
    certainty: 'high-cycle: weak (moulded PA66 stands in); low-cycle: weak',
    provenance: {
      kind: 'computed',
      from: 'judgement from published moulded PA66; anchor from memory',
      inputs: 'published and memory',
    },
  }),
};
