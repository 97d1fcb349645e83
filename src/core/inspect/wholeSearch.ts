/** Scales and line widths at which as many thin sections as can be land on whole lines or layers, looked for exactly. */
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import { beadOverlap } from '../print/bead.ts';
import { nearestWhole } from '../print/nearestCount.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Mm } from '../units.ts';
import { asLaid } from './asLaid.ts';
import type { Flexure } from './flexure.ts';
import type { PrintedAs } from './judged.ts';
import { WHOLE_WITHIN } from '../design/fit.ts';
import { exactCount, isWholeCount, thicknessAt, type LaidOf } from './landing.ts';

/** Sections of the same thickness that are laid alike. */
export interface Thin {
  /** What lines or layers have to fill, in the part as its file has it. */
  readonly thickness: Mm;
  readonly countOf: LaidOf['countOf'];
  readonly isOnPlate: boolean;
  readonly numbers: readonly number[];
}

/** Thicknesses that agree to half a micron are one. */
const SAME: Mm = 0.0005;

/**
 * The different thicknesses of a part.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - which way is up, print profile [mm]; its scale decides only what lies on the plate
 * @param same - thicknesses that differ by no more are one [mm]
 * @returns thicknesses as in the file [mm], in the order in which they first come
 */
export function thinOf(flexures: readonly Flexure[], box: Box3, as: PrintedAs, same: Mm = SAME): readonly Thin[] {
  const thins: Thin[] = [];
  for (const flexure of flexures) {
    const { thickness: printed, ...laid } = asLaid(flexure, box, as);
    const thickness = Number((printed / as.scale).toFixed(3));
    const at = thins.findIndex((one) => isLaidAlike(one, laid) && Math.abs(one.thickness - thickness) <= same);
    const { countOf, isOnPlate } = laid;
    const one = thins[at] ?? { thickness, countOf, isOnPlate, numbers: [] };
    thins[at < 0 ? thins.length : at] = { ...one, numbers: [...one.numbers, flexure.number] };
  }
  return thins;
}

function isLaidAlike(one: Pick<Thin, 'countOf' | 'isOnPlate'>, other: Pick<Thin, 'countOf' | 'isOnPlate'>): boolean {
  return one.countOf === other.countOf && (one.countOf === 'lines' || one.isOnPlate === other.isOnPlate);
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
export interface CountLine {
  readonly thin: Thin;
  readonly countAt: (value: number) => number;
  readonly valueAt: (count: number) => number;
}

export interface Span {
  readonly min: number;
  readonly max: number;
}

/**
 * How the counts of a part go with its scale.
 *
 * @param thins - thicknesses of the part [mm]
 * @param profile - print profile [mm]
 * @returns for each thickness the count [-] at a scale [-], and the scale at a count
 *
 * Source: bead-section.
 */
export function byScale(thins: readonly Thin[], profile: PrintProfile): readonly CountLine[] {
  return thins.map((thin) => {
    const laid = laidOf(thin, profile);
    return {
      thin,
      countAt: (scale) => exactCount(scale * thin.thickness, laid),
      valueAt: (count) => thicknessAt(count, laid) / thin.thickness,
    };
  });
}

/**
 * How the counts of lines of a part go with the line width. Layers do not ask how wide a line is.
 *
 *     w = (t + (n − 1)·o)/n,   o what neighbours overlap, 0 by the nominal rule
 *
 * @param thins - thicknesses of the part as in the file [mm]
 * @param as - scale and print profile [mm]
 * @returns for each thickness the count [-] at a line width [mm], and the line width at a count, NaN for layers
 *
 * Source: bead-section.
 */
export function byWidth(thins: readonly Thin[], { scale, profile }: PrintedAs): readonly CountLine[] {
  const overlap = profile.fitRule === 'nominal' ? 0 : beadOverlap(profile.layerHeight);
  return thins.map((thin) => {
    const thickness = scale * thin.thickness;
    // Below one line its overlap with a neighbour is not asked for.
    const widthAt = (count: number) => (thickness + Math.max(0, count - 1) * overlap) / count;
    return {
      thin,
      countAt: (lineWidth) => exactCount(thickness, laidOf(thin, { ...profile, lineWidth })),
      valueAt: thin.countOf === 'layers' ? () => Number.NaN : widthAt,
    };
  });
}

/**
 * Every stretch of scales or line widths within a span, by what lands whole there.
 *
 * Not on a grid: a section is whole from where it holds n − 0.05 lines to where it holds n + 0.05. Between two such ends, of any
 * sections, nothing changes; so each place between neighbours is looked at once, and each end.
 *
 * @param lines - how the counts go [-]
 * @param span - least and largest scale [-] or line width [mm]
 * @returns stretches by rising value, those in which nothing is whole left out
 */
export function stretchesOf(lines: readonly CountLine[], span: Span): readonly Stretch[] {
  const stretches: (Stretch & { readonly who: string; readonly off: number })[] = [];
  for (const value of placesOf(lines, span)) {
    const stretch = lookAt(lines, value);
    const last = stretches.at(-1);
    if (last === undefined || last.who !== stretch.who) stretches.push(stretch);
    else if (stretch.off < last.off) stretches[stretches.length - 1] = stretch;
  }
  return stretches.filter(({ whole }) => whole > 0).map(({ value, whole, even }) => ({ value, whole, even }));
}

/** Ends of stretches, the middles of their sections, and a place between each two of all these. */
function placesOf(lines: readonly CountLine[], { min, max }: Span): readonly number[] {
  const ends = lines.flatMap(({ countAt, valueAt }) => {
    const most = Math.ceil(Math.max(countAt(min), countAt(max))) + 1;
    const counts = Array.from({ length: most }, (_, i) => i + 1);
    return counts.flatMap((n) => [n - WHOLE_WITHIN, n, n + WHOLE_WITHIN].map(valueAt));
  });
  const inside = [min, max, ...ends.filter((value) => value > min && value < max)].toSorted((a, b) => a - b);
  return inside.flatMap((value, i) => (i === 0 ? [value] : [(inside[i - 1]! + value) / 2, value]));
}

function lookAt(lines: readonly CountLine[], value: number) {
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
 * A value with as few decimals as keep what lands whole there.
 *
 * @param stretch - as found [-] or [mm]
 * @param decimals - counts of decimals to try, fewest first [-]
 * @param lines - how the counts go [-]
 * @returns the value [-] or [mm]
 */
export function rounded(
  { value, whole, even }: Stretch,
  decimals: readonly number[],
  lines: readonly CountLine[],
): number {
  const tried = decimals.map((count) => Number(value.toFixed(count)));
  const good = tried.find((one) => {
    const there = lookAt(lines, one);
    return there.whole >= whole && there.even >= even;
  });
  return good ?? value;
}
