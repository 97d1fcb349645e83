import { plain, type Problem } from '../problems.ts';
import { radians, type Mm } from '../units.ts';
import { refuseBlock } from './commonChecks.ts';
import { CENTRED, TURNED } from './commonDrives.ts';
import { DEPTH, IN_ROW, SIDE_BY_SIDE } from './commonSizes.ts';
import type { FlexureFamily } from './family.ts';
import { NECK_FORMS } from './neckHandForms.ts';
import { lineSection, linesUpTo } from './lineSection.ts';

export type NeckSizes = {
  /** Lines across the thinnest place. */
  readonly lines: number;
  /** Half the length of the notch along the joint; of a neck with a straight part, the fillet at either end of it. */
  readonly along: Mm;
  /** Depth of the notch from either side. */
  readonly deep: Mm;
  /** Straight part in the middle; 0 makes a round notch where along and deep are equal, an elliptical one elsewhere. */
  readonly straight: Mm;
  /** Width out of the bending plane. */
  readonly depth: Mm;
  readonly inRow: number;
  readonly sideBySide: number;
};

/** A short neck between two notches: round, elliptical, or straight in the middle with rounded ends. */
export const neck: FlexureFamily<NeckSizes> = {
  id: 'neck',
  lyings: ['flat', 'upright'],
  countOf: 'lines',
  parameters: {
    lines: linesUpTo(12, 'make a block rather than a neck'),
    along: {
      kind: 'length',
      min: 0.2,
      max: 50,
      step: 0.1,
      typical: 2,
      because: 'a shorter notch prints as a cut, a longer one is a leaf',
    },
    deep: {
      kind: 'length',
      min: 0.2,
      max: 50,
      step: 0.1,
      typical: 2,
      because: 'a shallower notch hardly thins anything, a deeper one does not fit a usual plate',
    },
    straight: {
      kind: 'length',
      min: 0,
      max: 100,
      step: 0.5,
      typical: 0,
      because: 'nothing is a plain notch, more than this is a leaf',
    },
    depth: DEPTH,
    inRow: { ...IN_ROW, drives: [TURNED.id] },
    sideBySide: SIDE_BY_SIDE,
  },
  roles: {
    count: 'lines',
    length: 'along',
    depth: 'depth',
    inRow: 'inRow',
    sideBySide: 'sideBySide',
  },
  drives: [
    { ...TURNED, typical: radians(5) },
    { ...CENTRED, typical: radians(5) },
  ],

  check: (sizes, thickness, { lineWidth }) => [
    ...refuseBlock(thickness, 2 * sizes.along + sizes.straight, 'sizes.along', sizes.along),
    ...noteThickNeck(sizes, thickness),
    ...noteSharpNotch(sizes, lineWidth),
  ],

  section: lineSection,

  /** The radius at the bottom of the notch, counted as a fillet up to the full pad; the strain peaks there. */
  root: (sizes, thickness) => ({ fillet: bottomRadius(sizes), shoulder: thickness + 2 * sizes.deep }),

  handForms: NECK_FORMS,
};

/** Radius of curvature where an ellipse is deepest, a²/c. */
function bottomRadius({ along, deep }: NeckSizes): Mm {
  return (along * along) / deep;
}

/**
 * Thickness over radius, or over depth, from which the tapering strip of beam theory is known to be too stiff:
 * two-dimensional finite elements are 5 to 20 % softer for t/R from 0.14 to 0.6, and beyond nobody has looked.
 */
const THICK = 0.6;
/** A straight part of twice the thickness takes up most of the bending, whatever its ends do. */
const LEAF_LIKE = 2;

function noteThickNeck(sizes: NeckSizes, thickness: Mm): readonly Problem[] {
  if (sizes.straight >= LEAF_LIKE * thickness) return [];
  const least = thickness / THICK;
  const radius = bottomRadius(sizes);
  if (Math.min(radius, sizes.deep) >= least * (1 - 1e-9)) return [];
  const shallow = sizes.deep <= radius;
  // c ≥ t/0.6, and a ≥ √(c·t/0.6) from a²/c ≥ t/0.6.
  const limit = shallow ? least : Math.sqrt(sizes.deep * least);
  const [field, value] = shallow ? (['deep', sizes.deep] as const) : (['along', sizes.along] as const);
  const what = shallow ? 'deep' : 'to either side of the middle';
  return [
    {
      code: 'neck-too-thick',
      message: `A neck ${plain(thickness)} mm thick between notches ${plain(value)} mm ${what} is so stubby that its pads bend along: it comes out 5 to 20 % softer than said, or more; make it at least ${plain(limit)} mm, or the neck thinner`,
      field: `sizes.${field}`,
      value,
      limit,
    },
  ];
}

/** A line cannot follow a curve tighter than about its own width. Common practice, no source. */
function noteSharpNotch(sizes: NeckSizes, line: Mm): readonly Problem[] {
  const radius = bottomRadius(sizes);
  if (radius >= line * (1 - 1e-9)) return [];
  const limit = Math.sqrt(sizes.deep * line);
  return [
    {
      code: 'notch-too-sharp',
      message: `The bottom of a notch ${plain(sizes.along)} mm to either side and ${plain(sizes.deep)} mm deep is rounded by ${plain(radius)} mm, under one line of ${plain(line)} mm, so it prints as a corner and breaks first there; make it at least ${plain(limit)} mm to either side (common practice, no source)`,
      field: 'sizes.along',
      value: sizes.along,
      limit,
    },
  ];
}
