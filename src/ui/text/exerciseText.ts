/** Words of the exercise pages that do not depend on which page it is. */
import type { Question } from '../../core/lesson/exercises/question.ts';
import { choiceText, figuresText, withinText } from './exerciseFigures.ts';
import type { QuestionSaid } from './exerciseWords.ts';

export const PAPERS = ['a4', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];
export const PAPER_NAMES: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'Letter' };

export const ANSWER_PLACES = ['second', 'none'] as const;
export type AnswerPlace = (typeof ANSWER_PLACES)[number];
export const ANSWER_WORDS: Readonly<Record<AnswerPlace, string>> = { second: 'on a second page', none: 'not printed' };

/** How many pages a class may have. */
export const CLASS = { min: 1, max: 40, usual: 30 } as const;

export const EXERCISE = {
  sentence: 'What is printed',
  which: 'Demonstration',
  set: 'Set of numbers',
  paper: 'Paper',
  answers: 'Answers',
  count: 'Pages for a class',
  hint: 'Up and Down step it; Enter takes what is typed',
  print: 'Print',
  next: 'Next set',
  toDemo: 'The demonstration',
  show: 'Show the answers',
  hide: 'Hide the answers',
  preview: 'The page',
  name: 'Name',
  shownAnswers: (set: number) => `Answers, set ${set}`,
  answersOf: (set: number) => `answers, set ${set}`,
  answersOfMany: (sets: string) => `answers, ${sets}`,
  seeBelow: 'below',
  tolerance: 'Take what was measured within half a millimetre, and what rests on it as much off in proportion.',
  setOf: (set: number) => `Set ${set}`,
  caution: 'Eye protection when you bend real ones.',
  lines: 'Room to write',
  asideOf: 'To draw on or read off',
  of: 'Exercise page',
  forClass: 'For a class:',
  ofSets: (sets: string) => `pages, ${sets}, each with its own numbers; the answers come on sheets after them.`,
  printClass: (pages: string) => `Print ${pages}`,
  rulerNote: 'The lines on the page must measure 100 mm and 4 in; if they do not, the printer has scaled it.',
  sizeOf: (paper: string) => `${paper}; it prints at full size, black on white`,
  setHead: 'Set',
} as const;

/** “30 pages, all different”. */
export function classText(count: number): string {
  return count === 1 ? '1 page' : `${count} pages, all different`;
}

/** “sets 14 to 43”. */
export function setsText(sets: readonly number[]): string {
  const [first = 0, last = first] = [sets[0], sets.at(-1)];
  return sets.length === 1 ? `set ${first}` : `sets ${first} to ${last}`;
}

export function limitsSaid(label: string, min: number, max: number): string {
  return `${label}: a whole number from ${min} to ${max}.`;
}

/** Of how many, which, under the page. */
export function footText(number: number, name: string, sets: string): string {
  return `Bendbook, demonstration ${number}: ${name}, ${sets}.`;
}

export interface AnswerSaid {
  /** What is right, in short. */
  readonly says: string;
  readonly within: string | undefined;
  readonly why: string | undefined;
}

/** The answer of a question; a sentence alone where nothing is worked out. */
export function answerSaid({ figures, choice }: Question, { labels, why }: QuestionSaid): AnswerSaid {
  if (choice) return { says: choiceText(choice), within: undefined, why };
  if (figures.length === 0) return { says: why ?? '', within: undefined, why: undefined };
  return { says: figuresText(figures, labels), within: withinText(figures), why };
}

/** In the title block. */
export const EXERCISE_TITLE = {
  what: 'Lesson',
  page: (number: number, count: number) => `Exercise page ${number} of ${count}`,
  setUp: 'Set up',
  caution: 'Lives are estimates from nominal data; printed parts vary. Wear eye protection when you bend real ones.',
} as const;
