/** Passes over a toolpath that gathers what stands in its layers. */
import { unite } from '../../geometry/clipping.ts';
import type { Loop } from '../../geometry/loop.ts';
import type { Point } from '../../geometry/outline.ts';
import { laidWidth } from '../../print/bead.ts';
import type { Mm } from '../../units.ts';
import { InsideLoops } from './insideLoops.ts';
import { layerOutline, type FlatPath } from './layerOutline.ts';
import type { LaidPath, PathHandler } from './paths.ts';
import type { Slab } from './slabs.ts';
import type { LayerFigures } from './toolpathFigures.ts';

/** Pieces of paths that are kept at most before they are drawn together. */
const MOST_PIECES = 400_000;
/** Heights nearer than this share of a usual layer belong to one layer: what is printed beside the part at heights of its own. */
const ONE_LAYER = 0.45;
/** Most paths of the first layer that are kept until the next is known. */
const MOST_FIRST = 100_000;
/** Most pieces, and most layers, of which outlines are made: some ten seconds of work. */
export const MOST_OUTLINED = { pieces: 1_200_000, layers: 700 };

/** A layer that is to be outlined: all that is laid over `bottom` up to `top`. */
export interface Band {
  readonly bottom: Mm;
  readonly top: Mm;
  /** What lies at these heights is outlined; the rest of the band is taken to be like it. */
  readonly from: Mm;
  readonly to: Mm;
}

/** The height of a layer that most of what is laid has [mm]. */
export function usualHeight(layers: readonly LayerFigures[]): Mm {
  const sorted = layers.toSorted((a, b) => a.height - b.height);
  const half = sorted.reduce((sum, { length }) => sum + length, 0) / 2;
  let sum = 0;
  return sorted.find(({ length }) => (sum += length) >= half)?.height ?? 0;
}

/** Layers as they lie on one another, with those that are printed beside at heights of their own. */
function groups(layers: readonly LayerFigures[]): readonly (readonly LayerFigures[])[] {
  const near = ONE_LAYER * usualHeight(layers);
  const found: LayerFigures[][] = [];
  for (const layer of layers) {
    const last = found.at(-1);
    if (last && layer.z - last[0]!.z < near) last.push(layer);
    else found.push([layer]);
  }
  return found;
}

/** Turns of a spiral: each goes from its height to that of the next, and lies half a turn under and over it in the mean. */
function turnsOf(layers: readonly LayerFigures[], pitch: Mm): readonly Band[] {
  const every = Math.max(1, Math.ceil(layers.length / MOST_OUTLINED.layers));
  return layers
    .filter((_, i) => i % every === 0)
    .map(({ z }) => ({
      bottom: Math.max(0, z - pitch / 2),
      top: z + (every - 0.5) * pitch,
      from: z,
      to: z + 0.999 * pitch,
    }));
}

/** Where some layers begin, over what lies below them. */
function bottomOf(group: readonly LayerFigures[], below: readonly LayerFigures[] | undefined): Mm {
  const own = Math.min(...group.map(({ z, height }) => z - height));
  return below ? Math.max(own, below.at(-1)!.z) : Math.max(0, own);
}

/**
 * Which layers are outlined: all, or every so many where there is very much.
 *
 * @param layers - of the whole toolpath, lowest first [mm]
 * @param pitch - of a spiral, how much it rises a turn [mm]
 * @returns bands from the bottom up [mm]
 */
export function bandsOf(layers: readonly LayerFigures[], pitch?: Mm): readonly Band[] {
  if (pitch !== undefined) return turnsOf(layers, pitch);
  const all = groups(layers);
  const pieces = layers.reduce((sum, layer) => sum + layer.pieces, 0);
  const every = Math.max(1, Math.ceil(pieces / MOST_OUTLINED.pieces), Math.ceil(all.length / MOST_OUTLINED.layers));
  const chosen = all.filter((_, i) => i % every === 0);
  return chosen.map((group, i) => {
    const next = chosen[i + 1];
    const index = i * every;
    const last = all[Math.min(all.length, index + every) - 1]!;
    const top = last.at(-1)!.z;
    const after = next && bottomOf(next, all[index + every - 1]);
    return {
      bottom: bottomOf(group, all[index - 1]),
      top: after !== undefined && after - top < 1e-3 ? after : top,
      from: group[0]!.z,
      to: group.at(-1)!.z,
    };
  });
}

/** No nozzle lays wider lines; what is pushed on beyond that makes a blob [mm]. */
const WIDEST: Mm = 5;

/** Closed ones are closed over where they start and end, so that they go round what they go round. */
function flatOf({ x, y, feed, count, height, isClosed }: LaidPath, diameter: Mm): FlatPath {
  const points = Array.from({ length: count }, (_, i) => ({ x: x[i]!, y: y[i]! }));
  const widths = Array.from({ length: count - 1 }, (_, i) => Math.min(WIDEST, laidWidth(diameter, feed[i]!, height)));
  if (isClosed) {
    points.push(points[0]!);
    widths.push(widths[0]!);
  }
  return { points, widths: Float64Array.from(widths), isClosed };
}

/** Contours that only lie on the plate, right outside what stands on it: skirts and brims, which come off. */
function withoutBrim(first: readonly FlatPath[], over: readonly Loop[]): readonly FlatPath[] {
  if (over.length === 0) return first;
  const inside = new InsideLoops(over);
  const isOver = ({ x, y }: Point) => {
    const loop = inside.smallest(x, y);
    return loop >= 0 && inside.areas[loop]! > 0;
  };
  return first.filter(({ points, isClosed }) => !isClosed || middles(points).some(isOver));
}

/** Corners and middles of edges. */
function middles(points: Loop): Loop {
  return points.flatMap((a, i) => {
    const b = points[i + 1];
    return b ? [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }] : [a];
  });
}

/** Tells how many layers have been outlined; may throw to give up. */
export type Outlined = (layers: number) => void;

/** Gathers the paths of each band and draws them together as soon as the nozzle leaves it. */
export class LayerPlans implements PathHandler {
  readonly #bands: readonly Band[];
  readonly #diameter: Mm;
  readonly #found: (readonly Loop[])[][];
  readonly #outlined: Outlined;
  /** What is laid first lies on the plate and may be there to hold the part: it is outlined once the next layer is known. */
  #first: FlatPath[] = [];
  #band = -1;
  #paths: FlatPath[] = [];
  #pieces = 0;
  #count = 0;

  /** @param bands - from the bottom up [mm] */
  constructor(bands: readonly Band[], diameter: Mm, outlined: Outlined = () => undefined) {
    this.#bands = bands;
    this.#diameter = diameter;
    this.#found = bands.map(() => []);
    this.#outlined = outlined;
  }

  path(path: LaidPath): void {
    const band = this.#bandOf(path.z[path.count >> 1]!);
    if (band !== this.#band) this.#leave();
    this.#band = band;
    if (band < 0) return;
    this.#paths.push(flatOf(path, this.#diameter));
    this.#pieces += path.count - 1;
    if (this.#pieces > MOST_PIECES) this.#leave();
  }

  #bandOf(z: Mm): number {
    let [low, high] = [0, this.#bands.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#bands[middle]!.to < z - 1e-3) low = middle + 1;
      else high = middle;
    }
    const band = this.#bands[low];
    return band && band.from - 1e-3 <= z ? low : -1;
  }

  #leave(): void {
    if (this.#band === 0 && this.#first.length + this.#paths.length < MOST_FIRST) this.#first.push(...this.#paths);
    else if (this.#paths.length > 0) {
      this.#found[this.#band]!.push(layerOutline(this.#paths));
      this.#count += 1;
      this.#outlined(this.#count);
    }
    this.#paths = [];
    this.#pieces = 0;
  }

  /** After the last path: the slabs of all bands, from the bottom up. */
  end(): readonly Slab[] {
    this.#leave();
    const over = this.#found[1] ?? [];
    if (this.#first.length > 0) this.#found[0]!.push(layerOutline(withoutBrim(this.#first, unite(over.flat()))));
    return this.#bands.map(({ bottom, top }, i) => {
      const parts = this.#found[i]!;
      const outlines = parts.length === 1 ? parts[0]! : unite(parts.flat());
      return { bottom, top, outlines };
    });
  }
}
