/** Σ 1/n⁵ over odd n, which is (31/32)·ζ(5). */
const ODD_FIFTH_POWERS = (31 / 32) * 1.03692775514337;

/** The next term, even for a square, is under the round-off. */
const LAST_TERM = 21;

export interface RectangleTorsion {
  /** J = c1·b·t³ [-], 0.1406 for a square to 1/3. */
  readonly c1: number;
  /** Largest shear strain = k·t·(twist per length) [-], 0.6753 for a square to 1. */
  readonly k: number;
  /** Torque = c2·b·t²·(largest shear stress) [-], 0.2082 for a square to 1/3. */
  readonly c2: number;
}

/**
 * Saint-Venant torsion constants of a rectangle b × t, b ≥ t.
 *
 *     c1 = (1/3)·[1 − (192/π⁵)·(t/b)·Σ tanh(nπb/2t)/n⁵],   n odd
 *     k  = 1 − (8/π²)·Σ 1/(n²·cosh(nπb/2t)),   c2 = c1/k
 *
 * The sum of c1 is taken as (31/32)·ζ(5) less what the hyperbolic tangents lack of one, so that a few terms reach
 * full precision. Holds for free warping; clamped ends stiffen a short strip, which is not included.
 *
 * @param widthOverThickness - b/t [-], ≥ 1, may be infinite
 * @returns c1, k and c2 [-]
 *
 * Source: saint-venant-torsion.
 * @example torsionOfRectangle(2.5) // → { c1: 0.2493650747, k: 0.9680699223, c2: 0.2575899416 }
 */
export function torsionOfRectangle(widthOverThickness: number): RectangleTorsion {
  if (!(widthOverThickness >= 1)) {
    throw new RangeError(`the longer side over the shorter is needed, 1 or more, not ${widthOverThickness}`);
  }
  let lacking = 0;
  let corners = 0;
  for (let n = 1; n <= LAST_TERM; n += 2) {
    const x = (n * Math.PI * widthOverThickness) / 2;
    lacking += 2 / (n ** 5 * (Math.exp(2 * x) + 1));
    corners += 1 / (n ** 2 * Math.cosh(x));
  }
  const c1 = (1 - ((192 / Math.PI ** 5) * (ODD_FIFTH_POWERS - lacking)) / widthOverThickness) / 3;
  const k = 1 - (8 / Math.PI ** 2) * corners;
  return { c1, k, c2: c1 / k };
}
