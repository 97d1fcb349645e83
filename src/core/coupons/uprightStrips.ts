/** Strips that stand on a common foot, each with a grip at its top. */
import type { Mm } from '../units.ts';
import { draftOf, type Draft } from './draft.ts';
import type { StripAsked } from './lyingStrips.ts';
import { CLEAR, gripWidth, type Making } from './making.ts';
import { kindBars, kindSize, numberCuts, widestNumber } from './marks.ts';
import type { PieceId, Strip } from './piece.ts';
import { about, rectangle, type Part } from './slabs.ts';

/** A thin wall that stands higher than this sways under the nozzle [mm]. Ours, from common practice, no source. */
export const HIGHEST: Mm = 40;
/** Height of grips above where they have come to full width [mm]. */
const GRIP_HEIGHT: Mm = 8;
/** A grip grows out of its strip by as much as it rises, so that it carries itself; in so many steps at most. */
const MOST_STEPS = 12;

/** From a width to another at both sides, at 45°, in steps of whole layers [mm]. */
export function flare(from: Mm, to: Mm, { asked }: Making): readonly { readonly side: Mm; readonly height: Mm }[] {
  const layer = asked.profile.layerHeight;
  const gain = Math.max(0, (to - from) / 2);
  const step = layer * Math.max(1, Math.ceil(gain / MOST_STEPS / layer - 1e-9));
  const count = Math.ceil(gain / step - 1e-9);
  return Array.from({ length: count }, (_, i) => ({ side: Math.min(gain, (i + 1) * step), height: step }));
}

/** One strip with its grip, on a foot of that height. */
function standing(
  making: Making,
  x: Mm,
  y: Mm,
  { number, length, ...rest }: StripAsked,
): { readonly parts: Part[]; readonly strip: Strip } {
  const { thickness, depth, padHeight, count, countOf } = making;
  const middle = { x, y };
  const [wide, deep] = [gripWidth(making), Math.max(6, depth)];
  const parts: Part[] = [{ loop: about(middle, thickness, depth), from: 0, to: padHeight + length }];
  let height = padHeight + length;
  const steps = flare(thickness, wide, making);
  for (const { side, height: step } of steps) {
    const loop = about(middle, thickness + 2 * side, Math.min(deep, depth + 2 * side));
    parts.push({ loop, from: height, to: height + step });
    height += step;
  }
  parts.push({ loop: about(middle, wide, deep), from: height, to: height + GRIP_HEIGHT });
  const strip: Strip = { number, count, countOf, thickness, length, depth, from: middle, to: middle, ...rest };
  return { parts, strip };
}

/**
 * Strips in a row along x, thin along x, numbered in the front edge of their foot.
 *
 * @param making - sizes [mm]
 * @param strips - from left to right [mm]
 * @param id - marked on the foot, where it is not marked elsewhere [-]
 */
export function uprightRow(making: Making, strips: readonly StripAsked[], id?: PieceId): Draft {
  const pitch = Math.max(gripWidth(making) + CLEAR, widestNumber(making) + 3);
  const behind = id === undefined ? 4 : kindSize(making).y + 4;
  const deep = Math.max(6, making.depth);
  const front = -deep / 2 - 4;
  const width = Math.max(pitch * strips.length, kindSize(making).x + 4);
  const first = (width - pitch * (strips.length - 1)) / 2;
  const stood = strips.map((asked, i) => standing(making, first + i * pitch, 0, asked));
  const foot: Part = { loop: rectangle(0, front, width, deep + 4 + behind), from: 0, to: making.padHeight };
  const cuts = stood.flatMap(({ strip }) =>
    numberCuts(strip.number, { x: strip.from.x, y: front }, { x: 0, y: 1 }, making),
  );
  const bars =
    id === undefined ? [] : kindBars(id, { x: width / 2, y: deep / 2 + behind / 2 }, making.padHeight, making);
  return draftOf({ parts: [foot, ...stood.flatMap(({ parts }) => parts), ...bars], cuts }, stood.map(({ strip }) => strip)); // prettier-ignore
}
