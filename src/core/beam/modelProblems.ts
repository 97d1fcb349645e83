/** How problems with a network are worded. */
import { outsideRange, type Problem, type ProblemCode, type Range } from '../problems.ts';

const LONGEST_SHOWN = 40;
const MOST_SHOWN = 6;

/** An id in quotes, cut where it would fill the sentence. */
export function quoted(id: string): string {
  return id.length > LONGEST_SHOWN ? `“${id.slice(0, LONGEST_SHOWN)}…”` : `“${id}”`;
}

/** The first few of some ids, for a reader who looks for the right one. */
export function someOf(ids: readonly string[]): string {
  if (ids.length === 0) return 'none';
  const shown = ids.slice(0, MOST_SHOWN).map(quoted).join(', ');
  return ids.length > MOST_SHOWN ? `${shown} and ${ids.length - MOST_SHOWN} more` : shown;
}

export function problem(
  code: ProblemCode,
  field: string,
  message: string,
  more: Pick<Problem, 'value' | 'limit'> = {},
): Problem {
  return { code, message, field, ...more };
}

/** Problems of numbers that may be left out: none where it is. */
export function checkNumber(
  field: string,
  value: number | undefined,
  range: Range,
  unit: '' | 'mm' = '',
): readonly Problem[] {
  if (value === undefined) return [];
  const found = outsideRange(field, field, value, range, unit);
  return found ? [found] : [];
}
