/** What an exercise page says: how it is set up, its questions, and why an answer is so. */
import type { DemoId } from '../../core/lesson/demos/ids.ts';
import type { AnyExercise, Givens } from '../../core/lesson/exercises/exerciseOf.ts';
import { EXERCISE_BENDS } from './exerciseBends.ts';
import { EXERCISE_PAIRS } from './exercisePairs.ts';

/** `left = over/under`, or `left = over` where there is nothing to divide by. Greek stands in these alone. */
export interface FormulaSaid {
  readonly left: string;
  readonly over: string;
  readonly under?: string;
}

export interface AskedWords {
  readonly says: string;
  readonly formulas?: readonly FormulaSaid[];
  /** What stands before the room for each figure, where that is no letter. */
  readonly labels?: readonly string[];
}

export interface PageWords<G> {
  /** What holds for the whole page. */
  readonly setUp: (given: G) => string;
  /** Under the drawing. */
  readonly drawn: (given: G) => string;
  readonly ask: Readonly<Record<string, (given: G) => AskedWords>>;
  /** Reasons that hold for every set, by question. */
  readonly why: Readonly<Record<string, string>>;
}

const WORDS: { readonly [K in DemoId]: PageWords<Givens[K]> } = { ...EXERCISE_BENDS, ...EXERCISE_PAIRS };

export interface QuestionSaid extends AskedWords {
  readonly key: string;
  readonly why: string | undefined;
}

export interface PageSaid {
  readonly setUp: string;
  readonly drawn: string;
  readonly questions: readonly QuestionSaid[];
}

function said<K extends DemoId>(id: K, given: Givens[K], keys: readonly string[]): PageSaid {
  const words = WORDS[id];
  return {
    setUp: words.setUp(given),
    drawn: words.drawn(given),
    questions: keys.map((key) => {
      const ask = words.ask[key];
      if (!ask) throw new RangeError(`question ${key} of ${id} has no words`);
      return { key, why: words.why[key], ...ask(given) };
    }),
  };
}

/** All that a page says but its figures. */
export function pageSaid({ id, given, questions }: AnyExercise): PageSaid {
  return said(
    id,
    given as never,
    questions.map(({ key }) => key),
  );
}
