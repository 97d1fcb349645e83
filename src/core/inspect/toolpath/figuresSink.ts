/** Gathers the figures of a whole toolpath, in the room of its layers. */
import type { Box3 } from '../../geometry/mesh/triangleMesh.ts';
import type { Mm } from '../../units.ts';
import { FEED, FLAGS, GOES_ON, JUMP, LAID, LENGTH, MOVE_SIZE, TOOL, X, Y, Z, type MoveSink } from './moves.ts';
import { Spiral } from './spiral.ts';
import { Steps } from './steps.ts';
import type { LayerFigures, ToolpathFigures } from './toolpathFigures.ts';

/** Heights that are told apart: of a print a metre high in tenths of a millimetre, ten times over. */
const MOST_HEIGHTS = 100_000;
/** Heights are told apart to a tenth of a micron. */
const PER_MM = 1e4;
/** Over this share of what is laid that rises as it goes it is a spiral. */
const MOSTLY = 0.5;

const layerAt = (z: Mm, height: Mm): Open => ({
  z,
  height,
  length: 0,
  laid: 0,
  pieces: 0,
  least: { x: Infinity, y: Infinity },
  greatest: { x: -Infinity, y: -Infinity },
});

type Place = { x: number; y: number };
type Open = { -readonly [K in keyof LayerFigures]: LayerFigures[K] } & {
  readonly least: Place;
  readonly greatest: Place;
};

// Sums of the whole: length printed and travelled, filament on printing moves, pushed on, in all; length that rises.
const PRINTING = 0;
const TRAVEL = 1;
const ON_MOVES = 2;
const FORWARD = 3;
const NET = 4;
const RISING = 5;
// Of the layer that is laid: the same numbers as `LayerFigures`.
const LONG = 0;
const LAID_HERE = 1;
const PIECES = 2;
const LEAST_X = 3;
const LEAST_Y = 4;
const MOST_X = 5;
const MOST_Y = 6;
const NOTHING = [0, 0, 0, Infinity, Infinity, -Infinity, -Infinity];
/** Tools that are told apart. */
const TOOLS = 64;
const TOOL_BITS = Math.log2(TOOL);

/** Sums stand in arrays of numbers: fields of an object would each be put into a box of its own, for every move. */
export class FiguresSink implements MoveSink {
  readonly #layers = new Map<number, Open>();
  readonly #steps = new Steps();
  readonly #spiral = new Spiral();
  readonly #owed = new Float64Array(TOOLS);
  readonly #filament = new Float64Array(TOOLS);
  #layer: Open | undefined;
  #layerZ = Number.NaN;
  #isCut = false;
  /** Where the move before ended, and whether it laid something. */
  readonly #from = new Float64Array(3);
  #isOn = false;
  readonly #sums = new Float64Array(6);
  readonly #here = Float64Array.from(NOTHING);
  #printing = 0;
  #travel = 0;
  #feedOnly = 0;
  #retractions = 0;

  take(rows: Float64Array, count: number): void {
    const from = this.#from;
    const here = this.#here;
    let isOn = this.#isOn;
    let [x, y, z, printing, onMoves] = [from[0]!, from[1]!, from[2]!, 0, 0];
    for (let i = 0; i < count * MOVE_SIZE; i += MOVE_SIZE) {
      const feed = rows[i + FEED]!;
      const length = rows[i + LENGTH]!;
      if (feed > 0 && length > 0) {
        if ((rows[i + FLAGS]! & GOES_ON) === 0) this.#printing += 1;
        this.#push(rows, i);
        printing += length;
        onMoves += feed;
        if (!isOn || rows[i + Z]! !== z) {
          from[0] = x;
          from[1] = y;
          from[2] = z;
          isOn = this.#begin(rows, i);
        }
        x = rows[i + X]!;
        y = rows[i + Y]!;
        if (isOn) {
          here[LONG]! += length;
          here[LAID_HERE]! += rows[i + LAID]!;
          here[PIECES]! += 1;
          if (x < here[LEAST_X]!) here[LEAST_X] = x;
          if (y < here[LEAST_Y]!) here[LEAST_Y] = y;
          if (x > here[MOST_X]!) here[MOST_X] = x;
          if (y > here[MOST_Y]!) here[MOST_Y] = y;
        }
      } else {
        this.#layNothing(rows, i);
        isOn = false;
        x = rows[i + X]!;
        y = rows[i + Y]!;
      }
      z = rows[i + Z]!;
    }
    from[0] = x;
    from[1] = y;
    from[2] = z;
    this.#isOn = isOn;
    this.#sums[PRINTING]! += printing;
    this.#sums[ON_MOVES]! += onMoves;
  }

  /** A move without filament, or filament without a move. */
  #layNothing(rows: Float64Array, i: number): void {
    const feed = rows[i + FEED]!;
    const length = rows[i + LENGTH]!;
    const flags = rows[i + FLAGS]!;
    if (feed !== 0) this.#push(rows, i);
    if (length > 0) {
      if ((flags & GOES_ON) === 0) this.#travel += 1;
      this.#sums[TRAVEL]! += length;
    } else if (feed !== 0 && (flags & JUMP) === 0) {
      this.#feedOnly += 1;
      if (feed < 0) this.#retractions += 1;
    }
  }

  /** Filament: what had been drawn back is pushed on first, and counts for nothing. */
  #push(rows: Float64Array, i: number): void {
    const feed = rows[i + FEED]!;
    const tool = (rows[i + FLAGS]! | 0) >> TOOL_BITS;
    const owed = this.#owed[tool]!;
    this.#sums[NET]! += feed;
    if (feed < 0) this.#owed[tool] = owed - feed;
    else {
      const back = owed < feed ? owed : feed;
      this.#owed[tool] = owed - back;
      this.#filament[tool]! += feed - back;
      this.#sums[FORWARD]! += feed;
    }
  }

  /** The first piece of a path, or one at another height; tells whether it is laid anywhere. */
  #begin(rows: Float64Array, i: number): boolean {
    const [fromX, fromY, fromZ] = [this.#from[0]!, this.#from[1]!, this.#from[2]!];
    const [x, y, z] = [rows[i + X]!, rows[i + Y]!, rows[i + Z]!];
    if (x === fromX && y === fromY) return false;
    if (z !== fromZ) {
      this.#sums[RISING]! += rows[i + LENGTH]!;
      this.#spiral.take(fromX, fromY, fromZ, x, y, z);
    }
    if (z !== this.#layerZ) this.#enter(z);
    const here = this.#here;
    here[LEAST_X] = Math.min(here[LEAST_X]!, fromX);
    here[LEAST_Y] = Math.min(here[LEAST_Y]!, fromY);
    here[MOST_X] = Math.max(here[MOST_X]!, fromX);
    here[MOST_Y] = Math.max(here[MOST_Y]!, fromY);
    return true;
  }

  /** Puts the sums of the layer that was laid to what is known of it. */
  #leave(): void {
    const layer = this.#layer;
    const here = this.#here;
    if (layer) {
      layer.length += here[LONG]!;
      layer.laid += here[LAID_HERE]!;
      layer.pieces += here[PIECES]!;
      layer.least.x = Math.min(layer.least.x, here[LEAST_X]!);
      layer.least.y = Math.min(layer.least.y, here[LEAST_Y]!);
      layer.greatest.x = Math.max(layer.greatest.x, here[MOST_X]!);
      layer.greatest.y = Math.max(layer.greatest.y, here[MOST_Y]!);
    }
    here.set(NOTHING);
  }

  #enter(z: Mm): void {
    this.#leave();
    this.#layerZ = z;
    const key = Math.round(z * PER_MM);
    const known = this.#layers.get(key);
    this.#isCut ||= !known && this.#layers.size >= MOST_HEIGHTS;
    if (!known && this.#isCut) {
      this.#layer = undefined;
      return;
    }
    this.#steps.at(z);
    this.#layer = known ?? layerAt(z, this.#steps.height);
    if (!known) this.#layers.set(key, this.#layer);
  }

  /** After the last move. */
  end(): ToolpathFigures {
    this.#leave();
    const sums = this.#sums;
    const heights = [...this.#layers.values()].toSorted((a, b) => a.z - b.z);
    const pitch = sums[RISING]! > MOSTLY * sums[PRINTING]! ? this.#spiral.pitch() : undefined;
    const box = boxOf(heights);
    const byTool = [...this.#filament.entries()].map(([tool, filament]) => ({ tool, filament }));
    return {
      printingMoves: this.#printing,
      travelMoves: this.#travel,
      feedOnlyMoves: this.#feedOnly,
      retractions: this.#retractions,
      printingLength: sums[PRINTING]!,
      travelLength: sums[TRAVEL]!,
      filament: this.#filament.reduce((sum, filament) => sum + filament, 0),
      byTool: byTool.filter(({ filament }) => filament > 0),
      filamentOnMoves: sums[ON_MOVES]!,
      feedForward: sums[FORWARD]!,
      feedNet: sums[NET]!,
      ...(box && { box }),
      heights: heights.length,
      layers: pitch === undefined ? heights : turnsOf(heights, pitch),
      ...(pitch !== undefined && { pitch }),
      isCut: this.#isCut,
    };
  }
}

function boxOf(layers: readonly LayerFigures[]): Box3 | undefined {
  const [first, last] = [layers[0], layers.at(-1)];
  if (!first || !last) return undefined;
  const whole = joined(layers, first.z, 0);
  return { min: { ...whole.least, z: first.z }, max: { ...whole.greatest, z: last.z } };
}

/** Some layers as one. */
function joined(layers: readonly LayerFigures[], z: Mm, height: Mm): LayerFigures {
  const one = layerAt(z, height);
  for (const { length, laid, pieces, least, greatest } of layers) {
    one.length += length;
    one.laid += laid;
    one.pieces += pieces;
    one.least.x = Math.min(one.least.x, least.x);
    one.least.y = Math.min(one.least.y, least.y);
    one.greatest.x = Math.max(one.greatest.x, greatest.x);
    one.greatest.y = Math.max(one.greatest.y, greatest.y);
  }
  return one;
}

/** The turns of a spiral: what lies from one height to a pitch over it. */
function turnsOf(heights: readonly LayerFigures[], pitch: Mm): readonly LayerFigures[] {
  const base = heights[0]!.z;
  const turns = new Map<number, LayerFigures[]>();
  for (const layer of heights) {
    const turn = Math.floor((layer.z - base) / pitch + 1e-6);
    const known = turns.get(turn);
    if (known) known.push(layer);
    else turns.set(turn, [layer]);
  }
  return [...turns].map(([turn, layers]) => joined(layers, base + turn * pitch, pitch));
}
