/**
 * About which axis a thin place bends. A flexure is free along both of its sides: from its middle, the axis runs to a side
 * edge either way without the material growing thicker. A wall that is held at its side, or all round, has no such axis.
 */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, anySquareTo, cross3, dot3, from3, squareTo, times3, unit3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { Solid } from './solid.ts';
import type { ThinSpot } from './thinSpots.ts';

/** Lines tried through the middle of a place, evenly over half a turn. */
const LINES = 12;
/** Places on the way to an edge at which the thickness is taken, as shares of the way. */
const ON_THE_WAY = [0.2, 0.45, 0.7, 0.92];
/** Thickness on the way may grow by so much: sides are drafted or rounded a little, pads are twice as thick. */
const GROWN = 1.5;
/** An edge faces along the axis at least so much: 0.5 allows for a side that leans by 60°. */
const FACES = 0.5;
/** Axes nearer than this are one: 3°. */
const SAME = Math.cos((3 * Math.PI) / 180);

/** An axis that meets both edges so squarely is not doubted: 18°. */
const SQUARE = 0.95;

export interface BendingAxis {
  /** Of length 1. */
  readonly axis: Point3;
  /** The middle between both side edges. */
  readonly middle: Point3;
  readonly depth: Mm;
  /** How squarely it meets its edges, 1 at best. */
  readonly squareness: number;
}

/** Whether the material stays thin on the way from a place to an edge. */
function staysThin(solid: Solid, { middle, across, thickness }: ThinSpot, direction: Point3, way: Mm): boolean {
  return ON_THE_WAY.every((share) => {
    const here = solid.thickness(along3(middle, direction, share * way), across);
    return here !== undefined && here < GROWN * thickness;
  });
}

/** Outward directions of the side edges that lie around a place. */
function edgesAround(solid: Solid, spot: ThinSpot): readonly Point3[] {
  const { middle, across } = spot;
  const u = anySquareTo(across);
  const v = cross3(across, u);
  const found: Point3[] = [];
  /** Ways to edges that face askew, tried last. */
  const leaning: Point3[] = [];
  for (let k = 0; k < 2 * LINES; k += 1) {
    const angle = (k * Math.PI) / LINES;
    const direction = along3(times3(u, Math.cos(angle)), v, Math.sin(angle));
    const hit = solid.wall(middle, direction);
    if (!hit || dot3(hit.normal, direction) < FACES / 2) continue;
    const facing = unit3(squareTo(across, hit.normal));
    if (!facing || dot3(facing, hit.normal) <= FACES) continue;
    // Many rays meet the same edge: the first tells where it faces.
    const isKnown = found.some((other) => dot3(other, facing) > SAME);
    if (!isKnown && staysThin(solid, spot, direction, hit.at)) found.push(facing);
    if (!isKnown) leaning.push(direction);
  }
  return [...found, ...leaning];
}

/** The axis in a given direction where both of its ends are side edges. */
function axisAlong(solid: Solid, spot: ThinSpot, direction: Point3): BendingAxis | undefined {
  const both = solid.through(spot.middle, direction);
  if (!both) return undefined;
  const back = times3(direction, -1);
  const squareness = Math.min(dot3(both.ahead.normal, direction), dot3(both.behind.normal, back));
  if (squareness < FACES) return undefined;
  if (!staysThin(solid, spot, direction, both.ahead.at) || !staysThin(solid, spot, back, both.behind.at))
    return undefined;
  // Where both edges face straight away from each other, they tell the axis better than the ray does.
  const opposed = dot3(both.ahead.normal, both.behind.normal) < -0.999;
  const axis = (opposed && unit3(from3(both.behind.normal, both.ahead.normal))) || direction;
  return {
    axis,
    middle: along3(spot.middle, direction, (both.ahead.at - both.behind.at) / 2),
    depth: both.ahead.at + both.behind.at,
    squareness: opposed ? 1 : squareness,
  };
}

/**
 * Axes about which a thin place can bend.
 *
 * @param solid - the part [mm]
 * @param spot - a thin place in it [mm]
 * @returns each with the depth along it [mm], the squarest first, and those that lean only where none is square; none where it is held at a side
 */
export function bendingAxes(solid: Solid, spot: ThinSpot): readonly BendingAxis[] {
  const found: BendingAxis[] = [];
  for (const direction of edgesAround(solid, spot)) {
    if (found.some(({ squareness }) => squareness > SQUARE) && found.length > 1) break;
    if (found.some(({ axis }) => Math.abs(dot3(axis, direction)) > SAME)) continue;
    const axis = axisAlong(solid, spot, direction);
    if (axis && !found.some((other) => Math.abs(dot3(axis.axis, other.axis)) > SAME)) found.push(axis);
  }
  found.sort((a, b) => b.squareness - a.squareness);
  const square = found.filter(({ squareness }) => squareness > SQUARE);
  return square.length > 0 ? square : found.slice(0, 1);
}
