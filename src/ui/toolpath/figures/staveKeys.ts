/** Where a key leads in the stave. */
import type { LaidFinding } from '../../../core/inspect/toolpath/judgedPlace.ts';

const PAGE = 5;

/** Layers of which a finding speaks; those that hold everywhere are left out while there are others. */
export function foundLayers(numbered: ReadonlyMap<LaidFinding, number>, count: number): ReadonlySet<number> {
  const findings = [...numbered.keys()];
  const some = findings.filter((finding) => finding.count < count);
  const layers = (some.length > 0 ? some : findings).flatMap((finding) =>
    finding.layers.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => first + i)),
  );
  return new Set(layers);
}

/**
 * The layer to go to: up and down one, by pages of five, to the ends, and with n and p to the next and last layer with a
 * finding; undefined where the key leads nowhere.
 */
export function layerForKey(key: string, layer: number, count: number, found: ReadonlySet<number>): number | undefined {
  const order = [...found].toSorted((a, b) => a - b);
  const to = {
    ArrowUp: layer + 1,
    ArrowRight: layer + 1,
    ArrowDown: layer - 1,
    ArrowLeft: layer - 1,
    PageUp: layer + PAGE,
    PageDown: layer - PAGE,
    Home: 1,
    End: count,
    n: order.find((one) => one > layer) ?? layer,
    p: order.findLast((one) => one < layer) ?? layer,
  }[key];
  return to === undefined ? undefined : Math.min(count, Math.max(1, to));
}
