/** Where to look at what is laid across a thin section that was found in a solid. */
import { inSpace } from '../thin/sectionAt.ts';
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import type { Flexure, PartSection } from '../flexure.ts';
import { lyingOf } from '../lyingOf.ts';
import type { Place, PlaceFrom } from './place.ts';

/** Both ends of a straight run through a point, along a direction as it shows from above. */
function straight(centre: Point3, direction: Point3, length: Mm): readonly Point[] {
  const flat = Math.hypot(direction.x, direction.y) || 1;
  const [x, y] = [((direction.x / flat) * length) / 2, ((direction.y / flat) * length) / 2];
  return [
    { x: centre.x - x, y: centre.y - y },
    { x: centre.x + x, y: centre.y + y },
  ];
}

/**
 * The place of a thin section.
 *
 * @param flexure - as found [mm], +z away from the plate
 * @param section - the one that it was measured in [mm]
 * @param from - found in the layers, or carried over [-]
 * @returns where its layers are cut [mm]
 */
export function placeOf(flexure: Flexure, section: PartSection, from: PlaceFrom): Place {
  const { lying } = lyingOf(flexure, '+z');
  const { number, centre, thickness, depth, length } = flexure;
  const stands = (height: Mm) => ({ bottom: centre.z - height / 2, top: centre.z + height / 2 });
  const common = { number, from, lying, thickness: thickness.least, flexure };
  switch (lying) {
    case 'flat': {
      const run = flexure.centreLine.points.map((point) => inSpace(section, point)).map(({ x, y }) => ({ x, y }));
      return { ...common, run, reach: thickness.mean, ...stands(depth) };
    }
    case 'crease':
      return { ...common, run: straight(centre, flexure.along, length), reach: depth, ...stands(thickness.least) };
    case 'upright':
      return { ...common, run: straight(centre, flexure.axis, depth), reach: thickness.mean, ...stands(length) };
  }
}
