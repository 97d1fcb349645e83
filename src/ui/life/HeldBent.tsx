import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { holdAnswer } from '../../core/design/hold.ts';
import { SaidText } from '../joints/SaidText.tsx';
import { AS_HELD, HELD_BENT, heldSaid, IF_HELD } from '../text/heldText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { problemText } from '../text/problemText.ts';
import { HeldPlot } from './HeldPlot.tsx';

/** What is left of its push while it is held bent, and what stays when it is let go; refused where it is too warm to tell. */
export function HeldBent({ assessment: a, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const answer = useMemo(() => holdAnswer(a), [a]);
  return (
    <>
      <h3 className="h">
        {HELD_BENT}
        <span className="aside">{a.joint.movement.held ? AS_HELD : IF_HELD}</span>
      </h3>
      {answer.ok ? (
        <>
          {heldSaid(a, answer.value, unit).map((said, at) => (
            <p key={at} className="says-so">
              <SaidText said={said} />
            </p>
          ))}
          <HeldPlot a={a} hold={answer.value} unit={unit} />
        </>
      ) : (
        <p className="says-so">{answer.problems.map((problem) => problemText(problem, unit)).join(' ')}</p>
      )}
      {answer.ok &&
        answer.notes.map((note) => (
          <p key={note.code} className="small">
            {problemText(note, unit)}
          </p>
        ))}
    </>
  );
}
