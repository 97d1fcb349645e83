/** The points that the curve of a filament stands on. */
import { strainAtLife } from '../../core/life/strainLife.ts';
import { soundness } from '../../core/material/choose.ts';
import { EVIDENCE, type Anchor } from '../../core/material/evidence.ts';
import { evidenceFrom } from '../../core/material/ownEvidence.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { anchorWords } from '../text/ownText.ts';

/** Where a curve of the user's own is read: few cycles and many. */
export type ReadAt = readonly [few: number, many: number];

/** Until somebody reads it elsewhere. */
export const READ_AT: ReadAt = [1000, 1_000_000];

/** What the table says that the curve was set by. */
export function evidenceOf(row: WholeFilament): readonly Anchor[] {
  const from = evidenceFrom(row);
  return from === undefined ? [] : EVIDENCE[from];
}

/** The same; or of a curve whose course the user has changed the two points that it was set through. */
export function anchorsOf(row: WholeFilament, at: ReadAt): readonly Anchor[] {
  if (evidenceFrom(row) !== undefined) return evidenceOf(row);
  const { provenance } = row.life;
  const kind = soundness(provenance);
  return at.map((cycles): Anchor => ({
    cycles,
    strain: strainAtLife(cycles, row.life),
    ratio: 0,
    says: 'at',
    seen: kind !== 'memory',
    kind,
    ...anchorWords(provenance),
    sources: [],
  }));
}
