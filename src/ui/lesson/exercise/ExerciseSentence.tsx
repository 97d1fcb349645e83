import { DEMO_IDS, isDemoId } from '../../../core/lesson/demos/ids.ts';
import { SETS } from '../../../core/lesson/exercises/exercise.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { Live } from '../../life/Live.tsx';
import {
  ANSWER_PLACES,
  ANSWER_WORDS,
  CLASS,
  EXERCISE,
  limitsSaid,
  PAPER_NAMES,
  PAPERS,
} from '../../text/exerciseText.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import type { ExerciseShown } from './exerciseState.ts';

export interface Changing {
  readonly shown: ExerciseShown;
  readonly change: (to: Partial<ExerciseShown>) => void;
}

interface Whole {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly take: (value: number) => void;
}

/** A field for a whole number. */
function wholeSpec({ key, label, value, min, max, take }: Whole): ValueSpec {
  return {
    key,
    label,
    kind: 'count',
    unit: 'mm',
    value,
    say: String,
    shownNumber: value,
    figure: String(value),
    suffix: '',
    hint: EXERCISE.hint,
    step: () => 1,
    min,
    max,
    take: (next) => {
      if (!(Number.isInteger(next) && next >= min && next <= max)) return limitsSaid(label, min, max);
      take(next);
      return undefined;
    },
  };
}

export function classSpec({ shown, change }: Changing): ValueSpec {
  const { min, max } = CLASS;
  const take = (pages: number) => change({ pages });
  return wholeSpec({ key: 'pages', label: EXERCISE.count, value: shown.pages, min, max, take });
}

function choice<T extends string>(
  key: string,
  label: string,
  value: T,
  options: readonly { readonly value: T; readonly text: string }[],
  take: (value: T) => void,
): ChoiceSpec {
  return {
    key,
    label,
    value,
    options,
    take: (text) => {
      const chosen = options.find((option) => option.value === text);
      if (chosen) take(chosen.value);
      return undefined;
    },
  };
}

/** What is printed, as a sentence with its values live in it. */
export function ExerciseSentence({ shown, change }: Changing) {
  const { id, set, paper, answers } = shown;
  const names = DEMO_IDS.map((value) => ({ value, text: DEMO_WORDS[value].name.toLowerCase() }));
  const papers = PAPERS.map((value) => ({ value, text: PAPER_NAMES[value] }));
  const places = ANSWER_PLACES.map((value) => ({ value, text: ANSWER_WORDS[value] }));
  const { min, max } = SETS;
  const which = choice('id', EXERCISE.which, id, names, (value) => isDemoId(value) && change({ id: value }));
  const sets = wholeSpec({ key: 'set', label: EXERCISE.set, value: set, min, max, take: (to) => change({ set: to }) });
  return (
    <Sentence className="check-says">
      One page on <Live spec={which} /> with numbers from set <Live spec={sets} stop="," /> for{' '}
      <Live spec={choice('paper', EXERCISE.paper, paper, papers, (to) => change({ paper: to }))} stop="," /> answers{' '}
      <Live spec={choice('answers', EXERCISE.answers, answers, places, (to) => change({ answers: to }))} stop="." />
    </Sentence>
  );
}
