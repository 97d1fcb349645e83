/** Data of two figures: lines across against scale, and the line widths that come out whole. */
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import { layableWidths } from '../print/checkProfile.ts';
import { nearestWhole } from '../print/nearestCount.ts';
import type { Mm } from '../units.ts';
import { SCALES } from './cureWhole.ts';
import type { Flexure } from './flexure.ts';
import type { PrintedAs } from './judged.ts';
import { byScale, byWidth, stretchesOf, thinOf, type CountLine, type Span, type Thin } from './wholeSearch.ts';

/** A scale, or a line width [mm], at which a thickness is a whole count. */
export interface WholeMark {
  readonly at: number;
  readonly count: number;
  /** Of lines; layers do not ask. */
  readonly isEven: boolean;
}

/** One thickness of the part. */
export interface ChartRow extends Thin {
  readonly marks: readonly WholeMark[];
}

export interface ScaleRow extends ChartRow {
  /** Lines or layers across at the scale that is set. */
  readonly count: number;
  /** Corners of the line of its count against the scale, from one end of the span to the other. */
  readonly points: readonly { readonly at: number; readonly count: number }[];
}

/** Where all sections are whole at once, with the count of each row. */
export interface AllWhole {
  readonly at: number;
  readonly counts: readonly number[];
  readonly isEven: boolean;
}

export interface ScaleChart {
  readonly span: Span;
  readonly now: number;
  readonly rows: readonly ScaleRow[];
  readonly allWhole: readonly AllWhole[];
}

export interface WidthChart {
  /** All that the nozzle lays [mm]. */
  readonly span: Span;
  /** What it lays well [mm]. */
  readonly well: Span;
  readonly now: Mm;
  /** Sections of lines; layers do not ask how wide a line is. */
  readonly rows: readonly ChartRow[];
  readonly allWhole: readonly AllWhole[];
}

/** Thicknesses that differ by no more are one line of a chart [mm]. */
const SAME: Mm = 0.01;

/**
 * Lines across against scale for each different thickness, and the scales at which all are whole.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale [-], which way is up, print profile [mm]
 * @param span - scales that are shown [-]
 * @returns rows in the order of their first numbers; scales [-]
 *
 * Source: bead-section.
 */
export function scaleChart(flexures: readonly Flexure[], box: Box3, as: PrintedAs, span: Span = SCALES): ScaleChart {
  const lines = byScale(thinOf(flexures, box, as, SAME), as.profile);
  const rows = lines.map((line) => ({
    ...line.thin,
    count: line.countAt(as.scale),
    marks: marksOf(line, span),
    points: pointsOf(line, span),
  }));
  return { span, now: as.scale, rows, allWhole: allWholeOf(lines, span) };
}

/**
 * Line widths at which each different thickness is whole, and those at which all are.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale [-], which way is up, print profile [mm]
 * @returns rows in the order of their first numbers; line widths [mm]
 *
 * Source: bead-section, common-practice.
 */
export function widthChart(flexures: readonly Flexure[], box: Box3, as: PrintedAs): WidthChart {
  const { hard: span, soft: well } = layableWidths(as.profile.nozzle);
  const thins = thinOf(flexures, box, as, SAME).filter(({ countOf }) => countOf === 'lines');
  const lines = byWidth(thins, as);
  const rows = lines.map((line) => ({ ...line.thin, marks: marksOf(line, span) }));
  return { span, well, now: as.profile.lineWidth, rows, allWhole: allWholeOf(lines, span) };
}

/** 6 × 0.56/0.84 is 4 but for its last digit. */
const ROUND_OFF = 1e-9;

/** Every whole count within a span. */
function marksOf({ thin, countAt, valueAt }: CountLine, { min, max }: Span): readonly WholeMark[] {
  const ends = [countAt(min), countAt(max)];
  const [first, last] = [Math.max(1, Math.floor(Math.min(...ends))), Math.ceil(Math.max(...ends))];
  return Array.from({ length: last - first + 1 }, (_, i) => first + i)
    .map((count) => ({ at: valueAt(count), count, isEven: thin.countOf === 'layers' || count % 2 === 0 }))
    .filter(({ at }) => at >= min * (1 - ROUND_OFF) && at <= max * (1 + ROUND_OFF))
    .toSorted((a, b) => a.at - b.at);
}

/** A straight line, with a corner at one line or layer where beads overlap or the first layer is of another height. */
function pointsOf({ countAt, valueAt }: CountLine, { min, max }: Span): ScaleRow['points'] {
  const corner = valueAt(1);
  const inside = corner > min && corner < max ? [corner] : [];
  return [min, ...inside, max].map((at) => ({ at, count: countAt(at) }));
}

function allWholeOf(lines: readonly CountLine[], span: Span): readonly AllWhole[] {
  const all = lines.reduce((sum, { thin }) => sum + thin.numbers.length, 0);
  return stretchesOf(lines, span)
    .filter(({ whole }) => whole === all)
    .map(({ value, even }) => ({
      at: value,
      counts: lines.map(({ countAt }) => nearestWhole(countAt(value)).count),
      isEven: even === all,
    }));
}
