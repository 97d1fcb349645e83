/** What of a cut layer belongs to a thin section, station by station. */
import type { Mm } from '../../units.ts';
import { COVER_SIZE, type Crossing, type LayerCut } from './cutLayer.ts';
import type { Cut } from './openPlaces.ts';

/** Lines of one cut, or where none runs along it, beads that cover it. */
export interface SectionCut extends Cut {
  readonly lines: readonly Crossing[];
  /** Lines; where there is none, how many beads that hang together cover it. */
  readonly count: number;
}

/**
 * Whether a line belongs to a section: its middle is no farther out than half a line.
 *
 * @param off - of its middle, off the run [mm]
 * @param reach - of the section, square to the run [mm]
 * @param line - how wide its lines usually are [mm]
 * @returns true where it does
 *
 * @example isOnSection(0.5, 0.84, 0.42) // → true
 */
export function isOnSection(off: Mm, reach: Mm, line: Mm): boolean {
  return Math.abs(off) <= (reach + line) / 2 + 1e-6;
}

/** Some beads cover the cut within the section, though none runs along it. */
function isCovered(covers: SectionCut['covers'], half: Mm): boolean {
  for (let i = 0; i < covers.length; i += COVER_SIZE) if (covers[i + 1]! > -half && covers[i]! < half) return true;
  return false;
}

/**
 * The cuts of one layer as the section has them.
 *
 * @param cut - the layer, cut wider than the section [mm]
 * @param reach - of the section, square to the run [mm]
 * @param line - how wide its lines usually are [mm]
 * @returns one a station: its lines and the limits between which it is looked at [mm]
 */
export function sectionCuts({ walks, covers, beads }: LayerCut, reach: Mm, line: Mm): readonly SectionCut[] {
  const lines = covers.map((): Crossing[] => []);
  for (const { crossings } of walks) {
    for (const crossing of crossings) {
      if (isOnSection(crossing.off, reach, line)) lines[crossing.station]!.push(crossing);
    }
  }
  return covers.map((here, k): SectionCut => {
    const own = lines[k]!;
    let low = Infinity;
    let high = -Infinity;
    for (const { off, half } of own) {
      low = Math.min(low, off - half);
      high = Math.max(high, off + half);
    }
    if (own.length > 0) return { lines: own, covers: here, low, high, count: own.length };
    const count = isCovered(here, reach / 2) ? Math.max(1, beads[k]!) : 0;
    return { lines: own, covers: here, low: -reach / 2, high: reach / 2, count };
  });
}

/**
 * From the outer side of one outermost line to that of the other; where no line runs along, of what is covered.
 *
 * @param cut - one station [mm]
 * @returns width [mm], ≥ 0
 */
export function widthAcross({ lines, covers, low, high }: SectionCut): Mm {
  if (lines.length > 0) return high - low;
  let from = Infinity;
  let to = -Infinity;
  for (let i = 0; i < covers.length; i += COVER_SIZE) {
    from = Math.min(from, covers[i]!);
    to = Math.max(to, covers[i + 1]!);
  }
  return Math.max(0, Math.min(high, to) - Math.max(low, from));
}

/** Adds the widths of what lies in a cut to a list. */
export function addWidths({ lines, covers, low, high, count }: SectionCut, widths: number[]): void {
  if (count === 0) return;
  for (const { width } of lines) widths.push(width);
  if (lines.length > 0) return;
  for (let i = 0; i < covers.length; i += COVER_SIZE) {
    if (covers[i + 1]! > low && covers[i]! < high) widths.push(covers[i + 2]!);
  }
}
