/** Where the figures of a checked part come from. */
import type { Judged } from '../../core/inspect/judged.ts';
import { findFilament } from '../../core/material/shelf.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import type { About } from './said.ts';

interface Row {
  readonly about: About;
  readonly kind: ProvenanceKind;
  readonly name: string;
  readonly says: string;
}

/** One row for each kind of figure; that of the filament by the weakest figure behind it. */
export function sourcesOfPart(filament: string, judged: readonly Judged[]): readonly Row[] {
  const name = findFilament(filament)?.name ?? filament;
  const assessed = judged.flatMap((one) => (one.assessed.ok ? [one.assessed.value] : []))[0];
  return [
    {
      about: 'thickness',
      kind: 'computed',
      name: 'Lines and layers across',
      says: 'least thickness ÷ line width, or ÷ layer height; whole within 0.05 of one. That rule is ours: a test print beats it',
    },
    {
      about: 'strain',
      kind: assessed?.provenance.strain ?? 'computed',
      name: 'Bending length and strain',
      says: 'each slice counts by (least thickness ÷ its own)³; strain = thickness × angle ÷ (2 × bending length), raised at sharp corners',
    },
    {
      about: 'life',
      kind: assessed?.provenance.life ?? 'memory',
      name: `Life and limits of ${name}`,
      says: 'the row of the filament under Filaments, where each figure says where it comes from; nominal, test yours',
    },
    {
      about: 'printer',
      kind: 'memory',
      name: 'What a nozzle lays',
      says: '0.9 to 1.6 times its bore, common practice, no source',
    },
  ];
}
