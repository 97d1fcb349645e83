import { memo } from 'react';
import { common } from '../../core/geometry/clipping.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { PartSection } from '../../core/inspect/flexure.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import type { PlateUp } from '../../core/inspect/judged.ts';
import { through } from '../drawing/sheet.ts';
import { levelFrame } from './frames.ts';

interface Props {
  readonly judged: Judged;
  readonly section: PartSection;
  readonly up: PlateUp;
  readonly scale: number;
  readonly pxPerMm: number;
}

/** Room in a cell of the strip [px]. */
const ROOM = { width: 104, height: 40 };
const [X, Y] = [ROOM.width / 2, ROOM.height / 2];
const WINDOW: readonly Point[] = [
  { x: -X, y: -Y },
  { x: X, y: -Y },
  { x: X, y: Y },
  { x: -X, y: Y },
];

/** The edges of a loop that come near the window, as a path. */
function edgesNear(loop: readonly Point[]): string {
  return loop
    .map((to, i) => {
      const from = loop.at(i - 1) ?? to;
      const isAway =
        Math.max(from.x, to.x) < -X - 2 ||
        Math.min(from.x, to.x) > X + 2 ||
        Math.max(from.y, to.y) < -Y - 2 ||
        Math.min(from.y, to.y) > Y + 2;
      return isAway ? '' : through([from, to]);
    })
    .join('');
}

/**
 * A thin section in ink and the plastic about it in the tone of beads, at true size. Where the part goes on past the
 * window its tone ends without a line, so that nobody takes the window for the part.
 */
export const SilhouetteOf = memo(function SilhouetteOf({ judged, section, up, scale, pxPerMm }: Props) {
  const { flexure } = judged;
  const { into } = levelFrame(flexure, section, up);
  const by = scale * pxPerMm;
  const on = (point: Point): Point => {
    const at = into(point);
    return { x: by * at.x, y: -by * at.y };
  };
  const loops = section.outlines.map((loop) => loop.map(on));
  const [one, other] = flexure.walls;
  const thin = [...one, ...other.toReversed()].map(on);
  // Turned over by the screen, the outlines run the other way round.
  const seen = common(
    loops.map((loop) => loop.toReversed()),
    [WINDOW],
  );
  return (
    <svg className="thumb" viewBox={`${-X} ${-Y} ${ROOM.width} ${ROOM.height}`} {...ROOM} aria-hidden="true">
      <path className="pads" fillRule="evenodd" d={seen.map((loop) => through(loop, true)).join('')} />
      <path className="L" d={loops.map(edgesNear).join('')} />
      <path className="I" d={through(thin, true)} />
    </svg>
  );
});
