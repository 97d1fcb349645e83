import { findRoot } from '../numeric/roots.ts';
import {
  amplitudesAt,
  archState,
  SIDE_MODE,
  sideModeRatio,
  spareShortening,
  type ArchForm,
  type ArchState,
} from './archModes.ts';

/** The path of one arch from as made to a travel of twice the rise, by a parameter from 0 to 3. */
export type ArchPath = (along: number) => ArchState;

/** Travel at which the path ends, over the rise: the mirror image of the arch as made. */
const MIRRORED = 2;

/**
 * The path of an arch as its middle is pushed through.
 *
 * Three parts: compression rises (parameter 0 to 1), stays while the side mode grows and goes again (1 to 2), falls (2 to
 * 3). An arch too flat for its side mode goes straight from the first to the third.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @returns states by a parameter from 0, as made, to 3, at a travel of twice the rise [-]
 *
 * Source: shallow-arch.
 * @example archPath(5, 'double')(1) // → { force: 693.82656, travel: 0.2349036 }
 */
export function archPath(ratio: number, form: ArchForm): ArchPath {
  if (!(ratio > 0)) throw new RangeError(`a rise of more than 0 thicknesses is needed, not ${ratio}`);
  const most = mostCompression(ratio, form);
  const { before, after } = amplitudesAt(ratio, most);
  const goneThrough = (n: number) => archState(ratio, form, n, amplitudesAt(ratio, n).after);
  const last = rootOf((n) => goneThrough(n).travel - MIRRORED, 0, most);
  return (along) => {
    if (along < 1) {
      // Squares, because near the greatest compression the amplitude goes as the root of what is missing.
      const n = most * along * (2 - along);
      return archState(ratio, form, n, amplitudesAt(ratio, n).before);
    }
    if (along <= 2) return archState(ratio, form, most, before + (along - 1) * (after - before));
    return goneThrough(most - (most - last) * (along - 2) ** 2);
  };
}

function mostCompression(ratio: number, form: ArchForm): number {
  const atSide = SIDE_MODE[form] ** 2;
  if (ratio >= sideModeRatio(form)) return atSide;
  return rootOf((n) => spareShortening(ratio, n), 0, atSide);
}

function rootOf(f: (x: number) => number, low: number, high: number): number {
  const found = findRoot(f, low, high, 0);
  if (!found.ok) throw new RangeError(`an arch path has no root between ${low} and ${high}`);
  return found.value.value;
}
