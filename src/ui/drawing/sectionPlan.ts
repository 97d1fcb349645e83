import type { Assessment } from '../../core/design/assessment.ts';
import { nearestLayers, thicknessOfLayers } from '../../core/print/wholeLayers.ts';
import { nearestLines } from '../../core/print/wholeLines.ts';
import { faultFigure, layersFigure } from '../text/drawingText.ts';
import { counted, lengthFigure, type LengthUnit } from '../text/numbers.ts';
import type { Landing } from './landing.ts';
import { letteringWidth, type Box, type Label } from './lettering.ts';
import { levelDimension, measured, NO_MARKS, together, uprightDimension, type Marks } from './marks.ts';
import type { Laid } from './figure.ts';
import type { Sheet } from './sheet.ts';

/** The cut through the thin section, laid out from its own upper left corner [px]. */
export interface SectionPlan {
  readonly width: number;
  readonly height: number;
  /** Ends of beads: rectangles whose shorter sides are round. */
  readonly beads: readonly Box[];
  readonly faults: readonly Box[];
  /** Where a middle part has been left out. */
  readonly breaks: readonly string[];
  readonly marks: Marks;
}

/** Room for the depth at the left, and for the name and the thickness above [px]. */
const GUTTER = { left: 42, top: 34 };
/** Longer than this the middle of the section is left out [px]. */
const LONGEST = { full: 232, small: 112 };
const BREAK = 12;

/** Slices along one axis from 0 up; where they are too many, the middle ones are left out. */
interface Slices {
  readonly at: readonly { readonly start: number; readonly size: number }[];
  readonly total: number;
  readonly breakAt: number | undefined;
}

function slices(edges: readonly number[], longest: number): Slices {
  const total = edges.at(-1) ?? 0;
  const all = edges.slice(1).map((edge, i) => ({ start: edges[i] ?? 0, size: edge - (edges[i] ?? 0) }));
  if (total <= longest) return { at: all, total, breakAt: undefined };
  const half = (longest - BREAK) / 2;
  const lower = all.filter(({ start, size }) => start + size <= half);
  const upper = all.filter(({ start }) => start >= total - half);
  const kept = lower.at(-1);
  const breakAt = kept ? kept.start + kept.size : 0;
  const shift = (upper[0]?.start ?? total) - breakAt - BREAK;
  return {
    at: [...lower, ...upper.map(({ start, size }) => ({ start: start - shift, size }))],
    total: total - shift,
    breakAt,
  };
}

/** A long slice with its middle left out stays two slices. */
function brokenLength(total: number, longest: number): Slices {
  if (total <= longest) return { at: [{ start: 0, size: total }], total, breakAt: undefined };
  const half = (longest - BREAK) / 2;
  return {
    at: [
      { start: 0, size: half },
      { start: half + BREAK, size: half },
    ],
    total: longest,
    breakAt: half,
  };
}

/** The section of a joint at the scale of the sheet. */
export function sectionPlan(
  a: Assessment,
  laid: Laid,
  landing: Landing,
  sheet: Pick<Sheet, 'pxPerMm' | 'small'>,
  unit: LengthUnit,
  name: string,
): SectionPlan {
  const longest = sheet.small ? LONGEST.small : LONGEST.full;
  return laid === 'layers'
    ? layeredSection(a, landing, sheet, unit, name, longest)
    : uprightSection(a, laid, landing, sheet, unit, name, longest);
}

const zigzag = (x: number, y: number, length: number) =>
  `M${x - 6} ${y}H${x + length / 2 - 5}l3 -5l5 10l3 -5H${x + length + 6}`;

/** Lines across, depth upwards: layers of a flat leaf, or whole lines of one that stands on its end. */
function uprightSection(
  a: Assessment,
  laid: Laid,
  landing: Landing,
  { pxPerMm: s, small }: Pick<Sheet, 'pxPerMm' | 'small'>,
  unit: LengthUnit,
  name: string,
  longest: number,
): SectionPlan {
  const { section, joint } = a;
  const count = nearestLayers(section.width, joint.profile).count;
  const edges = Array.from({ length: count + 1 }, (_, n) => (n === 0 ? 0 : thicknessOfLayers(n, joint.profile) * s));
  const rows = laid === 'along' ? slices(edges, longest) : brokenLength(section.width * s, longest);
  const width = section.thickness * s;
  const [x0, y0] = small ? [2, 4] : [GUTTER.left, GUTTER.top];
  const x = (mm: number) => x0 + width / 2 + mm * s;
  const beads = rows.at.flatMap(({ start, size }) =>
    landing.laid.map(({ from, to }) => ({
      x: x(from),
      y: y0 + rows.total - start - size,
      width: (to - from) * s,
      height: size,
    })),
  );
  const faults = landing.faults.map(({ from, to }) => ({
    x: x(from),
    y: y0,
    width: (to - from) * s,
    height: rows.total,
  }));
  const breakY = rows.breakAt === undefined ? undefined : y0 + rows.total - rows.breakAt - BREAK;
  const breaks = breakY === undefined ? [] : [zigzag(x0, breakY + 1, width), zigzag(x0, breakY + BREAK - 1, width)];
  const depth = lengthFigure(section.width, unit);
  const words = landing.laid.length === 0 ? '' : laid === 'along' ? layersFigure(a, unit) : 'one layer, from above';
  const block = { x: x0, y: y0, width, height: rows.total };
  const marks = small
    ? smallMarks(
        block,
        [`${name}, ${laid === 'along' ? counted(count, 'layer') : 'one layer'},`, `${depth} deep`],
        faultOf(a, unit),
      )
    : together(thicknessAbove(block, name), depthBeside(block, depth), wordsBeside(block, words));
  return { ...sizeOf(block, marks, small), beads, faults, breaks, marks };
}

/** Depth across, layers upwards: the web of a crease. */
function layeredSection(
  a: Assessment,
  landing: Landing,
  { pxPerMm: s, small }: Pick<Sheet, 'pxPerMm' | 'small'>,
  unit: LengthUnit,
  name: string,
  longest: number,
): SectionPlan {
  const { section, joint } = a;
  const { count } = nearestLines(section.width, joint.profile);
  const line = section.width / count;
  const edges = Array.from({ length: count + 1 }, (_, n) => n * line * s);
  const columns = slices(edges, Math.max(longest * 0.6, 4 * line * s));
  const height = section.thickness * s;
  const [x0, y0] = small ? [2, 6] : [14, GUTTER.top + 16];
  const y = (mm: number) => y0 + height / 2 - mm * s;
  const beads = columns.at.flatMap(({ start, size }) =>
    landing.laid.map(({ from, to }) => ({ x: x0 + start, y: y(to), width: size, height: (to - from) * s })),
  );
  const faults = landing.faults.map(({ from, to }) => ({
    x: x0,
    y: y(to),
    width: columns.total,
    height: (to - from) * s,
  }));
  const breakX = columns.breakAt === undefined ? undefined : x0 + columns.breakAt;
  const upright = (x: number) => `M${x} ${y0 - 6}V${y0 + height / 2 - 5}l-5 3l10 5l-5 3V${y0 + height + 6}`;
  const breaks = breakX === undefined ? [] : [upright(breakX + 1), upright(breakX + BREAK - 1)];
  const depth = lengthFigure(section.width, unit);
  const block = { x: x0, y: y0, width: columns.total, height };
  const words = counted(landing.laid.length, 'layer');
  const label: Label = {
    text: depth,
    x: x0 + columns.total / 2,
    y: y0 - 12 - 5,
    anchor: 'middle',
    tone: 'pencil',
    size: 13,
  };
  const marks = small
    ? smallMarks(block, [`${name}, ${words},`, `${depth} deep`], faultOf(a, unit))
    : together(
        levelDimension(x0, x0 + columns.total, y0 - 12, y0 - 3, label, false),
        title(name, { x: x0, y: 13 }, 'start'),
        wordsBelow(block, `${words} through`),
      );
  return { ...sizeOf(block, marks, small), beads, faults, breaks, marks };
}

function title(text: string, at: { readonly x: number; readonly y: number }, anchor: Label['anchor']): Marks {
  return { ...NO_MARKS, labels: [{ text, ...at, anchor, tone: 'bold', size: 13 }] };
}

function thicknessAbove({ x, y, width }: Box, name: string): Marks {
  const level = y - 10;
  const across = measured({ x, y: level }, { x: x + width, y: level }, true);
  const extension = `M${x} ${y - 3}V${level - 6}M${x + width} ${y - 3}V${level - 6}`;
  return together(
    { ...across, lines: across.lines + extension },
    title(name, { x: x + width / 2, y: y - 22 }, 'middle'),
  );
}

function depthBeside({ x, y, height }: Box, text: string): Marks {
  const label: Label = {
    text,
    x: x - 25,
    y: y + height / 2,
    anchor: 'middle',
    tone: 'pencil',
    size: 13,
    upright: true,
  };
  return uprightDimension(y, y + height, x - 20, x - 4, label);
}

function wordsBeside({ x, y, width, height }: Box, text: string): Marks {
  const [first, second] = text.split(/(?<=layers?) /u);
  const at = (words: string, rise: number): Label => ({
    text: words,
    x: x + width + 10,
    y: y + height - rise,
    anchor: 'start',
    tone: 'ink',
    size: 12,
  });
  if (height < 40 || second === undefined) return wordsBelow({ x, y, width, height }, text);
  return { ...NO_MARKS, labels: [at(first ?? '', 20), at(second, 4)] };
}

function wordsBelow({ x, y, height }: Box, text: string): Marks {
  return { ...NO_MARKS, labels: [{ text, x, y: y + height + 17, anchor: 'start', tone: 'ink', size: 12 }] };
}

function smallMarks(block: Box, lines: readonly [string, string], fault: string | undefined): Marks {
  const { x, y, width, height } = block;
  const isBeside = height > 44 && width < 60;
  const at = (text: string, i: number): Label => ({
    text,
    x: isBeside ? x + width + 9 : x,
    y: isBeside ? y + 10 + 15 * i : y + height + 15 + 15 * i,
    anchor: 'start',
    tone: 'ink',
    size: 12,
  });
  const wrong: Label[] = fault === undefined ? [] : [{ ...at(fault, lines.length), tone: 'fault' }];
  return { ...NO_MARKS, labels: [...lines.map(at), ...wrong] };
}

const faultOf = (a: Assessment, unit: LengthUnit) => (a.fit.outcome === 'whole' ? undefined : faultFigure(a, unit));

/** The whole block with its words. */
function sizeOf(block: Box, { labels }: Marks, small: boolean): { readonly width: number; readonly height: number } {
  const ends = labels
    .filter(({ anchor }) => anchor === 'start')
    .map(({ text, x, size }) => x + letteringWidth(text, size));
  const feet = labels.map(({ y, upright }) => (upright === true ? 0 : y + 4));
  const side = small ? 2 : 26;
  return {
    width: Math.max(block.x + block.width + side, ...ends),
    height: Math.max(block.y + block.height + 4, ...feet),
  };
}
