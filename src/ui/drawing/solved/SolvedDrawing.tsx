import { useCallback, useMemo } from 'react';
import './solved.css';
import type { Solved } from '../../../core/design/solved.ts';
import { VIEWS } from '../../text/drawingText.ts';
import { besideFigure, OUT_OF_SIGHT } from '../../text/solvedDrawingText.ts';
import { DrawingFrame } from '../DrawingFrame.tsx';
import { LAID } from '../figure.ts';
import type { SheetHandling } from '../SheetFrame.tsx';
import { useDrawing, type DrawingProps } from '../useDrawing.ts';
import { descriptionOf } from './description.ts';
import { isStrainInPlane, readingOf } from './reading.ts';
import { sceneOf, type Scene } from './scene.ts';
import { layOutSolved, type HeldSheet, type SolvedLayout } from './solvedLayout.ts';
import { SolvedScrubber } from './SolvedScrubber.tsx';
import { SolvedSheet } from './SolvedSheet.tsx';
import { stateAt } from './state.ts';
import { ThreeStates } from './ThreeStates.tsx';
import { reachOf, travelledOf } from './travelled.ts';

/** A drawing taller than this has its scrubber above it, where the first screen ends [px]. */
const TALL = 420;
const CALLED = { now: 'Fig. 1, the joint as printed and as moved', full: 'Fig. 1, the joint as far as wanted' };

const heldOf = ({ sheet, placed, legend }: SolvedLayout): HeldSheet => ({ sheet, placed, legend });

/** Fig. 1 of a joint that the solver has answered; one that it has not is nothing to draw. */
export function SolvedDrawing(props: DrawingProps) {
  const { solved } = props.assessment;
  return solved ? <Answered {...props} solved={solved} /> : null;
}

function Answered({ assessment, solved, ...props }: DrawingProps & { readonly solved: Solved }) {
  const { bent, unit, onBent, onSize, onScale } = props;
  const scene = useMemo(() => sceneOf(assessment, solved), [assessment, solved]);
  const travelled = useMemo(() => travelledOf(assessment, solved), [assessment, solved]);
  const reach = useMemo(() => reachOf(travelled), [travelled]);
  const layOut = useCallback(
    (width: number, pxPerMm: number, held?: HeldSheet) => layOutSolved(scene, travelled, width, pxPerMm, unit, held),
    [scene, travelled, unit],
  );
  const drawing = useDrawing({ layOut, heldOf, reach, bent, onBent, onScale });
  const { layout, share, move } = drawing;
  const laid = LAID[assessment.joint.profile.lying];
  const said = useMemo(() => (layout ? descriptionOf(layout, laid) : ''), [layout, laid]);

  const amount = share * travelled.wanted;
  const state = useMemo(() => stateAt(solved, amount), [solved, amount]);
  const reading = readingOf(assessment, state);
  const renderSheet = (at: number, label: string, handling: SheetHandling) => {
    const here = at === share ? state : stateAt(solved, at * travelled.wanted);
    const { strain } = at === share ? reading : readingOf(assessment, here);
    return layout && <SolvedSheet {...{ layout, strain, label, ...handling }} state={here} description={said} />;
  };
  return (
    <DrawingFrame
      {...{ drawing, renderSheet, onSize }}
      className="drawing solved"
      view={VIEWS[laid]}
      notes={notesOf(scene)}
      inks="ink: as printed; pencil: as moved"
      called={CALLED}
      isTall={layout !== undefined && layout.sheet.bottom - layout.sheet.top > TALL}
      scrubber={
        layout && (
          <SolvedScrubber
            a={assessment}
            {...{ travelled, amount, reading, unit, move }}
            onAmount={(to) => onBent(to / travelled.wanted)}
          />
        )
      }
    >
      {layout && <ThreeStates layout={layout} width={drawing.width} unit={unit} />}
    </DrawingFrame>
  );
}

function notesOf({ a, solved }: Scene): readonly string[] {
  const notes = [besideFigure(solved.network.alike), isStrainInPlane(a) ? '' : OUT_OF_SIGHT];
  return notes.filter((text) => text !== '');
}
