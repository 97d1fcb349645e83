import { computed, memory, published, publishedRange, strainLife } from '../row.ts';
import type { Filament } from '../types.ts';

export const TPU95A: Filament = {
  id: 'tpu95a',
  name: 'TPU 95A',
  fullName: 'TPU, about Shore 95A',
  printable: true,
  properties: {
    youngsModulus: published('s9-tpu-tension', 'abstract', [145.8, 30, 250], 'MPa', 'along lines'),
    designModulus: memory([70, 30, 150], 'MPa', 'along lines'),
    yieldStress: memory([8, 4, 12], 'MPa', 'along lines'),
    yieldStrain: memory([0.2, 0.1, 0.4], '', 'along lines'),
    strainAtBreak: publishedRange('s11-tpu-table', 'property table, aggregated', [5.5, 4, 7], '', 'along lines'),
    strainAtBreakAcrossLayers: publishedRange(
      's11-tpu-table',
      'property table, aggregated',
      [2.7, 1.5, 4],
      '',
      'across layers',
    ),
    acrossLayersStrainFactor: memory([0.6, 0.4, 0.8], '', 'across layers'),
    poissonsRatio: memory([0.47, 0.45, 0.49], '', 'any'),
    sustainedStrainLimit: memory([0.05, 0.02, 0.1], '', 'along lines'),
    permissibleStrainSingle: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.14, 0.07, 0.28],
      '',
      'along lines',
    ),
    permissibleStrainRepeated: computed(
      'rule of S5 applied to the yield strain of this row',
      'published and memory',
      [0.084, 0.042, 0.168],
      '',
      'along lines',
    ),
  },
  life: strainLife({
    A: 0.74687,
    b: -0.06,
    B: 1,
    c: -0.5,
    gamma: 0.5,
    firstFlexBreakStrain: 3,
    sigmaLog10N: 0.7,
    maxReportableCycles: 2_000_000,
    certainty: 'weak but harmless: life is not the limit',
    provenance: { kind: 'computed', from: 'one published life; strain assumed', inputs: 'published and memory' },
  }),
};
