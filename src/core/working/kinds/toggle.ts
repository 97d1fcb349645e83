import { pinOverPush, toggleParts } from '../../flexures/toggleHandForms.ts';
import type { ToggleSizes } from '../../flexures/toggleSizes.ts';
import { asRad, degrees } from '../../units.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given, type Step } from '../step.ts';
import { pinStates } from './toggleStates.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'two-bar-truss' } as const;

type Toggle = HandAsked<ToggleSizes>;

/** The roof as its pins stand: a neck turns as if about its middle. */
function roofSteps({ sizes, thickness }: Toggle): readonly Step[] {
  const { half, height } = toggleParts(sizes, thickness);
  const { link, incline, hinge } = sizes;
  const inclined = [given('ℓ', link, 'mm', 'size'), given('α_0', degrees(asRad(incline)), 'deg', 'size')];
  return [
    formula({
      ...SOURCE,
      id: 'roof-half',
      symbol: 'a',
      expression: 'ℓ * cos(α_0) + 3 * ℓ_h / 2',
      given: [...inclined, given('ℓ_h', hinge, 'mm', 'size')],
      unit: 'mm',
      figure: half,
    }),
    formula({ ...SOURCE, id: 'roof-height', symbol: 'H', expression: 'ℓ * sin(α_0)', unit: 'mm', figure: height }),
    formula({ ...SOURCE, id: 'roof-link', symbol: 'ℓ_0', expression: 'sqrt(a^2 + H^2)', unit: 'mm' }),
  ];
}

/** The leaf at the foot of the last neck, pushed beyond its tip, and the necks as springs. */
function springSteps(asked: Toggle): readonly Step[] {
  const { sizes, thickness, assessment } = asked;
  const parts = toggleParts(sizes, thickness);
  const { modulus } = assessment.effort;
  const common = { source: 'small-deflection' } as const;
  return [
    formula({
      id: 'spring-thickness',
      symbol: 't_s',
      expression: 'n_ℓ * t / n',
      given: [given('n_ℓ', sizes.springLines, '', 'size'), given('n', sizes.lines, '', 'size')],
      unit: 'mm',
      source: 'common-practice',
    }),
    formula({
      ...common,
      id: 'spring-inertia',
      symbol: 'I_s',
      expression: 'b * t_s^3 / 12',
      given: [given('b', sizes.depth, 'mm', 'size')],
      unit: 'mm^4',
    }),
    formula({
      ...common,
      id: 'spring-arm',
      symbol: 'e',
      expression: 'D_ℓ / 2 + r',
      given: [given('D_ℓ', sizes.pad, 'mm', 'size'), given('r', sizes.fillet, 'mm', 'size')],
      unit: 'mm',
    }),
    formula({
      ...common,
      id: 'spring-give',
      symbol: 'G',
      expression: 'L_s^3 / 3 + e * L_s^2 + e^2 * L_s',
      given: [given('L_s', sizes.spring, 'mm', 'size')],
      unit: 'mm^3',
    }),
    formula({
      ...common,
      id: 'spring-stiffness',
      symbol: 'k_s',
      expression: 'E * I_s / G',
      given: [modulusGiven(asked)],
      unit: 'N/mm',
      figure: modulus * parts.thrust,
    }),
    formula({
      ...common,
      id: 'spring-lean',
      symbol: 'λ',
      expression: '(L_s^2 / 2 + e * L_s) / G',
      unit: '1/mm',
      figure: parts.lean,
    }),
    inertiaStep(sizes.depth),
    formula({
      id: 'pin-stiffness',
      symbol: 'K',
      expression: 'E * I / ℓ_h',
      unit: 'N mm',
      figure: modulus * parts.pin,
      source: 'plane-bending',
    }),
  ];
}

/** How far the middle pin goes; past the mirror image of the roof the last that the pins say stands. */
function travelSteps(asked: Toggle): readonly Step[] {
  const { sizes, thickness, amount } = asked;
  const { height } = toggleParts(sizes, thickness);
  const ratio = formula({
    ...SOURCE,
    id: 'pin-over-push',
    symbol: 'i_p',
    expression: 'a / (a - ℓ_h)',
    unit: '',
    figure: pinOverPush(sizes),
  });
  const isPast = pinOverPush(sizes) * amount > 2 * height;
  const travel = isPast
    ? formula({ ...SOURCE, id: 'pin-mirrored', symbol: 'v', expression: '2 * H', unit: 'mm', figure: 2 * height })
    : formula({
        ...SOURCE,
        id: 'pin-travel',
        symbol: 'v',
        expression: 'i_p * δ',
        given: [travelGiven(asked)],
        unit: 'mm',
        figure: pinOverPush(sizes) * amount,
      });
  return [ratio, travel];
}

/** Links on pins against a spring: F = dU/dv of U = ½·k·u² + ½·K·(ψ² + ½·(2ψ)² + (ψ + λ·u)²). */
const pressedSteps: HandSteps<ToggleSizes> = (asked) => {
  const { sizes, assessment, byHand } = asked;
  const { steps, opened, last } = pinStates(asked);
  const { inputs, factor } = togetherGiven(sizes.sideBySide);
  return [
    ...roofSteps(asked),
    ...springSteps(asked),
    ...travelSteps(asked),
    ...steps,
    formula({
      id: 'neck-strain',
      symbol: 'ε_n',
      expression: `t * ${last} / (2 * ℓ_h)`,
      unit: '',
      source: 'plane-bending',
    }),
    formula({
      id: 'spring-strain',
      symbol: 'ε_s',
      expression: `6 * k_s * ${opened} * (L_s + e) / (E * b * t_s^2)`,
      unit: '',
      source: 'small-deflection',
    }),
    formula({
      ...SOURCE,
      id: 'toggle-strain',
      symbol: 'ε',
      expression: 'max(ε_n, ε_s)',
      unit: '',
      figure: byHand.nominalStrain,
    }),
    formula({ ...SOURCE, id: 'opening', symbol: 'i_u', expression: '2 * (H - v) / c', unit: '' }),
    formula({ ...SOURCE, id: 'force-spring', symbol: 'F_s', expression: 'k_s * u * i_u', unit: 'N' }),
    formula({
      ...SOURCE,
      id: 'force-necks',
      symbol: 'F_n',
      expression: 'K * ((3 * χ + χ_3) / c + χ_3 * λ * i_u)',
      unit: 'N',
    }),
    formula({
      ...SOURCE,
      id: 'toggle-force',
      symbol: 'F',
      expression: `${factor}i_p * (F_s + F_n)`,
      given: inputs,
      unit: 'N',
      figure: assessment.effort.modulus * byHand.effort,
    }),
  ];
};

/** An over-centre toggle, pressed at the end of its first link. */
export const TOGGLE_WORKING: KindWorking<ToggleSizes> = {
  family: 'toggle',
  drives: { pressed: pressedSteps },
};
