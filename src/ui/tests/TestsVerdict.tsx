import type { Joint } from '../../core/design/joint.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { useSession } from '../../store/session.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { gradeOf, RECKON, taughtElse, testsHeading, testsSaid } from '../text/testsVerdictText.ts';
import { alikeJoints, reckonBy } from './reckon.ts';
import { learned } from './spools.ts';
import { Told } from './Told.tsx';
import type { Trial } from './trial.ts';
import type { BeforeAfter } from './useAnswer.ts';

interface Props {
  readonly trial: Trial;
  readonly answers: BeforeAfter;
}

/** By what the joint is reckoned, and the way to reckon it by the tests. */
function Reckoned({ trial: { spool, prior }, joint }: Pick<Props, 'trial'> & { readonly joint: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const { filament } = joint.profile;
  if (!spool) return null;
  if (filament === spool.id) return <p className="chance">{RECKON.done(joint.name, spool.name)}</p>;
  const name = findFilament(filament)?.name ?? filament;
  const alike = alikeJoints(joints, prior);
  const isAlike = filament === prior.id;
  return (
    <>
      <p className="chance">{isAlike ? RECKON.not(joint.name, name) : RECKON.other(joint.name, name)}</p>
      <div className="row">
        <button type="button" className="b" onClick={() => reckonBy([joint], spool)}>
          {RECKON.by(joint.name)}
        </button>
        {isAlike && alike.length > 1 && (
          <button type="button" className="b quiet" onClick={() => reckonBy(alike, spool)}>
            {RECKON.all(alike.length, prior.name)}
          </button>
        )}
      </div>
    </>
  );
}

function Says({ trial, answers: { before, after } }: Props) {
  if (!trial.joint) return <p>{RECKON.none}</p>;
  if (!before) return <p>{RECKON.refused}</p>;
  const life = trial.spool && learned(trial.spool).life;
  const isElse = after && !life && (trial.spool?.own.tests.tallies.length ?? 0) > 0;
  return (
    <p>
      <Told said={isElse ? taughtElse(before, after) : testsSaid(before, after, life)} />
    </p>
  );
}

/** What the counts make of the joint, and whether it is reckoned by them. */
export function TestsVerdict({ trial, answers }: Props) {
  const { before, after } = answers;
  const grade = gradeOf(before, after);
  const isCounted = trial.spool !== undefined && learned(trial.spool).life !== undefined;
  return (
    <section className={`verdict ${grade}`} aria-label="Verdict" aria-live="polite">
      <h2>
        <VerdictShape grade={grade} />
        {before ? testsHeading(before, after, isCounted) : RECKON.none.split('.')[0]}
      </h2>
      <Says {...{ trial, answers }} />
      {trial.joint && <Reckoned trial={trial} joint={trial.joint} />}
    </section>
  );
}
