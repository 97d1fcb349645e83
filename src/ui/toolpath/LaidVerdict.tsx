import { VerdictShape } from '../app/VerdictShape.tsx';
import { SaidText } from '../joints/SaidText.tsx';
import { placeSaid } from '../text/toolpathFindingText.ts';
import { laidHeading, tallyText } from '../text/toolpathText.ts';
import { useShown, useShownPlace } from './shown.ts';

/** How the section that is looked at is laid, in a sentence; and how many of all are as they should be. */
export function LaidVerdict() {
  const { judged, unit } = useShown();
  const at = useShownPlace();
  if (!at) return null;
  const { grade } = at.judged;
  return (
    <section className={`verdict ${grade}`} aria-label="Verdict" aria-live="polite">
      <h2>
        <VerdictShape grade={grade} />
        {laidHeading(at.judged)}
      </h2>
      <p>
        <SaidText said={placeSaid(at.judged, unit)} />
      </p>
      {judged.length > 1 && <p className="also">{tallyText(judged)}</p>}
    </section>
  );
}
