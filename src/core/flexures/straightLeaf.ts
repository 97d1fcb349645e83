import { roundedOutline } from '../geometry/roundedOutline.ts';
import { plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseBlock, refuseThinPad } from './commonChecks.ts';
import { CENTRED, PUSHED, TURNED } from './commonDrives.ts';
import { DEPTH, FILLET, IN_ROW, LENGTH, PAD, padLength, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import type { FlexureFamily } from './family.ts';
import { CENTRED_FORM, PUSHED_FORM, TURNED_FORM } from './leafHandForms.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type LeafSizes = {
  /** Lines across the leaf. */
  readonly lines: number;
  /** Flexing length, between the tangent points of the root fillets. */
  readonly length: Mm;
  /** Width out of the bending plane. */
  readonly depth: Mm;
  readonly fillet: Mm;
  /** Thickness of each pad in the bending plane, symmetric about the leaf. */
  readonly pad: Mm;
  readonly inRow: number;
  readonly sideBySide: number;
  /** Thickness at the moving end over thickness at the root. */
  readonly taper: number;
  /** Where along the leaf the pin lies about which it turns: 0 at the fixed root, 1 at the moving one. */
  readonly centre: number;
};

/** Outer corners of the pads, rounded so that they can be laid without slowing; smaller where there is little room. */
const CORNER = 0.5;

/** A leaf of constant thickness between two pads, laid as lines side by side. */
export const straightLeaf: FlexureFamily<LeafSizes> = {
  id: 'straightLeaf',
  lyings: ['flat', 'upright'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(12, 'make a block rather than a leaf'),
    length: LENGTH,
    depth: DEPTH,
    fillet: FILLET,
    pad: PAD,
    inRow: { ...IN_ROW, drives: [TURNED.id] },
    sideBySide: SIDE_BY_SIDE,
    taper: {
      kind: 'ratio',
      min: 0.3,
      max: 1,
      step: 0.05,
      typical: 1,
      because: 'a tip much thinner than the root carries no push, and a thicker one bends at the root only',
      drives: [PUSHED.id],
    },
    centre: {
      kind: 'ratio',
      min: 0,
      max: 1,
      step: 0.05,
      typical: 0.5,
      because: 'a pin beyond the ends of the leaf swings it more than it turns it',
      drives: [CENTRED.id],
    },
  },
  roles: { ...ROLES, inRow: 'inRow' },
  drives: [TURNED, PUSHED, CENTRED],

  check: ({ length, fillet, pad }, thickness, { lineWidth }) => [
    ...refuseThinPad(pad, thickness, fillet, 2),
    ...refuseBlock(thickness, length),
    ...notePlainBending(thickness, length),
    ...noteSharpRoot(fillet),
    ...noteFilletUnderOneLine(fillet, lineWidth),
  ],

  section: lineSection,

  root: ({ fillet, pad }) => ({ fillet, shoulder: pad }),

  outline: ({ length, fillet, pad }, thickness) => {
    const [a, h] = [thickness / 2, pad / 2];
    const far = fillet + padLength(thickness);
    const radius = Math.min(CORNER, Math.max(0, h - a - fillet) / 2);
    const lower = [
      { x: -far, y: -h, radius },
      { x: -fillet, y: -h, radius },
      { x: -fillet, y: -a, radius: fillet },
      { x: length + fillet, y: -a, radius: fillet },
      { x: length + fillet, y: -h, radius },
      { x: length + far, y: -h, radius },
    ];
    const upper = lower.map((corner) => ({ ...corner, y: -corner.y })).toReversed();
    return [roundedOutline([...lower, ...upper])];
  },

  handForms: [TURNED_FORM, PUSHED_FORM, CENTRED_FORM],
};

/** A line cannot follow a curve tighter than about its own width. Common practice, no source. */
function noteFilletUnderOneLine(fillet: Mm, line: Mm): readonly Problem[] {
  if (!(fillet > 0) || fillet >= line * (1 - 1e-9)) return [];
  return [
    {
      code: 'fillet-under-one-line',
      message: `A fillet of ${plain(fillet)} mm is under one line of ${plain(line)} mm, so it prints as little more than a corner; make it at least ${plain(line)} mm (common practice, no source)`,
      field: 'sizes.fillet',
      value: fillet,
      limit: line,
    },
  ];
}
