/** Giving up from deep inside a reader; `readMesh` turns it into a result, so that nothing outside sees it thrown. */
import type { Problem, ProblemCode } from '../../core/problems.ts';

export class Refusal extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.name = 'Refusal';
    this.problem = problem;
  }
}

/** The file is given up: what is wrong and where, and what would help. */
export function refuse(code: ProblemCode, message: string, more: Pick<Problem, 'value' | 'limit'> = {}): never {
  throw new Refusal({ code, message, ...more });
}

/** What helps a file that was cut off or changed on its way. */
export const FETCH_AGAIN = 'download or export it again';

/** How many as a sentence has it: 12 345. */
export function count(n: number): string {
  return String(n).replaceAll(/\B(?=(\d{3})+$)/g, ' ');
}

/** So many of something: 1 corner, 2 corners. */
export function many(n: number, one: string): string {
  return `${count(n)} ${one}${n === 1 ? '' : 's'}`;
}

/** A piece of a file as a sentence can carry it: short, on one line, without control characters. */
export function quoted(text: string): string {
  const plain = text
    .slice(0, 200)
    .replaceAll(/[\p{C}\s]+/gu, ' ')
    .trim();
  return plain.length > 40 ? `“${Array.from(plain).slice(0, 40).join('')}…”` : `“${plain}”`;
}
