import type { Point } from '../../core/geometry/outline.ts';
import type { Box } from './lettering.ts';

/**
 * Which parts of the sheet are still clear: what is drawn is inked in, and words are put only where nothing is.
 * Kept as cells of a few px, so that asking is cheap enough to try many places.
 */
export interface ClearPaper {
  readonly ink: (points: Iterable<Point>) => void;
  readonly inkBox: (box: Box) => void;
  /** True when the whole box lies on the paper and nothing is inked there. */
  readonly isClear: (box: Box) => boolean;
  /** The same question about the paper as it is now, answered at once however large the box. */
  readonly asItIs: () => (box: Box) => boolean;
}

/** Small against a letter, so that little room is lost to rounding. */
const CELL = 4;

/** Blank paper over a box [px]. */
export function clearPaper(over: Box): ClearPaper {
  const columns = Math.ceil(over.width / CELL);
  const rows = Math.ceil(over.height / CELL);
  const cells = new Uint8Array(columns * rows);
  const column = (x: number) => Math.floor((x - over.x) / CELL);
  const row = (y: number) => Math.floor((y - over.y) / CELL);

  const range = ({ x, y, width, height }: Box) => ({
    left: column(x),
    right: column(x + width),
    top: row(y),
    bottom: row(y + height),
  });

  /** How many cells are inked above and left of each, for `asItIs`. */
  const sums = () => {
    const wide = columns + 1;
    const sum = new Uint32Array(wide * (rows + 1));
    for (let j = 0; j < rows; j++) {
      let across = 0;
      for (let i = 0; i < columns; i++) {
        across += cells[j * columns + i] ?? 0;
        sum[(j + 1) * wide + i + 1] = (sum[j * wide + i + 1] ?? 0) + across;
      }
    }
    return (i: number, j: number) => sum[j * wide + i] ?? 0;
  };

  return {
    ink: (points) => {
      for (const { x, y } of points) {
        const [i, j] = [column(x), row(y)];
        if (i >= 0 && i < columns && j >= 0 && j < rows) cells[j * columns + i] = 1;
      }
    },
    inkBox: (box) => {
      const { left, right, top, bottom } = range(box);
      const [from, to] = [Math.max(0, left), Math.min(columns, right + 1)];
      if (to <= from) return;
      for (let j = Math.max(0, top); j <= Math.min(rows - 1, bottom); j++) {
        cells.fill(1, j * columns + from, j * columns + to);
      }
    },
    isClear: (box) => {
      const { left, right, top, bottom } = range(box);
      if (left < 0 || top < 0 || right >= columns || bottom >= rows) return false;
      for (let j = top; j <= bottom; j++) {
        for (let k = j * columns + left; k <= j * columns + right; k++) if (cells[k] === 1) return false;
      }
      return true;
    },
    asItIs: () => {
      const at = sums();
      return (box) => {
        const { left, right, top, bottom } = range(box);
        if (left < 0 || top < 0 || right >= columns || bottom >= rows) return false;
        return at(right + 1, bottom + 1) - at(left, bottom + 1) - at(right + 1, top) + at(left, top) === 0;
      };
    },
  };
}
