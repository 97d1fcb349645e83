import type { Tally, TallyKind } from '../../../core/material/tally.ts';
import type { Learned, LearnedFigure } from '../../../core/tallies/learned.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { ValueField } from '../../controls/ValueField.tsx';
import { WordsField } from '../../filaments/own/WordsField.tsx';
import { ROLE } from '../../filaments/tableRoles.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { HEADS, madeWith, oneOf, SAID_OF, TALLY } from '../../text/testsTallyText.ts';
import { changeTally, learned } from '../spools.ts';
import type { Spool } from '../trial.ts';
import { mainField } from './mainField.ts';
import { RowActions } from './RowActions.tsx';

interface Props {
  readonly spool: Spool;
  readonly kind: Exclude<TallyKind, 'flexes'>;
  readonly unit: LengthUnit;
}

/** Those of a row that stand far from the others, whatever they told. */
function isOdd(told: Learned, { id }: Tally): boolean {
  const { life: _life, ...figures } = told;
  return Object.values(figures as Record<string, LearnedFigure<unknown>>).some(({ odd }) =>
    odd.some((one) => one.id === id),
  );
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
  const spec = mainField(tally, {
    name,
    unit,
    put: (next, now, was, run) => changeTally(spool, next, SAID_OF.changed(name, now, was), { unit, run }),
  });
  const see = (seen: string) => void changeTally(spool, { ...tally, seen }, SAID_OF.seen(name), { unit });
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
          <span className="pv-still">
            <MarkShape kind="measured" />
            <span className="vh">{TALLY.yours}</span>
          </span>
          {tally.leftOut && <small className="standing">{TALLY.out}</small>}
          {odd && !tally.leftOut && (
            <small className="standing caution">
              <VerdictShape grade="caution" /> {TALLY.odd}
            </small>
          )}
        </td>
        <td {...ROLE.cell} className="seen">
          <WordsField
            label={`${TALLY.seen}, ${name.toLowerCase()}`}
            words={tally.seen}
            asks={TALLY.seenAsks}
            onChange={see}
          />
          <small>{tally.date}</small>
        </td>
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
            <Row key={tally.id} {...{ spool, tally, unit }} number={at + 1} odd={isOdd(told, tally)} />
          ))}
      </tbody>
    </table>
  );
}
