/** Hand forms of parallel leaves that carry a pad across. */
import { guidedFreeLeaf, guidedHeldLeaf, guidedStiffness, guidedStrain } from '../closedForms/guidedLeaf.ts';
import type { Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import type { ParallelSizes } from './parallelLeaves.ts';

/** Lengths over thickness from which shear, which grows with (t/L)², softens by less than 1 %. */
const SLENDER = 20;
/** As far across, as a share of the length, as leaves are hardly stretched yet. */
const FAR = 0.5;
/** Share of the length up to which small slopes do. */
const SMALL = 0.05;
/** Leaves that stand nearer, outermost to outermost, over their length, let the pad tilt enough to move lever arms. */
const ABREAST = 0.5;

function isSlender({ length }: ParallelSizes, thickness: Mm): boolean {
  return SLENDER * thickness <= length;
}

/** Leaves that push together, in one stage and side by side. */
function together({ leaves, sideBySide }: ParallelSizes): number {
  return leaves * sideBySide;
}

/** E·I of one leaf per MPa of modulus. */
function bending({ depth }: ParallelSizes, thickness: Mm): number {
  return (depth * thickness ** 3) / 12;
}

/**
 * How far a pad that is pushed at the ends of its leaves tilts, as a share of δ/L, for little travel:
 *
 *     φ·L/δ = 6n/(4n + 12·S/t²),   S = Σ xᵢ²
 *
 * with the leaves at xᵢ from the middle: their ends want to turn back, and only their stretch holds them.
 */
function tilt({ leaves, spacing }: ParallelSizes, thickness: Mm): number {
  const spread = (spacing ** 2 * leaves * (leaves ** 2 - 1)) / 12;
  return (6 * leaves) / (4 * leaves + (12 * spread) / thickness ** 2);
}

/** The moment at the fixed end falls to 1 − r/3 of a guided leaf's; the outermost leaf is pulled by r·δ·x/L² besides. */
function shiftedStrain(sizes: ParallelSizes, thickness: Mm, amount: Mm): number {
  const { length, leaves, spacing } = sizes;
  const r = tilt(sizes, thickness);
  const outermost = ((leaves - 1) * spacing) / 2;
  return guidedStrain(thickness, length, amount) * (1 - r / 3) + (r * amount * outermost) / length ** 2;
}

export const PARALLEL_FORMS: readonly HandForm<ParallelSizes>[] = [
  {
    drive: 'shifted',
    source: 'small-deflection',
    appliesTo: (sizes, thickness, amount) =>
      isSlender(sizes, thickness) &&
      amount <= SMALL * sizes.length &&
      (sizes.leaves - 1) * sizes.spacing >= ABREAST * sizes.length,
    peakStrain: shiftedStrain,
    effort: (sizes, thickness, amount) =>
      together(sizes) *
      guidedStiffness(1, sizes.depth, thickness, sizes.length) *
      amount *
      (1 - tilt(sizes, thickness) / 2),
    rel: 0.04,
    because:
      'small travel: the tilt that grows on the way moves the lever arms of the leaves, by 3 % of the strain at a twentieth of the length; 1 % for shear at L = 20·t',
  },
  {
    drive: 'guided',
    source: 'end-loaded-elastica',
    appliesTo: (sizes, thickness, amount) => isSlender(sizes, thickness) && amount <= FAR * sizes.length,
    peakStrain: ({ length }, thickness, amount) =>
      (thickness / (2 * length)) * guidedFreeLeaf(withinReach(amount / length)).endMoment,
    effort: (sizes, thickness, amount) =>
      (together(sizes) * bending(sizes, thickness) * guidedFreeLeaf(withinReach(amount / sizes.length)).load) /
      sizes.length ** 2,
    rel: 0.02,
    because:
      'exact for leaves that neither stretch nor shear; 1 % for shear at L = 20·t, and as much for stretch far out',
  },
  {
    drive: 'held',
    source: 'tie-beam',
    appliesTo: (sizes, thickness, amount) => isSlender(sizes, thickness) && amount <= SMALL * sizes.length,
    peakStrain: ({ length }, thickness, amount) =>
      guidedHeldLeaf(amount / thickness).strain * (thickness / length) ** 2,
    effort: (sizes, thickness, amount) =>
      (together(sizes) * bending(sizes, thickness) * thickness * guidedHeldLeaf(amount / thickness).force) /
      sizes.length ** 3,
    rel: 0.02,
    because:
      'exact for small slopes; at a travel of L/20 they are up to 0.075, 0.6 % in their square, with 1 % for shear',
  },
];

/** No unstretched leaf reaches across as far as it is long; past this the form stands still and is only an estimate. */
function withinReach(travel: number): number {
  return Math.min(0.995, travel);
}
