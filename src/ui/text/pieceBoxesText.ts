/** The boxes to fill in on the page of each test piece: the fields of the tallies that are made of them. */
import type { Piece, PieceId, PiecesAsked, RoundCorner, Strip } from '../../core/coupons/piece.ts';
import type { Tally, TallyKind } from '../../core/material/tally.ts';
import type { Lying } from '../../core/print/profile.ts';
import { asRad } from '../../core/units.ts';
import { angle, lengthFigure, percent } from './numbers.ts';
import { countText, mm, mmFigure, radiusText } from './pieceText.ts';

/** What a tally of some kind is asked for; the date stands once on the page, the rest is the program's own. */
type TallyField<K extends TallyKind = TallyKind> = K extends TallyKind
  ? Exclude<keyof Extract<Tally, { kind: K }>, 'id' | 'kind' | 'leftOut' | 'date'>
  : never;

/** A fact that holds for all rows, printed or to be ticked. */
export interface PageFact {
  readonly fields: readonly TallyField[];
  readonly name: string;
  readonly text?: string;
  readonly choices?: readonly string[];
}

export interface PageColumn {
  /** What it tells of a tally; without, it helps the hand that counts. */
  readonly fields: readonly TallyField[];
  readonly head: string;
  readonly width: 'narrow' | 'middle' | 'ended' | 'broad' | 'ticks' | 'rest';
  /** Words to tick instead of a box to write in. */
  readonly choices?: readonly string[];
}

/** A row: what is printed in its columns, nothing where it is to be filled in. */
type PageRow = readonly (string | undefined)[];

export interface PageTable {
  readonly kind: TallyKind;
  readonly heading: string;
  readonly facts: readonly PageFact[];
  readonly columns: readonly PageColumn[];
  readonly rows: readonly PageRow[];
}

const LYING: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };
const SEEN: PageColumn = { fields: ['seen'], head: 'Seen', width: 'rest' };
const HUNDREDS: PageColumn = { fields: [], head: 'A stroke for each hundred', width: 'broad' };
const BENDS: PageColumn = { fields: ['cycles'], head: 'Bends in all', width: 'middle' };
const ENDED: PageColumn = {
  fields: ['ended'],
  head: 'Ended',
  width: 'ended',
  choices: ['broke', 'still whole'],
};
const WAYS: PageFact = { fields: ['ways'], name: 'Bent', choices: ['one way', 'both ways'] };

const printed = (head: string, ...fields: TallyField[]): PageColumn => ({ fields, head, width: 'narrow' });
const written = (head: string, ...fields: TallyField[]): PageColumn => ({ fields, head, width: 'middle' });
const lyingOf = ({ profile }: PiecesAsked): PageFact => ({
  fields: ['lying'],
  name: 'Printed',
  text: LYING[profile.lying],
});
const thickness = (strips: readonly Strip[]): PageFact => ({
  fields: ['thickness'],
  name: 'Thick as set',
  text: [...new Set(strips.map((strip) => `${mm(strip.thickness)}, ${countText(strip)}`))].join('; '),
});
const strain = (value: number | undefined) => (value === undefined ? '' : percent(value));

function ladder({ strips }: Piece): PageTable[] {
  const columns = [
    printed('Rung'),
    printed('Laid', 'count', 'countOf'),
    printed('Set, mm', 'set'),
    written('1st, mm'),
    written('2nd, mm'),
    written('3rd, mm'),
    written('Mean, mm', 'measured'),
    SEEN,
  ];
  const rows = strips.map((strip) => [String(strip.number), countText(strip), mmFigure(strip.thickness)]);
  return [{ kind: 'thickness', heading: 'Measured with a caliper', facts: [], columns, rows: filled(rows, columns) }];
}

function comb({ strips }: Piece, asked: PiecesAsked): PageTable[] {
  const turned: PageFact = { fields: ['bend'], name: 'Turned to', text: angle(asked.turn) };
  const columns = [printed('Strip'), printed('Free, mm', 'bend'), printed('Strain'), HUNDREDS, BENDS, ENDED, SEEN];
  const rows = strips.map(({ number, length, strain: of }) => [String(number), lengthFigure(length, 'mm'), strain(of)]);
  const facts = [turned, WAYS, thickness(strips), lyingOf(asked)];
  return [{ kind: 'flexes', heading: 'Counted', facts, columns, rows: filled(rows, columns) }];
}

function creases({ strips }: Piece, asked: PiecesAsked): PageTable[] {
  const turned: PageFact = { fields: ['bend'], name: 'Folded to', text: angle(asked.turn) };
  const columns = [
    printed('Crease'),
    printed('Through'),
    printed('Thick, mm', 'thickness'),
    printed('Free, mm', 'bend'),
    HUNDREDS,
    BENDS,
    ENDED,
    SEEN,
  ];
  const rows = strips.map((strip) => [
    String(strip.number),
    countText(strip),
    mmFigure(strip.thickness),
    lengthFigure(strip.length, 'mm'),
  ]);
  const facts = [turned, WAYS, lyingOf({ ...asked, profile: { ...asked.profile, lying: 'crease' } })];
  return [{ kind: 'flexes', heading: 'Counted', facts, columns, rows: filled(rows, columns) }];
}

/** Largest radius first, as it is bent over. */
export function cornersInOrder({ corners }: Pick<Piece, 'corners'>): readonly RoundCorner[] {
  return corners.toSorted((a, b) => b.radius - a.radius);
}

function radii(piece: Piece, asked: PiecesAsked): PageTable[] {
  const { strips } = piece;
  const facts = [thickness(strips), lyingOf(asked)];
  const looks: PageColumn = {
    fields: ['looks'],
    head: 'What it looks like',
    width: 'ticks',
    choices: ['unmarked', 'whitened', 'cracked'],
  };
  const once = [printed('Corner'), printed('Radius', 'radius'), printed('Strain'), looks, SEEN];
  const laid = cornersInOrder(piece).map(({ number, radius, strain: of }) => [
    String(number),
    `${radiusText(radius)} mm`,
    strain(of),
  ]);
  const often = [printed('Strip'), written('Over radius', 'bend'), HUNDREDS, BENDS, ENDED, SEEN];
  const counted = strips.map(({ number }) => [String(number)]);
  return [
    { kind: 'mark', heading: 'Bent once over each corner', facts, columns: once, rows: filled(laid, once) },
    {
      kind: 'flexes',
      heading: 'Radius block, if you go on: bent again and again over one corner',
      facts: [WAYS, ...facts],
      columns: often,
      rows: filled(counted, often),
    },
  ];
}

function bar({ strips, arm, grams }: Piece, asked: PiecesAsked): PageTable[] {
  const [strip] = strips;
  const facts: PageFact[] = [
    { fields: ['length'], name: 'Clamp to eye', text: mm(arm ?? strip?.length ?? 0, 0) },
    thickness(strips),
    { fields: ['depth'], name: 'Deep', text: mm(strip?.depth ?? asked.depth, 0) },
    lyingOf(asked),
  ];
  const columns = [
    printed('Time'),
    written('Weight, g', 'force'),
    written('Before, mm'),
    written('Under it, mm'),
    written('Sag, mm', 'sag'),
    SEEN,
  ];
  const rows = ['1st', '2nd', '3rd'].map((time) => [time]);
  const heading = grams === undefined ? 'Read' : `Read, about ${grams} g hung from the eye`;
  return [{ kind: 'sag', heading, facts, columns, rows: filled(rows, columns) }];
}

function hold({ strips, slotTurn, slotRadius }: Piece): PageTable[] {
  const facts: PageFact[] = [
    { fields: ['radius'], name: 'Slot', text: `${radiusText(slotRadius ?? 0)} mm` },
    thickness(strips),
    { fields: ['held'], name: 'Held at', text: angle(slotTurn ?? asRad(0)) },
  ];
  const columns = [
    printed('Strip'),
    written('Put in, when'),
    written('Taken out'),
    written('Hours', 'hours'),
    written('Angle left, °', 'left'),
    SEEN,
  ];
  const rows = ['1st', '2nd', '3rd'].map((strip) => [strip]);
  return [{ kind: 'hold', heading: 'Held and read', facts, columns, rows: filled(rows, columns) }];
}

/** Rows as wide as the table: what is not printed is to be filled in. */
function filled(rows: readonly (readonly string[])[], columns: readonly PageColumn[]): PageRow[] {
  return rows.map((row) => columns.map((_, at) => row[at]));
}

const TABLES: Readonly<Record<PieceId, (piece: Piece, asked: PiecesAsked) => PageTable[]>> = {
  ladder,
  comb,
  radii,
  bar,
  hold,
  creases,
};

/** What is to be written down about a piece. */
export function pageTables(piece: Piece, asked: PiecesAsked): readonly PageTable[] {
  return TABLES[piece.id](piece, asked);
}
