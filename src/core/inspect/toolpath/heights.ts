/** What is laid at each height, in the room of so many heights at the most. */
import type { Box3 } from '../../geometry/mesh/triangleMesh.ts';
import type { Mm } from '../../units.ts';
import { Steps } from './steps.ts';
import type { LayerFigures } from './toolpathFigures.ts';

/** Of a print a metre high in tenths of a millimetre ten times over; of a spiral some hundred turns one by one. */
const MOST_HEIGHTS = 100_000;
/** Heights are told apart to a tenth of a micron, ten times as coarsely whenever there are too many. */
const FINEST = 1e4;

type Place = { x: number; y: number };
type Open = { -readonly [K in keyof LayerFigures]: LayerFigures[K] } & {
  readonly least: Place;
  readonly greatest: Place;
};

/** Sums of the layer that is being laid, in an array: fields of an object would each be put into a box, for every move. */
const LENGTH = 0;
const LAID = 1;
const PIECES = 2;
export const LEAST_X = 3;
export const LEAST_Y = 4;
export const MOST_X = 5;
export const MOST_Y = 6;
const NOTHING = [0, 0, 0, Infinity, Infinity, -Infinity, -Infinity];

const layerAt = (z: Mm, height: Mm): Open => ({
  z,
  height,
  length: 0,
  laid: 0,
  pieces: 0,
  least: { x: Infinity, y: Infinity },
  greatest: { x: -Infinity, y: -Infinity },
});

type Sums = Pick<LayerFigures, 'length' | 'laid' | 'pieces'>;

function put(to: Open, { length, laid, pieces }: Sums, least: Readonly<Place>, greatest: Readonly<Place>): void {
  to.length += length;
  to.laid += laid;
  to.pieces += pieces;
  to.least.x = Math.min(to.least.x, least.x);
  to.least.y = Math.min(to.least.y, least.y);
  to.greatest.x = Math.max(to.greatest.x, greatest.x);
  to.greatest.y = Math.max(to.greatest.y, greatest.y);
}

/** Some layers as one. */
function joined(layers: readonly LayerFigures[], z: Mm, height: Mm): LayerFigures {
  const one = layerAt(z, height);
  for (const layer of layers) put(one, layer, layer.least, layer.greatest);
  return one;
}

export class Heights {
  /** Length and filament laid, pieces, least x and y, greatest x and y: whoever lays may widen them. */
  readonly here = Float64Array.from(NOTHING);
  readonly #steps = new Steps();
  #layers = new Map<number, Open>();
  #perMm = FINEST;
  #layer: Open | undefined;
  #z = Number.NaN;
  #lowest = Infinity;
  #highest = -Infinity;

  /** True where heights came so many that they are told apart more coarsely. */
  get isCut(): boolean {
    return this.#perMm < FINEST;
  }

  /** Whatever is laid next is laid at this height. */
  at(z: Mm): void {
    if (z === this.#z) return;
    this.#leave();
    this.#z = z;
    this.#lowest = Math.min(this.#lowest, z);
    this.#highest = Math.max(this.#highest, z);
    this.#steps.at(z);
    const key = Math.round(z * this.#perMm);
    const known = this.#layers.get(key);
    this.#layer = known ?? layerAt(z, this.#steps.height);
    if (known) return;
    this.#layers.set(key, this.#layer);
    if (this.#layers.size > MOST_HEIGHTS) this.#coarsen();
  }

  /** Something is laid there. */
  add(length: Mm, laid: Mm, pieces: number): void {
    this.here[LENGTH]! += length;
    this.here[LAID]! += laid;
    this.here[PIECES]! += pieces;
  }

  /** And it comes as far as a place. */
  reach(x: Mm, y: Mm): void {
    const { here } = this;
    here[LEAST_X] = Math.min(here[LEAST_X]!, x);
    here[LEAST_Y] = Math.min(here[LEAST_Y]!, y);
    here[MOST_X] = Math.max(here[MOST_X]!, x);
    here[MOST_Y] = Math.max(here[MOST_Y]!, y);
  }

  /** Puts the sums of what was laid to what is known of its height. */
  #leave(): void {
    const [length, laid, pieces, leastX, leastY, mostX, mostY] = this.here;
    const sums = { length: length!, laid: laid!, pieces: pieces! };
    if (this.#layer) put(this.#layer, sums, { x: leastX!, y: leastY! }, { x: mostX!, y: mostY! });
    this.here.set(NOTHING);
  }

  #coarsen(): void {
    this.#perMm /= 10;
    const finer = this.#layers;
    this.#layers = new Map();
    for (const layer of finer.values()) {
      const key = Math.round(layer.z * this.#perMm);
      const known = this.#layers.get(key);
      if (known) put(known, layer, layer.least, layer.greatest);
      else this.#layers.set(key, layer);
    }
    this.#layer = this.#layers.get(Math.round(this.#z * this.#perMm));
  }

  /** Lowest first, after the last move. */
  layers(): readonly LayerFigures[] {
    this.#leave();
    return [...this.#layers.values()].toSorted((a, b) => a.z - b.z);
  }

  /** Round the middles of all that is laid [mm]. */
  box(): Box3 | undefined {
    if (this.#layers.size === 0) return undefined;
    const { least, greatest } = joined([...this.#layers.values()], 0, 0);
    return { min: { ...least, z: this.#lowest }, max: { ...greatest, z: this.#highest } };
  }
}

/**
 * The turns of a spiral.
 *
 * @param heights - lowest first [mm]
 * @param pitch - how much it rises a turn [mm], > 0
 * @returns what lies from one height to a pitch over it, lowest first
 */
export function turnsOf(heights: readonly LayerFigures[], pitch: Mm): readonly LayerFigures[] {
  const base = heights[0]?.z ?? 0;
  const turns = new Map<number, LayerFigures[]>();
  for (const layer of heights) {
    const turn = Math.floor((layer.z - base) / pitch + 1e-6);
    const known = turns.get(turn);
    if (known) known.push(layer);
    else turns.set(turn, [layer]);
  }
  return [...turns].map(([turn, layers]) => joined(layers, base + turn * pitch, pitch));
}
