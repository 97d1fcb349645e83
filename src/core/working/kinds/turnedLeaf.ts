import type { Mm } from '../../units.ts';
import { modulusGiven } from '../asked.ts';
import type { HandSteps } from '../kindWorking.ts';
import { formula, given, type Given, type Step } from '../step.ts';

/** The sizes of leaves that share a turn. */
interface Turned {
  readonly length: Mm;
  readonly depth: Mm;
  readonly inRow: number;
  readonly sideBySide: number;
}

/**
 * Each of several in a row takes its share of the angle: the symbol `θ_1`.
 *
 * @param inRow - how many share it [-]
 * @param angle - of the whole joint [rad]
 * @returns the steps, none where there is one alone, and the symbol of what each takes [-]
 *
 * Source: plane-bending.
 */
export function shareSteps(inRow: number, angle: number): { readonly steps: readonly Step[]; readonly each: string } {
  if (inRow === 1) return { steps: [], each: 'θ' };
  const step = formula({
    id: 'in-row',
    symbol: 'θ_1',
    expression: 'θ / n_r',
    given: [given('n_r', inRow, '', 'size')],
    unit: '',
    figure: angle / inRow,
    source: 'plane-bending',
  });
  return { steps: [step], each: 'θ_1' };
}

/**
 * How many push together, where that is more than one.
 *
 * @param sideBySide - how many [-]
 * @returns the quantity, and the factor as it stands before a product [-]
 */
export function togetherGiven(sideBySide: number): { readonly inputs: readonly Given[]; readonly factor: string } {
  if (sideBySide === 1) return { inputs: [], factor: '' };
  return { inputs: [given('n_s', sideBySide, '', 'size')], factor: 'n_s * ' };
}

/**
 * Second moment of area of one section: the symbol `I`.
 *
 *     I = b·t³/12
 *
 * @param depth - b, out of the bending plane [mm]
 * @returns the step [-]
 *
 * Source: plane-bending.
 */
export function inertiaStep(depth: Mm): Step {
  return formula({
    id: 'inertia',
    symbol: 'I',
    expression: 'b * t^3 / 12',
    given: [given('b', depth, 'mm', 'size')],
    unit: 'mm^4',
    source: 'plane-bending',
  });
}

/** A leaf turned by a pure moment: ε = t·θ/(2·L), M = E·I·θ/L. */
export const turnedSteps: HandSteps<Turned> = (asked) => {
  const { sizes, amount, byHand, assessment } = asked;
  const { steps, each } = shareSteps(sizes.inRow, amount);
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  return [
    ...steps,
    formula({
      id: 'arc-strain',
      symbol: 'ε',
      expression: `t * ${each} / (2 * L)`,
      given: [given('L', sizes.length, 'mm', 'size')],
      unit: '',
      figure: byHand.nominalStrain,
      source: 'plane-bending',
    }),
    inertiaStep(sizes.depth),
    formula({
      id: 'arc-moment',
      symbol: 'M',
      expression: `${factor}E * I * ${each} / L`,
      given: [modulusGiven(asked), ...inputs],
      unit: 'N mm',
      figure: assessment.effort.modulus * byHand.effort,
      source: 'plane-bending',
    }),
  ];
};
