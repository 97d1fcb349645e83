import { useMemo } from 'react';
import { PointTable } from '../../charts/PointTable.tsx';
import { cycleStops, twoFigures } from '../../charts/stops.ts';
import { LogFigure } from '../../filaments/LogFigure.tsx';
import { grouped, percent } from '../../text/numbers.ts';
import { LEARNED_FIGURE, learnedNote, learnedReading, stripWords } from '../../text/testsCurveText.ts';
import { Told } from '../Told.tsx';
import type { Trial } from '../trial.ts';
import type { BeforeAfter } from '../useAnswer.ts';
import { LearnedPlot } from './LearnedPlot.tsx';
import { learnedPlan, spreadsAt, type LearnedPlan } from './learnedPlan.ts';

const isDecade = (at: number) => Number.isInteger(Math.log10(at));

/** The figure for those who do not see it: both curves by decades, and every strip. */
function Tables({ plan }: { readonly plan: LearnedPlan }) {
  const rows = cycleStops(plan.domain.cycles)
    .filter((at) => isDecade(at))
    .flatMap((at) => {
      const { before, after } = spreadsAt(plan, at);
      if (!before) return [];
      const both = after ? [before, after] : [before];
      return [[grouped(at), ...both.flatMap(({ low, half, high }) => [low, half, high].map((one) => percent(one)))]];
    });
  const heads = LEARNED_FIGURE.heads.slice(0, plan.after ? 7 : 4);
  return (
    <>
      <PointTable caption={LEARNED_FIGURE.table} heads={heads} rows={rows} />
      {plan.strips.length > 0 && (
        <PointTable
          caption={LEARNED_FIGURE.stripTable}
          heads={LEARNED_FIGURE.stripHeads}
          rows={plan.strips.map(({ cycles, strain, ended, isOdd }, at) => [
            String(at + 1),
            grouped(cycles),
            percent(strain),
            stripWords(ended, isOdd),
          ])}
        />
      )}
    </>
  );
}

interface Props {
  readonly trial: Trial;
  readonly answers: BeforeAfter;
}

/** Fig. 2: what the counts make of the curve. */
export function LearnedCurve({ trial, answers }: Props) {
  const plan = useMemo(() => learnedPlan(trial, answers), [trial, answers]);
  const read = (at: number) => {
    const { before, after } = spreadsAt(plan, at);
    return {
      text: learnedReading(at, before, after),
      heights: [before, after].flatMap((one) => (one ? [one.half] : [])),
    };
  };
  const { number, name, nameBefore, aid, how } = LEARNED_FIGURE;
  return (
    <section className="learned-curve" aria-label={`Fig. ${number}`}>
      <LogFigure
        number={number}
        name={plan.after ? name : nameBefore}
        aid={aid}
        how={how}
        x={plan.domain.cycles}
        y={plan.domain.strain}
        up="log"
        right={() => 14}
        stops={cycleStops(plan.domain.cycles)}
        start={1000}
        snap={twoFigures}
        read={read}
        renderPlot={(frame, narrow) => <LearnedPlot {...{ plan, frame, narrow }} />}
      >
        <p className="chart-note">
          <Told said={learnedNote(answers.before, plan.after && answers.after, trial.prior)} />
        </p>
        <Tables plan={plan} />
      </LogFigure>
    </section>
  );
}
