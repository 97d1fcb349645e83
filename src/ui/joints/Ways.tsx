import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { roomHeading, waysOutHeading } from '../text/remedyText.ts';
import { CUT_SHORT, foundText, LOOKING, MEASURING_ROOM, NOT_LOOKED } from '../text/lookingText.ts';
import { TRY_AGAIN } from '../text/solverText.ts';
import { RoomToSpare } from './RoomToSpare.tsx';
import { useWays } from './useWays.ts';
import { WaysOut } from './WaysOut.tsx';

interface Props {
  readonly assessment: Assessment;
  /** The assessment is an estimate that the solver is about to replace. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** Ways out of a joint that does not pass, and room to spare of one that does; their place while they are looked for. */
export function Ways({ assessment, isWorking, unit, onUse }: Props) {
  const [ways, again] = useWays(assessment, isWorking);
  const { grade } = assessment.verdict;
  if (grade === 'beyond') return null;
  const passes = grade === 'pass';
  const isSearched = assessment.travel === undefined;
  const isFound = ways !== undefined && ways !== 'broken off';
  const [heading, aside] = passes ? roomHeading(assessment) : waysOutHeading(assessment);
  return (
    <>
      {isSearched && (
        <output className="vh">{isFound && !isWorking && !passes ? foundText(ways.remedies.length) : ''}</output>
      )}
      {isFound && passes && <RoomToSpare assessment={ways.before} spares={ways.spares} unit={unit} />}
      {isFound && !passes && <WaysOut assessment={ways.before} remedies={ways.remedies} unit={unit} onUse={onUse} />}
      {isFound && !passes && ways.isCut && <p className="small">{CUT_SHORT}</p>}
      {!isFound && (
        <section className="looking" aria-label={heading} aria-busy={ways === undefined}>
          <h2 className="h">
            {heading}
            <span className="aside">{aside}</span>
          </h2>
          {ways === undefined ? (
            <p className="none">{passes ? MEASURING_ROOM : LOOKING}</p>
          ) : (
            <p className="none">
              {NOT_LOOKED}{' '}
              <button className="b" type="button" onClick={again}>
                {TRY_AGAIN}
              </button>
            </p>
          )}
        </section>
      )}
    </>
  );
}
