/** Where everything of Fig. 3 lies: every layer of a section, with what is told of it [px]. */
import type { JudgedPlace, LaidFinding } from '../../../core/inspect/toolpath/judgedPlace.ts';
import { letteringWidth } from '../../drawing/lettering.ts';
import { linear, type Linear } from '../../mesh/linear.ts';
import { lengthFigure, MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import { lanesOf, staveBrackets, type Bracket } from './staveBrackets.ts';
import { reachOf, staveScale, type PlacedRow, type StaveScale } from './staveScale.ts';

interface StaveMark {
  readonly at: number;
  readonly text: string;
}

/** Where one column of the stave lies. */
interface StaveColumn {
  readonly left: number;
  readonly right: number;
}

export interface StavePlan extends StaveScale {
  readonly width: number;
  readonly height: number;
  readonly axis: number;
  readonly heights: readonly StaveMark[];
  /** Section B–B. */
  readonly section: StaveColumn & {
    readonly middle: number;
    /** Half of what is wanted across; absent where layers are wanted, or where the beads are broken off. */
    readonly wanted: number | undefined;
    readonly isBroken: boolean;
  };
  readonly lines: StaveColumn & { readonly x: Linear; readonly marks: readonly StaveMark[] };
  readonly widths: StaveColumn & { readonly x: Linear; readonly marks: readonly StaveMark[] };
  /** What is wanted in these two, if lines are. */
  readonly wanted: { readonly lines: number; readonly widths: number; readonly widthText: string } | undefined;
  readonly starts: StaveColumn;
  readonly brackets: readonly Bracket[];
  readonly laneAt: (lane: number) => number;
}

const AXIS = 36;
const SECTION = AXIS + 12;
const GAP = 15;
const STARTS = 38;
export const LANE = 26;
const FOOT = 26;
/** “× 24” beside a joined row. */
const TIMES = 38;
/** Lines across and widths together need so much. */
const TRACKS = 70;

interface Asked {
  readonly judged: JudgedPlace;
  readonly numbered: ReadonlyMap<LaidFinding, number>;
  readonly width: number;
  readonly screenPxPerMm: number;
  readonly unit: LengthUnit;
}

/** Figures up the side: round heights where y is height, else the top of every row that has room for one. */
function heightsOf({ rows, isTrue, top, bottom, pxPerMm }: StaveScale, unit: LengthUnit): readonly StaveMark[] {
  const per = unit === 'mm' ? 1 : MM_PER_INCH;
  if (isTrue) {
    const [low, high] = [rows[0]?.bottom ?? 0, rows.at(-1)?.top ?? 0];
    const y = linear([low / per, Math.max(high, low + 1e-3) / per], [bottom, top]);
    const most = Math.max(1, Math.floor(((high - low) * pxPerMm) / 40));
    const marks = y.marks(most);
    const step = marks.length > 1 ? marks[1]! - marks[0]! : 1;
    const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    return marks.map((value) => ({ at: y(value), text: value.toFixed(decimals) }));
  }
  let last = Infinity;
  return rows.flatMap(({ y, top: z }): readonly StaveMark[] => {
    if (last - y < 20) return [];
    last = y;
    return [{ at: y, text: lengthFigure(z, unit, unit === 'mm' ? 1 : 2) }];
  });
}

/** Whole counts that stand far enough apart, and always the wanted one. */
function countMarks(x: Linear, most: number, wanted: number | undefined): readonly StaveMark[] {
  const apart = x(1) - x(0);
  const room = letteringWidth(String(most), 12) + 5;
  const every = Math.max(1, Math.ceil(room / Math.max(apart, 0.1)));
  const all = Array.from({ length: most + 1 }, (_, n) => n);
  const kept = all.filter(
    (n) => n === wanted || (n % every === 0 && (wanted === undefined || Math.abs(x(n) - x(wanted)) >= room)),
  );
  return kept.map((n) => ({ at: x(n), text: String(n) }));
}

function widthMarks(x: Linear, wanted: { readonly at: number; readonly text: string } | undefined) {
  const marks = x.marks(3);
  const step = marks.length > 1 ? marks[1]! - marks[0]! : 1;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return marks
    .map((value) => ({ at: x(value), text: value === 0 ? '0' : value.toFixed(decimals) }))
    .filter(({ at, text }) => {
      if (!wanted) return true;
      const room = (letteringWidth(text, 12) + letteringWidth(wanted.text, 12)) / 2 + 4;
      return Math.abs(at - wanted.at) >= room;
    });
}

/** The two tracks beside the section: counts, and widths. */
function tracksOf({ judged: { wanted, audit }, unit }: Asked, rows: readonly PlacedRow[], left: number, room: number) {
  const isLines = wanted.countOf === 'lines';
  const per = unit === 'mm' ? 1 : MM_PER_INCH;
  const most = Math.max(2, isLines ? wanted.count : 0, ...rows.map(({ lines }) => lines.most));
  const widest = Math.max(
    isLines ? wanted.each : 0,
    ...audit.layers.map(({ widths }) => widths?.most ?? 0),
    isLines ? 0 : 0.1,
  );
  const split = left + 0.4 * (room - GAP);
  const lines = { left, right: split };
  const widths = { left: split + GAP, right: left + room };
  const count = linear([0, most], [lines.left + 4, lines.right - 4]);
  const size = linear([0, (1.12 * widest) / per], [widths.left + 4, widths.right - 4]);
  const text = lengthFigure(wanted.each, unit);
  const at = size(wanted.each / per);
  return {
    lines: { ...lines, x: count, marks: countMarks(count, most, isLines ? wanted.count : undefined) },
    // In the core's unit, as everything that is drawn on it.
    widths: {
      ...widths,
      x: linear([0, 1.12 * widest], [widths.left + 4, widths.right - 4]),
      marks: widthMarks(size, isLines ? { at, text } : undefined),
    },
    wanted: isLines ? { lines: count(wanted.count), widths: at, widthText: text } : undefined,
  };
}

/** How many lanes of brackets there is room for beside what must stand. */
function laneRoom(width: number, taken: number): number {
  return Math.min(4, Math.max(0, Math.floor((width - taken - STARTS - GAP - TRACKS) / LANE)));
}

export function stavePlan(asked: Asked): StavePlan {
  const { judged, numbered, width, screenPxPerMm, unit } = asked;
  const room = Math.max(76, 0.3 * width);
  const scaled = staveScale({ judged, numbered, room, screenPxPerMm });
  const { rows, bottom } = scaled;
  const wide = 2 * reachOf(rows, judged) * scaled.pxPerMm;
  const isBroken = wide > room + 0.5;
  // What is wanted is written over the beads, and is wider than a thin leaf.
  const right = SECTION + Math.max(64, Math.min(wide, room));
  const taken = right + GAP + (scaled.isTrue ? 0 : TIMES);
  const place = (first: number, last: number) => {
    const [low, high] = [first, last].map((layer) => rows.find((row) => row.first <= layer && layer <= row.last));
    return [high?.y ?? 0, (low?.y ?? 0) + (low?.high ?? 0)] as const;
  };
  const brackets = staveBrackets(numbered, place, judged.audit.layers.length, laneRoom(width, taken));
  const lanes = LANE * lanesOf(brackets);
  const tracks = tracksOf(asked, rows, taken, width - taken - STARTS - GAP - lanes);
  const isLines = judged.wanted.countOf === 'lines';
  return {
    ...scaled,
    width,
    height: Math.ceil(bottom) + FOOT,
    axis: AXIS,
    heights: heightsOf(scaled, unit),
    section: {
      left: SECTION,
      right,
      middle: (SECTION + right) / 2,
      wanted: isLines && !isBroken ? (judged.wanted.thickness / 2) * scaled.pxPerMm : undefined,
      isBroken,
    },
    ...tracks,
    starts: { left: width - lanes - STARTS, right: width - lanes },
    brackets,
    laneAt: (lane) => width - lanes + LANE * lane,
  };
}

/** The layer at a height of the drawing: in a joined row the one as far up in it. */
export function layerAtY({ rows, top, bottom }: Pick<StavePlan, 'rows' | 'top' | 'bottom'>, y: number): number {
  const within = Math.min(bottom - 1e-3, Math.max(top, y));
  const row = rows.find((one) => within >= one.y && within < one.y + one.high) ?? rows[0];
  if (!row) return 1;
  const count = row.last - row.first + 1;
  const down = Math.floor(((within - row.y) / row.high) * count);
  return row.last - Math.min(count - 1, Math.max(0, down));
}

/** The row in which a layer stands. */
export function rowOfLayer({ rows }: Pick<StavePlan, 'rows'>, layer: number): PlacedRow | undefined {
  return rows.find(({ first, last }) => first <= layer && layer <= last);
}
