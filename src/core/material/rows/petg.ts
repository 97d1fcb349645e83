import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PETG: Filament = {
  id: 'petg',
  name: 'PETG',
  fullName: 'PETG (glycol-modified PET)',
  printable: true,
  properties: {
    youngsModulus: memory([1900, 1500, 2200], 'MPa', 'along lines'),
    flexuralModulus: memory([1850, 1450, 2150], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1750, 1300, 2100], 'MPa', 'across layers'),
    yieldStress: memory([42, 33, 50], 'MPa', 'along lines'),
    yieldStrain: memory([0.035, 0.028, 0.05], '', 'along lines'),
    strainAtBreak: published(
      's14-print-tension',
      'README, results table (n = 3)',
      [0.77, 0.05, 1.2],
      '',
      'along lines',
    ),
    strainAtBreakAcrossLayers: memory([0.02, 0.01, 0.04], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.45, 0.25, 0.65], '', 'across layers'),
    poissonsRatio: memory([0.38, 0.36, 0.42], '', 'any'),
    sustainedStrainLimit: memory([0.008, 0.005, 0.012], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0245, 0.0196, 0.035],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0147, 0.0118, 0.021],
      '',
      'along lines',
    ),
  },
  life: strainLife({
    A: 0.03969,
    b: -0.13,
    B: 2.5679,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 0.6,
    sigmaLog10N: 0.6,
    maxReportableCycles: 1_000_000,
    certainty: 'weak at both ends',
    provenance: { kind: 'computed', from: 'from memory', inputs: 'memory' },
  }),
};
