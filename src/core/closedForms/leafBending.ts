import { asRad, type Mm, type Rad } from '../units.ts';

/**
 * Outer-fibre strain of a leaf bent to a circular arc.
 *
 *     ε = (t/2)·|θ|/L
 *
 * Exact at any angle for an unstretched mid-line under a constant moment. Beyond yield it is a nominal strain:
 * a plastic hinge concentrates curvature.
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: plane-bending.
 * @example bendingStrain(0.84, 10, radians(90)) // → 0.0659734457
 */
export function bendingStrain(thickness: Mm, length: Mm, angle: Rad): number {
  return (thickness * Math.abs(angle)) / (2 * length);
}

/**
 * True (logarithmic) strain on the stretched face of a leaf bent to a circular arc.
 *
 *     ε_true = ln(1 + t/(2R)),   R = L/|θ|
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @returns true strain as a fraction [-], ≥ 0
 *
 * Source: plane-bending.
 * @example trueBendingStrain(0.84, 20, radians(90)) // → 0.0324543371
 */
export function trueBendingStrain(thickness: Mm, length: Mm, angle: Rad): number {
  return Math.log1p(bendingStrain(thickness, length, angle));
}

/**
 * Shortest leaf that bends to an angle without straining more than asked.
 *
 *     L = t·|θ|/(2ε)
 *
 * @param thickness - t [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @param strain - allowed outer-fibre strain ε as a fraction [-], > 0
 * @returns flexing length L [mm], ≥ 0
 *
 * Source: plane-bending.
 * @example minimumLength(0.84, radians(40), 0.147) // → 1.994662
 */
export function minimumLength(thickness: Mm, angle: Rad, strain: number): Mm {
  return (thickness * Math.abs(angle)) / (2 * strain);
}

/**
 * Angle to which a leaf may be bent before it strains more than asked.
 *
 *     θ = 2·ε·L/t
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param strain - allowed outer-fibre strain ε as a fraction [-], ≥ 0
 * @returns end rotation θ [rad], ≥ 0
 *
 * Source: plane-bending.
 * @example angleAtStrain(0.84, 12, 0.02) // → 0.5714286
 */
export function angleAtStrain(thickness: Mm, length: Mm, strain: number): Rad {
  return asRad((2 * strain * length) / thickness);
}

/**
 * Where the tip of a leaf goes when it is rolled to an arc, measured from its clamp.
 *
 *     x = L·sin θ/θ,   y = L·(1 − cos θ)/θ = L·sin(θ/2)·sin(θ/2)/(θ/2)
 *
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], counter-clockwise positive
 * @returns tip along the undeformed leaf (x) and across it (y) [mm]
 *
 * Source: plane-bending.
 * @example rolledTip(1, radians(90)).x // → 0.63661977
 */
export function rolledTip(length: Mm, angle: Rad): { x: Mm; y: Mm } {
  return { x: length * sinc(angle), y: length * Math.sin(angle / 2) * sinc(angle / 2) };
}

/** sin x / x; below 10⁻⁴ by its series, whose next term is under the round-off. */
function sinc(x: number): number {
  return Math.abs(x) < 1e-4 ? 1 - (x * x) / 6 : Math.sin(x) / x;
}
