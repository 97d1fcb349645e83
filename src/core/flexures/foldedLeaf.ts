import { plain, type Problem } from '../problems.ts';
import { radians, type Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseBlock, refuseThinPad } from './commonChecks.ts';
import { TURNED } from './commonDrives.ts';
import { DEPTH, FILLET, LENGTH, PAD, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import type { Drive, FlexureFamily } from './family.ts';
import { FOLDED_FORMS } from './foldedLeafHandForms.ts';
import { judgeRoom } from './roomChecks.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type FoldedSizes = {
  /** Lines across the leaf. */
  readonly lines: number;
  /** Straight runs side by side. */
  readonly runs: number;
  /** Length of each run, between turns or the ends of the root fillets. */
  readonly length: Mm;
  /** From the middle of one run to the middle of the next: the diameter of the turns. */
  readonly spacing: Mm;
  /** Width out of the bending plane. */
  readonly depth: Mm;
  readonly fillet: Mm;
  /** Thickness of each pad in the bending plane, symmetric about the run that grows out of it. */
  readonly pad: Mm;
  readonly sideBySide: number;
};

/** Pulled across the runs, so that the folds open; in a slide that keeps the pad from turning and from moving aside. */
const PULLED: Drive = {
  id: 'pulled',
  measure: 'travel',
  min: 0.05,
  max: 200,
  step: 0.1,
  typical: 4,
  because: 'less is within the play of a print, and more pulls most springs that fit a usual plate out straight',
};
/** Moved along the runs, in a slide of that direction. */
const SHIFTED: Drive = { ...PULLED, id: 'shifted', typical: 1 };

/** A leaf wound to and fro between two pads: soft, in little room. */
export const foldedLeaf: FlexureFamily<FoldedSizes> = {
  id: 'foldedLeaf',
  lyings: ['flat', 'upright'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(12, 'make a block rather than a leaf'),
    runs: {
      kind: 'count',
      min: 1,
      max: 12,
      step: 1,
      typical: 4,
      because: 'one run is a straight leaf; more than 12 hang through under their own weight',
    },
    length: { ...LENGTH, typical: 15 },
    spacing: {
      kind: 'length',
      min: 0.5,
      max: 60,
      step: 0.5,
      typical: 5,
      because: 'nearer runs fuse, wider ones are a frame rather than a fold',
    },
    depth: DEPTH,
    fillet: FILLET,
    pad: PAD,
    sideBySide: SIDE_BY_SIDE,
  },
  roles: ROLES,
  drives: [PULLED, SHIFTED, { ...TURNED, max: radians(180), typical: radians(30) }],

  check: (sizes, thickness, { lineWidth }) => [
    ...refuseThinPad(sizes.pad, thickness, sizes.fillet, 2),
    ...refuseBlock(thickness, sizes.length),
    ...judgeRuns(sizes, thickness, lineWidth),
    ...noteTightTurn(sizes, thickness),
    ...notePlainBending(thickness, sizes.length),
    ...noteSharpRoot(sizes.fillet),
  ],

  section: lineSection,

  root: ({ fillet, pad }) => ({ fillet, shoulder: pad }),

  handForms: FOLDED_FORMS,
};

/** Room between neighbouring runs, and between a pad and what turns or ends beside it. */
function judgeRuns({ runs, spacing, pad }: FoldedSizes, thickness: Mm, line: Mm): readonly Problem[] {
  if (runs === 1) return [];
  const [field, value] = ['sizes.spacing', spacing] as const;
  const limit = thickness + line;
  const cure = `space them at least ${plain(limit)} mm apart`;
  const between = judgeRoom(
    { room: spacing - thickness, between: 'neighbouring runs', field, value, limit, cure },
    line,
  );
  return between.length > 0 ? between : judgePads(runs, spacing, pad, thickness, line);
}

/** Two runs end in two pads beside each other; of more, the next turn passes beside each pad. */
function judgePads(runs: number, spacing: Mm, pad: Mm, thickness: Mm, line: Mm): readonly Problem[] {
  const taken = runs === 2 ? pad : (pad + thickness) / 2;
  const limit = taken + line;
  return judgeRoom(
    {
      room: spacing - taken,
      between: runs === 2 ? 'the two pads' : 'a pad and the turn beside it',
      field: 'sizes.spacing',
      value: spacing,
      limit,
      cure: `space the runs at least ${plain(limit)} mm apart, or make the pads thinner`,
    },
    line,
  );
}

/**
 * A turn whose middle line has a radius of twice the thickness strains a fifth more on its inside than a straight leaf
 * under the same moment: (rₙ − rᵢ)·t/(6·e·rᵢ) = 1.199 at R = 2·t, with rₙ = t/ln(rₒ/rᵢ) and e = R − rₙ.
 */
const TIGHT = 2;

function noteTightTurn({ runs, spacing }: FoldedSizes, thickness: Mm): readonly Problem[] {
  const least = 2 * TIGHT * thickness;
  if (runs === 1 || spacing <= thickness || spacing >= least * (1 - 1e-9)) return [];
  return [
    {
      code: 'turn-too-tight',
      message: `Runs ${plain(spacing)} mm apart turn so tightly for a thickness of ${plain(thickness)} mm that the inside of the turn strains over a fifth more than said; space them at least ${plain(least)} mm apart`,
      field: 'sizes.spacing',
      value: spacing,
      limit: least,
    },
  ];
}
