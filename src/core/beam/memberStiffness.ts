/** Linear stiffness of one member as printed, in the plane and out of it. */
import type { Point } from '../geometry/outline.ts';
import { torsionOfRectangle } from '../numeric/rectangleTorsion.ts';
import type { Mm } from '../units.ts';
import { centrelineOf, type Centreline } from './centreline.ts';
import type { BeamModel, Member } from './model.ts';
import { samplesAlong, type Sample } from './samplesAlong.ts';
import { sectionStiffness } from './section.ts';
import { solveWeighed, type Matrix } from './weighed.ts';

type Material = Pick<BeamModel, 'modulus' | 'poisson'>;

/** How the second end of a member resists being moved against its first, both as rigid bodies. */
export interface MemberStiffness {
  /** Direction of the member's own x axis [rad]: that of its middle line at the first node. */
  readonly heading: number;
  /**
   * Loads at the second node over its movements, along the member's own axes: x, y, z, turns about x, y, z
   * [N/mm, N/rad, N·mm/rad]. Rows of what a hinge lets go are 0.
   */
  readonly matrix: Matrix;
}

/**
 * Stiffness of a member by unit loads: what its second end gives, its first held, is summed up along the curve.
 *
 *     F = ∫ Σ rᵀr/k ds,   K = W·(WᵀFW)⁻¹·Wᵀ
 *
 * r is the share of each unit load in the stretch (EA), shears (5/6·GA), bendings in the plane (E·t³b/12 × width ratio)
 * and out of it (E·t·b³/12) and twist (G·J) of a section; W are the loads that hinges at the ends can carry. Sections
 * stay plane: what clamped ends add by keeping a twisted end from warping is left out, and so are twist and shear about
 * a centre that lies off the middle line, which a rectangle has not.
 *
 * @param member - checked member [-]
 * @param from - its first node [mm]
 * @param to - its second node [mm]
 * @param material - modulus [MPa] and Poisson's ratio [-]
 * @returns heading [rad] and stiffness at the second node
 *
 * Source: unit-load-method, saint-venant-torsion.
 */
export function memberStiffness(member: Member, from: Point, to: Point, material: Material): MemberStiffness {
  const curve = centrelineOf(member, from, to);
  const [c, s] = [Math.cos(curve.heading), Math.sin(curve.heading)];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  // In the member's own axes a straight one has stretch and bending apart, exactly, however it lies.
  const end = { x: c * dx + s * dy, y: c * dy - s * dx };
  const carried = carriedLoads(member.hinged, end);
  const gives = flexibility(member, curve, end, material);
  const between = carried.map((a) => carried.map((b) => form(a, gives, b)));
  return { heading: curve.heading, matrix: product(carried, solveWeighed(between, carried)) };
}

/** aᵀ·M·b */
function form(a: readonly number[], matrix: Matrix, b: readonly number[]): number {
  return a.reduce((sum, ai, i) => sum + ai * (matrix[i] ?? []).reduce((part, m, j) => part + m * b[j]!, 0), 0);
}

/** aᵀ·b, made symmetric to the last bit. */
function product(a: Matrix, b: Matrix): number[][] {
  const entry = (i: number, j: number) => a.reduce((sum, row, k) => sum + row[i]! * b[k]![j]!, 0);
  const axes = Array.from({ length: 6 }, (_, i) => i);
  return axes.map((i) => axes.map((j) => (entry(i, j) + entry(j, i)) / 2));
}

/** Loads Fx, Fy, Fz, Mx, My, Mz at the second node that leave no moment about z where a hinge is. */
function carriedLoads(hinged: Member['hinged'], { x, y }: Point): Matrix {
  const across = [
    [0, 0, 1, 0, 0, 0],
    [0, 0, 0, 1, 0, 0],
    [0, 0, 0, 0, 1, 0],
  ];
  const forces = [
    [1, 0, 0, 0, 0, 0],
    [0, 1, 0, 0, 0, 0],
  ];
  const chord = Math.hypot(x, y);
  // At the first node the moment is Mz + x·Fy − y·Fx.
  if (hinged === 'from') return [[1, 0, 0, 0, 0, y], [0, 1, 0, 0, 0, -x], ...across];
  if (hinged === 'both' && chord > 0) return [[x / chord, y / chord, 0, 0, 0, 0], ...across];
  if (hinged !== undefined) return [...forces, ...across];
  return [...forces, ...across, [0, 0, 0, 0, 0, 1]];
}

function flexibility(member: Member, curve: Centreline, end: Point, material: Material): number[][] {
  const sum = Array.from({ length: 6 }, () => Array.from({ length: 6 }, () => 0));
  const section = sectionOf(member, material);
  for (const sample of samplesAlong(member, curve)) {
    const stiffness = section(sample.thickness);
    sectionLoads(sample, end).forEach((row, kind) => {
      const weight = sample.length / stiffness[kind]!;
      for (let i = 0; i < 6; i += 1) {
        for (let j = 0; j < 6; j += 1) sum[i]![j] = sum[i]![j]! + weight * row[i]! * row[j]!;
      }
    });
  }
  return sum;
}

/** Stretch, shear and bending in the plane, shear, bending and twist out of it, from unit loads at the end. */
function sectionLoads({ x, y, angle }: Sample, end: Point): Matrix {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [rx, ry] = [end.x - x, end.y - y];
  return [
    [c, s, 0, 0, 0, 0],
    [-s, c, 0, 0, 0, 0],
    [-ry, rx, 0, 0, 0, 1],
    [0, 0, 1, 0, 0, 0],
    [0, 0, -s * ry - c * rx, -s, c, 0],
    [0, 0, c * ry - s * rx, c, s, 0],
  ];
}

/** Stiffnesses of a section of some thickness, in the order of `sectionLoads`; the last one is kept while it stays. */
function sectionOf({ width, widthRatio = 1 }: Member, { modulus, poisson }: Material): (t: Mm) => readonly number[] {
  let [of, known]: [Mm, readonly number[]] = [Number.NaN, []];
  return (thickness) => {
    if (thickness === of) return known;
    const inPlane = sectionStiffness(thickness, width, modulus, poisson, widthRatio);
    const across = sectionStiffness(width, thickness, modulus, poisson, 1);
    const [thin, wide] = [Math.min(thickness, width), Math.max(thickness, width)];
    const twist = (modulus / (2 * (1 + poisson))) * torsionOfRectangle(wide / thin).c1 * wide * thin ** 3;
    of = thickness;
    known = [inPlane.axial, inPlane.shear, inPlane.bending, across.shear, across.bending, twist];
    return known;
  };
}
