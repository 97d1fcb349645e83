/** The dimensions to carry into a drawing program, and how far the joint may be bent. */
import type { Assessment } from '../../core/design/assessment.ts';
import { familyOf } from '../../core/flexures/index.ts';
import { degrees, type Mm, type Rad } from '../../core/units.ts';
import { thicknessFigure } from './drawingText.ts';
import { kindText } from './kindText.ts';
import { angle, angleWithin, grouped, lengthFigure, setLength, type LengthUnit } from './numbers.ts';

export interface Dimension {
  readonly label: string;
  /** As it stands in the table, without the unit of length, which is in its heading. */
  readonly shown: string;
  /** The bare number, for a drawing program, with its unit. */
  readonly plain: string;
  readonly in: 'length' | 'angle' | 'count';
}

const FULL_TURN = 2 * Math.PI;

function cut(label: string, value: Mm, unit: LengthUnit, shown?: string): Dimension {
  const figure = setLength(value, unit);
  return { label, shown: shown ?? figure, plain: figure, in: 'length' };
}

/** What follows from the sizes is shown with a decimal less: nobody cuts it. */
function follows(label: string, value: Mm, unit: LengthUnit, before = ''): Dimension {
  const figure = lengthFigure(value, unit, unit === 'mm' ? 1 : 3);
  return { label, shown: `${before}${figure}`, plain: lengthFigure(value, unit), in: 'length' };
}

/** An angle not to be passed. */
function within(label: string, value: Rad): Dimension {
  const shown = value > FULL_TURN ? 'over 360°' : angleWithin(value);
  return { label, shown, plain: shown.replace('°', ''), in: 'angle' };
}

/** Sizes that are drawn. */
export function sizesToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { joint, section, fillet, padThickness, inRow, length } = a;
  const text = kindText(joint.family);
  const depth = text.sizes[familyOf(joint).roles.depth];
  const filletFigure = setLength(fillet, unit);
  const rows = [
    cut('Flexing length, between fillets', length, unit),
    cut('Thickness', section.thickness, unit, thicknessFigure(a, unit)),
    cut(depth ?? 'Depth', section.width, unit),
    cut(`Root fillets, ${text.fillets}`, fillet, unit, fillet > 0 ? `R ${filletFigure}` : 'none'),
    cut(`${text.padName}s, thick`, padThickness, unit),
  ];
  if (inRow === 1) return rows;
  const each = `${grouped(inRow)}, ${angle(a.angleEach)} each`;
  return [...rows, { label: `In a row`, shown: each, plain: String(inRow), in: 'count' }];
}

/** Where it goes at full travel, and how far it may be bent. */
export function travelToDraw(a: Assessment, unit: LengthUnit): readonly Dimension[] {
  const { travel, overBend, set, inRow } = a;
  const each = inRow === 1 ? '' : ', each';
  const rows = [
    follows(`Bend radius at full travel${each}`, travel.radius, unit, 'R '),
    follows(`Far pad moves up${each}`, travel.upward, unit),
    follows(`Far pad moves in${each}`, travel.inward, unit),
    within('Put a hard stop at', overBend.hardStop),
    within('A trace of set from', overBend.atSet),
    within('Stays bent past', overBend.atYield),
    within('Breaks past', overBend.atBreak),
  ];
  const left = degrees(set.angle);
  if (left < 0.5) return rows;
  const about = angle(set.angle, 0);
  return [
    ...rows,
    { label: 'Left in it after one bend, up to', shown: about, plain: about.replace('°', ''), in: 'angle' },
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
  dxfFailed: 'The part that writes DXF did not load; SVG works without it.',
  oneOfRow: 'The outline is one of the row.',
} as const;

/** Why no outline is handed out; empty when one is. */
export function outlineWaits(a: Assessment, unit: LengthUnit): string {
  if (a.fit.outcome === 'whole') return '';
  const { exact, countOf } = a.fit;
  return `SVG and DXF wait for whole ${countOf}: ${setLength(a.section.thickness, unit)} is ${exact.toFixed(2)}.`;
}
