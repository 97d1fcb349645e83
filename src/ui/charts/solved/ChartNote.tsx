import type { ProvenanceKind } from '../../../core/material/types.ts';
import { Mark } from '../../app/Mark.tsx';
import type { ReactNode } from 'react';

interface ChartNoteProps {
  /** What the figures are, and where they come from: the weakest of what goes in. */
  readonly says: string;
  readonly kind: ProvenanceKind;
  readonly children?: ReactNode;
}

/** One or two lines under a figure; they keep their room, so that nothing moves when they change. */
export function ChartNote({ says, kind, children }: ChartNoteProps) {
  return (
    <p className="chart-note">
      {says}
      <Mark kind={kind} /> {children}
    </p>
  );
}
