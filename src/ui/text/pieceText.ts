/** What the test pieces are called, what each is for, and how their sizes are said. */
import type { Piece, PieceId, Strip } from '../../core/coupons/piece.ts';
import { counted, inWords, length, lengthFigure, NO_BREAK, setLength, unitAfter, type LengthUnit } from './numbers.ts';
import { capital } from './said.ts';

interface PieceWords {
  readonly name: string;
  /** One of its thin parts. */
  readonly strip: string;
  /** What it is for, in one sentence. */
  readonly purpose: string;
}

export const PIECE_WORDS: Readonly<Record<PieceId, PieceWords>> = {
  ladder: {
    name: 'Thickness ladder',
    strip: 'rung',
    purpose: 'Tells how thick your printer really lays lines side by side, which decides strain and effort.',
  },
  comb: {
    name: 'Strip comb',
    strip: 'strip',
    purpose: 'Tells how often strips of this filament bend before they break, at several strains and one angle.',
  },
  radii: {
    name: 'Radius block',
    strip: 'strip',
    purpose: 'Tells over how small a radius this filament bends once before it whitens or cracks.',
  },
  bar: {
    name: 'Deflection bar',
    strip: 'bar',
    purpose: 'Tells how stiff this filament comes out of your printer, by how far a weight makes it sag.',
  },
  hold: {
    name: 'Hold piece',
    strip: 'strip',
    purpose: 'Tells how much of a bend stays in this filament when it is kept bent for a day.',
  },
  creases: {
    name: 'Crease ladder',
    strip: 'crease',
    purpose: 'Tells how often folds of one layer and of several last, and how thin a fold your printer makes well.',
  },
};

/** How lengths of pieces are said: in the unit that the sheet shows, and so that of the caliper in the hand. */
export interface SizesSaid {
  readonly unit: 'mm' | 'in';
  readonly figure: (value: number) => string;
  /** “0.84 mm”, with no fewer decimals than are in force. */
  readonly say: (value: number) => string;
  /** As a ruler reads: “71 mm”, “2.80 in”. */
  readonly about: (value: number) => string;
  /** Of lengths in steps, two decimals of a millimetre: “7.33 mm”. */
  readonly long: (value: number) => string;
  /** Of lengths that are usually round: “71 mm”. */
  readonly round: (value: number) => string;
  /** The same without its unit. */
  readonly free: (value: number) => string;
  /** As a printer is set, which is in mm anywhere: “0.42 mm”, “0.0165 in (0.42 mm)”. */
  readonly set: (value: number, least?: number) => string;
  /** “R 5 mm”, as it is marked in the drawing; where the sheet shows inches with what is entered there: “R 5 mm, 0.1969 in”. */
  readonly radius: (value: number) => string;
}

const mm = (value: number, least?: number) => `${setLength(value, 'mm', least)}${unitAfter('mm')}`;

export function sizesIn(unit: LengthUnit): SizesSaid {
  const isInch = unit === 'inch';
  const say = (value: number) => `${setLength(value, unit)}${unitAfter(unit)}`;
  return {
    unit: isInch ? 'in' : 'mm',
    figure: (value) => setLength(value, unit),
    say,
    about: (value) => length(value, unit, isInch ? 2 : 0),
    long: (value) => length(value, unit),
    round: (value) => `${setLength(value, unit, isInch ? 2 : 0)}${unitAfter(unit)}`,
    free: (value) => lengthFigure(value, unit),
    set: (value, least) => (isInch ? `${say(value)} (${mm(value, least)})` : mm(value, least)),
    radius: (value) => `${radiusText(value)}${NO_BREAK}mm${isInch ? `, ${length(value, unit)}` : ''}`,
  };
}

/** A radius as it stands beside its corner: “R 5”, “R 19.6”. */
export function radiusText(radius: number): string {
  return `R${NO_BREAK}${Number(lengthFigure(radius, 'mm', 1))}`;
}

/** “five strips”, “1 bar”: as a list of parts says it. */
function stripsText({ id, strips, corners }: Piece): string {
  const thin = counted(strips.length, PIECE_WORDS[id].strip);
  return corners.length > 0 ? `${thin}, ${counted(corners.length, 'round corner')}` : thin;
}

/** As its balloon is read out: “2 Strip comb, 76 by 46 by 6 mm, 5 strips”. */
export function pieceSpoken(piece: Piece, number: number): string {
  const { x, y, z } = piece.size;
  const [wide, deep, high] = [x, y, z].map((value) => String(Number(lengthFigure(value, 'mm', 1))));
  return `${number} ${PIECE_WORDS[piece.id].name}, ${wide} by ${deep} by ${high} mm, ${stripsText(piece)}`;
}

/** “76.0 × 46.0 × 6.0 mm”, “2.99 × 1.81 × 0.24 in”. */
export function sizeText({ size: { x, y, z } }: Pick<Piece, 'size'>, unit: LengthUnit = 'mm'): string {
  const places = unit === 'mm' ? 1 : 2;
  return `${[x, y, z].map((value) => lengthFigure(value, unit, places)).join(' × ')}${unitAfter(unit)}`;
}

/** From the least to the largest: “4.00 to 12.00 mm”; one value where all are alike. */
export function spanText(
  values: readonly number[],
  say: (value: number) => string = (value) => length(value, 'mm'),
): string {
  const [low, high] = [say(Math.min(...values)), say(Math.max(...values))];
  // The unit once, at the end.
  return low === high ? low : `${low.split(NO_BREAK)[0] ?? low} to ${high}`;
}

/** “2 lines”, “1 layer”. */
export function countText({ count, countOf }: Pick<Strip, 'count' | 'countOf'>): string {
  return counted(count, countOf === 'lines' ? 'line' : 'layer');
}

/** The plate and what stands round it. */
export const PLATE = {
  label: 'Test piece to look at',
  caption: (pieces: number, plates: number) =>
    plates === 1 ? `${capital(pieceCount(pieces))} on the plate` : `${capital(pieceCount(pieces))} on ${plates} plates`,
  scale: 'life size; frame: 10 mm bars',
  aside: 'filled: the one chosen',
  plate: (at: number, of: number, x: number, y: number) =>
    `${of > 1 ? `Plate ${at} of ${of}` : 'Plate'}, ${Number(lengthFigure(x, 'mm', 1))} × ${Number(lengthFigure(y, 'mm', 1))}${NO_BREAK}mm; as much as is used is shown`,
} as const;

function pieceCount(count: number): string {
  return `${inWords(count)} test piece${count === 1 ? '' : 's'}`;
}
