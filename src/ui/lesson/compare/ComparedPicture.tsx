import { useMemo } from 'react';
import type { Letter } from '../../../core/lesson/demos/demo.ts';
import { gridOf } from '../../drawing/ground.ts';
import { FRAME, type Sheet } from '../../drawing/sheet.ts';
import { COMPARE } from '../../text/compareText.ts';
import { MovedPicture } from '../MovedPicture.tsx';
import type { Film } from '../picture.ts';

interface Props {
  readonly letter: Letter;
  readonly name: string;
  readonly film: Film | undefined;
  readonly sheet: Sheet;
}

/** One joint at the scale of all: as printed, and as it is moved, with its strain. */
export function ComparedPicture({ letter, name, film, sheet }: Props) {
  const picture = useMemo(() => film && { posed: film.posed, now: film.stateAt(1) }, [film]);
  const grid = useMemo(() => gridOf({ ...sheet, bottom: sheet.bottom + FRAME }), [sheet]);
  const { width, top, bottom } = sheet;
  return (
    <svg
      className="lesson-picture"
      role="img"
      aria-label={`${letter}, ${name}`}
      width={width}
      height={bottom - top}
      viewBox={`0 ${top} ${width} ${bottom - top}`}
    >
      <path className="G" d={grid.fine} />
      <path className="G5" d={grid.heavy} />
      {picture && <MovedPicture picture={picture} sheet={sheet} />}
      {!picture && (
        <text className="t2" x={width / 2} y={(top + bottom) / 2} textAnchor="middle">
          {COMPARE.coming}
        </text>
      )}
    </svg>
  );
}
