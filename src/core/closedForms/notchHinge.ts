import { asRad, type Mm, type MPa, type Rad } from '../units.ts';

/**
 * Turning of a notch hinge per moment: two full semicircles with a neck between them.
 *
 *     C = θ/M = (12/(E·b))·∫dx/t(x)³,   t(x) = t + 2R − 2·√(R² − x²)
 *     β = t/(2R),   γ = 1 + β,   d = 2β + β²
 *     C = 3/(2·E·b·R²·d)·{ (1 + β)/γ² + (3 + 2β + β²)/(γ·d) + [6·(1 + β)/d^(3/2)]·atan √((2 + β)/β) }
 *
 * Theory of a slender bar of changing thickness. Two-dimensional finite elements are 5 to 20 % softer for t/R from
 * 0.14 to 0.6; not to be relied on above t/R of about 0.6.
 *
 * @param modulus - E, E/(1 − ν²) for a wide hinge [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param neck - t at the thinnest place [mm], > 0
 * @param radius - R of both semicircles [mm], > 0
 * @returns compliance [rad/(N·mm)], > 0
 *
 * Source: notch-hinge.
 * @example circularNotch(1, 1, 0.2, 1) // → 769.99825156
 */
export function circularNotch(modulus: MPa, width: Mm, neck: Mm, radius: Mm): number {
  const beta = neck / (2 * radius);
  const gamma = 1 + beta;
  const d = beta * (2 + beta);
  const braces = 1 / gamma + (3 + d) / (gamma * d) + ((6 * gamma) / d ** 1.5) * Math.atan(Math.sqrt((2 + beta) / beta));
  return (3 * braces) / (2 * modulus * width * radius ** 2 * d);
}

/**
 * Turning of a notch hinge per moment, for a neck much thinner than its radius.
 *
 *     C = 9π·√R/(2·E·b·t^(5/2))
 *
 * The limit of `circularNotch` for t/R → 0; 1.3 % too soft at t/R = 0.1, 6.8 % at 0.5.
 *
 * @param modulus - E, E/(1 − ν²) for a wide hinge [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param neck - t at the thinnest place [mm], > 0
 * @param radius - R of both semicircles [mm], > 0
 * @returns compliance [rad/(N·mm)], > 0
 *
 * Source: notch-hinge.
 * @example thinCircularNotch(1, 1, 0.2, 1) // → 790.2916572
 */
export function thinCircularNotch(modulus: MPa, width: Mm, neck: Mm, radius: Mm): number {
  return (9 * Math.PI * Math.sqrt(radius)) / (2 * modulus * width * neck ** 2.5);
}

/**
 * Turning of a notch hinge per moment: two full semi-ellipses with a neck between them.
 *
 *     C = (a/c)·C_circle(R = c)
 *
 * An exact identity of the integral of `circularNotch`, with the same limits of trust.
 *
 * @param modulus - E, E/(1 − ν²) for a wide hinge [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param neck - t at the thinnest place [mm], > 0
 * @param along - semi-axis a along the leaf [mm], > 0
 * @param deep - semi-axis c into the depth [mm], > 0
 * @returns compliance [rad/(N·mm)], > 0
 *
 * Source: notch-hinge.
 * @example ellipticNotch(1, 1, 0.84, 6, 3) // → 72.999459
 */
export function ellipticNotch(modulus: MPa, width: Mm, neck: Mm, along: Mm, deep: Mm): number {
  return (along / deep) * circularNotch(modulus, width, neck, deep);
}

/**
 * Straight length that one quarter-circle fillet at the end of a leaf is worth in bending.
 *
 *     ΔL = E·b·t³·C_circle(t, R = r)/24
 *
 * Exact within the theory of a slender bar; the block behind it adds 0.23 to 0.38 mm at t = 0.84 in finite elements.
 *
 * @param thickness - t of the leaf [mm], > 0
 * @param radius - r of the fillet [mm], ≥ 0
 * @returns length [mm], ≥ 0
 *
 * Source: notch-hinge.
 * @example filletLength(1, 2) // → 0.77977569
 */
export function filletLength(thickness: Mm, radius: Mm): Mm {
  return radius === 0 ? 0 : (thickness ** 3 * circularNotch(1, 1, thickness, radius)) / 24;
}

/**
 * Turning per moment of a straight leaf with a quarter-circle fillet at all four corners.
 *
 *     C = 12·(ℓ + 2·ΔL)/(E·b·t³),   ℓ = L − 2r
 *
 * @param modulus - E, E/(1 − ν²) for a wide leaf [MPa], > 0
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L over all, fillets included [mm], ≥ 2r
 * @param radius - r of the fillets [mm], ≥ 0
 * @returns compliance [rad/(N·mm)], > 0
 *
 * Source: notch-hinge.
 * @example filletedLeaf(1, 1, 0.84, 10, 1) // → 181.54683
 */
export function filletedLeaf(modulus: MPa, width: Mm, thickness: Mm, length: Mm, radius: Mm): number {
  const worth = length - 2 * radius + 2 * filletLength(thickness, radius);
  return (12 * worth) / (modulus * width * thickness ** 3);
}

/**
 * Nominal outer-fibre strain in the neck of a notch hinge with semicircles.
 *
 *     ε = 6·M/(E·b·t²) = 6·θ/(E·b·t²·C)
 *
 * Without the concentration of the notch, for which see `notchConcentration`.
 *
 * @param neck - t at the thinnest place [mm], > 0
 * @param radius - R of both semicircles [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: notch-hinge.
 * @example notchStrain(0.2, 1, radians(10)) // → 0.0339999977
 */
export function notchStrain(neck: Mm, radius: Mm, angle: Rad): number {
  return (6 * Math.abs(angle)) / (neck ** 2 * circularNotch(1, 1, neck, radius));
}

/**
 * Angle to which a notch hinge with semicircles may be turned before its neck strains nominally more than asked.
 *
 * The inverse of `notchStrain`.
 *
 * @param neck - t at the thinnest place [mm], > 0
 * @param radius - R of both semicircles [mm], > 0
 * @param strain - allowed nominal strain ε as a fraction [-], ≥ 0
 * @returns end rotation θ [rad], ≥ 0
 *
 * Source: notch-hinge.
 * @example notchAngleAtStrain(0.2, 1, 1) // → 5.1333217
 */
export function notchAngleAtStrain(neck: Mm, radius: Mm, strain: number): Rad {
  return asRad((strain * neck ** 2 * circularNotch(1, 1, neck, radius)) / 6);
}

/**
 * Stress concentration of a notch with semicircles in bending, on the nominal stress 6·M/(b·t²).
 *
 *     Kt = (1 + t/(2R))^(9/20)
 *
 * A fit recalled from memory and not confirmed by any document opened here; not on the safe side for certain.
 *
 * @param neck - t at the thinnest place [mm], > 0
 * @param radius - R of both semicircles [mm], > 0
 * @returns factor [-], ≥ 1
 *
 * Source: notch-concentration.
 * @example notchConcentration(0.5, 1) // → 1.1056292
 */
export function notchConcentration(neck: Mm, radius: Mm): number {
  return (1 + neck / (2 * radius)) ** 0.45;
}
