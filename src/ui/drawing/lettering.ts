/**
 * Lettering as data, so that a layout can keep words apart before anything is drawn.
 * All measures here are px on the sheet, x to the right and y down.
 */

/** An upright rectangle on the sheet [px]. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Anchor = 'start' | 'middle' | 'end';

/** One line of words; `x`, `y` is where its baseline is held. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
  /** ink: what is so; quiet: second text; pencil: what can be changed or moves; fault: what goes wrong. */
  readonly tone: 'ink' | 'bold' | 'quiet' | 'pencil' | 'fault';
  readonly size: 12 | 13;
  /** Turned a quarter, read from the right. */
  readonly upright?: boolean;
}

/**
 * Widths in em of the measuring face at weight 600, by kind of letter, each rounded up to the widest of its kind,
 * so that words are never wider than the room kept for them. Spaces and points are the narrow ones.
 */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[0-9+=×<>~−]/u, 0.63],
  [/[ .,:;'’|il\u00a0\u2009]/u, 0.25],
  [/[jftr()[\]°-]/u, 0.4],
  [/[mwMW%–—]/u, 0.95],
  [/[A-Z]/u, 0.65],
];
const OTHER = 0.53;

/** How wide a text comes out, or a little less than it is allowed [px]. */
export function letteringWidth(text: string, size: number): number {
  let em = 0;
  for (const letter of text) em += WIDTHS.find(([kind]) => kind.test(letter))?.[1] ?? OTHER;
  return em * size;
}

/** The room that a label takes up [px]. */
export function labelBox({ text, x, y, anchor, size, upright }: Label): Box {
  const width = letteringWidth(text, size);
  const [rise, height] = [size * 0.78, size];
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
  if (upright === true) return { x: x - rise, y: y - (width - before), width: height, height: width };
  return { x: x - before, y: y - rise, width, height };
}

/** A box with so much room round it [px]. */
export function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
