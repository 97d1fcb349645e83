/** Looks through a part for thin runs: thinnest places first, each section cut once. */
import { distance3, dot3, from3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { PassedOver, PassedOverWhy } from '../flexure.ts';
import { bendingAxes, type BendingAxis } from './bendingAxis.ts';
import { isIn, type Draft } from './draft.ts';
import { spaceRun } from './flexureOf.ts';
import { forwards } from './measureRun.ts';
import { endsFree } from './runEnds.ts';
import { planeAt, sectionAt, type Section } from './sectionAt.ts';
import type { Solid } from './solid.ts';
import { roughness, thinSpots, type Alive, type ThinSpot } from './thinSpots.ts';

/** Most sections of one part: a panel of some hundred cells shows in a few, a part full of them ends here. */
const MOST_SECTIONS = 60;
/** Most corners of all sections together: rough outlines make thousands of each, and a section of sixty thousand takes a second. */
const MOST_CORNERS = 400_000;
/** Most places at which an axis is looked for. */
const MOST_PLACES = 1500;
/** Places nearer than this share of the part are one, unless it is thinner. */
const PLACE = 1 / 60;
/** Planes whose axes differ by less, and that lie nearer than this share of the depth, are one. */
const SAME_AXIS = Math.cos((1 * Math.PI) / 180);
const SAME_DEPTH = 0.1;
/** A section is searched for what is up to so much thicker than asked, so that what shows beside can be told as passed over. */
const AND_THICKER = 1.5;
/** Most places told as passed over. */
const MOST_PASSED = 40;

/** What of the whole work looking for thin places is, as it shows in the progress; chosen. */
const SPOTS = 0.6;
/** A place this near to one that turned out to be none, in its thicknesses, and as thick to within a quarter, is not tried again. */
const NEAR = 1.5;
const AS_THICK = 0.25;
/** What is shallower than this share of its thickness bends about another axis. */
const SHALLOW = 0.5;
/** An axis that meets its edges less squarely may give way to a better one. */
const SQUARE = 0.95;

/** What counts as thin [mm]. */
interface Thin {
  readonly thickest: Mm;
  readonly thinnest?: Mm;
}

export class Search {
  readonly #solid: Solid;
  readonly #thickest: Mm;
  readonly #thinnest: Mm;
  readonly #alive: Alive;
  readonly #rough: Mm;
  readonly #found: (flexures: number) => void;
  readonly sections: Section[] = [];
  readonly #planes: { readonly axis: BendingAxis; readonly isOpen: boolean }[] = [];
  readonly #failed: ThinSpot[] = [];
  drafts: Draft[] = [];
  readonly passedOver: PassedOver[] = [];
  isCut = false;
  #corners = 0;

  constructor(solid: Solid, { thickest, thinnest = 0 }: Thin, alive: Alive, found: (flexures: number) => void) {
    this.#solid = solid;
    this.#thickest = thickest;
    this.#thinnest = thinnest;
    this.#alive = alive;
    this.#rough = Math.max(thinnest, roughness(solid.size));
    this.#found = found;
  }

  look(): void {
    let places = 0;
    const spots = thinSpots(this.#solid, this.#thickest, (share) => this.#alive(SPOTS * share)).filter(
      ({ thickness }) => thickness >= this.#thinnest,
    );
    for (const [i, spot] of this.#distinct(spots).entries()) {
      this.#alive(SPOTS + ((1 - SPOTS) * i) / spots.length);
      if (this.#isExplained(spot) || this.#isLikeFailed(spot)) continue;
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

  #isLikeFailed({ middle, thickness }: ThinSpot): boolean {
    return this.#failed.some(
      (other) =>
        Math.abs(other.thickness - thickness) < AS_THICK * thickness &&
        distance3(other.middle, middle) < NEAR * thickness,
    );
  }

  #isExplained(spot: ThinSpot): boolean {
    return this.drafts.some((draft) => isIn(this.sections, draft, spot.middle, spot.thickness));
  }

  #lookAt(spot: ThinSpot): void {
    const axes = bendingAxes(this.#solid, spot);
    let why: PassedOverWhy = 'held-at-side';
    for (const axis of axes) {
      if (this.sections.length >= MOST_SECTIONS || this.#corners > MOST_CORNERS) {
        this.isCut = true;
        return;
      }
      if (endsFree(this.#solid, { ...spot, middle: axis.middle }, axis.axis)) {
        why = 'free-end';
        continue;
      }
      const isOpen = this.#cut(axis, spot);
      if (this.#isExplained(spot)) return;
      why = isOpen ? 'open-there' : 'free-end';
    }
    this.#failed.push(spot);
    this.#passOver(why, spot);
  }

  #passOver(why: PassedOverWhy, { middle: at, thickness }: ThinSpot): void {
    if (this.passedOver.length >= MOST_PASSED || thickness > this.#thickest) return;
    const near = Math.max(6 * thickness, 4 * PLACE * this.#solid.size);
    const isTold = this.passedOver.some(
      (other) =>
        other.why === why &&
        (distance3(other.at, at) < near ||
          (Math.abs(other.thickness - thickness) < AS_THICK * thickness && this.#solid.isClear(other.at, at))),
    );
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
      AND_THICKER * this.#thickest,
      spot.thickness,
    );
    this.#planes.push({ axis, isOpen: section?.isOpen ?? false });
    this.#corners += section?.triangles.boundary.x.length ?? 0;
    if (!section) return false;
    if (section.isOpen) return true;
    this.#take(section, axis.squareness);
    return false;
  }

  #take(section: Section, squareness: number): void {
    const before = this.drafts.length;
    const index = this.sections.length;
    this.sections.push(section);
    for (const each of section.runs) {
      const run = forwards(each);
      const space = spaceRun(this.#solid, section, run);
      if (!space || space.depth < SHALLOW * space.least || space.least < this.#rough) continue;
      const draft = { run, space, section: index, squareness };
      const others = this.drafts.filter((other) => this.#isSame(other, draft));
      if (others.some((other) => !isBetter(draft, other))) continue;
      this.drafts = this.drafts.filter((other) => !others.includes(other));
      const spot = { middle: space.centre, across: space.across, thickness: space.least };
      if (space.isHeld) this.#passOver('held-at-side', spot);
      else if (space.least > this.#thickest) this.#passTooThick(spot);
      else this.drafts.push(draft);
    }
    if (this.drafts.length > before) this.#found(this.drafts.length);
  }

  #passTooThick({ middle, thickness }: ThinSpot): void {
    if (this.passedOver.length < MOST_PASSED) this.passedOver.push({ why: 'too-thick', thickness, at: middle });
  }

  /** Whether two drafts are of one place. */
  #isSame(a: Draft, b: Draft): boolean {
    const near = Math.max(
      a.space.least,
      0.4 * Math.max(a.run.length, b.run.length),
      0.5 * Math.max(a.space.depth, b.space.depth),
    );
    if (distance3(a.space.centre, b.space.centre) > near) return false;
    return (
      isIn(this.sections, a, b.space.centre, b.space.least) || isIn(this.sections, b, a.space.centre, a.space.least)
    );
  }
}

/** Whether a draft tells of its place better than another: by a squarer section, or of more of it. */
function isBetter(a: Draft, b: Draft): boolean {
  const isSquare = a.squareness > SQUARE;
  if (isSquare !== b.squareness > SQUARE) return isSquare;
  return a.space.depth > 1.25 * b.space.depth;
}
