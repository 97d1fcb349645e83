import { lazy, useEffect } from 'react';
import type { Piece } from '../../core/coupons/piece.ts';
import { useChoices } from '../../store/choices.ts';
import { Late } from '../app/Late.tsx';
import '../charts/charts.css';
import '../check/check.css';
import '../drawing/drawing.css';
import '../joints/answer.css';
import '../joints/everyKind.ts';
import '../joints/foot.css';
import type { LengthUnit } from '../text/numbers.ts';
import { TESTS } from '../text/testsText.ts';
import { useFilamentAsked } from './asked.ts';
import { LearnedCurve } from './curve/LearnedCurve.tsx';
import { OverBar } from './curve/OverBar.tsx';
import { NextList } from './next/NextList.tsx';
import { usePageAsked } from './pages/route.ts';
import { usePieces, type Made } from './pieces.ts';
import { Plate } from './Plate.tsx';
import { SpoolActions } from './SpoolActions.tsx';
import { TallySection } from './tally/TallySection.tsx';
import './counter.css';
import './curve.css';
import './next.css';
import './tally.css';
import './tests.css';
import { TestsTitle } from './TestsTitle.tsx';
import { TestsVerdict } from './TestsVerdict.tsx';
import { useTrial, type Trial } from './trial.ts';
import { TrialSentence } from './TrialSentence.tsx';
import { useBeforeAfter, type BeforeAfter } from './useAnswer.ts';

export { takeCsv } from './takeCsv.ts';

// Asked for by whoever prints: nobody else waits for it.
const TestPage = lazy(() => import('./pages/TestPage.tsx').then((module) => ({ default: module.TestPage })));

interface Props {
  readonly trial: Trial;
  readonly answers: BeforeAfter;
  readonly made: Made;
  readonly unit: LengthUnit;
}

function Page({ piece, trial, made, unit }: Omit<Props, 'answers'> & { readonly piece: Piece }) {
  const { spool, values, prior } = trial;
  return (
    <Late>
      <TestPage
        {...{ piece, unit }}
        asked={made.asked}
        notes={made.chosen?.id === piece.id ? made.notes : []}
        filament={prior.fullName}
        printer={spool?.own.tests.printer ?? values.printer}
        spool={spool?.own.tests.spool ?? values.spool}
        onBack={() => {
          location.hash = 'tests';
        }}
      />
    </Late>
  );
}

function Sheet({ trial, answers, made, unit }: Props) {
  const { doing } = trial.values;
  const isBent = doing === 'flexes' || doing === 'mark' || doing === 'hold';
  return (
    <main className="main checks tests">
      <TrialSentence {...{ trial, made, unit }} />
      <div className="answer">
        <TestsVerdict {...{ trial, answers }} />
        <LearnedCurve {...{ trial, answers }} />
        <NextList {...{ trial, made, unit }} answer={answers.after ?? answers.before} />
      </div>
      <div className="counts">
        <TallySection {...{ trial, unit }} figure={isBent && <OverBar {...{ trial, unit }} />} />
        <SpoolActions trial={trial} />
      </div>
      <Plate {...{ trial, made, unit }} />
    </main>
  );
}

/** The place where test prints are made and counted, and where what they tell corrects the numbers. */
export default function TestsPlace() {
  useFilamentAsked();
  const trial = useTrial();
  const unit = useChoices((state) => state.unit);
  const answers = useBeforeAfter(trial.joint, trial.prior, trial.row);
  const answer = answers.after ?? answers.before;
  const made = usePieces(trial, answer);
  const page = usePageAsked();
  useEffect(() => {
    document.title = `${TESTS.title}, ${trial.row.name}: Bendbook`;
  }, [trial.row.name]);
  const piece = [...made.pieces, ...made.unfit].find(({ id }) => id === page);
  if (piece) return <Page {...{ piece, trial, made, unit }} />;
  return (
    <>
      <Sheet {...{ trial, answers, made, unit }} />
      <TestsTitle trial={trial} answer={answer} />
    </>
  );
}
