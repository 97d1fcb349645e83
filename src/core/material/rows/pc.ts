import { computed, memory, published, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const PC: Filament = {
  id: 'pc',
  name: 'PC',
  fullName: 'PC (polycarbonate), printed',
  printable: true,
  crystalline: false,
  properties: {
    youngsModulus: memory([2100, 1700, 2400], 'MPa', 'along lines'),
    flexuralModulus: memory([2050, 1600, 2400], 'MPa', 'along lines'),
    youngsModulusAcrossLayers: memory([1850, 1400, 2200], 'MPa', 'across layers'),
    yieldStress: memory([58, 45, 65], 'MPa', 'along lines'),
    yieldStrain: memory([0.055, 0.04, 0.07], '', 'along lines'),
    strainAtBreak: memory([0.08, 0.04, 0.5], '', 'along lines'),
    strainAtBreakAcrossLayers: memory([0.018, 0.008, 0.035], '', 'across layers'),
    acrossLayersStrainFactor: memory([0.4, 0.2, 0.6], '', 'across layers'),
    poissonsRatio: published('s15-bulk-cards', 'material card, bulk value', [0.37, 0.36, 0.4], '', 'any'),
    sustainedStrainLimit: memory([0.008, 0.005, 0.012], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0385, 0.028, 0.049],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.0231, 0.0168, 0.0294],
      '',
      'along lines',
    ),
    glassTransition: memory([147, 110, 150], '°C', 'any'),
    heatDeflection: memory([135, 100, 142], '°C', 'any'),
  },
  life: strainLife({
    A: 0.20657,
    b: -0.2789,
    B: 0.4603,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 0.5,
    sigmaLog10N: 0.6,
    maxReportableCycles: 1_000_000,
    certainty: 'high-cycle: fair shape (published, moulded); low-cycle: weak',
    provenance: {
      kind: 'computed',
      from: 'high-cycle published (moulded); knock-down and anchor from memory',
      inputs: 'published and memory',
    },
  }),
};
