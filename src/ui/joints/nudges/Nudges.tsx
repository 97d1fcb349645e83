import { useMemo, useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { BrokenOff } from '../BrokenOff.tsx';
import { nudgesOf } from '../../../core/design/nudges.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { NUDGES_AID, NUDGES_HEAD, NUDGES_SAY, nudgedText, nudgingText } from '../../text/nudgeText.ts';
import { NudgeTable } from './NudgeTable.tsx';
import './nudges.css';
import { useNudges, type Told } from './useNudges.ts';
import { useSeen } from './useSeen.ts';

interface Props {
  readonly assessment: Assessment;
  /** The assessment is of the joint before, until the solver has answered. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
}

/** What one line, a tenth of a millimetre, a degree or another filament does to a joint. */
export function Nudges({ assessment: a, isWorking, unit }: Props) {
  const [isSeen, place] = useSeen();
  const nudges = useMemo(() => nudgesOf(a.joint), [a.joint]);
  const { told, trouble, share, again } = useNudges(a, isSeen && !isWorking);
  const [last, setLast] = useState<Told>();
  if (told && told !== last) setLast(told);
  // Until its own have come, those of the joint as it was a moment ago, paler.
  const isOfThis = last?.before.joint.id === a.joint.id && last.nudged.length === nudges.length;
  const shown = told ?? (isOfThis ? last : undefined);
  const isBusy = told === undefined && trouble === undefined;
  return (
    <section className="tuned nudged" aria-label={NUDGES_HEAD} ref={place}>
      <h2 className="h">
        {NUDGES_HEAD}
        <span className="aside">{NUDGES_AID}</span>
      </h2>
      <div aria-busy={isBusy}>
        <NudgeTable assessment={a} nudges={nudges} told={shown} unit={unit} />
      </div>
      <output className="vh">{told && a.travel === undefined ? nudgedText(nudges.length) : ''}</output>
      <p className="small">{isBusy ? nudgingText(share) : NUDGES_SAY}</p>
      <BrokenOff trouble={trouble} again={again} />
    </section>
  );
}
