import { foldedEffort, type FoldedPlace } from '../../closedForms/foldedLeafTurns.ts';
import type { FoldedSizes } from '../../flexures/foldedLeaf.ts';
import type { HandAsked } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given, sum, type Given, type Step, type WorkingUnit } from '../step.ts';

const SOURCE = { source: 'unit-load-method' } as const;

function step(
  id: string,
  symbol: string,
  expression: string,
  unit: WorkingUnit,
  more: { readonly figure?: number; readonly given?: readonly Given[] } = {},
): Step {
  return formula({ ...SOURCE, id, symbol, expression, unit, ...more });
}

/** Where the moving end stands, seen from the fixed one, and what turns and runs have in common. */
const END: readonly Step[] = [
  step('fold-end-x', 'x_e', '(n_f - 1) * d', 'mm'),
  step('fold-end-y', 'y_e', 'L * (1 - (-1)^n_f) / 2', 'mm'),
  step('fold-middle', 'y_m', 'y_e - L / 2', 'mm'),
  step('fold-radius', 'r_t', 'd / 2', 'mm'),
  step('fold-arc', 'ℓ_t', 'pi * r_t', 'mm'),
  step('fold-bends', 'c_t', '12 / t^3', '1/mm^3'),
];

/** Turns on one side, seen from the end: what y and y² sum up to along one of them, and x over their centres. */
function sideSteps(side: 'a' | 'b', turns: readonly number[]): readonly Step[] {
  if (turns.length === 0) return [];
  const sign = side === 'a' ? '-' : '+';
  const away = side === 'a' ? 'y_e - L' : 'y_e';
  return [
    step(`turn-${side}`, `y_${side}`, away, 'mm'),
    step('turn-y', `q_${side}`, `ℓ_t * y_${side} ${sign} 2 * r_t^2`, 'mm^2'),
    step('turn-yy', `v_${side}`, `ℓ_t * (y_${side}^2 + r_t^2 / 2) ${sign} 4 * r_t^2 * y_${side}`, 'mm^3'),
    sum({
      ...SOURCE,
      id: `turns-x-${side}`,
      symbol: `X_${side}`,
      expression: '(n_f - j - 1 / 2) * d',
      over: { symbol: 'j', values: turns, unit: '', from: 'constant' },
      unit: 'mm',
    }),
  ];
}

/** Integrals of x, y and their products over all turns; every second one lies below. */
function turnSteps(runs: number): readonly Step[] {
  const turns = Array.from({ length: runs - 1 }, (_, at) => at + 1);
  const above = turns.filter((j) => j % 2 === 1);
  const below = turns.filter((j) => j % 2 === 0);
  const counts = [given('n_o', above.length, '', 'summed'), given('n_b', below.length, '', 'summed')];
  const hasBelow = below.length > 0;
  const both = (one: string, other: string) => (hasBelow ? `${one} + ${other}` : one);
  return [
    ...sideSteps('a', above),
    ...sideSteps('b', below),
    step('turns-sum-x', 'T_x', hasBelow ? 'ℓ_t * (X_a + X_b)' : 'ℓ_t * X_a', 'mm^2'),
    step('turns-sum-y', 'T_y', both('n_o * q_a', 'n_b * q_b'), 'mm^2', { given: counts.slice(0, hasBelow ? 2 : 1) }),
    step('turns-sum-xy', 'T_xy', both('X_a * q_a', 'X_b * q_b'), 'mm^3'),
    step('turns-sum-yy', 'T_yy', both('n_o * v_a', 'n_b * v_b'), 'mm^3'),
    sum({
      ...SOURCE,
      id: 'turns-xx',
      symbol: 'T_xx',
      expression: 'ℓ_t * ((n_f - j - 1 / 2)^2 * d^2 + r_t^2 / 2)',
      over: { symbol: 'j', values: turns, unit: '', from: 'constant' },
      unit: 'mm^3',
    }),
  ];
}

/** Movement of the end for each force and moment there, times E·b. */
const FLEXIBILITIES: readonly Step[] = [
  step('runs-x', 'R_x', 'L * d * n_f * (n_f - 1) / 2', 'mm^2'),
  step('runs-xx', 'R_xx', 'L * d^2 * n_f * (n_f - 1) * (2 * n_f - 1) / 6', 'mm^3'),
  step('fold-xx', 'f_xx', 'c_t * (n_f * L^3 / 3 + T_yy) + (n_f - 1) * ℓ_t / (2 * t)', ''),
  step('fold-xy', 'f_xy', '-c_t * (R_x * y_m + T_xy)', ''),
  step('fold-yy', 'f_yy', 'c_t * (R_xx + T_xx) + (n_f * L + (n_f - 1) * ℓ_t / 2) / t', ''),
  step('fold-xm', 'f_xm', '-c_t * (n_f * L * y_m + T_y)', '1/mm'),
  step('fold-ym', 'f_ym', 'c_t * (R_x + T_x)', '1/mm'),
  step('fold-mm', 'f_mm', 'c_t * L_u', '1/mm^2'),
];

/** One column of the inverse, by its minors: what moves the end one way and no other. */
const MINORS = {
  across: ['f_yy * f_mm - f_ym^2', 'f_ym * f_xm - f_xy * f_mm', 'f_xy * f_ym - f_yy * f_xm'],
  along: ['f_ym * f_xm - f_xy * f_mm', 'f_xx * f_mm - f_xm^2', 'f_xm * f_xy - f_ym * f_xx'],
} as const;
/** Its determinant, row by row. */
const ROWS = {
  across: ['f_xx * c_x', 'f_xy * c_y', 'f_xm * c_m'],
  along: ['f_xy * c_x', 'f_yy * c_y', 'f_ym * c_m'],
} as const;

/** Forces and moment at the end over E·b and travel: `p_x`, `p_y`, `p_m`. */
function loadSteps(way: 'across' | 'along', stiffness: number): readonly Step[] {
  const [x, y, m] = MINORS[way];
  const [ofX, ofY, ofM] = ROWS[way];
  const isAcross = way === 'across';
  return [
    step('fold-minor', 'c_x', x, '1/mm^2'),
    step('fold-minor', 'c_y', y, '1/mm^2'),
    step('fold-minor', 'c_m', m, '1/mm'),
    step('fold-product', 'Δ_x', ofX, '1/mm^2'),
    step('fold-product', 'Δ_y', ofY, '1/mm^2'),
    step('fold-product', 'Δ_m', ofM, '1/mm^2'),
    step('fold-determinant', 'Δ', 'Δ_x + Δ_y + Δ_m', '1/mm^2'),
    step(isAcross ? 'fold-driven' : 'fold-kept', 'p_x', 'c_x / Δ', '', isAcross ? { figure: stiffness } : {}),
    step(isAcross ? 'fold-kept' : 'fold-driven', 'p_y', 'c_y / Δ', '', isAcross ? {} : { figure: stiffness }),
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
  const found = given('x_p', place.x, 'mm', 'summed');
  const moment = [
    step('fold-arm-x', 'd_x', 'x_e - x_p', 'mm', { given: [found] }),
    step('fold-arm-y', 'd_y', 'y_e - y_p', 'mm', { given: [given('y_p', place.y, 'mm', 'summed')] }),
    step(isTurn ? 'fold-centre' : 'fold-place', 'm_p', 'p_m + p_y * d_x - p_x * d_y', 'mm'),
  ];
  const strain = (id: string, expression: string) =>
    formula({ ...SOURCE, id, symbol: 'ε', expression, given: [put], unit: '', figure: byHand.nominalStrain });
  if (!isTurn) return [...moment, strain('run-strain', '(6 * abs(m_p) / t^2 + abs(p_y) / t) * δ')];
  const whole = formula({ ...SOURCE, id: 'fold-whole', symbol: 'p', expression: 'sqrt(p_x^2 + p_y^2)', unit: '' });
  const sign = place.adds === 1 ? '+' : '-';
  return [...moment, whole, strain('turn-strain', `(6 * abs(m_p ${sign} r_t * p) / t^2 + p / t) * δ`)];
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
    ...turnSteps(sizes.runs),
    ...FLEXIBILITIES,
    ...loadSteps(way, stiffness),
    ...strainSteps(asked, hardest, travelGiven(asked)),
  ];
}
