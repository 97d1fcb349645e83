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

type Place = { x: number; y: number };
type Open = { -readonly [K in keyof LayerFigures]: LayerFigures[K] } & {
  readonly least: Place;
  readonly greatest: Place;
};

const layerAt = (z: Mm, height: Mm): Open => ({
  z,
  height,
  length: 0,
  laid: 0,
  pieces: 0,
  least: { x: Infinity, y: Infinity },
  greatest: { x: -Infinity, y: -Infinity },
});

export class FiguresSink implements MoveSink {
  readonly #layers = new Map<number, Open>();
  readonly #steps = new Steps();
  readonly #spiral = new Spiral();
  readonly #owed = new Map<number, number>();
  readonly #filament = new Map<number, number>();
  #layer: Open | undefined;
  #layerZ = Number.NaN;
  #isCut = false;
  // Where the move before ended, and sums of printing, travel, filament on moves, forward, net, rising: plain numbers in one array, which a loop over all rows keeps at hand.
  readonly #at = new Float64Array(3);
  readonly #sums = new Float64Array(6);
  #printing = 0;
  #travel = 0;
  #feedOnly = 0;
  #retractions = 0;

  take(rows: Float64Array, count: number): void {
    for (let row = 0; row < count; row += 1) this.#move(rows, row * MOVE_SIZE);
  }

  #move(rows: Float64Array, i: number): void {
    const feed = rows[i + FEED]!;
    const length = rows[i + LENGTH]!;
    const flags = rows[i + FLAGS]!;
    const sums = this.#sums;
    if (feed !== 0) this.#push(feed, flags);
    if (length > 0) {
      if (feed > 0) {
        if ((flags & GOES_ON) === 0) this.#printing += 1;
        sums[0]! += length;
        sums[2]! += feed;
        this.#lay(rows, i);
      } else {
        if ((flags & GOES_ON) === 0) this.#travel += 1;
        sums[1]! += length;
      }
    } else if ((flags & JUMP) === 0 && feed !== 0) {
      this.#feedOnly += 1;
      if (feed < 0) this.#retractions += 1;
    }
    this.#at[0] = rows[i + X]!;
    this.#at[1] = rows[i + Y]!;
    this.#at[2] = rows[i + Z]!;
  }

  /** Filament: what had been drawn back is pushed on first, and counts for nothing. */
  #push(feed: number, flags: number): void {
    this.#sums[4]! += feed;
    if (feed > 0) this.#sums[3]! += feed;
    const tool = Math.floor(flags / TOOL);
    const owed = this.#owed.get(tool) ?? 0;
    if (feed < 0) {
      this.#owed.set(tool, owed - feed);
      return;
    }
    const back = Math.min(owed, feed);
    if (back > 0) this.#owed.set(tool, owed - back);
    this.#filament.set(tool, (this.#filament.get(tool) ?? 0) + feed - back);
  }

  #lay(rows: Float64Array, i: number): void {
    const [fromX, fromY, fromZ] = [this.#at[0]!, this.#at[1]!, this.#at[2]!];
    const [x, y, z] = [rows[i + X]!, rows[i + Y]!, rows[i + Z]!];
    if (x === fromX && y === fromY) return;
    const rises = z !== fromZ;
    if (rises) this.#sums[5]! += rows[i + LENGTH]!;
    this.#spiral.take(fromX, fromY, fromZ, x, y, z, rises);
    if (z !== this.#layerZ) this.#enter(z);
    const layer = this.#layer;
    if (!layer) return;
    layer.length += rows[i + LENGTH]!;
    layer.laid += rows[i + LAID]!;
    layer.pieces += 1;
    const { least, greatest } = layer;
    if (x < least.x) least.x = x;
    if (y < least.y) least.y = y;
    if (x > greatest.x) greatest.x = x;
    if (y > greatest.y) greatest.y = y;
    if (fromX < least.x) least.x = fromX;
    if (fromY < least.y) least.y = fromY;
    if (fromX > greatest.x) greatest.x = fromX;
    if (fromY > greatest.y) greatest.y = fromY;
  }

  #enter(z: Mm): void {
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
    const [printing, travel, onMoves, forward, net, rising] = this.#sums;
    const heights = [...this.#layers.values()].toSorted((a, b) => a.z - b.z);
    const pitch = rising! > MOSTLY * printing! ? this.#spiral.pitch() : undefined;
    const box = boxOf(heights);
    const filaments = [...this.#filament].filter(([, filament]) => filament > 0).toSorted(([a], [b]) => a - b);
    return {
      printingMoves: this.#printing,
      travelMoves: this.#travel,
      feedOnlyMoves: this.#feedOnly,
      retractions: this.#retractions,
      printingLength: printing!,
      travelLength: travel!,
      filament: filaments.reduce((sum, [, filament]) => sum + filament, 0),
      byTool: filaments.map(([tool, filament]) => ({ tool, filament })),
      filamentOnMoves: onMoves!,
      feedForward: forward!,
      feedNet: net!,
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
