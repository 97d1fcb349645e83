/** What the curve of one filament is drawn from, and where its points stand. */
import type { Standing } from '../../core/design/acrossFilaments.ts';
import { severityAt, type DrawnCurve } from '../../core/life/curveOf.ts';
import type { Anchor } from '../../core/material/evidence.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import type { Frame } from '../charts/frame.ts';
import type { Papers } from './papers.ts';

export interface OnePlotProps {
  readonly row: WholeFilament;
  readonly drawn: DrawnCurve;
  /** Equivalent over peak strain, as it is drawn. */
  readonly severity: number;
  /** R that it is drawn for. */
  readonly ratio: number;
  readonly anchors: readonly Anchor[];
  readonly joint: { readonly standing: Standing; readonly strain: number } | undefined;
  readonly paper: Papers;
  readonly frame: Frame;
  readonly narrow: boolean;
}

/** Where an anchor stands as drawn: strains count by the power that the curve has. */
export function anchorPoint({ cycles, strain, ratio }: Anchor, row: WholeFilament, severity: number) {
  return strain === undefined ? undefined : { cycles, strain: (strain * severityAt(ratio, row.life.gamma)) / severity };
}

/** Where the joint stands as drawn, as far as anyone has counted. */
export function jointOn({ joint, severity }: Pick<OnePlotProps, 'joint' | 'severity'>) {
  if (!joint) return undefined;
  const { life } = joint.standing;
  const strain = life.equivalentStrain / severity;
  const isCounted = life.median > 0 && life.median <= life.maxReportableCycles;
  return { strain, cycles: isCounted ? life.median : undefined };
}
