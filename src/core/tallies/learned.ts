/** What tests have taught a row, value by value, each with what it rests on and what stands out. */
import type { Quantity, LaidThickness } from '../material/types.ts';
import type { FlexTally, Tally } from '../material/tally.ts';
import type { Problem } from '../problems.ts';

/** One flexed strip as the curve sees it. */
export interface CountedStrip {
  readonly tally: FlexTally;
  /** Peak strain, and the equivalent strain that goes into the curve, as fractions. */
  readonly strain: number;
  readonly equivalent: number;
  /** How far log10 of its life lies from what the others say, in standard deviations; of one still whole, at least so far. */
  readonly off: number;
  /** So far off that it deserves another look. Never left out by itself. */
  readonly isOdd: boolean;
}

/** What counted lives have done to a curve. */
export interface LearnedLife {
  readonly strips: readonly CountedStrip[];
  readonly broke: number;
  readonly whole: number;
  /** `level`: all tested at nearly one strain; `level and slope`: far enough apart to tell how the curve falls. */
  readonly taught: 'level' | 'level and slope';
  /** Decades by which the median has moved at `surestLife`, and factor on decades of life away from there. */
  readonly shift: number;
  readonly stretch: number;
}

/** A thickness or a figure that several tests have told, with those that lie far off. */
export interface LearnedFigure<T> {
  readonly value: T;
  readonly by: readonly Tally[];
  readonly odd: readonly Tally[];
}

export interface Learned {
  readonly life?: LearnedLife;
  /** Why what some tests ask for was not taken in: no row may have it, and the figures of before them stay. */
  readonly refused?: readonly Problem[];
  readonly lines?: LearnedFigure<LaidThickness>;
  readonly layers?: LearnedFigure<LaidThickness>;
  readonly modulus?: LearnedFigure<Quantity>;
  readonly modulusAcrossLayers?: LearnedFigure<Quantity>;
  /** Permissible strain of one brief flex, from what did and what did not mark a strip. */
  readonly allowable?: LearnedFigure<Quantity>;
  /** Strain that breaks at once. */
  readonly firstFlexBreak?: LearnedFigure<number>;
  readonly setAfterDay?: LearnedFigure<Quantity>;
  readonly strength?: LearnedFigure<Quantity>;
  readonly strengthAcrossLayers?: LearnedFigure<Quantity>;
}

/**
 * Whether a tally lies far from what the others say, whatever it tells.
 *
 * @param learned - what all tallies of a row say [-]
 * @param tally - one of them [-]
 * @returns whether it deserves another look [-]
 */
export function isOddIn({ life, refused: _refused, ...figures }: Learned, { id }: Pick<Tally, 'id'>): boolean {
  const strip = life?.strips.find((one) => one.tally.id === id);
  return strip?.isOdd === true || Object.values(figures).some(({ odd }) => odd.some((one) => one.id === id));
}
