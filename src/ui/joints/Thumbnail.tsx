import { memo } from 'react';
import { bounds, flatten } from '../../core/geometry/flatten.ts';
import type { Path } from '../../core/geometry/outline.ts';
import { MM_PER_INCH } from '../text/numbers.ts';

/** CSS pixels in one millimetre, as the standard has it. */
const PX_PER_MM = 96 / MM_PER_INCH;
/** Room in a cell of the strip beside its number; what is larger is cut off, never scaled. */
const ROOM = { width: 96, height: 40 };
const CHORD_ERROR = 0.01;

interface Props {
  /** Closed outlines of the undeformed joint [mm], holes the other way round. */
  readonly outline: readonly Path[];
}

function pathText(path: Path, left: number, top: number): string {
  const points = flatten(path, CHORD_ERROR).map(
    ({ x, y }) => `${((x - left) * PX_PER_MM).toFixed(2)} ${((top - y) * PX_PER_MM).toFixed(2)}`,
  );
  return `M${points.join('L')}Z`;
}

/** A break line down an edge where the joint goes on: the drawing sign for “cut here”. */
function breakLine(x: number, height: number): string {
  const middle = height / 2;
  return `M${x} 0V${middle - 4}L${x - 3} ${middle - 1.5}L${x + 3} ${middle + 1.5}L${x} ${middle + 4}V${height}`;
}

/** The joint’s silhouette, life size. */
export const Thumbnail = memo(function Thumbnail({ outline }: Props) {
  const { left, right, bottom, top } = bounds(outline);
  const full = { width: (right - left) * PX_PER_MM, height: (top - bottom) * PX_PER_MM };
  const width = Math.min(full.width, ROOM.width);
  const height = Math.min(full.height, ROOM.height);
  // Cut equally above and below, and on the right, so that one root is always seen.
  const drop = (full.height - height) / 2;
  const isCut = full.width > ROOM.width;
  const middle = (top + bottom) / 2;
  const isSeen = (path: Path) => {
    const box = bounds([path]);
    const [up, down] = [box.top - middle, middle - box.bottom].map((far) => far * PX_PER_MM);
    return (box.left - left) * PX_PER_MM < width && Math.min(up ?? 0, down ?? 0) > -height / 2;
  };
  return (
    <svg className="thumb" viewBox={`0 ${drop} ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <path
        className="I"
        d={outline
          .filter(isSeen)
          .map((path) => pathText(path, left, top))
          .join('')}
      />
      {isCut && (
        <>
          <rect className="P" x={width - 4} y={drop} width={4} height={height} />
          <path className="L" transform={`translate(0 ${drop})`} d={breakLine(width - 4, height)} />
        </>
      )}
    </svg>
  );
});
