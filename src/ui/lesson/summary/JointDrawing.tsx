import { useId } from 'react';
import { BentOutline } from '../../drawing/BentOutline.tsx';
import { MarksView } from '../../drawing/MarksView.tsx';
import { runsPath } from '../../drawing/paths.ts';
import { movedMembers, movingPads, padTransform, planesIn } from '../../drawing/solved/movedPaths.ts';
import { PrintedLayer } from '../../drawing/solved/PrintedLayer.tsx';
import type { ArcDrawn } from './arcDrawn.ts';
import type { JointDrawn } from './drawings.ts';
import type { SolvedDrawn } from './solvedDrawn.ts';

const MOVED = 'summary-moved';
/** Dashed lines tell nothing of strain. */
const NO_STRAIN = { repeated: 1, yield: 10, full: 20 };

function Arc({ drawn: { figure, sheet, keepOut, isMoved } }: { readonly drawn: ArcDrawn }) {
  return (
    <>
      <path className="summary-printed" d={runsPath(sheet, [figure.points], true)} />
      {keepOut !== '' && <path className="K" d={keepOut} />}
      {isMoved && <BentOutline figure={figure} sheet={sheet} fraction={1} className={MOVED} />}
      {isMoved && figure.otherEnd !== 0 && (
        <BentOutline figure={figure} sheet={sheet} fraction={figure.otherEnd} className={MOVED} />
      )}
    </>
  );
}

function Answered({ drawn: { scene, sheet, moved } }: { readonly drawn: SolvedDrawn }) {
  const id = useId();
  return (
    <>
      <PrintedLayer scene={scene} sheet={sheet} id={id} />
      {moved && (
        <g>
          {movingPads(scene, sheet).map(({ pad, d }, i) => (
            // oxlint-disable-next-line react/no-array-index-key -- the pads of a scene never change places
            <path key={i} className={MOVED} d={d} transform={padTransform(sheet, pad, moved)} />
          ))}
          {planesIn(scene).map((plane) => (
            <path key={plane} className={MOVED} d={movedMembers(scene, sheet, moved, NO_STRAIN, plane).plain} />
          ))}
        </g>
      )}
    </>
  );
}

/** A joint at its scale, its size in px of 1/96 in, as a print has them. */
export function JointDrawing({ drawn, label }: { readonly drawn: JointDrawn; readonly label: string }) {
  const { x, y, width, height } = drawn.box;
  return (
    <svg
      className={drawn.is}
      width={width}
      height={height}
      viewBox={`${x} ${y} ${width} ${height}`}
      role="img"
      aria-label={label}
    >
      {drawn.is === 'arc' ? <Arc drawn={drawn} /> : <Answered drawn={drawn} />}
      {drawn.centre !== '' && <path className="C" d={drawn.centre} />}
      <MarksView marks={drawn.marks} />
    </svg>
  );
}
