import { THICK_SECTION } from '../life/assessLife.ts';
import type { Wear } from '../life/lifeAnswer.ts';
import { LONGEST_LIFE, strainAtLife } from '../life/strainLife.ts';
import { soundness, strainFactorAcrossLayers } from '../material/choose.ts';
import type { WorkingAsked } from './asked.ts';
import { balance, formula, given, type Given, type Step } from './step.ts';

const CURVE = { unit: '', source: 'strain-life' } as const;

/**
 * How many flexes half of the prints last: the symbol `N_50`.
 *
 *     ε_eq = ε_p·(1 − R)^γ/(f_l·f_c),   A·(2N)^b + B·(2N)^c = ε_eq
 *
 * @param asked - what the working starts from, whose peak strain has been worked out [-]
 * @returns the steps [-]
 *
 * Source: strain-life, palmgren-miner.
 */
export function lifeSteps(asked: WorkingAsked): readonly Step[] {
  const { life } = asked.assessment;
  const [own] = life.wear;
  return [...harmSteps(asked, own), ...medianSteps(asked, own), ...sharedSteps(asked)];
}

/** The strain of a one-way flex along the lines that does the same harm. */
function harmSteps({ assessment, understood }: WorkingAsked, own: Wear): readonly Step[] {
  const { filament, strain, section } = assessment;
  const { gamma } = filament.life;
  const layers = understood.acrossLayers ? strainFactorAcrossLayers(filament) : undefined;
  const thick = section.thickness > THICK_SECTION ? filament.properties.thickSectionStrainFactor : undefined;
  // A swing to both sides may strain the skin more on its way back than where the brief asks for.
  const isOther = own.peakStrain !== strain.peak;
  const peak = isOther ? 'ε_m' : 'ε_p';
  const inputs: readonly Given[] = [
    ...(isOther ? [given('ε_m', own.peakStrain, '', 'solver')] : []),
    given('R', own.ratio, '', own.ratio === 0 || own.ratio === -1 ? 'brief' : 'solver'),
    given('γ', gamma, '', 'filament', soundness(filament.life.provenance)),
    ...(layers ? [given('f_l', layers.typical, '', 'filament', soundness(layers.provenance))] : []),
    ...(thick ? [given('f_c', thick.typical, '', 'filament', soundness(thick.provenance))] : []),
  ];
  const weakened = [...(layers ? ['f_l'] : []), ...(thick ? ['f_c'] : [])].join(' * ');
  const flexed = `${peak} * (1 - R)^γ`;
  const expression = weakened === '' ? flexed : `${flexed} / (${weakened})`;
  const harm = formula({
    ...CURVE,
    id: 'harm',
    symbol: 'ε_eq',
    expression,
    given: inputs,
    figure: own.equivalentStrain,
  });
  return [harm];
}

function medianSteps({ assessment }: WorkingAsked, own: Wear): readonly Step[] {
  const { life: curve } = assessment.filament;
  const provenance = soundness(curve.provenance);
  if (own.equivalentStrain > curve.firstFlexBreakStrain) {
    const limit = given('ε_1', curve.firstFlexBreakStrain, '', 'filament', provenance);
    return [formula({ ...CURVE, id: 'first-flex', symbol: 'N', expression: '0', given: [limit], figure: own.median })];
  }
  const inputs = [
    given('A', curve.A, '', 'filament', provenance),
    given('b_f', curve.b, '', 'filament', provenance),
    given('B', curve.B, '', 'filament', provenance),
    given('c_f', curve.c, '', 'filament', provenance),
  ];
  if (own.equivalentStrain <= strainAtLife(LONGEST_LIFE, curve)) {
    const most = given('N_m', LONGEST_LIFE, '', 'constant');
    return [
      formula({ ...CURVE, id: 'life-longest', symbol: 'N', expression: 'N_m', given: [most], figure: own.median }),
    ];
  }
  const left = 'A * (2 * N)^b_f + B * (2 * N)^c_f';
  return [balance({ ...CURVE, id: 'curve', symbol: 'N', left, right: 'ε_eq', given: inputs, figure: own.median })];
}

/** Other flexes wear it out as well, each by its share of the life that it alone would leave. */
function sharedSteps({ assessment: { life } }: WorkingAsked): readonly Step[] {
  const common = { ...CURVE, symbol: 'N_50', figure: life.median };
  const [own, ...rest] = life.wear;
  if (life.breaksOnFirstFlex) return [formula({ ...common, id: 'median-none', expression: '0' })];
  if (rest.length === 0) return [formula({ ...common, id: 'median-alone', expression: 'N' })];
  const inputs = [
    given('n_1', own.cycles, '', 'brief'),
    ...rest.flatMap(({ cycles, median }, i) => [
      given(`n_${i + 2}`, cycles, '', 'brief'),
      given(`N_${i + 2}`, median, '', 'summed'),
    ]),
  ];
  const shares = ['n_1 / N', ...rest.map((_, i) => `n_${i + 2} / N_${i + 2}`)].join(' + ');
  const expression = `n_1 / (${shares})`;
  return [formula({ ...common, id: 'median-shared', expression, given: inputs, source: 'palmgren-miner' })];
}
