/**
 * Weights with which values at places make up the value of their polynomial at another place.
 *
 *     wᵢ = Π (x − xⱼ)/(xᵢ − xⱼ),  j ≠ i
 *
 * @param places - xᵢ, all different [unit]
 * @param at - x [unit]
 * @returns a weight for each place [-]; they sum to 1
 *
 * @example lagrangeWeights([0, 1, 3], 2) // → [-0.33333333, 1, 0.33333333]
 */
export function lagrangeWeights(places: readonly number[], at: number): number[] {
  return places.map((own, i) =>
    places.reduce((product, other, j) => (j === i ? product : (product * (at - other)) / (own - other)), 1),
  );
}
