import { guidedHeldLeaf, guidedStiffness } from '../../closedForms/guidedLeaf.ts';
import type { ParallelSizes } from '../../flexures/parallelLeaves.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { balance, formula, given, type Given, type Step } from '../step.ts';
import { beamColumnSteps } from './beamColumn.ts';
import { endLoadSteps } from './endLoad.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

/** No unstretched leaf reaches across as far as it is long; past this the hand form stands still. */
const FARTHEST_GUIDED = 0.995;

type Parallel = HandAsked<ParallelSizes>;

function lengthGiven({ sizes }: Parallel): Given {
  return given('L', sizes.length, 'mm', 'size');
}

/** The force of all leaves of all stages, from what one takes as it is written. */
function forceStep(asked: Parallel, id: string, one: string, source: Step['source'], inputs: readonly Given[]): Step {
  const { sizes, assessment, byHand } = asked;
  const beside = togetherGiven(sizes.sideBySide);
  return formula({
    id,
    symbol: 'F',
    expression: `${beside.factor}n_ℓ * ${one}`,
    given: [...inputs, ...beside.inputs, given('n_ℓ', sizes.leaves, '', 'size')],
    unit: 'N',
    figure: assessment.effort.modulus * byHand.effort,
    source,
  });
}

/** How far the pad tilts: ρ = 6n/(4n + 12·S/t²), S = Σ x², x up to (n − 1)·d/2. */
function tiltSteps({ sizes }: Parallel): readonly Step[] {
  const common = { source: 'small-deflection' } as const;
  return [
    formula({
      ...common,
      id: 'pad-spread',
      symbol: 'S_x',
      expression: 'd^2 * n_ℓ * (n_ℓ^2 - 1) / 12',
      given: [given('d', sizes.spacing, 'mm', 'size'), given('n_ℓ', sizes.leaves, '', 'size')],
      unit: 'mm^2',
    }),
    formula({
      ...common,
      id: 'pad-tilt',
      symbol: 'ρ',
      expression: '6 * n_ℓ / (4 * n_ℓ + 12 * S_x / t^2)',
      unit: '',
    }),
    formula({ ...common, id: 'pad-outermost', symbol: 'x_o', expression: '(n_ℓ - 1) * d / 2', unit: 'mm' }),
  ];
}

/** A pad pushed at the ends of its leaves and free to tilt: ε = (3·t·δ/L²)·(1 − ρ/3) + ρ·δ·x/L². */
const shiftedSteps: HandSteps<ParallelSizes> = (asked) => {
  const { sizes, thickness, assessment, byHand } = asked;
  return [
    ...tiltSteps(asked),
    formula({
      id: 'shifted-strain',
      symbol: 'ε',
      expression: '3 * t * δ / L^2 * (1 - ρ / 3) + ρ * δ * x_o / L^2',
      given: [travelGiven(asked), lengthGiven(asked)],
      unit: '',
      figure: byHand.nominalStrain,
      source: 'small-deflection',
    }),
    inertiaStep(sizes.depth),
    formula({
      id: 'leaf-stiffness',
      symbol: 'k_ℓ',
      expression: '12 * E * I / L^3',
      given: [modulusGiven(asked)],
      unit: 'N/mm',
      figure: guidedStiffness(assessment.effort.modulus, sizes.depth, thickness, sizes.length),
      source: 'small-deflection',
    }),
    forceStep(asked, 'shifted-force', 'k_ℓ * δ * (1 - ρ / 2)', 'small-deflection', []),
  ];
};

/** A pad kept from turning and free to sink: each leaf is two pushed ones of half the length, back to back. */
const guidedSteps: HandSteps<ParallelSizes> = (asked) => {
  const { sizes, amount, byHand } = asked;
  const put = [travelGiven(asked), lengthGiven(asked)];
  return [
    ...endLoadSteps('δ / L', put, amount / sizes.length, FARTHEST_GUIDED),
    formula({
      id: 'guided-strain',
      symbol: 'ε',
      expression: 't * m_0 / L',
      unit: '',
      figure: byHand.nominalStrain,
      source: 'end-loaded-elastica',
    }),
    inertiaStep(sizes.depth),
    forceStep(asked, 'guided-force', '4 * a^2 * E * I / L^2', 'end-loaded-elastica', [modulusGiven(asked)]),
  ];
};

/** A pad kept from turning and from sinking, so that its leaves are stretched; the pull is a root. */
const heldSteps: HandSteps<ParallelSizes> = (asked) => {
  const { sizes, thickness, amount, byHand } = asked;
  const thrust = -guidedHeldLeaf(amount / thickness).tension;
  return [
    ...beamColumnSteps(thrust, 'S'),
    balance({
      id: 'held-stretch',
      symbol: 'n_g',
      left: '-n_g / 12',
      right: '(δ / t)^2 * (1 / 2 + b_S)',
      given: [travelGiven(asked)],
      unit: '',
      figure: thrust,
      source: 'tie-beam',
    }),
    formula({
      id: 'held-strain',
      symbol: 'ε',
      expression: '(k_S * δ / (2 * t) - n_t / 12) * t^2 / L^2',
      given: [lengthGiven(asked)],
      unit: '',
      figure: byHand.nominalStrain,
      source: 'tie-beam',
    }),
    inertiaStep(sizes.depth),
    forceStep(asked, 'held-force', '(2 * k_S - n_t) * E * I * δ / L^3', 'tie-beam', [modulusGiven(asked)]),
  ];
};

/** Parallel leaves that carry a pad across: free to tilt, kept upright, and held in a slide. */
export const PARALLEL_LEAVES_WORKING: KindWorking<ParallelSizes> = {
  family: 'parallelLeaves',
  drives: { shifted: shiftedSteps, guided: guidedSteps, held: heldSteps },
};
