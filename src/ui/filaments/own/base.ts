/** The row of the table that a row of the user's own goes back to, as it would be if it had just been copied. */
import { FILAMENTS } from '../../../core/material/filaments.ts';
import { ownFrom } from '../../../core/material/ownFilament.ts';
import type { OwnFilament } from '../../../core/material/types.ts';

// Every value of a page asks for it, and the table never changes.
const kept = new Map<string, OwnFilament>();

export function baseOf({ own: { from } }: OwnFilament): OwnFilament | undefined {
  const table = FILAMENTS.find(({ id }) => id === from);
  if (!table) return undefined;
  const base = kept.get(from) ?? ownFrom(table, table.name, table.id);
  kept.set(from, base);
  return base;
}

/** Whether two values say the same, their fields being in one order. */
export function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
