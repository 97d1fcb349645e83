import { useCallback, useEffect, useMemo, useRef, useState, type ComponentProps } from 'react';
import './drawing.css';
import type { Assessment } from '../../core/design/assessment.ts';
import { describeFigure, meetFigure, rowFigure, VIEWS } from '../text/drawingText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { Phase } from './Handle.tsx';
import { layOut, type HeldLayout, type Layout } from './layout.ts';
import { padsMeetAt } from './padsMeet.ts';
import { Scrubber } from './Scrubber.tsx';
import { SheetView } from './SheetView.tsx';
import { scaleText } from './sheet.ts';
import { TrueScale } from './TrueScale.tsx';
import { usePlay } from './usePlay.ts';
import { usePxPerMm } from './usePxPerMm.ts';
import { useReducedMotion } from './useReducedMotion.ts';
import { useWidth } from './useWidth.ts';

interface Props {
  readonly assessment: Assessment;
  /** How far it is bent, 0 to 1 of the wanted angle. */
  readonly bent: number;
  readonly unit: LengthUnit;
  readonly onBent: (fraction: number) => void;
  /** A size dragged or stepped: `live` while it is held, `done` when it is let go. */
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
  /** Told the scale of the drawing, for the title block. */
  readonly onScale?: (text: string) => void;
}

type Handling = Pick<ComponentProps<typeof SheetView>, 'onSize' | 'onHold'>;

/** Between the two drawings that stand side by side [px]. */
const GAP = 20;
const TWO_ABREAST_FROM = 620;

/** Fig. 1: one joint at true scale, at rest and as bent, with its dimensions, and the scale that moves it. */
export function JointDrawing({ assessment, bent, unit, onBent, onSize, onScale }: Props) {
  const [frame, width] = useWidth<HTMLElement>();
  const [pxPerMm, setPxPerMm] = usePxPerMm();
  const [isChecking, setChecking] = useState(false);
  const [isTwofold, setTwofold] = useState(false);
  const isStill = useReducedMotion();
  const { playing, toggle } = usePlay(onBent);
  const [held, setHeld] = useState<HeldLayout>();

  // Other shapes than an arc are not drawn bent.
  const moves = assessment.travel !== undefined;
  const isPair = isStill && isTwofold && moves;
  const sheetWidth = isPair && width >= TWO_ABREAST_FROM ? Math.floor((width - GAP) / 2) : width;
  const layout = useMemo(
    () => (sheetWidth > 0 ? layOut(assessment, sheetWidth, pxPerMm, unit, held) : undefined),
    [assessment, sheetWidth, pxPerMm, unit, held],
  );
  const current = useRef<Layout>(undefined);
  useEffect(() => {
    current.current = layout;
  }, [layout]);
  const onHold = useCallback((isHeld: boolean) => {
    const now = current.current;
    setHeld(isHeld && now ? { sheet: now.sheet, placed: now.placed, cut: now.figure.cut } : undefined);
  }, []);

  const scale = layout ? scaleText(layout.sheet.scale) : '';
  useEffect(() => {
    if (scale !== '') onScale?.(scale);
  }, [scale, onScale]);

  const fraction = moves ? (playing ?? bent) : 0;
  const row = rowFigure(assessment, unit);
  const meets = useMemo(
    () => meetFigure(layout && moves ? padsMeetAt(layout.figure) : undefined, assessment, unit),
    [layout, moves, assessment, unit],
  );
  const said = layout ? describeFigure(assessment, layout.figure.laid, scale, unit) : '';
  const view = (at: number, label: string, handles: Handling = { onSize, onHold }) =>
    layout && <SheetView layout={layout} fraction={at} label={label} description={said} {...handles} />;
  return (
    <figure className="drawing" ref={frame}>
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> {layout && VIEWS[layout.figure.laid]}, scale <b className="nw">{scale}</b>; grid 1 mm
          {row === '' ? '' : `; ${row}`}
          {meets !== '' && (
            <>
              ; <b className="meets">{meets}</b>
            </>
          )}
        </span>
        <span>
          {moves ? 'ink: as printed; pencil: as bent' : 'drawn as printed'}{' '}
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
          {view(1, 'Fig. 1, the joint at full travel', {})}
        </div>
      ) : (
        view(fraction, moves ? 'Fig. 1, the joint at rest and as bent' : 'Fig. 1, the joint at rest')
      )}
      {moves && (
        <Scrubber
          assessment={assessment}
          fraction={fraction}
          onBent={onBent}
          moveLabel={isStill ? 'Side by side' : playing === undefined ? 'Move it' : 'Stop'}
          isPressed={isStill ? isTwofold : undefined}
          onMove={isStill ? () => setTwofold(!isTwofold) : toggle}
        />
      )}
    </figure>
  );
}
