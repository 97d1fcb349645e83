/** What rows of tallies have alike, whatever was measured. */
import type { Tally } from '../../../core/material/tally.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { WordsField } from '../../filaments/own/WordsField.tsx';
import { ROLE } from '../../filaments/tableRoles.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { SAID_OF, TALLY } from '../../text/testsTallyText.ts';
import { changeTally } from '../spools.ts';
import type { Spool } from '../trial.ts';

/** The mark of what the user has measured. */
export function Yours() {
  return (
    <span className="pv-still">
      <MarkShape kind="measured" />
      <span className="vh">{TALLY.yours}</span>
    </span>
  );
}

/** What deserves another look, and what is not counted in. */
export function Standing({ tally, odd }: { readonly tally: Tally; readonly odd: boolean }) {
  if (tally.leftOut) return <small className="standing">{TALLY.out}</small>;
  if (!odd) return null;
  return (
    <small className="standing caution">
      <VerdictShape grade="caution" /> {TALLY.odd}
    </small>
  );
}

interface SeenProps {
  readonly spool: Spool;
  readonly tally: Tally;
  /** “Strip 2”. */
  readonly name: string;
  readonly unit: LengthUnit;
}

/** What was seen, and on which day. */
export function SeenCell({ spool, tally, name, unit }: SeenProps) {
  const see = (seen: string) => void changeTally(spool, { ...tally, seen }, SAID_OF.seen(name), { unit });
  return (
    <td {...ROLE.cell} className="seen">
      <WordsField
        label={`${TALLY.seen}, ${name.toLowerCase()}`}
        words={tally.seen}
        asks={TALLY.seenAsks}
        onChange={see}
      />
      <small>{tally.date}</small>
    </td>
  );
}
