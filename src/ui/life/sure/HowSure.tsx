import { useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer } from '../../../core/design/doubtAnswer.ts';
import { useSpread } from '../../../store/spread.ts';
import { SaidText } from '../../joints/SaidText.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { problemText } from '../../text/problemText.ts';
import { checkedText, HOW_SURE, HOW_SURE_AID, sureSentence } from '../../text/sureText.ts';
import { Bounds } from './Bounds.tsx';
import { DoubtProgress } from './DoubtProgress.tsx';
import { HowSampled } from './HowSampled.tsx';
import { Shares } from './Shares.tsx';
import { SpreadSentence } from './SpreadSentence.tsx';
import './sure.css';
import { useDoubt } from './useDoubt.ts';

interface HowSureProps {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
}

/** How sure the answer for a joint is: the chance, what makes the doubt, and between what everything lies. */
export function HowSure({ assessment: a, unit }: HowSureProps) {
  const { spread, samples, how } = useSpread();
  const [seed, setSeed] = useState(1);
  const doubt = useDoubt(a, { spread, samples, how, seed });
  const { answer } = doubt;
  return (
    <section className="sure" aria-label={HOW_SURE}>
      <h3 className="h">
        {HOW_SURE}
        <span className="aside">{HOW_SURE_AID}</span>
      </h3>
      <div className="sure-answer" aria-busy={doubt.isWorking}>
        {answer?.ok && <Answered a={a} answer={answer.value} />}
        {answer && !answer.ok && <p className="refusal">{problemText(answer.problems[0], unit)}</p>}
      </div>
      <SpreadSentence assessment={a} unit={unit} />
      <HowSampled seed={seed} replicates={answer?.ok ? answer.value.replicates : undefined} onDraw={setSeed} />
      <DoubtProgress doubt={doubt} />
    </section>
  );
}

function Answered({ a, answer }: { readonly a: Assessment; readonly answer: DoubtAnswer }) {
  return (
    <>
      <p className="sure-says" aria-live="polite">
        <SaidText said={sureSentence(a, answer)} />
      </p>
      <div className="sure-tables">
        <Shares a={a} answer={answer} />
        <div>
          <Bounds a={a} answer={answer} />
          <p className="small">{checkedText(answer.checked)}</p>
        </div>
      </div>
    </>
  );
}
