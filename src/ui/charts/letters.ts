/** Advance of a letter as a share of the letter size, read off the face that measured figures are set in. */
const NARROW = 0.25;
const SLIM = 0.38;
const USUAL = 0.53;
const FIGURE = 0.58;
const WIDE = 0.8;
const WIDEST = 0.95;

function advance(letter: string): number {
  if (/[0-9]/.test(letter)) return FIGURE;
  if (/[\s.,:;'’ijl|()]/.test(letter)) return NARROW;
  if (/[rft°]/.test(letter)) return SLIM;
  if (/[mwMW–]/.test(letter)) return WIDE;
  return letter === '%' ? WIDEST : USUAL;
}

/** Width of a short label [CSS px]: near enough to keep labels apart before they are drawn. */
export function lettersWidth(text: string, size: number): number {
  return size * Array.from(text).reduce((sum, letter) => sum + advance(letter), 0);
}
