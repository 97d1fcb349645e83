/** A figure of the page as one picture: papers that lie over each other, and letters that the page sets over them. */
import { plainColour } from './colours.ts';
import { inksOf, ROOT_LOOK, wholeLook } from './inks.ts';
import type { PageFigure, PaperElement } from './figures.ts';
import { markOf, withNames, type Drawn } from './marks.ts';
import type { Picture, PictureNode } from './picture.ts';

/** Clear paper round what is drawn [px]. */
const MARGIN = 8;

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Composed = Omit<Picture, 'faces'> & { readonly families: readonly string[] };

function boxOf(papers: readonly PaperElement[]): Box {
  const boxes = papers.map((paper) => paper.getBoundingClientRect());
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
}

/** A hair over a whole px comes of adding, and is no row of its own. */
const wholePx = (value: number) => Math.ceil(value - 0.01);

/** How large the picture of some papers is [px]. */
export function pictureSize(papers: readonly PaperElement[]): { readonly width: number; readonly height: number } {
  const { left, top, right, bottom } = boxOf(papers);
  return { width: wholePx(right - left + 2 * MARGIN), height: wholePx(bottom - top + 2 * MARGIN) };
}

const px = (value: number) => String(Number(value.toFixed(2)));

/** Where something of the page stands on the picture. */
function placed(node: Element, { left, top }: Box) {
  const box = node.getBoundingClientRect();
  return {
    x: px(box.left - left + MARGIN),
    y: px(box.top - top + MARGIN),
    width: px(box.width),
    height: px(box.height),
  };
}

/** Tones that the page paints dot by dot. */
function tonesOf(canvas: HTMLCanvasElement, box: Box, isGrey: boolean): PictureNode {
  const copy = document.createElement('canvas');
  [copy.width, copy.height] = [canvas.width, canvas.height];
  const paper = copy.getContext('2d');
  if (paper) {
    // Tones of a dark theme grow lighter where paper grows darker.
    const isDark = document.documentElement.dataset['theme'] === 'blueprint';
    paper.filter = isGrey ? `grayscale(1)${isDark ? ' invert(1)' : ''}` : 'none';
    paper.drawImage(canvas, 0, 0);
  }
  const place = { ...placed(canvas, box), preserveAspectRatio: 'none' };
  return { tag: 'image', attributes: { ...place, href: copy.toDataURL() }, children: [] };
}

function paperOf(paper: PaperElement, box: Box, drawn: Drawn): readonly PictureNode[] {
  if (paper instanceof HTMLCanvasElement) return [tonesOf(paper, box, drawn.isGrey)];
  const mark = markOf(paper, ROOT_LOOK, drawn);
  return mark ? [{ ...mark, attributes: { ...mark.attributes, ...placed(paper, box) } }] : [];
}

/** How far under the top of its box a line of letters stands, as the face has it. */
function baseline(node: Element, height: number): number {
  const paper = document.createElement('canvas').getContext('2d');
  if (!paper) return 0.8 * height;
  paper.font = getComputedStyle(node).font;
  const { fontBoundingBoxAscent: up, fontBoundingBoxDescent: down } = paper.measureText('x');
  return (height * up) / (up + down);
}

/** Letters of the page itself, of which the middle lies on a paper. */
function lettersOver({ root, papers }: PageFigure, box: Box, drawn: Drawn): readonly PictureNode[] {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  const found: PictureNode[] = [];
  while (walker.nextNode()) {
    const text = walker.currentNode as Text;
    const around = text.parentElement;
    if (!around || text.data.trim() === '' || around.closest('svg, figcaption, .vh, table, .scrub, option')) continue;
    if (around.closest('figure') !== root.closest('figure') || papers.some((paper) => paper.contains(around))) continue;
    const range = document.createRange();
    range.selectNodeContents(text);
    const { left, top, width, height } = range.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    if (x < box.left || x > box.right || y < box.top || y > box.bottom || !around.checkVisibility()) continue;
    const look = (property: string) =>
      getComputedStyle(around).getPropertyValue(property === 'fill' ? 'color' : property);
    const whole = { ...wholeLook(look, drawn.isGrey), stroke: 'none' };
    drawn.families.add(look('font-family').split(',')[0]?.replaceAll(/["']/g, '') ?? '');
    const at = { x: px(left - box.left + MARGIN), y: px(top - box.top + MARGIN + baseline(around, height)) };
    found.push({
      tag: 'text',
      attributes: { ...at, ...inksOf('text', whole, ROOT_LOOK) },
      children: [text.data.trim()],
    });
  }
  return found;
}

/** Paper, ink and greys of a print, while something is looked at. */
const PRINT_INKS = 'in-print-inks';

/** A figure as it is seen now, in its own inks or in those of a print. */
export function composed(figure: PageFigure, isGrey: boolean): Composed {
  const { root, papers, name, says } = figure;
  const box = boxOf(papers);
  const drawn: Drawn = { isGrey, families: new Set() };
  root.classList.toggle(PRINT_INKS, isGrey);
  try {
    const sheet = getComputedStyle(root).getPropertyValue('--sheet').trim();
    const marks = [...papers.flatMap((paper) => paperOf(paper, box, drawn)), ...lettersOver(figure, box, drawn)];
    return {
      ...pictureSize(papers),
      title: name,
      desc: says,
      ground: plainColour(sheet)?.colour ?? '#ffffff',
      families: [...drawn.families],
      children: withNames(marks),
    };
  } finally {
    root.classList.remove(PRINT_INKS);
  }
}
