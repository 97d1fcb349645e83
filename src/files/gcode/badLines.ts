/** Lines that were not understood: how many, and the first of them. */
import { MOST_TOLD, type BadLine, type BadLineWhy } from './gcodeText.ts';

/** So much of each is told [bytes]. */
const TOLD = 80;
const NEW_LINE = 10;

export class BadLines {
  count = 0;
  readonly told: BadLine[] = [];

  /** @param from - where the line begins in the bytes; it ends with a new line, or with them */
  add(bytes: Uint8Array, from: number, line: number, why: BadLineWhy): void {
    this.count += 1;
    if (this.told.length >= MOST_TOLD) return;
    const beginning = bytes.subarray(from, from + TOLD);
    const end = beginning.indexOf(NEW_LINE);
    const shown = end < 0 ? beginning : beginning.subarray(0, end);
    this.told.push({ line, text: new TextDecoder('utf-8').decode(shown).trim(), why });
  }
}
