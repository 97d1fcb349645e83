/** Scales, and line widths, at which thin sections fall on whole lines, as the charts show them. */
import type { Box3 } from '../../core/geometry/mesh/triangleMesh.ts';
import { asLaid } from '../../core/inspect/asLaid.ts';
import type { Flexure } from '../../core/inspect/flexure.ts';
import type { PrintedAs } from '../../core/inspect/judged.ts';
import { exactCount } from '../../core/inspect/landing.ts';
import { byScale, byWidth, stretchesOf, thinOf, type Stretch } from '../../core/inspect/wholeSearch.ts';
import { beadOverlap } from '../../core/print/bead.ts';

/** How many lines or layers a thin section is across in a print. */
export function countIn(flexure: Flexure, box: Box3, as: PrintedAs): number {
  const laid = asLaid(flexure, box, as);
  return exactCount(laid.thickness, laid);
}

/** A place at which all are whole at once. */
export interface WholePlace {
  readonly at: number;
  /** One count for each, in their order. */
  readonly counts: readonly number[];
  readonly isEven: boolean;
}

type Span = readonly [number, number];

function placesOf(stretches: readonly Stretch[], all: number, countsAt: (at: number) => readonly number[]) {
  return stretches
    .filter(({ whole }) => whole === all)
    .map(({ value: at, even }): WholePlace => ({ at, counts: countsAt(at).map(Math.round), isEven: even === all }));
}

/** Scales within a range at which all are whole; lines and layers alike. */
export function scalesForAll(flexures: readonly Flexure[], box: Box3, as: PrintedAs, [min, max]: Span) {
  const stretches = stretchesOf(byScale(thinOf(flexures, box, as), as.profile), { min, max });
  return placesOf(stretches, flexures.length, (scale) =>
    flexures.map((flexure) => countIn(flexure, box, { ...as, scale })),
  );
}

/** Widths within a range at which all these are whole, which are counted in lines. */
export function widthsForAll(flexures: readonly Flexure[], box: Box3, as: PrintedAs, [min, max]: Span) {
  const stretches = stretchesOf(byWidth(thinOf(flexures, box, as), as), { min, max });
  return placesOf(stretches, flexures.length, (lineWidth) =>
    flexures.map((flexure) => countIn(flexure, box, { ...as, profile: { ...as.profile, lineWidth } })),
  );
}

/** The line width of which so many fill a thickness. */
export function widthFor(thickness: number, count: number, { profile }: PrintedAs): number {
  const overlap = profile.fitRule === 'nominal' ? 0 : beadOverlap(profile.layerHeight);
  return (thickness + (count - 1) * overlap) / count;
}
