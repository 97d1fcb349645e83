import type { Assessment } from '../../../core/design/assessment.ts';
import { DEMO } from '../../text/lessonDemoText.ts';
import { DEMO_WORDS, type DemoWords } from '../../text/lessonDemoWords.ts';
import { lessonAddress } from '../route.ts';
import { beside, type Shown } from './demoState.ts';
import { KeyList } from './KeyList.tsx';
import { TakeFurther } from './TakeFurther.tsx';

interface Props {
  readonly shown: Shown;
  readonly words: DemoWords;
  readonly answers: readonly Assessment[];
  readonly filled: boolean;
  readonly onFill: () => void;
}

/** Where a demonstration leads: its joints, its exercise, the others beside it; and the keys. */
export function DemoFoot({ shown, words, answers, filled, onFill }: Props) {
  return (
    <div className="demo-foot">
      <TakeFurther shown={shown} words={words} answers={answers} />
      <div className="demo-turn">
        <button type="button" className="b" aria-keyshortcuts="F" onClick={onFill}>
          {filled ? DEMO.unfill : DEMO.fill}
        </button>
        <Beside id={shown.id} by={-1} />
        <Beside id={shown.id} by={1} />
      </div>
      <KeyList />
    </div>
  );
}

function Beside({ id, by }: { readonly id: Shown['id']; readonly by: 1 | -1 }) {
  const other = beside(id, by);
  if (other === undefined) return null;
  return (
    <a className="b" href={lessonAddress('demo', other)}>
      {by > 0 ? DEMO.next : DEMO.previous}: {DEMO_WORDS[other].name}
    </a>
  );
}
