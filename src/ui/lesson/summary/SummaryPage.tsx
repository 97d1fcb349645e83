import { useEffect } from 'react';
import type { Joint } from '../../../core/design/joint.ts';
import { useChoices } from '../../../store/choices.ts';
import { useSession } from '../../../store/session.ts';
import { SolverTrouble } from '../../joints/SolverTrouble.tsx';
import { useCurrentJoint } from '../../joints/useCurrentJoint.ts';
import { useSolved } from '../../joints/useSolved.ts';
import { useProblemSaid } from '../../text/problemSaid.ts';
import { SUMMARY } from '../../text/summaryText.ts';
import { REFUSED_HEADING } from '../../text/verdictText.ts';
import type { LessonAddress } from '../route.ts';
import { SummaryBar } from './SummaryBar.tsx';
import { SummarySheet } from './SummarySheet.tsx';

/** The sheet of a joint, once all is known that stands on it. */
function OneSheet({ joint }: { readonly joint: Joint }) {
  const part = useSession((state) => state.part.name);
  const unit = useChoices((state) => state.unit);
  const say = useProblemSaid();
  const { assessed, isWorking, trouble, tryAgain } = useSolved(joint);
  useEffect(() => {
    // What is printed into a file takes its name from here.
    document.title = `${SUMMARY.page(joint.name)}, ${part}: Bendbook`;
  }, [joint.name, part]);
  if (!assessed.ok) {
    return (
      <div className="summary-says">
        <h2>{REFUSED_HEADING}</h2>
        {assessed.problems.map((problem) => (
          <p key={`${problem.code} ${problem.field ?? ''}`}>{say(problem, unit)}</p>
        ))}
      </div>
    );
  }
  return (
    <>
      {trouble !== undefined && <SolverTrouble message={trouble} onTryAgain={tryAgain} />}
      <output className="summary-says">{isWorking ? SUMMARY.working : ''}</output>
      {!isWorking && (
        <SummarySheet
          key={`${joint.id} ${unit} ${String(assessed.value.solved !== undefined)}`}
          assessment={assessed.value}
          part={part}
          unit={unit}
        />
      )}
    </>
  );
}

/** A joint on one sheet of paper, A4 or Letter. */
export default function SummaryPage({ address }: { readonly address: LessonAddress }) {
  const joints = useSession((state) => state.part.joints);
  const open = useCurrentJoint();
  const joint = address.of === '' ? open : joints.find(({ id }) => id === address.of);
  return (
    <main className="page-place summary-place" aria-label={SUMMARY.title}>
      <SummaryBar joints={joints} joint={joint} />
      {joint ? (
        <OneSheet key={joint.id} joint={joint} />
      ) : (
        <p className="summary-says">{joints.length === 0 ? SUMMARY.noJoint : SUMMARY.gone(address.of)}</p>
      )}
    </main>
  );
}
