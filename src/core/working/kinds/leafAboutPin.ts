import { beamColumn } from '../../closedForms/beamColumn.ts';
import { leafAboutPin } from '../../closedForms/leafAboutPin.ts';
import type { LeafSizes } from '../../flexures/straightLeaf.ts';
import { asRad } from '../../units.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps } from '../kindWorking.ts';
import { balance, formula, given, type Step } from '../step.ts';
import { beamColumnSteps, LITTLE_THRUST } from './beamColumn.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'leaf-about-pin' } as const;

/** The thrust is a root; that it is the right one is seen by the squeeze that it takes. */
function thrustSteps(sizes: LeafSizes, thrust: number): readonly Step[] {
  return [
    ...beamColumnSteps(thrust),
    formula({
      ...SOURCE,
      id: 'pin-shortening',
      symbol: 'g',
      expression: '(1 - c)^2 / 2 + (b_S * (1 - 2 * c)^2 + b_C) / 4',
      given: [given('c', sizes.centre, '', 'size')],
      unit: '',
    }),
    balance({
      ...SOURCE,
      id: 'pin-squeeze',
      symbol: 'n_g',
      left: 'n_g / 12',
      right: '(θ * L / t)^2 * ((1 - c) / 2 - g)',
      given: [given('L', sizes.length, 'mm', 'size')],
      unit: '',
      figure: thrust,
    }),
  ];
}

/** Where the moment is largest: at an end, or where a thrust makes the leaf bulge in between. */
function momentSteps(thrust: number, centre: number): readonly Step[] {
  const { ofS, ofC } = beamColumn(thrust).stiffness;
  const lean = 2 * centre - 1;
  const ends = formula({
    ...SOURCE,
    id: 'pin-moment-end',
    symbol: 'm_0',
    expression: '(abs(k_S * (2 * c - 1)) + abs(k_C)) / 2',
    unit: '',
    figure: (Math.abs(ofS * lean) + Math.abs(ofC)) / 2,
  });
  if (!isBulging(thrust, lean)) return [ends];
  const isKnown = Math.abs(thrust) >= LITTLE_THRUST;
  const m = formula({ id: 'thrust-m', symbol: 'm', expression: 'sqrt(n_t) / 2', unit: '', source: 'tie-beam' });
  return [
    ...(isKnown ? [] : [m]),
    formula({
      ...SOURCE,
      id: 'pin-odd',
      symbol: 'm_S',
      expression: '(2 * c - 1) * m^2 / (sin(m) - m * cos(m))',
      unit: '',
    }),
    formula({ ...SOURCE, id: 'pin-even', symbol: 'm_C', expression: 'm / sin(m)', unit: '' }),
    formula({ ...SOURCE, id: 'pin-moment-bulge', symbol: 'm_0', expression: 'sqrt(m_S^2 + m_C^2)', unit: '' }),
  ];
}

/** Whether the curvature m_S·sin x + m_C·cos x is largest between the ends, x from −m to m. */
function isBulging(thrust: number, lean: number): boolean {
  if (!(thrust > 0)) return false;
  const m = Math.sqrt(thrust) / 2;
  const odd = (lean * m * m) / (Math.sin(m) - m * Math.cos(m));
  return Math.abs(Math.atan2(odd, m / Math.sin(m))) < m;
}

function pinned({ sizes, thickness, amount }: HandAsked<LeafSizes>) {
  return leafAboutPin(thickness, sizes.length, asRad(amount), sizes.centre);
}

/** A leaf turned about a pin that stays: a beam-column whose thrust makes room for the turn. */
export const aboutPinSteps: HandSteps<LeafSizes> = (asked) => {
  const { sizes, byHand, assessment } = asked;
  const { thrust, stiffness } = pinned(asked);
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  return [
    ...thrustSteps(sizes, thrust),
    ...momentSteps(thrust, sizes.centre),
    formula({
      ...SOURCE,
      id: 'pin-strain',
      symbol: 'ε',
      expression: 't * θ * m_0 / (2 * L) + abs(n_t) * t^2 / (12 * L^2)',
      unit: '',
      figure: byHand.nominalStrain,
    }),
    inertiaStep(sizes.depth),
    formula({
      ...SOURCE,
      id: 'pin-stiffness',
      symbol: 'k_T',
      expression: '(k_S * (1 - 2 * c)^2 + k_C) / 2 + n_t * c * (1 - c)',
      unit: '',
      figure: stiffness,
    }),
    formula({
      ...SOURCE,
      id: 'pin-moment',
      symbol: 'M',
      expression: `${factor}k_T * E * I * θ / L`,
      given: [modulusGiven(asked), ...inputs],
      unit: 'N mm',
      figure: assessment.effort.modulus * byHand.effort,
    }),
  ];
};
