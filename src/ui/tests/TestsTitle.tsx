import type { Assessment } from '../../core/design/assessment.ts';
import { KeptCell, MarksCell } from '../app/TitleCells.tsx';
import { grouped, percent } from '../text/numbers.ts';
import { TESTS } from '../text/testsText.ts';
import type { Trial } from './trial.ts';

interface Props {
  readonly trial: Trial;
  readonly answer: Assessment | undefined;
}

/** The block at the foot of this place: what is tested, for what, and what to heed. */
export function TestsTitle({ trial: { row, spool }, answer }: Props) {
  const where = spool?.own.tests.printer;
  return (
    <footer className="title of-tests">
      <div className="what">
        <small>{TESTS.testing}</small>
        {row.name}
        {where && `, ${where}`}
        {spool?.own.tests.spool === TESTS.inventedSpool && ` (${TESTS.invented})`}
      </div>
      <div className="against">
        <small>{TESTS.for}</small>
        {answer
          ? `${answer.joint.name}, ${percent(answer.strain.peak)}, ${grouped(answer.joint.movement.cycles)} times`
          : TESTS.noJoint}
      </div>
      <MarksCell className="key-marks end" />
      <div className="caution-words last">
        <small>Read this</small>
        {TESTS.sureness}
      </div>
      <KeptCell className="where last end" />
    </footer>
  );
}
