import type { Problem } from '../../core/problems.ts';
import { useChoices } from '../../store/choices.ts';
import { problemSaid } from '../text/problemSaid.ts';

/** More than this is not read; the rest is only counted. */
const MOST = 3;

/** These problems in the words of the screen, in the chosen unit, one sentence after the other. */
export function problemsText(problems: readonly Problem[]): string {
  const { unit } = useChoices.getState();
  const said = problems.slice(0, MOST).map((problem) => problemSaid(problem, unit));
  const rest = problems.length - said.length;
  return [...said, ...(rest > 0 ? [`And ${rest} more.`] : [])].join(' ');
}
