import type { Problem } from '../problems.ts';
import { plain } from '../problems.ts';
import type { Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseBlock, refuseThinPad } from './commonChecks.ts';
import { DEPTH, FILLET, LENGTH, PAD, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { PARALLEL_FORMS } from './parallelLeavesHandForms.ts';
import { judgeRoom } from './roomChecks.ts';
import { wallShoulder } from './wall.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type ParallelSizes = {
  /** Lines across each leaf. */
  readonly lines: number;
  /** Flexing length of each leaf, between the ends of its root fillets. */
  readonly length: Mm;
  /** Width out of the bending plane. */
  readonly depth: Mm;
  /** How many leaves carry the pad. */
  readonly leaves: number;
  /** From the middle of one leaf to the middle of the next. */
  readonly spacing: Mm;
  readonly fillet: Mm;
  /** Thickness of the pads, along the leaves. */
  readonly pad: Mm;
  readonly sideBySide: number;
};

/**
 * Pushed across at the level of its own leaf ends, in the middle between the leaves, and held by nothing else: it
 * sinks, and tilts as far as the leaves let it stretch and squeeze.
 */
const SHIFTED: Drive = {
  id: 'shifted',
  measure: 'travel',
  min: 0.05,
  max: 100,
  step: 0.1,
  typical: 2,
  because: 'less is within the play of a print, and more needs leaves that do not fit a usual plate',
};
/** Kept from turning and free to sink: two such stages face to face, or a long pad that slides on something. */
const GUIDED: Drive = { ...SHIFTED, id: 'guided' };
/** Kept from turning and from sinking, as in a slide, so that the leaves are also stretched. */
const HELD: Drive = {
  ...SHIFTED,
  id: 'held',
  typical: 1,
  because: 'less is within the play of a print, and more stretches leaves that fit a usual plate until they tear',
};

/** Equal leaves side by side that carry a pad across without turning it. */
export const parallelLeaves: FlexureFamily<ParallelSizes> = {
  id: 'parallelLeaves',
  lyings: ['flat', 'upright'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(12, 'make posts rather than leaves'),
    length: { ...LENGTH, typical: 25 },
    depth: DEPTH,
    leaves: {
      kind: 'count',
      min: 2,
      max: 6,
      step: 1,
      typical: 2,
      because: 'one leaf lets the pad turn; more than 6 hardly share a push evenly',
    },
    spacing: {
      kind: 'length',
      min: 1,
      max: 200,
      step: 0.5,
      typical: 15,
      because: 'nearer leaves let the pad tilt, wider ones do not fit a usual plate',
    },
    fillet: FILLET,
    pad: PAD,
    sideBySide: SIDE_BY_SIDE,
  },
  roles: ROLES,
  drives: [SHIFTED, GUIDED, HELD],

  check: ({ length, spacing, fillet, pad }, thickness, { lineWidth }) => [
    ...refuseThinPad(pad, thickness, 0, 1),
    ...refuseBlock(thickness, length),
    ...refuseMergedRoots(spacing, thickness, fillet),
    ...judgeRoom(
      {
        room: spacing - thickness,
        between: 'neighbouring leaves',
        field: 'sizes.spacing',
        value: spacing,
        limit: thickness + lineWidth,
        cure: `space them at least ${plain(thickness + lineWidth)} mm apart`,
      },
      lineWidth,
    ),
    ...notePlainBending(thickness, length),
    ...noteSharpRoot(fillet),
  ],

  section: lineSection,

  /** Leaves stand on one long wall. */
  root: ({ fillet }, thickness) => ({ fillet, shoulder: wallShoulder(thickness, fillet) }),

  handForms: PARALLEL_FORMS,
};

/** Between two leaves both their fillets need room; where there is none of any kind, `judgeRoom` says so. */
function refuseMergedRoots(spacing: Mm, thickness: Mm, fillet: Mm): readonly Problem[] {
  const least = thickness + 2 * fillet;
  if (spacing >= least * (1 - 1e-9) || spacing <= thickness) return [];
  return [
    {
      code: 'roots-merge',
      message: `Leaves ${plain(spacing)} mm apart have no room for fillets of ${plain(fillet)} mm between them; space them at least ${plain(least)} mm apart, or make the fillets at most ${plain((spacing - thickness) / 2)} mm`,
      field: 'sizes.spacing',
      value: spacing,
      limit: least,
    },
  ];
}
