/** Which pictures the page in front shows: its figures, and drawings outside of any that have a name. */
import { figureName, IMAGES } from '../text/imagesText.ts';

export interface PageFigure {
  /** What it is called in a list; unlike any other on the page by its `number`. */
  readonly name: string;
  /** 2 for the second of the same name. */
  readonly number: number;
  /** All that is said of it. */
  readonly says: string;
  readonly root: Element;
  /** What it is drawn on, in the order in which it is painted. */
  readonly papers: readonly PaperElement[];
}

export type PaperElement = SVGSVGElement | HTMLCanvasElement;

/** Signs in words, buttons and the scales that move a joint are no pictures of their own. */
const NO_PICTURE = 'button, summary, figcaption, p, th, dt, label, .scrub, .true-scale, .pictures, .places, .vh';
/** What is smaller is a sign [px]. */
const LEAST = { width: 40, height: 24 };
/** A drawing outside of any figure is a picture from this size on [px]; one as long as this against its height is a bar. */
const LEAST_ALONE = { width: 60, height: 44 };
const BAR = 5;
const LONGEST_NAME = 90;

function isShown(node: Element, least: { readonly width: number; readonly height: number }): boolean {
  const { width, height } = node.getBoundingClientRect();
  return width >= least.width && height >= least.height && node.checkVisibility({ visibilityProperty: true });
}

function isPaper(node: Element): node is PaperElement {
  return node instanceof HTMLCanvasElement || (node instanceof SVGSVGElement && !node.parentElement?.closest('svg'));
}

/** A bar in a row says what the row says; a curve is a picture. */
function isBar(node: Element): boolean {
  const { width, height } = node.getBoundingClientRect();
  return width > BAR * height;
}

/** Papers of a figure itself, and not of a figure in it. */
function papersOf(figure: Element): readonly PaperElement[] {
  return [...figure.querySelectorAll('svg, canvas')].filter(
    (node): node is PaperElement =>
      isPaper(node) && node.closest('figure') === figure && !node.closest(NO_PICTURE) && isShown(node, LEAST),
  );
}

const wordsOf = (node: Node | null | undefined) => node?.textContent?.replaceAll(/\s+/g, ' ').trim() ?? '';

/** A caption without its buttons, and without the aid or the reading beside its name. */
function captionOf(figure: Element): { readonly name: string; readonly all: string } {
  const own = [...figure.querySelectorAll('figcaption')].find((node) => node.closest('figure') === figure);
  if (!own) return { name: '', all: '' };
  const copy = own.cloneNode(true) as Element;
  for (const node of copy.querySelectorAll('button, .vh')) node.remove();
  // Parts of a caption stand in elements of their own, with no space between them.
  const parts = () => [...copy.childNodes].map((node) => wordsOf(node)).filter((text) => text !== '');
  const isChart = copy.matches('.chart-caption');
  const all = parts().join(isChart ? ' ' : '; ');
  for (const node of copy.querySelectorAll('.chart-aid')) node.remove();
  return { name: isChart ? parts().join(' ') : (parts()[0] ?? ''), all };
}

/** What a drawing is called for the ear, with what describes it. */
function spokenOf(root: Element): { readonly label: string; readonly says: string } {
  const inside = [root, ...root.querySelectorAll('[aria-label], [aria-describedby]')];
  const named = inside.filter((node) => !node.closest(NO_PICTURE) && node.closest('figure') === root.closest('figure'));
  const label = named.map((node) => node.getAttribute('aria-label') ?? '').find((text) => text !== '') ?? '';
  const drawn = named.filter((node) => node.getAttribute('role') !== 'slider');
  const described = drawn.flatMap((node) => node.getAttribute('aria-describedby')?.split(' ') ?? []);
  return { label, says: described.map((id) => wordsOf(document.getElementById(id))).join(' ') };
}

function shortened(name: string): string {
  if (name.length <= LONGEST_NAME) return name;
  return `${name.slice(0, LONGEST_NAME).replace(/\s\S*$/, '')} …`;
}

const unlike = (words: readonly string[]) => [...new Set(words.filter((text) => text !== ''))].join('. ');

function figureAt(root: Element, papers: readonly PaperElement[]): Omit<PageFigure, 'number'> {
  const { name, all } = captionOf(root);
  const { label, says } = spokenOf(root);
  const called = shortened(figureName(name === '' ? label : name));
  return { root, papers, name: called === '' ? IMAGES.unnamed : called, says: unlike([all, label, says]) };
}

function numbered(figures: readonly Omit<PageFigure, 'number'>[]): readonly PageFigure[] {
  const seen = new Map<string, number>();
  return figures.map((figure) => {
    const number = (seen.get(figure.name) ?? 0) + 1;
    seen.set(figure.name, number);
    return { ...figure, number };
  });
}

/** All pictures under a node, in the order of the page. */
export function figuresIn(page: Element): readonly PageFigure[] {
  const found = [...page.querySelectorAll('figure, svg[role="img"]')].flatMap((node) => {
    if (node.matches('figure')) {
      const papers = papersOf(node);
      return papers.length > 0 ? [figureAt(node, papers)] : [];
    }
    const isAlone =
      !node.closest(`figure, ${NO_PICTURE}`) && isPaper(node) && isShown(node, LEAST_ALONE) && !isBar(node);
    return isAlone ? [figureAt(node, [node])] : [];
  });
  return numbered(found);
}
