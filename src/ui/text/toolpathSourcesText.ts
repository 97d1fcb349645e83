/** Where the figures of a checked toolpath come from. */
import { findFilament } from '../../core/material/shelf.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { About } from './said.ts';

interface Row {
  readonly about?: About;
  readonly kind: ProvenanceKind;
  readonly name: string;
  readonly says: string;
}

/** One row for each kind of figure; those of a joint only where one is held against it. */
export function sourcesOfToolpath(judged: JudgedPlace | undefined): readonly Row[] {
  const asLaid = judged?.asLaid?.after.ok ? judged.asLaid.after.value : undefined;
  const name = asLaid ? (findFilament(asLaid.joint.profile.filament)?.name ?? asLaid.joint.profile.filament) : '';
  const ofJoint: readonly Row[] = asLaid
    ? [
        {
          about: 'strain',
          kind: asLaid.provenance.strain,
          name: 'Strain, effort',
          says: 'your joint, as thick as it is laid, taken as one solid piece',
        },
        {
          about: 'life',
          kind: asLaid.provenance.life,
          name: `Life of ${name}`,
          says: 'the row of the filament under Filaments, where each figure says where it comes from; nominal, test yours',
        },
      ]
    : [];
  return [
    {
      about: 'thickness',
      kind: 'computed',
      name: 'Width of a line',
      says: 'filament laid ÷ length ÷ layer height + 0.21 × layer height, a bead with round sides; an ellipse where it is narrower than high',
    },
    {
      kind: 'computed',
      name: 'Lines across, gaps, starts',
      says: 'cut every 0.25 mm along the section, in every layer',
    },
    ...ofJoint,
    {
      about: 'printer',
      kind: 'memory',
      name: 'Start points break first; widths within a tenth',
      says: 'common practice, no source',
    },
  ];
}
