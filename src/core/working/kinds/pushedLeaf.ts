import type { LeafSizes } from '../../flexures/straightLeaf.ts';
import { modulusGiven } from '../asked.ts';
import type { HandSteps } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given } from '../step.ts';
import { endLoadSteps } from './endLoad.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

/** A leaf whose tip is pushed across it and free to turn: ε = t·m₀/(2L), F = E·I·a²/L². A taper is left out. */
export const pushedSteps: HandSteps<LeafSizes> = (asked) => {
  const { sizes, amount, byHand, assessment } = asked;
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  const put = [travelGiven(asked), given('L', sizes.length, 'mm', 'size')];
  return [
    ...endLoadSteps('δ / L', put, amount / sizes.length),
    formula({
      id: 'push-strain',
      symbol: 'ε',
      expression: 't * m_0 / (2 * L)',
      unit: '',
      figure: byHand.nominalStrain,
      source: 'plane-bending',
    }),
    inertiaStep(sizes.depth),
    formula({
      id: 'push-force',
      symbol: 'F',
      expression: `${factor}E * I * a^2 / L^2`,
      given: [modulusGiven(asked), ...inputs],
      unit: 'N',
      figure: assessment.effort.modulus * byHand.effort,
      source: 'end-loaded-elastica',
    }),
  ];
};
