import type { Mm } from '../units.ts';

type Cubic = readonly [number, number, number];
/** C1 … C4, each a + b·√x + c·x. */
type Branch = readonly [Cubic, Cubic, Cubic, Cubic];

const LOW_C1: Cubic = [1.007, 1.0, -0.031];
const HIGH_C1: Cubic = [1.042, 0.982, -0.036];

/** Roark table 17.1: `low` for 0.1 ≤ x ≤ 2, `high` for 2 ≤ x ≤ 20. */
const ROARK: Readonly<Record<'bending' | 'tension', { readonly low: Branch; readonly high: Branch }>> = {
  bending: {
    low: [LOW_C1, [-0.27, -2.404, 0.749], [0.677, 1.133, -0.904], [-0.414, 0.271, 0.186]],
    high: [HIGH_C1, [-3.599, 1.619, -0.431], [6.084, -5.607, 1.158], [-2.527, 3.006, -0.691]],
  },
  tension: {
    low: [LOW_C1, [-0.114, -0.585, 0.314], [0.241, -0.992, -0.271], [-0.134, 0.577, -0.012]],
    high: [HIGH_C1, [-0.074, -0.156, -0.01], [-3.418, 1.22, -0.005], [3.45, -2.046, 0.051]],
  },
};

const LEAST_X = 0.1;
const BRANCHES_MEET = 2;
const MOST_X = 20;
/** From here on a thicker pad hardly raises the peak; the handbook's own table ends at this D/d. */
const THICK_PAD = 3;

export interface Concentration {
  /** Peak stress over the nominal bending or tension stress of the leaf. */
  readonly factor: number;
  /** The fillet is outside the table: `factor` is then the one at its edge. */
  readonly outsideTable: boolean;
}

/**
 * Stress concentration where a leaf grows out of its pad with a fillet: a stepped flat bar.
 *
 *     Kt = C1 + C2·y + C3·y² + C4·y³,   Ci = a + b·√x + c·x
 *     h = (D − t)/2,   x = h/r,   y = 2h/D
 *
 * Finite elements lie 1 to 6 % above this fit and a handbook table within 6.2 % of it, so it is not on the safe side.
 * Valid for 0.1 ≤ x ≤ 20. For a larger fillet the value at x = 0.1 is given, which is too high. For a smaller one only
 * so much of the pad is counted as the table reaches (never less than 3 t across), which is too low: “at least”.
 *
 * @param load - how the leaf is loaded [-]
 * @param thickness - thickness t of the leaf [mm], > 0
 * @param shoulder - thickness D of the pad in the bending plane [mm], > 0
 * @param fillet - fillet radius r [mm], ≥ 0
 * @returns factor [-], 1 when there is no step, and whether the fillet is outside the table
 *
 * Source: roark-17.1.
 * @example shoulderConcentration('bending', 1, 2, 0.25).factor // → 1.43381134
 */
export function shoulderConcentration(
  load: 'bending' | 'tension',
  thickness: Mm,
  shoulder: Mm,
  fillet: Mm,
): Concentration {
  const fit = shoulderFit(load, thickness, shoulder, fillet);
  if (!fit) return { factor: 1, outsideTable: false };
  const outsideTable = !isInside((shoulder - thickness) / 2, fillet);
  const { x, y, coefficients } = fit;
  const [c1, c2, c3, c4] = coefficients;
  const at = ([a, b, c]: Cubic): number => a + b * Math.sqrt(x) + c * x;
  // The fit dips to 0.998 for a very wide fillet on a very thick pad; a fillet never relieves the leaf.
  return { factor: Math.max(1, at(c1) + y * (at(c2) + y * (at(c3) + y * at(c4)))), outsideTable };
}

/** What goes into the fit of a stepped bar: how much of the pad counts [mm], x = h/r, y = 2h/D, and C1 … C4 as a, b, c. */
export interface ShoulderFit {
  readonly counted: Mm;
  readonly x: number;
  readonly y: number;
  readonly coefficients: Branch;
}

/**
 * What the table of stepped bars is entered with, and the row that it gives there.
 *
 * @param load - how the leaf is loaded [-]
 * @param thickness - thickness t of the leaf [mm], > 0
 * @param shoulder - thickness D of the pad in the bending plane [mm], > 0
 * @param fillet - fillet radius r [mm], ≥ 0
 * @returns thickness of pad that counts [mm], x, y and the coefficients [-]; undefined where there is no step
 *
 * Source: roark-17.1.
 * @example shoulderFit('bending', 1, 2, 0.25)?.x // → 2
 */
export function shoulderFit(
  load: 'bending' | 'tension',
  thickness: Mm,
  shoulder: Mm,
  fillet: Mm,
): ShoulderFit | undefined {
  if (!(shoulder > thickness)) return undefined;
  const counted = Math.min(shoulder, Math.max(THICK_PAD * thickness, thickness + 2 * MOST_X * fillet));
  const h = (counted - thickness) / 2;
  const x = Math.min(MOST_X, Math.max(LEAST_X, h / fillet));
  return { counted, x, y: (2 * h) / counted, coefficients: ROARK[load][x <= BRANCHES_MEET ? 'low' : 'high'] };
}

function isInside(step: Mm, fillet: Mm): boolean {
  return step >= LEAST_X * fillet && step <= MOST_X * fillet;
}
