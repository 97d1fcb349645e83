import type { Tally, TallyKind } from '../../../core/material/tally.ts';
import { isOddIn } from '../../../core/tallies/learned.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { ValueField } from '../../controls/ValueField.tsx';
import { ROLE } from '../../filaments/tableRoles.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { HEADS, madeWith, oneOf, PULL, SAID_OF, TALLY } from '../../text/testsTallyText.ts';
import { changeTally, learned } from '../spools.ts';
import type { Spool } from '../trial.ts';
import { mainField, stiffnessField, type Of } from './mainField.ts';
import { SeenCell, Standing, Yours } from './cells.tsx';
import { RowActions } from './RowActions.tsx';

interface Props {
  readonly spool: Spool;
  readonly kind: Exclude<TallyKind, 'flexes'>;
  readonly unit: LengthUnit;
}

function Row({
  spool,
  tally,
  number,
  odd,
  unit,
}: Omit<Props, 'kind'> & { tally: Tally; number: number; odd: boolean }) {
  const { place, message } = useRefusals();
  const name = oneOf(tally.kind, number);
  const of: Of = {
    name,
    unit,
    put: (next, now, was, run) => changeTally(spool, next, SAID_OF.changed(name, now, was), { unit, run }),
  };
  const spec = mainField(tally, of);
  const stiffness = stiffnessField(tally, of);
  return (
    <SentenceContext value={place}>
      <tr {...ROLE.row} className={tally.leftOut ? 'out' : odd ? 'odd' : undefined}>
        <th {...ROLE.head} scope="row">
          {number}
        </th>
        <td {...ROLE.cell} className="made">
          {madeWith(tally, unit)}
        </td>
        <td {...ROLE.cell} className="what">
          {'options' in spec ? <ChoiceField spec={spec} /> : <ValueField spec={spec} />}
          <Yours />
          {stiffness && (
            <>
              {' '}
              <span className="nw">
                {PULL.beside} <ValueField spec={stiffness} />
                <Yours />
              </span>
            </>
          )}
          <Standing tally={tally} odd={odd} />
        </td>
        <SeenCell {...{ spool, tally, name, unit }} />
        <td {...ROLE.cell} className="does">
          <RowActions {...{ spool, tally, name, unit }} />
          <Refusal id={place.refusalId} message={message} />
        </td>
      </tr>
    </SentenceContext>
  );
}

/** Everything of one kind that was measured on a spool. */
export function OtherTable({ spool, kind, unit }: Props) {
  const told = learned(spool);
  const heads = [...HEADS[kind], TALLY.seen, TALLY.does];
  return (
    <table {...ROLE.table} className="tally-table">
      <caption className="vh">{`${TALLY.heading}: ${HEADS[kind][0]}`}</caption>
      <thead {...ROLE.group}>
        <tr {...ROLE.row}>
          {heads.map((head) => (
            <th {...ROLE.column} scope="col" key={head}>
              {head === TALLY.does ? <span className="vh">{head}</span> : head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody {...ROLE.group}>
        {spool.own.tests.tallies
          .filter((tally) => tally.kind === kind)
          .map((tally, at) => (
            <Row key={tally.id} {...{ spool, tally, unit }} number={at + 1} odd={isOddIn(told, tally)} />
          ))}
      </tbody>
    </table>
  );
}
