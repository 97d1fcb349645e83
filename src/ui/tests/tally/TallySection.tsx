import type { ReactNode } from 'react';
import type { Tally } from '../../../core/material/tally.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { problemText } from '../../text/problemText.ts';
import { bendText, strainText, TESTS } from '../../text/testsText.ts';
import { countsText, emptyText, HEADS, oneOf, TALLY, tallyText } from '../../text/testsTallyText.ts';
import { addInvented } from '../invented.ts';
import { LearnedFigures } from '../learned/LearnedFigures.tsx';
import { learned } from '../spools.ts';
import type { Trial } from '../trial.ts';
import { Counter } from './Counter.tsx';
import { isFlexes } from './counting.ts';
import { groupsOf, numberOf } from './groups.ts';
import { OtherTable } from './OtherTable.tsx';
import { StripTable } from './StripTable.tsx';
import { TallyForm } from './TallyForm.tsx';

interface Props {
  readonly trial: Trial;
  readonly unit: LengthUnit;
}

interface SectionProps extends Props {
  /** The strip as it is bent; stands beside what is put in. */
  readonly figure: ReactNode;
}

function toPieces(): void {
  document.getElementById('test-pieces')?.querySelector<HTMLElement>('input:checked, input')?.focus();
}

function Empty({ trial }: Pick<Props, 'trial'>) {
  return (
    <div className="empty tally-empty">
      <p>{emptyText(trial.row.name, trial.values.doing)}</p>
      <div className="row">
        {trial.values.doing !== 'pull' && (
          <button type="button" className="b" onClick={toPieces}>
            {TESTS.toPieces}
          </button>
        )}
        <button type="button" className="b" onClick={() => addInvented(trial)}>
          {TESTS.tryInvented}
        </button>
      </div>
    </div>
  );
}

/** What else was told of this spool, in one line each kind. */
function Others({ tallies, unit }: { readonly tallies: readonly Tally[]; readonly unit: LengthUnit }) {
  if (tallies.length === 0) return null;
  return (
    <details className="others">
      <summary>
        {TALLY.other}: {tallies.length}
      </summary>
      <ul>
        {tallies.map((tally) => (
          <li key={tally.id}>
            {tally.kind === 'flexes' ? oneOf('flexes', 1).replace(' 1', '') : HEADS[tally.kind][0]}:{' '}
            {tallyText(tally, unit)} <small>{tally.date}</small>
          </li>
        ))}
      </ul>
    </details>
  );
}

function Flexed({ trial, unit, figure }: SectionProps) {
  const groups = groupsOf(trial);
  const [now] = groups;
  const { counting } = trial.values;
  const group = groups.find(({ strips }) => strips.some(({ id }) => id === counting?.from)) ?? now;
  const strip = numberOf(group, counting?.from);
  const hasRows = groups.some(({ strips }) => strips.length > 0) || counting !== undefined;
  return (
    <>
      {hasRows ? <StripTable {...{ trial, groups, unit }} /> : <Empty trial={trial} />}
      <div className="bench">
        <div>
          <Counter key={counting?.from ?? 'fresh'} {...{ trial, strip, unit }} />
          <TallyForm {...{ trial, unit }} number={now.strips.length + 1} />
        </div>
        {figure}
      </div>
    </>
  );
}

/** The tally of a spool in the form that fits what is done, and where more is put in. */
export function TallySection({ trial, unit, figure }: SectionProps) {
  const { spool, values, bend, thickness, strain } = trial;
  const { doing } = values;
  const tallies = spool?.own.tests.tallies ?? [];
  const [refused] = (spool && learned(spool).refused) ?? [];
  const mine = tallies.filter(({ kind }) => kind === doing);
  const others = tallies.filter(({ kind }) => kind !== doing);
  const strips = mine.filter(isFlexes).filter(({ leftOut }) => !leftOut);
  const broke = strips.filter(({ ended }) => ended === 'broke').length;
  return (
    <section className="tally" aria-label={TALLY.heading}>
      <h2 className="h">
        <span>
          {TALLY.heading}
          {doing === 'flexes' && `: strips ${bendText(bend, unit)}`}
          {spool?.own.tests.spool === TESTS.inventedSpool && <span className="invented">{TESTS.invented}</span>}
        </span>
        <span className="aside">{doing === 'flexes' ? strainText(thickness, bend, strain, unit) : ''}</span>
      </h2>
      {doing === 'flexes' ? (
        <Flexed {...{ trial, unit, figure }} />
      ) : (
        <>
          {spool && mine.length > 0 ? <OtherTable {...{ spool, unit }} kind={doing} /> : <Empty trial={trial} />}
          <LearnedFigures {...{ trial, unit }} />
          <div className="bench">
            <TallyForm key={doing} {...{ trial, unit }} number={mine.length + 1} />
            {figure}
          </div>
        </>
      )}
      {refused && (
        <p className="refusal" role="alert">
          {problemText(refused, unit)}
        </p>
      )}
      {strips.length > 0 && <p className="small">{countsText(broke, strips.length - broke)}</p>}
      <Others tallies={others} unit={unit} />
    </section>
  );
}
