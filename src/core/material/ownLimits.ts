/** What the values of a row are called everywhere, what they are measured in, and how far each of a user's own may go. */
import type { Range } from '../problems.ts';
import type { LaidThickness, PropertyName, StrainLifeCurve } from './types.ts';

export interface Limits extends Range {
  /** As every screen and message calls it, within a sentence: “strain stood again and again”. */
  readonly what: string;
  /** Units in which rows give it; '' for a fraction. */
  readonly units: readonly [string, ...string[]];
  /** Strains and shares, which a screen says in per cent. */
  readonly isShare?: true;
}

const STIFF = { min: 1, max: 20_000, because: 'softer is foam, and stiffer no plastic without fibres' };
const STRONG = { min: 0.1, max: 500, because: 'weaker tears by itself, and stronger is a metal' };
const STRAIN = { min: 0.0001, max: 20, because: 'nothing breaks at less, and no rubber stretches to more' };
const SHARE = { min: 0, max: 1, because: 'it is a share of something' };
// Strains and moduli are divided by it.
const SOME_LEFT = { min: 0.01, max: 1, because: 'with less hardly anything is left, and it is a share of something' };
const WARM = { min: -150, max: 400, because: 'no filament softens outside this' };
const HUNDREDTHS = { min: 0, max: 100, because: 'it is a share of something' };

const stiff = (what: string): Limits => ({ what, units: ['MPa'], ...STIFF });
const strong = (what: string): Limits => ({ what, units: ['MPa'], ...STRONG });
const strain = (what: string): Limits => ({ what, units: [''], isShare: true, ...STRAIN });
const factor = (what: string): Limits => ({ what, units: [''], ...SHARE });
const left = (what: string): Limits => ({ what, units: [''], ...SOME_LEFT });
const warm = (what: string): Limits => ({ what, units: ['°C'], ...WARM });
const hundredths = (what: string, first: string, ...units: string[]): Limits => ({
  what,
  units: [first, ...units],
  ...HUNDREDTHS,
});

/** Every property that a row may hold, in the order in which files and screens have them. */
export const PROPERTY_LIMITS: Readonly<Record<PropertyName, Limits>> = {
  youngsModulus: stiff('stiffness when pulled'),
  flexuralModulus: stiff('stiffness when bent'),
  designModulus: stiff('stiffness to design with'),
  youngsModulusDry: stiff('stiffness when dry'),
  youngsModulusAcrossLines: stiff('stiffness across lines'),
  youngsModulusAcrossLayers: stiff('stiffness across layers'),
  conditionedOverDryModulus: left('share of the dry stiffness left in a room'),
  yieldStress: strong('stress at which it stays bent'),
  yieldStrain: strain('strain at which it stays bent'),
  yieldStrainDry: strain('strain at which it stays bent when dry'),
  tensileStrength: strong('strength when pulled'),
  tensileStrengthAcrossLines: strong('strength across lines'),
  tensileStrengthAcrossLayers: strong('strength across layers'),
  stressAtBreak: strong('stress at which it breaks'),
  strainAtBreak: strain('strain at which it breaks'),
  strainAtBreakAcrossLayers: strain('strain at which it breaks across layers'),
  acrossLayersStrainFactor: left('share of strain left across layers'),
  acrossLayersStrengthRatio: factor('share of strength left across layers'),
  acrossLayersFatigueRatio: factor('share of strength left across layers after many flexes'),
  poissonsRatio: {
    what: 'Poisson’s ratio',
    units: [''],
    min: 0,
    max: 0.5,
    because: 'nothing solid that is not foam lies outside this',
  },
  density: { what: 'density', units: ['kg/m³'], min: 100, max: 5000, because: 'no filament is lighter or heavier' },
  sustainedStrainLimit: strain('strain held for long'),
  // Shares of the yield strain, whose least they must not forbid.
  permissibleStrainSingle: { ...strain('strain stood once in a while'), min: 1e-5 },
  permissibleStrainRepeated: { ...strain('strain stood again and again'), min: 1e-6 },
  permissibleStrainSingleHandbook: strain('strain stood once in a while, by handbooks'),
  thickSectionStrainFactor: left('share of strain left in thick sections'),
  glassTransition: warm('glass transition'),
  heatDeflection: warm('where it sags under load'),
  setAfterDayHeld: hundredths('what stays after a day held bent', '% of held strain'),
  relaxationExponent: {
    what: 'exponent of relaxation',
    units: [''],
    min: 0,
    max: 0.5,
    because: 'a plastic that relaxes faster flows like a liquid',
  },
  stressLossHour: hundredths('push lost after an hour held', '%'),
  stressLossDay: hundredths('push lost after a day held', '%'),
  fatigueFraction: factor('share of strength left after a million flexes'),
  waterUptake: hundredths('water taken up', '% mass', '% mass at 50 % RH'),
  wetFilamentStrengthLoss: hundredths('strength lost when printed damp', '%'),
  compressionSetRoom: hundredths('what stays after squeezing in a room', '%'),
  compressionSetWarm: hundredths('what stays after squeezing when warm', '%'),
  cyclicStiffnessLoss: hundredths('stiffness lost by flexing', '% per 100 000 cycles'),
  hingeThickness: {
    what: 'thickness of moulded hinges',
    units: ['mm'],
    min: 0.01,
    max: 20,
    because: 'thinner tears and thicker does not fold',
  },
  hingeLandLength: {
    what: 'length of moulded hinges',
    units: ['mm'],
    min: 0.01,
    max: 50,
    because: 'shorter is a crack and longer a strap',
  },
  hingeNominalStrain: strain('strain of moulded hinges'),
};

export const PROPERTY_NAMES = Object.keys(PROPERTY_LIMITS) as PropertyName[];

/** What every row must have; the rest may be absent. */
export const NEEDED: readonly PropertyName[] = [
  'youngsModulus',
  'yieldStress',
  'yieldStrain',
  'tensileStrength',
  'stressAtBreak',
  'strainAtBreak',
  'poissonsRatio',
  'density',
  'sustainedStrainLimit',
  'permissibleStrainSingle',
  'permissibleStrainRepeated',
  'glassTransition',
  'heatDeflection',
  'setAfterDayHeld',
  'relaxationExponent',
  'stressLossHour',
  'stressLossDay',
  'fatigueFraction',
  'waterUptake',
];

/** The figures of a strain–life curve. */
export type CurveFigure = {
  [K in keyof StrainLifeCurve]-?: StrainLifeCurve[K] extends number ? K : never;
}[keyof StrainLifeCurve];

const COEFFICIENT = { min: 1e-6, max: 1000, because: 'no curve of a plastic needs less or more' };
const EXPONENT = { min: -2, max: -0.01, because: 'a curve must fall with the number of flexes, and none falls faster' };

export const CURVE_LIMITS: Readonly<Record<CurveFigure, Limits>> = {
  A: { what: 'coefficient of the flat part', units: [''], ...COEFFICIENT },
  b: { what: 'exponent of the flat part', units: [''], ...EXPONENT },
  B: { what: 'coefficient of the steep part', units: [''], ...COEFFICIENT },
  c: { what: 'exponent of the steep part', units: [''], ...EXPONENT },
  gamma: { what: 'weight of bending back', units: [''], ...SHARE },
  firstFlexBreakStrain: { ...strain('strain that breaks it on the first flex'), min: 0.001 },
  sigmaLog10N: {
    what: 'scatter between prints',
    units: [''],
    min: 0.05,
    max: 2,
    because: 'no two prints are so alike, and past 2 a life says nothing',
  },
  maxReportableCycles: {
    what: 'flexes counted at most',
    units: [''],
    min: 10,
    max: 1e9,
    because: 'a test counts some flexes, and nobody counts for longer than thirty years',
  },
  doubtFactor: {
    what: 'doubt about the curve',
    units: [''],
    min: 1,
    max: 100,
    because: '1 is no doubt at all, and past a hundred there is no curve',
  },
};

/** Figures that only a curve has that tests have moved. */
export type SurestFigure = 'surestLife' | 'doubtPerDecade';

export const SUREST_LIMITS: Readonly<Record<SurestFigure, Limits>> = {
  surestLife: {
    what: 'life at which the curve is surest',
    units: [''],
    min: 1,
    max: 1e9,
    because: 'a test counts some flexes, and nobody counts for longer than thirty years',
  },
  doubtPerDecade: {
    what: 'doubt that a decade of life adds',
    units: [''],
    min: 0,
    // The life wanted for a chance of 999 in 1000 has no answer from 0.32 on.
    max: 0.3,
    because: 'with more no life would be long enough to be sure of',
  },
};

/** How thick lines or layers come out beside what they are set to. */
export const LAID_LIMITS: Readonly<Record<keyof LaidThickness, Limits>> = {
  factor: {
    what: 'share of the set thickness that is laid',
    units: [''],
    min: 0.3,
    max: 3,
    because: 'no printer that lays less or more prints anything',
  },
  offset: {
    what: 'thickness laid beyond that share',
    units: ['mm'],
    min: -2,
    max: 2,
    because: 'further out is a mistake of measuring',
  },
  sigma: {
    what: 'doubt about a thickness laid',
    units: ['mm'],
    min: 0,
    max: 2,
    because: 'less than none is none, and past it nothing is known',
  },
};

export const CURVE_FIGURES = Object.keys(CURVE_LIMITS) as CurveFigure[];

/** As many rows as a user may have of their own. */
export const MOST_OWN = 200;
/** Keys of own rows, as they stand in an address. */
export const OWN_ID = /^own-[a-z0-9-]{1,40}$/;
export const LONGEST_OWN_ID = 'own-'.length + 40;
