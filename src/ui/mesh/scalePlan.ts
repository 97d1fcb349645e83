/** Where everything of the chart of lines against scale lies [px]. */
import type { Box3 } from '../../core/geometry/mesh/triangleMesh.ts';
import type { PrintedAs } from '../../core/inspect/judged.ts';
import { asLaid } from '../../core/inspect/asLaid.ts';
import { thicknessAt } from '../../core/inspect/landing.ts';
import type { Box } from '../charts/frame.ts';
import { letteringWidth } from '../drawing/lettering.ts';
import { SCALE_CHART, scaleValueText } from '../text/meshText.ts';
import type { Alike } from '../../core/inspect/alike.ts';
import { linear, type Linear } from './linear.ts';
import { numbersText } from './numbersText.ts';
import { balloonReach } from './Balloon.tsx';
import { countIn, scalesForAll, type WholePlace } from './wholePlaces.ts';

interface Line {
  readonly alike: Alike;
  readonly d: string;
  readonly dots: readonly { readonly at: number; readonly count: number }[];
  readonly end: { readonly x: number; readonly y: number };
  readonly now: number;
}

export interface ScalePlan {
  readonly height: number;
  readonly box: Box;
  readonly x: Linear;
  readonly y: Linear;
  readonly most: number;
  readonly span: readonly [number, number];
  readonly marks: readonly number[];
  readonly places: readonly WholePlace[];
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

/** A round span about the scale that is set. */
function spanOf(scale: number): readonly [number, number] {
  if (scale >= 0.6 && scale <= 2.6) return [0.5, 3];
  return scale < 0.6 ? [0, 1.2] : [0, Math.ceil(1.4 * scale)];
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

function lineOf(
  alike: Alike,
  box: Box3,
  as: PrintedAs,
  span: readonly [number, number],
  most: number,
  x: Linear,
  y: Linear,
) {
  const { flexure } = alike.one;
  const count = (scale: number) => countIn(flexure, box, { ...as, scale });
  const [low, high] = [Math.max(span[0], 0.02), span[1]];
  const laid = asLaid(flexure, box, { ...as, scale: 1 });
  const scaleAt = (many: number) => thicknessAt(many, laid) / laid.thickness;
  const stop = Math.min(high, count(high) > most ? scaleAt(most) : high);
  // Straight but for the bend at one line that overlapped lines have.
  const turn = scaleAt(1);
  const at = [low, ...(turn > low && turn < stop ? [turn] : []), stop];
  const points = at.map((scale) => `${x(scale).toFixed(1)} ${y(Math.min(most, count(scale))).toFixed(1)}`);
  const dots = Array.from({ length: Math.floor(most) }, (_, i) => ({ at: scaleAt(i + 1), count: i + 1 })).filter(
    (dot) => dot.at >= low && dot.at <= stop + 1e-9,
  );
  return { alike, d: `M${points.join('L')}`, dots, stop, end: count(stop), now: count(as.scale) };
}

export function scalePlan(groups: readonly Alike[], part: Box3, as: PrintedAs, width: number): ScalePlan {
  const height = width < 420 ? 310 : 350;
  const span = spanOf(as.scale);
  const flexures = groups.map(({ one }) => one.flexure);
  const high = Math.max(...flexures.map((flexure) => countIn(flexure, part, { ...as, scale: span[1] })));
  const most = Math.min(MOST, Math.max(4.6, Math.ceil(high * 2.1) / 2));
  const reach = Math.max(...groups.map(({ numbers }) => balloonReach(numbersText(numbers))));
  const box: Box = { left: 34, right: width - 2 * reach - 12, top: 30, bottom: height - 52 };
  const x = linear(span, [box.left, box.right]);
  const y = linear([0, most], [box.bottom, box.top]);
  const drawn = groups.map((alike) => lineOf(alike, part, as, span, most, x, y));
  const ends = spread(
    drawn.map(({ end }) => y(Math.min(most, end))),
    22,
    box.top,
    box.bottom,
  );
  const places = scalesForAll(flexures, part, as, span).filter(({ counts }) => Math.max(...counts) <= most);
  const nowSide = as.scale > (span[0] + span[1]) / 2 ? -1 : 1;
  const within = drawn.filter(({ now }) => now <= most);
  // Those that are alike are lettered once.
  const nows = [...new Set(within.map(({ now }) => now.toFixed(2)))];
  const nowYs = spread(
    nows.map((now) => y(Number(now)) + 16),
    13,
    box.top + 8,
    box.bottom - 4,
  );
  return {
    height,
    box,
    x,
    y,
    most,
    span,
    marks: x.marks(width < 420 ? 4 : 6).filter((at) => at > 0),
    places,
    lettered: lettering(places, x, box),
    lines: drawn.map((line, i) => ({ ...line, end: { x: x(line.stop) + reach + 6, y: ends[i] ?? 0 } })),
    nows: nows.map((text, i) => ({ text, y: nowYs[i] ?? 0 })),
    nowSide,
    countsOf: countsOf(groups),
    valueText: scaleValueText(
      as.scale,
      drawn.map(({ now }) => now),
    ),
  };
}

function countsOf(groups: readonly Alike[]): string {
  const isLayers = groups.map(({ one }) => one.landing.countOf === 'layers');
  return isLayers.every(Boolean) ? SCALE_CHART.through : isLayers.some(Boolean) ? SCALE_CHART.both : SCALE_CHART.across;
}

/** Words over the places at which all are whole, as far as there is room; even ones first. */
function lettering(places: readonly WholePlace[], x: Linear, { left, right }: Box): ScalePlan['lettered'] {
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
