/** Arrow keys in a table of links and marks: Tab would stop at every one of a hundred. */
import type { KeyboardEvent } from 'react';

const STEPS: Readonly<Record<string, readonly [down: number, across: number]>> = {
  ArrowDown: [1, 0],
  ArrowUp: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
};

/** What an arrow leads to, of the things in the rows of a table; undefined past its edges. */
export function neighbour<T>(rows: readonly (readonly T[])[], from: T, key: string): T | undefined {
  const step = STEPS[key];
  const row = rows.findIndex((things) => things.includes(from));
  if (step === undefined || row < 0) return undefined;
  const at = (rows[row] as readonly T[]).indexOf(from);
  const [down, across] = step;
  const next = rows[row + down];
  // A row may have fewer things than the one that is left.
  return across === 0 ? (next?.[at] ?? next?.at(-1)) : rows[row]?.[at + across];
}

/** Moves focus by arrow keys between the links and marks in rows that carry `data-row`. */
export function moveInTable(event: KeyboardEvent<HTMLElement>): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
  const rows = [...event.currentTarget.querySelectorAll('[data-row]')].map((row) => [
    ...row.querySelectorAll<HTMLElement>('a, button'),
  ]);
  const next = neighbour(rows, document.activeElement as HTMLElement, event.key);
  if (!next) return;
  next.focus();
  event.preventDefault();
}
