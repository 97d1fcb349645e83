import { totalSigma } from '../life/scatter.ts';
import { soundness } from '../material/choose.ts';
import { normalQuantile } from '../numeric/normal.ts';
import type { WorkingAsked } from './asked.ts';
import { formula, given, sum, type Step } from './step.ts';

/**
 * Below this 1 + erf has lost figures, and the tail is an integral whose trapezoids leave under 1e-12: their error falls
 * with the exponential of one over the step, and past the ends stands e^−42.
 */
const FAR_TAIL = -4;
const TRAPEZOIDS = Array.from({ length: 27 }, (_, i) => (i - 13) / 2);

const SPREAD = { unit: '', source: 'strain-life' } as const;

/**
 * How many of a hundred prints reach what is wanted: the symbol `P`.
 *
 *     P = ½·(1 + erf(z/√2)),   z = log10(N_50/n_w)/s,   s = √(s_p² + s_d²),   s_d = log10(f_d)/1.6449
 *
 * and far from the wish P = −z·exp(−z²/2)/(2π·√2)·∫exp(−τ²)/(τ² + z²/2)·dτ, so that small shares keep their figures.
 *
 * @param asked - what the working starts from, whose life has been worked out [-]
 * @returns the steps, none where the first flex breaks it [-]
 *
 * Source: strain-life, normal-distribution.
 */
export function chanceSteps({ assessment: { life, filament, joint } }: WorkingAsked): readonly Step[] {
  if (!(life.median > 0)) return [];
  const { sigmaLog10N, doubtFactor, surestLife = 1, doubtPerDecade = 0 } = filament.life;
  const provenance = soundness(filament.life.provenance);
  const least = formula({
    ...SPREAD,
    id: 'doubt',
    symbol: 's_d',
    expression: 'log10(f_d) / z_95',
    given: [given('f_d', doubtFactor, '', 'filament', provenance), given('z_95', normalQuantile(0.95), '', 'constant')],
  });
  const isTaught = doubtPerDecade > 0;
  const away = formula({
    ...SPREAD,
    id: 'doubt-away',
    symbol: 's_a',
    expression: life.median > 1 ? 's_k * log10(N_50 / N_s)' : 's_k * log10(1 / N_s)',
    given: [
      given('s_k', doubtPerDecade, '', 'filament', 'measured'),
      given('N_s', surestLife, '', 'filament', 'measured'),
    ],
  });
  const spreads = totalSigma(filament.life, life.median);
  const sigma = formula({
    ...SPREAD,
    id: isTaught ? 'spread-taught' : 'spread',
    symbol: 's',
    expression: isTaught ? 'sqrt(s_p^2 + s_d^2 + s_a^2)' : 'sqrt(s_p^2 + s_d^2)',
    given: [given('s_p', sigmaLog10N, '', 'filament', provenance)],
    figure: spreads,
  });
  const wanted = given('n_w', joint.movement.cycles, '', 'brief');
  return [
    least,
    ...(isTaught ? [away] : []),
    sigma,
    formula({ ...SPREAD, id: 'deviations', symbol: 'z', expression: 'log10(N_50 / n_w) / s', given: [wanted] }),
    ...shareSteps(Math.log10(life.median / joint.movement.cycles) / spreads, life.chance),
  ];
}

/** Share of a normal law below so many deviations. */
function shareSteps(deviations: number, figure: number): readonly Step[] {
  const common = { ...SPREAD, symbol: 'P', figure };
  if (deviations > FAR_TAIL) {
    return [formula({ ...common, id: 'chance', expression: '1 / 2 * (1 + erf(z / sqrt(2)))' })];
  }
  const tail = sum({
    ...SPREAD,
    id: 'chance-tail',
    symbol: 'Q',
    expression: 'exp(-τ^2) / (τ^2 + z^2 / 2)',
    over: { symbol: 'τ', values: TRAPEZOIDS, unit: '', from: 'constant' },
  });
  const expression = '-z * exp(-z^2 / 2) / (4 * pi * sqrt(2)) * Q';
  return [tail, formula({ ...common, id: 'chance-far', expression })];
}
