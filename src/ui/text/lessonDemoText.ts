/** Words of the demonstrations that all of them share: steps, keys, what strains and lives mean, and how a question stands. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Goal, Letter } from '../../core/lesson/demos/demo.ts';
import type { Standing } from '../../core/lesson/demos/standing.ts';
import { FILAMENTS } from '../../core/material/filaments.ts';
import { cycles, grouped, NO_BREAK, percent } from './numbers.ts';

export const DEMO = {
  path: 'Path of demonstrations',
  steps: 'Steps',
  picture: 'The picture',
  question: 'The question',
  handles: 'Handles',
  working: (letter: Letter) => `The working, ${letter}`,
  workingAid: 'symbols, numbers, units',
  decide: 'Decide together which it is. Then bend them, with key 2.',
  scale: 'scale',
  move: 'Bend them once',
  stop: 'Stop',
  atRest: 'dashed: at rest',
  colour: 'colour: strain, worst at the skin',
  noColour: 'no colour, no numbers yet',
  hiddenNote: 'Numbers are hidden; key H shows them.',
  coming: 'Being worked out.',
  further: 'From here',
  openAs: 'Open as a joint',
  openHint: (letter: Letter) => `adds ${letter} to the part as a joint, to be changed and printed`,
  exercise: 'Exercise page',
  copy: 'Copy link',
  copyHint: 'a link that opens this demonstration exactly as it stands',
  copied: 'Copied',
  byHand: 'Link to this demonstration, to copy by hand',
  fill: 'Fill the screen',
  unfill: 'Leave the full screen',
  next: 'Next',
  previous: 'Previous',
  keys: 'Keys',
  trouble: 'What works this out did not come; move a handle to try again.',
} as const;

export const STEP_NAMES = { 1: 'Ask', 2: 'Bend', 3: 'Work it out', 4: 'Count' } as const;

/** Every key with what it does, for the list that is always in sight. */
export const DEMO_KEYS: readonly (readonly [keys: readonly string[], does: string])[] = [
  [['Page Down', 'Page Up'], 'next and previous step, then demonstration'],
  [['N', 'P'], 'next and previous demonstration'],
  [['1', '2', '3', '4'], 'steps'],
  [['Up', 'Down'], 'move the first handle'],
  [['H'], 'hide or show numbers'],
  [['F'], 'fill the screen, Esc leaves'],
];

/** “Demonstration 3 of 10”. */
export function demoOf(number: number, count: number): string {
  return `Demonstration ${number} of ${count}`;
}

export const DEMO_TITLE = { what: 'Lesson', setUp: 'Set up' } as const;

export const DEMO_CAUTION =
  'Lives are estimates from nominal data; printed parts vary. Wear eye protection when you bend real ones.';

/** As it is named among the joints of a part: “Lesson: one line more, B”. */
export function lessonJointName(demo: string, letter: Letter): string {
  return `Lesson: ${demo.charAt(0).toLowerCase()}${demo.slice(1)}, ${letter}`;
}

export function openedFromLesson(name: string): string {
  return `Joint “${name}” added from the lesson`;
}

/** Said under the field of a handle before anything is typed. */
export const HANDLE_HINT = 'Up and Down step it; Enter takes what is typed';

export function outOfRange(label: string, low: string, high: string): string {
  return `${label} goes from ${low} to ${high} here.`;
}

const TIMES: Readonly<Record<string, string>> = {
  '1min': `1${NO_BREAK}minute`,
  '10min': `10${NO_BREAK}minutes`,
  '1h': `1${NO_BREAK}hour`,
  '6h': `6${NO_BREAK}hours`,
  '1day': `1${NO_BREAK}day`,
  '1week': `1${NO_BREAK}week`,
  '1month': `1${NO_BREAK}month`,
  '1year': `1${NO_BREAK}year`,
};

/** What an option of a handle is called: a filament, or a time. */
export function optionText(option: string): string {
  return TIMES[option] ?? FILAMENTS.find(({ id }) => id === option)?.name ?? option;
}

/** What a strain means to its filament. */
export const STANDS: Readonly<Record<Standing, string>> = {
  'again and again': 'again and again',
  'once in a while': 'once in a while',
  hardly: 'may stay bent',
  'stays bent': 'stays bent',
  breaks: 'breaks',
};

/** “half break by 14 000”; no life is told past what was counted. */
export function lifeShort({ life, joint }: Assessment): string {
  if (joint.movement.held) return 'never flexed: nothing to count';
  if (life.breaksOnFirstFlex) return 'the first flex breaks it';
  if (life.median > life.maxReportableCycles)
    return `half outlast ${grouped(life.maxReportableCycles)}, where counting stops`;
  return `half break by ${cycles(life.median)}`;
}

/** A ratio to two figures: “3.4”, “27”. */
export function timesText(ratio: number): string {
  return ratio >= 9.95 ? grouped(ratio) : ratio.toFixed(ratio >= 3 ? 1 : 2);
}

/** How the question stands without a number, for a class that has not seen any. */
export function openOrAnswered({ isMet }: Goal): string {
  return isMet ? 'Yes: that answers it.' : 'Not yet.';
}

/** “Yes. B strains 1.40 %, within the 1.47 % that PETG stands again and again.” */
export function strainStands({ now, wanted, isMet }: Goal, { filament }: Assessment): string {
  const limit = `${percent(wanted)} that ${filament.name} stands again and again`;
  if (isMet) return `Yes. B strains ${percent(now)}, within the ${limit}.`;
  return `Not yet. B strains ${percent(now)}, ${timesText(now / wanted)} times the ${limit}.`;
}

/** “Not yet. B pushes back 3.4 times as hard as A; 5 times is asked for.” */
export function effortStands({ now, wanted, isMet }: Goal): string {
  const says = `B pushes back ${timesText(now)} times as hard as A`;
  return isMet ? `Yes. ${says}.` : `Not yet. ${says}; ${wanted} times is asked for.`;
}
