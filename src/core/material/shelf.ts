/**
 * Every filament there is to choose from: the table, and what the user has made. Own rows come from outside, as kinds of
 * flexure do, so that a joint names its filament by a key alone and whoever assesses it need not carry the rows along.
 */
import { FILAMENTS } from './filaments.ts';
import type { Filament, OwnFilament } from './types.ts';

let own: readonly OwnFilament[] = [];

/**
 * Takes these as the user's own rows, in the place of those before.
 *
 * @param filaments - rows with keys that begin with `own-`, each once [-]
 */
export function putOnShelf(filaments: readonly OwnFilament[]): void {
  own = filaments;
}

/**
 * Does something with these rows on the shelf as well, before those that are there; afterwards it is as it was.
 *
 * @param filaments - rows with keys that begin with `own-`, each once [-]
 * @param act - what is done meanwhile [-]; it must end before it returns
 * @returns what it gives [-]
 */
export function withOnShelf<T>(filaments: readonly OwnFilament[], act: () => T): T {
  const kept = own;
  own = [...filaments, ...kept.filter(({ id }) => !filaments.some((one) => one.id === id))];
  try {
    return act();
  } finally {
    own = kept;
  }
}

/** The user's own rows. */
export function ownFilaments(): readonly OwnFilament[] {
  return own;
}

/** The table, then the user's own rows. */
export function everyFilament(): readonly Filament[] {
  return [...FILAMENTS, ...own];
}

/** Whether the user has made this row. */
export function isOwn(filament: Filament): filament is OwnFilament {
  return 'own' in filament;
}

/**
 * The filament with this key.
 *
 * @param id - key of a row [-], for example `petg`
 * @returns the row, or `undefined` when there is none
 *
 * @example findFilament('petg').name // → 'PETG'
 */
export function findFilament(id: string): Filament | undefined {
  return everyFilament().find((filament) => filament.id === id);
}
