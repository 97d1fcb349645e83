/**
 * A look at where a thin place leads before the part is cut there: from its middle along the run, kept midway between the
 * walls. Fins, ribs and rods end free, and need no section.
 */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, cross3, dot3, from3, squareTo, times3, unit3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { Solid } from './solid.ts';
import type { ThinSpot } from './thinSpots.ts';

/** Steps in thicknesses of the place. */
const STEPS = [1, 0.4];
const MOST_STEPS = 400;
/** Where it is so many times as thick, the run has come to what it joins; a little less than a pad is. */
const JOINED = 1.7;
/** A wall that faces along the run at least so much, so near, in thicknesses, is its free end. */
const FACING = 0.5;
const NEAR = 1.6;

interface Place {
  readonly at: Point3;
  readonly across: Point3;
}

/** The next place midway between the walls, with the thickness there; undefined where a step leaves the material. */
function stepTo(solid: Solid, { at, across }: Place, direction: Point3, length: Mm, axis: Point3) {
  const ahead = along3(at, direction, length);
  const both = solid.through(ahead, across);
  if (!both) return undefined;
  // The walls of both sides tell the new way across, but for what leans along the axis.
  const turned = unit3(squareTo(axis, from3(both.behind.normal, both.ahead.normal)));
  const isKept = turned !== undefined && dot3(turned, across) > FACING;
  return {
    at: along3(ahead, across, (both.ahead.at - both.behind.at) / 2),
    across: isKept ? turned : across,
    thickness: both.ahead.at + both.behind.at,
  };
}

/** Whether a run surely ends free, or runs on for ever, on one side of a place. */
function isFree(solid: Solid, spot: ThinSpot, axis: Point3, sense: 1 | -1): boolean {
  let place: Place = { at: spot.middle, across: unit3(squareTo(axis, spot.across)) ?? spot.across };
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const direction = times3(cross3(axis, place.across), sense);
    let next: ReturnType<typeof stepTo>;
    for (const share of STEPS) next ??= stepTo(solid, place, direction, share * spot.thickness, axis);
    if (!next) {
      const wall = solid.wall(place.at, direction, NEAR * spot.thickness);
      return wall !== undefined && dot3(wall.normal, direction) > FACING;
    }
    if (next.thickness > JOINED * spot.thickness) return false;
    place = next;
  }
  return true;
}

/**
 * Whether a thin place surely joins nothing at one end at least.
 *
 * @param solid - the part [mm]
 * @param spot - a thin place in it [mm]
 * @param axis - about which it would bend, of length 1 [-]
 * @returns false where it leads to something thicker both ways, and where that cannot be told
 */
export function endsFree(solid: Solid, spot: ThinSpot, axis: Point3): boolean {
  return isFree(solid, spot, axis, 1) || isFree(solid, spot, axis, -1);
}
