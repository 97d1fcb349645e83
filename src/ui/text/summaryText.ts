/** Words of the one-page summary of a joint: its heads, its table of figures, and what is said of its drawings. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { AllowableName, Assessment } from '../../core/design/assessment.ts';
import { soundness } from '../../core/material/choose.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import { radians } from '../../core/units.ts';
import { effortText, roughAmount } from './amountText.ts';
import { rowFigure, thicknessFigure, VIEWS } from './drawingText.ts';
import {
  cycles,
  effortFigure,
  grouped,
  inHundred,
  length,
  NO_BREAK,
  percent,
  setLength,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import { lyingText } from './kindText.ts';
import { besideFigure } from './solvedDrawingText.ts';

export const SUMMARY = {
  title: 'One-page summary',
  page: (joint: string) => `Summary of ${joint}`,
  print: 'Print this page',
  back: 'Back to the joint',
  joint: 'Joint',
  choose: 'choose one',
  paper: 'Fills one sheet of A4 or Letter: choose which in the print window, at 100 %.',
  working: 'The solver is working it out; the page follows.',
  noJoint: 'This part has no joint yet.',
  gone: (id: string) => `No joint called “${id}” is in this part. Choose another.`,
  part: 'Part',
  kind: 'Kind',
  date: 'Date',
  filament: 'Filament',
  profile: 'Profile',
  wanted: 'What is wanted',
  verdict: 'Verdict',
  figures: 'In figures',
  toDraw: 'To draw',
  curve: 'Strain against life',
  curveAid: 'dots: other lines across; shade: 10 to 90 in 100',
  curveAidLayers: 'dots: other layers through; shade: 10 to 90 in 100',
  notes: 'Print notes',
  notesAid: 'common practice, no source',
  cautions: 'Read this',
  marks: 'Marks beside figures',
  after: 'Drawings hold for a print at 100 % only.',
  drawings: 'Drawings',
  notDrawn: 'There is no drawing: the solver gave no answer for it.',
} as const;

/** “0.4 mm nozzle, lines 0.42 mm, layers 0.2 mm, first 0.2 mm, printed flat”. */
export function profileLine({ joint: { profile, family } }: Assessment, unit: LengthUnit): string {
  const size = (value: number, least?: number) => `${setLength(value, unit, least)}${unitAfter(unit)}`;
  const { nozzle, lineWidth, layerHeight, firstLayerHeight, lying } = profile;
  return `${size(nozzle, 1)} nozzle, lines ${size(lineWidth)}, layers ${size(layerHeight)}, first ${size(firstLayerHeight)}; ${lyingText(family, lying)}`;
}

/** A row of the table of figures. */
export interface SummaryFigure {
  readonly name: string;
  readonly text: string;
  readonly mark: ProvenanceKind | undefined;
}

const LIMITS: Readonly<Record<AllowableName, string>> = {
  repeated: 'Stood again and again',
  held: 'Held for long',
  single: 'Stood once in a while',
  yield: 'Stays bent past',
  break: 'Breaks past',
};

function limitRows(a: Assessment): readonly SummaryFigure[] {
  const names = (['repeated', 'held', 'yield', 'break'] as const).filter(
    (name) => name !== 'held' || a.joint.movement.held,
  );
  return names.map((name) => {
    const { limit, provenance } = allowableNamed(a.allowables, name);
    return { name: LIMITS[name], text: percent(limit), mark: soundness(provenance) };
  });
}

function lifeRows({ life, joint, provenance }: Assessment): readonly SummaryFigure[] {
  const mark = provenance.life;
  const { cycles: wanted, chance } = joint.movement;
  const name = 'Life, half broken by';
  if (life.breaksOnFirstFlex) return [{ name, text: 'the first flex', mark }];
  const most = grouped(life.maxReportableCycles);
  if (life.beyond === 'wanted') return [{ name, text: `none given: counted to ${most} only`, mark }];
  const upTo = (count: number) => (count > life.maxReportableCycles ? `over ${most}` : cycles(count));
  const [early, late] = [upTo(life.total.p10), upTo(life.total.p90)];
  const spread = early === late ? early : `${early} to ${late}`;
  return [
    { name, text: upTo(life.median), mark },
    { name: '10 to 90 in 100 by', text: spread, mark },
    {
      name: `Reach ${grouped(wanted)}`,
      text: `${inHundred(life.chance)} in 100; ${inHundred(chance)} wanted`,
      mark,
    },
  ];
}

function effortRows(a: Assessment): readonly SummaryFigure[] {
  const { effort, estimate, travel } = a;
  const mark = soundness(effort.provenance);
  const isTurn = effort.measure === 'turn';
  const first = effort.stiffness * (isTurn ? radians(1) : 1);
  return [
    { name: 'Effort at most', text: `${estimate ? 'about ' : ''}${effortText(effort.effort, effort.measure)}`, mark },
    {
      name: 'soft to stiff spool',
      text: `${effortFigure(effort.low)} to ${effortText(effort.high, effort.measure)}`,
      mark,
    },
    {
      name: travel ? 'Stiffness' : 'Stiffness on the way',
      text: `${effortText(first, effort.measure)} a ${isTurn ? 'degree' : 'millimetre'}`,
      mark,
    },
  ];
}

function setRow({ set, effort, provenance }: Assessment, unit: LengthUnit): SummaryFigure {
  const name = 'Left after one bend';
  if (!(set.high > 0)) return { name, text: 'nothing to speak of', mark: undefined };
  const say = (value: number) => roughAmount(value, effort.measure, unit);
  return { name, text: `${say(set.low)} to ${say(set.high)}`, mark: provenance.effort };
}

/** The figures of the joint, each with where it comes from. */
export function summaryFigures(a: Assessment, unit: LengthUnit): readonly SummaryFigure[] {
  return [
    {
      name: 'Thickness',
      text: a.joint.measuredThickness === undefined ? thicknessFigure(a, unit) : length(a.section.thickness, unit),
      mark: a.joint.measuredThickness === undefined ? 'computed' : 'measured',
    },
    {
      name: 'Strain of the skin',
      text: `${a.estimate ? 'about ' : ''}${percent(a.strain.peak)}`,
      mark: a.provenance.strain,
    },
    ...limitRows(a),
    ...lifeRows(a),
    ...effortRows(a),
    setRow(a, unit),
  ];
}

/** Under the drawing: from where it is seen, its scale, and why that is not 1 : 1. */
export function drawingSays(laid: keyof typeof VIEWS, scale: string, isMoved: boolean): string {
  const view = VIEWS[laid];
  const why = scale === '1 : 1' ? 'true size' : 'as 1 : 1 has no room on this page';
  return `${view}, scale ${scale.replaceAll(' ', NO_BREAK)}, ${why}${isMoved ? '; dashed: moved as far as wanted' : ''}.`;
}

export function enlargedSays(scale: string): string {
  return `Enlarged ${scale.replaceAll(' ', NO_BREAK)}; dashed: moved as far as wanted.`;
}

/** What of a joint is not in its drawing: others in its row, others side by side. */
export function restSays(a: Assessment, unit: LengthUnit): string {
  const said = a.solved ? besideFigure(a.solved.network.alike) : rowFigure(a, unit);
  return said === '' ? '' : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}
