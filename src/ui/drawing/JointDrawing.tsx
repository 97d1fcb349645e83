import { useCallback, useMemo } from 'react';
import { describeFigure, meetFigure, rowFigure, VIEWS } from '../text/drawingText.ts';
import { DrawingFrame } from './DrawingFrame.tsx';
import { layOut, type HeldLayout, type Layout } from './layout.ts';
import { padsMeetAt } from './padsMeet.ts';
import { Scrubber } from './Scrubber.tsx';
import { LAID } from './figure.ts';
import { SheetView } from './SheetView.tsx';
import { scaleText } from './sheet.ts';
import { useDrawing, type DrawingProps } from './useDrawing.ts';

/** An arc is drawn from rest to the wanted amount, and no further. */
const REACH = { from: 0, to: 1 };
const CALLED = { now: 'Fig. 1, the joint at rest and as bent', full: 'Fig. 1, the joint at full travel' };

const heldOf = ({ sheet, placed, figure }: Layout): HeldLayout => ({ sheet, placed, cut: figure.cut });

/** Fig. 1 of a joint that rolls to an arc: at true scale, at rest and as bent, with its dimensions. */
export function JointDrawing({ assessment, bent, unit, onBent, onSize, onScale }: DrawingProps) {
  const layOutOn = useCallback(
    (width: number, pxPerMm: number, held?: HeldLayout) => layOut(assessment, width, pxPerMm, unit, held),
    [assessment, unit],
  );
  const drawing = useDrawing({ layOut: layOutOn, heldOf, reach: REACH, bent, onBent, onScale });
  const { layout, share, move } = drawing;
  const said = useMemo(() => (layout ? wordsOf(layout) : ''), [layout]);
  const notes = useMemo(() => (layout ? notesOf(layout) : []), [layout]);
  return (
    <DrawingFrame
      {...{ drawing, notes, onSize }}
      className="drawing"
      view={VIEWS[LAID[assessment.joint.profile.lying]]}
      inks="ink: as printed; pencil: as bent"
      called={CALLED}
      renderSheet={(at, label, handling) =>
        layout && <SheetView layout={layout} fraction={at} label={label} description={said} {...handling} />
      }
      scrubber={<Scrubber assessment={assessment} fraction={share} onBent={onBent} move={move} />}
    />
  );
}

function wordsOf({ a, figure, sheet, unit }: Layout): string {
  return describeFigure(a, figure.laid, scaleText(sheet.scale), unit);
}

function notesOf({ a, figure, unit }: Layout) {
  const row = rowFigure(a, unit);
  const meets = meetFigure(padsMeetAt(figure), a, unit);
  return [
    ...(row === '' ? [] : [row]),
    ...(meets === ''
      ? []
      : [
          <b key="meets" className="meets">
            {meets}
          </b>,
        ]),
  ];
}
