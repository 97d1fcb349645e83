import { padFor, roundedUp, typicalBut } from './following.ts';
import { parallelLeaves, type ParallelSizes } from './parallelLeaves.ts';
import { FILLETS, ladder, LINES, upTo } from './rungs.ts';
import type { Sought } from './sought.ts';

/** Leaves that stand as far apart, outermost from outermost, as half their length let the pad tilt little. */
const ABREAST = 0.5;
/** Lines that are left open between the fillets of neighbours, so that nothing fuses. Common practice, no source. */
const OPEN = 2;

/** Spacing follows; along is along the leaves, from pad to pad, and across is the way that the pad is carried. */
export const parallelLeavesSought: Sought<ParallelSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'length', values: ladder(3, [20, 1], [60, 2], [200, 10]) },
    { size: 'leaves', values: [2, 3, 4] },
    { size: 'fillet', values: upTo(FILLETS, 1.6) },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness, { lineWidth }) => {
    const sizes = typicalBut(parallelLeaves, tried);
    const { length, leaves, fillet } = sizes;
    const apart = thickness + 2 * fillet + OPEN * lineWidth;
    return {
      ...sizes,
      spacing: roundedUp(Math.max(apart, (ABREAST * length) / (leaves - 1))),
      pad: padFor(parallelLeaves.parameters.pad.typical, thickness, 0),
    };
  },

  room: ({ length, leaves, spacing, fillet, depth }, thickness) => ({
    along: length + 2 * fillet,
    across: (leaves - 1) * spacing + thickness + 2 * fillet,
    depth,
  }),

  // Upright, the pad above lies from leaf to leaf, and stands out beyond the outermost at least by its fillet.
  unsupported: ({ spacing, fillet }, thickness, lying) =>
    lying === 'upright' ? { bridge: spacing - thickness, ledge: fillet } : { bridge: 0, ledge: 0 },
};
