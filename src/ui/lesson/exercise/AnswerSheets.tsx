import type { AnyExercise } from '../../../core/lesson/exercises/exerciseOf.ts';
import { answerSaid, EXERCISE, setsText, type Paper } from '../../text/exerciseText.ts';
import { pageSaid } from '../../text/exerciseWords.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { AnswerList } from './AnswerList.tsx';
import { footOf, Sheet } from './Sheet.tsx';

/** So many sets stand on one sheet of answers. */
export const SETS_A_SHEET = 12;

/** Answers of one set, on a sheet of their own. */
export function AnswerSheet({ exercise, paper }: { readonly exercise: AnyExercise; readonly paper: Paper }) {
  const { id, set } = exercise;
  const said = pageSaid(exercise);
  const title = EXERCISE.answersOf(set);
  return (
    <Sheet
      id={id}
      paper={paper}
      label={`${DEMO_WORDS[id].name}, ${title}`}
      foot={footOf(id, setsText([set]))}
      head={<h3>{`${DEMO_WORDS[id].name}: ${title}`}</h3>}
    >
      <p className="set-up">{said.setUp}</p>
      <AnswerList exercise={exercise} />
    </Sheet>
  );
}

function SetRow({ exercise }: { readonly exercise: AnyExercise }) {
  const said = pageSaid(exercise);
  return (
    <tr>
      <th scope="row">{exercise.set}</th>
      {exercise.questions.map((question, at) => {
        const words = said.questions[at];
        const isSentence = question.figures.length === 0 && !question.choice;
        const answer = words && !isSentence ? answerSaid(question, { ...words, why: undefined }) : undefined;
        return <td key={question.key}>{answer?.says ?? EXERCISE.seeBelow}</td>;
      })}
    </tr>
  );
}

/** Answers of many sets as a table to mark by, with the reasons once under it. */
export function AnswersOfMany({
  exercises,
  paper,
}: {
  readonly exercises: readonly AnyExercise[];
  readonly paper: Paper;
}) {
  const [first] = exercises;
  if (!first) return undefined;
  const { id } = first;
  const { name } = DEMO_WORDS[id];
  const sets = setsText(exercises.map(({ set }) => set));
  const { questions } = pageSaid(first);
  const title = EXERCISE.answersOfMany(sets);
  return (
    <Sheet
      id={id}
      paper={paper}
      label={`${name}, ${title}`}
      head={<h3>{`${name}: ${title}`}</h3>}
      foot={footOf(id, sets)}
    >
      <table className="of-many">
        <thead>
          <tr>
            <th scope="col">{EXERCISE.setHead}</th>
            {questions.map(({ key }, at) => (
              <th key={key} scope="col">
                {at + 1}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {exercises.map((exercise) => (
            <SetRow key={exercise.set} exercise={exercise} />
          ))}
        </tbody>
      </table>
      <dl className="reasons">
        {questions.map(
          ({ key, why }, at) =>
            why !== undefined && (
              <div key={key}>
                <dt>{at + 1}</dt>
                <dd>{why}</dd>
              </div>
            ),
        )}
      </dl>
      <p className="set-up">{EXERCISE.tolerance}</p>
    </Sheet>
  );
}
