/** Points that fill a cube of many dimensions more evenly than chance does: rank-1 lattices, moved by a random shift. */

/** How much later dimensions count less when a lattice is chosen: the j-th by 1/j. */
const weight = (dimension: number) => 1 / (dimension + 1);

/** 2π²·B₂(x), the kernel of the worst error of functions with a square-integrable slope. */
function kernel(x: number): number {
  return 2 * Math.PI * Math.PI * (x * x - x + 1 / 6);
}

/**
 * Steps of a lattice of so many points, chosen one dimension after the other so that the worst error over smooth
 * periodic functions is least.
 *
 *     e² = −1 + (1/n)·Σ_k Π_j (1 + 2π²·B₂({k·z_j/n})/j),   B₂(x) = x² − x + 1/6
 *
 * @param points - n [-], a power of 2
 * @param dimensions - how many [-], ≥ 1
 * @returns steps z_j [-], odd, below n
 *
 * Source: lattice-rules.
 * @example latticeSteps(16, 2) // → [1, 7]
 */
export function latticeSteps(points: number, dimensions: number): readonly number[] {
  const kernels = Array.from({ length: points }, (_, k) => kernel(k / points));
  let products: readonly number[] = kernels.map(() => 1);
  const steps: number[] = [];
  for (let j = 0; j < dimensions; j += 1) {
    const factor = (step: number, k: number) => 1 + weight(j) * (kernels[(k * step) % points] ?? 0);
    let best = { step: 1, error: Infinity };
    // A step and its mirror image make the same lattice.
    for (let step = 1; step < Math.max(2, points / 2); step += 2) {
      const error = products.reduce((sum, product, k) => sum + product * factor(step, k), 0);
      if (error < best.error * (1 - 1e-12)) best = { step, error };
    }
    products = products.map((product, k) => product * factor(best.step, k));
    steps.push(best.step);
  }
  return steps;
}

/** Nearest to 0 and 1 that a share may come, where a normal law still has a value. */
const EDGE = 2 ** -52;

/**
 * A point of a shifted lattice, folded so that functions which do not repeat themselves are met as well as those that do.
 *
 *     u = {k·z/n + Δ},   share = 1 − |2u − 1|
 *
 * @param index - k [-], from 0 to n − 1
 * @param points - n [-]
 * @param steps - z of each dimension [-]
 * @param shift - Δ of each dimension [-], 0 to 1
 * @returns shares [-], strictly between 0 and 1, one for each dimension
 *
 * Source: lattice-rules, cranley-patterson.
 * @example latticePoint(3, 16, [1, 7], [0.25, 0.5]) // → [0.875, 0.375]
 */
export function latticePoint(
  index: number,
  points: number,
  steps: readonly number[],
  shift: readonly number[],
): readonly number[] {
  return steps.map((step, j) => {
    const moved = ((index * step) % points) / points + (shift[j] ?? 0);
    const folded = 1 - Math.abs(2 * (moved % 1) - 1);
    return Math.min(1 - EDGE, Math.max(EDGE, folded));
  });
}
