/** What is looked for in tests, small grids to look in, and the same search by brute force. */
import { assess, type Judge } from '../../src/core/design/assess.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { byHand } from '../../src/core/design/response.ts';
import { sectionOf } from '../../src/core/design/sectionOf.ts';
import { candidateAt, figuresOf, type Candidate, type Place } from '../../src/core/find/candidates.ts';
import type { Figures, Shortcoming } from '../../src/core/find/findAnswer.ts';
import { lotsFor, shapesIn, type Lot } from '../../src/core/find/lots.ts';
import { rowsFor } from '../../src/core/find/rows.ts';
import { Search } from '../../src/core/find/search.ts';
import { shortfallsOf } from '../../src/core/find/shortfalls.ts';
import type { Wanted } from '../../src/core/find/wanted.ts';
import { checkSizes } from '../../src/core/flexures/checkSizes.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { familyOf } from '../../src/core/flexures/known.ts';
import { mechanicsOf } from '../../src/core/flexures/networks.ts';
import { soughtOf } from '../../src/core/flexures/soughts.ts';
// from '../../src/core/flexures/networks.ts';
import { findFilament } from '../../src/core/material/shelf.ts';
import { radians } from '../../src/core/units.ts';
import { USUAL_PROFILE } from '../../src/store/newJoint.ts';

/** A turn as of a flap, in a little room. */
export const A_TURN: Wanted = {
  movement: { drive: 'turned', amount: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.95 },
  measure: 'turn',
  room: { along: 24, across: 14, depth: 8 },
  depthAtLeast: 3,
  supports: false,
  families: FAMILIES.map(({ id }) => id),
  filaments: ['pla', 'petg', 'pa12', 'pp', 'tpu95a'],
  lyings: ['flat', 'crease', 'upright'],
  profile: USUAL_PROFILE,
};

/** A travel as of a stage, to both sides. */
export const A_TRAVEL: Wanted = {
  ...A_TURN,
  movement: { ...A_TURN.movement, drive: 'shifted', amount: 2, ways: 'both ways', cycles: 20_000 },
  measure: 'travel',
  room: { along: 45, across: 45, depth: 8 },
};

/** So many values of each size, spread over its rungs: a grid that brute force can walk. */
function thinned(lots: readonly Lot[], most: number): readonly Lot[] {
  const few = (values: readonly number[], many = most) => {
    const step = Math.max(1, Math.ceil(values.length / many));
    return values.filter((_, i) => i % step === 0);
  };
  return lots.map((lot) => ({
    ...lot,
    rungs: lot.rungs.map(({ size, values }) => ({
      size,
      values: few(values, size === lot.family.roles.length ? most + 2 : most),
    })),
    depths: few(lot.depths, 2),
    sides: few(lot.sides, 2),
  }));
}

/** Hand forms for everything, refusing what pads forbid as the solver does. */
export const handJudge: Judge = (joint) => assess(joint, byHand);

/** The search with hand forms taken for exact, telling all that nothing betters. */
export function searched(lots: readonly Lot[], wanted: Wanted) {
  const search = new Search(lots, wanted, { byHand: handJudge, solved: handJudge, quick: handJudge, isWhole: true });
  search.run();
  return search.answer(true);
}

/** One candidate of a grid as brute force finds it. */
export interface Walked {
  readonly key: string;
  readonly candidate: Candidate;
  readonly figures: Figures;
  readonly short: readonly Shortcoming[];
}

/** One alone, a millimetre deep where depth is free: what is far too large even so is not tried. */
const oneAlone = (family: string) => soughtOf(family).inProportion;

const HARMLESS = ['fillet-in-steps', 'frame-must-be-stiff', 'no-second-rest'];

/** Whether a joint can be made and reckoned at all, told anew from its sizes. */
function canBe({ joint }: Candidate, wanted: Wanted): boolean {
  const family = familyOf(joint);
  const { thickness } = sectionOf(family, joint.sizes, joint.profile, findFilament(joint.profile.filament)!);
  const { drive, amount } = joint.movement;
  const found = checkSizes(family, joint.sizes, thickness, joint.profile);
  const limit = mechanicsOf(family.id).limit?.(joint.sizes, thickness, drive) ?? Infinity;
  const one = { ...joint.sizes, ...Object.fromEntries(oneAlone(family.id).map((size) => [size, 1])) };
  const { along, across, depth } = soughtOf(family.id).room(one, thickness);
  const isNear =
    along <= 2.5 * wanted.room.along && across <= 2.5 * wanted.room.across && depth <= 2.5 * wanted.room.depth;
  return isNear && found.every(({ code }) => HARMLESS.includes(code)) && amount <= limit;
}

export const keyOf = ({ family, sizes, profile }: Joint) =>
  JSON.stringify([
    family,
    Object.entries(sizes).toSorted(([a], [b]) => a.localeCompare(b)),
    profile.filament,
    profile.lying,
  ]);

/** Every candidate of some lots, one by one through `assess`: no arrays, no short cuts. */
export function walked(lots: readonly Lot[], wanted: Wanted): readonly Walked[] {
  return lots.flatMap((lot) => {
    const rows = rowsFor(wanted, lot);
    const found: Walked[] = [];
    const each = (place: Place) => {
      const row = rows[place.row];
      const candidate = row && candidateAt(lot, row, place, wanted);
      if (!candidate || !canBe(candidate, wanted)) return;
      const assessed = handJudge(candidate.joint);
      if (!assessed.ok) return;
      const short = shortfallsOf(wanted, assessed.value, candidate.room, candidate.air).map(({ reason }) => reason);
      found.push({ key: keyOf(candidate.joint), candidate, figures: figuresOf(assessed.value, candidate.room), short });
    };
    for (let at = 0; at < shapesIn(lot); at += 1)
      rows.forEach((_, row) =>
        lot.depths.forEach((__, depth) => lot.sides.forEach((___, side) => each({ at, row, depth, side }))),
      );
    return found;
  });
}

export const lotsOf = (wanted: Wanted, most: number) => thinned(lotsFor(wanted), most);
