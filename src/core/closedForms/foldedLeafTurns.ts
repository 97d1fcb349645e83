/** A leaf folded to and fro whose half-round turns bend like the rest of it, for little travel. */
import type { Mm } from '../units.ts';

/** Straight runs of one length side by side, joined by half-round turns over the spacing. */
export interface FoldedShape {
  /** n [-], ≥ 1 */
  readonly runs: number;
  /** Length of one run L [mm], > 0 */
  readonly length: Mm;
  /** From the middle of one run to the middle of the next s [mm], > 0 */
  readonly spacing: Mm;
}

/** What one end feels when it is moved against the other and kept from turning and from moving otherwise. */
export interface FoldedEffort {
  /** Force along the movement over E·b·travel [-]. */
  readonly stiffness: number;
  /** Largest strain of bending and pull together over the travel [1/mm]. */
  readonly strain: number;
  /** Where that is. */
  readonly hardest: FoldedPlace;
}

/** A place on the middle line, its x and y from the fixed end: an end of a run, or the farthest out in a turn. */
export type FoldedPlace =
  | { readonly kind: 'run'; readonly x: Mm; readonly y: Mm }
  /** The centre of the turn, and whether force over half a spacing adds to the moment there (1) or takes from it (−1). */
  | { readonly kind: 'turn'; readonly x: Mm; readonly y: Mm; readonly adds: 1 | -1 };

interface StrainedPlace {
  readonly strain: number;
  readonly place: FoldedPlace;
}

type Three = readonly [number, number, number];

/**
 * Length of the middle line, runs and turns together.
 *
 *     n·L + (n − 1)·π·s/2
 *
 * @param shape - runs [-], length and spacing [mm]
 * @returns length [mm], > 0
 *
 * Source: plane-bending.
 * @example unfoldedLength({ runs: 3, length: 10, spacing: 4 }) // → 42.56637061
 */
export function unfoldedLength({ runs, length, spacing }: FoldedShape): Mm {
  return runs * length + ((runs - 1) * Math.PI * spacing) / 2;
}

/**
 * Stiffness and strain of a folded leaf whose end is moved by little, kept from turning and from moving aside.
 *
 *     u = F·P,   F_ij = ∫ (m_i·m_j/(E·I) + n_i·n_j/(E·A)) ds
 *
 * by unit loads X, Y and M at the moving end, over straight runs and half-round turns exactly; shear and the change of
 * lever arms with travel are left out, and so is the sharper strain inside a tight turn.
 *
 * @param shape - runs [-], length and spacing [mm]
 * @param thickness - t [mm], > 0
 * @param way - `across` the runs, or `along` them [-]
 * @returns force over E·b·travel [-] and strain over travel [1/mm]
 *
 * Source: unit-load-method.
 * @example foldedEffort({ runs: 1, length: 10, spacing: 4 }, 0.5, 'across') // → { stiffness: 0.000125, strain: 0.015 }
 */
export function foldedEffort(shape: FoldedShape, thickness: Mm, way: 'across' | 'along'): FoldedEffort {
  const flexibility = flexibilityOf(shape, thickness);
  const [x, y, m] = flexibility;
  // One column of the inverse: what moves the end by 1 in one direction and by nothing in the other two.
  const [own, column] = way === 'across' ? ([0, crossed(y, m)] as const) : ([1, crossed(m, x)] as const);
  const determinant = dotted(flexibility[own], column);
  const loads: Three = [column[0] / determinant, column[1] / determinant, column[2] / determinant];
  const { strain, place } = peakOf(shape, thickness, loads);
  return { stiffness: loads[own], strain, hardest: place };
}

/** One piece of the middle line: a run at x, or the turn after it about a centre, above (1) or below (−1). */
type Piece =
  | { readonly kind: 'run'; readonly x: Mm }
  | { readonly kind: 'turn'; readonly x: Mm; readonly y: Mm; readonly side: 1 | -1 };

/** Run i goes up where i is even; the turn after it is then above. */
function piecesOf({ runs, length, spacing }: FoldedShape): readonly Piece[] {
  return Array.from({ length: runs }, (_, i): readonly Piece[] => {
    const run = { kind: 'run', x: i * spacing } as const;
    if (i === runs - 1) return [run];
    const isUp = i % 2 === 0;
    return [run, { kind: 'turn', x: (i + 0.5) * spacing, y: isUp ? length : 0, side: isUp ? 1 : -1 }];
  }).flat();
}

function endOf({ runs, length, spacing }: FoldedShape): { readonly x: Mm; readonly y: Mm } {
  return { x: (runs - 1) * spacing, y: runs % 2 === 1 ? length : 0 };
}

/** Flexibility times E·b: rows X, Y, M. Unit loads bend a point at (dx, dy) from the end by −dy, dx and 1. */
function flexibilityOf(shape: FoldedShape, thickness: Mm): readonly [Three, Three, Three] {
  const { length, spacing } = shape;
  const end = endOf(shape);
  const [bends, pulls] = [12 / thickness ** 3, 1 / thickness];
  let [xx, xy, yy, xm, ym, mm] = [0, 0, 0, 0, 0, 0];
  for (const piece of piecesOf(shape)) {
    const sums = piece.kind === 'run' ? alongRun(end, piece.x, length) : alongTurn(end, piece, spacing / 2);
    xx += bends * sums.yy + pulls * sums.stretchX;
    xy -= bends * sums.xy;
    yy += bends * sums.xx + pulls * sums.stretchY;
    xm -= bends * sums.y;
    ym += bends * sums.x;
    mm += bends * sums.one;
  }
  return [
    [xx, xy, xm],
    [xy, yy, ym],
    [xm, ym, mm],
  ];
}

/** Integrals of products of the distances to the end, and of the squared direction, along one piece. */
interface Sums {
  readonly one: number;
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  readonly stretchX: number;
  readonly stretchY: number;
}

type At = { readonly x: Mm; readonly y: Mm };

function alongRun(end: At, x: Mm, length: Mm): Sums {
  const dx = end.x - x;
  // dy falls from end.y to end.y − L.
  const first = length * (end.y - length / 2);
  const second = length * (end.y * (end.y - length) + length ** 2 / 3);
  return {
    one: length,
    x: dx * length,
    y: first,
    xx: dx * dx * length,
    xy: dx * first,
    yy: second,
    stretchX: 0,
    stretchY: length,
  };
}

/** Over half a circle cos and sin·cos cancel, sin sums to ±2 and both squares to π/2. */
function alongTurn(end: At, turn: Extract<Piece, { kind: 'turn' }>, radius: Mm): Sums {
  const [dx, dy] = [end.x - turn.x, end.y - turn.y];
  const sine = 2 * turn.side * radius;
  const half = (Math.PI / 2) * radius;
  return {
    one: 2 * half,
    x: 2 * half * dx,
    y: 2 * half * dy - radius * sine,
    xx: 2 * half * dx * dx + half * radius ** 2,
    xy: 2 * half * dx * dy - dx * radius * sine,
    yy: 2 * half * dy * dy - 2 * dy * radius * sine + half * radius ** 2,
    stretchX: half,
    stretchY: half,
  };
}

/** ε = 6·|M|/(E·b·t²) + |N|/(E·b·t), at the ends of the runs and where a turn is bent most. */
function peakOf(shape: FoldedShape, thickness: Mm, [fx, fy, moment]: Three): StrainedPlace {
  const end = endOf(shape);
  const radius = shape.spacing / 2;
  const strain = (bent: number, pull: number) => (6 * Math.abs(bent)) / thickness ** 2 + Math.abs(pull) / thickness;
  const at = (x: Mm, y: Mm) => moment + fy * (end.x - x) - fx * (end.y - y);
  const places = piecesOf(shape).flatMap((piece): readonly StrainedPlace[] => {
    const { kind, x } = piece;
    if (kind === 'run') return [0, shape.length].map((y) => ({ strain: strain(at(x, y), fy), place: { kind, x, y } }));
    // M(α) = M(centre) + r·(fx·sin α − fy·cos α) is largest or least along (−fy, fx); at its ends the runs answer.
    const size = Math.hypot(fx, fy);
    if (size === 0) return [];
    return ([1, -1] as const).flatMap((adds) => {
      const [cos, sin] = [(-adds * fy) / size, (adds * fx) / size];
      if (sin * piece.side < 0) return [];
      const { y } = piece;
      const bent = at(x + radius * cos, y + radius * sin);
      return [{ strain: strain(bent, fy * cos - fx * sin), place: { kind, x, y, adds } }];
    });
  });
  return places.reduce((most, place) => (place.strain > most.strain ? place : most));
}

function crossed(a: Three, b: Three): Three {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function dotted(a: Three, b: Three): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
