/** Where everything of the chart of lines against scale lies [px]. */
import type { AllWhole, ScaleChart, ScaleRow, WholeMark } from '../../core/inspect/scaleChart.ts';
import type { Span } from '../../core/inspect/wholeSearch.ts';
import { CHECK_LIMITS } from '../../store/checking.ts';
import type { Box } from '../charts/frame.ts';
import { letteringWidth } from '../drawing/lettering.ts';
import { SCALE_CHART, scaleValueText } from '../text/meshFigureText.ts';
import { balloonReach } from './Balloon.tsx';
import { linear, type Linear } from './linear.ts';
import { numbersText } from './numbersText.ts';

interface Line {
  readonly numbers: readonly number[];
  readonly d: string;
  readonly dots: readonly WholeMark[];
  readonly count: number;
  readonly isChosen: boolean;
  /** Where its balloon stands; of many only the outer ones and the one that is looked at have one. */
  readonly balloon: { readonly x: number; readonly y: number } | undefined;
}

export interface ScalePlan {
  readonly height: number;
  readonly box: Box;
  readonly x: Linear;
  readonly y: Linear;
  readonly most: number;
  readonly span: Span;
  readonly marks: readonly number[];
  readonly places: readonly AllWhole[];
  readonly lettered: readonly { readonly at: number; readonly x: number; readonly text: string }[];
  readonly lines: readonly Line[];
  readonly nows: readonly { readonly text: string; readonly y: number }[];
  /** On which side of the pencil line the counts stand. */
  readonly nowSide: 1 | -1;
  readonly valueText: string;
  readonly countsOf: string;
}

/** Counts above this are not drawn. */
const MOST = 12;
/** Of more lines than this most are only drawn: dots and balloons of all would cover one another. */
const FEW = 8;

/** A round span about the scale that is set. */
export function scalesShown(scale: number): Span {
  if (scale >= 0.6 && scale <= 2.6) return { min: 0.5, max: 3 };
  return { min: CHECK_LIMITS.scale.min, max: scale < 0.6 ? 1.2 : Math.ceil(1.4 * scale) };
}

/** So far apart that none touches another, as near as may be to where they belong. */
function spread(wanted: readonly number[], gap: number, low: number, high: number): readonly number[] {
  const order = wanted.map((at, i) => ({ at, i })).toSorted((a, b) => a.at - b.at);
  let least = low;
  for (const one of order) {
    one.at = Math.max(one.at, least);
    least = one.at + gap;
  }
  let most = high;
  for (const one of order.toReversed()) {
    one.at = Math.min(one.at, most);
    most = one.at - gap;
  }
  return order.toSorted((a, b) => a.i - b.i).map(({ at }) => at);
}

/** Corners of a line up to where it leaves the chart. */
function cornersOf({ points }: ScaleRow, most: number): ScaleRow['points'] {
  const within = points.filter(({ count }) => count <= most);
  const [from, to] = [within.at(-1), points[within.length]];
  if (!from || !to) return within;
  const share = (most - from.count) / (to.count - from.count);
  return [...within, { at: from.at + share * (to.at - from.at), count: most }];
}

/** Those that have a balloon and figures: all of few, else the outer ones and the one that is looked at. */
function told(rows: readonly ScaleRow[], chosen: number): readonly ScaleRow[] {
  if (rows.length <= FEW) return rows;
  const order = rows.toSorted((a, b) => a.count - b.count);
  return rows.filter((row) => row === order[0] || row === order.at(-1) || row.numbers.includes(chosen));
}

export function scalePlan({ rows, span, now, allWhole }: ScaleChart, chosen: number, width: number): ScalePlan {
  const height = width < 420 ? 310 : 350;
  const high = Math.max(...rows.flatMap(({ points }) => points.map(({ count }) => count)));
  const most = Math.min(MOST, Math.max(4.6, Math.ceil(high * 2.1) / 2));
  const shown = told(rows, chosen);
  const reach = Math.max(...shown.map(({ numbers }) => balloonReach(numbersText(numbers))));
  const box: Box = { left: 34, right: width - 2 * reach - 12, top: 30, bottom: height - 52 };
  const x = linear([span.min, span.max], [box.left, box.right]);
  const y = linear([0, most], [box.bottom, box.top]);
  const places = allWhole.filter(({ counts }) => Math.max(...counts) <= most);
  return {
    height,
    box,
    x,
    y,
    most,
    span,
    marks: x.marks(width < 420 ? 4 : 6),
    places,
    lettered: lettering(places, x, box),
    lines: linesOf(rows, shown, { chosen, most, x, y, reach, box }),
    ...nowsOf(shown, most, y, box),
    nowSide: now > (span.min + span.max) / 2 ? -1 : 1,
    countsOf: countsOf(rows),
    valueText: scaleValueText(
      now,
      shown.map(({ count }) => count),
      countsOf(rows),
    ),
  };
}

interface Paper {
  readonly chosen: number;
  readonly most: number;
  readonly x: Linear;
  readonly y: Linear;
  readonly reach: number;
  readonly box: Box;
}

function linesOf(
  rows: readonly ScaleRow[],
  shown: readonly ScaleRow[],
  { chosen, most, x, y, reach, box }: Paper,
): readonly Line[] {
  const ends = shown.map((row) => cornersOf(row, most).at(-1) ?? { at: 0, count: 0 });
  const ys = spread(
    ends.map(({ count }) => y(count)),
    22,
    box.top,
    box.bottom,
  );
  return rows.map((row): Line => {
    const corners = cornersOf(row, most).map(({ at, count }) => `${x(at).toFixed(1)} ${y(count).toFixed(1)}`);
    const place = shown.indexOf(row);
    const isChosen = row.numbers.includes(chosen);
    return {
      numbers: row.numbers,
      d: `M${corners.join('L')}`,
      dots: rows.length <= FEW || isChosen ? row.marks.filter(({ count }) => count <= most) : [],
      count: row.count,
      isChosen,
      balloon: place < 0 ? undefined : { x: x(ends[place]!.at) + reach + 6, y: ys[place]! },
    };
  });
}

/** Counts at the scale that is set; those that are alike are lettered once. */
function nowsOf(shown: readonly ScaleRow[], most: number, y: Linear, { top, bottom }: Box): Pick<ScalePlan, 'nows'> {
  const texts = [...new Set(shown.filter(({ count }) => count <= most).map(({ count }) => count.toFixed(2)))];
  const ys = spread(
    texts.map((text) => y(Number(text)) + 16),
    13,
    top + 8,
    bottom - 4,
  );
  return { nows: texts.map((text, i) => ({ text, y: ys[i] ?? 0 })) };
}

function countsOf(rows: readonly ScaleRow[]): string {
  const isLayers = rows.map(({ countOf }) => countOf === 'layers');
  return isLayers.every(Boolean) ? SCALE_CHART.through : isLayers.some(Boolean) ? SCALE_CHART.both : SCALE_CHART.across;
}

/** Words over the places at which all are whole, as far as there is room; even ones first. */
function lettering(places: readonly AllWhole[], x: Linear, { left, right }: Box): ScalePlan['lettered'] {
  const taken: { from: number; to: number }[] = [{ from: left - 24, to: left + 66 }];
  const order = places.toSorted((a, b) => Number(b.isEven) - Number(a.isEven) || a.at - b.at);
  return order.flatMap((place) => {
    const text = `${Number(place.at.toFixed(3))}×: ${[...new Set(place.counts)].join(', ')}`;
    const half = letteringWidth(text, 12) / 2;
    const at = Math.min(Math.max(x(place.at), left + half), right + 20 - half);
    const room = { from: at - half - 6, to: at + half + 6 };
    if (taken.some(({ from, to }) => room.from < to && from < room.to)) return [];
    taken.push(room);
    return [{ at: place.at, x: at, text }];
  });
}
