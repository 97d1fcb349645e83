import { endLoadAtTravel } from '../../closedForms/endLoadedLeaf.ts';
import { formula, given, sum, type Given, type Step } from '../step.ts';

const SOURCE = { unit: '', source: 'end-loaded-elastica' } as const;

/** From this share of the length on, the tip lies along the force to the tenth figure, and the integrals are plain. */
const ALONG_FORCE = 0.96;
/** Nothing pushes a tip by its own length; past this share of it the figures of this share stand, as in the hand form. */
const FARTHEST_PUSH = 0.99;

/** Chebyshev's nine places of equal weight between −1 and 1, exact for polynomials up to the ninth degree. */
const HALF_PLACES = [0.16790618421480394, 0.52876178305788, 0.6010186553802381, 0.9115893077284345] as const;
const PLACES: readonly number[] = [...HALF_PLACES.map((place) => -place).toReversed(), 0, ...HALF_PLACES];
/** Pieces this long leave an error of 1e-11: the integrands are smooth over a length of π/2. */
const PIECE = 0.5;

/** Places between 0 and 1 over which a mean is taken. */
function placesIn(pieces: number): readonly number[] {
  return Array.from({ length: pieces }, (_, i) => PLACES.map((place) => (i + (1 + place) / 2) / pieces)).flat();
}

/**
 * A leaf clamped at one end and moved at the other by a force across it: the symbols `a` with a² = P·L²/(E·I), and `m_0`,
 * the moment at the clamp over E·I/L. Exact for a leaf that neither stretches nor shears.
 *
 *     a = K(k) − F(φ₀; k),   w/L = 1 − 2·[E(k) − E(φ₀; k)]/a,   m₀ = a·√(2·sin θ_t)
 *
 * The integrals are written in ζ with cot φ = k′·sinh ζ, k′ = sin((π/2 − θ_t)/2), in which they are smooth:
 * dφ/√(1 − k²·sin²φ) = dζ/√(1 + k′²·sinh²ζ).
 *
 * @param ratio - travel over length as it is written, of quantities that are known [-]
 * @param inputs - those that are put in for it [-]
 * @param travel - its value [-], > 0
 * @param farthest - the share of the length past which a hand form stands still [-], up to 0.995
 * @returns the steps [-]
 *
 * Source: end-loaded-elastica.
 */
export function endLoadSteps(
  ratio: string,
  inputs: readonly Given[],
  travel: number,
  farthest = FARTHEST_PUSH,
): readonly Step[] {
  const isFarthest = travel > farthest;
  const held = Math.min(travel, farthest);
  const share = isFarthest
    ? formula({
        ...SOURCE,
        id: 'push-farthest',
        symbol: 'ρ',
        expression: `min(${ratio}, ρ_m)`,
        given: [...inputs, given('ρ_m', farthest, '', 'constant')],
        figure: held,
      })
    : formula({ ...SOURCE, id: 'push-share', symbol: 'ρ', expression: ratio, given: inputs, figure: held });
  const { load, rootMoment } = endLoadAtTravel(held);
  if (held > ALONG_FORCE) {
    return [
      share,
      formula({
        ...SOURCE,
        id: 'push-far',
        symbol: 'a',
        expression: '(2 - sqrt(2)) / (1 - ρ)',
        figure: Math.sqrt(load),
      }),
      formula({ ...SOURCE, id: 'push-moment-far', symbol: 'm_0', expression: 'a * sqrt(2)', figure: rootMoment }),
    ];
  }
  return [share, ...bentSteps(held)];
}

/** The tip slope is a root; that it is the right one is seen by the travel that it gives. */
function bentSteps(travel: number): readonly Step[] {
  const { load, rootMoment, tipAngle } = endLoadAtTravel(travel);
  const shortOfForce = Math.sin((Math.PI / 2 - tipAngle) / 2);
  const reach = Math.asinh(Math.sqrt(Math.sin(tipAngle)) / shortOfForce);
  const over = {
    symbol: 'u',
    values: placesIn(Math.ceil(reach / PIECE)),
    unit: '',
    from: 'constant',
  } as const;
  const count = given('n_u', over.values.length, '', 'constant');
  return [
    formula({
      ...SOURCE,
      id: 'push-modulus',
      symbol: 'k_c',
      expression: 'sin((pi / 2 - θ_t) / 2)',
      given: [given('θ_t', tipAngle, '', 'summed')],
    }),
    formula({ ...SOURCE, id: 'push-reach', symbol: 'ζ', expression: 'asinh(sqrt(sin(θ_t)) / k_c)' }),
    sum({
      ...SOURCE,
      id: 'push-first',
      symbol: 'a',
      expression: 'ζ / (n_u * sqrt(1 + k_c^2 * sinh(u * ζ)^2))',
      over,
      given: [count],
      figure: Math.sqrt(load),
    }),
    sum({
      ...SOURCE,
      id: 'push-second',
      symbol: 'e',
      expression: 'ζ * k_c^2 * cosh(u * ζ)^2 / (n_u * (1 + k_c^2 * sinh(u * ζ)^2)^(3 / 2))',
      over,
    }),
    formula({ ...SOURCE, id: 'push-travel', symbol: 'ρ_t', expression: '1 - 2 * e / a', figure: travel }),
    formula({ ...SOURCE, id: 'push-moment', symbol: 'm_0', expression: 'a * sqrt(2 * sin(θ_t))', figure: rootMoment }),
  ];
}
