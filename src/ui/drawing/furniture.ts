import type { Point } from '../../core/geometry/outline.ts';
import { NO_BREAK, percent } from '../text/numbers.ts';
import type { ClearPaper } from './clearPaper.ts';
import { grown, letteringWidth, overlap, type Box } from './lettering.ts';
import { FRAME } from './sheet.ts';

/** What stands beside the joint on the sheet, by its size [px]. */
export interface Furniture {
  readonly section: Size;
  readonly legend: Size;
  readonly lifeSize: Size | undefined;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where each stands: its upper left corner [px]. */
export interface Placed {
  readonly section: Point;
  readonly legend: Point;
  readonly lifeSize: Point | undefined;
  /** Top of the sheet: it grows upwards until everything has clear paper. */
  readonly top: number;
}

const APART = 12;
const STEP_X = 6;
const STEP_Y = 10;
const FROM_EDGE = 12;
/** Life size is left out before the sheet grows by more than this for it alone [px]. */
const LIFE_SIZE_IS_WORTH = 40;

/** Finds clear paper for all furniture at the head of the sheet, the section first, from the left. */
export function placeFurniture(
  paper: ClearPaper,
  { section, legend, lifeSize }: Furniture,
  width: number,
  lowestTop: number,
  highestTop: number,
): Placed {
  let without: Placed | undefined;
  for (let top = lowestTop; top >= highestTop; top -= STEP_Y) {
    const y = top + FROM_EDGE;
    const first = along(paper, section, width, y, []);
    const second = first && along(paper, legend, width, y, [first], first.x + first.width + APART);
    if (!first || !second) continue;
    const placed = { section: first, legend: second, lifeSize: undefined, top };
    if (!lifeSize) return placed;
    const third = lifeSizePlace(paper, lifeSize, width, y, [first, second]);
    if (third) return { ...placed, lifeSize: third };
    without ??= placed;
    if (without.top - top > LIFE_SIZE_IS_WORTH) return without;
  }
  const y = highestTop + FROM_EDGE;
  return (
    without ?? {
      section: { x: FRAME + FROM_EDGE, y },
      legend: { x: FRAME + FROM_EDGE + section.width + APART, y },
      lifeSize: undefined,
      top: highestTop,
    }
  );
}

/** Under the legend, where the eye already is, else anywhere in the row. */
function lifeSizePlace(
  paper: ClearPaper,
  size: Size,
  width: number,
  y: number,
  taken: readonly [Box, Box],
): Box | undefined {
  const [, legend] = taken;
  for (const drop of [14, 24, 36]) {
    const under: Box = { ...size, x: legend.x, y: legend.y + legend.height + drop };
    if (isFree(paper, under, taken) && under.x + under.width < width - FROM_EDGE) return under;
  }
  return along(paper, size, width, y, taken);
}

/** The first clear place in a row of the sheet. */
function along(
  paper: ClearPaper,
  size: Size,
  width: number,
  y: number,
  taken: readonly Box[],
  from = FRAME + FROM_EDGE,
): Box | undefined {
  for (let x = from; x + size.width <= width - FROM_EDGE; x += STEP_X) {
    const box = { ...size, x, y };
    if (isFree(paper, box, taken)) return box;
  }
  return undefined;
}

function isFree(paper: ClearPaper, box: Box, taken: readonly Box[]): boolean {
  return !taken.some((other) => overlap(grown(box, APART), other)) && paper.isClear(grown(box, 6));
}

/** The legend of strain, laid out from its own upper left corner [px]. */
export interface LegendPlan extends Size {
  readonly bar: Box;
  /** Strain at the right end of the bar. */
  readonly full: number;
  readonly repeated: number;
  readonly yield: number;
  readonly ticks: readonly {
    readonly x: number;
    readonly figure: string;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
  readonly words: readonly { readonly x: number; readonly text: string; readonly anchor: 'start' | 'middle' }[];
  readonly heading: string;
}

/** How much of the scale lies beyond yield. */
const BEYOND_YIELD = 1.6;

/** The scale of the legend: no strain at the left, 1.6 times yield at the right. */
export function legendPlan(repeated: number, atYield: number, small: boolean): LegendPlan {
  const bar = small ? { x: 2, y: 10, width: 124, height: 9 } : { x: 2, y: 24, width: 180, height: 9 };
  const full = BEYOND_YIELD * atYield;
  const x = (strain: number) => bar.x + bar.width * Math.min(1, strain / full);
  const figures = [percent(repeated), percent(atYield, 1)];
  const widths = figures.map((text) => letteringWidth(text, 12));
  const isTight = x(atYield) - x(repeated) < ((widths[0] ?? 0) + (widths[1] ?? 0)) / 2 + 6;
  const zeroFits = x(repeated) - (isTight ? (widths[0] ?? 0) : (widths[0] ?? 0) / 2) > bar.x + 14;
  const again = 'again and again';
  const againWidth = letteringWidth(again, 12);
  const againX = Math.max(bar.x, x(repeated) - againWidth / 2);
  const ticks = [
    ...(zeroFits ? [{ x: bar.x, figure: '0', anchor: 'start' as const }] : []),
    { x: x(repeated), figure: figures[0] ?? '', anchor: isTight ? ('end' as const) : ('middle' as const) },
    { x: x(atYield), figure: figures[1] ?? '', anchor: isTight ? ('start' as const) : ('middle' as const) },
  ];
  const words = [
    { x: againX, text: again, anchor: 'start' as const },
    { x: Math.max(againX + againWidth + 8, x(atYield) - 26), text: `stays${NO_BREAK}bent`, anchor: 'start' as const },
  ];
  return {
    bar,
    full,
    repeated,
    yield: atYield,
    ticks,
    words: small ? [] : words,
    heading: small ? '' : 'strain at the skin',
    width: bar.width + (small ? 14 : 22),
    height: small ? 38 : 66,
  };
}
