import { setAfterOneBend } from '../strength/permanentSet.ts';
import type { WorkingAsked } from './asked.ts';
import { formula, given, type Step } from './step.ts';

/** Shares that differ by less are one: the sum along a joint and the closed form of an even bend round differently. */
const ALIKE = 1e-12;

/**
 * What stays after one movement, as a share of it: the symbol `ψ`.
 *
 *     ψ = (κ − 1)²·(κ + ½)/κ³ for κ = ε·E/σ_y > 1, else 0
 *
 * @param asked - what the working starts from, whose effort has been worked out [-]
 * @returns the steps [-]
 *
 * Source: elastic-plastic.
 */
export function setSteps({ assessment, way }: WorkingAsked): readonly Step[] {
  const { set, strain, effort, filament } = assessment;
  const { typical: yieldStress } = filament.properties.yieldStress;
  const ratio = (strain.nominal * effort.modulus) / yieldStress;
  const common = { unit: '', source: 'elastic-plastic' } as const;
  const skin = way ? 'max(ε_w, ε_r)' : 'ε';
  const first = formula({ ...common, id: 'set-ratio', symbol: 'κ', expression: `${skin} * E / σ_y`, figure: ratio });
  if (!(ratio > 1)) {
    return [first, formula({ ...common, id: 'set-none', symbol: 'ψ', expression: '0', figure: set.fraction })];
  }
  const even = setAfterOneBend(strain.nominal, effort.modulus, yieldStress).fraction;
  const isSummed = set.fraction < even - ALIKE;
  const expression = '(κ - 1)^2 * (κ + 1 / 2) / κ^3';
  if (!isSummed) return [first, formula({ ...common, id: 'set-even', symbol: 'ψ', expression, figure: set.fraction })];
  const most = formula({ ...common, id: 'set-most', symbol: 'ψ_e', expression, figure: even });
  const summed = formula({
    ...common,
    id: 'set-along',
    symbol: 'ψ',
    expression: 'min(ψ_e, ψ_a)',
    given: [given('ψ_a', set.fraction, '', 'solver')],
    figure: set.fraction,
  });
  return [first, most, summed];
}
