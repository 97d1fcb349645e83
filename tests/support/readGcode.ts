/** A toolpath from text, in tests: its moves one by one, its figures and what is told of its text. */
import { FiguresSink } from '../../src/core/inspect/toolpath/figuresSink.ts';
import {
  FEED,
  FLAGS,
  LAID,
  LENGTH,
  LINE,
  MOVE_SIZE,
  X,
  Y,
  Z,
  type MoveSink,
} from '../../src/core/inspect/toolpath/moves.ts';
import type { ToolpathFigures } from '../../src/core/inspect/toolpath/toolpathFigures.ts';
import { GcodeReader } from '../../src/files/gcode/gcodeReader.ts';
import type { GcodeText } from '../../src/files/gcode/gcodeText.ts';

export interface Move {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly feed: number;
  readonly laid: number;
  readonly length: number;
  readonly flags: number;
  readonly line: number;
}

export interface ReadGcode {
  readonly text: GcodeText;
  readonly figures: ToolpathFigures;
  readonly moves: readonly Move[];
}

/** Copies every move. */
export class Kept implements MoveSink {
  readonly moves: Move[] = [];

  take(rows: Float64Array, count: number): void {
    for (let i = 0; i < count * MOVE_SIZE; i += MOVE_SIZE) {
      this.moves.push({
        x: rows[i + X]!,
        y: rows[i + Y]!,
        z: rows[i + Z]!,
        feed: rows[i + FEED]!,
        laid: rows[i + LAID]!,
        length: rows[i + LENGTH]!,
        flags: rows[i + FLAGS]!,
        line: rows[i + LINE]!,
      });
    }
  }
}

/** Two sinks as one. */
const both = (one: MoveSink, other: MoveSink): MoveSink => ({
  take: (rows, count) => {
    one.take(rows, count);
    other.take(rows, count);
  },
});

const encoder = new TextEncoder();
export const bytesOfText = (text: string | Uint8Array): Uint8Array =>
  typeof text === 'string' ? encoder.encode(text) : text;

export interface Reading {
  /** Of the filament [mm]. */
  readonly diameter?: number;
  /** Sizes of the pieces that it is fed in, used again from the first [bytes]; all at once if there are none. */
  readonly pieces?: readonly number[];
}

export function readGcode(text: string | Uint8Array, { diameter = 1.75, pieces = [] }: Reading = {}): ReadGcode {
  const bytes = bytesOfText(text);
  const [kept, figures] = [new Kept(), new FiguresSink()];
  const reader = new GcodeReader({ filamentDiameter: diameter }, both(kept, figures));
  for (let at = 0, i = 0; at < bytes.length; i += 1) {
    const size = pieces.length > 0 ? pieces[i % pieces.length]! : bytes.length;
    reader.feed(bytes.subarray(at, at + size));
    at += size;
  }
  return { text: reader.end(), figures: figures.end(), moves: kept.moves };
}
