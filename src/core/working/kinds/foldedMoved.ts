import { foldedEffort, type FoldedPlace } from '../../closedForms/foldedLeafTurns.ts';
import type { FoldedSizes } from '../../flexures/foldedLeaf.ts';
import type { HandAsked } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given, sum, type Step, type WorkingUnit } from '../step.ts';

const SOURCE = { source: 'unit-load-method' } as const;

/** From the end up or down to the centre of turn j; every second turn lies below. */
const TO_TURN = '(y_e - L * (1 - (-1)^j) / 2)';
/** ∫ y ds over turn j: half a circle about its centre. */
const TURN_Y = `(pi * r_t * ${TO_TURN} + 2 * (-1)^j * r_t^2)`;

/** Where the moving end stands, seen from the fixed one: `x_e` and `y_e`. */
const END: readonly Step[] = [
  formula({ ...SOURCE, id: 'fold-end-x', symbol: 'x_e', expression: '(n_f - 1) * d', unit: 'mm' }),
  formula({ ...SOURCE, id: 'fold-end-y', symbol: 'y_e', expression: 'L * (1 - (-1)^n_f) / 2', unit: 'mm' }),
  formula({ ...SOURCE, id: 'fold-radius', symbol: 'r_t', expression: 'd / 2', unit: 'mm' }),
];

/** What does not sum up to something short: integrals over the turns of y, x·y and y². */
function turnSums(runs: number): readonly Step[] {
  const over = {
    symbol: 'j',
    values: Array.from({ length: runs - 1 }, (_, at) => at + 1),
    unit: '',
    from: 'constant',
  } as const;
  const summed = (id: string, symbol: string, expression: string, unit: WorkingUnit) =>
    sum({ ...SOURCE, id, symbol, expression, over, unit });
  return [
    summed('turns-y', 'T_y', TURN_Y, 'mm^2'),
    summed('turns-xy', 'T_xy', `(n_f - j - 1 / 2) * d * ${TURN_Y}`, 'mm^3'),
    summed('turns-yy', 'T_yy', `pi * r_t * ${TO_TURN}^2 + 4 * (-1)^j * r_t^2 * ${TO_TURN} + pi * r_t^3 / 2`, 'mm^3'),
  ];
}

function step(id: string, symbol: string, expression: string, unit: WorkingUnit, figure?: number): Step {
  return formula({ ...SOURCE, id, symbol, expression, unit, ...(figure === undefined ? {} : { figure }) });
}

function flexibility(at: string, expression: string, unit: WorkingUnit): Step {
  return step(`fold-${at}`, `f_${at}`, expression, unit);
}

const RUNS_XX = 'L * d^2 * n_f * (n_f - 1) * (2 * n_f - 1) / 6';
const TURNS_XX = 'pi * r_t * d^2 * (n_f - 1) * (4 * (n_f - 1)^2 - 1) / 12 + (n_f - 1) * pi * r_t^3 / 2';

/** Movement of the end for each force and moment there, times E·b; runs and turns are told by what they sum up to. */
const FLEXIBILITIES: readonly Step[] = [
  flexibility('xx', '12 / t^3 * (n_f * L^3 / 3 + T_yy) + (n_f - 1) * pi * r_t / (2 * t)', ''),
  flexibility('xy', '-12 / t^3 * ((y_e - L / 2) * L * d * n_f * (n_f - 1) / 2 + T_xy)', ''),
  flexibility('yy', `12 / t^3 * (${RUNS_XX} + ${TURNS_XX}) + (n_f * L + (n_f - 1) * pi * r_t / 2) / t`, ''),
  flexibility('xm', '-12 / t^3 * (n_f * L * (y_e - L / 2) + T_y)', '1/mm'),
  flexibility('ym', '12 / t^3 * (L * d * n_f * (n_f - 1) / 2 + pi * r_t * d * (n_f - 1)^2 / 2)', '1/mm'),
  flexibility('mm', '12 * L_u / t^3', '1/mm^2'),
];

/** One column of the inverse, by its minors: what moves the end one way and no other. */
const MINORS = {
  across: ['f_yy * f_mm - f_ym^2', 'f_ym * f_xm - f_xy * f_mm', 'f_xy * f_ym - f_yy * f_xm'],
  along: ['f_ym * f_xm - f_xy * f_mm', 'f_xx * f_mm - f_xm^2', 'f_xm * f_xy - f_ym * f_xx'],
} as const;
const DETERMINANT = {
  across: 'f_xx * c_x + f_xy * c_y + f_xm * c_m',
  along: 'f_xy * c_x + f_yy * c_y + f_ym * c_m',
} as const;

/** Forces and moment at the end over E·b and travel: `p_x`, `p_y`, `p_m`. */
function loadSteps(way: 'across' | 'along', stiffness: number): readonly Step[] {
  const [x, y, m] = MINORS[way];
  const isAcross = way === 'across';
  return [
    step('fold-minor', 'c_x', x, '1/mm^2'),
    step('fold-minor', 'c_y', y, '1/mm^2'),
    step('fold-minor', 'c_m', m, '1/mm'),
    step('fold-determinant', 'Δ', DETERMINANT[way], '1/mm^2'),
    step(isAcross ? 'fold-driven' : 'fold-kept', 'p_x', 'c_x / Δ', '', isAcross ? stiffness : undefined),
    step(isAcross ? 'fold-kept' : 'fold-driven', 'p_y', 'c_y / Δ', '', isAcross ? undefined : stiffness),
    step('fold-kept-turn', 'p_m', 'c_m / Δ', 'mm'),
  ];
}

/** ε = (6·|m|/t² + |p|/t)·δ, where it is largest. */
function strainSteps(
  { byHand }: Pick<HandAsked<FoldedSizes>, 'byHand'>,
  place: FoldedPlace,
  put: ReturnType<typeof travelGiven>,
): readonly Step[] {
  const isTurn = place.kind === 'turn';
  const moment = formula({
    ...SOURCE,
    id: isTurn ? 'fold-centre' : 'fold-place',
    symbol: 'm_p',
    expression: 'p_m + p_y * (x_e - x_p) - p_x * (y_e - y_p)',
    given: [given('x_p', place.x, 'mm', 'summed'), given('y_p', place.y, 'mm', 'summed')],
    unit: 'mm',
  });
  const strain = (id: string, expression: string) =>
    formula({ ...SOURCE, id, symbol: 'ε', expression, given: [put], unit: '', figure: byHand.nominalStrain });
  if (!isTurn) return [moment, strain('run-strain', '(6 * abs(m_p) / t^2 + abs(p_y) / t) * δ')];
  const whole = formula({ ...SOURCE, id: 'fold-whole', symbol: 'p', expression: 'sqrt(p_x^2 + p_y^2)', unit: '' });
  const sign = place.adds === 1 ? '+' : '-';
  return [moment, whole, strain('turn-strain', `(6 * abs(m_p ${sign} r_t * p) / t^2 + p / t) * δ`)];
}

/**
 * A folded leaf whose end is moved by little and kept from turning and from moving aside, by unit loads: the symbols
 * `p_x` and `p_y`, forces over E·b and travel, and `ε`. Before them stand `n_f`, `L`, `d` and `L_u`.
 *
 * @param asked - what its hand form is asked [-]
 * @param way - `across` the runs, or `along` them [-]
 * @returns the steps [-]
 *
 * Source: unit-load-method.
 */
export function foldedMovedSteps(asked: HandAsked<FoldedSizes>, way: 'across' | 'along'): readonly Step[] {
  const { sizes, thickness } = asked;
  const { stiffness, hardest } = foldedEffort(sizes, thickness, way);
  return [
    ...END,
    ...turnSums(sizes.runs),
    ...FLEXIBILITIES,
    ...loadSteps(way, stiffness),
    ...strainSteps(asked, hardest, travelGiven(asked)),
  ];
}
