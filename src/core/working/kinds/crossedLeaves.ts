import type { CrossedSizes } from '../../flexures/crossedLeaves.ts';
import { crossedLeavesMoment } from '../../closedForms/crossedLeaves.ts';
import { modulusGiven } from '../asked.ts';
import type { HandSteps, KindWorking } from '../kindWorking.ts';
import { formula, given, type Step } from '../step.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'crossed-leaves' } as const;

/** Stacked leaves that pass each other: ε = (t·θ/2L)·max(|4 − 6μ|, |2 − 6μ|), M = (8·E·I/L)·(1 − 3λ + 3λ²)·θ. */
function stackedBend(crossing: number): {
  readonly steps: readonly Step[];
  readonly strain: string;
  readonly k: string;
} {
  const past = formula({
    ...SOURCE,
    id: 'crossing-past',
    symbol: 'μ',
    expression: '1 - λ',
    given: [given('λ', crossing, '', 'size')],
    unit: '',
  });
  const most = formula({
    ...SOURCE,
    id: 'crossing-moment',
    symbol: 'm_λ',
    expression: 'max(abs(4 - 6 * μ), abs(2 - 6 * μ))',
    unit: '',
    figure: crossedLeavesMoment(crossing),
  });
  return { steps: [past, most], strain: 'm_λ * t * θ / (2 * L)', k: '8 * E * I / L * (1 - 3 * λ + 3 * λ^2)' };
}

/** Leaves grown together where they cross: ε = 4·t·θ/(2L), M = 8·E·I·θ/L. */
const FUSED = { steps: [], strain: '4 * t * θ / (2 * L)', k: '8 * E * I / L' } as const;

/** A pin in the crossing asks nothing of the forms, so that both drives have one working. */
const crossedSteps: HandSteps<CrossedSizes> = (asked) => {
  const { sizes, byHand, assessment } = asked;
  const isFused = sizes.fused === 1;
  const { steps, strain, k } = isFused ? FUSED : stackedBend(sizes.crossing);
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  const kind = isFused ? 'fused' : 'stacked';
  return [
    ...steps,
    formula({
      ...SOURCE,
      id: `${kind}-strain`,
      symbol: 'ε',
      expression: strain,
      given: [given('L', sizes.length, 'mm', 'size')],
      unit: '',
      figure: byHand.nominalStrain,
    }),
    inertiaStep(sizes.depth),
    formula({
      ...SOURCE,
      id: `${kind}-stiffness`,
      symbol: 'K',
      expression: k,
      given: [modulusGiven(asked)],
      unit: 'N mm',
    }),
    formula({
      ...SOURCE,
      id: 'crossed-moment',
      symbol: 'M',
      expression: `${factor}K * θ`,
      given: inputs,
      unit: 'N mm',
      figure: assessment.effort.modulus * byHand.effort,
    }),
  ];
};

/** Two crossed leaves, stacked or grown together. */
export const CROSSED_LEAVES_WORKING: KindWorking<CrossedSizes> = {
  family: 'crossedLeaves',
  drives: { turned: crossedSteps, centred: crossedSteps },
};
