/** A toggle as rigid links on pins, for an instant answer and to judge whether it can stay. */
import { bendingStrain } from '../closedForms/leafBending.ts';
import { pushedBeyondTip, toggleAt, type ToggleParts, type ToggleState } from '../closedForms/toggle.ts';
import { asRad, radians, type Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import { roofHeight, springThickness, thrustArm, type ToggleSizes } from './toggleSizes.ts';

/**
 * The toggle as its pins see it. A neck bends as if it turned about its middle; the middle neck is twice as long and
 * turns twice as far, so that the three together store ½·(1 + 4/2 + 1)·(I/h)·ψ².
 */
export function toggleParts(sizes: ToggleSizes, thickness: Mm): ToggleParts {
  const { hinge, link, incline, spring, depth } = sizes;
  const inertia = (t: Mm) => (depth * t ** 3) / 12;
  return {
    half: link * Math.cos(incline) + 1.5 * hinge,
    height: roofHeight(sizes),
    thrust: pushedBeyondTip(inertia(springThickness(sizes, thickness)), spring, thrustArm(sizes)),
    pins: (4 * inertia(thickness)) / hinge,
  };
}

/**
 * Whether it has a second place of rest by the simple form: somewhere past the middle it pulls itself on.
 *
 * @param sizes - of the toggle, checked [mm], [rad]
 * @param thickness - of the necks [mm], > 0
 * @returns true when the effort falls below zero [-]
 *
 * Source: two-bar-truss.
 */
export function staysByHand(sizes: ToggleSizes, thickness: Mm): boolean {
  const parts = toggleParts(sizes, thickness);
  return Array.from({ length: LOOKS }, (_, i) => parts.height * (1 + (i + 1) / LOOKS)).some(
    (travel) => toggleAt(parts, travel).effort < 0,
  );
}

/** Where between the middle and the mirror image the effort is looked at. */
const LOOKS = 60;

/** Strain of the necks, which bend on to the end, or of the spring leaf, which is bent most on the way, at the middle. */
function largestStrain(sizes: ToggleSizes, thickness: Mm, amount: number): number {
  const { hinge, spring, depth } = sizes;
  const parts = toggleParts(sizes, thickness);
  const at = (travel: Mm): ToggleState => toggleAt(parts, travel);
  const leaf = springThickness(sizes, thickness);
  const moment = parts.thrust * at(Math.min(amount, parts.height)).opened * (spring + thrustArm(sizes));
  return Math.max(bendingStrain(thickness, hinge, asRad(at(amount).turned)), (6 * moment) / (depth * leaf ** 2));
}

/** Within these the links are long beside their necks, which hardly bow under the thrust. */
const SHORT_NECK = 0.12;
const FLAT = radians(20);
const SLENDER = 1 / 6;
/** Largest thrust times the square of the middle neck over its bending stiffness; it would bow out at π². */
const BOWED = 3;

export const PRESSED_FORM: HandForm<ToggleSizes> = {
  drive: 'pressed',
  source: 'two-bar-truss',
  appliesTo: (sizes, thickness, amount) => {
    const { hinge, link, incline, spring } = sizes;
    const parts = toggleParts(sizes, thickness);
    const push = parts.thrust * toggleAt(parts, parts.height).opened;
    return (
      hinge <= SHORT_NECK * link &&
      incline <= FLAT &&
      springThickness(sizes, thickness) <= SLENDER * spring &&
      (push * (2 * hinge) ** 2) / ((sizes.depth * thickness ** 3) / 12) <= BOWED &&
      amount <= 2 * parts.height
    );
  },
  peakStrain: largestStrain,
  effort: (sizes, thickness, amount) =>
    sizes.sideBySide * toggleAt(toggleParts(sizes, thickness), Math.min(amount, 2 * sizes.link)).effort,
  rel: 0.3,
  because: 'TO BE MEASURED',
};
