import { useMemo } from 'react';
import { exercisesFor, type AnyExercise } from '../../../core/lesson/exercises/exerciseOf.ts';
import { AnswersOfMany, SETS_A_SHEET } from './AnswerSheets.tsx';
import type { ExerciseShown } from './exerciseState.ts';
import { QuestionSheet } from './QuestionSheet.tsx';

function parted<T>(all: readonly T[], most: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / most) }, (_, at) => all.slice(at * most, (at + 1) * most));
}

/** Pages for a class, each of another set, and their answers on sheets after them. */
export function ClassSheets({ shown }: { readonly shown: ExerciseShown }) {
  const { id, set, pages, paper, answers } = shown;
  const exercises = useMemo(() => exercisesFor(id, set, pages) as readonly AnyExercise[], [id, set, pages]);
  return (
    <>
      {exercises.map((exercise) => (
        <QuestionSheet key={exercise.set} exercise={exercise} paper={paper} />
      ))}
      {answers === 'second' &&
        parted(exercises, SETS_A_SHEET).map((some) => (
          <AnswersOfMany key={some[0]?.set} exercises={some} paper={paper} />
        ))}
    </>
  );
}
