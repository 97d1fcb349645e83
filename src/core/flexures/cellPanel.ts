import { bendingStrain } from '../closedForms/leafBending.ts';
import { leafTorque } from '../closedForms/leafTorque.ts';
import { plain, type Problem } from '../problems.ts';
import { asRad, radians, type Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseThinPad } from './commonChecks.ts';
import { DEPTH, FILLET, LENGTH, PAD } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { judgeRoom } from './roomChecks.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type CellPanelSizes = {
  /** Lines across each leaf. */
  readonly lines: number;
  /** Leaves one behind the other; there is one slat more. */
  readonly cells: number;
  /** Length of a slat and a leaf together, along the panel. */
  readonly cell: Mm;
  /** Flexing length of each leaf, between the tangent points of its root fillets. */
  readonly leaf: Mm;
  /** Width of the panel, out of the plane in which it bends. */
  readonly depth: Mm;
  readonly fillet: Mm;
  /** Thickness of the slats, through the panel. */
  readonly pad: Mm;
};

/** The last slat is turned by a pure moment, as a panel is that lies close round a curve. */
export const WRAPPED: Drive = {
  id: 'wrapped',
  measure: 'turn',
  min: radians(1),
  max: radians(720),
  step: radians(5),
  typical: radians(180),
  because: 'less is no wrap, and after two turns a panel lies on itself',
};

/** A row of stiff slats joined by short leaves that each bend a little; printed on its edge. */
export const cellPanel: FlexureFamily<CellPanelSizes> = {
  id: 'cellPanel',
  lyings: ['flat', 'upright'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(8, 'make slats of the leaves'),
    cells: {
      kind: 'count',
      min: 1,
      max: 40,
      step: 1,
      typical: 12,
      because: 'one leaf is a hinge; more than 40 cells do not fit a usual plate',
    },
    cell: {
      kind: 'length',
      min: 2,
      max: 60,
      step: 0.5,
      typical: 8,
      because: 'a shorter cell has no room for a leaf and a slat, a longer one follows no curve',
    },
    leaf: { ...LENGTH, max: 50, typical: 4.5 },
    depth: { ...DEPTH, typical: 40 },
    fillet: FILLET,
    pad: { ...PAD, typical: 3 },
  },
  roles: { count: 'lines', length: 'leaf', depth: 'depth', fillet: 'fillet', pad: 'pad', inRow: 'cells' },
  drives: [WRAPPED],

  check: (sizes, thickness, { lineWidth }) => [
    ...refuseThinPad(sizes.pad, thickness, sizes.fillet, 2),
    ...refuseShortSlat(sizes, lineWidth),
    ...judgeGap(sizes, lineWidth),
    ...notePlainBending(thickness, sizes.leaf).map((note) => ({ ...note, field: 'sizes.leaf' })),
    ...noteSharpRoot(sizes.fillet),
  ],

  section: lineSection,

  root: ({ fillet, pad }) => ({ fillet, shoulder: pad }),

  handForms: [
    {
      drive: WRAPPED.id,
      source: 'plane-bending',
      appliesTo: () => true,
      peakStrain: ({ leaf, cells }, thickness, amount) => bendingStrain(thickness, leaf, asRad(amount / cells)),
      effort: ({ leaf, cells, depth }, thickness, amount) =>
        leafTorque(1, depth, thickness, leaf, asRad(amount / cells), 1),
      rel: 1e-6,
      because: 'a pure moment bends every leaf to the same arc at any angle; only round-off differs',
    },
  ],
};

/** A slat is laid by one contour at least, which is two lines across. */
function refuseShortSlat({ cell, leaf, fillet }: CellPanelSizes, line: Mm): readonly Problem[] {
  const slat = cell - leaf - 2 * fillet;
  if (slat >= 2 * line * (1 - 1e-9)) return [];
  const limit = leaf + 2 * fillet + 2 * line;
  return [
    {
      code: 'no-room',
      message: `A cell of ${plain(cell)} mm has no room for a leaf of ${plain(leaf)} mm with its fillets and a slat of two lines; make it at least ${plain(limit)} mm, or the leaf shorter`,
      field: 'sizes.cell',
      value: cell,
      limit,
    },
  ];
}

function judgeGap({ leaf, fillet }: CellPanelSizes, line: Mm): readonly Problem[] {
  const limit = line - 2 * fillet;
  const cure = `make the leaves at least ${plain(limit)} mm long`;
  return judgeRoom(
    { room: leaf + 2 * fillet, between: 'neighbouring slats', field: 'sizes.leaf', value: leaf, limit, cure },
    line,
  );
}
