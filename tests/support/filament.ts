import { findFilament } from '../../src/core/material/shelf.ts';
import type { Filament, RowId } from '../../src/core/material/types.ts';

/** The row of the table with this key; a key that is not there is a mistake in the test. */
export function filament(id: RowId): Filament {
  const row = findFilament(id);
  if (row === undefined) throw new Error(`no filament ${id}`);
  return row;
}
