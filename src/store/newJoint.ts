/** Worked joints to begin from: every one can be assessed as it stands, none is an empty form. */
import type { Joint, Movement } from '../core/design/joint.ts';
import { assess } from '../core/design/assess.ts';
import { findDrive } from '../core/flexures/drives.ts';
import type { Drive, FlexureFamily, Sizes } from '../core/flexures/family.ts';
import { findFamily } from '../core/flexures/known.ts';
import { straightLeaf } from '../core/flexures/straightLeaf.ts';
import { nearestLines } from '../core/print/wholeLines.ts';
import type { Lying, PrintProfile } from '../core/print/profile.ts';
import type { Mm } from '../core/units.ts';

/** A common 0.4 mm nozzle with its usual settings. */
export const USUAL_PROFILE: PrintProfile = {
  nozzle: 0.4,
  lineWidth: 0.42,
  layerHeight: 0.2,
  firstLayerHeight: 0.2,
  lying: 'flat',
  fitRule: 'nominal',
  filament: 'petg',
};

/**
 * What such a joint is commonly asked to do: a leaf swings often, a crease is folded seldom, and one that stands is moved
 * a third as far as its drive usually moves it.
 */
const USUAL_USE: Readonly<Record<Lying, { readonly cycles: number; readonly calmer: number }>> = {
  flat: { cycles: 1000, calmer: 1 },
  crease: { cycles: 200, calmer: 1 },
  upright: { cycles: 200, calmer: 3 },
};

/** A first guess at a thin section on someone else's part, until it is measured. */
const GUESSED_THICKNESS: Mm = 0.8;

/** Every size at its typical value. */
function typicalSizes(family: FlexureFamily): Sizes {
  return Object.fromEntries(Object.entries(family.parameters).map(([name, { typical }]) => [name, typical]));
}

function usualMovement({ snaps }: FlexureFamily, { id, typical }: Drive, lying: Lying): Movement {
  const { cycles, calmer } = USUAL_USE[lying];
  const movement = { drive: id, amount: typical / calmer, ways: 'one way', cycles, held: false, chance: 0.95 } as const;
  return snaps ? { ...movement, stays: true } : movement;
}

/** As the printer stands set up where the kind can lie so, else as the kind usually lies. */
function lyingFor({ lyings }: FlexureFamily, { lying }: PrintProfile): Lying {
  return lyings.includes(lying) ? lying : lyings[0];
}

/**
 * A joint of this family with typical sizes, on the printer and in the filament of `like` where there is one, moved as
 * is usual or by the drive that is asked for.
 */
export function newJoint(
  family: FlexureFamily,
  name: string,
  like?: Pick<Joint, 'profile'>,
  drive: Drive = family.drives[0],
): Joint {
  const printer = like?.profile ?? USUAL_PROFILE;
  const lying = lyingFor(family, printer);
  return {
    id: 'new',
    name,
    family: family.id,
    sizes: typicalSizes(family),
    movement: usualMovement(family, drive, lying),
    profile: { ...printer, lying },
  };
}

/** A leaf of a part that exists already, with a guessed thickness in the place of the one to be measured. */
export function newMeasuredJoint(name: string, like?: Joint): Joint {
  const joint = newJoint(straightLeaf, name, like);
  const { count } = nearestLines(GUESSED_THICKNESS, joint.profile);
  return {
    ...joint,
    sizes: { ...joint.sizes, [straightLeaf.roles.count]: count },
    measuredThickness: GUESSED_THICKNESS,
  };
}

/**
 * The joint made another kind: its name, printer, filament and surroundings stay, and its movements as far as the kind
 * knows them. Where the kind cannot go so far, it goes as far as is usual, and what lies within its swing is let go.
 */
export function ofAnotherKind(joint: Joint, family: FlexureFamily, drive: Drive = family.drives[0]): Joint {
  const { surroundings } = joint;
  const worked = {
    ...newJoint(family, joint.name, joint, drive),
    id: joint.id,
    ...(surroundings === undefined ? {} : { surroundings }),
  };
  const { stays: _stays, effortAtMost: _effort, ...moved } = joint.movement;
  const { drive: _drive, amount: _amount, least: _least, also: _also, ...use } = moved;
  const kept = { ...worked, movement: { ...worked.movement, ...use } };
  const before = findDrive(findFamily(joint.family) ?? family, joint.movement.drive);
  if (before?.measure !== drive.measure) return kept;
  const asFar = { ...kept, movement: { ...kept.movement, ...moved, drive: drive.id } };
  return assess(asFar).ok ? asFar : kept;
}
