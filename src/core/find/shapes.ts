import { handResponse, isExactByHand, type Asked } from '../design/response.ts';
import { sectionOf } from '../design/sectionOf.ts';
import { rootOf } from '../design/strainAnswer.ts';
import { checkSizes, isRefusal } from '../flexures/checkSizes.ts';
import { sizesInForce } from '../flexures/drives.ts';
import type { Section, Sizes } from '../flexures/family.ts';
import { mechanicsOf } from '../flexures/networks.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Problem, ProblemCode } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { Room } from '../flexures/sought.ts';
import { shapesIn, triedAt, type Lot } from './lots.ts';
import type { Wanted } from './wanted.ts';

/** Cautions that neither make the figures rougher nor the print worse. */
const HARMLESS: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'fillet-in-steps',
  'frame-must-be-stiff',
  // Said again, and judged, where it is asked whether it stays.
  'no-second-rest',
]);

/** One shape as it is tried: with the depth and number side by side of its kind's typical values. */
export interface Shape {
  readonly sizes: Sizes;
  readonly section: Section;
}

/** What hand forms say of every shape of a lot, in arrays by its number. */
export interface Shapes {
  readonly lot: Lot;
  readonly count: number;
  /** 1 where it can be made, and reckoned as well as any joint. */
  readonly possible: Uint8Array;
  /** 1 where its hand forms are exact. */
  readonly exact: Uint8Array;
  readonly thickness: Float64Array;
  /** Flexing length, for the stiffening of wide strips [mm]. */
  readonly length: Float64Array;
  /** Strain of the skin as a fraction, without its root and with it. */
  readonly nominal: Float64Array;
  readonly peak: Float64Array;
  readonly rootFactor: Float64Array;
  /** Effort of a narrow strip per MPa, for 1 mm of depth and one alone where these are in proportion: [mm³] or [mm²]. */
  readonly effort: Float64Array;
  /** Room of one [mm]; its depth is `depthFrom` and so many times its depth. */
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly depthFrom: Float64Array;
  readonly depthTimes: Float64Array;
  /** Laid over air: held at both ends, and standing out [mm]. */
  readonly bridge: Float64Array;
  readonly ledge: Float64Array;
  /** 0 where it is not likely to stay in a second place. */
  readonly mayStay: Uint8Array;
  /** 0 where it is moved farther than makes sense, or is likely to touch itself, of which hand forms know nothing. */
  readonly mayClear: Uint8Array;
}

/**
 * All sizes of a shape, and its thin section.
 *
 * @param lot - its kind and rungs [-]
 * @param profile - print profile, checked [mm]
 * @param at - number of the shape [-]
 * @returns sizes [mm], counts, ratios [-] or angles [rad]
 */
export function shapeAt(
  { family, sought, drive, typical, rungs, printed }: Lot,
  profile: PrintProfile,
  at: number,
): Shape {
  const tried = triedAt({ rungs }, at);
  const { count } = family.roles;
  const { thickness } = sectionOf(family, { ...typical, [count]: tried[count] ?? 1 }, profile, printed);
  const sizes = sizesInForce(family, sought.sizes(tried, thickness, profile), drive.id);
  return { sizes, section: sectionOf(family, sizes, profile, printed) };
}

function isSound(problem: Problem): boolean {
  return !isRefusal(problem) && HARMLESS.has(problem.code);
}

/** What needs more than so many times the room is not even tried; what needs less tells what more room would help. */
const FAR_TOO_LARGE = 2.5;

/** Whether it is worth trying in this room at all. */
function isNear({ along, across, depth }: Room, { room }: Pick<Wanted, 'room'>): boolean {
  return (
    along <= FAR_TOO_LARGE * room.along && across <= FAR_TOO_LARGE * room.across && depth <= FAR_TOO_LARGE * room.depth
  );
}

/** Whether it can be made, is reckoned as well as any joint, and may be moved so far. */
function isPossible({ family, drive, movement }: Lot, { sizes, section }: Shape, profile: PrintProfile): boolean {
  if (!checkSizes(family, sizes, section.thickness, profile).every(isSound)) return false;
  const limit = mechanicsOf(family.id).limit?.(sizes, section.thickness, drive.id) ?? Number.POSITIVE_INFINITY;
  return movement.amount <= limit;
}

/** The same with another depth, where that is free. */
function withDepth({ free }: Lot, sizes: Sizes, depth: Mm): Sizes {
  return free.depth === undefined ? sizes : { ...sizes, [free.depth]: depth };
}

function fill(shapes: Shapes, wanted: Wanted, at: number): void {
  const { profile } = wanted;
  const { lot } = shapes;
  const { family, sought, drive, lying, movement } = lot;
  const shape = shapeAt(lot, profile, at);
  const { sizes, section } = shape;
  const { thickness } = section;
  const [thin, thick] = [1, 2].map((depth) => sought.room(withDepth(lot, sizes, depth), thickness)) as [Room, Room];
  if (!isNear(thin, wanted) || !isPossible(lot, shape, profile)) return;
  const asked: Asked = { family, drive: drive.id, sizes, thickness, amount: movement.amount };
  const { nominalStrain, effort } = handResponse(asked);
  const { factor } = rootOf(family, sizes, thickness);
  const air = sought.unsupported?.(sizes, thickness, lying);
  shapes.possible[at] = Number.isFinite(nominalStrain) && effort > 0 ? 1 : 0;
  shapes.exact[at] = isExactByHand(asked) ? 1 : 0;
  shapes.thickness[at] = thickness;
  shapes.length[at] = sizes[family.roles.length] ?? Number.NaN;
  shapes.nominal[at] = nominalStrain;
  shapes.rootFactor[at] = factor;
  shapes.peak[at] = nominalStrain * factor;
  const { depth, sideBySide } = lot.free;
  shapes.effort[at] = effort / ((sizes[depth ?? ''] ?? 1) * (sizes[sideBySide ?? ''] ?? 1));
  shapes.along[at] = thin.along;
  shapes.across[at] = thin.across;
  shapes.depthTimes[at] = thick.depth - thin.depth;
  shapes.depthFrom[at] = 2 * thin.depth - thick.depth;
  shapes.bridge[at] = air?.bridge ?? 0;
  shapes.ledge[at] = air?.ledge ?? 0;
  const { amount } = movement;
  const isWithin = amount <= mechanicsOf(family.id).reach(sizes, thickness, drive.id);
  shapes.mayClear[at] = isWithin && sought.mayClear?.(sizes, thickness, drive.id, amount) !== false ? 1 : 0;
  shapes.mayStay[at] = sought.mayStay?.(sizes, thickness, drive.id) === false ? 0 : 1;
}

/**
 * What hand forms say of every shape of a lot.
 *
 * @param lot - kind, drive, lying and rungs [-]
 * @param wanted - print profile and room [mm], checked
 * @param beat - called now and then [-]
 * @returns arrays by the number of the shape: strains as fractions, efforts per MPa [mm³] or [mm²], room [mm]
 *
 * Source: plane-bending, roark-17.1.
 */
export function shapesOf(lot: Lot, wanted: Wanted, beat: () => void = () => undefined): Shapes {
  const count = shapesIn(lot);
  const numbers = () => new Float64Array(count);
  const flags = () => new Uint8Array(count);
  const shapes: Shapes = {
    lot,
    count,
    possible: flags(),
    exact: flags(),
    thickness: numbers(),
    length: numbers(),
    nominal: numbers(),
    peak: numbers(),
    rootFactor: numbers(),
    effort: numbers(),
    along: numbers(),
    across: numbers(),
    depthFrom: numbers(),
    depthTimes: numbers(),
    bridge: numbers(),
    ledge: numbers(),
    mayStay: flags(),
    mayClear: flags(),
  };
  for (let at = 0; at < count; at += 1) {
    fill(shapes, wanted, at);
    if (at % 256 === 0) beat();
  }
  return shapes;
}
