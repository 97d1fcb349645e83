import { letteringWidth, type Box, type Label } from './lettering.ts';
import { levelDimension, measured, NO_MARKS, together, uprightDimension, type Marks } from './marks.ts';

/** What is written round a section, relative to the block that is cut. */

export function title(text: string, at: { readonly x: number; readonly y: number }, anchor: Label['anchor']): Marks {
  return { ...NO_MARKS, labels: [{ text, ...at, anchor, tone: 'bold', size: 13 }] };
}

/** Arrows that show the thickness, and the name of the section over them. */
export function thicknessAbove({ x, y, width }: Box, name: string): Marks {
  const level = y - 10;
  const across = measured({ x, y: level }, { x: x + width, y: level }, true);
  const extension = `M${x} ${y - 3}V${level - 6}M${x + width} ${y - 3}V${level - 6}`;
  return together(
    { ...across, lines: across.lines + extension },
    title(name, { x: x + width / 2, y: y - 22 }, 'middle'),
  );
}

export function depthBeside({ x, y, height }: Box, text: string): Marks {
  const at = { x: x - 25, y: y + height / 2 };
  const label: Label = { text, ...at, anchor: 'middle', tone: 'pencil', size: 13, upright: true };
  return uprightDimension(y, y + height, x - 20, x - 4, label);
}

export function depthAbove({ x, y, width }: Box, text: string): Marks {
  const label: Label = { text, x: x + width / 2, y: y - 17, anchor: 'middle', tone: 'pencil', size: 13 };
  return levelDimension(x, x + width, y - 12, y - 3, label, false);
}

/** A section at least so high has its words at its side [px]. */
const WORDS_BESIDE = 40;

/** Two short lines at the foot of a tall section, one line under a low one. */
export function wordsBeside(block: Box, text: string): Marks {
  const [first, second] = text.split(/(?<=layers?) /u);
  if (block.height < WORDS_BESIDE || first === undefined || second === undefined) return wordsBelow(block, text);
  const at = (words: string, rise: number): Label => ({
    text: words,
    x: block.x + block.width + 10,
    y: block.y + block.height - rise,
    anchor: 'start',
    tone: 'ink',
    size: 12,
  });
  return { ...NO_MARKS, labels: [at(first, 20), at(second, 4)] };
}

export function wordsBelow({ x, y, height }: Box, text: string): Marks {
  return { ...NO_MARKS, labels: [{ text, x, y: y + height + 17, anchor: 'start', tone: 'ink', size: 12 }] };
}

/** What goes wrong, under the section and whatever else is written there. */
export function faultBelow({ x, y, height }: Box, text: string | undefined): Marks {
  if (text === undefined) return NO_MARKS;
  const label: Label = {
    text,
    x,
    y: y + height + (height < WORDS_BESIDE ? 33 : 17),
    anchor: 'start',
    tone: 'fault',
    size: 12,
  };
  return { ...NO_MARKS, labels: [label] };
}

/** On a phone: words instead of dimensions, and what goes wrong, for which there is no room on the joint. */
export function smallWords(block: Box, lines: readonly string[], fault: string | undefined): Marks {
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

/** The room of a block with its words. */
export function roomOf(
  block: Box,
  { labels }: Marks,
  small: boolean,
): { readonly width: number; readonly height: number } {
  const ends = labels
    .filter(({ anchor }) => anchor === 'start')
    .map(({ text, x, size }) => x + letteringWidth(text, size));
  const feet = labels.map(({ y, upright }) => (upright === true ? 0 : y + 4));
  // Arrows from outside stand out at the right.
  const side = small ? 2 : 26;
  return {
    width: Math.max(block.x + block.width + side, ...ends),
    height: Math.max(block.y + block.height + 4, ...feet),
  };
}
