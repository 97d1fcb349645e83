/** Puts a changed row in force, or says why it cannot be. */
import type { OwnFilament } from '../../../core/material/types.ts';
import type { Result } from '../../../core/result.ts';
import { changeFilament } from '../../../store/shelf.ts';
import { sentence } from '../../text/said.ts';

export function put(next: Result<OwnFilament>, said: string, run?: string): string | undefined {
  if (!next.ok) return sentence(next.problems[0].message);
  changeFilament(next.value, said, run);
  return undefined;
}
