/** Tallies of a file, put with those that are there: each once, on the row of the same spool. */
import type { Tally } from '../../core/material/tally.ts';
import type { Result } from '../../core/result.ts';
import { sentence } from '../text/said.ts';

export function takeTallies(read: Result<readonly Tally[]>, _name: string): string | undefined {
  if (!read.ok) return read.problems.map(({ message }) => sentence(message)).join(' ');
  return undefined;
}
