import type { HubAnswer, HubDrive } from '../../closedForms/spiralHub.ts';
import { movedHub } from '../../flexures/spiralHandForms.ts';
import type { SpiralSizes } from '../../flexures/spiralSizes.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { travelGiven } from '../movement.ts';
import { formula, given, type Given, type Step, type WorkingUnit } from '../step.ts';
import { inertiaStep } from './turnedLeaf.ts';

type Spiral = HandAsked<SpiralSizes>;
type Flexibility = keyof HubAnswer['flexibility'];

const UNITS: Readonly<Record<Flexibility, WorkingUnit>> = {
  xx: 'mm^3',
  xy: 'mm^3',
  yy: 'mm^3',
  xm: 'mm^2',
  ym: 'mm^2',
  mm: 'mm',
};

function step(id: string, symbol: string, expression: string, unit: WorkingUnit, put: readonly Given[] = []): Step {
  return formula({ id, symbol, expression, given: put, unit, source: 'unit-load-method' });
}

/** Sums along one arm that are too long for a page. */
function summed({ flexibility }: HubAnswer, ...ats: readonly Flexibility[]): readonly Given[] {
  return ats.map((at) => given(`C_${at}`, flexibility[at], UNITS[at], 'summed'));
}

/** Stiffness of one arm about the centre of the hub over E·I, by way of its elastic centre: `k_xx` to `k_mm`. */
function stiffnessSteps(hub: HubAnswer): readonly Step[] {
  return [
    step('centre-xx', 'c_xx', 'C_xx - C_xm^2 / C_mm', 'mm^3', summed(hub, 'xx', 'xm', 'mm')),
    step('centre-xy', 'c_xy', 'C_xy - C_xm * C_ym / C_mm', 'mm^3', summed(hub, 'xy', 'ym')),
    step('centre-yy', 'c_yy', 'C_yy - C_ym^2 / C_mm', 'mm^3', summed(hub, 'yy')),
    step('arm-xx', 'k_xx', '1 / (c_xx - c_xy^2 / c_yy)', '1/mm^3'),
    step('arm-yy', 'k_yy', '1 / (c_yy - c_xy^2 / c_xx)', '1/mm^3'),
    step('arm-xy', 'k_xy', '-k_xx * c_xy / c_yy', '1/mm^3'),
    step('arm-xm', 'k_xm', '-(k_xx * C_xm + k_xy * C_ym) / C_mm', '1/mm^2'),
    step('arm-ym', 'k_ym', '-(k_xy * C_xm + k_yy * C_ym) / C_mm', '1/mm^2'),
  ];
}

const TURN_OF_ARM = step('arm-mm', 'k_mm', '(1 - k_xm * C_xm - k_ym * C_ym) / C_mm', '1/mm');

/** What one arm feels for a unit of movement, and what all of them together take, both over E·I. */
interface Felt {
  readonly steps: readonly Step[];
  readonly forces: { readonly x?: string; readonly y?: string; readonly m?: string };
  readonly whole: string;
  readonly inputs: readonly Given[];
}

/** A hub that stays in the middle, held there or by the evenness of its arms. */
function turnedInMiddle(hub: HubAnswer, arms: Given): Felt {
  return {
    steps: [...stiffnessSteps(hub), TURN_OF_ARM],
    forces: { x: 'k_xm', y: 'k_ym', m: 'k_mm' },
    whole: 'n_a * k_mm',
    inputs: [arms],
  };
}

/** Two arms opposite each other give aside as they like; three and more give alike every way. */
function shiftedByMany(hub: HubAnswer, arms: Given): Felt {
  const isPair = arms.value === 2;
  const moved = isPair
    ? [step('aside-pair', 'u_y', '-k_xy / k_yy', '')]
    : [
        step('arm-angle', 'β', '2 * pi * j / n_a', '', [given('j', hub.hardest.arm, '', 'summed'), arms]),
        step('aside-x', 'u_x', 'cos(β)', ''),
        step('aside-y', 'u_y', '-sin(β)', ''),
      ];
  const ux = isPair ? '' : ' * u_x';
  return {
    steps: [
      ...stiffnessSteps(hub),
      ...moved,
      step('force-x', 'P_x', `k_xx${ux} + k_xy * u_y`, '1/mm^3'),
      step('force-y', 'P_y', `k_xy${ux} + k_yy * u_y`, '1/mm^3'),
      step('force-m', 'P_m', `k_xm${ux} + k_ym * u_y`, '1/mm^2'),
    ],
    forces: { x: 'P_x', y: 'P_y', m: 'P_m' },
    whole: isPair ? 'n_a * (k_xx + k_xy * u_y)' : 'n_a * (k_xx + k_yy) / 2',
    inputs: [arms],
  };
}

function feltBy(drive: HubDrive, hub: HubAnswer, { sizes }: Spiral): Felt {
  const arms = given('n_a', sizes.arms, '', 'size');
  const isAlone = sizes.arms === 1;
  if (drive === 'centred' || (drive === 'turned' && !isAlone)) return turnedInMiddle(hub, arms);
  if (!isAlone) return shiftedByMany(hub, arms);
  if (drive === 'turned') {
    const alone = step('alone-moment', 'P_m', '1 / C_mm', '1/mm', summed(hub, 'mm'));
    return { steps: [alone], forces: { m: 'P_m' }, whole: 'P_m', inputs: [] };
  }
  const alone = step('alone-force', 'P_x', '1 / C_xx', '1/mm^3', summed(hub, 'xx'));
  return { steps: [alone], forces: { x: 'P_x' }, whole: 'P_x', inputs: [] };
}

function woundStep(id: string, symbol: string, expression: string, put: readonly Given[] = []): Step {
  return formula({ id, symbol, expression, given: put, unit: 'mm', source: 'spiral-arm' });
}

/** Where an arm is strained most: `x_p` and `y_p` from the centre of the hub. */
function placeSteps({ hardest }: HubAnswer, { sizes }: Spiral): readonly Step[] {
  const wound = [given('d_0', sizes.hub, 'mm', 'size'), given('d_1', sizes.ring, 'mm', 'size')];
  return [
    woundStep('arm-pitch', 'a', '(d_1 - d_0) / (4 * pi * n_u)', [...wound, given('n_u', sizes.turns, '', 'size')]),
    woundStep('arm-radius', 'r_p', 'd_0 / 2 + a * φ', [given('φ', hardest.angle, '', 'summed')]),
    woundStep('arm-x', 'x_p', 'r_p * cos(φ)'),
    woundStep('arm-y', 'y_p', 'r_p * sin(φ)'),
  ];
}

/** Which way the arm runs there: its rise along x and y for each radian, and its length. */
function directionSteps(isBoth: boolean): readonly Step[] {
  return [
    woundStep('arm-along-x', 'g_x', 'a * cos(φ) - y_p'),
    ...(isBoth ? [woundStep('arm-along-y', 'g_y', 'a * sin(φ) + x_p')] : []),
    woundStep('arm-along', 'w_p', 'sqrt(r_p^2 + a^2)'),
  ];
}

/** ε = ((t/2)·|m| + (t²/12)·|n|) for a unit of movement, times the movement. */
function strainSteps(asked: Spiral, hub: HubAnswer, { forces }: Felt, movement: Given | undefined): readonly Step[] {
  const last = (id: string, expression: string, put: readonly Given[]) =>
    formula({
      id,
      symbol: 'ε',
      expression,
      given: put,
      unit: '',
      figure: asked.byHand.nominalStrain,
      source: 'unit-load-method',
    });
  const { x, y, m } = forces;
  const by = movement?.symbol ?? 'θ';
  const put = movement ? [movement] : [];
  if (x === undefined) return [last('alone-strain', `t / 2 * P_m * ${by}`, put)];
  const bent = [`${x} * y_p`, ...(y === undefined ? [] : [`- ${y} * x_p`]), ...(m === undefined ? [] : [`+ ${m}`])];
  const [perBend, perPull]: readonly [WorkingUnit, WorkingUnit] = movement ? ['1/mm^2', '1/mm^3'] : ['1/mm', '1/mm^2'];
  return [
    ...placeSteps(hub, asked),
    step('arm-moment', 'm_p', bent.join(' '), perBend),
    ...directionSteps(y !== undefined),
    step('arm-pull', 'q_p', y === undefined ? `${x} * g_x / w_p` : `(${x} * g_x + ${y} * g_y) / w_p`, perPull),
    last('arm-strain', `(t / 2 * abs(m_p) + t^2 / 12 * abs(q_p)) * ${by}`, put),
  ];
}

function hubSteps(drive: HubDrive): HandSteps<SpiralSizes> {
  return (asked) => {
    const { sizes, thickness, assessment, byHand } = asked;
    const hub = movedHub(sizes, thickness, drive);
    const felt = feltBy(drive, hub, asked);
    const movement = drive === 'shifted' ? travelGiven(asked) : undefined;
    return [
      ...felt.steps,
      ...strainSteps(asked, hub, felt, movement),
      inertiaStep(sizes.depth),
      formula({
        id: movement ? 'hub-force' : 'hub-moment',
        symbol: movement ? 'F' : 'M',
        expression: `E * I * ${felt.whole} * ${movement ? 'δ' : 'θ'}`,
        given: [modulusGiven(asked), ...felt.inputs],
        unit: movement ? 'N' : 'N mm',
        figure: assessment.effort.modulus * byHand.effort,
        source: 'unit-load-method',
      }),
    ];
  };
}

/** A hub on spiral arms: turned about its fixed centre, turned by a pure moment, pushed. */
export const SPIRAL_WORKING: KindWorking<SpiralSizes> = {
  family: 'spiral',
  drives: { centred: hubSteps('centred'), turned: hubSteps('turned'), shifted: hubSteps('shifted') },
};
