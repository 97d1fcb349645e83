import type { Point } from '../../../core/geometry/outline.ts';
import type { ClearPaper } from '../clearPaper.ts';
import type { Size } from '../furniture.ts';
import { grown, type Box } from '../lettering.ts';
import { FRAME } from '../sheet.ts';

/** Something that stands beside the joint: its size, and the side of the sheet where it would rather be. */
export interface Block extends Size {
  readonly key: string;
  readonly side: 'left' | 'right';
}

export interface PlacedBlocks {
  readonly at: Readonly<Record<string, Point>>;
  readonly top: number;
}

const STEP = 8;
const CLEARANCE = 9;
const FROM_EDGE = 12;

/**
 * Finds clear paper for one block after another, from the head of the sheet down on the side each prefers. What finds
 * none makes the sheet higher, and so what comes after it finds room beside it.
 */
export function placeBlocks(
  paper: ClearPaper,
  blocks: readonly Block[],
  width: number,
  top: number,
  bottom: number,
): PlacedBlocks {
  const at: Record<string, Point> = {};
  let head = top;
  for (const block of blocks) {
    let box = clearPlace(paper, block, width, head, bottom);
    if (!box) {
      const higher = Math.ceil(head - block.height - 2 * CLEARANCE);
      box = clearPlace(paper, block, width, higher, bottom) ?? {
        ...block,
        x: FRAME + FROM_EDGE,
        y: higher + FROM_EDGE,
      };
      head = Math.min(head, higher);
    }
    paper.inkBox(grown(box, 4));
    at[block.key] = { x: box.x, y: box.y };
  }
  return { at, top: head };
}

function clearPlace(paper: ClearPaper, block: Block, width: number, top: number, bottom: number): Box | undefined {
  const isClear = paper.asItIs();
  const [first, last] = [FRAME + FROM_EDGE, width - FROM_EDGE - block.width];
  if (last < first) return undefined;
  const columns = Array.from({ length: Math.floor((last - first) / STEP) + 1 }, (_, i) =>
    block.side === 'left' ? first + i * STEP : last - i * STEP,
  );
  for (let y = top + FROM_EDGE; y + block.height <= bottom - FROM_EDGE; y += STEP) {
    for (const x of columns) {
      const box = { x, y, width: block.width, height: block.height };
      if (isClear(grown(box, CLEARANCE))) return box;
    }
  }
  return undefined;
}
