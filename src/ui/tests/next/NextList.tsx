import { useMemo } from 'react';
import type { Piece } from '../../../core/coupons/piece.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { LifeNow, NextTest } from '../../../core/tallies/nextTest.ts';
import { useSpread } from '../../../store/spread.ts';
import { useDoubt } from '../../life/sure/useDoubt.ts';
import { percent, type LengthUnit } from '../../text/numbers.ts';
import { candidateName, costText, gainText, NEXT } from '../../text/testsNextText.ts';
import type { Made } from '../pieces.ts';
import type { Trial } from '../trial.ts';
import { Unbroken } from '../Unbroken.tsx';
import { NextBar } from './NextBar.tsx';
import { proposed } from './proposed.ts';
import { setUp } from './setUp.ts';

interface Props {
  readonly trial: Trial;
  readonly made: Made;
  readonly answer: Assessment | undefined;
  readonly unit: LengthUnit;
}

/** As many as read well; the others are folded up. */
const FIRST_FEW = 5;

/** One draw, so that the list does not change by itself. */
const SEED = 1;

interface RowProps {
  readonly trial: Trial;
  readonly pieces: readonly Piece[];
  readonly a: Assessment;
  readonly test: NextTest;
  readonly now: LifeNow;
  readonly rank: number;
  readonly unit: LengthUnit;
}

function Row({ trial, pieces, a, test, now, rank, unit }: RowProps) {
  const name = candidateName(test.candidate, unit);
  const most = a.life.maxReportableCycles;
  const tellsLife = test.doubt.now > test.doubt.after;
  return (
    <li>
      <span className="rank">{rank}</span>
      <h3>{name}</h3>
      <button
        type="button"
        className="b"
        aria-label={NEXT.setUpOf(name)}
        onClick={() => setUp(test.candidate, trial, pieces)}
      >
        {NEXT.setUp}
      </button>
      {tellsLife && <NextBar {...{ now, test, most }} wanted={a.joint.movement.cycles} />}
      <p>
        <Unbroken text={gainText(test, most)} />{' '}
        <span className="costs">
          <Unbroken text={costText(test)} />
        </span>
      </p>
    </li>
  );
}

function List({ trial, made, a, unit }: Omit<Props, 'answer'> & { readonly a: Assessment }) {
  const { spread, samples, how } = useSpread();
  const doubt = useDoubt(a, { spread, samples, how, seed: SEED });
  const answer = doubt.answer?.ok ? doubt.answer.value : undefined;
  const { prior, spool } = trial;
  const { pieces, asked } = made;
  const found = useMemo(
    () => answer && proposed({ prior, spool }, { pieces, asked }, a, answer),
    [prior, spool, pieces, asked, a, answer],
  );
  if (!found)
    return (
      <p className="waiting" aria-busy={doubt.isWorking}>
        {doubt.isWorking ? NEXT.working : NEXT.stopped}
      </p>
    );
  if (found.tests.length === 0) return <p>{NEXT.none}</p>;
  const row = (test: NextTest, at: number) => (
    <Row
      key={candidateName(test.candidate, unit)}
      {...{ trial, pieces, a, test, unit }}
      now={found.now}
      rank={at + 1}
    />
  );
  const rest = found.tests.slice(FIRST_FEW);
  return (
    <>
      <ol aria-busy={doubt.isWorking}>{found.tests.slice(0, FIRST_FEW).map(row)}</ol>
      {rest.length > 0 && (
        <details className="others">
          <summary>{NEXT.more(rest.length)}</summary>
          <ol>{rest.map((test, at) => row(test, FIRST_FEW + at))}</ol>
        </details>
      )}
    </>
  );
}

/** What to test next: what would make the joint surest, by how much, and at what price. */
export function NextList({ trial, made, answer, unit }: Props) {
  return (
    <section className="next-tests" aria-label={NEXT.heading}>
      <h2 className="h">
        {NEXT.heading}
        {answer && <span className="aside">{NEXT.aside(percent(answer.strain.peak))}</span>}
      </h2>
      {answer ? <List {...{ trial, made, unit }} a={answer} /> : <p>{NEXT.noJoint}</p>}
    </section>
  );
}
