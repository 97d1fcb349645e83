import type { UnitRead } from './checkedPart.ts';
import { MM_IN, type LengthUnit } from './lengthUnit.ts';
import type { Mm } from '../units.ts';

/**
 * Longest side of what desktop printers print [mm]: below it hardly a part with something thin in it, above it hardly a
 * plate that takes it. Parts under the usual are printed, but seldom. Common practice, no source.
 */
const PRINTED: { readonly least: Mm; readonly usual: Mm; readonly most: Mm } = { least: 5, usual: 10, most: 400 };
/** From here on nobody doubts millimetres, though centimetres would give a part that can be printed as well. */
const SURELY_MM: Mm = 20;
/** In which units part files without one are drawn, the more usual first. Common practice, no source. */
const BY_USE: readonly LengthUnit[] = ['millimetre', 'inch', 'centimetre', 'metre', 'foot', 'micron'];

/**
 * In what unit a part is to be read: the one that the user tells, else the one that the file states, else the most usual one in
 * which the part is of a size that printers print.
 *
 * @param longest - longest side of the part's box [in the unit of the file], ≥ 0
 * @param stated - unit that the file states [-]
 * @param told - unit that the user tells [-]
 * @returns the unit and why, with others that are likely as well where it was guessed or gives a size nobody prints
 *
 * @example unitOf(1.811).unit // → "inch"
 * @example unitOf(82).orElse // → []
 */
export function unitOf(longest: number, stated?: LengthUnit, told?: LengthUnit): UnitRead {
  if (told !== undefined) return { unit: told, by: 'told', orElse: [] };
  const likely = BY_USE.filter((unit) => isPrinted(longest * MM_IN[unit]));
  if (stated !== undefined) {
    return { unit: stated, by: 'stated', orElse: isPrinted(longest * MM_IN[stated]) ? [] : likely };
  }
  const usual = likely.find((unit) => longest * MM_IN[unit] >= PRINTED.usual);
  const unit = usual ?? likely[0] ?? nearest(longest);
  const isSure = unit === 'millimetre' && longest >= SURELY_MM;
  return { unit, by: 'sized', orElse: isSure ? [] : likely.filter((other) => other !== unit) };
}

function isPrinted(side: Mm): boolean {
  return side >= PRINTED.least && side <= PRINTED.most;
}

/** Where no unit will do, the one that misses by the least factor; millimetres where there is no size. */
function nearest(longest: number): LengthUnit {
  if (!(longest > 0)) return 'millimetre';
  const miss = (unit: LengthUnit) => {
    const side = longest * MM_IN[unit];
    return side < PRINTED.least ? PRINTED.least / side : side / PRINTED.most;
  };
  return BY_USE.reduce((best, unit) => (miss(unit) < miss(best) ? unit : best));
}
