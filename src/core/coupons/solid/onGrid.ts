import type { Loop } from '../../geometry/loop.ts';
import { Along } from './snap.ts';
import { GRID, Spots } from './spot.ts';

/**
 * Regions with their corners on the grid of 1 µm. An edge is led through every corner, of whichever region, that it passed over
 * before, so that what lay on one line still does and nothing gets a step of a micrometre.
 *
 * @param regions - loops of each slab [mm]
 * @returns the same loops, perhaps with more corners [mm]
 */
export function onGrid(regions: readonly (readonly Loop[])[]): readonly (readonly Loop[])[] {
  const spots = new Spots();
  const exact = regions.map((loops) => loops.map((loop) => loop.map(({ x, y }) => ({ x: x * GRID, y: y * GRID }))));
  for (const place of exact.flat(2)) spots.numberOf(place);
  const along = new Along(spots.all);
  const led = (loop: Loop): Loop => {
    const round = loop.flatMap((a, i) => {
      const b = loop[(i + 1) % loop.length]!;
      const [from, to] = [spots.numberOf(a), spots.numberOf(b)];
      return from === to ? [from] : [from, ...along.between(a, b, [from, to])];
    });
    const places = round.filter((spot, i) => spot !== round.at(i - 1));
    return places.map((spot) => ({ x: spots.all[spot]!.x / GRID, y: spots.all[spot]!.y / GRID }));
  };
  return exact.map((loops) => loops.map(led));
}
