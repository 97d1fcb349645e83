/** The radius block: eight round corners on two blocks, and five strips alike to bend over them. */
import { offset } from '../geometry/clipping.ts';
import { loopArea, type Loop } from '../geometry/loop.ts';
import { strainFactorAcrossLayers } from '../material/choose.ts';
import { plain, type Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import { boxOfDraft, moved, NOTHING, pieceFrom, placedAt, together, type Draft } from './draft.ts';
import { looseStrip } from './lyingStrips.ts';
import { CLEAR, gripWidth, makingOf, percent, type Making } from './making.ts';
import { kindBars, numberCuts, widestNumber } from './marks.ts';
import { fitsOn } from './onPlate.ts';
import type { Piece, PiecesAsked, RoundCorner } from './piece.ts';
import { arcPoints, CHORD, type Part } from './slabs.ts';
import { HIGHEST, uprightRow } from './uprightStrips.ts';

/** Diameters of the mandrels of ISO 1519 (from memory), and three more of our own [mm]. */
const MANDRELS: readonly Mm[] = [2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 64];
const CORNERS = 8;
const STRIPS = 5;
/** On a small plate a strip fewer at each cut, two at least, and from this cut on one block alone. */
const FEWEST_STRIPS = 2;
const ONE_BLOCK = 3;
/** Free length of strips that lie: a quarter turn round the largest corner, and as much again to hold [mm]. */
const LENGTH: Mm = 60;
/** Strains run up to so many times the yield strain. Ours: there most filaments are white or cracked. */
const PAST_YIELD = 4;
/** Straight between two rounds of a side at least, and the least side of a block [mm]. */
const STRAIGHT: Mm = 6;
const LEAST_SIDE: Mm = 28;
/** The block stands higher than the strip is wide [mm]. */
const OVER: Mm = 2;
/** A smaller hole is not worth leaving [mm²]. */
const LEAST_HOLE = 100;

/** Surface strain of a strip laid over a radius: t/(2R + t). */
export const strainOver = (radius: Mm, thickness: Mm): number => thickness / (2 * radius + thickness);

/** Radii for strips of that thickness, the largest first, and what kept them from the strains wanted. */
export function radiiFor(
  { asked, thickness, lying }: Making,
  corners = CORNERS,
): {
  readonly radii: readonly Mm[];
  readonly notes: readonly Problem[];
} {
  const { yieldStrain, permissibleStrainRepeated } = asked.filament.properties;
  const share = lying === 'upright' ? strainFactorAcrossLayers(asked.filament).typical : 1;
  const most = PAST_YIELD * share * yieldStrain.typical;
  const least = Math.min(asked.strain / 2, share * permissibleStrainRepeated.typical);
  const strains = MANDRELS.map((diameter) => strainOver(diameter / 2, thickness));
  const end = MANDRELS.length - 1;
  const reached = strains.findIndex((strain) => strain <= least);
  let last = Math.max(reached < 0 ? end : reached, corners - 1);
  const first = Math.max(
    0,
    Math.min(
      strains.findLastIndex((strain) => strain >= most),
      last - corners + 1,
    ),
  );
  last = Math.max(last, first + corners - 1);
  const steps = Array.from({ length: corners }, (_, i) => Math.round(last - (i * (last - first)) / (corners - 1)));
  const notes = [
    ...(reached < 0 ? [outOfReach(MANDRELS.at(-1)!, strains[end]!, least)] : []),
    ...(strains[0]! < most ? [outOfReach(MANDRELS[0]!, strains[0]!, most)] : []),
  ];
  return { radii: steps.map((step) => MANDRELS[step]! / 2), notes };
}

function outOfReach(diameter: Mm, strain: number, wanted: number): Problem {
  const isOver = strain > wanted;
  const why = isOver
    ? `and unmarked strips may need ${percent(wanted)}; take fewer lines or layers`
    : `and marked strips may need ${percent(wanted)}; take more lines or layers`;
  return {
    code: isOver ? 'above-maximum' : 'below-minimum',
    message: `Over the ${isOver ? 'largest' : 'smallest'} radius of ${plain(diameter / 2)} mm the strips strain ${percent(strain)}, ${why}`,
    field: 'count',
    value: strain,
    limit: wanted,
  };
}

export function radii(asked: PiecesAsked, cut: number): Result<Piece> {
  const making = makingOf(asked);
  const { radii: all, notes } = radiiFor(making, cut < ONE_BLOCK ? CORNERS : CORNERS / 2);
  const corners = all.map((radius, i): Omit<RoundCorner, 'centre'> => {
    return { radius, number: i + 1, strain: strainOver(radius, making.thickness) };
  });
  const large = block(making, corners.slice(0, 4), true);
  const small = corners.length > 4 ? block(making, corners.slice(4), false) : NOTHING;
  const strips = stripsOf(making, Math.max(FEWEST_STRIPS, STRIPS - cut));
  const ways = arrangements(large, small, strips).map((draft) => pieceFrom('radii', draft));
  const fits = ways.find(({ size }) => asked.plate === undefined || fitsOn(size, asked.plate));
  return ok(fits ?? ways[0]!, notes);
}

/** Blocks behind or beside one another, strips beside or behind them, along or across: as is liked, the best first. */
function arrangements(large: Draft, small: Draft, strips: Draft): readonly [Draft, ...Draft[]] {
  const turned = moved(strips, { x: 0, y: 0, isTurned: true });
  const blocks = small === NOTHING ? [large] : [behind(large, small), beside(large, small)];
  const all = blocks.flatMap((both) =>
    [beside, behind].flatMap((put) => [strips, turned].map((row) => put(both, row))),
  );
  return all as [Draft, ...Draft[]];
}

const beside = (one: Draft, other: Draft) => together(one, placedAt(other, { x: boxOfDraft(one).max.x + CLEAR, y: 0 }));
const behind = (one: Draft, other: Draft) => together(one, placedAt(other, { x: 0, y: boxOfDraft(one).max.y + CLEAR }));

function stripsOf(making: Making, count: number): Draft {
  const numbers = Array.from({ length: count }, (_, i) => i + 1);
  if (making.lying === 'upright') return uprightRow(making, numbers.map((number) => ({ number, length: HIGHEST }))); // prettier-ignore
  const pitch = gripWidth(making) + CLEAR;
  return numbers.reduce<Draft>(
    (laid, number, i) => together(laid, moved(looseStrip(making, { number, length: LENGTH }), { x: i * pitch, y: 0 })),
    NOTHING,
  );
}

/** Four corners, the largest beside the two smallest, so that the block is small; their numbers are cut into its top. */
function block(making: Making, corners: readonly Omit<RoundCorner, 'centre'>[], isMarked: boolean): Draft {
  const [d, c, b, a] = corners as readonly [Corner, Corner, Corner, Corner];
  const inward = widestNumber(making) / 2 + 1.5;
  const side = (one: Mm, other: Mm) => Math.max(LEAST_SIDE, 2 * inward + 14, one + STRAIGHT, other + STRAIGHT);
  const wide = side(d.radius + a.radius, b.radius + c.radius);
  const high = side(d.radius + b.radius, a.radius + c.radius);
  const placed = [
    cornerAt(d, { x: 0, y: 0 }, 1, 1),
    cornerAt(a, { x: wide, y: 0 }, -1, 1),
    cornerAt(c, { x: wide, y: high }, -1, -1),
    cornerAt(b, { x: 0, y: high }, 1, -1),
  ];
  const outline = placed.flatMap(({ round }) => round);
  const top = making.depth + OVER;
  const bars = isMarked ? kindBars('radii', { x: wide / 2, y: 5 }, top, making) : [];
  // What is left round the hole carries the numbers and holds the strips.
  const holes = offset([outline], -(inward + 6), CHORD).filter((loop) => loopArea(loop) > LEAST_HOLE);
  const cuts: Part[] = [
    ...holes.map((loop) => ({ loop, from: 0, to: Infinity })),
    ...placed.flatMap(({ corner, out }) => {
      const off = corner.radius - inward;
      const middle = { x: corner.centre.x + off * out.x, y: corner.centre.y + off * out.y };
      return numberCuts(corner.number, middle, { x: -out.x, y: -out.y }, making, top - making.rise);
    }),
  ];
  const body = { parts: [{ loop: outline, from: 0, to: top }, ...bars], cuts };
  return { bodies: [body], strips: [], corners: placed.map(({ corner }) => corner) };
}

type Corner = Omit<RoundCorner, 'centre'>;

/** A corner that points away from x and y, its round counter-clockwise. */
function cornerAt(corner: Corner, at: { readonly x: Mm; readonly y: Mm }, x: 1 | -1, y: 1 | -1): Placed {
  const { radius } = corner;
  const centre = { x: at.x + x * radius, y: at.y + y * radius };
  const out = { x: -x * Math.SQRT1_2, y: -y * Math.SQRT1_2 };
  const middle = Math.atan2(out.y, out.x);
  return {
    corner: { ...corner, centre },
    out,
    round: arcPoints(centre, radius, middle - Math.PI / 4, middle + Math.PI / 4),
  };
}

interface Placed {
  readonly corner: RoundCorner;
  /** Direction in which it points. */
  readonly out: { readonly x: number; readonly y: number };
  readonly round: Loop;
}
