/** The duplications stop when the arguments differ from their mean by less than this share: the series then rounds off. */
const CLOSE_ENOUGH = (3 * Number.EPSILON) ** (1 / 8);

/**
 * Carlson's symmetric elliptic integral of the first kind.
 *
 *     R_F(x, y, z) = ½·∫₀^∞ dt/√((t + x)(t + y)(t + z))
 *
 * By duplication: each step brings the arguments four times closer together, then a series about their mean is exact.
 *
 * @param x - first argument [-], ≥ 0
 * @param y - second argument [-], ≥ 0; no more than one of the three may be 0
 * @param z - third argument [-], ≥ 0
 * @returns the integral [-], > 0
 *
 * Source: carlson-duplication.
 * @example carlsonRF(1, 2, 0) // → 1.3110287771461
 */
export function carlsonRF(x: number, y: number, z: number): number {
  if (!(Math.min(x, y, z) >= 0 && x + y > 0 && y + z > 0 && z + x > 0)) {
    throw new RangeError(`arguments of 0 or more, one of them 0 at most, are needed, not ${x}, ${y}, ${z}`);
  }
  for (;;) {
    const mean = (x + y + z) / 3;
    const [dx, dy] = [1 - x / mean, 1 - y / mean];
    const dz = -(dx + dy);
    if (Math.max(Math.abs(dx), Math.abs(dy), Math.abs(dz)) < CLOSE_ENOUGH) {
      const e2 = dx * dy - dz * dz;
      const e3 = dx * dy * dz;
      const low = 1 - e2 / 10 + e3 / 14 + (e2 * e2) / 24 - (3 * e2 * e3) / 44;
      return (low - (5 * e2 ** 3) / 208 + (3 * e3 * e3) / 104 + (e2 * e2 * e3) / 16) / Math.sqrt(mean);
    }
    const step = Math.sqrt(x * y) + Math.sqrt(y * z) + Math.sqrt(z * x);
    [x, y, z] = [(x + step) / 4, (y + step) / 4, (z + step) / 4];
  }
}

/**
 * Carlson's elliptic integral of the second kind, symmetric in its first two arguments.
 *
 *     R_D(x, y, z) = (3/2)·∫₀^∞ dt/[√((t + x)(t + y))·(t + z)^(3/2)]
 *
 * @param x - first argument [-], ≥ 0; x and y not both 0
 * @param y - second argument [-], ≥ 0
 * @param z - third argument [-], > 0
 * @returns the integral [-], > 0
 *
 * Source: carlson-duplication.
 * @example carlsonRD(0, 2, 1) // → 1.7972103521034
 */
export function carlsonRD(x: number, y: number, z: number): number {
  if (!(x >= 0 && y >= 0 && x + y > 0 && z > 0)) {
    throw new RangeError(`x and y of 0 or more, not both 0, and z above 0 are needed, not ${x}, ${y}, ${z}`);
  }
  let [sum, quarter] = [0, 1];
  for (;;) {
    const mean = (x + y + 3 * z) / 5;
    const [dx, dy] = [1 - x / mean, 1 - y / mean];
    const dz = -(dx + dy) / 3;
    if (Math.max(Math.abs(dx), Math.abs(dy), Math.abs(dz)) < CLOSE_ENOUGH) {
      return 3 * sum + (quarter * seriesOfRD(dx * dy, dz)) / (mean * Math.sqrt(mean));
    }
    const step = Math.sqrt(x * y) + Math.sqrt(y * z) + Math.sqrt(z * x);
    sum += quarter / (Math.sqrt(z) * (z + step));
    quarter /= 4;
    [x, y, z] = [(x + step) / 4, (y + step) / 4, (z + step) / 4];
  }
}

/** R_D about equal arguments; `xy` is the product of the first two offsets, `z` the third. */
function seriesOfRD(xy: number, z: number): number {
  const e2 = xy - 6 * z * z;
  const e3 = (3 * xy - 8 * z * z) * z;
  const e4 = 3 * (xy - z * z) * z * z;
  const e5 = xy * z ** 3;
  const low = 1 - (3 * e2) / 14 + e3 / 6 + (9 * e2 * e2) / 88 - (3 * e4) / 22 - (9 * e2 * e3) / 52 + (3 * e5) / 26;
  const high = (3 * e3 * e3) / 40 - e2 ** 3 / 16 + (3 * e2 * e4) / 20 + (45 * e2 * e2 * e3) / 272;
  return low + high - (9 * (e3 * e4 + e2 * e5)) / 68;
}

/**
 * Incomplete elliptic integral of the first kind.
 *
 *     F(φ, k) = ∫₀^φ dα/√(1 − k²·sin²α)
 *
 * @param amplitude - φ [rad], any
 * @param modulus - k, whose square is the parameter m of some tables [-], 0 to 1; below 1 beyond a quarter turn
 * @returns the integral [-], odd in φ
 *
 * Source: carlson-duplication.
 * @example ellipticF(radians(30), Math.SQRT1_2) // → 0.53562273
 */
export function ellipticF(amplitude: number, modulus: number): number {
  const turns = Math.round(amplitude / Math.PI);
  const { sine, x, y } = carlsonArguments(amplitude - turns * Math.PI, modulus);
  const rest = sine * carlsonRF(x, y, 1);
  return turns === 0 ? rest : rest + 2 * turns * completeK(modulus);
}

/**
 * Incomplete elliptic integral of the second kind.
 *
 *     E(φ, k) = ∫₀^φ √(1 − k²·sin²α) dα
 *
 * @param amplitude - φ [rad], any
 * @param modulus - k, whose square is the parameter m of some tables [-], 0 to 1
 * @returns the integral [-], odd in φ
 *
 * Source: carlson-duplication.
 * @example ellipticE(radians(30), Math.SQRT1_2) // → 0.51204932
 */
export function ellipticE(amplitude: number, modulus: number): number {
  const turns = Math.round(amplitude / Math.PI);
  const { sine, x, y } = carlsonArguments(amplitude - turns * Math.PI, modulus);
  // At k = 1 and a quarter turn both R_F and R_D are infinite, and E is the sine itself.
  const rest = modulus === 1 ? sine : sine * (carlsonRF(x, y, 1) - ((modulus * sine) ** 2 / 3) * carlsonRD(x, y, 1));
  return turns === 0 ? rest : rest + 2 * turns * completeE(modulus);
}

/** What the symmetric integrals take for an amplitude within a quarter turn. */
function carlsonArguments(amplitude: number, modulus: number): { sine: number; x: number; y: number } {
  const sine = Math.sin(amplitude);
  return { sine, x: Math.cos(amplitude) ** 2, y: (1 - modulus * sine) * (1 + modulus * sine) };
}

/**
 * Complete elliptic integral of the first kind, F at a quarter turn.
 *
 * @param modulus - k, whose square is the parameter m of some tables [-], 0 ≤ k < 1
 * @returns the integral [-], π/2 and more
 *
 * Source: carlson-duplication.
 * @example completeK(Math.SQRT1_2) // → 1.85407467730137
 */
export function completeK(modulus: number): number {
  return carlsonRF(0, (1 - modulus) * (1 + modulus), 1);
}

/**
 * Complete elliptic integral of the second kind, E at a quarter turn.
 *
 * @param modulus - k, whose square is the parameter m of some tables [-], 0 to 1
 * @returns the integral [-], 1 to π/2
 *
 * Source: carlson-duplication.
 * @example completeE(Math.SQRT1_2) // → 1.35064388104768
 */
export function completeE(modulus: number): number {
  if (modulus === 1) return 1;
  const y = (1 - modulus) * (1 + modulus);
  return carlsonRF(0, y, 1) - (modulus ** 2 / 3) * carlsonRD(0, y, 1);
}
