import type { Joint, Part } from '../../src/core/design/joint.ts';
import { radians } from '../../src/core/units.ts';

/** A leaf that the core understands; `length` tells joints apart. */
export function leaf(id: string, length = 12): Joint {
  return {
    id,
    name: `Leaf ${id}`,
    family: 'straightLeaf',
    sizes: { lines: 2, length, depth: 6, fillet: 0.8, pad: 4, inRow: 1 },
    movement: { angle: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.95 },
    profile: {
      nozzle: 0.4,
      lineWidth: 0.42,
      layerHeight: 0.2,
      firstLayerHeight: 0.2,
      lying: 'flat',
      fitRule: 'nominal',
      filament: 'petg',
    },
  };
}

export function partOf(...ids: readonly string[]): Part {
  return { name: 'Lid', invented: false, joints: ids.map((id) => leaf(id)) };
}
