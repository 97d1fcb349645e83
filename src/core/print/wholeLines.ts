import { plain, type Problem } from '../problems.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Mm } from '../units.ts';
import { beadOverlap, beadSpacing } from './bead.ts';
import { isAbove, isBelow, layableWidths } from './checkProfile.ts';
import { COUNT_ROUND_OFF, nearestWhole, type NearestCount } from './nearestCount.ts';
import type { PrintProfile } from './profile.ts';

/** The settings that decide how thick lines side by side come out. */
export type LineSettings = Pick<PrintProfile, 'lineWidth' | 'layerHeight' | 'fitRule'>;

/** A whole number of lines side by side and how thick they are [mm]. */
export interface WholeLines {
  readonly count: number;
  readonly thickness: Mm;
}

/** Distance between the centre lines of neighbours under each rule [mm]. */
function pitch({ lineWidth, layerHeight, fitRule }: LineSettings): Mm {
  return fitRule === 'nominal' ? lineWidth : beadSpacing(lineWidth, layerHeight);
}

/**
 * Thickness of n lines side by side.
 *
 *     nominal:     t = n·w
 *     overlapped:  t = (n − 1)·s + w,   s = w − h·(1 − π/4)
 *
 * The nominal rule is common practice; the overlapped one is what beads of conserved area make.
 *
 * @param count - lines across n [-], whole, ≥ 1
 * @param settings - line width, layer height and fit rule [mm]
 * @returns thickness t [mm], > 0
 *
 * Source: bead-section.
 * @example thicknessOfLines(2, { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'nominal' }) // → 0.84
 * @example thicknessOfLines(2, { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'overlapped' }) // → 0.79707963
 */
export function thicknessOfLines(count: number, settings: LineSettings): Mm {
  return settings.fitRule === 'nominal'
    ? count * settings.lineWidth
    : (count - 1) * pitch(settings) + settings.lineWidth;
}

/**
 * How many lines lie in a thickness, with the fraction: the inverse of `thicknessOfLines`. Below one line it is the
 * share of that line under both rules, so that it falls to 0 with the thickness.
 *
 * @param thickness - t [mm], > 0
 * @param settings - line width, layer height and fit rule [mm]
 * @returns lines [-], > 0
 *
 * Source: bead-section.
 * @example exactLines(1.0, { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'nominal' }) // → 2.380952
 */
export function exactLines(thickness: Mm, settings: LineSettings): number {
  const { lineWidth } = settings;
  return thickness < lineWidth ? thickness / lineWidth : 1 + (thickness - lineWidth) / pitch(settings);
}

/**
 * The whole number of lines nearest to a thickness, at least one. Ties go down: see `nearestWhole`.
 *
 * @param thickness - t [mm], > 0
 * @param settings - line width, layer height and fit rule [mm]
 * @returns exact and nearest count [-], thickness of the nearest [mm], and whether it was a tie
 *
 * Source: bead-section.
 * @example nearestLines(1.05, { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'nominal' }) // → { exact: 2.5, count: 2, thickness: 0.84, tie: true }
 */
export function nearestLines(thickness: Mm, settings: LineSettings): NearestCount {
  const exact = exactLines(thickness, settings);
  const { count, tie } = nearestWhole(exact);
  return { exact, count, thickness: thicknessOfLines(count, settings), tie };
}

/**
 * The largest whole number of lines that is not thicker than a target.
 *
 * Rounds down, because strain grows with thickness: the printed part must not strain more than the part asked for.
 *
 * @param target - thickness wanted [mm], > 0
 * @param settings - line width, layer height and fit rule [mm]
 * @returns count [-] and thickness [mm], with the notes of `explainCount`
 *
 * Problems: `not-a-number`, `below-minimum` (target not above 0), `thinner-than-one-line`.
 *
 * Source: bead-section.
 * @example wholeLines(1.0, { lineWidth: 0.45, layerHeight: 0.2, fitRule: 'nominal' }) // → { count: 2, thickness: 0.9 }
 */
export function wholeLines(target: Mm, settings: LineSettings): Result<WholeLines> {
  if (!Number.isFinite(target)) {
    return fail({
      code: 'not-a-number',
      message: 'The thickness is not a number; give one above 0 mm',
      field: 'thickness',
      value: String(target),
    });
  }
  if (!(target > 0)) {
    return fail({
      code: 'below-minimum',
      message: `A thickness of ${plain(target)} mm is not above 0 mm; raise it`,
      field: 'thickness',
      value: target,
      limit: 0,
    });
  }
  const count = Math.floor(exactLines(target, settings) + COUNT_ROUND_OFF);
  if (count < 1) {
    const { lineWidth } = settings;
    return fail({
      code: 'thinner-than-one-line',
      message: `A thickness of ${plain(target)} mm is thinner than one line of ${plain(lineWidth)} mm, so nothing is laid; thicken it or narrow the line`,
      field: 'thickness',
      value: target,
      limit: lineWidth,
    });
  }
  return ok({ count, thickness: thicknessOfLines(count, settings) }, explainCount(count));
}

/**
 * Contours that lay a whole number of lines: each closed contour puts two lines across, an odd one runs in the middle.
 *
 * @param count - lines across [-], whole, ≥ 1
 * @returns contours [-], ≥ 0, and whether one more line runs along the middle
 *
 * @example contoursFor(5) // → { contours: 2, middleLine: true }
 */
export function contoursFor(count: number): { readonly contours: number; readonly middleLine: boolean } {
  return { contours: Math.floor(count / 2), middleLine: count % 2 === 1 };
}

/**
 * How far inside the outline the centre line of each contour runs, outermost first.
 *
 *     d_k = w/2 + k·p,   p = w (nominal) or s (overlapped)
 *
 * @param count - lines across [-], whole, ≥ 1
 * @param settings - line width, layer height and fit rule [mm]
 * @returns one distance per closed contour [mm]; a middle line is not among them
 *
 * Source: bead-section.
 * @example contourInsets(4, { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'nominal' }) // → [0.21, 0.63]
 */
export function contourInsets(count: number, settings: LineSettings): readonly Mm[] {
  return Array.from({ length: contoursFor(count).contours }, (_, k) => settings.lineWidth / 2 + k * pitch(settings));
}

/**
 * The line width at which a count of lines is exactly as thick as asked.
 *
 *     nominal:     w = t/n
 *     overlapped:  w = (t + (n − 1)·h·(1 − π/4))/n
 *
 * @param thickness - thickness wanted t [mm], > 0
 * @param count - lines across n [-], whole, ≥ 1
 * @param settings - layer height and fit rule [mm]
 * @param nozzle - diameter of the nozzle [mm], > 0
 * @returns line width [mm], with a note where the nozzle lays it less well
 *
 * Problems: `width-not-layable` (outside what the nozzle lays, or narrower than the layer is high).
 * Notes: `line-narrow-for-nozzle`, `line-wide-for-nozzle`.
 *
 * Source: bead-section.
 * @example lineWidthFor(1.0, 2, { layerHeight: 0.2, fitRule: 'nominal' }, 0.4) // → 0.5
 */
export function lineWidthFor(
  thickness: Mm,
  count: number,
  settings: Pick<LineSettings, 'layerHeight' | 'fitRule'>,
  nozzle: Mm,
): Result<Mm> {
  const { layerHeight, fitRule } = settings;
  const overlap = fitRule === 'nominal' ? 0 : beadOverlap(layerHeight);
  const width = (thickness + (count - 1) * overlap) / count;
  const { hard, soft } = layableWidths(nozzle);
  const least = Math.max(hard.min, layerHeight);
  const said = `${plain(count)} lines in ${plain(thickness)} mm need a line width of ${plain(width)} mm`;
  const problem = (code: Problem['code'], limit: Mm, why: string): Problem => ({
    code,
    message: `${said}, ${why}`,
    field: 'profile.lineWidth',
    value: width,
    limit,
  });

  if (isBelow(width, least)) {
    return fail(problem('width-not-layable', least, `below the ${plain(least)} mm that can be laid; take fewer lines`));
  }
  if (isAbove(width, hard.max)) {
    return fail(
      problem('width-not-layable', hard.max, `above the ${plain(hard.max)} mm that can be laid; take more lines`),
    );
  }
  if (isBelow(width, soft.min))
    return ok(width, [
      problem('line-narrow-for-nozzle', soft.min, `under ${plain(soft.min)} mm, where lines come out uneven`),
    ]);
  if (isAbove(width, soft.max))
    return ok(width, [
      problem('line-wide-for-nozzle', soft.max, `over ${plain(soft.max)} mm, where lines are pressed together poorly`),
    ]);
  return ok(width);
}

/**
 * What deserves a caution about a number of lines across.
 *
 * @param count - lines across [-], whole, ≥ 1
 * @returns notes [-]: `single-line` or `odd-lines`, or none
 *
 * Source: common-practice.
 */
export function explainCount(count: number): readonly Problem[] {
  if (count === 1) {
    return [
      {
        code: 'single-line',
        message:
          'A single line across has no neighbour to carry it where it is thin, and a closed contour cannot lay it; two lines are safer (common practice, no source)',
        field: 'sizes.lines',
        value: count,
        limit: 2,
      },
    ];
  }
  if (count % 2 === 1) {
    return [
      {
        code: 'odd-lines',
        message: `${plain(count)} lines across are ${plain((count - 1) / 2)} contours and a middle line that is laid on its own; an even count is laid by contours alone (common practice, no source)`,
        field: 'sizes.lines',
        value: count,
      },
    ];
  }
  return [];
}
