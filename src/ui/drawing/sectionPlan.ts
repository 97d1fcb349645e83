import type { Assessment } from '../../core/design/assessment.ts';
import { nearestLayers, thicknessOfLayers } from '../../core/print/wholeLayers.ts';
import { nearestLines } from '../../core/print/wholeLines.ts';
import type { Mm } from '../../core/units.ts';
import { layersFigure } from '../text/drawingText.ts';
import { counted, lengthFigure, type LengthUnit } from '../text/numbers.ts';
import type { Laid } from './figure.ts';
import type { Landing, Strip } from './landing.ts';
import type { Box } from './lettering.ts';
import { together, type Marks } from './marks.ts';
import {
  depthAbove,
  depthBeside,
  faultBelow,
  roomOf,
  smallWords,
  thicknessAbove,
  title,
  wordsBelow,
  wordsBeside,
} from './sectionWords.ts';
import { FINEST, type Sheet } from './sheet.ts';
import { slices, uncut, type Slices } from './slices.ts';

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

/** What a section is drawn of, and how. */
export interface Cut {
  readonly a: Assessment;
  readonly laid: Laid;
  readonly landing: Landing;
  readonly sheet: Pick<Sheet, 'pxPerMm' | 'small'>;
  readonly unit: LengthUnit;
  /** “A–A” where the cut is marked on the joint, else what it is. */
  readonly name: string;
  /** What goes wrong between the lines, unless there was room to say it on the joint. */
  readonly fault: string | undefined;
}

/** Upper left corner of what is cut, with room for dimensions at the left and above [px]. */
const CORNER = {
  upright: { full: { x: 42, y: 34 }, small: { x: 2, y: 4 } },
  level: { full: { x: 14, y: 50 }, small: { x: 2, y: 6 } },
} as const;
/** Longer than this the middle of the section is left out [px]. */
const LONGEST = { full: 232, small: 112 };
/** A web is broken sooner: it shows nothing new after a few lines. */
const WEB_SHARE = 0.6;
const LEAST_LINES = 4;

/** The section of a joint at the scale of the sheet. */
export function sectionPlan(cut: Cut): SectionPlan {
  const size = cut.sheet.small ? 'small' : 'full';
  return cut.laid === 'layers'
    ? levelSection(cut, CORNER.level[size], LONGEST[size] * WEB_SHARE)
    : uprightSection(cut, CORNER.upright[size], LONGEST[size]);
}

/** Lines or layers side by side, or all in one where they would be too fine to tell apart. */
function strips({ a, landing, sheet }: Cut, size: Mm): readonly Strip[] {
  const half = a.section.thickness / 2;
  const isFine = size * sheet.pxPerMm < FINEST && landing.laid.length > 1;
  return isFine ? [{ from: -half, to: half }] : landing.laid;
}

/** Lines across, depth upwards: layers of a flat leaf, or whole lines of one that stands on its end. */
function uprightSection(cut: Cut, { x: x0, y: y0 }: Pick<Box, 'x' | 'y'>, longest: number): SectionPlan {
  const { a, laid, landing, sheet, unit, name } = cut;
  const { section, joint } = a;
  const s = sheet.pxPerMm;
  const { count } = nearestLayers(section.width, joint.profile);
  const isLayered = laid === 'along' && joint.profile.layerHeight * s >= FINEST;
  const rows = isLayered
    ? slices([0, ...Array.from({ length: count }, (_, n) => thicknessOfLayers(n + 1, joint.profile) * s)], longest)
    : uncut(section.width * s, longest);
  const block = { x: x0, y: y0, width: section.thickness * s, height: rows.total };
  const across = ({ from, to }: Strip) => ({ x: x0 + block.width / 2 + from * s, width: (to - from) * s });
  const foot = y0 + rows.total;
  const depth = lengthFigure(section.width, unit);
  const layers = laid === 'along' ? counted(count, 'layer') : 'one layer';
  const words = landing.laid.length === 0 ? '' : laid === 'along' ? layersFigure(a, unit) : 'one layer, from above';
  const marks = sheet.small
    ? smallWords(block, [`${name}, ${layers},`, `${depth} deep`], cut.fault)
    : together(
        thicknessAbove(block, name),
        depthBeside(block, depth),
        wordsBeside(block, words),
        faultBelow(block, cut.fault),
      );
  return {
    ...roomOf(block, marks, sheet.small),
    beads: rows.at.flatMap(({ start, size }) =>
      strips(cut, joint.profile.lineWidth).map((strip) => ({ ...across(strip), y: foot - start - size, height: size })),
    ),
    faults: landing.faults.map((fault) => ({ ...across(fault), y: y0, height: rows.total })),
    breaks: breaksAt(rows).map((at) => levelBreak(x0, foot - at, block.width)),
    marks,
  };
}

/** Depth across, layers upwards: the web of a crease. */
function levelSection(cut: Cut, { x: x0, y: y0 }: Pick<Box, 'x' | 'y'>, longest: number): SectionPlan {
  const { a, landing, sheet, unit, name } = cut;
  const { section, joint } = a;
  const s = sheet.pxPerMm;
  const { count } = nearestLines(section.width, joint.profile);
  const line = (section.width / count) * s;
  const room = Math.max(longest, LEAST_LINES * line);
  const columns =
    line >= FINEST
      ? slices(
          Array.from({ length: count + 1 }, (_, n) => n * line),
          room,
        )
      : uncut(section.width * s, room);
  const block = { x: x0, y: y0, width: columns.total, height: section.thickness * s };
  const up = ({ from, to }: Strip) => ({ y: y0 + block.height / 2 - to * s, height: (to - from) * s });
  const depth = lengthFigure(section.width, unit);
  const layers = counted(landing.laid.length, 'layer');
  const marks = sheet.small
    ? smallWords(block, [`${name}, ${layers},`, `${depth} deep`], cut.fault)
    : together(
        depthAbove(block, depth),
        title(name, { x: x0, y: 13 }, 'start'),
        wordsBelow(block, `${layers} through`),
        faultBelow(block, cut.fault),
      );
  return {
    ...roomOf(block, marks, sheet.small),
    beads: columns.at.flatMap(({ start, size }) =>
      strips(cut, joint.profile.layerHeight).map((strip) => ({ ...up(strip), x: x0 + start, width: size })),
    ),
    faults: landing.faults.map((fault) => ({ ...up(fault), x: x0, width: columns.total })),
    breaks: breaksAt(columns).map((at) => uprightBreak(x0 + at, y0, block.height)),
    marks,
  };
}

/** Both edges of what has been left out, a little inside it. */
function breaksAt({ gap }: Slices): readonly number[] {
  return gap ? [gap.start + 1, gap.end - 1] : [];
}

const levelBreak = (x: number, y: number, width: number) =>
  `M${x - 6} ${y}H${x + width / 2 - 5}l3 -5l5 10l3 -5H${x + width + 6}`;

const uprightBreak = (x: number, y: number, height: number) =>
  `M${x} ${y - 6}V${y + height / 2 - 5}l-5 3l10 5l-5 3V${y + height + 6}`;
