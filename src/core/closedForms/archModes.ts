/** How an arch is kept from leaning: `double` joins two side by side at the middle, `free` is one alone. */
export type ArchForm = 'double' | 'free';

/** Column modes of a clamped leaf that an arch with a load in the middle takes: 2π, 6π, 10π, … */
export const MODES: readonly number[] = Array.from({ length: 30 }, (_, j) => (4 * j + 2) * Math.PI);
export const FIRST = 2 * Math.PI;
const HIGHER = MODES.slice(1);

/** The first mode that carries no load in the middle; the second number is twice the first root of tan x = x. */
export const SIDE_MODE: Readonly<Record<ArchForm, number>> = { double: 4 * Math.PI, free: 8.986818915818128 };

/** Share of shortening that the arch is made with, ΣA²N²/4 at A₁ = ½. */
export const MADE = Math.PI ** 2 / 4;

/** Force in E·I·h/L³ on an arch whose first mode is gone; half of it undoes the as-made curvature. */
const FLAT_FORCE = FIRST ** 4 / 8;

/** One state of an arch, in figures without dimension. */
export interface ArchState {
  /** Travel of the middle over the rise, Δ = d/h. */
  readonly travel: number;
  /** F = f·L³/(E·I·h). */
  readonly force: number;
  /** n = p·L²/(E·I). */
  readonly compression: number;
  /** A₁, over the rise. */
  readonly first: number;
  /** Amplitude of the mode that leans or wriggles aside, over the rise; either sign is as good. */
  readonly side: number;
}

/** What the higher modes add, and how force goes with the first mode: F = FLAT_FORCE − fall·A₁. */
interface Sums {
  readonly fall: number;
  /** Δ = 1 − 2·A₁ + give·F. */
  readonly give: number;
  /** Shortening of the higher modes over F². */
  readonly squares: number;
}

function sumsAt(compression: number): Sums {
  let [give, squares] = [0, 0];
  for (const mode of HIGHER) {
    const away = mode ** 2 - compression;
    give += 8 / (mode ** 2 * away);
    squares += 4 / (mode * away) ** 2;
  }
  return { fall: (FIRST ** 2 * (FIRST ** 2 - compression)) / 4, give, squares };
}

/**
 * State of an arch at a compression and an amplitude of its first mode; what shortening is left goes into the side mode.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param compression - n = p·L²/(E·I) [-]
 * @param first - A₁ over the rise [-]
 * @returns the state [-]
 *
 * Source: shallow-arch.
 * @example archState(5, 'double', 0, 0.5) // → { travel: 0, force: 0, side: 0 }
 */
export function archState(ratio: number, form: ArchForm, compression: number, first: number): ArchState {
  const { fall, give, squares } = sumsAt(compression);
  const force = FLAT_FORCE - fall * first;
  const taken = (FIRST * first) ** 2 / 4 + squares * force ** 2;
  const left = allowed(ratio, compression) - taken;
  const side = (2 * Math.sqrt(Math.max(0, left))) / SIDE_MODE[form];
  // On the branches without a side mode what is left is round-off.
  return { travel: 1 - 2 * first + give * force, force, compression, first, side: left > 1e-12 ? side : 0 };
}

/** ΣA²N²/4 that a compression leaves: n = 12·Q²·(S₀ − S). */
function allowed(ratio: number, compression: number): number {
  return MADE - compression / (12 * ratio ** 2);
}

/** The two amplitudes of the first mode at which an arch without side mode is in balance under a compression. */
export interface Amplitudes {
  readonly before: number;
  readonly after: number;
}

/**
 * Amplitudes of the first mode at a compression, before and after the arch has gone through.
 *
 * A quadratic equation: S = N₁²A₁²/4 + squares·F² with F linear in A₁.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param compression - n = p·L²/(E·I) [-], ≥ 0
 * @returns both amplitudes [-]; where the arch cannot be compressed so far, those at which it comes nearest to it
 *
 * Source: shallow-arch.
 * @example amplitudesAt(5, 0).before // → 0.500000
 */
export function amplitudesAt(ratio: number, compression: number): Amplitudes {
  const { fall, squares } = sumsAt(compression);
  const a = FIRST ** 2 / 4 + squares * fall ** 2;
  const half = squares * fall * FLAT_FORCE;
  const inner = half ** 2 - a * (squares * FLAT_FORCE ** 2 - allowed(ratio, compression));
  const root = Math.sqrt(Math.max(0, inner));
  return { before: (half + root) / a, after: (half - root) / a };
}

/**
 * Shortening that is left when an arch without side mode is in balance with the least that it can have, S = ΣA²N²/4.
 *
 * Zero where the path without side mode turns back; from there on the compression falls again.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param compression - n = p·L²/(E·I) [-], ≥ 0
 * @returns what is left [-], below 0 where the arch cannot be compressed so far
 *
 * Source: shallow-arch.
 * @example spareShortening(1, 4 * Math.PI ** 2) // → -0.82695106
 */
export function spareShortening(ratio: number, compression: number): number {
  return allowed(ratio, compression) - leastShortening(compression);
}

function leastShortening(compression: number): number {
  const { fall, squares } = sumsAt(compression);
  const own = FIRST ** 2 / 4;
  return (squares * FLAT_FORCE ** 2 * own) / (own + squares * fall ** 2);
}

/**
 * Least ratio of rise to thickness at which an arch reaches its side mode and loses force on a straight line.
 *
 * @param form - how it is kept from leaning [-]
 * @returns Q = h/t [-]
 *
 * Source: shallow-arch.
 * @example sideModeRatio('double') // → 2.31446308
 */
export function sideModeRatio(form: ArchForm): number {
  const compression = SIDE_MODE[form] ** 2;
  return Math.sqrt(compression / (12 * (MADE - leastShortening(compression))));
}

/** A force that falls on a straight line with travel: F = intercept + slope·Δ. */
export interface StraightBranch {
  readonly intercept: number;
  readonly slope: number;
}

/**
 * The straight part of the path of an arch, while its side mode grows and its compression stays.
 *
 *     F = intercept + slope·Δ at n = (4π)² with the second mode kept away, n = N₂² for one arch alone
 *
 * @param form - how it is kept from leaning [-]
 * @returns intercept and slope, F in E·I·h/L³ and Δ in h [-]
 *
 * Source: shallow-arch.
 * @example straightBranch('double') // → { intercept: 842.20414, slope: -631.6531 }
 */
export function straightBranch(form: ArchForm): StraightBranch {
  const { fall, give } = sumsAt(SIDE_MODE[form] ** 2);
  const slope = 1 / (2 / fall + give);
  return { slope, intercept: slope * ((2 * FLAT_FORCE) / fall - 1) };
}
