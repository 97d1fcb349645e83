import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { LETTERS, type Demo } from '../../../core/lesson/demos/demo.ts';
import { scaleText } from '../../drawing/sheet.ts';
import { usePlay } from '../../drawing/usePlay.ts';
import { useReducedMotion } from '../../drawing/useReducedMotion.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { DEMO } from '../../text/lessonDemoText.ts';
import type { DemoWords, Told } from '../../text/lessonDemoWords.ts';
import type { Step } from './demoState.ts';
import { DemoRow } from './DemoRow.tsx';
import { roomOf } from './roomOf.ts';
import { INSET_ROOM } from './RootInset.tsx';
import { rowsPlan } from './rowPlan.ts';

interface Props {
  readonly demo: Demo;
  readonly words: DemoWords;
  readonly told: Told;
  readonly drawn: readonly (Assessment | undefined)[];
  readonly level: Step;
  readonly isWorking: boolean;
  readonly filled: boolean;
}

/** What stands beside a picture is this wide, unless the page is narrow: then it stands under it [px]. */
const BESIDE = 200;
const NARROW = 560;
/** From here on lettering is larger, as the style sheet says of such pages [px]. */
const WIDE = 1100;
/** Rows may take up this much of a screen's height, and so much at least [px]. */
const HIGH = { taken: 130, filled: 130, least: 620 } as const;

/** Stopped or not, it goes back to where its handles hold it. */
const noMatterWhere = () => undefined;

export function DemoFigure({ demo, words, told, drawn, level, isWorking, filled }: Props) {
  const [figure, width] = useWidth<HTMLElement>();
  const [nominal] = usePxPerMm();
  const beside = width >= NARROW ? Math.round(BESIDE * (filled ? 1.3 : width >= WIDE ? 1.15 : 1)) : 0;
  const room = width - beside;
  const tallest = Math.max(HIGH.least, window.innerHeight - (filled ? HIGH.filled : HIGH.taken));
  const plan = useMemo(() => {
    if (room <= 0) return undefined;
    return rowsPlan(roomOf(demo), room, tallest, nominal, demo.looksAtRoot === true ? INSET_ROOM : 0);
  }, [demo, room, tallest, nominal]);
  const { playing, toggle } = usePlay(noMatterWhere);
  const isStill = useReducedMotion();
  const share = (demo.shown?.(told.values) ?? 1) * (playing ?? 1);
  return (
    <figure className="demo-figure" ref={figure} aria-label={DEMO.picture} aria-busy={isWorking}>
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> {words.name}, {DEMO.scale} <b className="nw">{plan ? scaleText(plan.scale) : ''}</b>
        </span>
        {!isStill && (
          <button type="button" className="b quiet" onClick={toggle}>
            {playing === undefined ? DEMO.move : DEMO.stop}
          </button>
        )}
        <span>
          {DEMO.atRest}; {level === 1 ? DEMO.noColour : DEMO.colour}
        </span>
      </figcaption>
      <ol className="demo-rows">
        {told.answers.map((a, i) => {
          const sheet = plan?.sheets[i];
          return (
            <DemoRow
              // The joints of a demonstration keep their order, and each its letter.
              key={LETTERS[i]}
              letter={LETTERS[i] ?? 'A'}
              at={i}
              a={a}
              drawn={drawn[i]}
              sheet={sheet}
              beside={beside}
              {...{ demo, words, told, level, share }}
            />
          );
        })}
      </ol>
    </figure>
  );
}
