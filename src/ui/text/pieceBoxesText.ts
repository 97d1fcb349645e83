/** The boxes to fill in on the page of each test piece: the fields of the tallies that are made of them. */
import type { Piece, PieceId, PiecesAsked, RoundCorner, Strip } from '../../core/coupons/piece.ts';
import type { Tally, TallyKind } from '../../core/material/tally.ts';
import type { Lying } from '../../core/print/profile.ts';
import { asRad } from '../../core/units.ts';
import { angle, percent, type LengthUnit } from './numbers.ts';
import { countText, sizesIn, type SizesSaid } from './pieceText.ts';

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
  /** Its numbers are cut in the piece, and shown as they are cut. */
  readonly isNotched?: boolean;
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
const notched = (head: string): PageColumn => ({ ...printed(head), isNotched: true });
const written = (head: string, ...fields: TallyField[]): PageColumn => ({ fields, head, width: 'middle' });
const lyingOf = ({ profile }: PiecesAsked): PageFact => ({
  fields: ['lying'],
  name: 'Printed',
  text: LYING[profile.lying],
});
const thickness = (strips: readonly Strip[], { say }: SizesSaid): PageFact => ({
  fields: ['thickness'],
  name: 'Thick as set',
  text: [...new Set(strips.map((strip) => `${say(strip.thickness)}, ${countText(strip)}`))].join('; '),
});
const strain = (value: number | undefined) => (value === undefined ? '' : percent(value));

function ladder({ strips }: Piece, _asked: PiecesAsked, { unit, figure }: SizesSaid): PageTable[] {
  const columns = [
    notched('Rung'),
    printed('Laid', 'count', 'countOf'),
    printed(`Set, ${unit}`, 'set'),
    written(`1st, ${unit}`),
    written(`2nd, ${unit}`),
    written(`3rd, ${unit}`),
    written(`Mean, ${unit}`, 'measured'),
    SEEN,
  ];
  const rows = strips.map((strip) => [String(strip.number), countText(strip), figure(strip.thickness)]);
  return [{ kind: 'thickness', heading: 'Measured with a caliper', facts: [], columns, rows: filled(rows, columns) }];
}

function comb({ strips }: Piece, asked: PiecesAsked, said: SizesSaid): PageTable[] {
  const turned: PageFact = { fields: ['bend'], name: 'Turned to', text: angle(asked.turn) };
  const columns = [
    notched('Strip'),
    printed(`Free, ${said.unit}`, 'bend'),
    printed('Strain'),
    HUNDREDS,
    BENDS,
    ENDED,
    SEEN,
  ];
  const rows = strips.map(({ number, length, strain: of }) => [String(number), said.free(length), strain(of)]);
  const facts = [thickness(strips, said), turned, WAYS, lyingOf(asked)];
  return [{ kind: 'flexes', heading: 'Counted', facts, columns, rows: filled(rows, columns) }];
}

function creases({ strips }: Piece, asked: PiecesAsked, { unit, figure, free }: SizesSaid): PageTable[] {
  const turned: PageFact = { fields: ['bend'], name: 'Folded to', text: angle(asked.turn) };
  const columns = [
    notched('Crease'),
    printed('Through'),
    printed(`Thick, ${unit}`, 'thickness'),
    printed(`Free, ${unit}`, 'bend'),
    HUNDREDS,
    BENDS,
    ENDED,
    SEEN,
  ];
  const rows = strips.map((strip) => [
    String(strip.number),
    countText(strip),
    figure(strip.thickness),
    free(strip.length),
  ]);
  const facts = [turned, WAYS, lyingOf({ ...asked, profile: { ...asked.profile, lying: 'crease' } })];
  return [{ kind: 'flexes', heading: 'Counted', facts, columns, rows: filled(rows, columns) }];
}

/** Largest radius first, as it is bent over. */
export function cornersInOrder({ corners }: Pick<Piece, 'corners'>): readonly RoundCorner[] {
  return corners.toSorted((a, b) => b.radius - a.radius);
}

function radii(piece: Piece, asked: PiecesAsked, said: SizesSaid): PageTable[] {
  const { strips } = piece;
  const [thick, lying] = [thickness(strips, said), lyingOf(asked)];
  const looks: PageColumn = {
    fields: ['looks'],
    head: 'What it looks like',
    width: 'ticks',
    choices: ['unmarked', 'whitened', 'cracked'],
  };
  const once = [notched('Corner'), printed('Radius', 'radius'), printed('Strain'), looks, SEEN];
  const laid = cornersInOrder(piece).map(({ number, radius, strain: of }) => [
    String(number),
    said.radius(radius),
    strain(of),
  ]);
  const often = [notched('Strip'), written('Over R, mm', 'bend'), HUNDREDS, BENDS, ENDED, SEEN];
  const counted = strips.map(({ number }) => [String(number)]);
  return [
    {
      kind: 'mark',
      heading: 'Bent once over each corner',
      facts: [thick, lying],
      columns: once,
      rows: filled(laid, once),
    },
    {
      kind: 'flexes',
      heading: 'Again and again over one corner',
      facts: [thick, WAYS, lying],
      columns: often,
      rows: filled(counted, often),
    },
  ];
}

function bar({ strips, arm, grams }: Piece, asked: PiecesAsked, said: SizesSaid): PageTable[] {
  const [strip] = strips;
  const facts: PageFact[] = [
    thickness(strips, said),
    { fields: ['depth'], name: 'Deep', text: said.round(strip?.depth ?? asked.depth) },
    { fields: ['length'], name: 'Clamp to eye', text: said.round(arm ?? strip?.length ?? 0) },
    lyingOf(asked),
  ];
  const columns = [
    printed('Time'),
    written('Weight, g', 'force'),
    written(`Before, ${said.unit}`),
    written(`Under it, ${said.unit}`),
    written(`Sag, ${said.unit}`, 'sag'),
    SEEN,
  ];
  const rows = ['1st', '2nd', '3rd'].map((time) => [time]);
  const heading = grams === undefined ? 'Read' : `Read, about ${grams} g hung from the eye`;
  return [{ kind: 'sag', heading, facts, columns, rows: filled(rows, columns) }];
}

function hold({ strips, slotTurn, slotRadius }: Piece, _asked: PiecesAsked, said: SizesSaid): PageTable[] {
  const facts: PageFact[] = [
    thickness(strips, said),
    { fields: ['held'], name: 'Held at', text: angle(slotTurn ?? asRad(0)) },
    { fields: ['radius'], name: 'Slot', text: said.radius(slotRadius ?? 0) },
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

const TABLES: Readonly<Record<PieceId, (piece: Piece, asked: PiecesAsked, said: SizesSaid) => PageTable[]>> = {
  ladder,
  comb,
  radii,
  bar,
  hold,
  creases,
};

/** What is to be written down about a piece, in the order in which Tests asks; radii stay in mm, as they are marked in its drawing. */
export function pageTables(piece: Piece, asked: PiecesAsked, unit: LengthUnit): readonly PageTable[] {
  return TABLES[piece.id](piece, asked, sizesIn(unit));
}
