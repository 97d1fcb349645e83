/** How a pad resists small movements where bars across the plane join it to the ground, row behind row. */
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { memberStiffness } from './memberStiffness.ts';
import type { BeamModel } from './model.ts';
import { DIRECTIONS, type Direction, type SixStiffnesses, type SpatialStiffness } from './spatialStiffness.ts';
import { solveWeighed, type Matrix } from './weighed.ts';

/** Bars of one section that run along z, out of the plane, between rigid rows; each row hangs on the one before it. */
export interface BarsAcross {
  /** Sides of the section in the plane [mm]. */
  readonly alongX: Mm;
  readonly alongY: Mm;
  /** Of each bar between what holds its two ends [mm]. */
  readonly length: Mm;
  /** Middles of the bars side by side [mm], and how much of a bar is there [-], 1 for a whole one. */
  readonly middles: readonly { readonly z: Mm; readonly share: number }[];
  /** Where the bars of each row lie in the plane [mm], from the held row on. */
  readonly rows: readonly Point[];
}

/** A bar's own axes in the plane's: it runs along z, its sides along x and y. */
const OF_BAR: Matrix = [
  [0, 0, 1],
  [1, 0, 0],
  [0, 1, 0],
];
const OF_PLANE: Matrix = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * The linear stiffness in space of a pad that hangs on rows of bars, about a place of its own.
 *
 *     K = Σ wᵢ·Tᵢᵀ·K₁·Tᵢ   of the bars of one row, side by side
 *     F = Σ Uₖ·K⁻¹·Uₖᵀ,  S = F⁻¹   of the rows, one behind the other
 *
 * K₁ is a bar clamped at both ends: it bends along x and along y with shear, stretches along z and twists. T and U carry
 * moves and loads from place to place. What the bars end in is taken as rigid, and clamped ends as free to warp; both
 * are left out.
 *
 * @param bars - section, length and places [mm], at least one bar and one row
 * @param at - where the pad is moved and loaded [mm]
 * @param material - modulus [MPa] and Poisson's ratio [-]
 * @returns matrix, and stiffnesses with the rest of the pad free and held [N/mm, N·mm/rad]
 *
 * Source: unit-load-method, saint-venant-torsion.
 */
export function acrossStiffness(
  bars: BarsAcross,
  at: Point,
  material: Pick<BeamModel, 'modulus' | 'poisson'>,
): SpatialStiffness {
  const gives = solveWeighed(rowStiffness(bars, material), IDENTITY);
  const give = sumOf(
    bars.rows.map(({ x, y }) => {
      const carried = carriedTo({ x: at.x - x, y: at.y - y, z: 0 }, OF_PLANE);
      // Its transpose carries loads on the pad back to the row: rows of `carried` are the pad's movements.
      return formOf(transposed(carried), gives);
    }),
  );
  const matrix = symmetric(solveWeighed(give, IDENTITY));
  return { matrix, free: six((i) => 1 / give[i]![i]!), held: six((i) => matrix[i]![i]!) };
}

/** All bars of one row together, about the place of the row in the plane. */
function rowStiffness(
  { alongX, alongY, length, middles }: BarsAcross,
  material: Pick<BeamModel, 'modulus' | 'poisson'>,
): Matrix {
  const bar = { id: 'bar', from: 'a', to: 'b', shape: { kind: 'straight' }, thickness: alongX, width: alongY } as const;
  const { matrix } = memberStiffness(bar, { x: 0, y: 0 }, { x: length, y: 0 }, material);
  return sumOf(
    middles.map(({ z, share }) => {
      const end = carriedTo({ x: 0, y: 0, z: z + length / 2 }, OF_BAR);
      return formOf(end, matrix).map((row) => row.map((k) => share * k));
    }),
  );
}

/** Movement, along turned axes, of a place that lies so far off what moves: rows by movement of the latter. */
function carriedTo({ x, y, z }: Point & { readonly z: Mm }, axes: Matrix): Matrix {
  // A turn θ moves the place by θ × d.
  const byTurn = [
    [0, z, -y],
    [-z, 0, x],
    [y, -x, 0],
  ];
  const turned = axes.map((axis) => [0, 1, 2].map((j) => axis.reduce((sum, a, k) => sum + a * byTurn[k]![j]!, 0)));
  return [...axes.map((axis, i) => [...axis, ...turned[i]!]), ...axes.map((axis) => [0, 0, 0, ...axis])];
}

const IDENTITY: Matrix = DIRECTIONS.map((_, i) => DIRECTIONS.map((__, j) => (i === j ? 1 : 0)));

function transposed(matrix: Matrix): Matrix {
  return matrix.map((row, i) => row.map((_, j) => matrix[j]![i]!));
}

/** wᵀ·M·w */
function formOf(way: Matrix, matrix: Matrix): Matrix {
  const felt = matrix.map((row) => row.map((_, j) => row.reduce((sum, m, k) => sum + m * way[k]![j]!, 0)));
  return symmetric(
    way.map((_, i) => felt.map((__, j) => way.reduce((sum, row, k) => sum + row[i]! * felt[k]![j]!, 0))),
  );
}

/** Both halves alike to the last bit. */
function symmetric(matrix: Matrix): number[][] {
  return matrix.map((row, i) => row.map((m, j) => (m + matrix[j]![i]!) / 2));
}

function sumOf(matrices: readonly Matrix[]): Matrix {
  return IDENTITY.map((row, i) => row.map((_, j) => matrices.reduce((sum, one) => sum + one[i]![j]!, 0)));
}

function six(value: (i: number) => number): SixStiffnesses {
  return Object.fromEntries(DIRECTIONS.map((name: Direction, i) => [name, value(i)])) as SixStiffnesses;
}
