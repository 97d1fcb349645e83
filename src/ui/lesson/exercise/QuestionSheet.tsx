import type { AnyExercise } from '../../../core/lesson/exercises/exerciseOf.ts';
import type { Question } from '../../../core/lesson/exercises/question.ts';
import { unitOf } from '../../text/exerciseFigures.ts';
import { EXERCISE, setsText, type Paper } from '../../text/exerciseText.ts';
import { pageSaid, type QuestionSaid } from '../../text/exerciseWords.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { Scrolled } from '../../tests/pages/Scrolled.tsx';
import { PageAside, PageDrawing, PageTable } from './drawn/PageDrawing.tsx';
import { Formula } from './Formula.tsx';
import { footOf, Sheet } from './Sheet.tsx';

/** A line to write on; whoever hears the page is told that there is one. */
function Blank({ of = '' }: { readonly of?: string }) {
  return (
    <span className={`room${of}`}>
      <span className="vh">{EXERCISE.lines}</span>
    </span>
  );
}

/** Room for figures, each with its letter and unit; for letters; or for a sentence. */
function Room({ question, said }: { readonly question: Question; readonly said: QuestionSaid }) {
  const { figures, choice } = question;
  if (figures.length === 0) return <Blank of={choice ? ' of-letters' : ' of-words'} />;
  return (
    <span className="rooms">
      {figures.map(({ of, kind }, at) => (
        <span className="nw" key={`${of} ${kind}`}>
          {said.labels?.[at] ?? of} <Blank />
          {unitOf(kind)}
        </span>
      ))}
    </span>
  );
}

function Asked({ question, said }: { readonly question: Question; readonly said: QuestionSaid }) {
  return (
    <li>
      <p>{said.says}</p>
      <div className="worked">
        {said.formulas?.map((formula) => (
          <Formula key={formula.over} {...formula} />
        ))}
        <Room {...{ question, said }} />
      </div>
    </li>
  );
}

/** The page of one set, as it is handed out. */
export function QuestionSheet({ exercise, paper }: { readonly exercise: AnyExercise; readonly paper: Paper }) {
  const { id, set, questions } = exercise;
  const said = pageSaid(exercise);
  const { name } = DEMO_WORDS[id];
  const head = (
    <>
      <h3>{name}</h3>
      <dl>
        <div>
          <dt>{EXERCISE.name}</dt>
          <dd />
        </div>
        <div>
          <dt>{EXERCISE.setHead}</dt>
          <dd>{set}</dd>
        </div>
      </dl>
    </>
  );
  return (
    <Sheet
      id={id}
      paper={paper}
      label={`${name}, ${EXERCISE.setOf(set)}`}
      head={head}
      foot={footOf(id, setsText([set]))}
    >
      <p className="set-up">{said.setUp}</p>
      <div className="drawn">
        <figure>
          <Scrolled className="of-figure" label={said.drawn}>
            <PageDrawing exercise={exercise} label={said.drawn} />
          </Scrolled>
          <figcaption>{said.drawn}</figcaption>
        </figure>
        <PageTable exercise={exercise} />
      </div>
      <ol className="asked">
        {questions.map((question, at) => {
          const words = said.questions[at];
          return words && <Asked key={question.key} question={question} said={words} />;
        })}
      </ol>
      <Scrolled className="aside" label={EXERCISE.asideOf}>
        <PageAside exercise={exercise} />
      </Scrolled>
    </Sheet>
  );
}
