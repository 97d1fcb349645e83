/** The dimensions to carry into a drawing program, and how far the joint may be bent. */
import type { Assessment } from '../../core/design/assessment.ts';
import { isAsked } from '../../core/flexures/drives.ts';
import { familyOf } from '../../core/flexures/index.ts';
import { asRad, degrees, type Mm } from '../../core/units.ts';
import { amountText, amountWithin, roughAmount } from './amountText.ts';
import { thicknessFigure } from './drawingText.ts';
import { kindText } from './kindText.ts';
import { grouped, lengthFigure, setLength, type LengthUnit } from './numbers.ts';

export interface Dimension {
  readonly label: string;
  /** As it stands in the table, without the unit of length, which is in its heading. */
  readonly shown: string;
  /** The bare number, for a drawing program, with its unit. */
  readonly plain: string;
  readonly in: 'length' | 'angle' | 'count';
}

function cut(label: string, value: Mm, unit: LengthUnit, shown?: string): Dimension {
  const figure = setLength(value, unit);
  return { label, shown: shown ?? figure, plain: figure, in: 'length' };
}

/** What follows from the sizes is shown with a decimal less: nobody cuts it. */
function follows(label: string, value: Mm, unit: LengthUnit, before = ''): Dimension {
  const figure = lengthFigure(value, unit, unit === 'mm' ? 1 : 3);
  return { label, shown: `${before}${figure}`, plain: lengthFigure(value, unit), in: 'length' };
}

/** The table's heading has the unit of length; a degree sign stays. */
function moved(label: string, figure: string, { drive: { measure } }: Assessment): Dimension {
  const bare = figure.replace(/°|\u00a0.*/, '');
  return measure === 'turn'
    ? { label, shown: figure, plain: bare, in: 'angle' }
    : { label, shown: bare, plain: bare, in: 'length' };
}

/** An amount not to be passed. */
function within(label: string, value: number, a: Assessment, unit: LengthUnit): Dimension {
  const { measure, max } = a.drive;
  const far = value > max;
  const figure = amountWithin(far ? max : value, measure, unit);
  const row = moved(label, figure, a);
  return far ? { ...row, shown: `over ${row.shown}`, plain: `over ${row.plain}` } : row;
}

/** Sizes that are drawn. */
export function sizesToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { joint, section, fillet, padThickness, inRow, sideBySide, length } = a;
  const text = kindText(joint.family);
  const depth = text.sizes[familyOf(joint).roles.depth];
  const filletFigure = setLength(fillet, unit);
  const rows = [
    cut('Flexing length, between fillets', length, unit),
    cut('Thickness', section.thickness, unit, thicknessFigure(a, unit)),
    cut(depth ?? 'Depth', section.width, unit),
    cut(`Root fillets, ${text.fillets}`, fillet, unit, fillet > 0 ? `R ${filletFigure}` : 'none'),
    ...(padThickness === undefined ? [] : [cut(`${text.padName}s, thick`, padThickness, unit)]),
    ...otherSizes(a),
  ];
  const beside = sideBySide === 1 ? [] : [count('Side by side', grouped(sideBySide), sideBySide)];
  if (inRow === 1) return [...rows, ...beside];
  const each = `${grouped(inRow)}, ${amountText(a.amountEach, a.drive.measure, unit)} each`;
  return [...rows, count('In a row', each, inRow), ...beside];
}

function count(label: string, shown: string, value: number): Dimension {
  return { label, shown, plain: String(value), in: 'count' };
}

/** Ratios that the drive asks for. */
function otherSizes({ joint, drive, sizes }: Assessment): readonly Dimension[] {
  const labels = kindText(joint.family).sizes;
  return Object.entries(familyOf(joint).parameters)
    .filter(([, parameter]) => parameter.kind === 'ratio' && isAsked(parameter, drive.id))
    .map(([name]) => count(labels[name] ?? name, String(sizes[name]), sizes[name] ?? Number.NaN));
}

/** Where it goes at full travel, and how far it may be bent. */
export function travelToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { travel, overBend, set, inRow } = a;
  const each = inRow === 1 ? '' : ', each';
  const arc = travel && [
    follows(`Bend radius at full travel${each}`, travel.radius, unit, 'R '),
    follows(`Far pad moves up${each}`, travel.upward, unit),
    follows(`Far pad moves in${each}`, travel.inward, unit),
  ];
  const rows = [
    ...(arc ?? []),
    within('Put a hard stop at', overBend.hardStop, a, unit),
    within('A trace of set from', overBend.atSet, a, unit),
    within('Stays bent past', overBend.atYield, a, unit),
    within('Breaks past', overBend.atBreak, a, unit),
  ];
  const { measure } = a.drive;
  const isLittle = measure === 'turn' ? degrees(asRad(set.amount)) < 0.5 : set.amount < 0.1;
  if (isLittle) return rows;
  return [...rows, moved('Left in it after one bend, up to', roughAmount(set.amount, measure, unit), a)];
}

/** The table as text that a drawing program or any table takes: label, figure and unit, parted by tabs. */
export function asTabbed(name: string, dimensions: readonly Dimension[], unit: LengthUnit): string {
  const units = { length: unit === 'mm' ? 'mm' : 'in', angle: 'deg', count: '' } as const;
  // A tab or a line end in a name would make a column or a row of its own.
  const plainName = name.replaceAll(/\s+/g, ' ');
  const rows = dimensions.map((row) => [row.label, row.plain, units[row.in]].join('\t'));
  return [`Joint\t${plainName}\t`, ...rows, ''].join('\n');
}

export function unitInFull(unit: LengthUnit): string {
  return unit === 'mm' ? 'millimetres' : 'inches';
}

export const TO_DRAW = {
  head: 'To draw',
  copy: 'Copy',
  copied: 'Copied, parted by tabs.',
  notCopied: 'This browser does not let the page copy: select the table and copy it.',
  dxfFailed: 'The part that writes DXF did not load; SVG works without it.',
  oneOfRow: 'The outline is one of the row.',
} as const;

/** Why no outline is handed out; empty when one is. */
export function outlineWaits(a: Assessment, unit: LengthUnit): string {
  if (a.fit.outcome === 'whole') return '';
  const { exact, countOf } = a.fit;
  return `SVG and DXF wait for whole ${countOf}: ${setLength(a.section.thickness, unit)} is ${exact.toFixed(2)}.`;
}
