import type { Mm } from '../units.ts';

/**
 * Cross-section area of an extruded bead.
 *
 *     A = h·(w − h) + π·h²/4
 *
 * The section is a stadium: flat above and below, half round at both sides. Needs h ≤ w.
 *
 * @param width - line width w [mm], > 0
 * @param height - layer height h [mm], > 0, at most the width
 * @returns area A [mm²], > 0
 *
 * Source: bead-section.
 * @example beadArea(0.45, 0.2) // → 0.08141593
 */
export function beadArea(width: Mm, height: Mm): number {
  return height * (width - height) + (Math.PI * height * height) / 4;
}

/**
 * How far neighbouring beads overlap so that no gap is left between their round ends.
 *
 *     w − s = h·(1 − π/4)
 *
 * @param height - layer height h [mm], > 0
 * @returns overlap [mm], > 0
 *
 * Source: bead-section.
 * @example beadOverlap(0.2) // → 0.04292037
 */
export function beadOverlap(height: Mm): Mm {
  return height * (1 - Math.PI / 4);
}

/**
 * Spacing of neighbouring beads at which each fills a rectangle s × h and no gap is left.
 *
 *     s = A/h = w − h·(1 − π/4)
 *
 * @param width - line width w [mm], > 0
 * @param height - layer height h [mm], > 0, at most the width
 * @returns spacing s of the centre lines [mm], > 0, below the width
 *
 * Source: bead-section.
 * @example beadSpacing(0.45, 0.2) // → 0.40707963
 */
export function beadSpacing(width: Mm, height: Mm): Mm {
  return width - beadOverlap(height);
}

/**
 * Width of the bead that a measured feed of filament lays.
 *
 *     A = (π·d²/4)·(feed per length),   w = A/h + h·(1 − π/4)
 *
 * Volume is conserved: what goes in as round filament comes out as a stadium.
 *
 * @param filamentDiameter - diameter d of the filament [mm], > 0
 * @param feedPerLength - length of filament fed per length of line [-], > 0
 * @param height - layer height h [mm], > 0
 * @returns line width w [mm], > 0
 *
 * Source: bead-section.
 * @example beadWidthFromFlow(1.75, 0.0333, 0.2) // → 0.44339980
 */
export function beadWidthFromFlow(filamentDiameter: Mm, feedPerLength: number, height: Mm): Mm {
  const area = ((Math.PI * filamentDiameter ** 2) / 4) * feedPerLength;
  return area / height + beadOverlap(height);
}

/**
 * Width of the bead that a feed of filament lays, however little it is.
 *
 *     A = (π·d²/4)·(feed per length);   w = A/h + h·(1 − π/4) where A ≥ π·h²/4, else w = 4·A/(π·h)
 *
 * What is too little for a round section as high as the layer is taken to be an ellipse of that height; both meet at w = h.
 *
 * @param filamentDiameter - diameter d of the filament [mm], > 0
 * @param feedPerLength - length of filament fed per length of line [-], ≥ 0
 * @param height - layer height h [mm], > 0
 * @returns line width w [mm], ≥ 0
 *
 * Source: bead-section.
 * @example laidWidth(1.75, 0.0333, 0.2) // → 0.44339980
 */
export function laidWidth(filamentDiameter: Mm, feedPerLength: number, height: Mm): Mm {
  const area = ((Math.PI * filamentDiameter ** 2) / 4) * feedPerLength;
  const round = (Math.PI * height ** 2) / 4;
  if (area < round) return (4 * area) / (Math.PI * height);
  return beadWidthFromFlow(filamentDiameter, feedPerLength, height);
}
