import { roundedOutline, type Corner } from '../geometry/roundedOutline.ts';
import { thicknessOfLayers } from '../print/wholeLayers.ts';
import { plain, type Problem } from '../problems.ts';
import { radians, type Mm } from '../units.ts';
import { notePlainBending, noteSharpRoot, refuseBlock, refuseThinPad } from './commonChecks.ts';
import { TURNED } from './commonDrives.ts';
import { DEPTH, FILLET, IN_ROW, LENGTH, PAD, padLength, ROLES, SIDE_BY_SIDE } from './commonSizes.ts';
import type { FlexureFamily } from './family.ts';
import { TURNED_FORM } from './leafHandForms.ts';

export type CreaseSizes = {
  /** Layers through the web. */
  readonly layers: number;
  /** Flexing length across the fold, between the tangent points of the root fillets. */
  readonly length: Mm;
  /** Length of the fold. */
  readonly depth: Mm;
  /** On the upper side of the web only; the lower side lies on the plate. */
  readonly fillet: Mm;
  /** Thickness of the plates on both sides, from the plate up. */
  readonly pad: Mm;
  readonly inRow: number;
  readonly sideBySide: number;
};

/** A thin web flush with the plate between two thicker plates, laid as layers on top of each other. */
export const crease: FlexureFamily<CreaseSizes> = {
  id: 'crease',
  lyings: ['crease'],
  countOf: 'layers',
  parameters: {
    layers: {
      kind: 'count',
      min: 1,
      max: 20,
      step: 1,
      typical: 2,
      because: 'at least one layer is laid; more than 20 make a plate rather than a crease',
    },
    length: { ...LENGTH, typical: 3 },
    depth: { ...DEPTH, typical: 20 },
    fillet: { ...FILLET, typical: 0.4 },
    pad: { ...PAD, typical: 2 },
    inRow: IN_ROW,
    sideBySide: SIDE_BY_SIDE,
  },
  roles: { ...ROLES, count: 'layers', inRow: 'inRow' },
  drives: [{ ...TURNED, typical: radians(45) }],

  check: ({ length, fillet, pad }, thickness, { layerHeight }) => [
    ...refuseThinPad(pad, thickness, fillet, 1),
    ...refuseBlock(thickness, length),
    ...notePlainBending(thickness, length),
    ...noteSharpRoot(fillet),
    ...noteFilletInSteps(fillet, layerHeight),
  ],

  section: ({ layers, depth }, profile) => ({
    thickness: thicknessOfLayers(layers, profile),
    width: depth,
    count: layers,
    countOf: 'layers',
  }),

  /**
   * The step is on one side only. It is taken as the same step on both sides, D = t + 2·(pad − t), because the table
   * of root factors knows only symmetric bars. An assumption, thought to err on the safe side: the flat side gives
   * the flow of stress one way past the corner undisturbed.
   */
  root: ({ fillet, pad }, thickness) => ({ fillet, shoulder: thickness + 2 * (pad - thickness) }),

  outline: ({ length, fillet, pad }, thickness) => {
    const [bottom, top] = [-thickness / 2, thickness / 2];
    const plateTop = bottom + pad;
    const far = fillet + padLength(thickness);
    return [
      roundedOutline([
        sharp(-far, bottom),
        sharp(length + far, bottom),
        sharp(length + far, plateTop),
        sharp(length + fillet, plateTop),
        { x: length + fillet, y: top, radius: fillet },
        { x: -fillet, y: top, radius: fillet },
        sharp(-fillet, plateTop),
        sharp(-far, plateTop),
      ]),
    ];
  },

  handForms: [TURNED_FORM],
};

function sharp(x: Mm, y: Mm): Corner {
  return { x, y, radius: 0 };
}

/** Layers build a curve in steps; a fillet that rounds to fewer than two of them is one square step. */
function noteFilletInSteps(fillet: Mm, layer: Mm): readonly Problem[] {
  if (!(fillet > 0) || fillet >= 1.5 * layer * (1 - 1e-9)) return [];
  return [
    {
      code: 'fillet-in-steps',
      message: `A fillet of ${plain(fillet)} mm is closer to one layer of ${plain(layer)} mm than to two, so it prints as a square step; make it at least ${plain(2 * layer)} mm`,
      field: 'sizes.fillet',
      value: fillet,
      limit: 2 * layer,
    },
  ];
}
