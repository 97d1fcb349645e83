/** Words of the pages to print that hold for any test piece: heads, pictures, guides and the line that shows the scale. */
import type { Piece } from '../../core/coupons/piece.ts';
import { NO_BREAK, type LengthUnit } from './numbers.ts';
import { sizesIn, sizeText } from './pieceText.ts';

/** Under the picture of a piece. */
export function pictureText(piece: Piece, scale: string, unit: LengthUnit): string {
  const isNumbered = piece.strips.length > 1;
  const numbers = isNumbered ? ' Numbers are cut as notches: a long one counts five.' : '';
  const radii = piece.corners.length > 0 ? ' Radii R in mm.' : '';
  return `From above, ${scale.replaceAll(' ', NO_BREAK)}; ${sizeText(piece, unit)} overall.${numbers}${radii}`;
}

/** How a piece is laid on a guide, and what to look for. */
export const GUIDE = {
  name: 'Angle guide',
  label: 'Angle guide, 1 : 1, from the side',
  /** A comb that bends in the plane in which its picture shows it. */
  own: 'It is its own guide: lay it on its picture and bring each grip to its thick line; dashed: at rest.',
  side: 'Stand the comb on the side of its longest strip, spine on the outline, plate side left. Look straight down and bring each grip to its thick line; dashed: at rest.',
  back: (height: number, unit: LengthUnit) =>
    `Lay the comb on its back, foot on the outline. Strips are ${sizesIn(unit).about(height)} above the paper: look straight down and bring each grip to its thick line; dashed: at rest.`,
  fold: 'Stand the ladder on a long side, the pad before or after the crease on the full outline. Its edge is on the paper: fold until the next pad covers the dashed outline.',
} as const;

/** The check of the scale, and the way back to the program. */
export const PAGE = {
  ruler: 'Measure these lines: 100 mm and 4 in from end to end.',
  rulerElse: 'If they are not, it was printed to another scale: print again at 100 %.',
  rulerLabel: 'A line of 100 mm, divided in millimetres, and one of 4 in, divided in tenths',
  protractor: 'Protractor',
  protractorSays: 'One end along the base line; slide it until the line of the other end runs through the centre.',
  protractorLabel: 'Half a round divided in degrees over a base line',
  laidEnd: 'this end along the base line',
  heldAt: 'held here',
  settings: 'Print it with',
  steps: 'What to do',
  cautions: 'Mind',
  enter: 'Then enter all of it under Tests.',
  print: 'Print this page',
  back: 'Back to the tests',
  bar: 'Page to print',
  date: 'Date',
  printer: 'Printer',
  spool: 'Spool',
  filament: 'Filament',
} as const;
