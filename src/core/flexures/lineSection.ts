/** What all kinds share whose thin section is lines side by side. */
import type { PrintProfile } from '../print/profile.ts';
import { thicknessOfLines } from '../print/wholeLines.ts';
import type { Mm } from '../units.ts';
import type { Parameter, Section } from './family.ts';

/**
 * The size that counts lines across the thin section.
 *
 * @param max - most of them [-], whole
 * @param beyond - what more of them make, as it stands after “more than 12” [-]
 * @param typical - usual count [-], whole
 * @returns the size [-]
 *
 * @example linesUpTo(8, 'make a block').because // → 'at least one line is laid; more than 8 make a block'
 */
export function linesUpTo(max: number, beyond: string, typical = 2): Parameter {
  const because = `at least one line is laid; more than ${max} ${beyond}`;
  return { kind: 'count', min: 1, max, step: 1, typical, because };
}

/**
 * The thin section of lines side by side.
 *
 * @param sizes - lines across [-] and depth out of the bending plane [mm]
 * @param profile - print profile that has been checked [mm]
 * @returns thickness and width [mm] and the count [-]
 */
export function lineSection(
  { lines, depth }: { readonly lines: number; readonly depth: Mm },
  profile: PrintProfile,
): Section {
  return { thickness: thicknessOfLines(lines, profile), width: depth, count: lines, countOf: 'lines' };
}
