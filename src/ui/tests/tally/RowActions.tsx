import type { Tally } from '../../../core/material/tally.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { SAID_OF, TALLY, tallyText } from '../../text/testsTallyText.ts';
import { changeTally, removeTally } from '../spools.ts';
import type { Spool } from '../trial.ts';

interface Props {
  readonly spool: Spool;
  readonly tally: Tally;
  /** “Strip 2”. */
  readonly name: string;
  readonly unit: LengthUnit;
}

function withoutMark({ leftOut: _gone, ...tally }: Tally): Tally {
  return tally;
}

/** What can be done with a tally that is written down: it is set aside, brought back or removed. */
export function RowActions({ spool, tally, name, unit }: Props) {
  const isOut = tally.leftOut === true;
  const aside = () => {
    const next = isOut ? withoutMark(tally) : ({ ...tally, leftOut: true } as Tally);
    changeTally(spool, next, isOut ? SAID_OF.back(name) : SAID_OF.aside(name), { unit });
  };
  return (
    <span className="row-acts">
      <button
        type="button"
        className="b quiet"
        aria-label={`${isOut ? TALLY.back : TALLY.aside}: ${name}`}
        onClick={aside}
      >
        {isOut ? TALLY.back : TALLY.aside}
      </button>
      <button
        type="button"
        className="b quiet"
        aria-label={`${TALLY.remove}: ${name}`}
        onClick={() => removeTally(spool, tally.id, SAID_OF.removed(name, tallyText(tally, unit)))}
      >
        {TALLY.remove}
      </button>
    </span>
  );
}
