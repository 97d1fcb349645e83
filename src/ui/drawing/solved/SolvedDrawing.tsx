import { useCallback, useEffect, useMemo, useRef, useState, type ComponentProps } from 'react';
import '../drawing.css';
import './solved.css';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Solved } from '../../../core/design/solved.ts';
import { VIEWS } from '../../text/drawingText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { besideFigure, OUT_OF_SIGHT } from '../../text/solvedDrawingText.ts';
import { LAID } from '../figure.ts';
import type { Phase } from '../Handle.tsx';
import { scaleText } from '../sheet.ts';
import { TrueScale } from '../TrueScale.tsx';
import { usePlay } from '../usePlay.ts';
import { usePxPerMm } from '../usePxPerMm.ts';
import { useReducedMotion } from '../useReducedMotion.ts';
import { useWidth } from '../useWidth.ts';
import { descriptionOf } from './description.ts';
import { isStrainInPlane, readingOf } from './reading.ts';
import { sceneOf } from './scene.ts';
import { layOutSolved, type HeldSheet, type SolvedLayout } from './solvedLayout.ts';
import { SolvedScrubber } from './SolvedScrubber.tsx';
import { SolvedSheet } from './SolvedSheet.tsx';
import { stateAt } from './state.ts';
import { ThreeStates } from './ThreeStates.tsx';
import { travelledOf } from './travelled.ts';

interface Props {
  readonly assessment: Assessment;
  /** How far it is moved as a share of the wanted amount; below 0 the other way, past 1 where its second rest lies there. */
  readonly bent: number;
  readonly unit: LengthUnit;
  readonly onBent: (fraction: number) => void;
  /** A size dragged or stepped: `live` while it is held, `done` when it is let go. */
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
  /** Told the scale of the drawing, for the title block. */
  readonly onScale?: (text: string) => void;
}

type Handling = Pick<ComponentProps<typeof SolvedSheet>, 'onSize' | 'onHold'>;

/** A drawing taller than this has its scrubber above it, where the first screen ends [px]. */
const TALL = 420;
const GAP = 20;
const TWO_ABREAST_FROM = 620;

/** Fig. 1 of a joint that the solver has answered; one that it has not is nothing to draw. */
export function SolvedDrawing(props: Props) {
  const { solved } = props.assessment;
  return solved ? <Drawing {...props} solved={solved} /> : null;
}

function Drawing({ assessment, solved, bent, unit, onBent, onSize, onScale }: Props & { readonly solved: Solved }) {
  const [frame, width] = useWidth<HTMLElement>();
  const [pxPerMm, setPxPerMm] = usePxPerMm();
  const [isChecking, setChecking] = useState(false);
  const [isTwofold, setTwofold] = useState(false);
  const [held, setHeld] = useState<HeldSheet>();
  const isStill = useReducedMotion();
  const scene = useMemo(() => sceneOf(assessment, solved), [assessment, solved]);
  const travelled = useMemo(() => travelledOf(assessment, solved), [assessment, solved]);
  const { playing, toggle } = usePlay((share) => onBent((share * travelled.to) / travelled.wanted));

  const isPair = isStill && isTwofold;
  const sheetWidth = isPair && width >= TWO_ABREAST_FROM ? Math.floor((width - GAP) / 2) : width;
  const layout = useMemo(
    () => (sheetWidth > 0 ? layOutSolved(scene, travelled, sheetWidth, pxPerMm, unit, held) : undefined),
    [scene, travelled, sheetWidth, pxPerMm, unit, held],
  );
  const current = useRef<SolvedLayout>(undefined);
  useEffect(() => {
    current.current = layout;
  }, [layout]);
  const onHold = useCallback((isHeld: boolean) => {
    const now = current.current;
    setHeld(isHeld && now ? { sheet: now.sheet, placed: now.placed, legend: now.legend } : undefined);
  }, []);
  const scale = layout ? scaleText(layout.sheet.scale) : '';
  useEffect(() => {
    if (scale !== '') onScale?.(scale);
  }, [scale, onScale]);

  const asked = playing === undefined ? bent * travelled.wanted : playing * travelled.to;
  const amount = Math.min(travelled.to, Math.max(travelled.from, asked));
  const state = useMemo(() => stateAt(solved, amount), [solved, amount]);
  const reading = readingOf(assessment, state);
  const laid = LAID[assessment.joint.profile.lying];
  const said = useMemo(() => (layout ? descriptionOf(layout, laid) : ''), [layout, laid]);
  const view = (at: number, label: string, handles: Handling = { onSize, onHold }) => {
    const here = at === amount ? state : stateAt(solved, at);
    const { strain } = at === amount ? reading : readingOf(assessment, here);
    return layout && <SolvedSheet {...{ layout, strain, label }} state={here} description={said} {...handles} />;
  };
  const scrubber = (
    <SolvedScrubber
      a={assessment}
      {...{ travelled, amount, reading, unit }}
      onAmount={(to) => onBent(to / travelled.wanted)}
      moveLabel={isStill ? 'Side by side' : playing === undefined ? 'Move it' : 'Stop'}
      isPressed={isStill ? isTwofold : undefined}
      onMove={isStill ? () => setTwofold(!isTwofold) : toggle}
    />
  );
  const isTall = layout !== undefined && layout.sheet.bottom - layout.sheet.top > TALL;
  const also = [besideFigure(solved.network.alike), isStrainInPlane(assessment) ? '' : OUT_OF_SIGHT].filter(
    (text) => text !== '',
  );
  return (
    <figure className={isTall ? 'drawing solved tall' : 'drawing solved'} ref={frame}>
      {isTall && scrubber}
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> {VIEWS[laid]}, scale <b className="nw">{scale}</b>; grid 1 mm
          {also.map((text) => `; ${text}`)}
        </span>
        <span>
          ink: as printed; pencil: as moved{' '}
          <button
            type="button"
            className="b quiet check-scale"
            aria-expanded={isChecking}
            onClick={() => setChecking(!isChecking)}
          >
            true scale?
          </button>
        </span>
      </figcaption>
      {isChecking && (
        <TrueScale pxPerMm={pxPerMm} width={width} onUse={setPxPerMm} onClose={() => setChecking(false)} />
      )}
      {isPair ? (
        <div className="pair">
          {view(0, 'Fig. 1, the joint at rest')}
          {view(travelled.wanted, 'Fig. 1, the joint as far as wanted', {})}
        </div>
      ) : (
        view(amount, 'Fig. 1, the joint as printed and as moved')
      )}
      {!isTall && layout && scrubber}
      {layout && !isPair && <ThreeStates layout={layout} width={width} unit={unit} />}
    </figure>
  );
}
