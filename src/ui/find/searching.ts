/** What a search has answered, by what was looked for: to come back to a list is not to search anew. */
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import type { OwnFilament } from '../../core/material/types.ts';

/** A choice, another look and the brief before it: no more is come back to. */
const MOST = 6;

const answers = new Map<string, FindAnswer>();
let knownFor: readonly OwnFilament[] | undefined;

/** A search is told by what is looked for; the name of the filament in the profile is replaced by those tried. */
export function searchKey(wanted: Wanted): string {
  return JSON.stringify(wanted);
}

/** Answers hold as long as the user's own filaments are what they were. */
function forget(own: readonly OwnFilament[]): void {
  if (own === knownFor) return;
  answers.clear();
  knownFor = own;
}

export function answerKept(key: string, own: readonly OwnFilament[]): FindAnswer | undefined {
  forget(own);
  return answers.get(key);
}

export function keepAnswer(key: string, own: readonly OwnFilament[], answer: FindAnswer): void {
  forget(own);
  answers.delete(key);
  answers.set(key, answer);
  const [oldest] = answers.keys();
  if (answers.size > MOST && oldest !== undefined) answers.delete(oldest);
}
