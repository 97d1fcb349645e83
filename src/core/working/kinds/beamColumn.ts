import { beamColumn } from '../../closedForms/beamColumn.ts';
import { formula, given, type Step } from '../step.ts';

const SOURCE = { unit: '', source: 'tie-beam' } as const;

/** Up to this thrust the power series stand: the circular functions would cancel, and the next terms are under 1e-11. */
export const LITTLE_THRUST = 0.2;

/** Stiffness and bowing by their series, where the functions would cancel. */
const SERIES = {
  k_S: '6 - n_t / 10 - n_t^2 / 1400 - n_t^3 / 126000 - 37 * n_t^4 / 388080000',
  k_C: '2 - n_t / 6 - n_t^2 / 360 - n_t^3 / 15120 - n_t^4 / 604800',
  b_S: '1 / 10 + n_t / 700 + n_t^2 / 42000 + 37 * n_t^3 / 97020000',
  b_C: '1 / 6 + n_t / 180 + n_t^2 / 5040 + n_t^3 / 151200 + n_t^4 / 4790016',
} as const;

/** The same in q = m·cot m, or m·coth m in a pull. */
const BY_FUNCTIONS = {
  k_S: 'n_t / (2 * (1 - q_m))',
  k_C: '2 * q_m',
  b_S: '1 / 4 * (1 + (n_t / 4 - 3 + 3 * q_m) / (1 - q_m)^2)',
  b_C: '1 / 4 * (1 - 4 * q_m * (1 - q_m) / n_t)',
} as const;

/**
 * A leaf bent by its ends with a force along itself: the symbols `k_S`, `k_C`, `b_S` and `b_C` of `beamColumn`, and `m`
 * and `q_m` where the thrust is not small. It puts in `n_t`. A leaf that only ever takes an S has no use for `k_C`, `b_C`.
 *
 *     m² = n/4,   q = m·cot m,   k_C = 2·q,   k_S = 2·m²/(1 − q),   b = −dk/dn
 *
 * @param thrust - n = N·L²/(E·I), compression positive [-], below 4π²
 * @param shapes - what the leaf is bent to: an S and a C, or an S alone [-]
 * @returns the steps [-]
 *
 * Source: tie-beam.
 */
export function beamColumnSteps(thrust: number, shapes: 'SC' | 'S' = 'SC'): readonly Step[] {
  const { stiffness, bowing } = beamColumn(thrust);
  const isLittle = Math.abs(thrust) < LITTLE_THRUST;
  const inputs = [given('n_t', thrust, '', 'summed')];
  const written = isLittle ? SERIES : BY_FUNCTIONS;
  const kind = isLittle ? 'series' : 'column';
  const functions = isLittle
    ? []
    : [
        thrust > 0
          ? formula({ ...SOURCE, id: 'thrust-m', symbol: 'm', expression: 'sqrt(n_t) / 2', given: inputs })
          : formula({ ...SOURCE, id: 'pull-m', symbol: 'm', expression: 'sqrt(-n_t) / 2', given: inputs }),
        thrust > 0
          ? formula({ ...SOURCE, id: 'thrust-q', symbol: 'q_m', expression: 'm / tan(m)' })
          : formula({ ...SOURCE, id: 'pull-q', symbol: 'q_m', expression: 'm / tanh(m)' }),
      ];
  const step = (id: string, symbol: keyof typeof SERIES, figure: number) =>
    formula({ ...SOURCE, id: `${kind}-${id}`, symbol, expression: written[symbol], given: inputs, figure });
  const ofC = shapes === 'SC';
  return [
    ...functions,
    step('ks', 'k_S', stiffness.ofS),
    ...(ofC ? [step('kc', 'k_C', stiffness.ofC)] : []),
    step('bs', 'b_S', bowing.ofS),
    ...(ofC ? [step('bc', 'b_C', bowing.ofC)] : []),
  ];
}
