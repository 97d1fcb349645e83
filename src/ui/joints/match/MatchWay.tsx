import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { EffortWanted, Match } from '../../../core/design/matchAnswer.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { matchDone, matchResult, matchTitle, USE_IT } from '../../text/matchText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { gradeWord } from '../../text/verdictText.ts';
import { StrainAxis } from '../StrainAxis.tsx';
import { saidSize } from './saidSize.ts';

interface Props {
  readonly rank: number;
  readonly before: Assessment;
  readonly match: Match;
  readonly at: EffortWanted['at'];
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** One way to an effort: what to do, strain before and after, and what comes of it. */
export function MatchWay({ rank, before, match, at, unit, onUse }: Props) {
  const said = saidSize(before, match, unit);
  const title = matchTitle(before, match.steps, said);
  const { grade } = match.assessment.verdict;
  return (
    <li className="way">
      <span className="rank">{rank}</span>
      <h3>{title}</h3>
      <button
        className="b"
        type="button"
        aria-label={`${USE_IT}: ${title}`}
        onClick={() => onUse(match.after, matchDone(before, match.steps, said))}
      >
        {USE_IT}
      </button>
      <StrainAxis before={before} after={match.assessment} inWords={rank === 1} />
      <p>
        <span className={`word ${grade}`}>
          <VerdictShape grade={grade} /> {gradeWord(grade)}
        </span>{' '}
        {matchResult(match, at, unit)}
      </p>
    </li>
  );
}
