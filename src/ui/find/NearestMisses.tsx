import type { FindAnswer, Miss } from '../../core/find/findAnswer.ts';
import { LIST } from '../text/foundText.ts';
import { DesignRow } from './DesignRow.tsx';
import { keyOf } from './designs.ts';
import { MissActions, noneSaid, type MissProps } from './MissLine.tsx';

/** The nearest of all first, then the nearest of each reason; none twice. */
export function nearestMisses({ closest, failed }: Pick<FindAnswer, 'closest' | 'failed'>): readonly Miss[] {
  const all = [closest, ...failed.map(({ nearest }) => nearest)].filter((miss) => miss !== undefined);
  const keys = all.map(({ joint }) => keyOf(joint));
  return all.filter((_, at) => keys.indexOf(keys[at] ?? '') === at);
}

/** Where nothing meets the brief: what comes nearest to it, and the one change of the brief that admits it. */
export function NearestMisses({ answer, ...of }: Omit<MissProps, 'miss'> & { readonly answer: FindAnswer }) {
  return (
    <section className="found-list none" aria-label={`${LIST.nothing}: ${LIST.nearest}`}>
      <h3 className="h">
        {LIST.nothing}
        <span className="aside">{LIST.nearest}</span>
      </h3>
      <ol>
        {nearestMisses(answer).map((miss) => (
          <DesignRow
            key={keyOf(miss.joint)}
            joint={miss.joint}
            figures={miss.figures}
            measure={of.wanted.measure}
            unit={of.unit}
            below={<span className="miss-says">{noneSaid(miss, of)}</span>}
          >
            <MissActions miss={miss} {...of} />
          </DesignRow>
        ))}
      </ol>
    </section>
  );
}
