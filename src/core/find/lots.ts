import { checkMovement } from '../design/movementLimits.ts';
import type { Movement } from '../design/joint.ts';
import { ROUND_OFF } from '../design/response.ts';
import { findDrive, isAsked } from '../flexures/drives.ts';
import type { Drive, FlexureFamily, Parameter, Sizes } from '../flexures/family.ts';
import { FAMILIES } from '../flexures/index.ts';
import type { Rungs, Sought } from '../flexures/sought.ts';
import { soughtOf } from '../flexures/soughts.ts';
import { findFilament } from '../material/shelf.ts';
import type { Filament } from '../material/types.ts';
import type { Lying } from '../print/profile.ts';
import type { Problem } from '../problems.ts';
import type { Wanted } from './wanted.ts';

/** One kind, moved in one way and lying in one way, with all that is tried of it. */
export interface Lot {
  readonly family: FlexureFamily;
  readonly sought: Sought;
  readonly drive: Drive;
  readonly lying: Lying;
  readonly movement: Movement;
  /** How thick lines and layers of its filaments come out: those that come out alike share a lot. */
  readonly printed: Pick<Filament, 'laid'>;
  /** Every size of the kind at its typical value. */
  readonly typical: Sizes;
  /** Names of the depth and of how many stand side by side, where neither changes the shape. */
  readonly free: { readonly depth: string | undefined; readonly sideBySide: string | undefined };
  /** Sizes that shape it. */
  readonly rungs: readonly Rungs[];
  /** Values of what is free; 1 alone of what is not. */
  readonly depths: readonly number[];
  readonly sides: readonly number[];
}

/** Depths that are tried [mm], whatever the room: a deeper room then loses none. */
const DEPTHS: readonly number[] = [
  0.4, 0.6, 0.8, 1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100,
  120, 150, 200, 250, 300,
];
/** How far past the room that there is deeper ones are tried, to tell what more room would help. */
const DEEPER = 1.5;
/** How many side by side are tried. */
const SIDES: readonly number[] = [1, 2, 3, 4, 6, 12];

/** Values that a size may have. */
function within(values: readonly number[], parameter: Parameter | undefined): readonly number[] {
  return parameter === undefined ? [] : values.filter((value) => value >= parameter.min && value <= parameter.max);
}

/**
 * Depths that are tried between the least and so many times the most that is wanted.
 *
 * @param wanted - depth at least and at most [mm]
 * @param deeper - how far past the most [-]
 * @returns depths in rising order [mm]
 */
export function depthsFor(
  { room, depthAtLeast }: Pick<Wanted, 'room' | 'depthAtLeast'>,
  deeper = 1,
): readonly number[] {
  // Limits are sums of decimals: a part in 10⁹ keeps no depth out.
  return DEPTHS.filter((depth) => depth >= depthAtLeast * (1 - 1e-9) && depth <= deeper * room.depth * (1 + 1e-9));
}

/** The drive that a kind is moved by: the one asked for where it has it, else its first of that measure. */
function driveFor(
  family: FlexureFamily,
  { movement, measure }: Pick<Wanted, 'movement' | 'measure'>,
): Drive | undefined {
  const same = findDrive(family, movement.drive);
  return same?.measure === measure ? same : family.drives.find((drive) => drive.measure === measure);
}

/** What is asked of a kind: whether it stays is asked only of what snaps. */
function movementFor({ snaps }: FlexureFamily, drive: Drive, { movement }: Wanted): Movement {
  const { stays, ...moved } = movement;
  return { ...moved, drive: drive.id, ...(snaps && stays !== undefined ? { stays } : {}) };
}

/** How a kind is moved as is wanted; or why it cannot be, whatever its sizes. */
function askedOf(
  family: FlexureFamily,
  wanted: Wanted,
): { readonly drive: Drive; readonly movement: Movement } | string {
  const drive = driveFor(family, wanted);
  if (drive === undefined) return wanted.measure === 'turn' ? 'it does not turn' : 'it only turns';
  if (wanted.movement.stays === true && family.snaps !== true) return 'it does not stay in a second place';
  if (!family.lyings.some((lying) => wanted.lyings.includes(lying))) return `it lies ${family.lyings.join(' or ')}`;
  const movement = movementFor(family, drive, wanted);
  return checkMovement(movement, family)[0]?.message ?? { drive, movement };
}

/** How lines and layers come out in the ticked filaments, each way once. */
function printedIn({ filaments }: Pick<Wanted, 'filaments'>): readonly Lot['printed'][] {
  const ways = filaments.map((id) => findFilament(id)?.laid).map((laid) => (laid ? { laid } : {}));
  return ways.filter((way, i) => ways.findIndex((one) => laidAlike(one, way)) === i);
}

/** Whether lines and layers of both come out alike. */
export function laidAlike(one: Lot['printed'], other: Lot['printed']): boolean {
  return JSON.stringify(one.laid) === JSON.stringify(other.laid);
}

function lotsOfKind(family: FlexureFamily, wanted: Wanted): readonly Lot[] {
  const asked = askedOf(family, wanted);
  if (typeof asked === 'string') return [];
  const { drive, movement } = asked;
  const sought = soughtOf(family.id);
  const { parameters, roles } = family;
  const typical = Object.fromEntries(Object.entries(parameters).map(([name, one]) => [name, one.typical]));
  const rungs = sought.rungs.filter(({ size }) => isAsked(parameters[size] as Parameter, drive.id));
  const inProportion = (size: string | undefined) => sought.inProportion.find((name) => name === size);
  const free = { depth: inProportion(roles.depth), sideBySide: inProportion(roles.sideBySide) };
  const depths = free.depth === undefined ? [1] : within(depthsFor(wanted, DEEPER), parameters[free.depth]);
  const sides = free.sideBySide === undefined ? [1] : within(SIDES, parameters[free.sideBySide]);
  return family.lyings
    .filter((lying) => wanted.lyings.includes(lying))
    .flatMap((lying) =>
      printedIn(wanted).map((printed) => ({
        family,
        sought,
        drive,
        lying,
        movement,
        printed,
        typical,
        free,
        rungs,
        depths,
        sides,
      })),
    );
}

/** Kinds whose hand forms may be exact come first, since what is found of them can be told at once; then those of few shapes. */
function inOrder(a: Lot, b: Lot): number {
  const estimates = ({ family, drive }: Lot) =>
    family.handForms.some((one) => one.drive === drive.id && one.rel <= ROUND_OFF) ? 0 : 1;
  return estimates(a) - estimates(b) || shapesIn(a) - shapesIn(b);
}

/**
 * What is to be tried: every ticked kind that can be moved so, lying in every ticked way that it can lie in.
 *
 * @param wanted - what is looked for, checked [-]
 * @returns lots in the order in which they are searched
 */
export function lotsFor(wanted: Wanted): readonly Lot[] {
  return FAMILIES.filter(({ id }) => wanted.families.includes(id))
    .flatMap((family) => lotsOfKind(family, wanted))
    .toSorted(inOrder);
}

/**
 * Why nothing can be tried of what is ticked; undefined where something can.
 *
 * @param wanted - what is looked for, checked [-]
 * @returns a problem `none-can` that says of the first ticked kind why
 */
export function noneCan(wanted: Wanted): Problem | undefined {
  const ticked = FAMILIES.filter(({ id }) => wanted.families.includes(id));
  const [first] = ticked;
  const why = ticked.map((family) => askedOf(family, wanted)).filter((one) => typeof one === 'string');
  if (first === undefined || why.length < ticked.length) return undefined;
  return {
    code: 'none-can',
    message: `None of the ticked kinds can be moved so (${first.id}: ${why[0]}); tick others, or ask for another movement`,
    field: 'families',
  };
}

/**
 * How many shapes a lot has: every combination of its rungs.
 *
 * @param lot - its rungs [-]
 * @returns number of shapes [-]
 */
export function shapesIn({ rungs }: Pick<Lot, 'rungs'>): number {
  return rungs.reduce((product, { values }) => product * values.length, 1);
}

/**
 * The values tried of one shape.
 *
 * @param lot - its rungs [-]
 * @param at - number of the shape [-], whole, from 0
 * @returns values by the names of the sizes [mm], counts, ratios [-] or angles [rad]
 */
export function triedAt({ rungs }: Pick<Lot, 'rungs'>, at: number): Readonly<Record<string, number>> {
  let rest = at;
  const tried: Record<string, number> = {};
  for (const { size, values } of rungs) {
    tried[size] = values[rest % values.length] ?? Number.NaN;
    rest = Math.floor(rest / values.length);
  }
  return tried;
}
