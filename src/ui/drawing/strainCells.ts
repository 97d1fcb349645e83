import type { Assessment } from '../../core/design/assessment.ts';
import { rootStrainShare, type RootShape } from '../../core/strength/rootStrain.ts';
import type { Point } from '../../core/geometry/outline.ts';
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

/** All that strains alike: a share of the nominal skin strain, and where. */
export interface StrainLevel {
  readonly share: number;
  readonly leaf: readonly Sector[];
  /** Four-cornered pieces of the root [mm]: of the fixed one as it is, of the moving one as before bending. */
  readonly fixed: readonly (readonly Point[])[];
  readonly moving: readonly (readonly Point[])[];
}

/** Steps of colour between none and the peak: neighbours differ by less than an eye can tell. */
const LEVELS = 28;
/** Places along the leaf, in fillet radii, where the peak beside a root has faded noticeably. */
const FADE_STOPS: readonly number[] = [0, 0.06, 0.14, 0.26, 0.42, 0.65, 1];
/** A root is coloured as far out as this share of its fillet, where the section has opened most of the way. */
const ROOT_REACH = 0.96;
const ROOT_COLUMNS = 12;
/** A peak that adds less than this share of the skin strain to a strip is not drawn along it. */
const NEGLIGIBLE = 0.02;

/** Where a joint strains, sorted into levels. Independent of how far it is bent: strain grows in proportion. */
export function strainLevels(a: Assessment, figure: Figure, bands: number): readonly StrainLevel[] {
  const root: RootShape = { thickness: figure.thickness, fillet: figure.fillet, factor: a.strain.rootFactor };
  const levels = Array.from({ length: LEVELS }, (_, i) => ({
    share: ((i + 0.5) / LEVELS) * root.factor,
    leaf: new Array<Sector>(),
    fixed: new Array<readonly Point[]>(),
    moving: new Array<readonly Point[]>(),
  }));
  const levelOf = (share: number) =>
    levels[Math.min(LEVELS - 1, Math.floor((share / root.factor) * LEVELS))] ?? levels[0];

  for (const { share, sector } of leafSectors(root, figure, bands)) levelOf(share)?.leaf.push(sector);
  for (const { share, corners } of rootCells(root, figure, bands)) {
    levelOf(share)?.fixed.push(corners);
    levelOf(share)?.moving.push(corners.map(({ x, y }) => ({ x: figure.length - x, y })));
  }
  return levels.filter(({ leaf, fixed }) => leaf.length + fixed.length > 0);
}

/** Strips across the thickness, from −½ to ½. */
function strips(bands: number): readonly (readonly [number, number])[] {
  return Array.from({ length: bands }, (_, i) => [i / bands - 0.5, (i + 1) / bands - 0.5] as const);
}

/** The notch is on the sides where the pad stands out. */
function sided(root: RootShape, { padBelow }: Figure, y: number): RootShape {
  return y < 0 && !padBelow ? { ...root, factor: 1 } : root;
}

function leafSectors(
  root: RootShape,
  figure: Figure,
  bands: number,
): { readonly share: number; readonly sector: Sector }[] {
  const { length, thickness, fillet } = figure;
  const reach = Math.min(Math.max(fillet, thickness / 20), length / 2);
  return strips(bands).flatMap(([low, high]) => {
    const middle = Math.abs(low + high) / 2;
    const notch = sided(root, figure, low + high);
    const at = (x: Mm) => rootStrainShare(notch, -x, thickness, middle * thickness);
    const isLong = at(0) - 2 * middle < NEGLIGIBLE;
    const stops = isLong ? [0, length / 2] : [...FADE_STOPS.map((stop) => stop * reach), length / 2];
    const near = stops.slice(1).map((end, i) => ({ start: stops[i] ?? 0, end }));
    const cells = near.flatMap(({ start, end }, i) => {
      const share = i === near.length - 1 ? 2 * middle : at((start + end) / 2);
      const heights = { low: low * thickness, high: high * thickness };
      const isMiddle = end === length / 2;
      // The two halves of the long middle are one piece.
      const both = isMiddle
        ? [{ start, end: length - start, ...heights }]
        : [
            { start, end, ...heights },
            { start: length - end, end: length - start, ...heights },
          ];
      return both.map((sector) => ({ share, sector }));
    });
    return cells;
  });
}

/** A place across a section, from −½ at its lower edge to ½ at its upper. */
function across(span: readonly [number, number], u: number): Mm {
  return span[0] + (u + 0.5) * (span[1] - span[0]);
}

function rootCells(
  root: RootShape,
  figure: Figure,
  bands: number,
): { readonly share: number; readonly corners: readonly Point[] }[] {
  const { fillet, thickness, points } = figure;
  if (!(fillet > 0)) return [];
  // Columns crowd towards the leaf, where the peak is.
  const stops = Array.from({ length: ROOT_COLUMNS + 1 }, (_, i) => ROOT_REACH * fillet * (i / ROOT_COLUMNS) ** 1.4);
  const sectionAt = (outward: Mm) => {
    const [span] = stretches(points, 'x', -Math.max(outward, 1e-6));
    return span ?? [-thickness / 2, thickness / 2];
  };
  return stops.slice(1).flatMap((end, i) => {
    const start = stops[i] ?? 0;
    const [near, far, middle] = [sectionAt(start), sectionAt(end), sectionAt((start + end) / 2)];
    const height = middle[1] - middle[0];
    return strips(bands).map(([low, high]) => {
      const fromMiddle = (Math.abs(low + high) / 2) * height;
      const share = rootStrainShare(sided(root, figure, low + high), (start + end) / 2, height, fromMiddle);
      const corners = [
        { x: -start, y: across(near, low) },
        { x: -end, y: across(far, low) },
        { x: -end, y: across(far, high) },
        { x: -start, y: across(near, high) },
      ];
      return { share, corners };
    });
  });
}
