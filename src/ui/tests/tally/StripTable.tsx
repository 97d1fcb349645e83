import { learned } from '../spools.ts';
import type { Trial } from '../trial.ts';
import { ROLE } from '../../filaments/tableRoles.ts';
import { grouped, type LengthUnit } from '../../text/numbers.ts';
import { LYING_WORDS, bendText } from '../../text/testsText.ts';
import { groupText, oneOf, TALLY } from '../../text/testsTallyText.ts';
import { FlexRow } from './FlexRow.tsx';
import { numberOf, type StripGroup } from './groups.ts';
import { Happened } from './Happened.tsx';

interface Props {
  readonly trial: Trial;
  readonly groups: readonly StripGroup[];
  readonly unit: LengthUnit;
}

/** The strip under the hand, as its row will read. */
function CountingRow({ cycles, number }: { readonly cycles: number; readonly number: number }) {
  return (
    <tr {...ROLE.row} className="counting">
      <th {...ROLE.head} scope="row">
        {number}
      </th>
      <td {...ROLE.cell} className="bends">
        {grouped(cycles)}
      </td>
      <td {...ROLE.cell} className="what" colSpan={3}>
        <span className="as">
          <Happened what="counting" />
          {TALLY.counting}
        </span>
      </td>
    </tr>
  );
}

function Group({ trial, group, isNow, unit }: Omit<Props, 'groups'> & { group: StripGroup; isNow: boolean }) {
  const { spool, values } = trial;
  const { counting } = values;
  const told = spool && learned(spool).life;
  const { bend, thickness, strain, lying } = group;
  const isFresh = isNow && counting && numberOf(group, counting.from) > group.strips.length;
  return (
    <tbody {...ROLE.group}>
      {!isNow && (
        <tr {...ROLE.row} className="group">
          <th {...ROLE.head} scope="rowgroup" colSpan={5}>
            {groupText(thickness, bendText(bend, unit), strain, unit, LYING_WORDS[lying])}
          </th>
        </tr>
      )}
      {spool &&
        group.strips.map((tally, at) =>
          tally.id === counting?.from ? (
            <CountingRow key={tally.id} cycles={counting.cycles} number={at + 1} />
          ) : (
            <FlexRow
              key={tally.id}
              {...{ spool, tally, unit }}
              number={at + 1}
              counted={told?.strips.find((one) => one.tally.id === tally.id)}
            />
          ),
        )}
      {isFresh && <CountingRow cycles={counting.cycles} number={group.strips.length + 1} />}
    </tbody>
  );
}

/** Every strip of the spool that was flexed, those of the trial first. */
export function StripTable({ trial, groups, unit }: Props) {
  return (
    <table {...ROLE.table} className="tally-table">
      <caption className="vh">{`${TALLY.heading}: ${oneOf('flexes', 1).replace(' 1', 's')}`}</caption>
      <thead {...ROLE.group}>
        <tr {...ROLE.row}>
          {[TALLY.strip, TALLY.bends, TALLY.happened, TALLY.seen, TALLY.does].map((head) => (
            <th {...ROLE.column} scope="col" key={head} className={head === TALLY.does ? 'does' : undefined}>
              {head === TALLY.does ? <span className="vh">{head}</span> : head}
            </th>
          ))}
        </tr>
      </thead>
      {groups.map((group, at) => (
        <Group key={group.key} {...{ trial, group, unit }} isNow={at === 0} />
      ))}
    </table>
  );
}
