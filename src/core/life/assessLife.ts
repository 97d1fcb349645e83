import { strainFactorAcrossLayers } from '../material/choose.ts';
import type { Filament } from '../material/types.ts';
import type { Mm } from '../units.ts';
import type { LifeAnswer, Wear } from './lifeAnswer.ts';
import { chanceOfReaching, spreadAround, totalSigma } from './scatter.ts';
import { equivalentStrain, lifeAtStrain } from './strainLife.ts';

/** What every life answer takes for granted; anything else shortens it. */
export const LIFE_HOLDS_FOR = {
  roomTemperatureC: 23,
  /** Self-heating shortens life above about this rate. */
  flexesPerSecond: 2,
  surface: 'smooth ends, no notch',
} as const;

/** A section thicker than this is not drawn out and oriented as a thin hinge is (PP). */
export const THICK_SECTION: Mm = 0.5;

/** What decides how hard a peak strain is on the filament. */
export interface Flexing {
  /** R, least over largest strain, −1 to less than 1. */
  readonly ratio: number;
  /** Whether bending pulls layers apart. */
  readonly acrossLayers: boolean;
  readonly thickness: Mm;
  readonly filament: Filament;
}

/** One kind of flex as the skin sees it: how far [rad] or [mm], peak strain, its ratio R, and the wanted cycles. */
export type Flex = Pick<Wear, 'amount' | 'peakStrain' | 'ratio' | 'cycles'>;

export interface LifeInput extends Omit<Flexing, 'ratio'> {
  /** The joint's own first; none strains more than it does. */
  readonly flexes: readonly [Flex, ...Flex[]];
}

/**
 * Equivalent strain over peak strain: what a curve in equivalent strain is divided by to be drawn in peak strain.
 *
 *     s = (1 − R)^γ/(f_layers·f_thick)
 *
 * f_layers is the strain factor across layers (1 along lines), f_thick the factor of a section thicker than 0.5 mm
 * where the row has one (1 otherwise).
 *
 * @param flexing - strain ratio R, lie in the print, thickness [mm] and filament
 * @returns factor [-], ≥ 1
 *
 * Source: strain-life.
 */
export function severity({ ratio, acrossLayers, thickness, filament }: Flexing): number {
  const layers = acrossLayers ? strainFactorAcrossLayers(filament).typical : 1;
  const thick = thickness > THICK_SECTION ? (filament.properties.thickSectionStrainFactor?.typical ?? 1) : 1;
  return equivalentStrain(1, ratio, filament.life.gamma) / (layers * thick);
}

/** A life of nothing would make wear without end, of which no share can be told. */
const HARDLY_ANY = 1e-200;

/**
 * What is known of the life of a flexure by the peak strains of its flexes: median, spread, and the share that reaches
 * what is wanted.
 *
 * Several kinds of flex wear it out together (Palmgren, Miner), each by its share of the life that it alone would leave:
 *
 *     D = Σ n_i/N_i,   N50 = n_1/D
 *
 * A print that is better or worse by a factor of life is so for each of them, so that the spread of D is that of one life.
 * A curve says nothing beyond its data: `beyond` tells when not to print a number. It holds for `LIFE_HOLDS_FOR`.
 *
 * @param input - for each kind of flex peak strain as a fraction [-], ratio R [-] and wanted cycles [-]; and how it lies
 * @returns the life answer, cycles neither rounded nor capped
 *
 * Source: strain-life, palmgren-miner.
 */
export function assessLife(input: LifeInput): LifeAnswer {
  const { life } = input.filament;
  const worn = wearOf(input);
  const [own] = worn;
  const breaksOnFirstFlex = worn.some(({ equivalentStrain: strain }) => strain > life.firstFlexBreakStrain);
  // The share of its own swing tells the rest; one swing alone keeps the life of the curve to the last digit.
  const median = breaksOnFirstFlex ? 0 : own.median * own.share;
  const sigma = totalSigma(life, median);
  return {
    equivalentStrain: own.equivalentStrain,
    breaksOnFirstFlex,
    wear: worn,
    median,
    scatter: spreadAround(median, life.sigmaLog10N),
    total: spreadAround(median, sigma),
    chance: chanceOfReaching(median, own.cycles, sigma),
    chanceScatterOnly: chanceOfReaching(median, own.cycles, life.sigmaLog10N),
    beyond: beyondData(median, Math.max(...worn.map(({ cycles }) => cycles)), life.maxReportableCycles),
    maxReportableCycles: life.maxReportableCycles,
  };
}

function wearOf({ flexes, acrossLayers, thickness, filament }: LifeInput): LifeAnswer['wear'] {
  const hardness = severity({ ratio: 0, acrossLayers, thickness, filament });
  const alone = ({ amount, peakStrain, ratio, cycles }: Flex) => {
    const strain = equivalentStrain(peakStrain * hardness, ratio, filament.life.gamma);
    const median = lifeAtStrain(strain, filament.life);
    const damage = cycles / Math.max(median, HARDLY_ANY);
    return { amount, peakStrain, ratio, equivalentStrain: strain, cycles, median, share: damage };
  };
  const [first, ...rest] = flexes;
  const own = alone(first);
  if (rest.length === 0) return [{ ...own, share: 1 }];
  const worn = [own, ...rest.map(alone)] as const;
  const damage = worn.reduce((sum, { share }) => sum + share, 0);
  const shared = (wear: Wear): Wear => ({ ...wear, share: wear.share / damage });
  return [shared(own), ...worn.slice(1).map(shared)];
}

function beyondData(median: number, cycles: number, counted: number): LifeAnswer['beyond'] {
  if (cycles > counted) return 'wanted';
  return median > counted ? 'median' : 'no';
}
