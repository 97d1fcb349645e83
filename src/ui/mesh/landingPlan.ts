/** How the set lines fall in one thin section, as shapes to be drawn [mm, y up, the section level, its middle the origin]. */
import { common, offset } from '../../core/geometry/clipping.ts';
import type { Loop } from '../../core/geometry/loop.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { PartSection } from '../../core/inspect/flexure.ts';
import { isWhole } from '../../core/inspect/verdicts.ts';
import { WHOLE_WITHIN } from '../../core/design/fit.ts';
import type { Judged, PrintedAs } from '../../core/inspect/judged.ts';
import { levelFrame } from './frames.ts';

export interface Window {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export interface LandingPlan {
  /** What of the part is in the window. */
  readonly outlines: readonly Loop[];
  /** Middles of the lines laid along the outline, closed, and of one along the middle, open. */
  readonly contours: readonly Loop[];
  readonly middle: readonly Point[];
  /** Where lines lie over one another, leave a gap, or where nothing is laid. */
  readonly wrong: readonly Loop[];
  /** Borders between layers that show in this view: level for a crease, upright for what stands. */
  readonly layers: readonly { readonly at: number; readonly isLevel: boolean }[];
  readonly lines: number;
  /** Where its thickness is shown. */
  readonly at: number;
  readonly walls: readonly [top: number, bottom: number];
}

/** More than this about a window is cut away, so that no line is laid along the cut in sight [mm]. */
const BESIDE = 2;
/** Samples along it. */
const SAMPLES = 60;

interface Sample {
  readonly middle: Point;
  readonly across: Point;
  readonly thickness: number;
}

function pointAt(line: readonly Point[], share: number): Point {
  const sums = [0];
  for (const [i, to] of line.entries()) {
    const from = line[i - 1];
    if (from) sums.push((sums.at(-1) ?? 0) + Math.hypot(to.x - from.x, to.y - from.y));
  }
  const wanted = share * (sums.at(-1) ?? 0);
  const i = Math.max(
    1,
    sums.findIndex((sum) => sum >= wanted - 1e-12),
  );
  const [from, to] = [line[i - 1] ?? line[0], line[i] ?? line.at(-1)];
  if (!from || !to) return { x: 0, y: 0 };
  const span = (sums[i] ?? 0) - (sums[i - 1] ?? 0);
  const u = span > 0 ? (wanted - (sums[i - 1] ?? 0)) / span : 0;
  return { x: from.x + u * (to.x - from.x), y: from.y + u * (to.y - from.y) };
}

function samplesOf([a, b]: readonly [readonly Point[], readonly Point[]]): readonly Sample[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const [p, q] = [pointAt(a, i / SAMPLES), pointAt(b, i / SAMPLES)];
    const thickness = Math.hypot(p.x - q.x, p.y - q.y);
    const across = { x: (p.x - q.x) / (thickness || 1), y: (p.y - q.y) / (thickness || 1) };
    return { middle: { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }, across, thickness };
  });
}

/** The stretch about its thinnest place over which it is nearly as thin. */
function thinStretch(samples: readonly Sample[]): readonly Sample[] {
  const least = Math.min(...samples.map(({ thickness }) => thickness));
  const isThin = ({ thickness }: Sample) => thickness <= 1.1 * least + 0.02;
  const at = samples.findIndex(({ thickness }) => thickness === least);
  let [first, last] = [at, at];
  while (first > 0 && isThin(samples[first - 1] as Sample)) first -= 1;
  while (last < samples.length - 1 && isThin(samples[last + 1] as Sample)) last += 1;
  return samples.slice(first, last + 1);
}

/** A strip along the middle, from one offset to another. */
function strip(samples: readonly Sample[], from: number, to: number): Loop {
  const side = (by: number) =>
    samples.map(({ middle, across }) => ({ x: middle.x + by * across.x, y: middle.y + by * across.y }));
  return [...side(from), ...side(to).toReversed()];
}

/** What is amiss with the lines: strips that are left over, doubled or empty. */
function wrongOf(thin: readonly Sample[], { landing }: Judged, thickness: number, width: number): readonly Loop[] {
  const { exact, state } = landing;
  if (isWhole(landing)) return [];
  if (state === 'not-laid') return [strip(thin, -thickness / 2, thickness / 2)];
  const laid = Math.floor(exact + WHOLE_WITHIN);
  if (laid < 2) {
    const doubled = 2 * width - thickness;
    return [strip(thin, -doubled / 2, doubled / 2)];
  }
  const left = thickness - laid * width;
  if (laid % 2 === 0) return [strip(thin, -left / 2, left / 2)];
  const from = width / 2;
  return [strip(thin, from, from + left / 2), strip(thin, -from - left / 2, -from)];
}

function layersOf(judged: Judged, as: PrintedAs, window: Window, height: number): LandingPlan['layers'] {
  const { layerHeight: by } = as.profile;
  if (judged.lying === 'flat') return [];
  const isLevel = judged.lying === 'crease';
  const [low, high] = isLevel ? [window.bottom, window.top] : [window.left, window.right];
  const first = isLevel ? height : 0;
  const from = Math.ceil((low - first) / by);
  const count = Math.max(0, Math.floor((high - first) / by) - from + 1);
  return Array.from({ length: count }, (_, i) => ({ at: first + (from + i) * by, isLevel }));
}

/**
 * The part about one thin section with the lines in it. `bottom` is how high the underside of the first layer above the
 * plate's own layer lies, in the frame [mm].
 */
export function landingPlan(
  judged: Judged,
  section: PartSection,
  as: PrintedAs,
  window: Window,
  bottom: number,
  isByMiddle = false,
): LandingPlan {
  const { scale, profile } = as;
  const { into } = levelFrame(judged.flexure, section, as.up, isByMiddle);
  const scaled = (point: Point) => {
    const { x, y } = into(point);
    return { x: scale * x, y: scale * y };
  };
  const width = profile.lineWidth;
  const reach = BESIDE + 2 * width;
  const [l, r, b, t] = [window.left - reach, window.right + reach, window.bottom - reach, window.top + reach];
  const frame = [
    { x: l, y: b },
    { x: r, y: b },
    { x: r, y: t },
    { x: l, y: t },
  ];
  const outlines = common(
    section.outlines.map((loop) => loop.map(scaled)),
    [frame],
  );
  const isInLines = judged.landing.countOf === 'lines' && judged.lying === 'flat';
  const lines = Math.floor(judged.landing.exact + WHOLE_WITHIN);
  const walls = judged.flexure.walls.map((wall) => wall.map(scaled));
  const samples = samplesOf([walls[0] ?? [], walls[1] ?? []]);
  const thin = thinStretch(samples);
  const thickness = scale * judged.flexure.thickness.least;
  const contours = isInLines
    ? Array.from({ length: Math.max(1, Math.floor(lines / 2)) }, (_, i) =>
        offset(outlines, -(i + 0.5) * width, 0.005),
      ).flat()
    : [];
  const hasMiddle = isInLines && lines % 2 === 1 && (lines > 1 || judged.landing.exact < 1 + WHOLE_WITHIN);
  const at = thin[Math.floor(thin.length / 2)];
  return {
    outlines,
    contours,
    middle: hasMiddle ? thin.map(({ middle }) => middle) : [],
    wrong: wrongOf(thin, judged, thickness, judged.landing.countOf === 'lines' ? width : profile.layerHeight),
    layers: layersOf(judged, as, window, bottom),
    lines,
    at: at?.middle.x ?? 0,
    walls: [(at?.middle.y ?? 0) + thickness / 2, (at?.middle.y ?? 0) - thickness / 2],
  };
}
