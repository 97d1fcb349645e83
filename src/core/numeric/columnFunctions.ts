/** The functions of a slender beam with a force along it, all over the same factor: only their ratios have a meaning. */
export interface ColumnFunctions {
  /** cos m. */
  readonly cosine: number;
  /** sin m/m. */
  readonly sine: number;
  /** (sin m − m·cos m)/m³. */
  readonly bulge: number;
  /** (sin m/m − 3·bulge)/m². */
  readonly rest: number;
}

/** Between these the power series loses no more than two figures, and its 30 terms are enough. */
const SERIES_REACH = 10;
const TERMS = 30;

/**
 * Circular or hyperbolic functions of a beam-column up to a common factor, without the cancellation at little force.
 *
 *     m² = V·ℓ²/(E·I), ℓ half the length, V compression; negative for a pull, then cosh, sinh
 *
 * By their power series in m², and where that would cancel by tanh, divided by cosh m so that a large pull does not overflow.
 *
 * @param square - m² [-], up to π²
 * @returns cosine, sine, bulge and rest, over one common factor [-]
 *
 * Source: tie-beam.
 * @example columnFunctions(0) // → { cosine: 1, sine: 1, bulge: 0.333333333, rest: -0.066666667 }
 */
export function columnFunctions(square: number): ColumnFunctions {
  if (!(square <= SERIES_REACH)) throw new RangeError(`m² up to π² is needed, not ${square}`);
  if (square < -SERIES_REACH) return underPull(-square);
  let [cosine, sine, bulge, rest] = [0, 0, 0, 0];
  // (−m²)^k/(2k + 1)!
  let term = 1;
  for (let k = 0; k < TERMS; k++) {
    cosine += (2 * k + 1) * term;
    sine += term;
    bulge += term / (2 * k + 3);
    rest += term / ((2 * k + 3) * (2 * k + 5));
    term *= -square / ((2 * k + 2) * (2 * k + 3));
  }
  return { cosine, sine, bulge, rest: -rest };
}

function underPull(square: number): ColumnFunctions {
  const m = Math.sqrt(square);
  const sine = Math.tanh(m) / m;
  const bulge = (1 - sine) / square;
  return { cosine: 1, sine, bulge, rest: (3 * bulge - sine) / square };
}
