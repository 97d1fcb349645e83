import type { Joint, Part } from '../../src/core/design/joint.ts';
import { changed, LEAF } from './joints.ts';

/** A leaf that the core understands; `length` tells joints apart. */
export function leaf(id: string, length = 12): Joint {
  return { ...changed(LEAF, { sizes: { length } }), id, name: `Leaf ${id}` };
}

export function partOf(...ids: readonly string[]): Part {
  return { name: 'Lid', invented: false, joints: ids.map((id) => leaf(id)) };
}
