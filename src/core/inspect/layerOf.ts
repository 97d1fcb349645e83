/** Through which layers of the print a thin section runs, and in which it is seen best. */
import { dot3 } from '../geometry/mesh/vector3.ts';
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import type { LayerSettings } from '../print/wholeLayers.ts';
import type { Mm } from '../units.ts';
import { heightAbovePlate, printedHeight, upDirection } from './buildDirection.ts';
import type { Flexure } from './flexure.ts';
import type { Judged, PrintedAs } from './judged.ts';

/** A height that is a layer's own but for round-off belongs to it. */
const ROUND_OFF = 1e-6;

/** The layer whose own height holds a place; of two that meet there the lower. */
function layerAt(height: Mm, { layerHeight, firstLayerHeight }: LayerSettings): number {
  return height <= firstLayerHeight ? 1 : 1 + Math.ceil((height - firstLayerHeight) / layerHeight - ROUND_OFF);
}

/** How many layers have their middles below a height; parts are cut there (common practice, no source). */
function middlesBelow(height: Mm, { layerHeight, firstLayerHeight }: LayerSettings): number {
  if (height <= firstLayerHeight / 2) return 0;
  return 1 + Math.max(0, Math.floor((height - firstLayerHeight) / layerHeight + 0.5 - ROUND_OFF));
}

/**
 * How many layers a part takes.
 *
 * @param box - of the part as in the file [mm]
 * @param as - scale, which way is up, layers [mm]
 * @returns layers [-], ≥ 1
 *
 * Source: common-practice.
 */
export function layersOfPart(box: Box3, as: PrintedAs): number {
  return Math.max(1, middlesBelow(printedHeight(box, as) + ROUND_OFF, as.profile));
}

/** How far a section reaches up and down from its middle in the build direction [mm], in the file's own size. */
function halfHeight(flexure: Flexure, { up }: PrintedAs): Mm {
  const direction = upDirection(up);
  const share = (of: Flexure['axis']) => Math.abs(dot3(of, direction));
  const { centreLine, isCurved, thickness, depth, length, along, across, axis } = flexure;
  const [run, high] = isCurved ? [centreLine.chord, thickness.least + 2 * centreLine.rise] : [length, thickness.least];
  return (run * share(along) + high * share(across) + depth * share(axis)) / 2;
}

/**
 * The layers through which a thin section runs, and the one in which it is seen best: half-way up, which for a flat one is the
 * middle of its depth.
 *
 * @param flexure - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale, which way is up, layers [mm]
 * @returns layer and layers [-], from 1, within those of the part
 *
 * Source: common-practice.
 */
export function layersOf(flexure: Flexure, box: Box3, as: PrintedAs): Pick<Judged, 'layer' | 'layers'> {
  const middle = heightAbovePlate(flexure.centre, box, as);
  const half = as.scale * halfHeight(flexure, as);
  const most = layersOfPart(box, as);
  const within = (layer: number) => Math.min(most, Math.max(1, layer));
  const own = within(layerAt(middle, as.profile));
  const first = within(middlesBelow(middle - half, as.profile) + 1);
  const last = within(middlesBelow(middle + half + 2 * ROUND_OFF, as.profile));
  // What is thinner than a layer may lie between the middles of two.
  if (last < first) return { layer: own, layers: [own, own] };
  return { layer: Math.min(last, Math.max(first, own)), layers: [first, last] };
}
