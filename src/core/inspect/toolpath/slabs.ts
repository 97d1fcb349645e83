/** Layers that stand alike on one another, put together to slabs: what a part's walls and flats are made of. */
import { common, offset, unite, without } from '../../geometry/clipping.ts';
import type { Loop } from '../../geometry/loop.ts';
import type { Mm } from '../../units.ts';

/** A body that stands straight from one height to another. */
export interface Slab {
  readonly bottom: Mm;
  readonly top: Mm;
  /** Outer outlines counter-clockwise, holes clockwise [mm]. */
  readonly outlines: readonly Loop[];
}

/** Outlines nowhere further apart than this stand alike [mm]: a first layer that is squeezed wider, a gap that opens, widths that wander. */
const ALIKE: Mm = 0.1;
const FINE: Mm = 0.02;

const reachesOut = (a: readonly Loop[], b: readonly Loop[]) => offset(without(a, b), -ALIKE / 2, FINE).length > 0;

/** Whether neither reaches out of the other. */
function standAlike(a: readonly Loop[], b: readonly Loop[]): boolean {
  if (a.length === 0 || b.length === 0) return a.length === b.length;
  return !reachesOut(a, b) && !reachesOut(b, a);
}

/** Tongues and notches of a single layer narrower than this are noise of its lines [mm]: no crease is that short. */
const NOISE: Mm = 0.3;

const opened = (loops: readonly Loop[]) => offset(offset(loops, -NOISE / 2, FINE), NOISE / 2, FINE);

/** A layer without what sticks out of it beyond both of its neighbours, and with what it lacks between both, where that is narrow. */
function smoothed(layer: Slab, under: Slab, over: Slab): Slab {
  const { outlines } = layer;
  const sticksOut = without(outlines, unite([...under.outlines, ...over.outlines]));
  const lacks = without(common(under.outlines, over.outlines), outlines);
  if (sticksOut.length === 0 && lacks.length === 0) return layer;
  const tongues = without(sticksOut, opened(sticksOut));
  const notches = without(lacks, opened(lacks));
  return { ...layer, outlines: unite([...without(outlines, tongues), ...notches]) };
}

const touches = (under: Slab, over: Slab) => over.bottom - under.top < 1e-3;

/**
 * Layers put onto one another, from the bottom up; each that stands like the slab under it makes it taller.
 *
 * @param layers - from the bottom up, none reaching into another [mm]
 * @param done - hears the share that is done [-]; may throw to give up
 * @returns slabs from the bottom up [mm]
 */
export function stack(layers: readonly Slab[], done: (share: number) => void = () => undefined): readonly Slab[] {
  const alike: Slab[][] = [];
  for (const [i, layer] of layers.entries()) {
    done(i / layers.length);
    const last = alike.at(-1);
    if (last && touches(last.at(-1)!, layer) && standAlike(last[0]!.outlines, layer.outlines)) last.push(layer);
    else alike.push([layer]);
  }
  // The one in the middle stands for all: the first may be squeezed onto the plate.
  const slabs = alike.map((some): Slab => {
    const { outlines } = some[some.length >> 1]!;
    return { bottom: some[0]!.bottom, top: some.at(-1)!.top, outlines };
  });
  return slabs.map((slab, i) => {
    const [under, over] = [slabs[i - 1], slabs[i + 1]];
    const isOne = alike[i]!.length === 1;
    return isOne && under && over && touches(under, slab) && touches(slab, over) ? smoothed(slab, under, over) : slab;
  });
}
