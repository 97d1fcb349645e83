/**
 * How much of the peak at a root is felt, 0 none to 1 all. No test of a printed root was found;
 * the value stands here alone so that one change reaches every figure.
 */
export const NOTCH_SENSITIVITY = {
  value: 0.5,
  provenance: {
    kind: 'memory',
    because: 'ductile plastics feel less of the peak than metals; 0 would ignore the root, 1 would be the full factor',
  },
} as const;

/**
 * What the strain at the root is multiplied by.
 *
 *     k = 1 + q·(Kt − 1)
 *
 * @param concentration - stress concentration Kt [-], ≥ 1
 * @param sensitivity - notch sensitivity q [-], 0 to 1
 * @returns factor on strain [-], ≥ 1
 *
 * Source: peterson-3.
 * @example rootFactor(1.6, 0.5) // → 1.3
 */
export function rootFactor(concentration: number, sensitivity: number): number {
  return 1 + sensitivity * (concentration - 1);
}
