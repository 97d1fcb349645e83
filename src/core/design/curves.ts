import { familyOf } from '../flexures/known.ts';
import { severity } from '../life/assessLife.ts';
import type { LifeSpread } from '../life/lifeAnswer.ts';
import { medianWanted, spreadAround, totalSigma } from '../life/scatter.ts';
import { lifeAtStrain, strainAtLife } from '../life/strainLife.ts';
import { findRoot } from '../numeric/roots.ts';
import type { Mm } from '../units.ts';
import type { Assessment } from './assessment.ts';
import { effortByModulus } from './effortAnswer.ts';
import { feltEfforts } from './feltEffort.ts';
import { handResponse, type Asked } from './response.ts';
import { readAt } from './solvedPath.ts';
import { sectionOf } from './sectionOf.ts';
import { rootOf } from './strainAnswer.ts';

/** What a curve may vary while everything else of the joint stays. Length [mm], count of lines or layers, amount [rad] or [mm]. */
export interface Variation {
  readonly length?: Mm;
  readonly count?: number;
  readonly amount?: number;
}

function thicknessFor(a: Assessment, count: number): Mm {
  const family = familyOf(a.joint);
  return sectionOf(family, { ...a.joint.sizes, [family.roles.count]: count }, a.joint.profile, a.filament).thickness;
}

function askedFor(a: Assessment, { length, count, amount }: Variation): Asked {
  const family = familyOf(a.joint);
  return {
    family,
    drive: a.drive.id,
    sizes: length === undefined ? a.sizes : { ...a.sizes, [family.roles.length]: length },
    thickness: count === undefined ? a.section.thickness : thicknessFor(a, count),
    amount: amount ?? a.joint.movement.amount,
  };
}

/**
 * Peak strain of the joint with its length, count or amount changed, by hand forms.
 *
 *     ε = (t/2)·(θ/n)/L·(1 + q·(Kt − 1))   for a pure moment
 *
 * The same chain as `assess`, without its checks, so that a curve of a hundred points costs little.
 *
 * @param a - the joint as assessed [-]
 * @param change - what differs: length [mm], count [-], amount [rad] or [mm]
 * @returns strain as a fraction [-]
 *
 * Source: plane-bending, roark-17.1.
 */
export function peakStrainFor(a: Assessment, change: Variation): number {
  const asked = askedFor(a, change);
  // A hand form that only estimates is held to the solver's figure for the joint as it is, whose worst place need not be
  // a root.
  const known = a.solved ? a.strain.peak / (handResponse(askedFor(a, {})).nominalStrain * a.strain.rootFactor) : 1;
  const nominalStrain = known * handResponse(asked).nominalStrain;
  if (change.count === undefined) return nominalStrain * a.strain.rootFactor;
  return nominalStrain * rootOf(familyOf(a.joint), a.sizes, asked.thickness).factor;
}

/** Equivalent over peak strain under this joint's conditions. */
function severityOf(a: Assessment, thickness = a.section.thickness): number {
  const acrossLayers = a.joint.profile.lying === 'upright';
  return severity({ ratio: a.life.wear[0].ratio, acrossLayers, thickness, filament: a.filament });
}

/**
 * Median cycles of the joint's own swing, where all its kinds of flex strain so many times as hard as now; none breaks at once.
 */
function medianAt({ life: { wear }, filament }: Assessment, times: number): number {
  const curve = { ...filament.life, firstFlexBreakStrain: Number.POSITIVE_INFINITY };
  const damage = wear.reduce((sum, one) => sum + one.cycles / lifeAtStrain(times * one.equivalentStrain, curve), 0);
  return wear[0].cycles / damage;
}

/**
 * Peak strain at which half last so many cycles of the joint's own swing under its conditions: the curve of strain against
 * life. Other kinds of flex go on in proportion, in strain and in number.
 *
 * @param a - the joint as assessed [-]
 * @param cycles - N [cycles], > 0
 * @returns strain as a fraction [-]
 *
 * Source: strain-life, palmgren-miner.
 */
export function strainAtCycles(a: Assessment, cycles: number): number {
  const { wear } = a.life;
  const alone = (n: number) => strainAtLife(n, a.filament.life) / severityOf(a);
  if (wear.length === 1) return alone(cycles);
  // Alone it would stand more; if the others were all as hard as it is, less.
  const all = wear.reduce((sum, one) => sum + one.cycles, 0);
  const [least, most] = [alone((cycles * all) / wear[0].cycles), alone(cycles)];
  const excess = (strain: number) => Math.log(medianAt(a, strain / a.strain.peak) / cycles);
  const found = findRoot(excess, least, most, 1e-12 * most);
  return found.ok ? found.value.value : least;
}

/**
 * Median life at a peak strain under this joint's conditions, in cycles of its own swing while others go on in proportion.
 *
 * @param a - the joint as assessed [-]
 * @param peakStrain - strain as a fraction [-], ≥ 0
 * @returns cycles; 0 when the first flex breaks it
 *
 * Source: strain-life, palmgren-miner.
 */
export function medianLifeAt(a: Assessment, peakStrain: number): number {
  return medianLifeOf(a, peakStrain, severityOf(a));
}

function medianLifeOf(a: Assessment, peakStrain: number, hardness: number): number {
  const alone = lifeAtStrain(peakStrain * hardness, a.filament.life);
  if (alone === 0 || a.life.wear.length === 1) return alone;
  return medianAt(a, (peakStrain * hardness) / a.life.equivalentStrain);
}

/**
 * Median life of the joint with its length, count or amount changed.
 *
 * Not always a point of `strainAtCycles`, which is drawn for the section as it is: another count may be thick enough
 * to be judged harder.
 *
 * @param a - the joint as assessed [-]
 * @param change - what differs: length [mm], count [-], amount [rad] or [mm]
 * @returns cycles; 0 when the first flex breaks it
 *
 * Source: strain-life.
 */
export function medianLifeFor(a: Assessment, change: Variation): number {
  const thickness = change.count === undefined ? a.section.thickness : thicknessFor(a, change.count);
  return medianLifeOf(a, peakStrainFor(a, change), severityOf(a, thickness));
}

/**
 * The spread round a median life of this filament: between specimens, and with the doubt of the curve.
 *
 * @param a - the joint as assessed [-]
 * @param median - N50 [cycles], ≥ 0
 * @returns cycles by which 10, 50 and 90 of 100 have broken, both ways of counting
 *
 * Source: strain-life.
 */
export function spreadOfCycles(
  a: Assessment,
  median: number,
): { readonly scatter: LifeSpread; readonly total: LifeSpread } {
  return {
    scatter: spreadAround(median, a.filament.life.sigmaLog10N),
    total: spreadAround(median, totalSigma(a.filament.life, median)),
  };
}

/**
 * Strains at which 10, 50 and 90 of 100 have broken by so many cycles, scatter and doubt together.
 *
 * The band of strain against life read along the strain axis: the strain whose early failures come at N is the one
 * whose median is that at which nine in ten reach N.
 *
 * @param a - the joint as assessed [-]
 * @param cycles - N [cycles], > 0
 * @returns strains as fractions [-], none above the strain that breaks it on the first flex
 *
 * Source: strain-life.
 */
export function strainSpreadAtCycles(
  a: Assessment,
  cycles: number,
): { readonly low: number; readonly typical: number; readonly high: number } {
  const strain = (share: number) =>
    Math.min(strainAtCycles(a, medianWanted(cycles, share, a.filament.life)), firstFlexStrain(a));
  return { low: strain(0.9), typical: strain(0.5), high: strain(0.1) };
}

/**
 * Peak strain above which the first flex breaks the joint, under its conditions.
 *
 * @param a - the joint as assessed [-]
 * @returns strain as a fraction [-], > 0
 *
 * Source: strain-life.
 */
export function firstFlexStrain(a: Assessment): number {
  return a.filament.life.firstFlexBreakStrain / severityOf(a);
}

/**
 * Effort at any amount of the whole joint, for the typical, low and high modulus: on the solved way where there is one, else
 * by hand form, with the width ratio of the wanted amount.
 *
 * @param a - the joint as assessed [-]
 * @param amount - of the whole joint [rad] or [mm], ≥ 0
 * @returns efforts [N·mm] or [N]
 *
 * Source: plane-bending, elastic-plastic.
 */
export function effortAt(
  a: Assessment,
  amount: number,
): { readonly typical: number; readonly low: number; readonly high: number } {
  if (a.solved) return feltEfforts(a)({ amount, effort: readAt(a.solved, amount).effort });
  return effortByHand(a, amount);
}

/**
 * The same by hand form alone.
 *
 * @param a - the joint as assessed [-]
 * @param amount - of the whole joint [rad] or [mm], > 0
 * @returns effort [N·mm] or [N] for the typical, low and high modulus
 *
 * Source: plane-bending, elastic-plastic.
 */
export function effortByHand(a: Assessment, amount: number): ReturnType<typeof effortByModulus> {
  const { nominalStrain, effort } = handResponse(askedFor(a, { amount }));
  return effortByModulus(a, a.effort.widthRatio * effort, nominalStrain);
}

/** Counts that a curve shows beside the joint's own: the common ones, as even counts are whole contours. */
const COMMON_COUNTS: readonly number[] = [1, 2, 3, 4, 6];

/**
 * Line or layer counts worth a curve of their own: 1, 2, 3, 4, 6 and the joint's.
 *
 * @param a - the joint as assessed [-]
 * @returns counts in rising order
 */
export function countsToShow(a: Assessment): readonly number[] {
  return [...new Set([...COMMON_COUNTS, a.section.count])].toSorted((x, y) => x - y);
}
