/** Scales and line widths at which as many thin sections as can be land on whole lines or layers, looked for exactly. */
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import { beadOverlap } from '../print/bead.ts';
import { nearestWhole } from '../print/nearestCount.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Mm } from '../units.ts';
import { asLaid } from './asLaid.ts';
import type { Flexure } from './flexure.ts';
import type { PrintedAs } from './judged.ts';
import { exactCount, isWholeCount, thicknessAt, WHOLE_WITHIN, type LaidOf } from './landing.ts';

/** Sections of the same thickness that are laid alike. */
export interface Thin {
  /** What lines or layers have to fill, in the part as its file has it. */
  readonly thickness: Mm;
  readonly countOf: LaidOf['countOf'];
  readonly isOnPlate: boolean;
  readonly numbers: readonly number[];
}

/**
 * The different thicknesses of a part; those that agree to a micron are one.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - which way is up, print profile [mm]; its scale decides only what lies on the plate
 * @returns thicknesses as in the file [mm], in the order in which they first come
 */
export function thinOf(flexures: readonly Flexure[], box: Box3, as: PrintedAs): readonly Thin[] {
  const kinds = new Map<string, Thin>();
  for (const flexure of flexures) {
    const { countOf, isOnPlate, thickness: printed } = asLaid(flexure, box, as);
    const thickness = Number((printed / as.scale).toFixed(3));
    const key = `${countOf} ${countOf === 'layers' && isOnPlate} ${thickness}`;
    const numbers = [...(kinds.get(key)?.numbers ?? []), flexure.number];
    kinds.set(key, { thickness, countOf, isOnPlate, numbers });
  }
  return [...kinds.values()];
}

/**
 * What is counted in a thickness of a part, with the settings that act there.
 *
 * @param thin - a thickness of the part [mm]
 * @param profile - print profile [mm]
 * @returns what is counted, and the settings [mm]
 */
export function laidOf({ countOf, isOnPlate }: Thin, profile: PrintProfile): LaidOf {
  const isAllAlike = countOf === 'layers' && !isOnPlate;
  return { countOf, profile: isAllAlike ? { ...profile, firstLayerHeight: profile.layerHeight } : profile };
}

/** A stretch of values in which the same sections land whole, told by the value at which they land best. */
export interface Stretch {
  readonly value: number;
  /** How many sections land whole there, and how many of them on an even count of lines, or on layers. */
  readonly whole: number;
  readonly even: number;
}

/** How many lines or layers lie in a thickness at a value, and the value at which a count of them does. */
interface Line {
  readonly thin: Thin;
  readonly countAt: (value: number) => number;
  readonly valueAt: (count: number) => number;
}

interface Range {
  readonly min: number;
  readonly max: number;
}

/**
 * Every stretch of scales within a range, by what lands whole there.
 *
 * Not on a grid: a section is whole from s = T(n − 0.05)/t to T(n + 0.05)/t, T(n) being the thickness of n lines. Between two
 * such ends, of any sections, nothing changes; so each place between neighbours is looked at once, and each end.
 *
 * @param thins - thicknesses of the part [mm]
 * @param profile - print profile [mm]
 * @param range - least and largest scale [-]
 * @returns stretches by rising scale, those in which nothing is whole left out
 *
 * Source: bead-section.
 */
export function wholeScales(thins: readonly Thin[], profile: PrintProfile, range: Range): readonly Stretch[] {
  const lines = thins.map((thin): Line => {
    const laid = laidOf(thin, profile);
    return {
      thin,
      countAt: (scale) => exactCount(scale * thin.thickness, laid),
      valueAt: (count) => thicknessAt(count, laid) / thin.thickness,
    };
  });
  return stretchesOf(lines, range);
}

/**
 * Every stretch of line widths within a range, by what lands whole there. Layers do not ask how wide a line is.
 *
 *     w = (t + (n − 1)·o)/n,   o what neighbours overlap, 0 by the nominal rule
 *
 * @param thins - thicknesses of the part as in the file [mm]
 * @param as - scale and print profile [mm]
 * @param range - least and largest line width [mm]
 * @returns stretches by rising width, those in which nothing is whole left out
 *
 * Source: bead-section.
 */
export function wholeWidths(thins: readonly Thin[], { scale, profile }: PrintedAs, range: Range): readonly Stretch[] {
  const overlap = profile.fitRule === 'nominal' ? 0 : beadOverlap(profile.layerHeight);
  const lines = thins.map((thin): Line => {
    const thickness = scale * thin.thickness;
    return {
      thin,
      countAt: (lineWidth) => exactCount(thickness, laidOf(thin, { ...profile, lineWidth })),
      valueAt: (count) => (thin.countOf === 'layers' ? Number.NaN : widthAt(thickness, count, overlap)),
    };
  });
  return stretchesOf(lines, range);
}

/** Below one line its overlap with a neighbour is not asked for. */
function widthAt(thickness: Mm, count: number, overlap: Mm): Mm {
  return (thickness + Math.max(0, count - 1) * overlap) / count;
}

function stretchesOf(lines: readonly Line[], range: Range): readonly Stretch[] {
  const stretches: (Stretch & { readonly who: string; readonly off: number })[] = [];
  for (const value of placesOf(lines, range)) {
    const stretch = lookAt(lines, value);
    const last = stretches.at(-1);
    if (last === undefined || last.who !== stretch.who) stretches.push(stretch);
    else if (stretch.off < last.off) stretches[stretches.length - 1] = stretch;
  }
  return stretches.filter(({ whole }) => whole > 0).map(({ value, whole, even }) => ({ value, whole, even }));
}

/** Ends of stretches, the middles of their sections, and a place between each two of all these. */
function placesOf(lines: readonly Line[], { min, max }: Range): readonly number[] {
  const ends = lines.flatMap(({ countAt, valueAt }) => {
    const most = Math.ceil(Math.max(countAt(min), countAt(max))) + 1;
    const counts = Array.from({ length: most }, (_, i) => i + 1);
    return counts.flatMap((n) => [n - WHOLE_WITHIN, n, n + WHOLE_WITHIN].map(valueAt));
  });
  const inside = [min, max, ...ends.filter((value) => value > min && value < max)].toSorted((a, b) => a - b);
  return inside.flatMap((value, i) => (i === 0 ? [value] : [(inside[i - 1]! + value) / 2, value]));
}

function lookAt(lines: readonly Line[], value: number) {
  let [whole, even, off, who] = [0, 0, 0, ''];
  for (const { thin, countAt } of lines) {
    const exact = countAt(value);
    if (!isWholeCount(exact)) continue;
    const { count } = nearestWhole(exact);
    const sections = thin.numbers.length;
    whole += sections;
    even += thin.countOf === 'layers' || count % 2 === 0 ? sections : 0;
    off = Math.max(off, Math.abs(exact - count));
    who += `${thin.numbers[0]}:${count} `;
  }
  return { value, whole, even, off, who };
}

/**
 * What lands whole at one value of its kind, for a value that has been rounded.
 *
 * @param stretches - looked for in a range that holds nothing but this value [-]
 * @returns counts of sections [-], none where nothing is whole
 */
export function countsOf(stretches: readonly Stretch[]): Pick<Stretch, 'whole' | 'even'> {
  return stretches[0] ?? { whole: 0, even: 0 };
}

/**
 * A value with as few decimals as keep what lands whole there.
 *
 * @param stretch - as found [-] or [mm]
 * @param decimals - counts of decimals to try, fewest first [-]
 * @param lookAgain - what lands whole at one value [-]
 * @returns the value [-] or [mm]
 */
export function rounded(
  { value, whole, even }: Stretch,
  decimals: readonly number[],
  lookAgain: (value: number) => readonly Stretch[],
): number {
  const tried = decimals.map((count) => Number(value.toFixed(count)));
  const good = tried.find((one) => {
    const there = countsOf(lookAgain(one));
    return there.whole >= whole && there.even >= even;
  });
  return good ?? value;
}
