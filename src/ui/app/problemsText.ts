import type { Problem } from '../../core/problems.ts';
import { useChoices } from '../../store/choices.ts';
import { problemText } from '../text/problemText.ts';

/** All of these problems in the words of the screen, in the chosen unit, one sentence after the other. */
export function problemsText(problems: readonly Problem[]): string {
  const { unit } = useChoices.getState();
  return problems.map((problem) => problemText(problem, unit)).join(' ');
}
