/** A toggle as rigid links on pins, for an instant answer and to judge whether it can stay. */
import { bendingStrain } from '../closedForms/leafBending.ts';
import { pushedBeyondTip, toggleAt, type ToggleParts } from '../closedForms/toggle.ts';
import { asRad, radians, type Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import { roofHeight, springThickness, thrustArm, type ToggleSizes } from './toggleSizes.ts';

/**
 * The toggle as its pins see it. A neck bends as if it turned about its middle; the middle one is twice as long, so half
 * as stiff.
 *
 * @param sizes - of the toggle, checked [mm], [rad]
 * @param thickness - of the necks [mm], > 0
 * @returns lengths [mm] and stiffnesses per MPa of modulus
 *
 * Source: two-bar-truss.
 */
export function toggleParts(sizes: ToggleSizes, thickness: Mm): ToggleParts {
  const { hinge, link, incline, spring, depth } = sizes;
  const inertia = (t: Mm) => (depth * t ** 3) / 12;
  const leaf = pushedBeyondTip(inertia(springThickness(sizes, thickness)), spring, thrustArm(sizes));
  return {
    half: link * Math.cos(incline) + 1.5 * hinge,
    height: roofHeight(sizes),
    thrust: leaf.stiffness,
    lean: leaf.lean,
    pin: inertia(thickness) / hinge,
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

/**
 * How much further the middle pin travels than the end of the first link, which is pushed: half a middle neck lies
 * between them.
 *
 * @param sizes - of the toggle, checked [mm], [rad]
 * @returns travel of the pin over travel of the push [-], > 1
 *
 * Source: two-bar-truss.
 */
export function pinOverPush({ hinge, link, incline }: ToggleSizes): number {
  const run = link * Math.cos(incline);
  return (run + 1.5 * hinge) / (run + 0.5 * hinge);
}

/** How far the middle pin of a toggle goes, and at which of so many places on its way most is asked of what bends. */
export interface WayOfPin {
  readonly travel: Mm;
  readonly places: number;
  /** The place from 1 on where the last neck is turned most, and the one where the outer pins are farthest apart. */
  readonly mostTurned: number;
  readonly mostOpened: number;
}

/**
 * Where on the way to a travel a toggle bends its last neck and its spring leaf most.
 *
 * @param sizes - of the toggle, checked [mm], [rad]
 * @param thickness - of the necks [mm], > 0
 * @param amount - travel of the push [mm], > 0; past the mirror image of the roof the pins say nothing
 * @returns travel of the pin [mm] and places on the way [-]
 *
 * Source: two-bar-truss.
 */
export function placesOnTheWay(sizes: ToggleSizes, thickness: Mm, amount: Mm): WayOfPin {
  const parts = toggleParts(sizes, thickness);
  const travel = Math.min(pinOverPush(sizes) * amount, 2 * parts.height);
  const states = Array.from({ length: LOOKS }, (_, i) => toggleAt(parts, (travel * (i + 1)) / LOOKS));
  const most = (of: 'lastTurned' | 'opened') => {
    const largest = Math.max(...states.map((state) => state[of]));
    return 1 + states.findIndex((state) => state[of] === largest);
  };
  return { travel, places: LOOKS, mostTurned: most('lastTurned'), mostOpened: most('opened') };
}

/** Strain of the last neck, which bends most, or of the spring leaf, which is bent most on the way, at the middle. */
function largestStrain(sizes: ToggleSizes, thickness: Mm, amount: number): number {
  const { hinge, spring, depth } = sizes;
  const parts = toggleParts(sizes, thickness);
  const { travel, places, mostTurned, mostOpened } = placesOnTheWay(sizes, thickness, amount);
  const stateAt = (place: number) => toggleAt(parts, (travel * place) / places);
  const moment = parts.thrust * stateAt(mostOpened).opened * (spring + thrustArm(sizes));
  const leaf = (6 * moment) / (depth * springThickness(sizes, thickness) ** 2);
  return Math.max(bendingStrain(thickness, hinge, asRad(stateAt(mostTurned).lastTurned)), leaf);
}

/** Within these the links are long beside their necks, which hardly bow under the thrust. */
const SHORT_NECK = 0.12;
const FLAT = radians(20);
const SLENDER = 1 / 6;
const BEFORE_FLAT = 0.7;
const WELL_BENT = 0.3;
/**
 * So much may the foot of the last neck turn by the neck's own moment, which the form knows nothing of, for each turn of
 * that neck: a spring leaf hardly stiffer than the necks lets it.
 */
const YIELDING_FOOT = 0.25;
/** Largest thrust times the square of the middle neck over its bending stiffness; it would bow out at π². */
const BOWED = 3;

function applies(sizes: ToggleSizes, thickness: Mm, amount: number): boolean {
  const { hinge, link, incline, spring, depth, lines, springLines } = sizes;
  const parts = toggleParts(sizes, thickness);
  const push = parts.thrust * toggleAt(parts, parts.height).opened;
  return (
    hinge <= SHORT_NECK * link &&
    incline <= FLAT &&
    springThickness(sizes, thickness) <= SLENDER * spring &&
    (spring / hinge) * (lines / springLines) ** 3 <= YIELDING_FOOT &&
    (push * (2 * hinge) ** 2) / ((depth * thickness ** 3) / 12) <= BOWED &&
    amount <= BEFORE_FLAT * parts.height
  );
}

function effort(sizes: ToggleSizes, thickness: Mm, amount: number): number {
  const parts = toggleParts(sizes, thickness);
  const ratio = pinOverPush(sizes);
  // Past the mirror image of the roof the pins say nothing; the last that they say stands.
  const travel = Math.min(ratio * amount, 2 * parts.height);
  return sizes.sideBySide * ratio * toggleAt(parts, travel).effort;
}

export const TOGGLE_FORMS: readonly HandForm<ToggleSizes>[] = [
  {
    drive: 'pressed',
    source: 'two-bar-truss',
    appliesTo: (sizes, thickness, amount) =>
      applies(sizes, thickness, amount) && amount >= WELL_BENT * roofHeight(sizes),
    peakStrain: largestStrain,
    effort,
    rel: 0.35,
    because:
      'necks under thrust bend unevenly and shift as well as turn, which pins do not: solved toggles drawn at random strain up to two fifths more than this says, from three to seven tenths of the way to flat',
  },
  {
    drive: 'pressed',
    source: 'two-bar-truss',
    appliesTo: applies,
    effort,
    rel: 0.15,
    because:
      'up to seven tenths of the way to flat the force of solved toggles drawn at random is within 13 %; past it the hump of the spring and the pull of the necks nearly cancel',
  },
];
