import { useEffect, useMemo, useRef, useState } from 'react';
import '../../charts/solved/solved.css';
import '../../drawing/solved/solved.css';
import type { Joint } from '../../../core/design/joint.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Demo, Values } from '../../../core/lesson/demos/demo.ts';
import { DEMOS } from '../../../core/lesson/demos/demos.ts';
import { DEMO_IDS } from '../../../core/lesson/demos/ids.ts';
import { useChoices } from '../../../store/choices.ts';
import { DEMO, DEMO_CAUTION, DEMO_TITLE, demoOf } from '../../text/lessonDemoText.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { LessonTitle } from '../LessonTitle.tsx';
import { lessonAddress, type LessonAddress } from '../route.ts';
import { DemoBody } from './DemoBody.tsx';
import { DemoPath } from './DemoPath.tsx';
import { beside, levelOf, STEPS, type Step } from './demoState.ts';
import './demos.css';
import { moved, stepped } from './handleSpecs.ts';
import { KeyList } from './KeyList.tsx';
import { StepBar } from './StepBar.tsx';
import { TakeFurther } from './TakeFurther.tsx';
import { useDemoAnswers } from './useDemoAnswers.ts';
import { useDemoKeys } from './useDemoKeys.ts';
import { useFilled } from './useFilled.ts';
import { useShown } from './useShown.ts';

/** The joints of a demonstration, the same as long as nothing that makes them has changed. */
function useJoints(demo: Demo, values: Values): readonly Joint[] {
  const now = useMemo(() => demo.joints(values), [demo, values]);
  const [kept, setKept] = useState(now);
  if (now === kept || JSON.stringify(now) === JSON.stringify(kept)) return kept;
  setKept(now);
  return now;
}

/** The same list as before while the same things are in it. */
function useSame<T>(now: readonly T[]): readonly T[] {
  const [kept, setKept] = useState(now);
  const isSame = now.length === kept.length && now.every((one, i) => one === kept[i]);
  if (!isSame) setKept(now);
  return isSame ? kept : now;
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

const goTo = (id: string, step: Step) => {
  location.hash = lessonAddress('demo', id, { step: String(step) });
};

/** One demonstration: a question to a class, a live picture that answers it, and the law behind it. */
export default function DemoPage({ address }: { readonly address: LessonAddress }) {
  const [shown, change] = useShown(address);
  const [filled, setFilled] = useFilled();
  const unit = useChoices((state) => state.unit);
  const { id, values, step, hidden } = shown;
  const demo = DEMOS[id];
  const words = DEMO_WORDS[id];
  const number = DEMO_IDS.indexOf(id) + 1;
  const level = levelOf(shown);
  const joints = useJoints(demo, values);
  const { answers, drawn, isWorking, trouble } = useDemoAnswers(joints);
  const heading = useFocusOnChange(id);
  const known = useSame(answers.flatMap((answer): readonly Assessment[] => (answer.ok ? [answer.value] : [])));
  const told = useMemo(() => ({ answers: known, values, unit }), [known, values, unit]);
  const onMove = (key: string, value: number) => change({ values: moved(values, key, value) });
  const onStep = (to: Step) => change({ step: to, hidden: false });
  const onBeside = (by: 1 | -1, to: Step = 1) => {
    const other = beside(id, by);
    if (other !== undefined) goTo(other, to);
  };
  useDemoKeys({
    onBeside: (by) => onBeside(by),
    onPage: (by) => {
      const to = STEPS.find((one) => one === step + by);
      if (to !== undefined) onStep(to);
      else onBeside(by, by > 0 ? 1 : 4);
    },
    onStep: (to) => onStep(STEPS.find((one) => one === to) ?? step),
    onMove: (by) => {
      const [handle] = demo.handles;
      if (level > 1) onMove(handle.key, stepped(handle, values[handle.key] ?? handle.start, by > 0));
    },
    onFill: () => setFilled(!filled),
    onHide: () => change({ hidden: !hidden }),
    onLeave: () => setFilled(false),
  });
  const [before, after] = [beside(id, -1), beside(id, 1)];
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
        <div className="demo-foot">
          <TakeFurther shown={shown} words={words} answers={known} />
          <div className="demo-turn">
            <button type="button" className="b" aria-keyshortcuts="F" onClick={() => setFilled(!filled)}>
              {filled ? DEMO.unfill : DEMO.fill}
            </button>
            {before !== undefined && (
              <a className="b" href={lessonAddress('demo', before)}>
                {DEMO.previous}: {DEMO_WORDS[before].name}
              </a>
            )}
            {after !== undefined && (
              <a className="b" href={lessonAddress('demo', after)}>
                {DEMO.next}: {DEMO_WORDS[after].name}
              </a>
            )}
          </div>
          <KeyList />
        </div>
      </main>
      <LessonTitle
        what={{ name: DEMO_TITLE.what, says: demoOf(number, DEMO_IDS.length) }}
        setUp={{ name: DEMO_TITLE.setUp, says: words.setUp }}
        caution={DEMO_CAUTION}
      />
    </>
  );
}
