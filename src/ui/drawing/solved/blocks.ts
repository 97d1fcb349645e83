import type { Point } from '../../../core/geometry/outline.ts';
import type { ClearPaper } from '../clearPaper.ts';
import type { Size } from '../furniture.ts';
import { grown, overlap, type Box } from '../lettering.ts';
import { FRAME } from '../sheet.ts';

/** Something that stands beside the joint: its size, and the place that its middle would rather be near. */
export interface Block extends Size {
  readonly key: string;
  readonly by: Point;
}

export interface PlacedBlocks {
  readonly at: Readonly<Record<string, Point>>;
  readonly top: number;
}

const STEP = 8;
const CLEARANCE = 9;
const FROM_EDGE = 10;

/**
 * Finds clear paper for one block after another, as near as can be to where each would rather be. What finds none makes
 * the sheet higher, and what comes after it finds room beside it.
 */
export function placeBlocks(
  paper: ClearPaper,
  blocks: readonly Block[],
  width: number,
  top: number,
  bottom: number,
): PlacedBlocks {
  const isClear = paper.asItIs();
  const kept: Box[] = [];
  const at: Record<string, Point> = {};
  let head = top;
  for (const block of blocks) {
    const free = (box: Box) =>
      isClear(grown(box, CLEARANCE)) && !kept.some((other) => overlap(grown(box, CLEARANCE), other));
    let box = clearPlace(free, block, width, head, bottom);
    if (!box) {
      head = Math.ceil(head - block.height - 2 * CLEARANCE);
      const corner = { x: FRAME + FROM_EDGE, y: head + FROM_EDGE };
      box = clearPlace(free, block, width, head, bottom) ?? { ...corner, width: block.width, height: block.height };
    }
    kept.push(box);
    at[block.key] = { x: box.x, y: box.y };
  }
  // What was grown too much is cut off again.
  const highest = Math.min(top, ...kept.map(({ y }) => y - FROM_EDGE));
  return { at, top: Math.max(head, highest) };
}

function clearPlace(
  isFree: (box: Box) => boolean,
  { width: wide, height, by }: Block,
  width: number,
  top: number,
  bottom: number,
): Box | undefined {
  const [first, last] = [FRAME + FROM_EDGE, width - FROM_EDGE - wide];
  const cost = ({ x, y }: Box) => Math.hypot(x + wide / 2 - by.x, y + height / 2 - by.y);
  let best: Box | undefined;
  for (let y = top + FROM_EDGE; y + height <= bottom - FROM_EDGE; y += STEP) {
    for (let x = last; x >= first; x -= STEP) {
      const box = { x, y, width: wide, height };
      if ((!best || cost(box) < cost(best)) && isFree(box)) best = box;
    }
  }
  return best;
}
