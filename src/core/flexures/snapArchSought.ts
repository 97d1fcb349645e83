import { bistableRatio } from '../closedForms/snapArch.ts';
import type { BeadSize } from './family.ts';
import type { Mm } from '../units.ts';
import { roundedUp, typicalBut } from './following.ts';
import { ladder, LINES } from './rungs.ts';
import { snapArch } from './snapArch.ts';
import { flexing, formOf, type SnapArchSizes } from './snapArchSizes.ts';
import type { Sought } from './sought.ts';

/** As much of the span as a block may take, so that closed forms of the arch know it. */
const OF_SPAN = 0.1;
/** Its fillets lie within its width. */
const FILLETS_IN_BLOCK = 3;

/** As wide as usual where the span is long enough, and at least as its fillets ask for. */
function blockOf({ span, fillet }: SnapArchSizes): Mm {
  const usual = Math.min(snapArch.parameters.block.typical, OF_SPAN * span);
  return roundedUp(Math.max(usual, FILLETS_IN_BLOCK * fillet));
}

/**
 * Arches as far apart as they rise keep the block upright until they snap; they also need room for their fillets, and
 * two lines where they are steepest, which is nearest to each other.
 */
function apartOf(sizes: SnapArchSizes, thickness: Mm, { lineWidth }: BeadSize): Mm {
  const { rise, fillet } = sizes;
  const slant = Math.hypot(1, (Math.PI * rise) / flexing(sizes));
  const open = (thickness + 2 * lineWidth) * slant;
  return roundedUp(Math.max(snapArch.parameters.apart.typical, rise, thickness + 2 * fillet, open));
}

/** The room is that of the arches as printed; below them the frame must leave as much again as they rise. */
export const snapArchSought: Sought<SnapArchSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'arches', values: [1, 2] },
    { size: 'span', values: ladder(10, [40, 2], [80, 5], [200, 20]) },
    { size: 'rise', values: [0.6, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15] },
    { size: 'fillet', values: [0.6] },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness, bead) => {
    const sizes = typicalBut(snapArch, tried);
    const blocked = { ...sizes, block: blockOf(sizes) };
    return { ...blocked, apart: apartOf(blocked, thickness, bead) };
  },

  // Without a block there are fillets at the walls alone.
  room: ({ span, rise, arches, apart, block, fillet, depth }, thickness) => ({
    along: span + 2 * fillet,
    across: rise + (arches === 1 ? 0 : apart) + thickness + (block > 0 ? 2 : 1) * fillet,
    depth,
  }),

  // A stem that keeps the block from turning does for one arch what a second arch does; pushed freely, one arch leans with its
  // block and swings back: of five solved ones, rise over thickness 7 to 14, none stayed.
  mayStay: (sizes, thickness, drive) => {
    const leans = sizes.arches === 1 && sizes.block > 0 && drive !== 'guided';
    return !leans && sizes.rise >= bistableRatio(drive === 'guided' ? 'double' : formOf(sizes)) * thickness;
  },
};
