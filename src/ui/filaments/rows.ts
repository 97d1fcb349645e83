import { everyFilament } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { wholeRow } from '../../core/material/wholeRow.ts';

/** Every filament with all that is known of it: the table, then the user's own. */
export function everyRow(): readonly WholeFilament[] {
  return everyFilament().map(wholeRow);
}
