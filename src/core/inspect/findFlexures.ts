/**
 * Finds the thin sections of a part, in any position, from the solid alone.
 *
 * Rays tell where it is thin (`thinSpots`) and about which axis it can bend there (`bendingAxes`); a section square to that
 * axis, through the middle of the depth, tells what the thin place joins, and is where it is measured (`sectionAt`).
 */
import type { Point3, TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import { distance3, dot3, from3, length3 } from '../geometry/mesh/vector3.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import type { Flexure, FlexureRoot, PartFindings, PartSection, PassedOver, PassedOverWhy } from './flexure.ts';
import { bendingAxes, type BendingAxis } from './thin/bendingAxis.ts';
import { isCurved, kindOf, spaceRun, type SpaceRun } from './thin/flexureOf.ts';
import type { MeasuredRun } from './thin/measureRun.ts';
import { hangsTogether, joinedPads, type PadPlace } from './thin/partPads.ts';
import { padsOf } from './thin/padsOf.ts';
import { inPlane, inSpace, planeAt, sectionAt, type Section } from './thin/sectionAt.ts';
import { Solid } from './thin/solid.ts';
import { thinSpots, type Alive, type ThinSpot } from './thin/thinSpots.ts';

/** Most sections of one part: a panel of some hundred cells shows in a few, a part full of them ends here. */
const MOST_SECTIONS = 60;
/** Most places at which an axis is looked for. */
const MOST_PLACES = 1500;
/** Places nearer than this share of the part are one, unless it is thinner. */
const PLACE = 1 / 60;
/** Planes whose axes differ by less, and that lie nearer than this share of the depth, are one. */
const SAME_AXIS = Math.cos((1 * Math.PI) / 180);
const SAME_DEPTH = 0.1;
/** A section is searched for what is up to so much thicker than asked, so that it can be told as passed over. */
const AND_THICKER = 1.5;
/** Most places told as passed over. */
const MOST_PASSED = 40;

export interface FindOptions {
  /** The thickest that counts as thin [mm], > 0. */
  readonly thickest: Mm;
  /** Away from the plate in the file, of length 1. */
  readonly build: Point3;
}

/** Called while it looks, with what has been found so far whenever that has grown. */
export type Found = (flexures: number) => void;

/** A flexure before it has its number and its pads. */
interface Draft {
  readonly run: MeasuredRun;
  readonly space: SpaceRun;
  readonly section: number;
}

class Search {
  readonly #solid: Solid;
  readonly #options: FindOptions;
  readonly #alive: Alive;
  readonly #found: Found;
  readonly sections: Section[] = [];
  readonly #planes: { readonly axis: BendingAxis; readonly isOpen: boolean }[] = [];
  readonly drafts: Draft[] = [];
  readonly passedOver: PassedOver[] = [];
  isCut = false;

  constructor(solid: Solid, options: FindOptions, alive: Alive, found: Found) {
    this.#solid = solid;
    this.#options = options;
    this.#alive = alive;
    this.#found = found;
  }

  look(): void {
    const { thickest } = this.#options;
    let places = 0;
    for (const spot of this.#distinct(thinSpots(this.#solid, AND_THICKER * thickest, this.#alive))) {
      this.#alive();
      if (this.#isExplained(spot)) continue;
      places += 1;
      if (places > MOST_PLACES) {
        this.isCut = true;
        return;
      }
      this.#lookAt(spot);
    }
  }

  /** One spot of those that lie close together and face alike. */
  #distinct(spots: readonly ThinSpot[]): readonly ThinSpot[] {
    const seen = new Set<string>();
    return spots.filter(({ middle, across, thickness }) => {
      const cell = Math.max(2 * thickness, PLACE * this.#solid.size);
      const { x, y, z } = middle;
      const facing = [across.x, across.y, across.z].map((part) => Math.round(2 * Math.abs(part))).join('');
      const key = [x, y, z].map((part) => Math.round(part / cell)).join(' ') + facing + Math.round(Math.log2(cell));
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
  }

  #isExplained(spot: ThinSpot): boolean {
    return this.drafts.some((draft) => this.#isIn(draft, spot.middle, spot.thickness));
  }

  /** Whether a place lies in a flexure that has been found. */
  #isIn({ run, space, section }: Draft, place: Point3, thickness: Mm): boolean {
    const { plane } = this.sections[section]!;
    if (Math.abs(dot3(from3(space.centre, place), plane.normal)) > 0.55 * space.depth) return false;
    const at = inPlane(plane, place);
    const reach = Math.max(space.least, thickness);
    return run.centreLine.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < reach);
  }

  #lookAt(spot: ThinSpot): void {
    const axes = bendingAxes(this.#solid, spot);
    let why: PassedOverWhy = 'held-at-side';
    for (const axis of axes) {
      if (this.sections.length >= MOST_SECTIONS) {
        this.isCut = true;
        return;
      }
      const isOpen = this.#cut(axis, spot);
      if (this.#isExplained(spot)) return;
      why = isOpen ? 'open-there' : 'free-end';
    }
    this.#passOver(why, spot);
  }

  #passOver(why: PassedOverWhy, { middle: at, thickness }: ThinSpot): void {
    if (this.passedOver.length >= MOST_PASSED || thickness > this.#options.thickest) return;
    const near = Math.max(6 * thickness, 4 * PLACE * this.#solid.size);
    const isTold = this.passedOver.some((other) => other.why === why && distance3(other.at, at) < near);
    if (!isTold) this.passedOver.push({ why, thickness, at });
  }

  /** Cuts square to an axis unless that was done; tells whether the cut is open. */
  #cut(axis: BendingAxis, spot: ThinSpot): boolean {
    const known = this.#planes.find(
      ({ axis: other }) =>
        Math.abs(dot3(other.axis, axis.axis)) > SAME_AXIS &&
        Math.abs(dot3(other.axis, from3(other.middle, axis.middle))) < SAME_DEPTH * Math.min(axis.depth, other.depth),
    );
    if (known) return known.isOpen;
    const { mesh, size } = this.#solid;
    const section = sectionAt(
      mesh,
      size,
      planeAt(axis.middle, axis.axis),
      AND_THICKER * this.#options.thickest,
      spot.thickness,
    );
    this.#planes.push({ axis, isOpen: section?.isOpen ?? false });
    if (!section) return false;
    if (section.isOpen) return true;
    this.#take(section);
    return false;
  }

  #take(section: Section): void {
    const before = this.drafts.length;
    const index = this.sections.length;
    this.sections.push(section);
    for (const run of section.runs) {
      const space = spaceRun(this.#solid, section, run);
      if (!space || this.#isTaken(space)) continue;
      const spot = { middle: space.centre, across: space.across, thickness: space.least };
      if (space.isHeld) this.#passOver('held-at-side', spot);
      else if (space.least > this.#options.thickest) this.#passTooThick(spot);
      else this.drafts.push({ run, space, section: index });
    }
    if (this.drafts.length > before) this.#found(this.drafts.length);
  }

  #passTooThick({ middle, thickness }: ThinSpot): void {
    if (this.passedOver.length < MOST_PASSED) this.passedOver.push({ why: 'too-thick', thickness, at: middle });
  }

  /** Whether it was found before, in another section. */
  #isTaken({ centre, least, centreLine }: SpaceRun): boolean {
    const near = Math.max(least, 0.4 * centreLine.length);
    return this.drafts.some(
      (draft) => distance3(draft.space.centre, centre) < near && this.#isIn(draft, centre, least),
    );
  }
}

/** Thickness of what a run joins, a little way past its end. */
function shoulderOf(solid: Solid, { plane }: Section, run: MeasuredRun, which: 0 | 1): Mm {
  const line = run.centreLine;
  const at = which === 0 ? line[0]! : line.at(-1)!;
  const { direction } = run.ends[which];
  const past: Point = { x: at.x + 0.6 * run.least * direction.x, y: at.y + 0.6 * run.least * direction.y };
  const square = {
    x: plane.right.x * -direction.y + plane.up.x * direction.x,
    y: plane.right.y * -direction.y + plane.up.y * direction.x,
    z: plane.right.z * -direction.y + plane.up.z * direction.x,
  };
  return solid.thickness(inSpace(plane, past), square) ?? run.least;
}

/** Numbers pads and flexures, and tells how they hang together. */
function finish(solid: Solid, search: Search, build: Point3): PartFindings {
  const places: PadPlace[] = [];
  const numberOf = new Map<string, number>();
  const used = [...new Set(search.drafts.map(({ section }) => section))].toSorted((a, b) => a - b);
  for (const index of used) {
    const section = search.sections[index]!;
    const own = search.drafts.filter((draft) => draft.section === index).map(({ run }) => run);
    for (const pad of padsOf(section.triangles, own)) {
      for (const t of pad.triangles) numberOf.set(`${index} ${t}`, places.length);
      places.push({ at: inSpace(section.plane, pad.at) });
    }
  }
  const thinnest = search.drafts.reduce((least, { space }) => Math.min(least, space.least), Infinity);
  const joined = joinedPads(solid, places, thinnest);
  const drafts = search.drafts.toSorted(byPlace);
  const roots = drafts.map(({ run, section }): readonly [FlexureRoot, FlexureRoot] => {
    const root = (which: 0 | 1): FlexureRoot => {
      const { joins, fillet } = run.ends[which];
      const place = joins.kind === 'pad' ? numberOf.get(`${section} ${joins.triangle}`) : undefined;
      const pad = place === undefined ? undefined : joined.numbers[place];
      return {
        fillet,
        joins: pad === undefined ? { kind: 'flexure' } : { kind: 'pad', pad },
        shoulder: shoulderOf(solid, search.sections[section]!, run, which),
      };
    };
    return [root(0), root(1)];
  });
  const inLoop = hangsTogether(
    roots,
    drafts.map(({ run }) => run),
  );
  const flexures = drafts.map(({ run, space, section }, i): Flexure => ({
    number: i + 1,
    kind: kindOf(run, space, build),
    isCurved: isCurved(space.centreLine, space.least),
    centre: space.centre,
    along: space.along,
    across: space.across,
    axis: space.axis,
    thickness: { least: space.least, mean: run.mean },
    length: run.length,
    bendingLength: run.bendingLength,
    depth: space.depth,
    roots: roots[i]!,
    isInLoop: inLoop[i]!,
    centreLine: space.centreLine,
    walls: run.walls,
    section: used.indexOf(section),
  }));
  const sections = used.map((index, i): PartSection => {
    const { plane, outlines } = search.sections[index]!;
    return { ...plane, outlines, shows: flexures.filter(({ section }) => section === i).map(({ number }) => number) };
  });
  return { flexures, passedOver: search.passedOver, sections, pads: joined.count, isCut: search.isCut };
}

/** As one reads: by section, then from left to right, then from the top. */
function byPlace(a: Draft, b: Draft): number {
  if (a.section !== b.section) return a.section - b.section;
  const at = ({ run }: Draft) => run.centreLine[Math.floor(run.centreLine.length / 2)]!;
  const dx = at(a).x - at(b).x;
  return Math.abs(dx) > 0.5 ? dx : at(b).y - at(a).y;
}

/**
 * Finds the thin sections of a part.
 *
 * A thin section is no thicker than asked, at most half as thick as what it joins at both ends, and free along both sides.
 * Walls that are held at a side, fins, slots and gaps between bodies are none.
 *
 * @param mesh - a closed surface, counter-clockwise from outside [mm]
 * @param options - the thickest that counts as thin [mm], and the direction of build [-]
 * @param alive - called every few milliseconds; may throw to give up
 * @param found - hears how many there are whenever there are more
 * @returns the flexures with the sections that they were measured in, and what was passed over [mm]
 */
export function findFlexures(
  mesh: TriangleMesh,
  options: FindOptions,
  alive: Alive = () => undefined,
  found: Found = () => undefined,
): PartFindings {
  const { points } = mesh;
  const low = { x: Infinity, y: Infinity, z: Infinity };
  const high = { x: -Infinity, y: -Infinity, z: -Infinity };
  for (let i = 0; i + 2 < points.length; i += 3) {
    low.x = Math.min(low.x, points[i]!);
    low.y = Math.min(low.y, points[i + 1]!);
    low.z = Math.min(low.z, points[i + 2]!);
    high.x = Math.max(high.x, points[i]!);
    high.y = Math.max(high.y, points[i + 1]!);
    high.z = Math.max(high.z, points[i + 2]!);
  }
  const size = length3(from3(low, high));
  if (mesh.corners.length === 0 || !(size > 0)) {
    return { flexures: [], passedOver: [], sections: [], pads: 0, isCut: false };
  }
  const solid = new Solid(mesh, size);
  const search = new Search(solid, options, alive, found);
  search.look();
  return finish(solid, search, options.build);
}
