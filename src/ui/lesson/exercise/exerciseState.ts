/** What of the exercise pages is shown, as it stands in the address; nonsense falls to the nearest that there is. */
import { DEMO_IDS, isDemoId, type DemoId } from '../../../core/lesson/demos/ids.ts';
import { nearestSet } from '../../../core/lesson/exercises/exercise.ts';
import { ANSWER_PLACES, CLASS, PAPERS, type AnswerPlace, type Paper } from '../../text/exerciseText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { lessonAddress, type LessonAddress } from '../route.ts';

export interface ExerciseShown {
  readonly id: DemoId;
  readonly set: number;
  readonly paper: Paper;
  readonly answers: AnswerPlace;
  /** How many pages a class gets. */
  readonly pages: number;
}

/** As good as any; the one of the first hand-out. */
const FIRST_SET = 14;

function numberIn(values: URLSearchParams, name: string, otherwise: number): number {
  const text = values.get(name);
  const value = text === null || text.trim() === '' ? Number.NaN : Number(text);
  return Number.isNaN(value) ? otherwise : value;
}

function oneOf<T extends string>(all: readonly T[], value: string | null, otherwise: T): T {
  return all.find((one) => one === value) ?? otherwise;
}

/** A whole number of pages within what a class may have. */
function nearestCount(count: number): number {
  return Math.min(CLASS.max, Math.max(CLASS.min, Math.round(count)));
}

/** What an address shows; whoever reads in inches prints on Letter until something else is chosen. */
export function exerciseIn({ of, values }: Pick<LessonAddress, 'of' | 'values'>, unit: LengthUnit): ExerciseShown {
  return {
    id: isDemoId(of) ? of : DEMO_IDS[0],
    set: nearestSet(numberIn(values, 'set', FIRST_SET)),
    paper: oneOf(PAPERS, values.get('paper'), unit === 'inch' ? 'letter' : 'a4'),
    answers: oneOf(ANSWER_PLACES, values.get('answers'), 'second'),
    pages: nearestCount(numberIn(values, 'pages', CLASS.usual)),
  };
}

/** The address that shows the same again. */
export function exerciseAddress({ id, set, paper, answers, pages }: ExerciseShown): string {
  return lessonAddress('exercise', id, { set: String(set), paper, answers, pages: String(pages) });
}
