import type { Mm } from '../units.ts';
import { bandLoop, type MiddleLine } from './band.ts';
import { bandEnds, rootCorners, sunk, type BandEnd } from './bandEnds.ts';
import { simplified, unite } from './clipping.ts';
import { disc } from './disc.ts';
import { loopArea, loopPath, pathLoop, type Loop } from './loop.ts';
import type { Path, Point } from './outline.ts';
import { filletAt } from './rootFillets.ts';
import { cross, distance, dot, from } from './vector.ts';

/** How far a chord may lie from the arc it stands for [mm], where nothing else is said: a quarter of what a printer repeats. */
const TOLERANCE: Mm = 0.005;
/** Ends nearer than this meet [mm]: solved shapes agree at their nodes far better than this. */
const MEETING: Mm = 1e-3;
/** Corners are left out where the outline moves by no more than this share of the tolerance: little even on long sides. */
const SIMPLER = 0.02;

/** What is melted into one outline; all in one plane. */
export interface UnionParts {
  /** Closed outlines of the pads [mm], counter-clockwise, holes clockwise. */
  readonly pads: readonly Path[];
  readonly bands: readonly MiddleLine[];
  /** Where bands grow out of pads: the end of the middle line, and the radius [mm] of the fillets on both its sides. */
  readonly roots: readonly { readonly at: Point; readonly fillet: Mm }[];
}

/**
 * One outline round pads and the bands that grow out of them, with fillets at the roots and nowhere else.
 *
 * Bands are carried on into the pads they end on, and where they meet each other off any pad the outside of the corner
 * is rounded. Where a fillet would fill a narrow slot or the sharp side of a slanting root for more than four radii, a
 * smaller one is laid. Arcs come out as chords within the tolerance, corners are left out within a fiftieth of it, and places
 * are kept to 10⁻⁵ mm.
 *
 * @param parts - pads, bands and roots of one plane [mm]
 * @param tolerance - how far a chord may lie from its arc [mm], > 0
 * @returns closed paths of lines [mm], largest first: outer ones counter-clockwise, holes clockwise
 */
export function unionOutline({ pads, bands, roots }: UnionParts, tolerance: Mm = TOLERANCE): readonly Path[] {
  const solid = unite(pads.map((path) => pathLoop(path, tolerance)));
  const held = bands.map((band): HeldBand => {
    // The chords of a round pad leave up to the tolerance between it and a band that ends on its edge.
    const ends = bandEnds(band, solid, MEETING + tolerance);
    const line = sunk(band, ends, solid);
    return { ends, line, loops: covered(line) };
  });
  const fillets = roots.flatMap(({ at, fillet }) => (fillet > 0 ? filletsOf(held, solid, at, fillet, tolerance) : []));
  const knuckles = knucklesOf(
    held.flatMap(({ ends }) => ends),
    tolerance,
  );
  const whole = unite([...solid, ...held.flatMap(({ loops }) => loops), ...knuckles, ...fillets]);
  return simplified(whole, tolerance * SIMPLER)
    .filter((loop) => loop.length > 2 && Math.abs(loopArea(loop)) > tolerance ** 2)
    .toSorted((a, b) => Math.abs(loopArea(b)) - Math.abs(loopArea(a)))
    .map(loopPath);
}

/** A band carried on into its pads, and what it covers. */
interface HeldBand {
  readonly ends: readonly [BandEnd, BandEnd];
  readonly line: MiddleLine;
  readonly loops: readonly Loop[];
}

/** The fillets on both sides of the bands that end at a place. */
function filletsOf(
  held: readonly HeldBand[],
  solid: readonly Loop[],
  at: Point,
  radius: Mm,
  tolerance: Mm,
): readonly Loop[] {
  const isHere = (end: BandEnd) => end.isOnPad && distance(end.at, at) < MEETING;
  const own = held.filter(({ ends }) => ends.some(isHere));
  const parts = [...solid, ...own.flatMap(({ loops }) => loops)];
  const corners = own.flatMap(({ ends, line }) => [
    ...(isHere(ends[0]) ? rootCorners(line, 'near', solid) : []),
    ...(isHere(ends[1]) ? rootCorners(line, 'far', solid) : []),
  ]);
  return corners.flatMap((corner) => filletAt(parts, corner, radius, tolerance));
}

/** All that a band covers. One bent tighter than half its thickness folds over itself and is laid piece by piece. */
function covered(line: MiddleLine): readonly Loop[] {
  const loop = bandLoop(line);
  const count = line.x.length;
  const pieces = Array.from({ length: count - 1 }, (_, i) => {
    const near = [loop[count - 1 - i], loop[count + i]] as const;
    const far = [loop[count - 2 - i], loop[count + 1 + i]] as const;
    return [far[0], near[0], near[1], far[1]].filter((point) => point !== undefined);
  });
  if (!pieces.some(isFolded)) return [loop];
  return unite(pieces.flatMap((piece) => unite([piece])));
}

/** Whether one side of a piece of band runs backwards. */
function isFolded([farLeft, nearLeft, nearRight, farRight]: Loop): boolean {
  if (!farLeft || !nearLeft || !nearRight || !farRight) return false;
  const across = from(nearRight, nearLeft);
  const forward = (way: Point) => cross(way, across) >= 0;
  return (
    !forward(from(nearLeft, farLeft)) || !forward(from(nearRight, farRight)) || dot(across, from(farRight, farLeft)) < 0
  );
}

/** Discs where bands meet off the pads, as wide as the thinnest of them. */
function knucklesOf(ends: readonly BandEnd[], tolerance: Mm): readonly Loop[] {
  const free = ends.filter((end) => !end.isOnPad);
  return free.flatMap((end, i) => {
    const met = free.filter((other) => distance(other.at, end.at) < MEETING);
    if (met.length < 2 || free.findIndex((other) => distance(other.at, end.at) < MEETING) !== i) return [];
    return [pathLoop(disc(end.at, Math.min(...met.map(({ thickness }) => thickness)) / 2), tolerance)];
  });
}
