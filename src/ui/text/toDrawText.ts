/** The dimensions to carry into a drawing program, and how far the joint may be bent. */
import type { Assessment } from '../../core/design/assessment.ts';
import { leastGap, secondRest } from '../../core/design/solvedPath.ts';
import { isAsked } from '../../core/flexures/drives.ts';
import type { Parameter } from '../../core/flexures/family.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { asRad, degrees, type Mm } from '../../core/units.ts';
import { amountText, amountWithin, roughAmount } from './amountText.ts';
import { thicknessFigure } from './drawingText.ts';
import { kindText } from './kindText.ts';
import { angle, grouped, lengthFigure, NO_BREAK, setLength, type LengthUnit } from './numbers.ts';

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

/** Where it goes is shown with a decimal less: nobody cuts it. */
function goes(label: string, value: Mm, unit: LengthUnit, before = ''): Dimension {
  const figure = lengthFigure(value, unit, unit === 'mm' ? 1 : 3);
  return { label, shown: `${before}${figure}`, plain: lengthFigure(value, unit), in: 'length' };
}

/** What follows from sizes that are drawn, as finely as calipers read. */
function follows(label: string, value: Mm, unit: LengthUnit): Dimension {
  const figure = lengthFigure(value, unit);
  return { label, shown: figure, plain: figure, in: 'length' };
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

/** What plays no role that is drawn: how many are in a row or side by side is said last. */
const LAST_ROLES = ['inRow', 'sideBySide'] as const;

/** Sizes that are drawn: in the order of the kind, as far as the drive asks for them; then what follows from them. */
export function sizesToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { joint, section, sizes, sideBySide, inRow } = a;
  const { parameters, roles } = familyOf(joint);
  const last = LAST_ROLES.flatMap((role) => roles[role] ?? []);
  const asked = Object.entries(parameters).filter(
    ([name, parameter]) => isAsked(parameter, a.drive.id) && !last.includes(name),
  );
  const following = kindText(joint.family).follows?.(sizes, section.thickness, joint.movement.amount) ?? [];
  return [
    ...asked.map(([name, parameter]) => sizeRow(name, parameter, a, unit)),
    ...following.map(({ label, value }) => follows(label, value, unit)),
    ...(roles.inRow === undefined || inRow === 1 ? [] : [rowOf(roles.inRow, a, unit)]),
    ...(roles.sideBySide === undefined || sideBySide === 1 ? [] : [besideRow(roles.sideBySide, a)]),
  ];
}

/** Labels on a drawing, where they say more than in the brief. */
function labelOf(name: string, { joint, fillet }: Assessment): string {
  const { roles } = familyOf(joint);
  const text = kindText(joint.family);
  if (name === roles.fillet) return fillet > 0 ? `Root fillets, ${text.fillets}` : 'Root fillets';
  if (name === roles.pad) return `${text.padName}s, thick`;
  return text.drawn?.[name] ?? text.sizes[name] ?? name;
}

function sizeRow(name: string, parameter: Parameter, a: Assessment, unit: LengthUnit): Dimension {
  const { roles } = familyOf(a.joint);
  const value = a.sizes[name] ?? Number.NaN;
  const label = labelOf(name, a);
  if (name === roles.count)
    return cut(
      kindText(a.joint.family).drawn?.[name] ?? 'Thickness',
      a.section.thickness,
      unit,
      thicknessFigure(a, unit),
    );
  if (name === roles.fillet) {
    return cut(label, value, unit, value > 0 ? `R ${setLength(value, unit)}` : 'none');
  }
  const words = kindText(a.joint.family).choices?.[name]?.[value];
  if (words !== undefined) return count(label, words.replace(/,$/, ''), value);
  if (parameter.kind === 'length') return cut(label, value, unit);
  if (parameter.kind === 'angle') {
    const figure = angle(asRad(value), 2);
    return { label, shown: figure, plain: figure.replace('°', ''), in: 'angle' };
  }
  if (parameter.kind === 'count') return count(label, grouped(value), value);
  const shown = parameter.max <= 1 ? percentOf(value) : String(Number(value.toFixed(3)));
  return count(label, shown, Number(value.toFixed(3)));
}

const percentOf = (value: number) => `${Number((value * 100).toFixed(1))}${NO_BREAK}%`;

function rowOf(name: string, a: Assessment, unit: LengthUnit): Dimension {
  const { joint, inRow, amountEach, drive } = a;
  const each = kindText(joint.family).uneven ? '' : `, ${amountText(amountEach, drive.measure, unit)} each`;
  return count(labelOf(name, a), `${grouped(inRow)}${each}`, inRow);
}

function besideRow(name: string, a: Assessment): Dimension {
  return count(labelOf(name, a), grouped(a.sideBySide), a.sideBySide);
}

function count(label: string, shown: string, value: number): Dimension {
  return { label, shown, plain: String(value), in: 'count' };
}

/** Where it goes at full travel, and how far it may be bent. */
export function travelToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { travel, overBend, set, inRow } = a;
  const each = inRow === 1 ? '' : ', each';
  const arc = travel && [
    goes(`Bend radius at full travel${each}`, travel.radius, unit, 'R '),
    goes(`Far pad moves up${each}`, travel.upward, unit),
    goes(`Far pad moves in${each}`, travel.inward, unit),
  ];
  const rows = [
    ...(arc ?? []),
    ...solvedRows(a, unit),
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

/** Where it rests by itself, and what room it leaves: known only where the solver has answered. */
function solvedRows(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { solved, drive, joint } = a;
  if (!solved) return [];
  const rest = familyOf(joint).snaps ? secondRest(solved) : undefined;
  const met = leastGap(solved, joint.movement.amount);
  return [
    ...(rest ? [moved('Second rest, by itself', amountText(rest.amount, drive.measure, unit), a)] : []),
    ...(met ? [follows('Least room on the way', Math.max(0, met.gap), unit)] : []),
  ];
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
  fileFailed: 'The part that draws the outline did not load: see whether you are connected, and press again.',
  oneOfRow: 'The outline is one of the row.',
  fromAbove: 'The outline is the whole sheet from above, with its slits.',
} as const;

/** What the outline shows, where it is not the whole joint as it is drawn above; empty where it is. */
export function outlineShows({ joint, inRow }: Assessment): string {
  const family = familyOf(joint);
  if (family.plan) return TO_DRAW.fromAbove;
  return inRow > 1 && family.outline ? TO_DRAW.oneOfRow : '';
}

/** Why no outline is handed out; empty when one is. A plan does not know how thick its sheet is. */
export function outlineWaits(a: Assessment, unit: LengthUnit): string {
  if (a.fit.outcome === 'whole' || familyOf(a.joint).plan) return '';
  const { exact, countOf } = a.fit;
  return `SVG and DXF wait for whole ${countOf}: ${setLength(a.section.thickness, unit)} is ${exact.toFixed(2)}.`;
}

/** A plane of a joint in several, as layers of a file are called. */
export function planeName(plane: number): string {
  return `plane-${plane + 1}`;
}
