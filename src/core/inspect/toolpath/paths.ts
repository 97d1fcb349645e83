/** Puts moves together to paths: what is laid without a break. */
import type { Mm } from '../../units.ts';
import { Growing } from './growing.ts';
import { FEED, FLAGS, JUMP, LAID, LENGTH, LINE, MOVE_SIZE, TOOL, X, Y, Z, type MoveSink } from './moves.ts';
import { Steps } from './steps.ts';

/** Ends no farther apart than so many of its widths close a path; where it starts and ends a printer leaves part of a bead open. */
const CLOSES = 1.6;
/** A path shorter than so many of its widths goes round nothing. */
const GOES_ROUND = 6;
/** Moves shorter than this are none: the last digit of files, twice over [mm]. */
const NO_MOVE = 2e-3;

/** What is laid without a break, as it is handed on; its arrays are used again afterwards. */
export interface LaidPath {
  /** In the order laid, from 0. */
  readonly number: number;
  /** Corners of its centre line, and how high the nozzle is there [mm]: `count` of each. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Filament that comes out per length of each piece, `count` − 1 of them [-]. */
  readonly feed: Float64Array;
  readonly count: number;
  /** Over what was laid before, lower down [mm]. */
  readonly height: Mm;
  /** Whether it ends where it began; of a spiral, which is handed on turn by turn, always. */
  readonly isClosed: boolean;
  /** False where a spiral goes on from the turn before, or to the next. */
  readonly begins: boolean;
  readonly ends: boolean;
  readonly line: number;
  readonly tool: number;
}

/** A move that lays nothing. */
export interface Travel {
  readonly from: { readonly x: Mm; readonly y: Mm };
  readonly to: { readonly x: Mm; readonly y: Mm };
  readonly z: Mm;
  readonly over: Mm;
  readonly line: number;
}

export interface PathHandler {
  readonly path: (path: LaidPath) => void;
  readonly travel?: (travel: Travel) => void;
  /** Called before a path at another height than the one before. */
  readonly height?: (z: Mm) => void;
}

/** Takes moves in and hands paths on. A path ends where the nozzle moves without laying, jumps, changes height or tool. */
export class Paths implements MoveSink {
  readonly #handler: PathHandler;
  /** Of a spiral, whose height changes all along: how much it rises a turn; else undefined. */
  readonly #pitch: Mm | undefined;
  readonly #diameter: Mm;
  readonly #steps = new Steps();
  readonly #x = new Growing();
  readonly #y = new Growing();
  readonly #z = new Growing();
  readonly #feed = new Growing();
  #atX = 0;
  #atY = 0;
  #atZ = 0;
  #length = 0;
  #laid = 0;
  #line = 0;
  #tool = 0;
  #number = 0;
  #begins = true;
  /** Where the next turn of a spiral begins. */
  #nextTurn: Mm | undefined;

  /** @param diameter - of the filament [mm]; tells only how wide a path is that may close */
  constructor(handler: PathHandler, diameter: Mm, pitch?: Mm) {
    this.#handler = handler;
    this.#diameter = diameter;
    this.#pitch = pitch;
  }

  take(rows: Float64Array, count: number): void {
    for (let row = 0; row < count; row += 1) this.#move(rows, row * MOVE_SIZE);
  }

  /** After the last move. */
  end(): void {
    this.#finish();
  }

  #move(rows: Float64Array, at: number): void {
    const x = rows[at + X]!;
    const y = rows[at + Y]!;
    const z = rows[at + Z]!;
    const flags = rows[at + FLAGS]!;
    const length = rows[at + LENGTH]!;
    const laid = rows[at + LAID]!;
    if (flags & JUMP) this.#finish();
    else if (laid > 0 && length > 0 && rows[at + FEED]! > 0) this.#lay(rows, at);
    else if (length > 0) this.#travel(rows, at);
    this.#atX = x;
    this.#atY = y;
    this.#atZ = z;
  }

  #lay(rows: Float64Array, at: number): void {
    const x = rows[at + X]!;
    const y = rows[at + Y]!;
    const z = rows[at + Z]!;
    const tool = Math.floor(rows[at + FLAGS]! / TOOL);
    const length = rows[at + LENGTH]!;
    const isLevel = this.#pitch !== undefined || Math.abs(z - this.#atZ) < 1e-6;
    // What is laid while the nozzle only rises is a blob, and what rises steeply has no height of its own.
    if (Math.hypot(x - this.#atX, y - this.#atY) < 1e-9) return;
    if (this.#x.count > 0 && (tool !== this.#tool || !isLevel)) this.#finish();
    if (this.#x.count === 0) {
      if (this.#pitch === undefined && this.#steps.at(z)) this.#handler.height?.(z);
      this.#tool = tool;
      this.#line = rows[at + LINE]!;
      this.#corner(this.#atX, this.#atY, this.#pitch === undefined ? z : this.#atZ);
    }
    this.#feed.add(rows[at + LAID]! / length);
    this.#length += length;
    this.#laid += rows[at + LAID]!;
    this.#corner(x, y, z);
    if (this.#pitch !== undefined) this.#turn(z, this.#pitch);
  }

  /** A spiral is cut where a turn is full. */
  #turn(z: Mm, pitch: Mm): void {
    this.#nextTurn ??= this.#z.values[0]! + pitch;
    if (z < this.#nextTurn - 1e-6) return;
    while (z >= this.#nextTurn - 1e-6) this.#nextTurn += pitch;
    this.#finish(true);
  }

  #corner(x: number, y: number, z: number): void {
    this.#x.add(x);
    this.#y.add(y);
    this.#z.add(z);
  }

  #travel(rows: Float64Array, at: number): void {
    const to = { x: rows[at + X]!, y: rows[at + Y]! };
    const isMove =
      Math.hypot(to.x - this.#atX, to.y - this.#atY) > NO_MOVE || Math.abs(rows[at + Z]! - this.#atZ) > 1e-6;
    if (isMove) this.#finish();
    const from = { x: this.#atX, y: this.#atY };
    const z = (rows[at + Z]! + this.#atZ) / 2;
    this.#handler.travel?.({ from, to, z, over: this.#steps.z, line: rows[at + LINE]! });
  }

  /** @param goesOn - whether a spiral goes on in its next turn */
  #finish(goesOn = false): void {
    const count = this.#x.count;
    if (count > 1) {
      const { values: x } = this.#x;
      const { values: y } = this.#y;
      const height = this.#pitch ?? this.#steps.height;
      this.#handler.path({
        number: this.#number,
        x,
        y,
        z: this.#z.values,
        feed: this.#feed.values,
        count,
        height,
        isClosed: this.#pitch === undefined ? this.#isClosed(height) : goesOn,
        begins: this.#begins,
        ends: !goesOn,
        line: this.#line,
        tool: this.#tool,
      });
      this.#number += 1;
    }
    this.#begins = !goesOn;
    for (const list of [this.#x, this.#y, this.#z, this.#feed]) list.clear();
    this.#length = 0;
    this.#laid = 0;
  }

  #isClosed(height: Mm): boolean {
    const last = this.#x.count - 1;
    if (last < 3) return false;
    const apart = Math.hypot(this.#x.values[last]! - this.#x.values[0]!, this.#y.values[last]! - this.#y.values[0]!);
    const area = (Math.PI * this.#diameter ** 2 * this.#laid) / (4 * this.#length);
    const width = area / height;
    return apart <= CLOSES * width && this.#length > GOES_ROUND * width;
  }
}
