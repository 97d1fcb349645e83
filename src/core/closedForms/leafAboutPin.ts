import { columnFunctions } from '../numeric/columnFunctions.ts';
import { findRoot } from '../numeric/roots.ts';
import type { Mm, Rad } from '../units.ts';
import { beamColumn } from './beamColumn.ts';

/** A leaf whose moving end turns about a fixed pin, in figures without dimension. */
export interface LeafAboutPin {
  /** Force along the leaf, N·L²/(E·I), compression positive. */
  readonly thrust: number;
  /** Torque about the pin per angle, T·L/(E·I·θ). */
  readonly stiffness: number;
  /** Largest strain, of bending and thrust together, as a fraction. */
  readonly strain: number;
}

/** Just below 4π², where a leaf between two clamps buckles; no pin drives the thrust that far. */
const MOST_THRUST = 4 * Math.PI ** 2 * (1 - 1e-9);

/**
 * A leaf clamped at one end, and at the other in a pad that turns about a fixed pin on the line of the leaf.
 *
 * The pin asks the moving end to come nearer by μ·L·θ²/2, μ = 1 − c; bending by the same angle shortens the leaf by
 * g·L·θ², and the rest squeezes or stretches it. The thrust n = N·L²/(E·I) follows from
 *
 *     n/12 = (θ·L/t)²·(μ/2 − g(n)),   g = μ²/2 + b₁·(1 − 2μ)²/4 + b₂/4
 *     T·L/(E·I·θ) = ½·[k₁·(1 − 2μ)² + k₂] + n·μ·(1 − μ)
 *
 * with the stiffness k₁, k₂ and the bowing b₁, b₂ of an S and of a C from `beamColumn`. For
 * little thrust the squeeze is θ²·(9c − 9c² − 1)/15. Small slopes: against shapes solved exactly, with stretch, at
 * t/L = 0.05 and 0.1, up to 0.3 rad and c from 0.1 to 0.9, torque is within 0.5 % and strain within 1.3 %.
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param angle - rotation θ of the pad [rad], either sign, small
 * @param centre - c, where the pin is, as a share of L from the fixed clamp [-], 0 to 1
 * @returns thrust, stiffness and strain [-]
 *
 * Source: leaf-about-pin.
 * @example leafAboutPin(0.5, 10, 0.1, 0.5) // → { thrust: 3.71488, stiffness: 1.59811, strain: 0.00370736 }
 */
export function leafAboutPin(thickness: Mm, length: Mm, angle: Rad, centre: number): LeafAboutPin {
  const turn = Math.abs(angle);
  const slenderTurn = ((turn * length) / thickness) ** 2;
  const excess = (n: number) => slenderTurn * (demand(centre) - shortening(n, centre)) - n / 12;
  // A pull makes the leaf shorten less than at rest, so the pull never exceeds what the leaf at rest would ask for.
  const mostPull = 12 * slenderTurn * Math.min(0, demand(centre) - shortening(0, centre));
  const found = findRoot(excess, mostPull, MOST_THRUST, 0);
  if (!found.ok) throw new RangeError(`no thrust for an angle of ${angle} about a pin at ${centre}`);
  const thrust = found.value.value;
  const bending = (turn * thickness * largestMoment(thrust, centre)) / (2 * length);
  return {
    thrust,
    stiffness: stiffnessAt(thrust, centre),
    strain: bending + (Math.abs(thrust) * thickness ** 2) / (12 * length ** 2),
  };
}

/** By how much the pin asks the moving end to come nearer, over L·θ². */
function demand(centre: number): number {
  return (1 - centre) / 2;
}

/** By how much bending brings the moving end nearer, over L·θ². */
function shortening(thrust: number, centre: number): number {
  const { ofS, ofC } = beamColumn(thrust).bowing;
  return (1 - centre) ** 2 / 2 + (ofS * (1 - 2 * centre) ** 2 + ofC) / 4;
}

function stiffnessAt(thrust: number, centre: number): number {
  const { ofS, ofC } = beamColumn(thrust).stiffness;
  return (ofS * (1 - 2 * centre) ** 2 + ofC) / 2 + thrust * centre * (1 - centre);
}

/** Largest M·L/(E·I·θ) along the leaf: at an end, or where a thrust makes it bulge in between. */
function largestMoment(thrust: number, centre: number): number {
  const { ofS, ofC } = beamColumn(thrust).stiffness;
  const lean = 2 * centre - 1;
  const atEnds = (Math.abs(ofS * lean) + Math.abs(ofC)) / 2;
  if (!(thrust > 0)) return atEnds;
  // The curvature runs as odd·sin x + even·cos x, x from −m to m.
  const m = Math.sqrt(thrust) / 2;
  const { sine, bulge } = columnFunctions(thrust / 4);
  const [odd, even] = [lean / (m * bulge), 1 / sine];
  return Math.abs(Math.atan2(odd, even)) < m ? Math.hypot(odd, even) : atEnds;
}
