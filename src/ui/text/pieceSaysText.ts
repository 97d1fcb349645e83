/** What stands under the plate of the piece that is chosen. */
import type { Piece, PieceId, PiecesAsked, RoundCorner } from '../../core/coupons/piece.ts';
import type { Quantity } from '../../core/material/types.ts';
import { angle, counted, inWords, NO_BREAK, percent, setLength, type LengthUnit } from './numbers.ts';
import { gramsText } from './pieceStepsText.ts';
import { countText, PIECE_WORDS, radiusText, sizesIn, spanText, type SizesSaid } from './pieceText.ts';
import { capital, figure, type Said } from './said.ts';
import { nameOfFile } from './shellText.ts';

type Says = (piece: Piece, asked: PiecesAsked, sizes: SizesSaid, corner: RoundCorner | undefined) => Said;

const alike = ({ id, strips }: Piece) =>
  `${capital(inWords(strips.length))} ${PIECE_WORDS[id].strip}${strips.length === 1 ? '' : 's'}`;

/** “0.84 ÷ (2 × 5 + 0.84) = 7.75 %”: strain of the skin of a strip laid over a round corner, in mm as its radius is. */
export function radiusSum(thickness: number, radius: number): string {
  const t = setLength(thickness, 'mm');
  return `${t} ÷ (2 × ${Number(radius.toFixed(3))} + ${t}) = ${percent(thickness / (2 * radius + thickness))}`;
}

const ladder: Says = ({ strips }, _asked, { say }) => [
  `Rungs of ${spanText(
    strips.map(({ count }) => count),
    String,
  )} ${strips[0]?.countOf ?? 'lines'}, ${say(strips[0]?.length ?? 0)} free. Measure each with a caliper: in the effort thickness counts three times over.`,
];

const comb: Says = (piece, { turn }, { say, long }) => {
  const [first] = piece.strips;
  const strains = piece.strips.flatMap(({ strain }) => strain ?? []);
  const sizes = first ? ` of ${countText(first)}, ${say(first.thickness)} thick` : '';
  const free = spanText(
    piece.strips.map(({ length }) => length),
    long,
  );
  return [
    `${alike(piece)}${sizes}, ${free} free. Flex each to ${angle(turn)} and back, and count until it breaks or you stop.`,
    ...(strains.length > 0 ? [' Their skins strain ', figure(strainsText(strains), 'computed'), '.'] : []),
  ];
};

const strainsText = (strains: readonly number[]) => spanText(strains, percent);

const radii: Says = (piece, _asked, { unit }, chosen) => {
  const [strip] = piece.strips;
  const corner = chosen ?? piece.corners.toSorted((a, b) => a.radius - b.radius)[0];
  return [
    `A block with ${counted(piece.corners.length, 'round corner')} and ${inWords(piece.strips.length)} strips to bend over them. A corner sets the strain by its radius, so nobody has to measure an angle.`,
    ...(corner && strip
      ? [
          ` Over ${radiusText(corner.radius)}${unit === 'in' ? `${NO_BREAK}mm` : ''} the skin strains `,
          figure(radiusSum(strip.thickness, corner.radius), 'computed'),
          '.',
        ]
      : []),
  ];
};

const bar: Says = ({ grams, arm }, _asked, { say }) => [
  `Clamp the pad, hang ${grams === undefined ? 'a known weight' : `about ${grams}${NO_BREAK}g`} from the eye${arm === undefined ? '' : ` ${say(arm)} away`}, and read how far it sinks. That tells the stiffness of this spool as printed.`,
];

const hold: Says = ({ slotTurn, slotRadius = 0 }, { holdRadius }, { radius }) => [
  `Press a strip into the slot for a day, take it out, and read how much of the bend stays. The slot is bent to ${radius(slotRadius)}${slotTurn === undefined ? '' : ` over ${angle(slotTurn)}`}, ${slotRadius === holdRadius ? 'as your joint is' : 'as near to your joint as the piece allows'}.`,
];

const creases: Says = (piece, { turn }) => [
  `${alike(piece)} of ${spanText(
    piece.strips.map(({ count }) => count),
    String,
  )} layers. Fold each to ${angle(turn)} and back, and count.`,
];

const SAYS: Readonly<Record<PieceId, Says>> = { ladder, comb, radii, bar, hold, creases };

/** What a piece is, what to do with it, the strain it tests at and what it takes to print. */
export function pieceSaid(
  piece: Piece,
  asked: PiecesAsked,
  density: Quantity,
  unit: LengthUnit,
  corner?: RoundCorner,
): Said {
  return [
    ...SAYS[piece.id](piece, asked, sizesIn(unit), corner),
    ' Takes about ',
    figure(gramsText(piece.volume, density.typical), density.provenance.kind),
    ` of ${asked.filament.name}, laid full.`,
  ];
}

export const PIECE_FILES = {
  label: 'Files and page of this piece',
  threemf: '3MF of this piece',
  stl: 'STL of this piece',
  plate: '3MF of the whole plate',
  plateOf: (at: number) => `3MF of plate ${at}`,
  page: 'Page to print',
  notMade: 'The file could not be made: ',
} as const;

/** “strip-comb-petg.3mf”. */
export function pieceFileName(id: PieceId, filament: string, kind: '3mf' | 'stl'): string {
  return nameOfFile(`${PIECE_WORDS[id].name} ${filament}`, 'test-piece', `.${kind}`);
}

/** “test-plate-1-petg.3mf”. */
export function plateFileName(at: number, of: number, filament: string): string {
  return nameOfFile(`test plate ${of > 1 ? `${at} ` : ''}${filament}`, 'test-plate', '.3mf');
}
