import { plain, type Problem } from '../problems.ts';
import { radians, type Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseBlock, refuseThinPad } from './commonChecks.ts';
import { CENTRED, TURNED } from './commonDrives.ts';
import { standOff } from './commonNetwork.ts';
import { DEPTH, FILLET, LENGTH, PAD, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import { CROSSED_FORMS } from './crossedLeavesHandForms.ts';
import type { BeadSize, FlexureFamily } from './family.ts';
import { judgeRoom } from './roomChecks.ts';
import { wallShoulder } from './wall.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type CrossedSizes = {
  /** Lines across each leaf. */
  readonly lines: number;
  /** Flexing length of each leaf, between the ends of its root fillets. */
  readonly length: Mm;
  /** Width of each leaf out of the plane. */
  readonly depth: Mm;
  /** Full angle between the leaves, as seen from either pad [rad]. */
  readonly between: number;
  /** Where they cross, as a share of their length from the fixed pad. */
  readonly crossing: number;
  /** 0: stacked in two planes, free of each other; 1: in one plane and grown together where they cross. */
  readonly fused: number;
  /** Left open between the two planes. */
  readonly gap: Mm;
  readonly fillet: Mm;
  /** Thickness of the pads, along the axis of symmetry. */
  readonly pad: Mm;
  readonly sideBySide: number;
};

/** Two equal leaves that cross between two pads: a pivot whose centre hardly moves. */
export const crossedLeaves: FlexureFamily<CrossedSizes> = {
  id: 'crossedLeaves',
  lyings: ['flat'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(8, 'make struts rather than leaves'),
    length: { ...LENGTH, min: 2, typical: 16 },
    depth: { ...DEPTH, typical: 3 },
    between: {
      kind: 'angle',
      min: radians(30),
      max: radians(150),
      step: radians(1),
      typical: radians(90),
      because: 'leaves that nearly lie along each other hold the pad in one direction only',
    },
    crossing: {
      kind: 'ratio',
      min: 0.05,
      max: 0.95,
      step: 0.01,
      typical: 0.5,
      because: 'nearer to an end the leaves grow out of one root and no longer cross',
    },
    fused: {
      kind: 'count',
      min: 0,
      max: 1,
      step: 1,
      typical: 0,
      because: '0 is stacked in two planes, 1 is grown together where they cross',
    },
    gap: {
      kind: 'length',
      min: 0,
      max: 20,
      step: 0.1,
      typical: 0.4,
      because: 'the planes lie one above the other; far apart they twist the pads',
    },
    fillet: { ...FILLET, typical: 0.5 },
    pad: PAD,
    sideBySide: SIDE_BY_SIDE,
  },
  roles: ROLES,
  drives: [
    {
      ...TURNED,
      max: radians(90),
      typical: radians(12),
      because: 'less is no movement, and past a right angle the pads run into the leaves',
    },
    { ...CENTRED, typical: radians(5) },
  ],

  check: (sizes, thickness, bead) => [
    ...refuseThinPad(sizes.pad, thickness, 0, 1),
    ...refuseBlock(thickness, sizes.length),
    ...(sizes.fused === 1 ? judgeFused(sizes, thickness, bead) : refuseClosedGap(sizes, bead)),
    ...notePlainBending(thickness, sizes.length),
    ...noteSharpRoot(sizes.fillet),
  ],

  section: lineSection,

  /** Leaves lean where they meet their pads; the root is taken as one square to a thick wall. */
  root: ({ fillet }, thickness) => ({ fillet, shoulder: wallShoulder(thickness, fillet) }),

  handForms: CROSSED_FORMS,
};

function shorterPart({ length, crossing }: CrossedSizes): Mm {
  return length * Math.min(crossing, 1 - crossing);
}

/** Under one layer nothing keeps the planes apart. Common practice, no source. */
function refuseClosedGap({ gap }: CrossedSizes, { layerHeight }: BeadSize): readonly Problem[] {
  if (gap >= layerHeight * (1 - 1e-9)) return [];
  return [
    {
      code: 'planes-fuse',
      message: `A gap of ${plain(gap)} mm between the planes is under one layer of ${plain(layerHeight)} mm, so the leaves fuse where they cross; leave at least ${plain(layerHeight)} mm, two layers are safer (common practice, no source), or call them fused`,
      field: 'sizes.gap',
      value: gap,
      limit: layerHeight,
    },
  ];
}

/** Grown together, both leaves share one plane: on the nearer pad their feet and fillets need room side by side. */
function judgeFused(sizes: CrossedSizes, thickness: Mm, { lineWidth }: BeadSize): readonly Problem[] {
  const { between, crossing, fillet } = sizes;
  const half = between / 2;
  const off = standOff(fillet, thickness, half);
  const foot = thickness / (2 * Math.cos(half)) + fillet * Math.tan(Math.PI / 4 + half / 2);
  const room = 2 * (Math.sin(half) * (shorterPart(sizes) + off) - foot);
  const share = Math.min(crossing, 1 - crossing);
  // As far from the nearer pad as leaves one line of room between the feet.
  const part = (foot + lineWidth / 2) / Math.sin(half) - off;
  const limit = part / share;
  const cure = `make the leaves at least ${plain(limit)} mm long, let them cross nearer to the middle, or make the fillets smaller`;
  return judgeRoom(
    { room, between: 'the feet of the leaves', field: 'sizes.length', value: sizes.length, limit, cure },
    lineWidth,
  );
}
