import { strainsUpTo } from '../design/solvedPath.ts';
import { shoulderFit, type ShoulderFit } from '../strength/stressConcentration.ts';
import type { WorkingAsked } from './asked.ts';
import { formula, given, type Given, type Step } from './step.ts';

/**
 * How the root raises the strain: the symbol `ε_p`, what the skin sees.
 *
 *     ε_p = max(ε_w, k_r·ε_r),   k_r = 1 + q·(K_t − 1)
 *
 * @param asked - what the working starts from [-]
 * @returns the steps [-]
 *
 * Source: roark-17.1.
 */
export function rootSteps(asked: WorkingAsked): readonly Step[] {
  const { strain, section, sizes } = asked.assessment;
  const { fillet, shoulder } = asked.understood.family.root(sizes, section.thickness);
  const fit = shoulderFit('bending', section.thickness, shoulder, fillet);
  const factor = fit && strain.concentration > 1 ? [...tableSteps(fit, asked, fillet), factorStep(asked)] : [];
  return [...factor, peakStep(asked, factor.length > 0)];
}

/** Within the table x is h/r; at its edges it is the edge. */
function tableSteps(fit: ShoulderFit, { assessment }: WorkingAsked, fillet: number): readonly Step[] {
  const { counted, x, coefficients } = fit;
  const step = (counted - assessment.section.thickness) / 2;
  const isInside = fillet > 0 && Math.abs(step / fillet - x) <= 1e-12 * x;
  const common = { unit: '' as const, source: 'roark-17.1' as const };
  const thickOf = given('D', counted, 'mm', 'size');
  const entries = [
    formula({
      id: 'root-step',
      symbol: 'h_s',
      expression: '(D - t) / 2',
      given: [thickOf],
      unit: 'mm',
      source: 'roark-17.1',
    }),
    isInside
      ? formula({
          ...common,
          id: 'root-x',
          symbol: 'x_r',
          expression: 'h_s / r',
          given: [given('r', fillet, 'mm', 'size')],
          figure: x,
        })
      : formula({
          ...common,
          id: 'root-edge',
          symbol: 'x_r',
          expression: 'x_t',
          given: [given('x_t', x, '', 'constant')],
          figure: x,
        }),
    formula({ ...common, id: 'root-y', symbol: 'y_r', expression: '2 * h_s / D', figure: fit.y }),
  ];
  const curves = coefficients.map(([a, b, c], i) => {
    const at = i + 1;
    const inputs: readonly Given[] = [
      given(`a_${at}`, a, '', 'constant'),
      given(`b_${at}`, b, '', 'constant'),
      given(`c_${at}`, c, '', 'constant'),
    ];
    const expression = `a_${at} + b_${at} * sqrt(x_r) + c_${at} * x_r`;
    return formula({ ...common, id: 'root-curve', symbol: `C_${at}`, expression, given: inputs });
  });
  const concentration = formula({
    ...common,
    id: 'concentration',
    symbol: 'K_t',
    expression: 'C_1 + C_2 * y_r + C_3 * y_r^2 + C_4 * y_r^3',
    figure: assessment.strain.concentration,
  });
  return [...entries, ...curves, concentration];
}

function factorStep({ assessment: { strain } }: WorkingAsked): Step {
  return formula({
    id: 'root-factor',
    symbol: 'k_r',
    expression: '1 + q * (K_t - 1)',
    given: [given('q', strain.notchSensitivity, '', 'constant', 'memory')],
    unit: '',
    figure: strain.rootFactor,
    source: 'roark-17.1',
  });
}

function peakStep({ assessment, way }: WorkingAsked, isRaised: boolean): Step {
  const common = { symbol: 'ε_p', unit: '', figure: assessment.strain.peak, source: 'roark-17.1' } as const;
  if (!way) {
    return isRaised
      ? formula({ ...common, id: 'peak-raised', expression: 'k_r * ε' })
      : formula({ ...common, id: 'peak-plain', expression: 'ε' });
  }
  const { within, atRoots } = strainsUpTo(way, assessment.joint.movement.amount);
  const inputs = [given('ε_w', within, '', 'solver'), given('ε_r', atRoots, '', 'solver')];
  const expression = isRaised ? 'max(ε_w, k_r * ε_r)' : 'max(ε_w, ε_r)';
  return formula({ ...common, id: isRaised ? 'peak-solved' : 'peak-solved-plain', expression, given: inputs });
}
