import type { NeckSizes } from '../../flexures/neck.ts';
import { modulusGiven } from '../asked.ts';
import type { HandSteps, KindWorking } from '../kindWorking.ts';
import { formula, given, type Step } from '../step.ts';
import { shareSteps, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'notch-hinge' } as const;

/** How far a neck turns for each moment: the symbol that stands for it comes with the steps. */
function complianceSteps(asked: Parameters<HandSteps<NeckSizes>>[0]): {
  readonly steps: readonly Step[];
  readonly turning: string;
} {
  const { along, deep, straight, depth } = asked.sizes;
  const braces = [
    '1 / (1 + β)',
    '(3 + 2 * β + β^2) / ((1 + β) * d)',
    '6 * (1 + β) / d^(3 / 2) * atan(sqrt((2 + β) / β))',
  ].join(' + ');
  const notch = [
    formula({
      ...SOURCE,
      id: 'notch-ratio',
      symbol: 'β',
      expression: 't / (2 * c)',
      given: [given('c', deep, 'mm', 'size')],
      unit: '',
    }),
    formula({ ...SOURCE, id: 'notch-d', symbol: 'd', expression: '2 * β + β^2', unit: '' }),
    formula({ ...SOURCE, id: 'notch-braces', symbol: 'Φ', expression: braces, unit: '' }),
    formula({
      ...SOURCE,
      id: 'notch-turning',
      symbol: 'C_n',
      expression: '3 * a * Φ / (2 * E * b * c^3 * d)',
      given: [given('a', along, 'mm', 'size'), given('b', depth, 'mm', 'size'), modulusGiven(asked)],
      unit: '1/(N mm)',
    }),
  ];
  if (straight === 0) return { steps: notch, turning: 'C_n' };
  const whole = formula({
    ...SOURCE,
    id: 'neck-turning',
    symbol: 'C',
    expression: 'C_n + 12 * ℓ / (E * b * t^3)',
    given: [given('ℓ', straight, 'mm', 'size')],
    unit: '1/(N mm)',
  });
  return { steps: [...notch, whole], turning: 'C' };
}

/** A neck between two notches: M = θ/C, ε = 6·M/(E·b·t²). A pin in its middle asks nothing across at small angles. */
const neckSteps: HandSteps<NeckSizes> = (asked) => {
  const { sizes, amount, byHand, assessment } = asked;
  const share = shareSteps(sizes.inRow, amount);
  const { steps, turning } = complianceSteps(asked);
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  const one = formula({
    ...SOURCE,
    id: 'neck-moment',
    symbol: 'M_1',
    expression: `${share.each} / ${turning}`,
    unit: 'N mm',
  });
  const strain = formula({
    ...SOURCE,
    id: 'neck-strain',
    symbol: 'ε',
    expression: '6 * M_1 / (E * b * t^2)',
    unit: '',
    figure: byHand.nominalStrain,
  });
  const all = formula({
    ...SOURCE,
    id: inputs.length > 0 ? 'neck-moment-all' : 'neck-moment-alone',
    symbol: 'M',
    expression: `${factor}M_1`,
    given: inputs,
    unit: 'N mm',
    figure: assessment.effort.modulus * byHand.effort,
  });
  return [...share.steps, ...steps, one, strain, all];
};

/** A neck between two notches. */
export const NECK_WORKING: KindWorking<NeckSizes> = {
  family: 'neck',
  drives: { turned: neckSteps, centred: neckSteps },
};
