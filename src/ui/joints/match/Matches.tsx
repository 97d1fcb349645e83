import { useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { EffortWanted, MatchAnswer } from '../../../core/design/matchAnswer.ts';
import { allMatches, COUNTS_HEAD, metText, shortText } from '../../text/matchText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { MatchWay } from './MatchWay.tsx';

/** As many as are seen at a glance; the others are asked for. */
const AT_FIRST = 4;

interface Props {
  readonly before: Assessment;
  readonly answer: MatchAnswer;
  readonly at: EffortWanted['at'];
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** Joints that have the effort, smallest change first; then whole counts that only come near, and ways that do not get there. */
export function Matches({ before, answer, at, unit, onUse }: Props) {
  const [all, setAll] = useState(false);
  const { now, isMet, matches, short } = answer;
  if (isMet) return <p className="none">{metText(now, at, before.drive.measure, unit)}</p>;
  const met = matches.filter(({ isMatched }) => isMatched);
  const near = matches.filter(({ isMatched }) => !isMatched);
  const shown = all ? met : met.slice(0, AT_FIRST);
  const way = (match: (typeof matches)[number], at0: number) => (
    <MatchWay
      key={match.steps.join() + JSON.stringify(match.after.sizes)}
      rank={at0 + 1}
      {...{ before, match, at, unit, onUse }}
    />
  );
  return (
    <>
      <ol>{shown.map(way)}</ol>
      {(met.length > AT_FIRST || near.length > 0) && (
        <button className="b quiet" type="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {allMatches(matches.length, all)}
        </button>
      )}
      {all && near.length > 0 && (
        <>
          <h3 className="near">{COUNTS_HEAD}</h3>
          <ol>{near.map((match, i) => way(match, met.length + i))}</ol>
        </>
      )}
      {all && short.length > 0 && <p className="small">{shortText(before, short)}</p>}
    </>
  );
}
