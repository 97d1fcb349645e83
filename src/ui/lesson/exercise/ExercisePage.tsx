import { useEffect, useMemo, useState } from 'react';
import '../../tests/pages/page.css';
import '../../tests/pages/pagePaper.css';
import { DEMO_IDS } from '../../../core/lesson/demos/ids.ts';
import { nearestSet } from '../../../core/lesson/exercises/exercise.ts';
import { exerciseOf, type AnyExercise } from '../../../core/lesson/exercises/exerciseOf.ts';
import { useChoices } from '../../../store/choices.ts';
import { Sentence } from '../../controls/Sentence.tsx';
import { Live } from '../../life/Live.tsx';
import { classText, EXERCISE, EXERCISE_TITLE, PAPER_NAMES, setsText } from '../../text/exerciseText.ts';
import { pageSaid } from '../../text/exerciseWords.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { LessonTitle } from '../LessonTitle.tsx';
import { lessonAddress, noteInAddress, type LessonAddress } from '../route.ts';
import { AnswerList } from './AnswerList.tsx';
import { AnswerSheet } from './AnswerSheets.tsx';
import { ClassSheets } from './ClassSheets.tsx';
import './exercise.css';
import './exercisePaper.css';
import { classSpec, ExerciseSentence, type Changing } from './ExerciseSentence.tsx';
import { exerciseAddress, exerciseIn, type ExerciseShown } from './exerciseState.ts';
import { QuestionSheet } from './QuestionSheet.tsx';
import { usePrinting, type Printed } from './usePrinting.ts';

/** What is shown, noted in the address as it changes; another address shows what it names. */
function useShown(address: LessonAddress): Changing {
  const unit = useChoices((state) => state.unit);
  const [kept, setKept] = useState({ address, shown: exerciseIn(address, unit) });
  const isOther = kept.address !== address;
  const shown = isOther ? exerciseIn(address, unit) : kept.shown;
  if (isOther) setKept({ address, shown });
  useEffect(() => noteInAddress(exerciseAddress(shown)), [shown]);
  return { shown, change: (to: Partial<ExerciseShown>) => setKept({ address, shown: { ...shown, ...to } }) };
}

function Actions({ shown, change, print }: Changing & { readonly print: (what: Printed) => void }) {
  const { id, set, pages } = shown;
  const last = nearestSet(set + pages - 1);
  return (
    <>
      <div className="exercise-actions">
        <button type="button" className="b" onClick={() => print('one')}>
          {EXERCISE.print}
        </button>
        <button type="button" className="b" onClick={() => change({ set: set === nearestSet(set + 1) ? 1 : set + 1 })}>
          {EXERCISE.next}
        </button>
        <a className="b" href={lessonAddress('demo', id)}>
          {EXERCISE.toDemo}
        </a>
      </div>
      <Sentence className="for-class">
        {EXERCISE.forClass} <Live spec={classSpec({ shown, change })} /> {EXERCISE.ofSets(setsText([set, last]))}
      </Sentence>
      <button type="button" className="b" onClick={() => print('class')}>
        {EXERCISE.printClass(classText(pages))}
      </button>
    </>
  );
}

/** The answers are not there until they are asked for: a projector, or a reader of the page by ear, must not tell them at once. */
function Answers({ exercise }: { readonly exercise: AnyExercise }) {
  const [isShown, setShown] = useState(false);
  return (
    <section className="exercise-answers" aria-label={EXERCISE.shownAnswers(exercise.set)}>
      <button type="button" className="b" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
        {isShown ? EXERCISE.hide : EXERCISE.show}
      </button>
      {isShown && (
        <>
          <h3>{EXERCISE.shownAnswers(exercise.set)}</h3>
          <AnswerList exercise={exercise} />
          <p className="note">{EXERCISE.rulerNote}</p>
        </>
      )}
    </section>
  );
}

/** Exercise pages to hand out: what is printed, the page as it will be, and its answers. */
export default function ExercisePage({ address }: { readonly address: LessonAddress }) {
  const { shown, change } = useShown(address);
  const { printed, print } = usePrinting();
  const { id, set, paper, answers } = shown;
  const exercise = useMemo(() => exerciseOf(id, set) as AnyExercise, [id, set]);
  const { name } = DEMO_WORDS[id];
  return (
    <>
      <main className="main lesson exercise" aria-label={`${EXERCISE.of}: ${name}`}>
        <section className="exercise-says" aria-label={EXERCISE.sentence}>
          <h2>{name}</h2>
          <ExerciseSentence {...{ shown, change }} />
          <Actions {...{ shown, change, print }} />
        </section>
        <div className={`exercise-paper${printed === 'class' ? ' not-printed' : ''}`}>
          <p className="cap">
            <b>{EXERCISE.preview}</b> {EXERCISE.sizeOf(PAPER_NAMES[paper])}
          </p>
          <QuestionSheet exercise={exercise} paper={paper} />
          {answers === 'second' && printed === 'one' && (
            <div className="on-paper">
              <AnswerSheet exercise={exercise} paper={paper} />
            </div>
          )}
        </div>
        <Answers key={`${id} ${set}`} exercise={exercise} />
        {printed === 'class' && (
          <div className="on-paper">
            <ClassSheets shown={shown} />
          </div>
        )}
      </main>
      <LessonTitle
        what={{ name: EXERCISE_TITLE.what, says: EXERCISE_TITLE.page(DEMO_IDS.indexOf(id) + 1, DEMO_IDS.length) }}
        setUp={{ name: EXERCISE_TITLE.setUp, says: pageSaid(exercise).setUp }}
        caution={EXERCISE_TITLE.caution}
      />
    </>
  );
}
