/**
 * The core works in one consistent set: mm, N, MPa (= N/mm²), rad.
 * A name without a unit suffix is in this set; any other unit is in the name
 * (`angleDeg`, `strainPercent`) and lives only in `src/ui` and at the edge of `src/files`.
 */
export type Mm = number;
export type MPa = number;
export type NMm = number;

/** Angles are branded: a degree passed for a radian must not compile. */
export type Rad = number & { readonly unit: 'rad' };

/**
 * An angle given in degrees, in radians.
 *
 * @param angleDeg - angle [deg], any finite value
 * @returns angle [rad]
 *
 * @example radians(180) // → 3.14159265
 */
export function radians(angleDeg: number): Rad {
  return ((angleDeg * Math.PI) / 180) as Rad;
}

/**
 * An angle given in radians, in degrees.
 *
 * @param angle - angle [rad], any finite value
 * @returns angle [deg]
 *
 * @example degrees(radians(35)) // → 35.000000
 */
export function degrees(angle: Rad): number {
  return (angle * 180) / Math.PI;
}

/**
 * Re-brands a number that is already an angle in radians, after arithmetic has stripped the brand.
 *
 * @param value - angle [rad]
 * @returns the same angle [rad]
 */
export function asRad(value: number): Rad {
  return value as Rad;
}
