import type { ArchForm } from '../closedForms/archModes.ts';
import type { Mm } from '../units.ts';

export type SnapArchSizes = {
  /** Lines across each arch. */
  readonly lines: number;
  /** One arch alone, or two whose middles a block joins. */
  readonly arches: number;
  /** Between the ends of the arch in the frame, at the tangent points of the root fillets. */
  readonly span: Mm;
  /** Of the middle above the ends, as printed. */
  readonly rise: Mm;
  /** Between the middle lines of the two arches. */
  readonly apart: Mm;
  /** Width of the block at the middle, between the ends of the half arches on either side of it. */
  readonly block: Mm;
  readonly depth: Mm;
  readonly fillet: Mm;
  readonly sideBySide: number;
};

/**
 * Length along the span that bends: a block takes its width out.
 *
 * @param sizes - span and block [mm]
 * @returns length of both half waves along the span [mm]
 *
 * @example flexing({ span: 60, block: 4 }) // → 56
 */
export function flexing({ span, block }: Pick<SnapArchSizes, 'span' | 'block'>): Mm {
  return span - block;
}

/**
 * How the closed form takes the arches to be kept from leaning, when they are pushed freely.
 *
 * @param sizes - number of arches [-]
 * @returns free for one, double for two [-]
 *
 * @example formOf({ arches: 1 }) // → 'free'
 */
export function formOf({ arches }: Pick<SnapArchSizes, 'arches'>): ArchForm {
  return arches === 1 ? 'free' : 'double';
}
