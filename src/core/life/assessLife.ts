import { strainFactorAcrossLayers } from '../material/choose.ts';
import type { Filament } from '../material/types.ts';
import type { Mm } from '../units.ts';
import type { LifeAnswer } from './lifeAnswer.ts';
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

const STRAIN_RATIO = { 'one way': 0, 'both ways': -1 } as const;

/** What decides how hard a peak strain is on the filament. */
export interface Flexing {
  readonly ways: keyof typeof STRAIN_RATIO;
  /** Whether bending pulls layers apart. */
  readonly acrossLayers: boolean;
  readonly thickness: Mm;
  readonly filament: Filament;
}

export interface LifeInput extends Flexing {
  /** Peak outer-fibre strain as a fraction. */
  readonly peakStrain: number;
  /** Wanted cycles. */
  readonly cycles: number;
}

/**
 * Equivalent strain over peak strain: what a curve in equivalent strain is divided by to be drawn in peak strain.
 *
 *     s = (1 − R)^γ/(f_layers·f_thick)
 *
 * f_layers is the strain factor across layers (1 along lines), f_thick the factor of a section thicker than 0.5 mm
 * where the row has one (1 otherwise).
 *
 * @param flexing - ways, lie in the print, thickness [mm] and filament
 * @returns factor [-], ≥ 1
 *
 * Source: strain-life.
 */
export function severity({ ways, acrossLayers, thickness, filament }: Flexing): number {
  const layers = acrossLayers ? strainFactorAcrossLayers(filament).typical : 1;
  const thick = thickness > THICK_SECTION ? (filament.properties.thickSectionStrainFactor?.typical ?? 1) : 1;
  return equivalentStrain(1, STRAIN_RATIO[ways], filament.life.gamma) / (layers * thick);
}

/**
 * What is known of the life of a flexure at a peak strain: median, spread, and the share that reaches what is wanted.
 *
 * A curve says nothing beyond its data: `beyond` tells when not to print a number. It holds for `LIFE_HOLDS_FOR`.
 *
 * @param input - peak strain as a fraction [-], wanted cycles [-], and how it flexes
 * @returns the life answer, cycles neither rounded nor capped
 *
 * Source: strain-life.
 */
export function assessLife(input: LifeInput): LifeAnswer {
  const { peakStrain, cycles, filament } = input;
  const { life } = filament;
  const equivalent = peakStrain * severity(input);
  const median = lifeAtStrain(equivalent, life);
  const sigma = totalSigma(life);
  return {
    equivalentStrain: equivalent,
    breaksOnFirstFlex: equivalent > life.firstFlexBreakStrain,
    median,
    scatter: spreadAround(median, life.sigmaLog10N),
    total: spreadAround(median, sigma),
    chance: chanceOfReaching(median, cycles, sigma),
    chanceScatterOnly: chanceOfReaching(median, cycles, life.sigmaLog10N),
    beyond: beyondData(median, cycles, life.maxReportableCycles),
    maxReportableCycles: life.maxReportableCycles,
  };
}

function beyondData(median: number, cycles: number, counted: number): LifeAnswer['beyond'] {
  if (cycles > counted) return 'wanted';
  return median > counted ? 'median' : 'no';
}
