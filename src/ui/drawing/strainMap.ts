import type { Assessment } from '../../core/design/assessment.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { rootStrainShare, type RootShape } from '../../core/strength/rootStrain.ts';
import type { Mm } from '../../core/units.ts';
import type { Figure } from './figure.ts';
import { stretches } from './polygon.ts';

/** A piece of the leaf between two places along it and two heights across it [mm]; it bends into a ring sector. */
export interface Sector {
  readonly start: Mm;
  readonly end: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** Where the strain near a root is at least so much, drawn over whatever strains less. Polygons [mm] as before bending. */
interface StrainStep {
  /** Share of the nominal skin strain. */
  readonly share: number;
  readonly fixedRoot: readonly (readonly Point[])[];
  readonly movingRoot: readonly (readonly Point[])[];
  /** Beside both roots, on the leaf. */
  readonly leaf: readonly (readonly Point[])[];
}

/**
 * Where a joint strains, as shapes that lie over each other from the least strained up, so that no seam shows between
 * two of them. Independent of how far it is bent: strain grows in proportion.
 */
export interface StrainMap {
  /** The leaf, from the skin inwards, each strip narrower than the one before. */
  readonly along: readonly { readonly share: number; readonly sector: Sector }[];
  readonly roots: readonly StrainStep[];
}

const STEPS = 16;
/** Places out from where the fillet begins, in fillet radii; they crowd where the peak is. */
const OUTWARD: readonly number[] = [0, 0.04, 0.1, 0.18, 0.28, 0.4, 0.54, 0.7, 0.84, 0.96];
const INWARD: readonly number[] = [0, 0.05, 0.12, 0.22, 0.36, 0.55, 0.8, 1];
/** A step that reaches inwards by less than this share of half the leaf is not worth drawing on the leaf. */
const NEGLIGIBLE = 0.03;
/** Leaf and roots overlap by so much [mm], or a seam would show. */
const OVERLAP: Mm = 0.02;

/** The map of a joint with so many strips of colour on either side of the middle of the leaf. */
export function strainMap(a: Assessment, figure: Figure, strips: number): StrainMap {
  const { thickness, length, padBelow } = figure;
  const root: RootShape = { thickness, fillet: figure.fillet, factor: a.strain.rootFactor };
  const along = Array.from({ length: strips }, (_, i) => {
    const half = ((1 - i / strips) * thickness) / 2;
    const sector = { start: -OVERLAP, end: length + OVERLAP, low: -half, high: half };
    return { share: 1 - (i + 0.5) / strips, sector };
  });
  const sections = sectionsOf(figure);
  const mirrored = (points: readonly Point[]) => points.map(({ x, y }) => ({ x: length - x, y }));
  // The notch is on the sides where the pad stands out.
  const sides = [1, -1].map((side) => ({ side, notch: side > 0 || padBelow ? root : { ...root, factor: 1 } }));
  const roots = Array.from({ length: STEPS }, (_, step) => {
    const least = (step / STEPS) * root.factor;
    const fixedRoot = sides.flatMap(({ side, notch }) => rootShape(notch, sections, side, least));
    const nearLeaf = sides.flatMap(({ side, notch }) => leafShape(notch, figure, side, least));
    const share = ((step + 0.5) / STEPS) * root.factor;
    return { share, fixedRoot, movingRoot: fixedRoot.map(mirrored), leaf: [...nearLeaf, ...nearLeaf.map(mirrored)] };
  });
  return { along, roots };
}

/** A cut through the fixed root, square to the leaf, so far out from where the fillet begins. */
interface Section {
  readonly outward: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

function sectionsOf({ points, fillet, thickness }: Figure): readonly Section[] {
  if (!(fillet > 0)) return [];
  return OUTWARD.map((share) => share * fillet).map((outward) => {
    const [span] = stretches(points, 'x', -Math.max(outward, 1e-6));
    const [low, high] = span ?? [-thickness / 2, thickness / 2];
    return { outward, low, high };
  });
}

/** The part of a root, on one side of the middle, that strains at least so much. */
function rootShape(root: RootShape, sections: readonly Section[], side: number, least: number): Point[][] {
  const columns = sections.map(({ outward, low, high }) => {
    const at = (fromMiddle: Mm) => ({ x: -outward, y: (low + high) / 2 + side * fromMiddle });
    const inner = reached(root, outward, high - low, least);
    return inner === undefined ? undefined : { inner: at(inner), skin: at((high - low) / 2) };
  });
  return shapeOf(columns);
}

/** The part of the leaf beside a root that strains more than it does further along. */
function leafShape(root: RootShape, { fillet, thickness, length }: Figure, side: number, least: number): Point[][] {
  const reach = Math.min(Math.max(fillet, thickness / 20), length / 2);
  const far = (least * thickness) / 2;
  const columns = INWARD.map((share) => share * reach).map((x) => {
    const inner = reached(root, -x, thickness, least);
    return inner === undefined ? undefined : { inner: { x, y: side * inner }, skin: { x, y: (side * thickness) / 2 } };
  });
  const first = columns[0];
  const isWorth = first && (least >= 1 || far - Math.abs(first.inner.y) > (NEGLIGIBLE * thickness) / 2);
  return isWorth ? shapeOf(columns) : [];
}

/** The height from the middle at which a section first strains so much, or nothing where even its skin does not. */
function reached(root: RootShape, outward: Mm, height: Mm, least: number): Mm | undefined {
  if (rootStrainShare(root, outward, height, height / 2) < least) return undefined;
  let [low, high] = [0, height / 2];
  // Strain grows from the middle to the skin; a thousandth of the height is far under a px.
  for (let i = 0; i < 11; i++) {
    const middle = (low + high) / 2;
    if (rootStrainShare(root, outward, height, middle) < least) low = middle;
    else high = middle;
  }
  return least === 0 ? 0 : high;
}

type Column = { readonly inner: Point; readonly skin: Point } | undefined;

/** The shape between the inner edge and the skin, over the columns from the leaf on that reach so much. */
function shapeOf(columns: readonly Column[]): Point[][] {
  const end = columns.indexOf(undefined);
  const kept = (end === -1 ? columns : columns.slice(0, end)).filter((column) => column !== undefined);
  if (kept.length < 2) return [];
  return [[...kept.map(({ inner }) => inner), ...kept.map(({ skin }) => skin).toReversed()]];
}
