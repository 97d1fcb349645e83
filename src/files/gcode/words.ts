/** Words of a line: numbers by their letter. */

/** Place of a letter among the words: A is 1. */
const letter = (name: string): number => name.charCodeAt(0) & 31;

export const E = letter('E');
export const G = letter('G');
export const I = letter('I');
export const J = letter('J');
export const K = letter('K');
export const L = letter('L');
export const M = letter('M');
export const N = letter('N');
export const P = letter('P');
export const R = letter('R');
export const S = letter('S');
export const T = letter('T');
export const D = letter('D');
export const X = letter('X');
export const Y = letter('Y');
export const Z = letter('Z');

/** The words of one line, used again for the next. */
export class Words {
  /** By place of the letter; only those of `seen` are of this line. */
  readonly value = new Float64Array(32);
  /** Bits by place of the letter. */
  seen = 0;

  has(place: number): boolean {
    return (this.seen & (1 << place)) !== 0;
  }
}
