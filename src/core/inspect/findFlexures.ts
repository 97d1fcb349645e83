/**
 * Finds the thin sections of a part, in any position, from the solid alone.
 *
 * Rays tell where it is thin (`thinSpots`) and about which axis it can bend there (`bendingAxes`); a section square to that
 * axis, through the middle of the depth, tells what the thin place joins, and is where it is measured (`sectionAt`).
 */
import { boxOf } from '../geometry/mesh/meshFigures.ts';
import type { Point3, TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import { from3, length3 } from '../geometry/mesh/vector3.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import type { Flexure, PartFindings, PartSection } from './flexure.ts';
import type { Draft } from './thin/draft.ts';
import { isCurved, kindOf } from './thin/flexureOf.ts';
import { hangTogether } from './thin/hangTogether.ts';
import { Search } from './thin/search.ts';
import { Solid } from './thin/solid.ts';
import type { Alive } from './thin/thinSpots.ts';

export interface FindOptions {
  /** The thickest that counts as thin [mm], > 0. */
  readonly thickest: Mm;
  /** What is thinner is no part of it but noise of its surface [mm]; 0 when left out. */
  readonly thinnest?: Mm;
  /** Away from the plate in the file, of length 1. */
  readonly build: Point3;
}

/** Called while it looks, with how many have been found so far whenever there are more. */
export type Found = (flexures: number) => void;

/** What lies so nearly above one another is read from the top [mm]. */
const SAME_COLUMN: Mm = 0.5;

/** As one reads: by section, then from left to right, then from the top. */
function byPlace(a: Draft, b: Draft): number {
  if (a.section !== b.section) return a.section - b.section;
  const dx = middleOf(a).x - middleOf(b).x;
  return Math.abs(dx) > SAME_COLUMN ? dx : middleOf(b).y - middleOf(a).y;
}

function middleOf({ run }: Draft): Point {
  return run.centreLine[Math.floor(run.centreLine.length / 2)]!;
}

/** Numbers what was found, with what it joins. */
function finish(solid: Solid, search: Search, build: Point3): PartFindings {
  const { kept, roots, isInLoop, pads, rings } = hangTogether(solid, search.sections, search.drafts.toSorted(byPlace));
  const used = [...new Set(kept.map(({ section }) => section))].toSorted((a, b) => a - b);
  const flexures = kept.map(({ run, space, section }, i): Flexure => ({
    number: i + 1,
    kind: kindOf(run, space, build),
    isCurved: isCurved(run, space),
    centre: space.centre,
    along: space.along,
    across: space.across,
    axis: space.axis,
    thickness: { least: space.least, mean: Math.max(run.mean, space.least) },
    length: run.length,
    bendingLength: run.bendingLength,
    depth: space.depth,
    roots: roots[i]!,
    isInLoop: isInLoop[i]!,
    centreLine: space.centreLine,
    walls: run.walls,
    section: used.indexOf(section),
  }));
  const sections = used.map((index, i): PartSection => {
    const { plane, outlines } = search.sections[index]!;
    return { ...plane, outlines, shows: flexures.filter(({ section }) => section === i).map(({ number }) => number) };
  });
  const passedOver = [
    ...search.passedOver,
    ...rings.map(({ space }) => ({ why: 'ring', thickness: space.least, at: space.centre }) as const),
  ];
  return { flexures, passedOver, sections, pads, isCut: search.isCut };
}

/**
 * Finds the thin sections of a part.
 *
 * A thin section is no thicker than asked, at most half as thick as what it joins at both ends, and free along both sides.
 * Walls that are held at a side, fins, slots, gaps between bodies and the bridges beside holes are none.
 *
 * @param mesh - a closed surface, counter-clockwise from outside [mm]
 * @param options - the thickest that counts as thin [mm], and the direction of build [-]
 * @param alive - called every few milliseconds with the share that is done [-]; may throw to give up
 * @param found - hears how many there are [-] whenever there are more
 * @returns the flexures with the sections that they were measured in, and what was passed over [mm]
 */
export function findFlexures(
  mesh: TriangleMesh,
  options: FindOptions,
  alive: Alive = () => undefined,
  found: Found = () => undefined,
): PartFindings {
  const { min, max } = boxOf(mesh);
  const size = length3(from3(min, max));
  if (mesh.corners.length === 0 || !(size > 0)) {
    return { flexures: [], passedOver: [], sections: [], pads: 0, isCut: false };
  }
  const solid = new Solid(mesh, size);
  const search = new Search(solid, options, alive, found);
  search.look();
  return finish(solid, search, options.build);
}
