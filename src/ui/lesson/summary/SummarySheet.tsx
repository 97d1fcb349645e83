import { useMemo, type CSSProperties } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { printNotes } from '../../text/printNotesText.ts';
import { CAUTIONS } from '../../text/shellText.ts';
import { SUMMARY } from '../../text/summaryText.ts';
import '../../tests/pages/page.css';
import '../../tests/pages/pagePaper.css';
import { TrueRuler } from '../../tests/pages/TrueRuler.tsx';
import { drawingsOf, type Drawings } from './drawings.ts';
import '../../drawing/drawing.css';
import '../../drawing/solved/solved.css';
import './summary.css';
import { SummaryCurve } from './SummaryCurve.tsx';
import { SummaryDrawings, widthOf } from './SummaryDrawings.tsx';
import { SummaryHead } from './SummaryHead.tsx';
import { DrawTable, FiguresTable } from './SummaryTables.tsx';
import { SummaryVerdict } from './SummaryVerdict.tsx';
import { PAPER_WIDTH_MM } from './tightness.ts';
import { useTightness } from './useTightness.ts';

interface Props {
  readonly assessment: Assessment;
  readonly part: string;
  readonly unit: LengthUnit;
}

/** Width of the curve beside the two tables, and the most that it takes beside the drawings [px]. */
const CURVE = { least: 228, most: 300 } as const;

/** Width of the curve where there is room for it beside the drawings, else nothing [px]. */
function besideDrawings(drawings: Drawings | undefined): number | undefined {
  if (!drawings) return undefined;
  const left = (PAPER_WIDTH_MM * 96) / 25.4 - widthOf(drawings);
  return left < CURVE.least ? undefined : Math.min(CURVE.most, Math.floor(left));
}

/** One joint on one sheet: made anew for each, so that it begins as roomy as there is. */
export function SummarySheet({ assessment, part, unit }: Props) {
  const [page, { letters, main, enlarged, curve }] = useTightness();
  const drawings = useMemo(
    () => drawingsOf(assessment, unit, { wide: PAPER_WIDTH_MM, high: main }, enlarged),
    [assessment, unit, main, enlarged],
  );
  const beside = besideDrawings(drawings);
  const plot = curve > 0 && <SummaryCurve assessment={assessment} width={beside ?? CURVE.least} height={curve} />;
  const isThird = plot !== false && beside === undefined;
  const style = { '--letters': `${letters}px` } as CSSProperties;
  return (
    <article
      className="test-page summary-sheet"
      aria-label={SUMMARY.page(assessment.joint.name)}
      ref={page}
      style={style}
    >
      <SummaryHead {...{ assessment, part, unit }} />
      <SummaryVerdict assessment={assessment} unit={unit} />
      {drawings ? (
        <SummaryDrawings {...{ drawings, assessment, unit }}>{!isThird && plot}</SummaryDrawings>
      ) : (
        <p>{SUMMARY.notDrawn}</p>
      )}
      <div className={isThird ? 'summary-columns' : 'summary-columns two'}>
        <DrawTable assessment={assessment} unit={unit} />
        <FiguresTable assessment={assessment} unit={unit} />
        {isThird && plot}
      </div>
      <section className="summary-notes" aria-label={SUMMARY.notes}>
        <h3>
          {SUMMARY.notes} <small>{SUMMARY.notesAid}</small>
        </h3>
        <ol>
          {printNotes(assessment, unit).map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ol>
      </section>
      <section className="summary-cautions" aria-label={SUMMARY.cautions}>
        <p>
          <b>{SUMMARY.cautions}.</b> {CAUTIONS.join(' ')}
        </p>
      </section>
      <footer>
        <TrueRuler then={SUMMARY.after} />
      </footer>
    </article>
  );
}
