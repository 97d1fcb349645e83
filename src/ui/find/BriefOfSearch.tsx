import { checkWanted } from '../../core/find/checkWanted.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import type { Problem } from '../../core/problems.ts';
import { wantedProblem } from '../text/findText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { FindSentence } from './FindSentence.tsx';
import { Ticks } from './Ticks.tsx';

interface Props {
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  /** What is wrong with the brief as it stands. */
  readonly problems: readonly Problem[];
  readonly onWant: (next: Wanted) => void;
}

const TICKED = ['families', 'filaments', 'lyings'] as const;
const isTicked = ({ field }: Problem) => TICKED.some((one) => one === field);

/** The problem that a change would bring. What was wrong before is no reason to refuse one. */
function newProblem(before: Wanted, after: Wanted): Problem | undefined {
  const known = checkWanted(before);
  return checkWanted(after).find(
    ({ code, field }) => !known.some((problem) => problem.code === code && problem.field === field),
  );
}

/** The brief of a search: a sentence with every value live, and what may be tried. */
export function BriefOfSearch({ wanted, unit, problems, onWant }: Props) {
  const { measure } = wanted;
  const say = (problem: Problem) => wantedProblem(problem, measure, unit);
  const put = (next: Wanted) => {
    const problem = newProblem(wanted, next);
    if (problem) return say(problem);
    onWant(next);
    return undefined;
  };
  const ofTicks = Object.fromEntries(
    TICKED.flatMap((field) => {
      const problem = problems.find((one) => one.field === field);
      return problem ? [[field, say(problem)]] : [];
    }),
  );
  const others = problems.filter((problem) => !isTicked(problem));
  return (
    <section className="find-brief" aria-label="What is looked for">
      <FindSentence of={{ wanted, unit, put }} />
      {others.map((problem) => (
        <p key={problem.message} className="refusal" role="alert">
          {say(problem)}
        </p>
      ))}
      <Ticks wanted={wanted} onWant={onWant} problems={ofTicks} />
    </section>
  );
}
