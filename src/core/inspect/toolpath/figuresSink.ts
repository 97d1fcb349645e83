/** Gathers the figures of a whole toolpath, in the room of its layers. */
import type * as sum from './heights.ts';
import { Heights, turnsOf } from './heights.ts';
import * as row from './moves.ts';
import type { MoveSink } from './moves.ts';
import { Spiral } from './spiral.ts';
import type { ToolpathFigures } from './toolpathFigures.ts';

/** Over this share of what is laid that rises as it goes it is a spiral. */
const MOSTLY = 0.5;
/** Tools that are told apart. */
const TOOLS = 64;
const TOOL_BITS = Math.log2(row.TOOL);

const total = (numbers: Float64Array) => numbers.reduce((sum, number) => sum + number, 0);

/** Sums stand in arrays of numbers: fields of an object would each be put into a box of its own, for every move. */
export class FiguresSink implements MoveSink {
  readonly #heights = new Heights();
  readonly #spiral = new Spiral();
  /** Length printed and travelled, filament on printing moves, length that rises. */
  readonly #sums = new Float64Array(4);
  /** Where the move before ended. */
  readonly #from = new Float64Array(3);
  /** Of each tool: drawn back, pushed on to make up for that, pushed on beyond, and what is still owed. */
  readonly #drawn = new Float64Array(TOOLS);
  readonly #paid = new Float64Array(TOOLS);
  readonly #filament = new Float64Array(TOOLS);
  readonly #owed = new Float64Array(TOOLS);
  /** Of the move before, while it laid something at its height and its tool owed nothing; else −1. */
  #plain = -1;
  #printing = 0;
  #travel = 0;
  #feedOnly = 0;
  #retractions = 0;

  /** Most moves go on as the one before: they are summed up here, all others one by one. */
  take(rows: Float64Array, count: number): void {
    // In the function, since only there they are known to be constant: outside they would be read again for every move.
    const X: typeof row.X = 0;
    const Y: typeof row.Y = 1;
    const Z: typeof row.Z = 2;
    const FEED: typeof row.FEED = 3;
    const LAID: typeof row.LAID = 4;
    const LENGTH: typeof row.LENGTH = 5;
    const FLAGS: typeof row.FLAGS = 6;
    const SIZE: typeof row.MOVE_SIZE = 8;
    const LEAST_X: typeof sum.LEAST_X = 3;
    const LEAST_Y: typeof sum.LEAST_Y = 4;
    const MOST_X: typeof sum.MOST_X = 5;
    const MOST_Y: typeof sum.MOST_Y = 6;
    const { here } = this.#heights;
    const end = count * SIZE;
    let i = 0;
    while (i < end) {
      const plain = this.#plain;
      const z = this.#from[Z]!;
      const begun = i;
      let length = 0;
      let feed = 0;
      let laid = 0;
      let leastX = here[LEAST_X]!;
      let leastY = here[LEAST_Y]!;
      let mostX = here[MOST_X]!;
      let mostY = here[MOST_Y]!;
      while (
        i < end &&
        plain === rows[i + FLAGS] &&
        z === rows[i + Z] &&
        rows[i + FEED]! > 0 &&
        rows[i + LENGTH]! > 0
      ) {
        const x = rows[i + X]!;
        const y = rows[i + Y]!;
        length += rows[i + LENGTH]!;
        feed += rows[i + FEED]!;
        laid += rows[i + LAID]!;
        if (x < leastX) leastX = x;
        if (y < leastY) leastY = y;
        if (x > mostX) mostX = x;
        if (y > mostY) mostY = y;
        i += SIZE;
      }
      here[LEAST_X] = leastX;
      here[LEAST_Y] = leastY;
      here[MOST_X] = mostX;
      here[MOST_Y] = mostY;
      if (i > begun) this.#sum(rows, i, (i - begun) / SIZE, length, feed, laid);
      if (i < end) this.#one(rows, i);
      i += SIZE;
    }
  }

  /** Some moves that go on laying at one height, of which the last is before a place in the rows. */
  #sum(rows: Float64Array, end: number, pieces: number, length: number, feed: number, laid: number): void {
    const last = end - row.MOVE_SIZE;
    this.#printing += pieces;
    this.#sums[0]! += length;
    this.#sums[2]! += feed;
    this.#filament[this.#plain >> TOOL_BITS]! += feed;
    this.#heights.add(length, laid, pieces);
    this.#stand(rows, last);
  }

  #one(rows: Float64Array, i: number): void {
    const feed = rows[i + row.FEED]!;
    const length = rows[i + row.LENGTH]!;
    const flags = rows[i + row.FLAGS]! | 0;
    const tool = flags >> TOOL_BITS;
    const isNew = (flags & row.GOES_ON) === 0;
    this.#plain = -1;
    this.#push(tool, feed);
    if (length > 0 && feed > 0) {
      if (isNew) this.#printing += 1;
      this.#sums[0]! += length;
      this.#sums[2]! += feed;
      if (this.#lay(rows, i) && this.#owed[tool] === 0) this.#plain = tool << TOOL_BITS;
    } else if (length > 0) {
      if (isNew) this.#travel += 1;
      this.#sums[1]! += length;
    } else if (feed !== 0 && (flags & row.JUMP) === 0) {
      this.#feedOnly += 1;
      if (feed < 0) this.#retractions += 1;
    }
    this.#stand(rows, i);
  }

  #stand(rows: Float64Array, i: number): void {
    this.#from[0] = rows[i + row.X]!;
    this.#from[1] = rows[i + row.Y]!;
    this.#from[2] = rows[i + row.Z]!;
  }

  /** Filament: what had been drawn back is pushed on first, and counts for nothing. */
  #push(tool: number, feed: number): void {
    const owed = this.#owed[tool]!;
    if (feed < 0) {
      this.#drawn[tool]! -= feed;
      this.#owed[tool] = owed - feed;
    } else {
      const back = Math.min(owed, feed);
      this.#filament[tool]! += feed - back;
      this.#paid[tool]! += back;
      this.#owed[tool] = owed - back;
    }
  }

  /** Puts a piece to its height; tells whether it has one: what is laid while the nozzle only rises is a blob. */
  #lay(rows: Float64Array, i: number): boolean {
    const [fromX, fromY, fromZ] = [this.#from[0]!, this.#from[1]!, this.#from[2]!];
    const [x, y, z] = [rows[i + row.X]!, rows[i + row.Y]!, rows[i + row.Z]!];
    const length = rows[i + row.LENGTH]!;
    if (x === fromX && y === fromY) return false;
    if (z !== fromZ) {
      this.#sums[3]! += length;
      this.#spiral.take(fromX, fromY, fromZ, x, y, z);
    }
    this.#heights.at(z);
    this.#heights.add(length, rows[i + row.LAID]!, 1);
    this.#heights.reach(fromX, fromY);
    this.#heights.reach(x, y);
    return true;
  }

  /** After the last move. */
  end(): ToolpathFigures {
    const [printingLength, travelLength, filamentOnMoves, rising] = this.#sums;
    const heights = this.#heights.layers();
    const pitch = rising! > MOSTLY * printingLength! ? this.#spiral.pitch() : undefined;
    const box = this.#heights.box();
    const [filament, paid, drawn] = [this.#filament, this.#paid, this.#drawn].map(total);
    const byTool = [...this.#filament].map((of, tool) => ({ tool, filament: of }));
    return {
      printingMoves: this.#printing,
      travelMoves: this.#travel,
      feedOnlyMoves: this.#feedOnly,
      retractions: this.#retractions,
      printingLength: printingLength!,
      travelLength: travelLength!,
      filament: filament!,
      byTool: byTool.filter((one) => one.filament > 0),
      filamentOnMoves: filamentOnMoves!,
      feedForward: filament! + paid!,
      feedNet: filament! + paid! - drawn!,
      ...(box && { box }),
      heights: heights.length,
      layers: pitch === undefined ? heights : turnsOf(heights, pitch),
      ...(pitch !== undefined && { pitch }),
      isCut: this.#heights.isCut,
    };
  }
}
