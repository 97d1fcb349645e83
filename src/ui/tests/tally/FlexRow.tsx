import type { CountedStrip } from '../../../core/tallies/learned.ts';
import type { FlexTally } from '../../../core/material/tally.ts';
import { TALLY_LIMITS } from '../../../core/tallies/tallyLimits.ts';
import { useTests } from '../../../store/tests.ts';
import { ChoiceField, type ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { ValueField } from '../../controls/ValueField.tsx';
import { cyclesStep } from '../../controls/settle.ts';
import { ROLE } from '../../filaments/tableRoles.ts';
import { grouped, type LengthUnit } from '../../text/numbers.ts';
import { COUNTER } from '../../text/testsText.ts';
import { oneOf, SAID_OF, TALLY } from '../../text/testsTallyText.ts';
import { numberSpec } from '../specs.ts';
import { changeTally } from '../spools.ts';
import type { Spool } from '../trial.ts';
import { Happened } from './Happened.tsx';
import { SeenCell, Standing, Yours } from './cells.tsx';
import { RowActions } from './RowActions.tsx';

interface Props {
  readonly spool: Spool;
  readonly tally: FlexTally;
  readonly number: number;
  /** What it has taught. */
  readonly counted: CountedStrip | undefined;
  readonly unit: LengthUnit;
}

function cyclesSpec({ spool, tally, number, unit }: Props) {
  const name = oneOf('flexes', number);
  return numberSpec({
    key: 'cycles',
    label: `${TALLY.bends}, ${name.toLowerCase()}`,
    kind: 'count',
    value: tally.cycles,
    ...TALLY_LIMITS.cycles,
    step: cyclesStep,
    unit,
    take: (cycles, now, was, run) => {
      if (cycles < tally.cycles && run === undefined)
        return `${COUNTER.fell(number, tally.cycles, cycles)} ${COUNTER.slip}`;
      return changeTally(spool, { ...tally, cycles }, SAID_OF.changed(name, now, was), { unit, run });
    },
  });
}

function endedSpec({ spool, tally, number, unit }: Props): ChoiceSpec {
  const name = oneOf('flexes', number);
  const words = { broke: TALLY.broke, whole: TALLY.whole } as const;
  return {
    key: 'ended',
    label: `${TALLY.happened}, ${name.toLowerCase()}`,
    value: tally.ended,
    options: (['broke', 'whole'] as const).map((value) => ({ value, text: words[value] })),
    take: (ended) => {
      const next = { ...tally, ended: ended as FlexTally['ended'] };
      return changeTally(spool, next, SAID_OF.changed(name, words[next.ended], words[tally.ended]), { unit });
    },
  };
}

/** One strip as it was counted: every figure is changed in place. */
export function FlexRow(props: Props) {
  const { spool, tally, number, counted, unit } = props;
  const { place, message } = useRefusals();
  const name = oneOf('flexes', number);
  const goOn = () => useTests.getState().set({ counting: { cycles: tally.cycles, from: tally.id } });
  return (
    <SentenceContext value={place}>
      <tr {...ROLE.row} className={tally.leftOut ? 'out' : counted?.isOdd ? 'odd' : undefined}>
        <th {...ROLE.head} scope="row">
          {number}
        </th>
        <td {...ROLE.cell} className="bends">
          <ValueField spec={cyclesSpec(props)} />
          <Yours />
        </td>
        <td {...ROLE.cell} className="what">
          <span className="as">
            <Happened what={tally.ended} />
            <ChoiceField spec={endedSpec(props)} />
          </span>
          <Standing tally={tally} odd={counted?.isOdd === true} />
        </td>
        <SeenCell {...{ spool, tally, name, unit }} />
        <td {...ROLE.cell} className="does">
          {tally.ended === 'whole' && !tally.leftOut && (
            <button
              type="button"
              className="b quiet"
              aria-label={`${TALLY.goOn}: ${name}, ${grouped(tally.cycles)}`}
              onClick={goOn}
            >
              {TALLY.goOn}
            </button>
          )}
          <RowActions {...{ spool, tally, name, unit }} />
          <Refusal id={place.refusalId} message={message} />
        </td>
      </tr>
    </SentenceContext>
  );
}
