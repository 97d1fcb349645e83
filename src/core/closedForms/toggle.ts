import type { Mm } from '../units.ts';

/** An over-centre toggle as pinned rigid links with springs at their pins. */
export interface ToggleParts {
  /** Half the distance between the outer pins, along the line of thrust, a [mm]. */
  readonly half: Mm;
  /** Height of the middle pin above that line as made, H [mm]. */
  readonly height: Mm;
  /** Stiffness against the outer pins moving apart, per MPa of modulus, k/E [mm]. */
  readonly thrust: number;
  /** Stiffness in turn of all pins together: energy is ½·K·ψ² when both links turn by ψ, K/E [mm³]. */
  readonly pins: number;
}

/** One state of a toggle. */
export interface ToggleState {
  /** How far each link has turned, ψ [rad]. */
  readonly turned: number;
  /** How far the outer pins have been pushed apart, δ [mm]. */
  readonly opened: Mm;
  /** Force on the middle pin over the modulus, F/E [mm²]; below 0 where it pulls itself on. */
  readonly effort: number;
}

/**
 * State of a toggle whose middle has been pushed so far.
 *
 *     sin φ = (H − v)/l,   l² = a² + H²,   ψ = φ₀ − φ,   δ = 2·(l·cos φ − a)
 *     F = 2·k·δ·tan φ + K·ψ/(l·cos φ)
 *
 * The derivative of ½·k·δ² + ½·K·ψ²: a flat two-bar truss of rigid bars on a spring, and pins that resist.
 *
 * @param parts - its lengths [mm] and stiffnesses per MPa
 * @param travel - v of the middle pin towards the line of thrust and past it [mm], −(l − H) to l + H
 * @returns turn [rad], opening [mm] and effort per MPa [mm²]
 *
 * Source: two-bar-truss.
 * @example toggleAt({ half: 4, height: 3, thrust: 1, pins: 0 }, 3) // → { turned: 0.6435011, opened: 2, effort: 0 }
 */
export function toggleAt({ half, height, thrust, pins }: ToggleParts, travel: Mm): ToggleState {
  const link = Math.hypot(half, height);
  const left = height - travel;
  const level = Math.sqrt(link * link - left * left);
  const turned = Math.asin(height / link) - Math.asin(left / link);
  const opened = 2 * (level - half);
  return { turned, opened, effort: (2 * thrust * opened * left) / level + (pins * turned) / level };
}

/**
 * Stiffness of a leaf clamped at its foot against a push across it, beyond its tip, at the end of a rigid arm.
 *
 *     k/E = I/(L³/3 + e·L² + e²·L)
 *
 * @param inertia - second moment of area I = b·t³/12 [mm⁴], > 0
 * @param length - of the leaf, L [mm], > 0
 * @param arm - from its tip to the line of the push, e [mm], ≥ 0
 * @returns stiffness per MPa of modulus [mm]
 *
 * Source: small-deflection.
 * @example pushedBeyondTip(1, 3, 0) // → 0.1111111
 */
export function pushedBeyondTip(inertia: number, length: Mm, arm: Mm): number {
  return inertia / (length ** 3 / 3 + arm * length ** 2 + arm ** 2 * length);
}
