import type { AnyExercise } from '../../../core/lesson/exercises/exerciseOf.ts';
import { answerSaid } from '../../text/exerciseText.ts';
import { pageSaid } from '../../text/exerciseWords.ts';

/** The answers of one set, with how far they may be off and why they are so. */
export function AnswerList({ exercise }: { readonly exercise: AnyExercise }) {
  const said = pageSaid(exercise);
  return (
    <ol className="answers">
      {exercise.questions.map((question, at) => {
        const words = said.questions[at];
        if (!words) return undefined;
        const { says, within, why } = answerSaid(question, words);
        return (
          <li key={question.key}>
            <b>{says}</b>
            {within !== undefined && <span className="off"> {within}</span>}
            {why !== undefined && <span className="why"> {why}</span>}
          </li>
        );
      })}
    </ol>
  );
}
