import { computed, memory, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const ASA: Filament = {
  id: 'asa',
  name: 'ASA',
  fullName: 'ASA',
  printable: true,
  properties: {
    youngsModulus: memory([2000, 1600, 2300], 'MPa', 'along lines'),
    flexuralModulus: memory([1950, 1500, 2300], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1800, 1300, 2100], 'MPa', 'across layers'),
    yieldStress: memory([40, 30, 48], 'MPa', 'along lines'),
    yieldStrain: memory([0.027, 0.02, 0.035], '', 'along lines'),
    strainAtBreak: memory([0.07, 0.03, 0.2], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.012, 0.006, 0.022], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.4, 0.2, 0.6], '', 'across layers'),
    poissonsRatio: memory([0.37, 0.34, 0.41], '', 'any'),
    sustainedStrainLimit: memory([0.006, 0.004, 0.01], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0189, 0.014, 0.0245],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0113, 0.0084, 0.0147],
      '',
      'along lines',
    ),
  },
  life: strainLife({
    A: 0.0378,
    b: -0.14,
    B: 0.9706,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 0.3,
    sigmaLog10N: 0.6,
    maxReportableCycles: 1_000_000,
    certainty: 'weak at both ends',
    provenance: { kind: 'computed', from: 'from memory', inputs: 'memory' },
  }),
};
