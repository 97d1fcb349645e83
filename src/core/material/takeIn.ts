/** Rows that come with a part or a file, taken to those that are there; nothing that is there is ever overwritten. */
import { fail, ok, type Result } from '../result.ts';
import { inOrder } from './ownFilament.ts';
import { LONGEST_OWN_ID, MOST_OWN } from './ownLimits.ts';
import type { OwnFilament } from './types.ts';

export interface TakenIn {
  /** All rows, those that were there first. */
  readonly shelf: readonly OwnFilament[];
  /** Those that were not there, as they are called now. */
  readonly added: readonly OwnFilament[];
  /** The key under which each row that came is found now. */
  readonly ids: ReadonlyMap<string, string>;
}

/** What a row says but for what it is called. */
function contents(filament: OwnFilament): string {
  return JSON.stringify(inOrder({ ...filament, id: '', name: '', fullName: '' }));
}

function isSame(a: OwnFilament, b: OwnFilament): boolean {
  return a.name === b.name && contents(a) === contents(b);
}

/** `own-petg-2`, never longer than a key may be. */
function numbered(id: string, n: number): string {
  const ending = `-${n}`;
  return `${id.slice(0, LONGEST_OWN_ID - ending.length)}${ending}`;
}

/** The row under the first key and name of its kind that are free, or the one there that says the same already. */
function besides(shelf: readonly OwnFilament[], filament: OwnFilament): OwnFilament {
  for (let n = 2; ; n += 1) {
    const id = numbered(filament.id, n);
    const there = shelf.find((one) => one.id === id);
    if (there && contents(there) === contents(filament)) return there;
    const name = `${filament.name} (${n})`;
    if (!there && !shelf.some((one) => one.name === name)) return { ...filament, id, name, fullName: name };
  }
}

/**
 * Rows taken to a shelf. One that is there word for word adds nothing; one whose key stands for something else comes in
 * under a new key and the name “PETG blue (2)”.
 *
 * Problems: `too-large` where there would be more rows than a user may have.
 *
 * @param shelf - the rows that are there [-]
 * @param incoming - the rows that come [-]
 * @returns the shelf with them, what is new, and the key of each [-]
 */
export function takeIn(shelf: readonly OwnFilament[], incoming: readonly OwnFilament[]): Result<TakenIn> {
  const all = [...shelf];
  const ids = new Map<string, string>();
  for (const filament of incoming) {
    const there = all.find(({ id }) => id === filament.id);
    const taken = there === undefined ? filament : isSame(there, filament) ? there : besides(all, filament);
    ids.set(filament.id, taken.id);
    if (!all.includes(taken)) all.push(taken);
  }
  if (all.length > MOST_OWN) {
    const message = `With these there would be ${all.length} filaments of your own, at most ${MOST_OWN} are kept; remove some first`;
    return fail({ code: 'too-large', message, value: all.length, limit: MOST_OWN });
  }
  return ok({ shelf: all, added: all.slice(shelf.length), ids });
}
