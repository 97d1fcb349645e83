import { effortBeyondYield } from '../design/effortAnswer.ts';
import { hardestUpTo } from '../design/solvedPath.ts';
import { WIDTH_BRIDGE } from '../closedForms/leafTorque.ts';
import { soundness } from '../material/choose.ts';
import { modulusGiven, type WorkingAsked } from './asked.ts';
import { formula, given, type Given, type Step, type WorkingUnit } from './step.ts';

/** Symbol and unit of an effort as its drive measures it. */
function effortOf({ understood }: WorkingAsked): { readonly symbol: 'M' | 'F'; readonly unit: WorkingUnit } {
  return understood.drive.measure === 'turn' ? { symbol: 'M', unit: 'N mm' } : { symbol: 'F', unit: 'N' };
}

/**
 * What it takes to hold the joint where it is wanted: the symbol `M_h` or `F_h`.
 *
 *     M_h = k_b·M·f,   f = 1 for κ ≤ 1, (3/2 − 1/(2κ²))/κ beyond,   κ = ε·E/σ_y
 *
 * @param asked - what the working starts from [-]
 * @returns the steps [-]
 *
 * Source: wide-strip, elastic-plastic.
 */
export function effortSteps(asked: WorkingAsked): readonly Step[] {
  return asked.effortWay ? solvedEffort(asked) : handEffort(asked);
}

/** The strain over the one at which the skin begins to flow, and what that leaves of the effort. */
function flowSteps(
  asked: WorkingAsked,
  strain: string,
  strainValue: number,
  inputs: readonly Given[],
): readonly Step[] {
  const { filament, effort } = asked.assessment;
  const { yieldStress } = filament.properties;
  const ratio = (strainValue * effort.modulus) / yieldStress.typical;
  const flow = formula({
    id: 'flow-ratio',
    symbol: 'κ_e',
    expression: `${strain} * E / σ_y`,
    given: [...inputs, given('σ_y', yieldStress.typical, 'MPa', 'filament', soundness(yieldStress.provenance))],
    unit: '',
    figure: ratio,
    source: 'elastic-plastic',
  });
  if (!(ratio > 1)) return [flow];
  const left = formula({
    id: 'flow-left',
    symbol: 'f_y',
    expression: '(3 / 2 - 1 / (2 * κ_e^2)) / κ_e',
    unit: '',
    figure: effortBeyondYield(1, ratio),
    source: 'elastic-plastic',
  });
  return [flow, left];
}

function handEffort(asked: WorkingAsked): readonly Step[] {
  const { assessment, byHand } = asked;
  const { symbol, unit } = effortOf(asked);
  const width = widthSteps(asked);
  const flow = flowSteps(asked, 'ε', byHand.nominalStrain, []);
  const factors = [...(width.length > 0 ? ['k_b'] : []), symbol, ...(flow.length > 1 ? ['f_y'] : [])];
  return [
    ...width,
    ...flow,
    formula({
      id: 'effort-by-hand',
      symbol: `${symbol}_h`,
      expression: factors.join(' * '),
      unit,
      figure: assessment.effort.effort,
      source: 'elastic-plastic',
    }),
  ];
}

/** The solver tells efforts for a modulus of 1 MPa and knows the width; what flows is taken off in each state. */
function solvedEffort(asked: WorkingAsked): readonly Step[] {
  const { assessment, understood, effortWay, way, byHand } = asked;
  if (!effortWay) return [];
  const { effort, filament } = assessment;
  const { symbol, unit } = effortOf(asked);
  const yieldStress = filament.properties.yieldStress.typical;
  const felt = (perModulus: number, strain: number) =>
    effortBeyondYield(effort.modulus * perModulus, (strain * effort.modulus) / yieldStress);
  // A strain that only a form knows is the same in every state: what flows is judged by the one at the wanted end.
  const hardest = hardestUpTo(effortWay, understood.joint.movement.amount, way ? felt : (e) => e);
  const strain = way ? hardest.strain : byHand.nominalStrain;
  const perModulus = given('e_1', hardest.effort, unit === 'N' ? 'mm^2' : 'mm^3', 'solver');
  const inputs = [modulusGiven(asked), ...(way ? [given('ε_e', strain, '', 'solver')] : [])];
  const flow = flowSteps(asked, way ? 'ε_e' : 'ε', strain, inputs);
  return [
    ...flow,
    formula({
      id: 'effort-solved',
      symbol: `${symbol}_h`,
      expression: flow.length > 1 ? 'E * e_1 * f_y' : 'E * e_1',
      given: [perModulus],
      unit,
      figure: effort.effort,
      source: 'reissner-rod',
    }),
  ];
}

/** 1 − x⁴/90 + … and 3/(2x): where the edges of a strip matter too little or too much for the whole formula. */
const EDGES = { narrow: 1e-4, wide: 40 } as const;

/** How much stiffer a wide leaf is than a narrow one: the symbol `k_b`; none where a form knows no width. */
function widthSteps({ assessment, understood, byHand }: WorkingAsked): readonly Step[] {
  const { section, length, effort, filament } = assessment;
  if (byHand.widthRatio !== undefined) return [];
  const { poissonsRatio } = filament.properties;
  const poisson = poissonsRatio.typical;
  const searle = (section.width ** 2 * 2 * byHand.nominalStrain) / section.thickness ** 2;
  const x = (3 * (1 - poisson ** 2)) ** 0.25 * Math.sqrt(searle);
  const common = { unit: '' as const, source: 'wide-strip' as const };
  const reach = (length / section.width - WIDTH_BRIDGE.from) / (WIDTH_BRIDGE.to - WIDTH_BRIDGE.from);
  const ν = given('ν', poisson, '', 'filament', soundness(poissonsRatio.provenance));
  const b = given('b', section.width, 'mm', 'size');
  const flat = formula({ ...common, id: 'width-flat', symbol: 'k_1', expression: '1 / (1 - ν^2)', given: [ν] });
  const last = (id: string, expression: string, inputs: readonly Given[] = []) =>
    formula({ ...common, id, symbol: 'k_b', expression, given: inputs, figure: effort.widthRatio });
  if (reach <= 0) return [flat, last('width-clamped', 'k_1')];
  const edge = edgeSteps(x);
  const free = formula({ ...common, id: 'width-free', symbol: 'k_2', expression: '(1 - ν^2 * F_M) / (1 - ν^2)' });
  const strip = [
    formula({ ...common, id: 'searle', symbol: 'S', expression: '2 * ε * b^2 / t^2', given: [b] }),
    formula({ ...common, id: 'searle-x', symbol: 'x', expression: '(3 * (1 - ν^2))^0.25 * sqrt(S)', given: [ν] }),
    ...edge,
  ];
  if (reach >= 1) return [...strip, { ...free, given: [] }, last('width-strip', 'k_2')];
  const L = given('L_f', understood.length, 'mm', 'size');
  return [...strip, { ...flat, given: [] }, free, last('width-bridge', 'k_1 + (L_f / b - 1) * (k_2 - k_1)', [L])];
}

function edgeSteps(x: number): readonly Step[] {
  const common = { unit: '' as const, source: 'wide-strip' as const, symbol: 'F_M' };
  if (x < EDGES.narrow) return [formula({ ...common, id: 'edges-narrow', expression: '1' })];
  if (x > EDGES.wide) return [formula({ ...common, id: 'edges-wide', expression: '3 / (2 * x)' })];
  return [
    formula({
      ...common,
      id: 'edges',
      expression: '(3 / (2 * x)) * ((cosh(x) - cos(x)) / (sinh(x) + sin(x))) + sinh(x) * sin(x) / (sinh(x) + sin(x))^2',
    }),
  ];
}
