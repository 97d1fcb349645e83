import { highestPoint } from '../numeric/goldenSection.ts';
import type { Mm, MPa } from '../units.ts';
import { FIRST, MADE, SIDE_MODE, straightBranch, type ArchForm, type ArchState } from './archModes.ts';
import { archPath, type ArchPath } from './archPath.ts';

/**
 * Force on a clamped cosine arch from its first mode alone.
 *
 *     F = (3π⁴Q²/2)·Δ·[(Δ − 3/2)² − 1/4 + 4/(3Q²)]
 *
 * Right where the force is zero, which is pure first mode; far too much in between, where a real arch takes its higher
 * modes and its side mode: for a force use `snapLoads`.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param travel - Δ = d/h of the middle [-]
 * @returns F = f·L³/(E·I·h) [-]
 *
 * Source: shallow-arch.
 * @example firstModeForce(3, 0.5) // → 590.542614
 */
export function firstModeForce(ratio: number, travel: number): number {
  const bracket = (travel - 1.5) ** 2 - 0.25 + 4 / (3 * ratio ** 2);
  return 1.5 * Math.PI ** 4 * ratio ** 2 * travel * bracket;
}

/** Q from which the first mode has further zeros of force beyond the arch as made. */
const TWO_ZEROS = 4 / Math.sqrt(3);

/**
 * Least ratio of rise to thickness at which an arch stays where it has snapped to.
 *
 * With the second mode kept away 4/√3 = 2.31, where the first mode gets a second zero of force. One arch alone leans
 * back out of that zero until its compression there is below that of the second mode, which takes Q of 5.65.
 *
 * @param form - how it is kept from leaning [-]
 * @returns Q = h/t [-]
 *
 * Source: shallow-arch.
 * @example bistableRatio('free') // → 5.645574
 */
export function bistableRatio(form: ArchForm): number {
  const limit = SIDE_MODE[form] ** 2;
  // Where the zeros meet A₁ = −1/4 and n = 3·N₁²; from there n at the outer one falls as Q grows.
  if (limit >= 3 * FIRST ** 2) return TWO_ZEROS;
  const first = FIRST ** 2 / (2 * (FIRST ** 2 - limit));
  return Math.sqrt(limit / (12 * (MADE - (FIRST * first) ** 2 / 4)));
}

/** Where an arch rests without force after it has snapped, and where it is poised on the way; travel over the rise. */
export interface RestPoints {
  readonly poised: number;
  readonly snapped: number;
}

/**
 * Travels at which an arch that stays snapped has no force on it.
 *
 *     Δ = 3/2 + √(1/4 − 4/(3Q²)) at rest; poised on the straight branch, −intercept/slope, or at 3/2 − √(…) below it
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @returns travels over the rise [-]; undefined when the arch springs back by itself
 *
 * Source: shallow-arch.
 * @example restPoints(3, 'double') // → { poised: 1.33333333, snapped: 1.81914237 }
 */
export function restPoints(ratio: number, form: ArchForm): RestPoints | undefined {
  if (!(ratio >= bistableRatio(form))) return undefined;
  const apart = Math.sqrt(Math.max(0, 0.25 - 4 / (3 * ratio ** 2)));
  const { intercept, slope } = straightBranch(form);
  return { poised: Math.max(1.5 - apart, -intercept / slope), snapped: 1.5 + apart };
}

/** The force that snaps an arch and the least on the way; below zero it has to be pushed back. */
export interface SnapLoads {
  readonly top: ArchState;
  readonly bottom: ArchState;
}

/** Points at which a path is looked at before a turn of its force is closed in on. */
const LOOKS = 300;

/**
 * The force at which an arch snaps through and the force at the other end of the snap.
 *
 * Thirty symmetric modes and the side mode, shallow arch, fixings that do not give: a real frame gives, and the force to
 * snap is then less. With much rise F = 743 at Δ = 0.157 and −369 at 1.917 (double, Q = 10).
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @returns the states at both turns of the force, F in E·I·h/L³ and Δ in h [-]; undefined when the force never falls
 *
 * Source: shallow-arch.
 * @example snapLoads(6, 'free')?.top.force // → 389.66492
 */
export function snapLoads(ratio: number, form: ArchForm): SnapLoads | undefined {
  const path = archPath(ratio, form);
  const top = firstTurn(path, 0, 1);
  const bottom = top === undefined ? undefined : firstTurn(path, top, -1);
  if (top === undefined || bottom === undefined) return undefined;
  return { top: path(top), bottom: path(bottom) };
}

/** Where the force, or with sign −1 its negative, first turns from rising to falling after a point of the path. */
function firstTurn(path: ArchPath, from: number, sign: 1 | -1): number | undefined {
  const step = 3 / LOOKS;
  const height = (along: number) => sign * path(along).force;
  for (let k = Math.floor(from / step) + 1; k < LOOKS; k++) {
    const [low, high] = [Math.max(from, (k - 1) * step), (k + 1) * step];
    if (height(k * step) >= height(low) && height(k * step) > height(high)) return highestPoint(height, low, high);
  }
  return undefined;
}

/**
 * The force in which arches are measured.
 *
 *     f = F·E·I·h/L³,   I = b·t³/12
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the bending plane [mm], > 0; of both leaves together for a double arch
 * @param thickness - t [mm], > 0
 * @param span - L between the fixings [mm], > 0
 * @param rise - h of the middle as made [mm], > 0
 * @returns E·I·h/L³ [N]
 *
 * Source: shallow-arch.
 * @example archForceUnit(2000, 6, 0.84, 40, 4.2) // → 0.0388962
 */
export function archForceUnit(modulus: MPa, width: Mm, thickness: Mm, span: Mm, rise: Mm): number {
  return (modulus * width * thickness ** 3 * rise) / (12 * span ** 3);
}
