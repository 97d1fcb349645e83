import type { Mm, MPa, NMm, Rad } from '../units.ts';

/**
 * Moment of a strip with free edges bent to a cylinder, over that of a narrow one.
 *
 *     M·R/(E·I) = (1 − ν²·F_M)/(1 − ν²),   F_M = F + (x/4)·dF/dx
 *     F = (2/x)·(cosh x − cos x)/(sinh x + sin x),   x = [3(1 − ν²)]^¼·√S
 *
 * F_M and not F: F belongs to the stored energy, and the moment differs by the work of the changing curvature.
 *
 * @param searle - S = b²/(R·t) = b²·θ/(L·t) [-], ≥ 0
 * @param poisson - Poisson's ratio ν [-], 0 to 0.5
 * @returns ratio [-], 1 for a narrow strip to 1/(1 − ν²) for a wide one
 *
 * Source: wide-strip.
 * @example momentRatio(20, 0.35) // → 1.1034326
 */
export function momentRatio(searle: number, poisson: number): number {
  const stiffening = 1 - poisson * poisson;
  const x = Math.sqrt(Math.sqrt(3 * stiffening) * searle);
  return (1 - poisson * poisson * edgeFunction(x)) / stiffening;
}

/**
 * F_M(x) = (3/2)·G/x + G′/2 with G = (cosh x − cos x)/(sinh x + sin x) and
 * G′ = 2·sinh x·sin x/(sinh x + sin x)², which is F + (x/4)·dF/dx written out.
 */
function edgeFunction(x: number): number {
  // 1 − x⁴/90 + … and 3/(2x): past these ends the rest is under the round-off, and cosh would overflow at 710.
  if (x < 1e-4) return 1;
  if (x > 40) return 3 / (2 * x);
  const sum = Math.sinh(x) + Math.sin(x);
  // cosh x − cos x without the cancellation at small x
  const difference = 2 * (Math.sinh(x / 2) ** 2 + Math.sin(x / 2) ** 2);
  return (1.5 * difference) / (x * sum) + (Math.sinh(x) * Math.sin(x)) / (sum * sum);
}

/**
 * A leaf shorter than it is wide is held flat by its clamps; the free-edge strip is reached at twice the width.
 * The straight bridge between them is an assumption of ours, there so that a dragged length does not jump.
 */
export const WIDTH_BRIDGE = {
  from: 1,
  to: 2,
  because: 'clamps hold a leaf flat across its width over about one width; the blend up to two widths is assumed',
} as const;

/**
 * How much stiffer a leaf is than a narrow one, because of its width.
 *
 * 1/(1 − ν²) when L ≤ b, `momentRatio` when L ≥ 2b, and a straight bridge between them, which is an assumption.
 *
 * @param width - b, out of the bending plane [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param thickness - t [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @param poisson - Poisson's ratio ν [-], 0 to 0.5
 * @returns ratio [-], 1 to 1/(1 − ν²)
 *
 * Source: wide-strip.
 * @example widthRatio(6, 4, 0.84, radians(35), 0.35) // → 1.1396011
 */
export function widthRatio(width: Mm, length: Mm, thickness: Mm, angle: Rad, poisson: number): number {
  const flat = 1 / (1 - poisson * poisson);
  const free = momentRatio((width * width * Math.abs(angle)) / (length * thickness), poisson);
  const reach = (length / width - WIDTH_BRIDGE.from) / (WIDTH_BRIDGE.to - WIDTH_BRIDGE.from);
  const share = Math.min(1, Math.max(0, reach));
  return flat + share * (free - flat);
}

/**
 * Torque per angle of a leaf bent to a circular arc (secant, when the width ratio is that of the angle).
 *
 *     K = r·E·(b·t³/12)/L
 *
 * @param modulus - E [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param ratio - width ratio r from `widthRatio` [-], ≥ 1
 * @returns stiffness [N·mm/rad], > 0
 *
 * Source: plane-bending.
 * @example leafStiffness(1200, 20, 0.42, 5, 1) // → 29.6352
 */
export function leafStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm, ratio: number): number {
  return (ratio * modulus * width * thickness ** 3) / (12 * length);
}

/**
 * Torque that bends a leaf to a circular arc.
 *
 *     M = r·E·(b·t³/12)·θ/L
 *
 * @param modulus - E [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @param ratio - width ratio r from `widthRatio` [-], ≥ 1
 * @returns torque [N·mm], of the sign of the angle
 *
 * Source: plane-bending.
 * @example leafTorque(1200, 20, 0.42, 5, radians(90), 1) // → 46.550863
 */
export function leafTorque(modulus: MPa, width: Mm, thickness: Mm, length: Mm, angle: Rad, ratio: number): NMm {
  return leafStiffness(modulus, width, thickness, length, ratio) * angle;
}
