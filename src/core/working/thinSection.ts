import type { PrintProfile } from '../print/profile.ts';
import type { WorkingAsked } from './asked.ts';
import { formula, given, type Step } from './step.ts';

/**
 * How the thickness comes of whole lines or layers: the symbol `t`.
 *
 *     t = n·w, or (n − 1)·s + w with s = w − h·(1 − π/4), or h₁ + (n − 1)·h, as a ladder of tests then corrects it
 *
 * @param asked - what the working starts from [-]
 * @returns the steps [-]
 *
 * Source: bead-section.
 */
export function thinSectionSteps({ understood }: WorkingAsked): readonly Step[] {
  const { joint, family, filament, section, sizes } = understood;
  if (joint.measuredThickness !== undefined) {
    const measured = given('t_m', joint.measuredThickness, 'mm', 'size', 'measured');
    return [measuredStep(measured.value, [measured])];
  }
  const set = family.section(sizes, joint.profile).thickness;
  const laid = filament.laid?.[section.countOf];
  const steps = (symbol: string) => setSteps(symbol, section.count, section.countOf, joint.profile, set);
  if (!laid) return steps('t');
  const printed = laid.offset + laid.factor * set;
  const isKept = section.thickness > printed * (1 + 1e-12);
  return [
    ...steps('t_set'),
    formula({
      id: isKept ? 'laid-least' : 'laid',
      symbol: 't',
      expression: isKept ? 'f_t * t_set' : 'o_t + f_t * t_set',
      given: isKept
        ? [given('f_t', section.thickness / set, '', 'constant')]
        : [
            given('o_t', laid.offset, 'mm', 'filament', 'measured'),
            given('f_t', laid.factor, '', 'filament', 'measured'),
          ],
      unit: 'mm',
      figure: section.thickness,
      source: 'common-practice',
    }),
  ];
}

function measuredStep(figure: number, inputs: Parameters<typeof formula>[0]['given']): Step {
  return formula({
    id: 'measured',
    symbol: 't',
    expression: 't_m',
    ...(inputs ? { given: inputs } : {}),
    unit: 'mm',
    figure,
    source: 'common-practice',
  });
}

function setSteps(
  symbol: string,
  count: number,
  countOf: 'lines' | 'layers',
  { lineWidth, layerHeight, firstLayerHeight, fitRule }: PrintProfile,
  figure: number,
): readonly Step[] {
  const n = given('n', count, '', 'size');
  const w = given('w', lineWidth, 'mm', 'print');
  const h = given('h', layerHeight, 'mm', 'print');
  if (countOf === 'layers') {
    const first = given('h_1', firstLayerHeight, 'mm', 'print');
    const expression = 'h_1 + (n - 1) * h';
    return [
      formula({
        id: 'layers',
        symbol,
        expression,
        given: [n, first, h],
        unit: 'mm',
        figure,
        source: 'common-practice',
      }),
    ];
  }
  if (fitRule === 'nominal') {
    return [
      formula({
        id: 'lines',
        symbol,
        expression: 'n * w',
        given: [n, w],
        unit: 'mm',
        figure,
        source: 'common-practice',
      }),
    ];
  }
  return [
    formula({
      id: 'line-pitch',
      symbol: 's_w',
      expression: 'w - h * (1 - pi / 4)',
      given: [w, h],
      unit: 'mm',
      source: 'bead-section',
    }),
    formula({
      id: 'lines-overlapped',
      symbol,
      expression: '(n - 1) * s_w + w',
      given: [n],
      unit: 'mm',
      figure,
      source: 'bead-section',
    }),
  ];
}
