import type { FlexureFamily, Section } from '../flexures/family.ts';
import { checkSizes, isRefusal } from '../flexures/checkSizes.ts';
import { findFamily } from '../flexures/index.ts';
import { findFilament } from '../material/filaments.ts';
import type { Filament } from '../material/types.ts';
import { checkProfile } from '../print/checkProfile.ts';
import { outsideRange, type Problem } from '../problems.ts';
import { failIfAny, fail, ok, type Result } from '../result.ts';
import { asRad, type Mm, type Rad } from '../units.ts';
import type { Joint } from './joint.ts';
import { checkMovement } from './movementLimits.ts';

/** A joint whose every input has been checked, with its family, filament and thin section looked up. */
export interface Understood {
  readonly joint: Joint;
  readonly family: FlexureFamily;
  readonly filament: Filament;
  readonly section: Section;
  readonly length: Mm;
  readonly inRow: number;
  /** Share of the wanted angle that each flexure of the row takes [rad]. */
  readonly angleEach: Rad;
  readonly acrossLayers: boolean;
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
function sectionOf(joint: Joint, family: FlexureFamily): Section {
  const sized = family.section(joint.sizes, joint.profile);
  return joint.measuredThickness === undefined ? sized : { ...sized, thickness: joint.measuredThickness };
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
  const filament = findFilament(joint.profile.filament);
  if (!filament) {
    const message = `There is no filament called “${joint.profile.filament}”; choose one from the list`;
    return fail({ code: 'unknown-filament', message, field: 'profile.filament', value: joint.profile.filament });
  }
  const profile = checkProfile(joint.profile);
  const section = sectionOf(joint, family);
  const sizes = checkSizes(family, joint.sizes, section.thickness, joint.profile);
  const refused = failIfAny([
    ...profile.problems,
    ...checkLying(joint, family),
    ...checkMovement(joint.movement),
    ...checkMeasured(joint.measuredThickness),
    ...sizes.filter(isRefusal),
  ]);
  if (refused) return refused;
  const size = (role: keyof FlexureFamily['roles']) => joint.sizes[family.roles[role]] ?? Number.NaN;
  const inRow = size('inRow');
  const understood: Understood = {
    joint,
    family,
    filament,
    section,
    length: size('length'),
    inRow,
    angleEach: asRad(joint.movement.angle / inRow),
    acrossLayers: joint.profile.lying === 'upright',
  };
  return ok(understood, [...profile.notes, ...sizes.filter((problem) => !isRefusal(problem))]);
}
