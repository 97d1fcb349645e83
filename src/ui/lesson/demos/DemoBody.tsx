import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Demo } from '../../../core/lesson/demos/demo.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { DEMO, openOrAnswered } from '../../text/lessonDemoText.ts';
import { SIGN_WORDS, type DemoWords, type Told } from '../../text/lessonDemoWords.ts';
import { workingSaid } from '../../text/lessonDemoWorking.ts';
import { DemoFigure } from './DemoFigure.tsx';
import { DemoSentence } from './DemoSentence.tsx';
import type { Step } from './demoState.ts';
import { DemoWorking } from './DemoWorking.tsx';
import { acrossName, plotPlan, upUnit } from './lawPlan.ts';
import { LawPlot } from './LawPlot.tsx';
import { StrainLegends } from './StrainLegends.tsx';
import { Sliders } from './Sliders.tsx';

interface Props {
  readonly demo: Demo;
  readonly words: DemoWords;
  readonly told: Told;
  readonly drawn: readonly (Assessment | undefined)[];
  readonly level: Step;
  readonly hidden: boolean;
  readonly isWorking: boolean;
  readonly filled: boolean;
  readonly trouble: string | undefined;
  readonly onMove: (key: string, value: number) => void;
}

/** Picture at the left, question and what answers it at the right. */
export function DemoBody(props: Props) {
  const { demo, words, told, drawn, level, hidden, isWorking, filled, onMove } = props;
  const { values, unit } = told;
  return (
    <div className="demo-body">
      <section className="demo-asked" aria-label={DEMO.question}>
        <h3 className="h">{DEMO.question}</h3>
        <p className="demo-question">{words.question}</p>
        {level > 1 && <Sliders {...{ demo, words, values, unit, onMove }} />}
        <Answer {...props} />
        {hidden && <p className="demo-note">{DEMO.hiddenNote}</p>}
      </section>
      <div className="demo-left">
        {level === 1 ? (
          <p className="demo-decide">{DEMO.decide}</p>
        ) : (
          <DemoSentence {...{ demo, words, values, unit, onMove }} />
        )}
        <DemoFigure {...{ demo, words, told, drawn, level, isWorking, filled }} />
        {level > 2 && <StrainLegends answers={told.answers} />}
        {level > 2 && (
          <dl className="demo-signs">
            {words.symbols.map((sign) => (
              <div key={sign}>
                <dt>{sign}</dt>
                <dd>{SIGN_WORDS[sign]}</dd>
              </div>
            ))}
          </dl>
        )}
      </div>
      <div className="demo-law">{level > 2 && <Law {...props} />}</div>
    </div>
  );
}

/** How the question stands, said as it changes. */
function Answer({ demo, words, told, level, isWorking, trouble }: Props) {
  const goal = demo.goal(told.answers, told.values);
  const isOpen = level === 1 || goal === undefined;
  return (
    <output className="demo-answer">
      {level > 1 && goal === undefined && <span>{trouble === undefined ? DEMO.coming : DEMO.trouble}</span>}
      {!isOpen && (
        <span className={goal.isMet ? 'pass' : 'caution'} aria-busy={isWorking}>
          <VerdictShape grade={goal.isMet ? 'pass' : 'caution'} />
          <span>{level > 2 ? words.answer(goal, told) : openOrAnswered(goal)}</span>
        </span>
      )}
      {!isOpen && level > 2 && <span className="demo-why">{words.why}</span>}
    </output>
  );
}

function Law({ demo, words, told }: Props) {
  const { answers, values, unit } = told;
  const plan = useMemo(() => plotPlan(demo, answers, values, unit), [demo, answers, values, unit]);
  const counts = upUnit(demo, answers);
  const { name, aid } = words.plot;
  const across = acrossName(demo, words.plot.across, unit);
  return (
    <>
      <DemoWorking lines={workingSaid(demo.id, told)} head={DEMO.working('B')} aid={DEMO.workingAid} />
      {plan && (
        <LawPlot number={2} own="B" {...{ plan, name, aid, across, counts }} tableHeads={['joint', across, name]} />
      )}
    </>
  );
}
