import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PP: Filament = {
  id: 'pp',
  name: 'PP',
  fullName: 'PP (polypropylene), printed',
  printable: true,
  properties: {
    youngsModulus: memory([900, 500, 1400], 'MPa', 'along lines'),
    flexuralModulus: memory([900, 500, 1500], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([800, 400, 1300], 'MPa', 'across layers'),
    yieldStress: memory([22, 15, 30], 'MPa', 'along lines'),
    yieldStrain: memory([0.1, 0.06, 0.18], '', 'along lines'),
    strainAtBreak: memory([3, 0.3, 6], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.1, 0.03, 0.4], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.5, 0.3, 0.7], '', 'across layers'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.44, 0.4, 0.45], '', 'any'),
    sustainedStrainLimit: memory([0.015, 0.008, 0.03], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.07, 0.042, 0.126],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.042, 0.0252, 0.0756],
      '',
      'along lines',
    ),
    thickSectionStrainFactor: memory([0.6, 0.4, 1], '', 'along lines'),
  },
  life: strainLife({
    A: 0.42987,
    b: -0.06,
    B: 1,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 1,
    sigmaLog10N: 0.7,
    maxReportableCycles: 1_000_000,
    certainty: 'weak: one published life, assumed strain; curve is very flat so life is hypersensitive to strain',
    provenance: { kind: 'computed', from: 'one published life; strain assumed', inputs: 'published and memory' },
  }),
};
