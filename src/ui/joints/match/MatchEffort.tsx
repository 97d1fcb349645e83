import { useRef, useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { BrokenOff } from '../BrokenOff.tsx';
import type { Joint } from '../../../core/design/joint.ts';
import type { EffortWanted } from '../../../core/design/matchAnswer.ts';
import { Mark } from '../../app/Mark.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { Live } from '../../life/Live.tsx';
import { MATCH_AID, MATCH_HEAD, matchedText, MATCHING, NO_SNAP, untouchedText, WISH } from '../../text/matchText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { problemText } from '../../text/problemText.ts';
import './match.css';
import { Matches } from './Matches.tsx';
import { useMatch } from './useMatch.ts';
import { atSpec, effortSpec, ownWish } from './wish.ts';

interface Props {
  readonly assessment: Assessment;
  /** The assessment is of the joint before, until the solver has answered. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** A wish for how hard it pushes back, or snaps, and what would meet it. */
export function MatchEffort({ assessment: a, isWorking, unit, onUse }: Props) {
  const [wish, setWish] = useState<EffortWanted>();
  const { answer: found, trouble, again } = useMatch(a, wish, isWorking);
  // What was found for the joint before is not to be put in the place of this one.
  const answer = isWorking ? undefined : found;
  const section = useRef<HTMLElement>(null);
  const own = ownWish(a);
  const shown = wish ?? own;
  const isLooking = wish !== undefined && answer === undefined && trouble === undefined;
  return (
    <section className="tuned matched" aria-label={MATCH_HEAD} tabIndex={-1} ref={section}>
      <h2 className="h">
        {MATCH_HEAD}
        <span className="aside">{MATCH_AID}</span>
      </h2>
      {shown && <Wish {...{ a, unit }} wish={shown} onWish={setWish} />}
      <div className="match-answer" aria-busy={isLooking}>
        <output className="vh">{answer?.ok ? matchedText(answer.value.matches.length) : ''}</output>
        {!wish && <p className="none">{shown ? untouchedText(shown.at === 'snap') : NO_SNAP}</p>}
        {isLooking && <p className="none">{MATCHING}</p>}
        {answer?.ok && wish && (
          <Matches
            before={a}
            answer={answer.value}
            at={wish.at}
            unit={unit}
            onUse={(next, said) => {
              // What was pressed goes with the way that is taken: whoever goes by keys is left at the wish.
              section.current?.focus({ preventScroll: true });
              onUse(next, said);
            }}
          />
        )}
        {answer && !answer.ok && <p className="refusal">{problemText(answer.problems[0], unit)}</p>}
        <BrokenOff trouble={trouble} again={again} />
      </div>
    </section>
  );
}

interface WishProps {
  readonly a: Assessment;
  readonly wish: EffortWanted;
  readonly onWish: (next: EffortWanted) => void;
  readonly unit: LengthUnit;
}

/** “I want it to push back 20 N·mm at 30°.” */
function Wish({ a, wish, onWish, unit }: WishProps) {
  const effort = effortSpec(a, wish, onWish, unit);
  const mark = <Mark kind={a.provenance.effort} about="effort" />;
  if (wish.at === 'snap') {
    return (
      <Sentence className="use">
        {WISH.snaps} <Live spec={effort} stop="." />
        {mark}
      </Sentence>
    );
  }
  return (
    <Sentence className="use">
      {WISH.pushes} <Live spec={effort} />
      {mark} {WISH.at} <Live spec={atSpec(a, wish.at, wish, onWish, unit)} stop="." />
    </Sentence>
  );
}
