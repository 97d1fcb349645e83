import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PP_MOULDED: Filament = {
  id: 'pp-moulded',
  name: 'moulded PP',
  fullName: 'PP, injection moulded (thin oriented hinge, to compare with)',
  printable: false,
  crystalline: true,
  properties: {
    youngsModulus: published('s15-bulk-cards', 'material card, bulk value', [1470, 1000, 1700], 'MPa', 'flow'),
    flexuralModulus: memory([1400, 1000, 1700], 'MPa', 'flow'),
    yieldStress: published('s15-bulk-cards', 'material card, bulk value', [32.8, 25, 36], 'MPa', 'flow'),
    yieldStrain: memory([0.09, 0.07, 0.13], '', 'flow'),
    strainAtBreak: memory([3, 0.5, 7], '', 'flow'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.44, 0.4, 0.45], '', 'any'),
    sustainedStrainLimit: memory([0.02, 0.01, 0.04], '', 'flow'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.063, 0.049, 0.091],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0378, 0.0294, 0.0546],
      '',
      'along lines',
    ),
    // The strain-life notes set this rule for printed and for moulded PP; the printed row holds the same figure.
    thickSectionStrainFactor: memory([0.6, 0.4, 1], '', 'flow'),
    glassTransition: memory([-10, -20, 0], '°C', 'any'),
    heatDeflection: memory([95, 75, 110], '°C', 'any'),
  },
  life: strainLife({
    A: 0.61969,
    b: -0.05,
    B: 1,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 1.5,
    sigmaLog10N: 0.5,
    maxReportableCycles: 1_000_000,
    certainty: 'fair as a statement of practice; not a material test',
    provenance: { kind: 'computed', from: 'published geometry and statement of life', inputs: 'published' },
  }),
};
