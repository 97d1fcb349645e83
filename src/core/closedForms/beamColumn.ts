import { columnFunctions } from '../numeric/columnFunctions.ts';

/** One figure for each of the two shapes into which any bending of a leaf by its ends falls apart. */
interface ByShape {
  /** Both end slopes alike against the chord. */
  readonly ofS: number;
  /** Both end slopes opposite. */
  readonly ofC: number;
}

/** A leaf bent by its ends while a force acts along it. */
export interface BeamColumn {
  /** Moment at both ends per end slope, M·L/(E·I); 6 and 2 without a force along the leaf. */
  readonly stiffness: ByShape;
  /** How much nearer the ends come, over L times the end slope squared; 1/10 and 1/6 without a force. */
  readonly bowing: ByShape;
}

/**
 * End moments and shortening of a leaf that is bent by its ends and carries a force along itself.
 *
 *     m² = n/4,   S = sin m/m,   B = (sin m − m·cos m)/m³,   D = (S − 3B)/m²
 *     k_S = 2·S/B,   k_C = 2·cos m/S
 *     b_S = −dk_S/dn = ¼·(1 + S·D/B²),   b_C = −dk_C/dn = ¼·(1 − B·cos m/S²)
 *
 * Small slopes. In a pull the functions are hyperbolic.
 *
 * @param thrust - n = N·L²/(E·I), compression positive [-], below 4π²
 * @returns stiffness and bowing, each for an S and for a C [-]
 *
 * Source: tie-beam.
 * @example beamColumn(0) // → { stiffness: { ofS: 6.000000, ofC: 2.000000 }, bowing: { ofS: 0.100000, ofC: 0.166667 } }
 */
export function beamColumn(thrust: number): BeamColumn {
  const { cosine, sine, bulge, rest } = columnFunctions(thrust / 4);
  return {
    stiffness: { ofS: (2 * sine) / bulge, ofC: (2 * cosine) / sine },
    bowing: { ofS: (1 + (sine * rest) / bulge ** 2) / 4, ofC: (1 - (cosine * bulge) / sine ** 2) / 4 },
  };
}
