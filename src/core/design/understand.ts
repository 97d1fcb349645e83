import { driveOf, sizesInForce } from '../flexures/drives.ts';
import type { Drive, FlexureFamily, Section, Sizes } from '../flexures/family.ts';
import { checkSizes, isRefusal } from '../flexures/checkSizes.ts';
import { findFamily } from '../flexures/known.ts';
import { findFilament } from '../material/shelf.ts';
import type { Filament } from '../material/types.ts';
import { checkProfile } from '../print/checkProfile.ts';
import { outsideRange, type Problem } from '../problems.ts';
import { failIfAny, fail, ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import type { Joint } from './joint.ts';
import { asSurrounded } from './asSurrounded.ts';
import { checkMovement, checkSurroundings } from './movementLimits.ts';
import { sectionOf } from './sectionOf.ts';

/** A joint whose every input has been checked, with its family, filament as it is used, and thin section looked up. */
export interface Understood {
  readonly joint: Joint;
  readonly family: FlexureFamily;
  readonly drive: Drive;
  /** As they act: sizes that the drive does not ask for are at their typical values. */
  readonly sizes: Sizes;
  readonly filament: Filament;
  readonly section: Section;
  readonly length: Mm;
  /** Thickness of the pads [mm], for kinds that ask for one. */
  readonly padThickness: Mm | undefined;
  /** 1 for kinds that are never in a row, and where the drive does not ask for one. */
  readonly inRow: number;
  readonly sideBySide: number;
  /** Share of the wanted amount that each flexure of the row takes [rad] or [mm]. */
  readonly amountEach: number;
  readonly acrossLayers: boolean;
  /** How much of the peak at a root is felt, 0 to 1, where it is taken otherwise than `NOTCH_SENSITIVITY`. */
  readonly notchSensitivity?: number;
}

/** Thickness that calipers can read and a printed flexure can have. */
export const MEASURED_THICKNESS_LIMITS = {
  min: 0.05,
  max: 20,
  because: 'thinner than any layer, or thicker than anything that still flexes',
} as const;

/** A measurement is not raised or lowered: it is taken again. */
const MEASURE_AGAIN = { low: 'measure the thin section again', high: 'measure the thin section, not the pad' } as const;

function checkMeasured(thickness: Mm | undefined): Problem[] {
  if (thickness === undefined) return [];
  const what = 'A measured thickness of';
  const outside = outsideRange('measuredThickness', what, thickness, MEASURED_THICKNESS_LIMITS, 'mm', MEASURE_AGAIN);
  return outside ? [outside] : [];
}

function checkLying(joint: Joint, family: FlexureFamily): Problem[] {
  const { lying } = joint.profile;
  if (family.lyings.includes(lying)) return [];
  const possible = family.lyings.join(' or ');
  const message = `A ${family.id} cannot be printed lying ${lying}; choose ${possible}`;
  return [{ code: 'lying-not-possible', message, field: 'profile.lying', value: lying, limit: possible }];
}

/** The thin section as it bends: as measured where a measurement stands, else as the sizes make it. */
function thinSection({ sizes, profile, measuredThickness }: Joint, family: FlexureFamily, filament: Filament): Section {
  const sized = sectionOf(family, sizes, profile, filament);
  return measuredThickness === undefined ? sized : { ...sized, thickness: measuredThickness };
}

/**
 * A joint with every input checked and its family, filament and thin section looked up.
 *
 * Problems: those of `checkProfile`, `checkMovement` and `checkSizes`, `unknown-family`, `unknown-filament`,
 * `lying-not-possible`; cautions come back as notes.
 *
 * @param joint - the joint as typed, read from a file or made by a way out [-]
 * @returns the joint with what is looked up for it, and cautions as notes
 */
export function understand(joint: Joint): Result<Understood> {
  const family = findFamily(joint.family);
  if (!family) {
    const message = `There is no kind of flexure called “${joint.family}”; choose one from the list`;
    return fail({ code: 'unknown-family', message, field: 'family', value: joint.family });
  }
  const found = findFilament(joint.profile.filament);
  if (!found) {
    const message = `There is no filament called “${joint.profile.filament}”; choose one from the list`;
    return fail({ code: 'unknown-filament', message, field: 'profile.filament', value: joint.profile.filament });
  }
  const profile = checkProfile(joint.profile);
  const section = thinSection(joint, family, found);
  const judged = checkSizes(family, joint.sizes, section.thickness, joint.profile);
  const refused = failIfAny([
    ...profile.problems,
    ...checkLying(joint, family),
    ...checkMovement(joint.movement, family),
    ...checkSurroundings(joint.surroundings),
    ...checkMeasured(joint.measuredThickness),
    ...judged.filter(isRefusal),
  ]);
  if (refused) return refused;
  const sizes = sizesInForce(family, joint.sizes, joint.movement.drive);
  const size = (role: keyof FlexureFamily['roles']) => sizes[family.roles[role] ?? ''];
  const inRow = size('inRow') ?? 1;
  const understood: Understood = {
    joint,
    family,
    drive: driveOf(family, joint.movement.drive),
    sizes,
    filament: asSurrounded(found, joint),
    section,
    length: size('length') ?? Number.NaN,
    padThickness: size('pad'),
    inRow,
    sideBySide: size('sideBySide') ?? 1,
    amountEach: joint.movement.amount / inRow,
    acrossLayers: joint.profile.lying === 'upright',
  };
  return ok(understood, [...profile.notes, ...judged.filter((problem) => !isRefusal(problem))]);
}
