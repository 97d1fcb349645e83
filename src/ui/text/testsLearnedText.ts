/** What readings other than counted lives have taught: each figure before and after, and what that means. */
import type { ProvenanceKind } from '../../core/material/types.ts';
import { counted, inWords, length, lengthFigure, setLength, share, unitAfter, type LengthUnit } from './numbers.ts';
import { capital } from './said.ts';

export const LEARNED = {
  heading: 'What these readings say',
  aside: 'dashed: before; filled: by your readings',
  modulus: 'Stiffness to bend with',
  modulusAcrossLayers: 'Stiffness across layers',
  strength: 'Stress at which it breaks',
  strengthAcrossLayers: 'Stress at which layers part',
  allowable: 'Strain of one brief flex',
  firstFlexBreak: 'Strain that breaks at once',
  setAfterDay: 'Stays bent after a day held',
  byHand: 'What you set by hand stands, whatever these readings say.',
} as const;

/** A figure with what is likely of it, in words: “1 870 MPa (1 760 to 1 990)”. */
export interface FigureWords {
  readonly text: string;
  /** Empty where only one figure is known. */
  readonly range: string;
  readonly kind: ProvenanceKind;
}

const within = ({ text, range }: FigureWords) => (range === '' ? text : `${text} (${range})`);

/** “by three readings, one of them far off”. */
export function readingsText(by: number, odd: number): string {
  const far = odd === 0 ? '' : `, ${inWords(odd)} of them far from the others`;
  return `by ${by === 1 ? 'one reading' : `${inWords(by)} readings`}${far}`;
}

/** The whole row for those who do not see it. */
export function figureSpoken(name: string, before: FigureWords, after: FigureWords, by: string): string {
  return `${name}: ${within(after)}, ${by}; before, ${within(before)}`;
}

/** “12 % stiffer”, “3.6 times as much”, “as before”. */
export function movedBy(before: number, after: number, more: string, less: string): string {
  const ratio = after / before;
  if (ratio >= 2) return `${Number(ratio.toPrecision(2))} times what it was`;
  if (!(Math.abs(ratio - 1) >= 0.01)) return 'as before';
  return `${share(Math.abs(ratio - 1))} ${ratio > 1 ? more : less}`;
}

/** “Two lines come out 0.87 mm thick, not 0.84, give or take 0.02.” */
export function laidText(
  { count, countOf }: { readonly count: number; readonly countOf: 'lines' | 'layers' },
  set: number,
  laid: number,
  spread: number,
  unit: LengthUnit,
): string {
  const one = count === 1;
  const what = `${capital(inWords(count))} ${one ? countOf.slice(0, -1) : countOf}`;
  const apart = ` give or take ${length(spread, unit)}, nine times in ten`;
  const [now, was] = [lengthFigure(laid, unit), lengthFigure(set, unit)];
  if (now === was) return `${what} ${one ? 'comes' : 'come'} out ${now}${unitAfter(unit)} thick, as set,${apart}.`;
  return `${what} ${one ? 'comes' : 'come'} out ${now}${unitAfter(unit)} thick, not ${was},${apart}.`;
}

const moreOrLess = (ratio: number) => `${share(Math.abs(ratio - 1))} ${ratio > 1 ? 'more' : 'less'}`;

/** What a thickness that is not as set does, by the square and the cube. */
export function laidMeans(set: number, laid: number): string {
  const ratio = laid / set;
  if (Math.abs(ratio - 1) < 0.005) return 'Strain and effort are as reckoned.';
  return `For the same bend its skin strains ${moreOrLess(ratio)}, and it takes ${moreOrLess(ratio ** 3)} effort.`;
}

/** Spoken in place of the plot of a ladder. */
export function ladderSpoken(readings: number, countOf: 'lines' | 'layers'): string {
  return `How much thicker than set ${counted(readings, 'rung')} of ${countOf} came out, with the line through them`;
}

export const LADDER = {
  aid: 'thicker than set, against thickness set',
  even: 'as set',
  x: (unit: LengthUnit) => `set${unitAfter(unit)}`,
} as const;

/** What would make more of the readings that there are. */
export const LACKS = {
  mark: 'Strips that whitened are needed as well as unmarked ones: bend one over a smaller corner.',
  unmarked: 'Unmarked strips are needed as well: bend one over a larger corner.',
  few: (countOf: 'lines' | 'layers') =>
    `One rung says little of how ${countOf} of other numbers come out: measure a thin one and a thick one.`,
} as const;

/** “0.00”, “+0.03”. */
export function offText(off: number, unit: LengthUnit): string {
  const text = setLength(Math.abs(off), unit, 2);
  return Number(text) === 0 ? text : `${off > 0 ? '+' : '−'}${text}`;
}
