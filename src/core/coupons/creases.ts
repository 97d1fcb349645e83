/** The crease ladder: pads in a row, joined by folds of 1 to 6 layers. */
import { ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import { draftOf, pieceFrom } from './draft.ts';
import { lyingSizes, makingOf, type Making } from './making.ts';
import { kindBars, kindSize, numberCuts, widestNumber } from './marks.ts';
import type { Piece, PiecesAsked, Strip } from './piece.ts';
import { rectangle, type Part } from './slabs.ts';

const FOLDS = [1, 2, 3, 4, 5, 6] as const;
/** On the smallest plates. */
const FEWEST = 3;
/** Pads along the row and across it [mm]. */
const PAD = { along: 12, across: 18 } as const;
/** A fold is so many times as long as thick, and at least this long: two or three lines side by side [mm]. Ours. */
const FOLD = { times: 3, least: 1.1 } as const;

/** Always lies as a crease, whatever is asked. */
export function creases(asked: PiecesAsked, cut: number): Result<Piece> {
  const making = makingOf({ ...asked, count: FOLDS.at(-1)! }, 'crease');
  const { padHigh } = lyingSizes(making);
  const along = Math.max(PAD.along, kindSize(making).y + 6);
  const across = Math.max(PAD.across, kindSize(making).x + 4, widestNumber(making) + 4);
  const padAt = (x: Mm): Part => ({ loop: rectangle(x, 0, along, across), from: 0, to: padHigh });
  const parts: Part[] = [padAt(0), ...kindBars('creases', { x: along / 2, y: across / 2 }, padHigh, making, false)];
  const cuts: Part[] = [];
  const strips: Strip[] = [];
  let x = along;
  for (const count of FOLDS.slice(0, Math.max(FEWEST, FOLDS.length - cut))) {
    const fold = foldAt(makingOf({ ...asked, count }, 'crease'), x, across);
    parts.push(fold.part, padAt(fold.strip.to.x));
    // In the pad after the fold.
    cuts.push(...numberCuts(count, { x: fold.strip.to.x + along / 2, y: 0 }, { x: 0, y: 1 }, making));
    strips.push(fold.strip);
    x = fold.strip.to.x + along;
  }
  return ok(pieceFrom('creases', draftOf({ parts, cuts }, strips)));
}

function foldAt(
  { asked, count, thickness }: Making,
  x: Mm,
  across: Mm,
): { readonly part: Part; readonly strip: Strip } {
  const length = Math.max(FOLD.least, FOLD.times * thickness);
  const from = { x, y: across / 2 };
  const strip: Strip = {
    number: count,
    count,
    countOf: 'layers',
    thickness,
    length,
    depth: across,
    from,
    to: { x: x + length, y: across / 2 },
    strain: (thickness * asked.turn) / (2 * length),
  };
  return { part: { loop: rectangle(x - 1, 0, length + 2, across), from: 0, to: thickness }, strip };
}
