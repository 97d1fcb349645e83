import { memo } from 'react';
import { common } from '../../core/geometry/clipping.ts';
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

/** The plastic about a thin section at true size, cut off where the cell ends. */
export const SilhouetteOf = memo(function SilhouetteOf({ judged, section, up, scale, pxPerMm }: Props) {
  const { into } = levelFrame(judged.flexure, section, up);
  const by = scale * pxPerMm;
  const [x, y] = [ROOM.width / 2, ROOM.height / 2];
  const shapes = section.outlines.map((loop) =>
    loop.map((point) => {
      const at = into(point);
      return { x: by * at.x, y: -by * at.y };
    }),
  );
  const room = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
  // Turned over by the screen, the outlines run the other way round; so the room does as well.
  const seen = common(
    shapes.map((loop) => loop.toReversed()),
    [room],
  );
  return (
    <svg className="thumb" viewBox={`${-x} ${-y} ${ROOM.width} ${ROOM.height}`} {...ROOM} aria-hidden="true">
      <path className="I" fillRule="evenodd" d={seen.map((loop) => through(loop, true)).join('')} />
    </svg>
  );
});
