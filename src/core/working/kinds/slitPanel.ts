import { shearStrain, stripOf, twistsInRow, type SlitPanelSizes } from '../../flexures/slitPanel.ts';
import { torsionOfRectangle } from '../../numeric/rectangleTorsion.ts';
import { modulusGiven } from '../asked.ts';
import type { HandAsked, HandSteps, KindWorking } from '../kindWorking.ts';
import { formula, given, sum, type Step } from '../step.ts';

const TWIST = { source: 'saint-venant-torsion' } as const;

/** The sums are taken as far as the core takes them: the next term, even for a square, is under the round-off. */
const ODD = Array.from({ length: 11 }, (_, i) => 2 * i + 1);
const TERM = { symbol: 'j', values: ODD, unit: '', from: 'constant' } as const;
/** (31/32)·ζ(5), what all odd terms come to. */
const ODD_FIFTHS = (31 / 32) * 1.03692775514337;
/** Poisson's ratio of the shear modulus, for any filament. */
const SHEAR_POISSON = 0.4;

/** The strip between two rows of slits, and how far it twists. */
function stripSteps({ sizes, amount }: HandAsked<SlitPanelSizes>): readonly Step[] {
  const { width, overlap } = stripOf(sizes);
  return [
    formula({
      ...TWIST,
      id: 'twist-each',
      symbol: 'θ_1',
      expression: 'θ / (n_p - 1)',
      given: [given('n_p', sizes.rows, '', 'size')],
      unit: '',
      figure: amount / twistsInRow(sizes),
    }),
    formula({
      ...TWIST,
      id: 'strip-width',
      symbol: 'B_s',
      expression: 'p - w_g',
      given: [given('p', sizes.pitch, 'mm', 'size'), given('w_g', sizes.slitWidth, 'mm', 'size')],
      unit: 'mm',
      figure: width,
    }),
    formula({
      ...TWIST,
      id: 'strip-length',
      symbol: 'ℓ_t',
      expression: '(ℓ_s - ℓ_b) / 2',
      given: [given('ℓ_s', sizes.slit, 'mm', 'size'), given('ℓ_b', sizes.bridge, 'mm', 'size')],
      unit: 'mm',
      figure: overlap,
    }),
  ];
}

/** The section of the strip, its longer side over its shorter one, and what the series of a rectangle make of it. */
function sectionSteps(long: string, short: string, ratio: number): readonly Step[] {
  const { c1, k } = torsionOfRectangle(ratio);
  return [
    formula({ ...TWIST, id: 'strip-ratio', symbol: 'β', expression: `${long} / ${short}`, unit: '', figure: ratio }),
    sum({
      ...TWIST,
      id: 'twist-corners',
      symbol: 'Σ_k',
      expression: '1 / (j^2 * cosh(j * pi * β / 2))',
      over: TERM,
      unit: '',
    }),
    formula({
      ...TWIST,
      id: 'twist-peak',
      symbol: 'k_τ',
      expression: '1 - 8 / pi^2 * Σ_k',
      unit: '',
      figure: k,
    }),
    sum({
      ...TWIST,
      id: 'twist-lacking',
      symbol: 'Σ_c',
      expression: '(1 - tanh(j * pi * β / 2)) / j^5',
      over: TERM,
      unit: '',
    }),
    formula({
      ...TWIST,
      id: 'twist-section',
      symbol: 'c_J',
      expression: '1 / 3 * (1 - 192 / (pi^5 * β) * (Σ_5 - Σ_c))',
      given: [given('Σ_5', ODD_FIFTHS, '', 'constant')],
      unit: '',
      figure: c1,
    }),
  ];
}

/** A panel of slits: ε = γ/√3, γ = k·t·θ₁/ℓ, and M = (2·b/(s + w))·G·c·B·t³·θ₁/ℓ. */
const wrappedSteps: HandSteps<SlitPanelSizes> = (asked) => {
  const { sizes, thickness, amount, byHand, assessment } = asked;
  const { width } = stripOf(sizes);
  const isWide = width >= thickness;
  const [long, short] = isWide ? ['B_s', 't'] : ['t', 'B_s'];
  return [
    ...stripSteps(asked),
    ...sectionSteps(long, short, isWide ? width / thickness : thickness / width),
    formula({
      ...TWIST,
      id: 'twist-shear',
      symbol: 'γ_s',
      expression: `k_τ * ${short} * θ_1 / ℓ_t`,
      unit: '',
      figure: shearStrain(sizes, thickness, amount),
    }),
    formula({
      ...TWIST,
      id: 'twist-strain',
      symbol: 'ε',
      expression: 'γ_s / sqrt(3)',
      unit: '',
      figure: byHand.nominalStrain,
    }),
    formula({ ...TWIST, id: 'twist-j', symbol: 'J', expression: `c_J * ${long} * ${short}^3`, unit: 'mm^4' }),
    formula({
      ...TWIST,
      id: 'shear-modulus',
      symbol: 'G',
      expression: 'E / (2 * (1 + ν_0))',
      given: [modulusGiven(asked), given('ν_0', SHEAR_POISSON, '', 'constant')],
      unit: 'MPa',
    }),
    formula({
      ...TWIST,
      id: 'strips-beside',
      symbol: 'm_p',
      expression: '2 * b / (ℓ_s + ℓ_b)',
      given: [given('b', sizes.depth, 'mm', 'size')],
      unit: '',
    }),
    formula({
      ...TWIST,
      id: 'twist-moment',
      symbol: 'M',
      expression: 'm_p * G * J * θ_1 / ℓ_t',
      unit: 'N mm',
      figure: assessment.effort.modulus * byHand.effort,
    }),
  ];
};

/** A sheet with rows of slits, whose strips twist. */
export const SLIT_PANEL_WORKING: KindWorking<SlitPanelSizes> = {
  family: 'slitPanel',
  drives: { wrapped: wrappedSteps },
};
