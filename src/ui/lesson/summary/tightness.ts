/** How tightly the page is set, from roomy to what still can be read: each step takes a little more off everything. */

export interface Tightness {
  /** Size of the letters [px of 1/96 in]. */
  readonly letters: number;
  /** Height that the main drawing may take, and the enlarged one beside it; 0 for none [mm]. */
  readonly main: number;
  readonly enlarged: number;
  /** Height of the curve; 0 for none [px]. */
  readonly curve: number;
}

/** A drawing is shrunk only when nothing else is left to shrink. */
export const TIGHTNESS: readonly Tightness[] = [
  { letters: 12, main: 150, enlarged: 84, curve: 250 },
  { letters: 11.5, main: 150, enlarged: 84, curve: 245 },
  { letters: 11, main: 150, enlarged: 80, curve: 235 },
  { letters: 10.5, main: 150, enlarged: 76, curve: 225 },
  { letters: 11, main: 150, enlarged: 56, curve: 235 },
  { letters: 10.5, main: 150, enlarged: 52, curve: 225 },
  { letters: 10, main: 150, enlarged: 48, curve: 215 },
  { letters: 10, main: 120, enlarged: 40, curve: 205 },
  { letters: 10, main: 102, enlarged: 0, curve: 185 },
  { letters: 9.5, main: 102, enlarged: 0, curve: 170 },
  { letters: 9.5, main: 75, enlarged: 0, curve: 170 },
  { letters: 9.5, main: 50, enlarged: 0, curve: 0 },
];

/** Width of what is printed, and the height that both A4 and Letter leave inside the margins of the page [px]. */
export const PAPER_WIDTH_MM = 186;
const LETTER_HIGH_MM = 11 * 25.4;
const MARGIN_MM = 8;
/** Browsers round what they lay out on paper; a few px are kept for that. */
const SPARE = 8;
export const PAPER_HEIGHT = ((LETTER_HIGH_MM - 2 * MARGIN_MM) * 96) / 25.4 - SPARE;
