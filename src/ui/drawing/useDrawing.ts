import { useCallback, useEffect, useMemo, useRef, useState, type RefObject } from 'react';
import type { LengthUnit } from '../text/numbers.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Phase } from './Handle.tsx';
import { within, type Reach } from './reach.ts';
import { scaleText, type Sheet } from './sheet.ts';
import { usePlay } from './usePlay.ts';
import { usePxPerMm } from './usePxPerMm.ts';
import { useReducedMotion } from './useReducedMotion.ts';
import { useWidth } from './useWidth.ts';

/** What any drawing of a joint is given. */
export interface DrawingProps {
  readonly assessment: Assessment;
  /** How far it is moved as a share of the wanted amount; below 0 the other way, past 1 where there is more to show. */
  readonly bent: number;
  readonly unit: LengthUnit;
  readonly onBent: (share: number) => void;
  /** A size dragged or stepped: `live` while it is held, `done` when it is let go. */
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
  /** Told the scale of the drawing, for the title block. */
  readonly onScale: (text: string) => void;
}

/** The button that moves a joint through its travel, or shows both ends of it where nothing may move by itself. */
export interface MoveButton {
  readonly label: string;
  /** Of a button that stays down until it is pressed again. */
  readonly isPressed: boolean | undefined;
  readonly onMove: () => void;
}

interface Asked<L extends { readonly sheet: Sheet }, H> extends Pick<DrawingProps, 'bent' | 'onBent' | 'onScale'> {
  /** Lays the sheet out; must stay the same function while what is drawn stays the same. */
  readonly layOut: (width: number, pxPerMm: number, held?: H) => L;
  /** What of a sheet is kept while a handle is dragged, so that the drawing does not run away from the hand. */
  readonly heldOf: (layout: L) => H;
  readonly reach: Reach;
}

/** A drawing on the page: its layout at the width that there is, and how far it is shown moved. */
export interface Drawing<L> {
  readonly frame: RefObject<HTMLElement | null>;
  readonly width: number;
  readonly pxPerMm: number;
  readonly setPxPerMm: (pxPerMm: number) => void;
  readonly layout: L | undefined;
  readonly scale: string;
  /** Share of the wanted amount that is shown. */
  readonly share: number;
  /** Whether rest and full travel stand side by side. */
  readonly isPair: boolean;
  readonly move: MoveButton;
  readonly onHold: (isHeld: boolean) => void;
}

/** Between the two drawings that stand side by side [px]. */
const GAP = 20;
const TWO_ABREAST_FROM = 620;

export function useDrawing<L extends { readonly sheet: Sheet }, H>(asked: Asked<L, H>): Drawing<L> {
  const { layOut, heldOf, reach, bent, onBent, onScale } = asked;
  const [frame, width] = useWidth<HTMLElement>();
  const [pxPerMm, setPxPerMm] = usePxPerMm();
  const [isPair, setPair] = usePairing();
  const { playing, toggle } = usePlay((share) => onBent(share * reach.to));
  const sheetWidth = isPair === true && width >= TWO_ABREAST_FROM ? Math.floor((width - GAP) / 2) : width;
  const [layout, onHold] = useHeldLayout(layOut, heldOf, sheetWidth, pxPerMm);
  const scale = layout ? scaleText(layout.sheet.scale) : '';
  useEffect(() => {
    if (scale !== '') onScale(scale);
  }, [scale, onScale]);
  return {
    frame,
    width,
    pxPerMm,
    setPxPerMm,
    layout,
    scale,
    share: within(reach, playing === undefined ? bent : playing * reach.to),
    isPair: isPair === true,
    move: {
      label: isPair !== undefined ? 'Side by side' : playing === undefined ? 'Move it' : 'Stop',
      isPressed: isPair,
      onMove: isPair === undefined ? toggle : () => setPair(!isPair),
    },
    onHold,
  };
}

/** Whether rest and full travel are shown side by side; undefined where the joint is moved instead. */
function usePairing(): [boolean | undefined, (isPair: boolean) => void] {
  const [isPair, setPair] = useState(false);
  return [useReducedMotion() ? isPair : undefined, setPair];
}

/** The layout for a width, and what to call when a handle is taken and let go: the sheet stays as it is in between. */
function useHeldLayout<L, H>(
  layOut: Asked<L & { readonly sheet: Sheet }, H>['layOut'],
  heldOf: (layout: L) => H,
  width: number,
  pxPerMm: number,
): [L | undefined, (isHeld: boolean) => void] {
  const [held, setHeld] = useState<H>();
  const layout = useMemo(() => (width > 0 ? layOut(width, pxPerMm, held) : undefined), [layOut, width, pxPerMm, held]);
  const current = useRef<L>(undefined);
  useEffect(() => {
    current.current = layout;
  }, [layout]);
  const onHold = useCallback(
    (isHeld: boolean) => setHeld(isHeld && current.current ? heldOf(current.current) : undefined),
    [heldOf],
  );
  return [layout, onHold];
}
