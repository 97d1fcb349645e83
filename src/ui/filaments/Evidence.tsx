import type { Standing } from '../../core/design/acrossFilaments.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { strengthOf } from '../../core/material/evidence.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { evidenceHead, evidenceText, jointSays } from '../text/filamentText.ts';
import { WithJumps } from './WithJumps.tsx';

/** How well its life is known, and how it would bear the open joint. */
export function Evidence({ row, a, standing }: { row: WholeFilament; a?: Assessment; standing?: Standing }) {
  const grade = strengthOf(row.life.certainty) === 'strong' ? 'pass' : 'caution';
  return (
    <section className={`sure verdict ${grade}`} aria-label="The evidence">
      <h2>
        <VerdictShape grade={grade} />
        {evidenceHead(row)}
      </h2>
      <p>{evidenceText(row)}</p>
      {a && standing && (
        <p className="at-joint">
          <WithJumps text={jointSays(row, standing, a.joint.name, a.joint.movement.cycles)} />
        </p>
      )}
    </section>
  );
}
