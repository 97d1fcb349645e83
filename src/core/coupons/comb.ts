/** The strip comb: strips alike in thickness, of six lengths in equal ratios, between a common spine and grips of their own. */
import { plain, type Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { degrees, type Mm } from '../units.ts';
import { draftOf, pieceFrom, type Draft } from './draft.ts';
import { lyingGrip, lyingStrip, type StripAsked } from './lyingStrips.ts';
import { CLEAR, gripWidth, lyingSizes, makingOf, percent, type Making } from './making.ts';
import { kindBars, kindSize } from './marks.ts';
import type { Piece, PiecesAsked } from './piece.ts';
import { rectangle } from './slabs.ts';
import { HIGHEST, uprightRow } from './uprightStrips.ts';

const STRIPS = 6;
/** Strains run from and to these shares of what is asked. Ours: lives from a tenth to a thousand times those wanted, about. */
const SHARES = { least: 0.6, most: 4 } as const;
/** A shorter strip is a block, so many times as long as thick. */
const SHORTEST = 3;
/** A longer one flops [mm]. */
const LONGEST: Mm = 80;
/** On a small plate a strip fewer and so much shorter at each cut, three at least. */
const FEWEST = 3;
const SHORTER = 0.8;
/** The longest is at least so many times as long as the shortest, so that the strips differ at all. */
const LEAST_SPREAD = 2;

/** Lengths of the strips from the shortest [mm], and what kept them from the strains asked for. */
export function combLengths(
  making: Making,
  cut = 0,
): { readonly lengths: readonly Mm[]; readonly notes: readonly Problem[] } {
  const { thickness, lying, asked } = making;
  const count = Math.max(FEWEST, STRIPS - cut);
  const longest = lying === 'upright' ? HIGHEST : LONGEST * SHORTER ** cut;
  // A peak strain of t·θ/(2L), which strips turned to an arc of a circle have.
  const lengthAt = (strain: number) => (thickness * asked.turn) / (2 * strain);
  const least = Math.min(Math.max(lengthAt(SHARES.most * asked.strain), SHORTEST * thickness), longest / LEAST_SPREAD);
  const most = Math.min(Math.max(lengthAt(SHARES.least * asked.strain), LEAST_SPREAD * least), longest);
  const lengths = Array.from({ length: count }, (_, i) => least * (most / least) ** (i / (count - 1)));
  return { lengths, notes: bracketNotes(making, lengthAt(asked.strain), least, most) };
}

function bracketNotes({ asked, thickness }: Making, wanted: Mm, least: Mm, most: Mm): readonly Problem[] {
  if (wanted >= least && wanted <= most) return [];
  const isTooLong = wanted > most;
  const limit = (thickness * asked.turn) / (2 * (isTooLong ? most : least));
  return [
    {
      code: isTooLong ? 'below-minimum' : 'above-maximum',
      message: `At ${plain(degrees(asked.turn))}° the strips strain ${isTooLong ? 'at least' : 'at most'} ${percent(limit)}, and ${percent(asked.strain)} is asked; ${isTooLong ? 'take fewer lines or layers, or a smaller turn' : 'take more lines or layers, or a larger turn'}`,
      field: 'strain',
      value: asked.strain,
      limit,
    },
  ];
}

/** Strip 1 is the shortest: it is counted first. */
export function comb(asked: PiecesAsked, cut: number): Result<Piece> {
  const making = makingOf(asked);
  const { lengths, notes } = combLengths(making, cut);
  const strips = lengths.map((length, i): StripAsked => {
    const strain = (making.thickness * asked.turn) / (2 * length);
    return { number: i + 1, length, strain };
  });
  const draft = making.lying === 'upright' ? uprightRow(making, strips, 'comb') : lyingComb(making, strips);
  return ok(pieceFrom('comb', draft), notes);
}

function lyingComb(making: Making, strips: readonly StripAsked[]): Draft {
  const wide = gripWidth(making);
  const pitch = wide + CLEAR;
  const { padHigh } = lyingSizes(making);
  const spine = Math.max(10, wide);
  const width = Math.max(pitch * (strips.length - 1) + wide, kindSize(making).x + 4);
  const laid = strips.map((asked, i) => {
    const { parts, strip } = lyingStrip(making, { x: wide / 2 + i * pitch, y: spine }, asked);
    const grip = lyingGrip(making, strip.to, asked.number);
    return { parts: [...parts, grip.part], cuts: grip.cuts, strip };
  });
  const back = { loop: rectangle(0, 0, width, spine), from: 0, to: padHigh };
  const bars = kindBars('comb', { x: width / 2, y: spine / 2 }, padHigh, making);
  const body = {
    parts: [back, ...bars, ...laid.flatMap(({ parts }) => parts)],
    cuts: laid.flatMap(({ cuts }) => cuts),
  };
  return draftOf(body, laid.map(({ strip }) => strip)); // prettier-ignore
}
