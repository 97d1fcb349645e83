/** Shallow arches in closed form, for an instant answer and as a check of the solver. */
import { archStrain, archStrainFactor } from '../closedForms/archStrain.ts';
import { archAtTravel } from '../closedForms/archAtTravel.ts';
import { SIDE_MODE, type ArchForm, type ArchState } from '../closedForms/archModes.ts';
import { archForceUnit } from '../closedForms/snapArch.ts';
import type { Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import { flexing, formOf, type SnapArchSizes } from './snapArchSizes.ts';

type FormOf = (sizes: SnapArchSizes) => ArchForm;

/** Largest strain on the way to the travel, not at its end: past the middle it falls again. */
function strainBy(form: FormOf): NonNullable<HandForm<SnapArchSizes>['peakStrain']> {
  return (sizes, thickness, amount) => {
    const factor = archStrainFactor(sizes.rise / thickness, form(sizes), amount / sizes.rise);
    return archStrain(factor, thickness, flexing(sizes), sizes.rise);
  };
}

function effortBy(form: FormOf): NonNullable<HandForm<SnapArchSizes>['effort']> {
  return (sizes, thickness, amount) => {
    const { rise, depth, arches, sideBySide } = sizes;
    const unit = archForceUnit(1, arches * sideBySide * depth, thickness, flexing(sizes), rise);
    return unit * archAtTravel(rise / thickness, form(sizes), amount / rise).force;
  };
}

function stateOf(form: FormOf, sizes: SnapArchSizes, thickness: Mm, amount: Mm): ArchState {
  return archAtTravel(sizes.rise / thickness, form(sizes), amount / sizes.rise);
}

/** Rise over what bends, up to which shallow theory is asked; the square of the slope is then up to 2.5 %. */
const SHALLOW = 0.05;
const LEAST_RATIO = { free: 2, double: 2.5 } as const;

function isShallow(sizes: SnapArchSizes, thickness: Mm, form: ArchForm): boolean {
  const ratio = sizes.rise / thickness;
  return sizes.rise <= SHALLOW * flexing(sizes) && ratio >= LEAST_RATIO[form] && ratio <= 15;
}

/** The block of two arches leans before they wriggle: from about this share of that compression on. */
const UPRIGHT = 0.7;

/** One arch leans by itself, as its closed form says; a block hinders it, which the form does not know. */
function pressedApplies(sizes: SnapArchSizes, thickness: Mm, amount: Mm): boolean {
  const { arches, block, span, apart, rise } = sizes;
  const form = formOf(sizes);
  if (!isShallow(sizes, thickness, form)) return false;
  if (form === 'free') return arches === 1 && block <= 0.01 * span && amount <= 1.5 * rise;
  const state = stateOf(formOf, sizes, thickness, amount);
  const isBefore = state.travel < 1 && state.compression <= UPRIGHT * SIDE_MODE.double ** 2;
  return isBefore && apart >= rise && block <= 0.2 * span;
}

/** Forces near their passage through zero are not asked for: there a small shift is a large share. */
const LEAST_FORCE = 150;
/** Travel over the rise up to which the guided form is asked; beyond, force climbs so fast that a small shift tells. */
const MOST_GUIDED = 1.8;

const double: FormOf = () => 'double';

export const ARCH_FORMS: readonly HandForm<SnapArchSizes>[] = [
  {
    drive: 'pressed',
    source: 'shallow-arch',
    appliesTo: pressedApplies,
    peakStrain: strainBy(formOf),
    effort: effortBy(formOf),
    rel: 0.05,
    because:
      'shallow theory leaves out the square of the slope, up to 2.5 % at a rise of a twentieth of what bends; solved arches drawn at random differ by at most 2.4 % in force and 3.3 % in strain. Once a block has begun to lean, arches wriggle on one side of it only: less force and up to a fifth more strain than this says',
  },
  {
    drive: 'guided',
    source: 'shallow-arch',
    appliesTo: (sizes, thickness, amount) =>
      isShallow(sizes, thickness, 'double') &&
      amount <= MOST_GUIDED * sizes.rise &&
      Math.abs(stateOf(double, sizes, thickness, amount).force) >= LEAST_FORCE,
    peakStrain: strainBy(double),
    effort: effortBy(double),
    rel: 0.08,
    because:
      'shallow theory leaves out the square of the slope, up to 2.5 % at a rise of a twentieth of what bends; solved arches drawn at random differ by at most 4 % in force away from where it passes zero, and by 6 % in the strain',
  },
];
