/** Straight lines of a printed PDF, at their true lengths on paper: read from its drawing commands (ISO 32000-1, 8.2 and 8.4, from memory). */
import { inflateSync } from 'node:zlib';

type Matrix = readonly [number, number, number, number, number, number];
const UNIT: Matrix = [1, 0, 0, 1, 0, 0];
/** Points of 1/72 inch in a millimetre. */
const PT_PER_MM = 72 / 25.4;

/** First `a`, then `b`: a PDF multiplies new matrices from the left. */
function after([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix {
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

/** What is drawn in a PDF: its streams that can be inflated and place something. */
function drawings(pdf: Buffer): string[] {
  const text = pdf.toString('latin1');
  const found: string[] = [];
  for (const { 0: head, index } of text.matchAll(/\bstream\r?\n/g)) {
    const from = index + head.length;
    try {
      found.push(inflateSync(pdf.subarray(from, text.indexOf('endstream', from))).toString('latin1'));
    } catch {
      // A font or a picture that is packed in another way.
    }
  }
  return found.filter((drawing) => /\bcm\b/.test(drawing));
}

function linesOf(drawing: string): number[] {
  const stack: Matrix[] = [];
  const lengths: number[] = [];
  let now = UNIT;
  let last: readonly [number, number] | undefined;
  for (const line of drawing.split('\n')) {
    const words = line.trim().split(/\s+/);
    const command = words.at(-1);
    const numbers = words.slice(0, -1).map(Number);
    const [x = 0, y = 0] = numbers;
    const place = [x * now[0] + y * now[2], x * now[1] + y * now[3]] as const;
    if (command === 'q') stack.push(now);
    else if (command === 'Q') now = stack.pop() ?? UNIT;
    else if (command === 'cm' && numbers.length === 6) now = after(numbers as unknown as Matrix, now);
    else if (command === 'm') last = place;
    else if (command === 'l' && last) {
      lengths.push(Math.hypot(place[0] - last[0], place[1] - last[1]) / PT_PER_MM);
      last = place;
    }
  }
  return lengths;
}

/** Lengths of all straight lines on paper [mm]. */
export function lengthsOnPaper(pdf: Buffer): number[] {
  return drawings(pdf).flatMap(linesOf);
}
