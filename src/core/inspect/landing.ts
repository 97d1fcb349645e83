/**
 * How a thickness falls on whole lines or layers. What a toolpath program does with the rest differs from one to the next; what
 * is said here is common practice without a source, and a first test print beats it:
 *
 * - under 0.9 lines: thinner than the printer lays. Most lay nothing, some one broken line.
 * - 0.9 to 0.95 and 1.05 to 1.95: a closed contour puts two lines across and has no room for both. One is dropped, or both
 *   are squeezed, at 1.5 as well as at 1.2 and 1.8.
 * - 1: one line, laid alone, with no neighbour to carry it.
 * - 2, 4, 6: contours alone; laid as drawn.
 * - 3, 5: whole as well, but the middle line is laid alone, and sticks less to its neighbours than they to one another.
 * - 2.25: the contours leave a quarter of a line open between them; it stays a gap, or a very thin line is squeezed in.
 * - 2.5 and 2.9: half a line or more is left over. A thinner line than set is laid there, or it is dropped.
 *
 * Layers are never squeezed: a web of 2.4 comes out as two whole ones, and one of 2.6 as three. Odd or even is all one to
 * them. Whole means within a twentieth of a line or layer; that is our rule, and never a verdict by itself.
 */
import { VANISHES_BELOW, WHOLE_WITHIN } from '../design/fit.ts';
import { COUNT_ROUND_OFF, nearestWhole } from '../print/nearestCount.ts';
import type { PrintProfile } from '../print/profile.ts';
import { exactLayers, thicknessOfLayers } from '../print/wholeLayers.ts';
import { exactLines, thicknessOfLines } from '../print/wholeLines.ts';
import type { Mm } from '../units.ts';
import type { Landing, LandingState } from './judged.ts';

/** So much of a line left over is half of one. */
const HALF = 0.5;

/** What is laid across the thin way, and of what size. */
export interface LaidOf {
  readonly countOf: 'lines' | 'layers';
  readonly profile: Pick<PrintProfile, 'lineWidth' | 'layerHeight' | 'firstLayerHeight' | 'fitRule'>;
}

/**
 * Thickness of a count of lines or layers that need not be whole: the inverse of how many lie in a thickness.
 *
 * @param count - lines or layers with their fraction [-], > 0
 * @param laid - what is counted, and the print profile [mm]
 * @returns thickness [mm], > 0
 *
 * Source: bead-section.
 * @example thicknessAt(1.5, { countOf: 'lines', profile: { lineWidth: 0.42, layerHeight: 0.2, firstLayerHeight: 0.2, fitRule: 'nominal' } }) // → 0.63
 */
export function thicknessAt(count: number, { countOf, profile }: LaidOf): Mm {
  if (countOf === 'lines') return count < 1 ? count * profile.lineWidth : thicknessOfLines(count, profile);
  return count < 1 ? count * profile.firstLayerHeight : thicknessOfLayers(count, profile);
}

/**
 * How many lines or layers lie in a thickness, with the fraction.
 *
 * @param thickness - as the plate, or the build direction, cuts it [mm], > 0
 * @param laid - what is counted, and the print profile [mm]
 * @returns count [-], > 0
 *
 * Source: bead-section.
 * @example exactCount(0.63, { countOf: 'lines', profile: { lineWidth: 0.42, layerHeight: 0.2, firstLayerHeight: 0.2, fitRule: 'nominal' } }) // → 1.5
 */
export function exactCount(thickness: Mm, { countOf, profile }: LaidOf): number {
  return countOf === 'lines' ? exactLines(thickness, profile) : exactLayers(thickness, profile);
}

/** Whether a count with its fraction is as near to a whole one as counts. */
export function isWholeCount(exact: number): boolean {
  return Math.abs(exact - nearestWhole(exact).count) <= WHOLE_WITHIN + COUNT_ROUND_OFF;
}

/**
 * How a thickness falls on lines or layers.
 *
 * @param thickness - as the plate, or the build direction, cuts it [mm], > 0
 * @param laid - what is counted, and the print profile [mm]
 * @returns counts [-], state, and what is left over beside the whole lines below it [mm]
 *
 * Source: common-practice.
 * @example landingOf(0.84, { countOf: 'lines', profile: { lineWidth: 0.56, layerHeight: 0.2, firstLayerHeight: 0.2, fitRule: 'nominal' } }) // → { exact: 1.5, nearest: 1, state: 'squeezed', left: 0.28 }
 */
export function landingOf(thickness: Mm, laid: LaidOf): Landing {
  const exact = exactCount(thickness, laid);
  const { count: nearest } = nearestWhole(exact);
  const state = stateOf(exact, nearest, laid.countOf);
  const isWhole = state === 'whole' || state === 'odd';
  const below = Math.floor(exact + COUNT_ROUND_OFF);
  const left = isWhole ? 0 : thickness - (below === 0 ? 0 : thicknessAt(below, laid));
  return { countOf: laid.countOf, exact, nearest, state, left };
}

function stateOf(exact: number, nearest: number, countOf: Landing['countOf']): LandingState {
  if (isWholeCount(exact)) return countOf === 'lines' && nearest % 2 === 1 ? 'odd' : 'whole';
  if (exact < VANISHES_BELOW) return 'not-laid';
  // Between one line and two there is no room for the second line of a contour, however little is left over.
  if (countOf === 'lines' && exact < 2) return 'squeezed';
  return exact - Math.floor(exact) < HALF - COUNT_ROUND_OFF ? 'gap' : 'squeezed';
}
