import { useEffect, useMemo, useRef } from 'react';
import '../../charts/solved/solved.css';
import '../../drawing/solved/solved.css';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { Demo, Values } from '../../../core/lesson/demos/demo.ts';
import { DEMOS } from '../../../core/lesson/demos/demos.ts';
import { DEMO_IDS } from '../../../core/lesson/demos/ids.ts';
import { useChoices } from '../../../store/choices.ts';
import { DEMO_CAUTION, DEMO_TITLE, demoOf } from '../../text/lessonDemoText.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { LessonTitle } from '../LessonTitle.tsx';
import type { LessonAddress } from '../route.ts';
import { DemoBody } from './DemoBody.tsx';
import { DemoFoot } from './DemoFoot.tsx';
import { DemoPath } from './DemoPath.tsx';
import { levelOf, type Step } from './demoState.ts';
import './demos.css';
import { moved } from './handleSpecs.ts';
import { keysOf } from './keysOf.ts';
import { StepBar } from './StepBar.tsx';
import { useDemoAnswers, type DemoAnswers } from './useDemoAnswers.ts';
import { useDemoKeys } from './useDemoKeys.ts';
import { useFilled } from './useFilled.ts';
import { holdsSame, useSame } from './useSame.ts';
import { useShown } from './useShown.ts';

const isAlike = (before: readonly Joint[], now: readonly Joint[]) => JSON.stringify(before) === JSON.stringify(now);

/** What is known of the joints of a demonstration; asked anew only when something that makes them has changed. */
function useAnswered(
  demo: Demo,
  values: Values,
): Omit<DemoAnswers, 'answers'> & { readonly known: readonly Assessment[] } {
  const now = useMemo(() => demo.joints(values), [demo, values]);
  const { answers, ...rest } = useDemoAnswers(useSame<readonly Joint[]>(now, isAlike));
  const told = answers.flatMap((answer): readonly Assessment[] => (answer.ok ? [answer.value] : []));
  return { ...rest, known: useSame(told, holdsSame) };
}

/** The heading is reached when another demonstration comes, so that it is read out and what follows goes on from there. */
function useFocusOnChange(id: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  const first = useRef(id);
  useEffect(() => {
    if (first.current === id) return;
    first.current = id;
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: 'nearest' });
  }, [id]);
  return heading;
}

/** One demonstration: a question to a class, a live picture that answers it, and the law behind it. */
export default function DemoPage({ address }: { readonly address: LessonAddress }) {
  const [shown, change] = useShown(address);
  const [filled, setFilled] = useFilled();
  const unit = useChoices((state) => state.unit);
  const { id, values, step, hidden } = shown;
  const [demo, words, level] = [DEMOS[id], DEMO_WORDS[id], levelOf(shown)];
  const { known, drawn, isWorking, trouble } = useAnswered(demo, values);
  const told = useMemo(() => ({ answers: known, values, unit }), [known, values, unit]);
  const heading = useFocusOnChange(id);
  useDemoKeys(keysOf({ shown, change, filled, setFilled }));
  const onMove = (key: string, value: number) => change({ values: moved(values, key, value) });
  const onStep = (to: Step) => change({ step: to, hidden: false });
  return (
    <>
      <main className="main lesson demo">
        <DemoPath current={id} />
        <div className="demo-head">
          <h2 tabIndex={-1} ref={heading}>
            {level === 1 ? words.ask : words.claim}
          </h2>
          <StepBar step={step} onStep={onStep} />
        </div>
        <DemoBody key={id} {...{ demo, words, told, drawn, level, hidden, isWorking, filled, trouble, onMove }} />
        <DemoFoot {...{ shown, words, filled }} answers={known} onFill={() => setFilled(!filled)} />
      </main>
      <LessonTitle
        what={{ name: DEMO_TITLE.what, says: demoOf(DEMO_IDS.indexOf(id) + 1, DEMO_IDS.length) }}
        setUp={{ name: DEMO_TITLE.setUp, says: words.setUp }}
        caution={DEMO_CAUTION}
      />
    </>
  );
}
