/** Lettering of Fig. 1: dimensions, what goes wrong, then what is always so [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import { letteringWidth, type Box, type Label } from '../../drawing/lettering.ts';
import { boxAround, levelDimension, measured, NO_MARKS, together, type Marks } from '../../drawing/marks.ts';
import { densified } from '../../drawing/polygon.ts';
import { hitsFigure, keep, keepLabel, type Room } from '../../drawing/room.ts';
import { FRAME, onSheet, pair, type Sheet } from '../../drawing/sheet.ts';
import {
  acrossText,
  alongText,
  openWords,
  startsWords,
  stopsWords,
  TOOLPATH_FIGURES,
} from '../../text/toolpathFigureText.ts';
import type { DrawnLayer } from './layerFigure.ts';
import type { Lengthwise } from './lengthwise.ts';
import type { OpenStrip } from './openStrips.ts';
import type { Ring } from './pathStarts.ts';
import { placeLabel, placeWords, type PlacedWords } from './placeWords.ts';
import { cutPlace, lookedLength, sidesAt } from './trackAt.ts';

export interface Lettered extends DrawnLayer {
  readonly page: Lengthwise;
  readonly sheet: Sheet;
  /** Where plastic is drawn. */
  readonly window: Box;
  readonly open: readonly OpenStrip[];
  readonly rings: readonly Ring[];
  readonly keepOut: readonly Point[];
}

/** How long the heavy dashes of the section mark are, and how far off the surface [px]. */
const DASH = 12;
const DASH_OFF = 12;

/** Words about faults: starts, stops, then open places of either kind, one label each. */
function faultWords({ layer, audit, open, rings, unit }: Lettered, room: Room): readonly PlacedWords[] {
  const about = (kind: Ring['kind'], texts: typeof startsWords) => {
    const own = rings.filter((one) => one.kind === kind);
    const [ring] = own;
    if (!ring) return [];
    const said = texts(
      own.flatMap(({ end }) => end ?? []),
      unit,
    );
    return [{ tip: ring, clear: ring.reach, texts: said, tone: 'fault', isFailed: true } as const];
  };
  const gap = (kind: OpenStrip['kind']) => {
    const strips = open.filter((one) => one.kind === kind);
    const longest = strips.toSorted((a, b) => b.long - a.long)[0];
    if (!longest) return [];
    const isNothing = layer.lines.most === 0;
    const texts = isNothing
      ? TOOLPATH_FIGURES.nothing
      : openWords(
          layer.open.filter((one) => one.kind === kind),
          lookedLength(audit),
          unit,
        );
    return [{ tip: longest.middle, clear: 3, texts, tone: 'fault', isFailed: isNothing } as const];
  };
  const asked = [...about('start', startsWords), ...about('stop', stopsWords), ...gap('along'), ...gap('between')];
  return asked.flatMap((words) => placeWords(room, words) ?? []);
}

/** The run, under everything. */
function runDimension({ audit, page, sheet, window, unit }: Lettered): Marks {
  const ends = [0, audit.length].map((along) => onSheet(page, page.frame.at(along, 0)).x);
  const [x0, x1] = [Math.min(...ends), Math.max(...ends)];
  const y = sheet.bottom - FRAME - 28;
  const text = alongText(audit.length, page.frame.isCurved, unit);
  const isTight = x1 - x0 < letteringWidth(text, 13) + 26;
  const said = { text, tone: 'ink', size: 13 } as const;
  const label: Label = isTight
    ? { ...said, x: x1 + 26, y: y + 4.5, anchor: 'start' }
    : { ...said, x: (x0 + x1) / 2, y: y - 5, anchor: 'middle' };
  return levelDimension(x0, x1, y, window.y + window.height + 4, label, isTight);
}

function keepDimension({ labels }: Marks, { sheet }: Lettered, room: Room): void {
  const y = sheet.bottom - FRAME - 28;
  for (const label of labels) keepLabel(room, label);
  keep(room, { x: FRAME + 4, y: y - 3, width: sheet.width - FRAME - 8, height: 8 });
}

/** From side to side, with arrows from outside, at the first place along the run where its figure stands clear. */
function acrossDimension({ layer, audit, place, page, unit }: Lettered, room: Room): Marks {
  if (layer.thickness <= 0) return NO_MARKS;
  const text = acrossText(layer.thickness, place.lying === 'crease', unit);
  for (const share of [0.9, 0.86, 0.8, 0.1, 0.14, 0.2, 0.7, 0.3, 0.6, 0.4]) {
    const along = share * audit.length;
    const sides = sidesAt([layer], along);
    if (!sides) continue;
    const [bottom, top] = sides.map((off) => onSheet(page, page.frame.at(along, off)));
    if (!top || !bottom) continue;
    const tails = [
      { x: top.x - 3, y: top.y - 26, width: 6, height: 24 },
      { x: bottom.x - 3, y: bottom.y + 2, width: 6, height: 24 },
    ];
    if (tails.some(({ x, y }) => hitsFigure(room, { x: x + 3, y }, { x: x + 3, y: y + 24 }))) continue;
    const beside = (side: 1 | -1): Label => ({
      text,
      x: top.x + side * 8,
      y: top.y - 13,
      anchor: side > 0 ? 'start' : 'end',
      tone: 'bold',
      size: 13,
    });
    const label = placeLabel(room, [beside(-1), beside(1)]);
    if (!label) continue;
    for (const tail of tails) keep(room, tail);
    return { ...measured(top, bottom, true), labels: [label] };
  }
  return NO_MARKS;
}

/** Heavy dashes where section B–B is cut, lettered on both sides as far as there is room. */
function sectionMark({ layer, audit, place, page }: Lettered, room: Room): Marks {
  const along = cutPlace(audit);
  const half = place.reach / 2;
  const [low, high] = sidesAt([layer], along) ?? [-half, half];
  const marks = [high, low].map((off, i) => {
    const at = onSheet(page, page.frame.at(along, off));
    const way = i === 0 ? -1 : 1;
    const tries = [0, 6, 12, 18, 24, 32].map((more) => at.y + way * (DASH_OFF + more));
    const from = tries.find((y) =>
      room.paper.isClear({ x: at.x - 2, y: Math.min(y, y + way * DASH), width: 4, height: DASH }),
    );
    if (from === undefined) return NO_MARKS;
    const box = { x: at.x - 2, y: Math.min(from, from + way * DASH), width: 4, height: DASH };
    keep(room, box);
    const letter = (side: 1 | -1): Label => ({
      text: TOOLPATH_FIGURES.cutLetter,
      x: at.x + side * 8,
      y: box.y + 11,
      anchor: side > 0 ? 'start' : 'end',
      tone: 'bold',
      size: 13,
    });
    // One letter beside its dash needs little paper.
    const label = placeLabel(room, [letter(1), letter(-1)], 1);
    return { ...NO_MARKS, heavy: `M${pair({ x: at.x, y: box.y })}v${DASH}`, labels: label ? [label] : [] };
  });
  return together(...marks);
}

function keepOutWords({ keepOut, page }: Lettered, room: Room): Marks {
  const shares = [0.12, 0.3, 0.5, 0, 0.06, 0.62, 0.75];
  for (const text of TOOLPATH_FIGURES.keepOut) {
    const labels = shares.flatMap((share) =>
      [22, 30, 38].map((down): Label => {
        const at = keepOut[Math.round(share * (keepOut.length - 1))] ?? { x: page.rootX, y: 0 };
        return { text, x: at.x, y: at.y + down, anchor: 'start', tone: 'ink', size: 13 };
      }),
    );
    const label = placeLabel(room, labels);
    if (label) return { ...NO_MARKS, labels: [label] };
  }
  return NO_MARKS;
}

/** Beyond the end of the run by so much, a start point is on a pad [mm]. */
const ON_PAD = 0.1;

/** Harmless start points, lettered where there is just one. */
function padWords({ rings, page, audit }: Lettered, room: Room): readonly PlacedWords[] {
  const [one, ...others] = rings.filter(({ kind }) => kind === 'pad');
  if (!one || others.length > 0) return [];
  const along = (one.x - page.rootX) / page.pxPerMm;
  const isOnPad = page.frame.isCurved || along < -ON_PAD || along > audit.length + ON_PAD;
  const texts = isOnPad ? TOOLPATH_FIGURES.startsOnPad : TOOLPATH_FIGURES.startsAtRoot;
  const placed = placeWords(room, { tip: one, clear: one.reach, texts, tone: 'quiet', isFailed: false });
  return placed ? [placed] : [];
}

export function layerWords(
  lettered: Lettered,
  room: Room,
): { readonly marks: Marks; readonly squares: readonly Point[] } {
  const { rings, keepOut, open } = lettered;
  const run = runDimension(lettered);
  keepDimension(run, lettered, room);
  for (const ring of rings) keep(room, boxAround(ring, ring.reach + 1));
  room.paper.ink(densified(keepOut, 3));
  for (const { corners } of open) room.paper.ink(densified(corners, 3));
  // A dimension has few places, words with a leader have many.
  const across = acrossDimension(lettered, room);
  const faults = faultWords(lettered, room);
  const section = sectionMark(lettered, room);
  const zone = keepOutWords(lettered, room);
  const words = [...faults, ...padWords(lettered, room)];
  return {
    marks: together(run, ...words.map(({ marks }) => marks), section, across, zone),
    squares: words.flatMap(({ square }) => square ?? []),
  };
}
