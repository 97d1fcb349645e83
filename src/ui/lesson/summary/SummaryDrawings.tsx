import type { ReactNode } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { LAID } from '../../drawing/figure.ts';
import { scaleText } from '../../drawing/sheet.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { drawingSays, enlargedSays, restSays, SUMMARY } from '../../text/summaryText.ts';
import { Scrolled } from '../../tests/pages/Scrolled.tsx';
import type { Drawings, JointDrawn } from './drawings.ts';
import { JointDrawing } from './JointDrawing.tsx';

interface Props {
  readonly drawings: Drawings;
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
  /** What else there is room for beside them. */
  readonly children?: ReactNode;
}

/** A drawing takes as much for its caption; between two there is so much [px]. */
const LEAST = 170;
const GAP = 22;

/** What the drawings take across, with the gap to what comes beside them [px]. */
export function widthOf({ main, enlarged }: Drawings): number {
  const each = [main, enlarged].map((drawn) => (drawn ? Math.max(drawn.box.width, LEAST) + GAP : 0));
  return each.reduce((sum, wide) => sum + wide, 0);
}

const isMoving = (drawn: JointDrawn) => (drawn.is === 'arc' ? drawn.isMoved : drawn.moved !== undefined);

function Drawing({ drawn, says }: { readonly drawn: JointDrawn; readonly says: string }) {
  return (
    <figure style={{ width: Math.max(drawn.box.width, LEAST) }}>
      <Scrolled className="of-figure" label={says}>
        <JointDrawing drawn={drawn} label={says} />
      </Scrolled>
      <figcaption>{says}</figcaption>
    </figure>
  );
}

/** The joint at true scale, and enlarged beside it. */
export function SummaryDrawings({ drawings: { main, enlarged }, assessment, unit, children }: Props) {
  const laid = LAID[assessment.joint.profile.lying];
  const says = [drawingSays(laid, scaleText(main.sheet.scale), isMoving(main)), restSays(assessment, unit)].filter(
    (text) => text !== '',
  );
  return (
    <section className="summary-drawings" aria-label={SUMMARY.drawings}>
      <Drawing drawn={main} says={says.join(' ')} />
      {enlarged && <Drawing drawn={enlarged} says={enlargedSays(scaleText(enlarged.sheet.scale))} />}
      {children}
    </section>
  );
}
