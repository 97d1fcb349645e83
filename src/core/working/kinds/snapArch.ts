import { archAtTravel } from '../../closedForms/archAtTravel.ts';
import { MODES, SIDE_MODE, type ArchForm, type ArchState } from '../../closedForms/archModes.ts';
import { archHardest } from '../../closedForms/archStrain.ts';
import { flexing, formOf, type SnapArchSizes } from '../../flexures/snapArchSizes.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { balance, formula, given, sum, type Given, type Step } from '../step.ts';
import { inertiaStep, togetherGiven } from './turnedLeaf.ts';

const SOURCE = { source: 'shallow-arch' } as const;

type Arch = HandAsked<SnapArchSizes>;

/** At the mirror image of the arch its path ends; what is pushed farther counts as pushed so far. */
const MIRRORED = 2;

function step(id: string, symbol: string, expression: string, put: readonly Given[] = []): Step {
  return formula({ ...SOURCE, id, symbol, expression, given: put, unit: '' });
}

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

/** Column modes of a clamped leaf but for the first: 6π, 10π, … */
const HIGHER_MODES = { symbol: 'N_j', values: MODES.slice(1), unit: '', from: 'constant' } as const;

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

/** Where on the way it is strained most: c = ½·|Δκ|·L²/h + n/(12·Q), the symbol `c_a`. */
function hardestSteps(ratio: number, form: ArchForm, travel: number): readonly Step[] {
  const { factor, state, place } = archHardest(ratio, form, travel);
  const found = [given('n_m', state.compression, '', 'summed'), given('A_m', state.first, '', 'summed')];
  const hasSide = state.side > 0;
  return [
    step('hardest-force', 'Φ_m', '2 * pi^4 - pi^2 * (4 * pi^2 - n_m) * A_m', found),
    step('hardest-first', 'w_1', '4 * pi^2 * (A_m - 1 / 2) * cos(2 * pi * x_m)', [given('x_m', place, '', 'summed')]),
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
  if (form === 'double') return step('side-double', 'w_s', 'A_s * (4 * pi)^2 * cos(4 * pi * x_m)', put);
  const mode = given('N_w', SIDE_MODE.free, '', 'constant');
  return step('side-free', 'w_s', 'A_s * (N_w^2 * cos(N_w * x_m) - 2 * N_w * sin(N_w * x_m))', [...put, mode]);
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
