/** Worked joints to begin from: every one can be assessed as it stands, none is an empty form. */
import type { Joint, Movement } from '../core/design/joint.ts';
import type { FlexureFamily, Sizes } from '../core/flexures/family.ts';
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

function usualMovement({ drives: [drive] }: FlexureFamily, lying: Lying): Movement {
  const { cycles, calmer } = USUAL_USE[lying];
  return { drive: drive.id, amount: drive.typical / calmer, ways: 'one way', cycles, held: false, chance: 0.95 };
}

/** A joint of this family with typical sizes, on the printer and in the filament of `like` where there is one. */
export function newJoint(family: FlexureFamily, name: string, like?: Joint): Joint {
  const printer = like?.profile ?? USUAL_PROFILE;
  const lying = family.lyings.includes(printer.lying) ? printer.lying : family.lyings[0];
  return {
    id: 'new',
    name,
    family: family.id,
    sizes: typicalSizes(family),
    movement: usualMovement(family, lying),
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
