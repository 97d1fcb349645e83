import type { Grade } from '../../core/design/assessment.ts';

const ORDER: readonly Grade[] = ['fail', 'caution', 'beyond', 'pass'];

/** The worst of several grades; a pass where there are none. */
export function worstOf(grades: readonly Grade[]): Grade {
  return ORDER.find((grade) => grades.includes(grade)) ?? 'pass';
}
