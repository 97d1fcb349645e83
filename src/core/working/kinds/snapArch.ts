import { archAtTravel } from '../../closedForms/archAtTravel.ts';
import { SIDE_MODE, type ArchForm, type ArchState } from '../../closedForms/archModes.ts';
import { flexing, formOf, type SnapArchSizes } from '../../flexures/snapArchSizes.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { balance, formula, given, sum, type Given, type Step } from '../step.ts';
import { archStep as step, hardestSteps, HIGHER_MODES } from './archHardest.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'shallow-arch' } as const;

type Arch = HandAsked<SnapArchSizes>;

/** At the mirror image of the arch its path ends; what is pushed farther counts as pushed so far. */
const MIRRORED = 2;

/** What bends, and rise and travel without dimension: `L`, `Q_a`, `Δ`. */
function shareSteps(asked: Arch): readonly Step[] {
  const { sizes, thickness, amount } = asked;
  const isPast = amount / sizes.rise > MIRRORED;
  return [
    formula({
      ...SOURCE,
      id: 'arch-length',
      symbol: 'L',
      expression: 'ℓ - ℓ_b',
      given: [given('ℓ', sizes.span, 'mm', 'size'), given('ℓ_b', sizes.block, 'mm', 'size')],
      unit: 'mm',
      figure: flexing(sizes),
    }),
    formula({
      ...SOURCE,
      id: 'arch-ratio',
      symbol: 'Q_a',
      expression: 'h_a / t',
      given: [given('h_a', sizes.rise, 'mm', 'size')],
      unit: '',
      figure: sizes.rise / thickness,
    }),
    formula({
      ...SOURCE,
      id: isPast ? 'arch-mirrored' : 'arch-share',
      symbol: 'Δ',
      expression: isPast ? 'min(δ / h_a, 2)' : 'δ / h_a',
      given: [travelGiven(asked)],
      unit: '',
      figure: Math.min(MIRRORED, amount / sizes.rise),
    }),
  ];
}

/** While it leans or wriggles aside its compression is that of the side mode; else it has none. */
function isAside({ compression }: ArchState, form: ArchForm): boolean {
  return compression === SIDE_MODE[form] ** 2;
}

function compressionStep(form: ArchForm): Step {
  return form === 'double'
    ? step('arch-aside-double', 'n_c', '(4 * pi)^2')
    : step('arch-aside-free', 'n_c', 'N_w^2', [given('N_w', SIDE_MODE.free, '', 'constant')]);
}

/** The thirty modes that a load in the middle takes, the first by itself: `s_g`, `s_q`, and its fall of force `s_f`. */
function modeSteps(put: readonly Given[]): readonly Step[] {
  const over = HIGHER_MODES;
  return [
    sum({
      ...SOURCE,
      id: 'modes-give',
      symbol: 's_g',
      expression: '8 / (N_j^2 * (N_j^2 - n_c))',
      over,
      given: put,
      unit: '',
    }),
    sum({ ...SOURCE, id: 'modes-squares', symbol: 's_q', expression: '4 / (N_j * (N_j^2 - n_c))^2', over, unit: '' }),
    step('first-fall', 's_f', 'pi^2 * (4 * pi^2 - n_c)'),
  ];
}

/**
 * Compression and first mode at the travel. They are roots; that they are the right ones is seen by the travel and the
 * shortening that they give.
 */
function stateSteps(state: ArchState, form: ArchForm, wanted: number): readonly Step[] {
  const aside = isAside(state, form);
  const compressed = given('n_c', state.compression, '', 'summed');
  const travel = balance({
    ...SOURCE,
    id: 'arch-travel',
    symbol: 'Δ_a',
    left: 'Δ_a',
    right: '1 - 2 * A_1 + s_g * Φ',
    unit: '',
    figure: wanted,
  });
  const force = formula({
    ...SOURCE,
    id: 'arch-force',
    symbol: 'Φ',
    expression: '2 * pi^4 - s_f * A_1',
    given: [given('A_1', state.first, '', 'summed')],
    unit: '',
    figure: state.force,
  });
  const known = [...(aside ? [compressionStep(form)] : []), ...modeSteps(aside ? [] : [compressed]), force, travel];
  return [...known, ...(aside ? asideSteps(state, form) : [shorteningStep(state)])];
}

/** Without a side mode the modes of the middle take all the shortening that the compression leaves. */
function shorteningStep({ compression }: ArchState): Step {
  return balance({
    ...SOURCE,
    id: 'arch-shortening',
    symbol: 'n_a',
    left: 'pi^2 / 4 - n_a / (12 * Q_a^2)',
    right: 'pi^2 * A_1^2 + s_q * Φ^2',
    unit: '',
    figure: compression,
  });
}

/** So little of a side mode keeps nine figures of its square, which is what is left. */
const LEAST_SIDE = 1e-3;

/** What shortening the modes of the middle leave goes into the side mode. */
function asideSteps({ side }: ArchState, form: ArchForm): readonly Step[] {
  const left = step('arch-left', 'S_w', 'pi^2 / 4 - n_c / (12 * Q_a^2) - pi^2 * A_1^2 - s_q * Φ^2');
  // Where it is only just reached, what is left is a small difference, and then round-off.
  if (!(side > LEAST_SIDE)) return [left];
  const mode = form === 'double' ? '(4 * pi)' : 'N_w';
  const amplitude = formula({
    ...SOURCE,
    id: 'arch-side',
    symbol: 'A_w',
    expression: `2 * sqrt(S_w) / ${mode}`,
    unit: '',
    figure: side,
  });
  return [left, amplitude];
}

function archSteps(formOfArch: (sizes: SnapArchSizes) => ArchForm): HandSteps<SnapArchSizes> {
  return (asked) => {
    const { sizes, thickness, amount, byHand, assessment } = asked;
    const form = formOfArch(sizes);
    const ratio = sizes.rise / thickness;
    const travel = amount / sizes.rise;
    const { inputs, factor } = togetherGiven(sizes.sideBySide);
    const isPair = sizes.arches > 1;
    return [
      ...shareSteps(asked),
      ...stateSteps(archAtTravel(ratio, form, travel), form, Math.min(MIRRORED, travel)),
      ...hardestSteps(ratio, form, travel),
      formula({
        ...SOURCE,
        id: 'arch-strain',
        symbol: 'ε',
        expression: 'c_a * t * h_a / L^2',
        unit: '',
        figure: byHand.nominalStrain,
      }),
      inertiaStep(sizes.depth),
      formula({
        ...SOURCE,
        id: 'arch-force-all',
        symbol: 'F',
        expression: `${factor}${isPair ? 'm_a * ' : ''}Φ * E * I * h_a / L^3`,
        given: [modulusGiven(asked), ...inputs, ...(isPair ? [given('m_a', sizes.arches, '', 'size')] : [])],
        unit: 'N',
        figure: assessment.effort.modulus * byHand.effort,
      }),
    ];
  };
}

/** A cosine arch or two of them, pressed with a finger, and by a stem that keeps it from leaning. */
export const SNAP_ARCH_WORKING: KindWorking<SnapArchSizes> = {
  family: 'snapArch',
  drives: { pressed: archSteps(formOf), guided: archSteps(() => 'double') },
};
