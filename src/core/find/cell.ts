/** One candidate as it is screened, and what is screened. */
import { SHORTCOMINGS, type Shortcoming } from './findAnswer.ts';
import type { Row } from './rows.ts';
import type { Shapes } from './shapes.ts';
import type { Wanted } from './wanted.ts';

/** One bit for each shortcoming. */
export const BIT = Object.fromEntries(SHORTCOMINGS.map((reason, at) => [reason, 1 << at])) as Readonly<
  Record<Shortcoming, number>
>;

/** One candidate as it is screened: the same object for all of them, filled anew. */
export interface Cell {
  /** Number of the shape, and places in the rows, the depths and the numbers side by side. */
  at: number;
  row: number;
  depth: number;
  side: number;
  /** Bits of all that it falls short in. */
  mask: number;
  size: number;
  chance: number;
  effort: number;
  /** What its shortfalls are measured by. */
  along: number;
  across: number;
  deep: number;
  tall: number;
  air: number;
  peak: number;
  set: number;
}

export function emptyCell(): Cell {
  const zero = { at: 0, row: 0, depth: 0, side: 0, mask: 0, size: 0, chance: 0, effort: 0 };
  return { ...zero, along: 0, across: 0, deep: 0, tall: 0, air: 0, peak: 0, set: 0 };
}

/** Bits by shape that only a solved shape tells, or is expected to: where it stays, and that it touches. */
export type Moves = Int32Array;

/** What is screened: shapes, their filaments, and what is looked for. */
export interface Screened {
  readonly shapes: Shapes;
  readonly rows: readonly Row[];
  readonly wanted: Wanted;
  readonly moves: Moves;
}

/**
 * What is expected of shapes before any is solved: what is moved farther than makes sense runs into something, and what is not
 * likely to stay does not. Only of kinds that are solved before they are told.
 *
 * @param shapes - of a lot [-]
 * @returns bits by shape [-]
 */
export function movesExpected({ lot, count, exact, mayStay, mayClear }: Shapes): Moves {
  const { stays } = lot.movement;
  const wrong = stays === true ? BIT['comes back'] : BIT.stays;
  const moves = new Int32Array(count);
  for (let at = 0; at < count; at += 1) {
    const isLikely = stays === undefined || (mayStay[at] === 1) === stays;
    moves[at] = (isLikely ? 0 : wrong) | (exact[at] === 1 || mayClear[at] === 1 ? 0 : BIT.touches);
  }
  return moves;
}
