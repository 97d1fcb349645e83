/** How filaments are looked at: it changes nothing of the work, so undo leaves it alone. */
import { create } from 'zustand';
import type { Order } from '../../core/design/acrossFilaments.ts';
import { findFilament } from '../../core/material/shelf.ts';
import type { ShownRows } from '../text/filamentsText.ts';

/** More bands than this hide each other. */
export const MOST_MARKED = 3;

interface Comparing {
  readonly order: Order;
  readonly shown: ShownRows;
  /** Keys of the filaments whose spread is shown. */
  readonly marked: readonly string[];
  /** One more that was asked for while there were as many as read well. */
  readonly asked: string | undefined;
  readonly setOrder: (order: Order) => void;
  readonly setShown: (shown: ShownRows) => void;
  /** Marks or unmarks; a fourth is asked about first. */
  readonly mark: (id: string) => void;
  /** Answers: the one that makes room for the one asked for, or none. */
  readonly answer: (dropped: string | undefined) => void;
}

/** On a phone ten filaments make a long page. */
const isNarrow = () => globalThis.matchMedia?.('(max-width: 620px)').matches ?? false;

/** Marks after one more press of a name; `asked` where there is no room for it. */
export function markedAfter(
  marked: readonly string[],
  id: string,
): { readonly marked: readonly string[]; readonly asked: string | undefined } {
  if (marked.includes(id)) return { marked: marked.filter((one) => one !== id), asked: undefined };
  return marked.length < MOST_MARKED ? { marked: [...marked, id], asked: undefined } : { marked, asked: id };
}

/** Marks after the question has been answered. */
export function markedInstead(
  marked: readonly string[],
  asked: string | undefined,
  dropped: string | undefined,
): readonly string[] {
  return asked === undefined || dropped === undefined ? marked : marked.map((id) => (id === dropped ? asked : id));
}

const isHere = (id: string) => findFilament(id) !== undefined;

/** A row of one's own that was removed keeps its mark, and has it again when it comes back; meanwhile it takes no room. */
export function stillHere(marked: readonly string[]): readonly string[] {
  return marked.every(isHere) ? marked : marked.filter(isHere);
}

export const useComparing = create<Comparing>()((set) => ({
  order: 'repeated',
  shown: isNarrow() ? 'marked' : 'all',
  marked: ['petg', 'pa12', 'pp'],
  asked: undefined,
  setOrder: (order) => set({ order }),
  setShown: (shown) => set({ shown }),
  mark: (id) => set(({ marked }) => markedAfter(stillHere(marked), id)),
  answer: (dropped) =>
    set(({ marked, asked }) => ({ marked: markedInstead(marked, asked, dropped), asked: undefined })),
}));

/** Keys of the filaments whose spread is shown, of those that are here. */
export function useMarked(): readonly string[] {
  return stillHere(useComparing((state) => state.marked));
}
