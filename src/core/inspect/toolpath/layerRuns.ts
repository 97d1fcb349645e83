import type { LayerRun } from './judgedPlace.ts';

/**
 * Numbers of layers as runs, first to last.
 *
 * @param layers - numbers [-], in any order
 * @returns runs [-], rising
 *
 * @example runsOf([3, 1, 2, 7]) // → [[1, 3], [7, 7]]
 */
export function runsOf(layers: readonly number[]): readonly LayerRun[] {
  const runs: [number, number][] = [];
  for (const layer of [...new Set(layers)].toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === layer - 1) last[1] = layer;
    else runs.push([layer, layer]);
  }
  return runs;
}
