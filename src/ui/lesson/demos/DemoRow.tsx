import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Demo, Letter } from '../../../core/lesson/demos/demo.ts';
import { standingOf } from '../../../core/lesson/demos/standing.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { gridOf } from '../../drawing/ground.ts';
import { MarksView } from '../../drawing/MarksView.tsx';
import { NO_MARKS, together } from '../../drawing/marks.ts';
import { FRAME, type Sheet } from '../../drawing/sheet.ts';
import { DEMO, lifeShort, STANDS } from '../../text/lessonDemoText.ts';
import type { DemoWords, Told } from '../../text/lessonDemoWords.ts';
import { length, percent, type LengthUnit } from '../../text/numbers.ts';
import type { Step } from './demoState.ts';
import { MovedPicture, stopsFor } from '../MovedPicture.tsx';
import { filmOf, type Picture } from '../picture.ts';
import { RootInset } from './RootInset.tsx';
import { lengthMarks, turnMarks } from './rowMarks.ts';

interface Props {
  readonly demo: Demo;
  readonly words: DemoWords;
  readonly told: Told;
  readonly letter: Letter;
  readonly at: number;
  readonly a: Assessment;
  readonly drawn: Assessment | undefined;
  readonly sheet: Sheet | undefined;
  readonly level: Step;
  readonly share: number;
  /** Room right of the picture; 0 where it is read under it [px]. */
  readonly beside: number;
}

/** One joint of a demonstration: its picture, and what is read of it. */
export function DemoRow(props: Props) {
  const { letter, sheet, a, told, words, at, level, beside } = props;
  const also = words.also?.(a, told, at);
  return (
    <li className="demo-row" style={beside > 0 ? { gridTemplateColumns: `minmax(0, 1fr) ${beside}px` } : undefined}>
      {sheet && <RowPicture {...props} sheet={sheet} />}
      <div className="demo-read">
        <p className="demo-varies">
          <span className="vh">{letter}: </span>
          {level > 1 && words.varies(a, told, at)}
        </p>
        {level > 2 && (
          <>
            <p className="demo-strain">
              {percent(a.strain.peak)}
              <MarkShape kind={a.provenance.strain} />
            </p>
            <p className="demo-stands">{STANDS[standingOf(a)]}</p>
            {also !== undefined && <p className="demo-also">{also}</p>}
          </>
        )}
        {level > 3 && (
          <p className="demo-life">
            {lifeShort(a)}
            {!a.joint.movement.held && <MarkShape kind={a.provenance.life} />}
          </p>
        )}
      </div>
    </li>
  );
}

function RowPicture({ demo, told, letter, a, drawn, sheet, level, share }: Props & { readonly sheet: Sheet }) {
  const film = useMemo(() => drawn && filmOf(drawn), [drawn]);
  const picture = useMemo(() => film && { posed: film.posed, now: film.stateAt(share) }, [film, share]);
  const grid = useMemo(() => gridOf({ ...sheet, bottom: sheet.bottom + FRAME }), [sheet]);
  const { width, top, bottom } = sheet;
  const letterAt = { x: 18, y: 0 };
  return (
    <svg
      className={level === 1 ? 'lesson-picture no-strain' : 'lesson-picture'}
      aria-hidden="true"
      width={width}
      height={bottom - top}
      viewBox={`0 ${top} ${width} ${bottom - top}`}
    >
      <path className="G" d={grid.fine} />
      <path className="G5" d={grid.heavy} />
      {picture && <Moved {...{ demo, picture, a, sheet, level, share }} unit={told.unit} />}
      {!picture && (
        <text className="t2" x={width / 2} y={top + 24} textAnchor="middle">
          {DEMO.coming}
        </text>
      )}
      <g
        className={letter === 'B' ? 'lesson-letter own' : 'lesson-letter'}
        transform={`translate(${letterAt.x} ${letterAt.y})`}
      >
        <circle r="11" />
        <text y="5" textAnchor="middle">
          {letter}
        </text>
      </g>
    </svg>
  );
}

interface MovedProps extends Pick<Props, 'demo' | 'a' | 'level' | 'share'> {
  readonly picture: Picture;
  readonly sheet: Sheet;
  readonly unit: LengthUnit;
}

function Moved({ demo, picture, a, sheet, level, share, unit }: MovedProps) {
  const { posed } = picture;
  const marks = level > 1 ? marksOf(demo, picture, a, sheet, unit) : { marks: NO_MARKS, centre: '' };
  return (
    <>
      <MovedPicture picture={picture} sheet={sheet} isPlain={level === 1} />
      <path className="Ca" d={marks.centre} />
      <MarksView marks={marks.marks} />
      {demo.looksAtRoot === true && (
        <RootInset a={posed.a} stops={stopsFor(posed.a)} {...{ sheet, share }} withStrain={level > 1} />
      )}
    </>
  );
}

/** Length under the leaf and angle beyond its tip, of what rolls to an arc; pencil where a handle governs it. */
function marksOf(demo: Demo, picture: Picture, a: Assessment, sheet: Sheet, unit: LengthUnit) {
  if (!a.travel) return { marks: NO_MARKS, centre: '' };
  const { posed } = picture;
  const lowest = Math.min(...posed.pads.flatMap(({ moves, loops }) => (moves ? [] : loops.flat().map(({ y }) => y))));
  const isHandle = (key: string) => demo.handles.some((handle) => handle.key === key);
  const turn = turnMarks(sheet, picture, a, isHandle('angle'));
  const told = { from: 0, to: a.length, text: length(a.length, unit, unit === 'mm' ? 1 : 3) };
  return {
    marks: together(lengthMarks(sheet, told, lowest, isHandle('length')), turn.marks),
    centre: turn.centre,
  };
}
