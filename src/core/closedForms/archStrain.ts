import type { Mm } from '../units.ts';
import { alongAtTravel } from './archAtTravel.ts';
import { MODES, SIDE_MODE, type ArchForm, type ArchState } from './archModes.ts';
import { archPath } from './archPath.ts';

/** Places along half an arch at which it is looked at, and points of its path: fine enough for one part in a thousand. */
const PLACES = Array.from({ length: 41 }, (_, i) => i / 80);
const LOOKS = 120;

/** Curvature of every symmetric mode at every place, per amplitude. */
const CURVATURES = PLACES.map((place) => MODES.map((mode) => mode ** 2 * Math.cos(mode * place)));

/** Curvature of the side mode per amplitude: of 1 − cos 4πx, or of 1 − 2x − cos Nx + (2/N)·sin Nx. */
function sideCurvature(form: ArchForm, place: number): number {
  const mode = SIDE_MODE[form];
  if (form === 'double') return mode ** 2 * Math.cos(mode * place);
  return mode ** 2 * Math.cos(mode * place) - 2 * mode * Math.sin(mode * place);
}

/** Where an arch is strained most on its way. */
export interface ArchHardest {
  /** ε·L²/(t·h). */
  readonly factor: number;
  readonly state: ArchState;
  /** From either wall, as a share of the span, up to a half. */
  readonly place: number;
}

/** Largest change of curvature along an arch, in h/L²; the side mode may have either sign, so half the arch is enough. */
function largestBending(state: ArchState, form: ArchForm): { readonly bending: number; readonly place: number } {
  const amplitudes = MODES.map((mode, j) =>
    j === 0 ? state.first - 0.5 : (-4 * state.force) / (mode ** 2 * (mode ** 2 - state.compression)),
  );
  return PLACES.map((place, i) => {
    const symmetric = amplitudes.reduce((sum, amplitude, j) => sum + amplitude * (CURVATURES[i]?.[j] ?? 0), 0);
    return { bending: Math.abs(symmetric) + Math.abs(state.side * sideCurvature(form, place)), place };
  }).reduce((most, one) => (one.bending > most.bending ? one : most));
}

/**
 * Largest strain of an arch on its way from as made to a travel, of twice the rise unless another is given.
 *
 *     ε = c·t·h/L²,   c = ½·max|Δκ|·L²/h + n/(12·Q)
 *
 * Bending and compression together; thirty symmetric modes and the side mode, shallow arch, fixings that do not give.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param travel - Δ = d/h up to which it is pushed [-], 0 to 2
 * @returns c [-], up to 33.6 for a double arch
 *
 * Source: shallow-arch.
 * @example archStrainFactor(8, 'double') // → 33.6
 */
export function archStrainFactor(ratio: number, form: ArchForm, travel = 2): number {
  return archHardest(ratio, form, travel).factor;
}

/**
 * The state on the way to a travel, and the place along the arch, where its strain is largest.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param travel - Δ = d/h up to which it is pushed [-], 0 to 2
 * @returns factor of the strain, state and place [-]
 *
 * Source: shallow-arch.
 * @example archHardest(8, 'double', 2).factor // → 33.6
 */
export function archHardest(ratio: number, form: ArchForm, travel: number): ArchHardest {
  const key = `${ratio} ${form} ${travel}`;
  const hardest = known.get(key) ?? hardestOnTheWay(ratio, form, travel);
  // A curve over the span asks for one ratio a hundred times, so a few are remembered; the oldest goes first.
  known.delete(key);
  known.set(key, hardest);
  const [oldest] = known.keys();
  if (known.size > REMEMBERED && oldest !== undefined) known.delete(oldest);
  return hardest;
}

const known = new Map<string, ArchHardest>();
const REMEMBERED = 32;

function hardestOnTheWay(ratio: number, form: ArchForm, travel: number): ArchHardest {
  const path = archPath(ratio, form);
  const end = alongAtTravel(ratio, form, travel);
  return Array.from({ length: LOOKS + 1 }, (_, k) => {
    const state = path((end * k) / LOOKS);
    const { bending, place } = largestBending(state, form);
    return { factor: bending / 2 + state.compression / (12 * ratio), state, place };
  }).reduce((most, one) => (one.factor > most.factor ? one : most));
}

/**
 * Largest strain of an arch while flat, from its first mode alone.
 *
 *     c = 3π² + 4π²/(3Q)
 *
 * @param ratio - Q = h/t [-], > 0
 * @returns c, of t·h/L² [-]
 *
 * Source: shallow-arch.
 * @example flatArchStrainFactor(5) // → 32.24
 */
export function flatArchStrainFactor(ratio: number): number {
  return 3 * Math.PI ** 2 + (4 * Math.PI ** 2) / (3 * ratio);
}

/**
 * Strain of an arch from its factor.
 *
 *     ε = c·t·h/L²
 *
 * @param factor - c from `archStrainFactor` [-], > 0
 * @param thickness - t [mm], > 0
 * @param span - L between the fixings [mm], > 0
 * @param rise - h of the middle as made [mm], > 0
 * @returns strain as a fraction [-], > 0
 *
 * Source: shallow-arch.
 * @example archStrain(33.6, 0.84, 40, 4.2) // → 0.0740880
 */
export function archStrain(factor: number, thickness: Mm, span: Mm, rise: Mm): number {
  return (factor * thickness * rise) / span ** 2;
}
