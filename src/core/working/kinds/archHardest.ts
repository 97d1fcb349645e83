import { SIDE_MODE, MODES, type ArchForm, type ArchState } from '../../closedForms/archModes.ts';
import { archHardest } from '../../closedForms/archStrain.ts';
import { formula, given, sum, type Given, type Step } from '../step.ts';

const SOURCE = { source: 'shallow-arch' } as const;

/** Column modes of a clamped leaf but for the first: 6π, 10π, … */
export const HIGHER_MODES = { symbol: 'N_j', values: MODES.slice(1), unit: '', from: 'constant' } as const;

/**
 * A figure of an arch that has no dimension.
 *
 * @param id - of its words [-]
 * @param symbol - that it gives [-]
 * @param expression - of what is known [-]
 * @param put - what is put in for it [-]
 * @returns the step [-]
 *
 * Source: shallow-arch.
 */
export function archStep(id: string, symbol: string, expression: string, put: readonly Given[] = []): Step {
  return formula({ ...SOURCE, id, symbol, expression, given: put, unit: '' });
}

/**
 * Where on its way an arch is strained most: the symbol `c_a`. Before it stands `Q_a`.
 *
 *     c = ½·|Δκ|·L²/h + n/(12·Q)
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param travel - Δ = d/h up to which it is pushed [-]
 * @returns the steps [-]
 *
 * Source: shallow-arch.
 */
export function hardestSteps(ratio: number, form: ArchForm, travel: number): readonly Step[] {
  const { factor, state, place } = archHardest(ratio, form, travel);
  const found = [given('n_m', state.compression, '', 'summed'), given('A_m', state.first, '', 'summed')];
  const hasSide = state.side > 0;
  return [
    archStep('hardest-force', 'Φ_m', '2 * pi^4 - pi^2 * (4 * pi^2 - n_m) * A_m', found),
    archStep('hardest-first', 'w_1', '4 * pi^2 * (A_m - 1 / 2) * cos(2 * pi * x_m)', [
      given('x_m', place, '', 'summed'),
    ]),
    sum({
      ...SOURCE,
      id: 'hardest-modes',
      symbol: 'w_j',
      expression: '-4 * Φ_m * cos(N_j * x_m) / (N_j^2 - n_m)',
      over: HIGHER_MODES,
      unit: '',
    }),
    ...(hasSide ? [sideBendStep(state, form)] : []),
    formula({
      ...SOURCE,
      id: hasSide ? 'hardest-aside' : 'hardest-upright',
      symbol: 'c_a',
      expression: `(abs(w_1 + w_j)${hasSide ? ' + abs(w_s)' : ''}) / 2 + n_m / (12 * Q_a)`,
      unit: '',
      figure: factor,
    }),
  ];
}

function sideBendStep({ side }: ArchState, form: ArchForm): Step {
  const put = [given('A_s', side, '', 'summed')];
  if (form === 'double') return archStep('side-double', 'w_s', 'A_s * (4 * pi)^2 * cos(4 * pi * x_m)', put);
  const mode = given('N_w', SIDE_MODE.free, '', 'constant');
  return archStep('side-free', 'w_s', 'A_s * (N_w^2 * cos(N_w * x_m) - 2 * N_w * sin(N_w * x_m))', [...put, mode]);
}
