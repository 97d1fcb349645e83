import type { Mm } from '../units.ts';

/** An over-centre toggle as pinned rigid links with springs at their pins. */
export interface ToggleParts {
  /** Half the distance between the outer pins, along the line of thrust, a [mm]. */
  readonly half: Mm;
  /** Height of the middle pin above that line as made, H [mm]. */
  readonly height: Mm;
  /** Stiffness against the outer pins moving apart, per MPa of modulus, k/E [mm]. */
  readonly thrust: number;
  /** How far the last pin's foot leans outwards per opening, σ [rad/mm]. */
  readonly lean: number;
  /** Stiffness in turn of either outer pin per MPa of modulus, K/E [mm³]; the middle one is half as stiff. */
  readonly pin: number;
}

/** One state of a toggle. */
export interface ToggleState {
  /** How far each link has turned, ψ [rad]. */
  readonly turned: number;
  /** How far the last pin has turned against its foot [rad]. */
  readonly lastTurned: number;
  /** How far the outer pins have been pushed apart, δ [mm]. */
  readonly opened: Mm;
  /** Force on the middle pin over the modulus, F/E [mm²]; below 0 where it pulls itself on. */
  readonly effort: number;
}

/**
 * State of a toggle whose middle has been pushed so far.
 *
 *     sin φ = (H − v)/l,   l² = a² + H²,   ψ = φ₀ − φ,   δ = 2·(l·cos φ − a)
 *     U = ½·k·δ² + ½·K·[ψ² + ½·(2ψ)² + (ψ + σ·δ)²],   F = dU/dv
 *
 * A flat two-bar truss of rigid bars on a spring, with pins that resist: the first turns with its bar, the middle one,
 * half as stiff, twice as far, and the last also by what its foot leans.
 *
 * @param parts - its lengths [mm] and stiffnesses per MPa
 * @param travel - v of the middle pin towards the line of thrust and past it [mm], −(l − H) to l + H
 * @returns turn and turn of the last pin [rad], opening [mm] and effort per MPa [mm²]
 *
 * Source: two-bar-truss.
 * @example toggleAt({ half: 4, height: 3, thrust: 1, lean: 0, pin: 0 }, 3) // → { turned: 0.6435011, opened: 2, effort: 0 }
 */
export function toggleAt({ half, height, thrust, lean, pin }: ToggleParts, travel: Mm): ToggleState {
  const link = Math.hypot(half, height);
  const left = height - travel;
  const level = Math.sqrt(link * link - left * left);
  const turned = Math.asin(height / link) - Math.asin(left / link);
  const opened = 2 * (level - half);
  const lastTurned = turned + lean * opened;
  // dδ/dv = 2·tan φ and dψ/dv = 1/(l·cos φ).
  const opening = (2 * left) / level;
  const pins = pin * ((3 * turned + lastTurned) / level + lastTurned * lean * opening);
  return { turned, lastTurned, opened, effort: thrust * opened * opening + pins };
}

/** How a leaf gives that is pushed across, beyond its tip. */
export interface PushedBeyondTip {
  /** Force over give and modulus, k/E [mm]. */
  readonly stiffness: number;
  /** Slope of the tip over give, σ [rad/mm]. */
  readonly lean: number;
}

/**
 * A leaf clamped at its foot and pushed across, at the end of a rigid arm beyond its tip.
 *
 *     k/E = I/(L³/3 + e·L² + e²·L),   σ = (L²/2 + e·L)/(L³/3 + e·L² + e²·L)
 *
 * @param inertia - second moment of area I = b·t³/12 [mm⁴], > 0
 * @param length - of the leaf, L [mm], > 0
 * @param arm - from its tip to the line of the push, e [mm], ≥ 0
 * @returns stiffness per MPa of modulus [mm] and lean [rad/mm]
 *
 * Source: small-deflection.
 * @example pushedBeyondTip(1, 3, 0) // → { stiffness: 0.1111111, lean: 0.5 }
 */
export function pushedBeyondTip(inertia: number, length: Mm, arm: Mm): PushedBeyondTip {
  const give = length ** 3 / 3 + arm * length ** 2 + arm ** 2 * length;
  return { stiffness: inertia / give, lean: (length ** 2 / 2 + arm * length) / give };
}
