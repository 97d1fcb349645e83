/** The thickness ladder: walls of 1 to 8 lines for a caliper, or tongues of 1 to 8 layers. */
import { ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import { draftOf, pieceFrom } from './draft.ts';
import { lyingStrip, MOST_FILLET } from './lyingStrips.ts';
import { CLEAR, lyingSizes, makingOf, type Making } from './making.ts';
import { kindBars, kindSize, numberCuts, numberWidth } from './marks.ts';
import type { Piece, PiecesAsked, Strip } from './piece.ts';
import { rectangle, type Part } from './slabs.ts';

const RUNGS = [1, 2, 3, 4, 5, 6, 7, 8] as const;
/** A line through fewer says little. */
const FEWEST = 3;
/** Free length of a rung: two jaws of a caliper find room beside one another [mm]. */
const LENGTH: Mm = 18;
/** Width of a tongue that lies on the plate [mm]. */
const TONGUE: Mm = 10;
/** From the outermost rung to the end of a rail [mm]. */
const MARGIN: Mm = MOST_FILLET + 2;

/**
 * The ladder. What is to stand upright stands as if flat, because a wall of one line would fall over, and lines side by side
 * come out alike in both.
 */
export function ladder(asked: PiecesAsked, cut: number): Result<Piece> {
  const isCrease = asked.profile.lying === 'crease';
  const rungs = RUNGS.slice(0, Math.max(FEWEST, RUNGS.length - cut)).map((count) => rungMaking(asked, count, isCrease));
  const xs = middles(rungs);
  const { padHigh } = lyingSizes(rungs.at(-1)!);
  const thickest = lyingSizes(rungs.at(-1)!).wide;
  const rail = Math.max(10, isCrease ? 0 : 2.5 * thickest);
  const width = Math.max(xs.at(-1)! + thickest / 2 + MARGIN, kindSize(rungs[0]!).x + 2 * MARGIN);
  const parts: Part[] = [{ loop: rectangle(0, 0, width, rail), from: 0, to: padHigh }];
  // Tongues end freely, so that the caliper comes in from their ends.
  if (!isCrease) parts.push({ loop: rectangle(0, rail + LENGTH, width, rail), from: 0, to: padHigh });
  const cuts: Part[] = [];
  const strips: Strip[] = [];
  for (const [i, making] of rungs.entries()) {
    const rung = rungAt(making, { x: xs[i]!, y: rail }, isCrease);
    parts.push(...rung.parts);
    strips.push(rung.strip);
    cuts.push(...numberCuts(making.count, { x: xs[i]!, y: 0 }, { x: 0, y: 1 }, making));
  }
  const onRail = isCrease ? rail / 2 + 1.5 : rail + LENGTH + rail / 2;
  parts.push(...kindBars('ladder', { x: width / 2, y: onRail }, padHigh, rungs[0]!));
  return ok(pieceFrom('ladder', draftOf({ parts, cuts }, strips)));
}

function rungMaking(asked: PiecesAsked, count: number, isCrease: boolean): Making {
  const making = makingOf({ ...asked, count }, isCrease ? 'crease' : 'flat');
  // All pads are as high as that of the thickest needs.
  const { padHeight } = makingOf({ ...asked, count: RUNGS.at(-1)! }, making.lying);
  return isCrease ? { ...making, depth: TONGUE, padHeight } : making;
}

function middles(rungs: readonly Making[]): readonly Mm[] {
  const halves = rungs.map((making) => ({
    rung: lyingSizes(making).wide / 2,
    number: numberWidth(making.count, making) / 2,
  }));
  const first = halves[0]!;
  const xs = [Math.max(first.rung, first.number) + MARGIN];
  for (const [i, half] of halves.entries()) {
    const before = halves[i - 1];
    if (!before) continue;
    xs.push(xs[i - 1]! + Math.max(before.rung + half.rung + CLEAR, before.number + half.number + 3));
  }
  return xs;
}

/** A tongue lacks the reach into a second pad. */
function rungAt(
  making: Making,
  from: { readonly x: Mm; readonly y: Mm },
  isTongue: boolean,
): ReturnType<typeof lyingStrip> {
  const rung = lyingStrip(making, from, { number: making.count, length: LENGTH });
  if (!isTongue) return rung;
  const { wide, high } = lyingSizes(making);
  return { ...rung, parts: [{ loop: rectangle(from.x - wide / 2, from.y - 1, wide, LENGTH + 1), from: 0, to: high }] };
}
