/** Filaments that the user has made. They stand with the part in one history, so that one undo takes back either. */
import type { OwnFilament } from '../core/material/types.ts';
import { useSession } from './session.ts';

/** The user's own filaments, oldest first. */
export function useShelf(): readonly OwnFilament[] {
  return useSession((state) => state.own);
}

/** A shelf with those of these rows that it does not have. */
export function withUnknown(shelf: readonly OwnFilament[], filaments: readonly OwnFilament[]): readonly OwnFilament[] {
  const unknown = filaments.filter(({ id }) => !shelf.some((one) => one.id === id));
  return unknown.length === 0 ? shelf : [...shelf, ...unknown];
}

/** Names of the joints of the open part that use a filament. */
export function usersOf(id: string): readonly string[] {
  return useSession
    .getState()
    .part.joints.filter(({ profile }) => profile.filament === id)
    .map(({ name }) => name);
}

/** Puts these beside those that are there. */
export function addFilaments(filaments: readonly OwnFilament[], said: string): void {
  const { own, changeOwn } = useSession.getState();
  changeOwn([...own, ...filaments], said);
}

/** Puts a row in the place of the one with the same key; changes of one gesture are one step to undo. */
export function changeFilament(next: OwnFilament, said: string, gesture?: string): void {
  const { own, changeOwn } = useSession.getState();
  changeOwn(
    own.map((one) => (one.id === next.id ? next : one)),
    said,
    gesture,
  );
}

/** Takes a row away unless joints of the open part use it; undo brings it back. Whether it went. */
export function removeFilament(id: string, said: string): boolean {
  if (usersOf(id).length > 0) return false;
  const { own, changeOwn } = useSession.getState();
  changeOwn(
    own.filter((one) => one.id !== id),
    said,
  );
  return true;
}
