import { useCallback, useMemo, useState } from 'react';
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { shownText, SHOWN } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { limitsSaid } from './brushBars.ts';
import { groupsOf, isOpen, isThrough, keyOf, OPEN, type Brush } from './designs.ts';
import { EffortStrip } from './EffortStrip.tsx';
import { FoundList } from './FoundList.tsx';
import { FoundSources } from './FoundSources.tsx';
import { NearestMisses } from './NearestMisses.tsx';
import { searchKey } from './searching.ts';
import { TradeOff } from './TradeOff.tsx';
import { useFound } from './useFound.ts';
import { useHeld } from './useHeld.ts';
import type { Reached } from './useOpened.ts';
import type { Search } from './useSearch.ts';
import { WhyShort } from './WhyShort.tsx';

interface Props {
  readonly search: Search;
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  readonly onWant: (next: Wanted) => void;
}

const NOTHING: FindAnswer = {
  tried: 0,
  total: 0,
  share: 0,
  impossible: 0,
  meets: 0,
  designs: [],
  failed: [],
  isDone: false,
};

/** What the bars let through, as long as the brief is the same. */
function useBrush(wanted: Wanted) {
  const of = searchKey(wanted);
  const [kept, keep] = useState<{ readonly of: string; readonly brush: Brush }>({ of, brush: OPEN });
  const brush = kept.of === of ? kept.brush : OPEN;
  return [brush, useCallback((next: Brush) => keep({ of, brush: next }), [of])] as const;
}

/** What was found, drawn and listed, and why the rest fell short. */
export function Results({ search, wanted, unit, onWant }: Props) {
  const now = search.answer ?? NOTHING;
  const { answer, isWaiting, onHold } = useHeld(now, searchKey(wanted));
  const [brush, setBrush] = useBrush(wanted);
  const [picked, pick] = useState<string>();
  const [reached, reach] = useState<Reached>();
  const found = useFound();
  const all = useMemo(() => now.designs.map((design) => ({ key: keyOf(design.joint), design })), [now]);
  const through = useMemo(() => all.filter(({ design }) => isThrough(design.figures, brush)), [all, brush]);
  const groups = useMemo(
    () => groupsOf(answer.designs.filter(({ figures }) => isThrough(figures, brush))),
    [answer, brush],
  );
  const limits = limitsSaid(brush, wanted.measure, unit);
  const isNone = now.isDone && now.designs.length === 0;
  const common = { wanted, unit, found, onWant };
  const drawn = { wanted, unit, all, brush, onBrush: setBrush, picked };
  return (
    <div className="find-results" aria-busy={search.isOld}>
      <div className="find-figures">
        <TradeOff {...drawn} groups={groups} onPick={pick} onOpen={(key) => reach({ key })} />
        <p className="shown">
          {all.length > 0 && shownText(through.length, all.length, limits)}{' '}
          {!isOpen(brush) && <QuietButton onClick={() => setBrush(OPEN)}>{SHOWN.all}</QuietButton>}
        </p>
        <EffortStrip {...drawn} />
      </div>
      <div className="find-list">
        {isNone ? (
          <NearestMisses answer={now} {...common} />
        ) : (
          <FoundList
            groups={groups}
            answer={answer}
            measure={wanted.measure}
            unit={unit}
            found={found}
            picked={picked}
            onPick={pick}
            reached={reached}
            onHold={onHold}
            isWaiting={isWaiting}
            onShowAll={() => setBrush(OPEN)}
          />
        )}
      </div>
      <div className="find-why">
        <WhyShort answer={now} withMisses={!isNone} {...common} />
        <FoundSources />
      </div>
    </div>
  );
}
