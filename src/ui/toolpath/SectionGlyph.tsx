import type { LayerLaid, PlaceAudit } from '../../core/inspect/toolpath/audit.ts';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';

/** Room in a cell of the strip [px]. */
const ROOM = { width: 104, height: 40 };
const SCALES = [20, 10, 5, 2, 1];

interface Bead {
  readonly off: number;
  readonly width: number;
}

/** The beads that are cut in the middle of the run. */
function beadsOf({ tracks }: LayerLaid, middle: number): readonly Bead[] {
  return tracks.flatMap(({ at, off, width }) => {
    const i = at.findIndex((one) => one >= middle);
    const [first, here, wide] = [at[0], off[i], width[i]];
    return first === undefined || first > middle || here === undefined || wide === undefined
      ? []
      : [{ off: here, width: wide }];
  });
}

/** A layer in the middle of the section, its beads side by side; of many that in which most lie. */
export function SectionGlyph({ audit }: { readonly audit: PlaceAudit }) {
  const [pxPerMm] = usePxPerMm();
  const layer = audit.layers[audit.layers.length >> 1];
  const beads = layer ? beadsOf(layer, audit.length / 2) : [];
  if (!layer || beads.length === 0) return null;
  const reach = Math.max(...beads.map(({ off, width }) => Math.abs(off) + width / 2));
  const by = pxPerMm * (SCALES.find((one) => 2 * reach * one * pxPerMm <= ROOM.width - 8) ?? 1);
  const high = Math.min(layer.height * by, ROOM.height - 8);
  return (
    <svg
      className="thumb"
      viewBox={`${-ROOM.width / 2} ${-ROOM.height / 2} ${ROOM.width} ${ROOM.height}`}
      {...ROOM}
      aria-hidden="true"
    >
      {beads.map(({ off, width }) => (
        <rect
          key={off}
          className="bead-cut"
          x={(off - width / 2) * by}
          y={-high / 2}
          width={width * by}
          height={high}
          rx={Math.min(high, width * by) / 2}
        />
      ))}
    </svg>
  );
}
