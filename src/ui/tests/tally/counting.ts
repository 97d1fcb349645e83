/** A count under the hand, as plain functions: which strip it is of, what a key does to it, and how it ends. */
import type { FlexTally, Tally } from '../../../core/material/tally.ts';
import type { Counting } from '../../../store/tests.ts';
import { lyingOf } from '../../../store/tests.ts';
import { newTallyId, today } from '../spools.ts';
import type { Spool, Trial } from '../trial.ts';

export type Key = 'bent' | 'broke' | 'stop' | 'back';

const KEYS: Readonly<Record<string, Key>> = { ' ': 'bent', b: 'broke', s: 'stop', Backspace: 'back' };

/** What a key means to the counter; nothing for keys that are not its own, held down or pressed with another. */
export function keyOf({
  key,
  ctrlKey,
  metaKey,
  altKey,
  repeat,
}: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'repeat'>): Key | undefined {
  if (ctrlKey || metaKey || altKey || repeat) return undefined;
  return KEYS[key.length === 1 ? key.toLowerCase() : key];
}

export const isFlexes = (tally: Tally): tally is FlexTally => tally.kind === 'flexes';

/** The strip that a count goes on with. */
export function goesOn(spool: Spool | undefined, counting: Counting | undefined): FlexTally | undefined {
  const from = counting?.from;
  return spool?.own.tests.tallies.filter(isFlexes).find(({ id }) => id === from);
}

/** The least that a count may say: a strip that stood so many has stood them. */
export function floorOf(spool: Spool | undefined, counting: Counting | undefined): number {
  return goesOn(spool, counting)?.cycles ?? 0;
}

/** The count after one bend more, or one taken back; never under what the strip stood before. */
export function counted(counting: Counting, by: 1 | -1, floor: number): Counting {
  return { ...counting, cycles: Math.max(floor, counting.cycles + by) };
}

/** What is written down of a strip of the trial. */
export function stripOf(trial: Trial, cycles: number, ended: FlexTally['ended'], seen = ''): FlexTally {
  const { bend, thickness, values, spool } = trial;
  const { ways } = values;
  const lying = lyingOf(values);
  return { kind: 'flexes', id: newTallyId(spool), date: today(), seen, bend, thickness, lying, ways, cycles, ended };
}
