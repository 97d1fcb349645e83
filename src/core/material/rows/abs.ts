import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const ABS: Filament = {
  id: 'abs',
  name: 'ABS',
  fullName: 'ABS',
  printable: true,
  properties: {
    youngsModulus: memory([2050, 1600, 2400], 'MPa', 'along lines'),
    flexuralModulus: memory([2000, 1500, 2400], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1800, 1300, 2200], 'MPa', 'across layers'),
    yieldStress: memory([34, 26, 42], 'MPa', 'along lines'),
    yieldStrain: memory([0.022, 0.017, 0.03], '', 'along lines'),
    strainAtBreak: memory([0.06, 0.02, 0.12], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.01, 0.005, 0.02], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.35, 0.2, 0.55], '', 'across layers'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.37, 0.34, 0.41], '', 'any'),
    sustainedStrainLimit: memory([0.006, 0.004, 0.01], '', 'along lines'),
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
  },
  life: strainLife({
    A: 0.0336,
    b: -0.14,
    B: 0.8004,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 0.25,
    sigmaLog10N: 0.6,
    maxReportableCycles: 1_000_000,
    certainty: 'weak at both ends',
    provenance: { kind: 'computed', from: 'from memory', inputs: 'memory' },
  }),
};
