/** A letter or report in sentences, by its parts: to be read on screen, printed, copied or kept as plain text. */

/** What is told of one thin section, or of several that are alike. */
interface LetterItem {
  /** “1: leaf at x 14.5, y 5.0, z 3.0, section A”. */
  readonly title: string;
  /** What it measures and what becomes of it. */
  readonly is: readonly string[];
  /** What is asked for; empty where it is fine. */
  readonly please: readonly string[];
}

export interface LetterSaid {
  readonly heading: string;
  readonly opening: readonly string[];
  readonly items: readonly LetterItem[];
  readonly closing: readonly string[];
}

/** The letter as plain text, a blank line between its parts. */
export function plainLetter({ heading, opening, items, closing }: LetterSaid): string {
  const blocks = items.map(({ title, is, please }) =>
    [title, ...[...is, ...please].map((line) => `  ${line}`)].join('\n'),
  );
  return `${[heading, opening.join('\n'), ...blocks, closing.join('\n')].filter((block) => block !== '').join('\n\n')}\n`;
}
