import { useMemo } from 'react';
import type { PartPicture as Picture } from '../../core/inspect/picture/picture.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { useChoices } from '../../store/choices.ts';
import { through } from '../drawing/sheet.ts';
import { passedName, sectionName } from '../text/inspectText.ts';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { cutWhere, MESH_FIGURES, pictureLabel, pictureScale, sectionItem } from '../text/meshFigureText.ts';
import { Balloon } from './Balloon.tsx';
import { BalloonKey } from './BalloonKey.tsx';
import { sectionOf, useChecked } from './checked.ts';
import { choose, usePartCheck } from './partCheck.ts';
import { placeBalloons } from './placeBalloons.ts';
import { Tones } from './Tones.tsx';
import { usePicture } from './usePicture.ts';

/** Room about the picture for balloons and the marks of the cut [px]. */
const ABOUT = 44;

/** In the place of a number: what was passed over has none. */
const PASSED = 0;

/** Whether there is plastic at a place of the picture [px]. */
function plasticAt({ tones }: Picture, pxPerMm: number): (at: Point) => boolean {
  const by = tones.pixelsPerMm / pxPerMm;
  return ({ x, y }) => {
    const [column, row] = [Math.round(x * by) + tones.margin, Math.round(y * by) + tones.margin];
    const isIn = column >= 0 && row >= 0 && column < tones.width && row < tones.height;
    return isIn && tones.pixels[row * tones.width + column] !== 0;
  };
}

/** The ends of the cut. */
function cutEnds(points: readonly Point[]) {
  const [first, ...others] = points;
  if (!first) return [];
  const left = others.reduce((a, b) => (b.x < a.x ? b : a), first);
  const right = others.reduce((a, b) => (b.x > a.x ? b : a), first);
  return [
    { at: left, side: -1 },
    { at: right, side: 1 },
  ];
}

/** Where their marks are drawn. */
const cutBoxes = (points: readonly Point[]) =>
  cutEnds(points).map(({ at: { x, y }, side }) => ({ x: x + side * 16 - 12, y: y - 38, width: 24, height: 42 }));

/** Arrows at both ends of the cut, looking the way in which it is seen. */
function CutMarks({ points, letter }: { readonly points: readonly Point[]; readonly letter: string }) {
  return (
    <g>
      {cutEnds(points).map(({ at, side }) => {
        const x = at.x + side * 22;
        return (
          <g key={side}>
            <path className="cut-end" d={`M${at.x + side * 8} ${at.y}h${side * 16}`} />
            <path className="L" d={`M${x} ${at.y - 20}V${at.y - 3}`} />
            <path className="I" d={`M${x} ${at.y - 1}l-1.8-9h3.6Z`} />
            <text className="tb halo" x={x} y={at.y - 24} textAnchor="middle">
              {letter}
            </text>
          </g>
        );
      })}
    </g>
  );
}

interface DrawnProps {
  readonly picture: Picture;
  readonly width: number;
  readonly pxPerMm: number;
  /** Of the section that is shown on it. */
  readonly letter: string;
}

function Drawn({ picture, width, pxPerMm, letter }: DrawnProps) {
  const { judged, chosen, values, unit } = useChecked();
  const theme = useChoices((state) => state.theme);
  const { placing, lines, marks, tones } = picture;
  const [wide, high] = [placing.width * pxPerMm, placing.height * pxPerMm];
  const left = Math.max(0, Math.round((width - wide) / 2));
  const px = ({ x, y }: Point) => ({ x: x * pxPerMm, y: y * pxPerMm });
  const traced = useMemo(
    () =>
      lines
        .filter(({ kind }) => kind === 'trace')
        .flatMap(({ points }) => points.map(({ x, y }) => ({ x: x * pxPerMm, y: y * pxPerMm }))),
    [lines, pxPerMm],
  );
  const pointed = usePartCheck((state) => state.pointed);
  const balloons = useMemo(() => {
    const numbers = [...judged.map(({ flexure }) => flexure.number), ...(pointed === undefined ? [] : [PASSED])];
    const spots = numbers.map((number, i) => {
      const { x, y } = marks[number === PASSED ? i + (pointed ?? 0) : i] ?? { x: 0, y: 0 };
      return { number, box: { x: x * pxPerMm - 3, y: y * pxPerMm - 3, width: 6, height: 6 } };
    });
    const room = { x: 4 - left, y: 4 - ABOUT, width: width - 8, height: high + 2 * ABOUT - 8 };
    return placeBalloons(spots, room, plasticAt(picture, pxPerMm), cutBoxes(traced));
  }, [judged, pointed, marks, traced, picture, pxPerMm, left, width, high]);
  const d = (kind: 'silhouette' | 'edge' | 'trace') =>
    lines
      .filter((line) => line.kind === kind)
      .map(({ points }) => through(points.map(px)))
      .join('');
  return (
    <div className="drawn" style={{ width, height: high + 2 * ABOUT }}>
      <div className="tones" style={{ left, top: ABOUT, width: wide, height: high }}>
        <Tones key={theme} tones={tones} pxPerMm={pxPerMm} />
      </div>
      <svg
        width={width}
        height={high + 2 * ABOUT}
        viewBox={`${-left} ${-ABOUT} ${width} ${high + 2 * ABOUT}`}
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- none of those tags is a drawing that holds buttons
        role="group"
        aria-label={pictureLabel(judged.length)}
      >
        <g aria-hidden="true">
          <path className="L" d={d('edge')} />
          <path className="cut-level" d={d('trace')} />
          <path className="silhouette" d={d('silhouette')} />
          {traced.length > 0 && <CutMarks points={traced} letter={letter} />}
          {balloons.map(({ number, from }, i) => {
            const mark = marks[number === PASSED ? i + (pointed ?? 0) : i];
            if (!mark) return null;
            const to = px(mark);
            return (
              <g key={number} className={mark.isHidden ? 'leader hidden' : 'leader'}>
                <path className="L" d={through([from.balloon, to])} />
                <circle className="I" cx={to.x} cy={to.y} r={2.2} />
              </g>
            );
          })}
        </g>
        {balloons.map(({ number, x, y }) => {
          if (number === PASSED)
            return <Balloon key={number} x={x} y={y} text={passedName(pointed ?? 0)} isOn={false} isPassed />;
          const one = judged.find(({ flexure }) => flexure.number === number);
          return (
            one && (
              <BalloonKey
                key={number}
                number={number}
                label={sectionItem(one, values.as.scale, unit)}
                onChoose={choose}
              >
                <Balloon x={x} y={y} text={String(number)} isOn={number === chosen} />
              </BalloonKey>
            )
          );
        })}
      </svg>
    </div>
  );
}

/** Fig. 1: the part as it lies on the plate, with every thin section numbered on it. */
export function PartPicture() {
  const checked = useChecked();
  const [ref, width] = useWidth<HTMLElement>();
  const [pxPerMm] = usePxPerMm();
  const one = checked.judged.find(({ flexure }) => flexure.number === checked.chosen);
  const picture = usePicture(one && sectionOf(checked, one), width, pxPerMm);
  return (
    <figure className="part-picture" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 1</b> {MESH_FIGURES.picture}
          {picture && (
            <>
              , scale <b className="nw">{pictureScale(picture.placing.scale)}</b> of the file, depth halved
            </>
          )}
        </span>
        {one && <span>{cutWhere(one.flexure.section)}</span>}
      </figcaption>
      {picture ? (
        <Drawn {...{ picture, width, pxPerMm }} letter={sectionName(one?.flexure.section ?? 0)} />
      ) : (
        <div className="drawn coming" />
      )}
    </figure>
  );
}
