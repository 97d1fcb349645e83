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
}

const isMoving = (drawn: JointDrawn) => (drawn.is === 'arc' ? drawn.isMoved : drawn.moved !== undefined);

function Drawing({ drawn, says }: { readonly drawn: JointDrawn; readonly says: string }) {
  return (
    <figure style={{ width: `max(${drawn.box.width}px, 38mm)` }}>
      <Scrolled className="of-figure" label={says}>
        <JointDrawing drawn={drawn} label={says} />
      </Scrolled>
      <figcaption>{says}</figcaption>
    </figure>
  );
}

/** The joint at true scale, and enlarged beside it. */
export function SummaryDrawings({ drawings: { main, enlarged }, assessment, unit }: Props) {
  const laid = LAID[assessment.joint.profile.lying];
  const says = [drawingSays(laid, scaleText(main.sheet.scale), isMoving(main)), restSays(assessment, unit)].filter(
    (text) => text !== '',
  );
  return (
    <section className="summary-drawings" aria-label={SUMMARY.drawings}>
      <Drawing drawn={main} says={says.join(' ')} />
      {enlarged && <Drawing drawn={enlarged} says={enlargedSays(scaleText(enlarged.sheet.scale))} />}
    </section>
  );
}
