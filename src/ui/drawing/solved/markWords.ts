import { MARKED, WANTED } from '../../text/solvedDrawingText.ts';
import { letteringWidth } from '../lettering.ts';
import type { Travelled } from './travelled.ts';

/** A word under the scale of a scrubber: where it begins [px]. */
export interface MarkWord {
  readonly text: string;
  readonly x: number;
  readonly isWanted: boolean;
}

/** Words are placed in this order, and left out where those before them leave no room. */
const ORDER = ['rest', 'balanced', 'snap', 'return'] as const;
const APART = 8;

/** The words of the marked states, and of what is wanted where the scale goes on past it. */
export function markWords(
  { marks, wanted, to }: Travelled,
  at: (amount: number) => number,
  width: number,
): readonly MarkWord[] {
  const asked = [
    ...ORDER.flatMap((kind) => marks.filter((mark) => mark.kind === kind)).map(({ kind, amount }) => ({
      text: MARKED[kind].short as string,
      amount,
      isWanted: false,
    })),
    ...(wanted < to ? [{ text: WANTED, amount: wanted, isWanted: true }] : []),
  ];
  const placed: (MarkWord & { readonly wide: number })[] = [];
  for (const { text, amount, isWanted } of asked) {
    const wide = letteringWidth(text, 12);
    const x = Math.min(width - wide, Math.max(0, at(amount) - wide / 2));
    if (placed.every((word) => x > word.x + word.wide + APART || x + wide + APART < word.x))
      placed.push({ text, x, wide, isWanted });
  }
  return placed;
}
