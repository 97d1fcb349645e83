/** Where neighbouring lines of a thin section are laid closer than their filament has room for. */
import { beadSpacing } from '../../print/bead.ts';
import type { Mm } from '../../units.ts';
import type { Pressed } from './audit.ts';
import type { SectionCut } from './sectionCuts.ts';

/** Between neighbours so much is told [mm]: as for gaps, places and widths are no better. */
const TOLD_OVER: Mm = 0.02;

/**
 * How wide the rectangle is that a bead's plastic fills at the height of its layer: A/h.
 *
 * @param width - of the bead, seen from above [mm], ≥ 0
 * @param height - of its layer [mm], > 0
 * @returns width of the rectangle [mm]
 *
 * Source: bead-section.
 * @example roomFor(0.45, 0.2) // → 0.40707963
 */
export function roomFor(width: Mm, height: Mm): Mm {
  return width < height ? (Math.PI / 4) * width : beadSpacing(width, height);
}

/**
 * How much closer neighbours lie than they have room for.
 *
 * Beads that are spaced by A/h fill their layer without a gap; closer, what is too much goes up or out.
 *
 * @param cuts - of one layer, those that are looked at [mm]
 * @param height - of the layer [mm]
 * @returns the most of it [mm], and in which share of the cuts there is any [-]
 *
 * Source: bead-section.
 */
export function pressedIn(cuts: readonly SectionCut[], height: Mm): Pressed {
  let most = 0;
  let pressed = 0;
  for (const { lines } of cuts) {
    const sorted = lines.toSorted((a, b) => a.off - b.off);
    let here = 0;
    for (let i = 1; i < sorted.length; i += 1) {
      const [a, b] = [sorted[i - 1]!, sorted[i]!];
      const room = (roomFor(a.width, height) + roomFor(b.width, height)) / 2;
      here = Math.max(here, room - (b.off - a.off));
    }
    most = Math.max(most, here);
    if (here > TOLD_OVER) pressed += 1;
  }
  return { most: most > TOLD_OVER ? most : 0, share: cuts.length > 0 ? pressed / cuts.length : 0 };
}
