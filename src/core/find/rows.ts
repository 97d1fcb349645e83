import { limitsOf } from '../design/allowables.ts';
import { asSurrounded } from '../design/asSurrounded.ts';
import { sagsOut } from '../design/feel.ts';
import { warmthOf } from '../design/warmth.ts';
import { severity, THICK_SECTION } from '../life/assessLife.ts';
import { medianWanted } from '../life/scatter.ts';
import { strainAtLife } from '../life/strainLife.ts';
import { bendingModulus } from '../material/choose.ts';
import { findFilament } from '../material/shelf.ts';
import type { Filament } from '../material/types.ts';
import type { MPa } from '../units.ts';
import { laidAlike, type Lot } from './lots.ts';
import type { Wanted } from './wanted.ts';

/** What a filament may see in a lot, looked up once. */
export interface Row {
  readonly filament: Filament;
  readonly modulus: MPa;
  /** Strain at which it begins to flow by its stress over its modulus, as a fraction. */
  readonly onset: number;
  readonly poisson: number;
  /** Limits of peak strain, as fractions. */
  readonly breaks: number;
  readonly held: number;
  readonly bends: number;
  /** Softens, or turns brittle, where it is used. */
  readonly isWarm: boolean;
  /** Would not stay in the second place that is asked for. */
  readonly sagsOut: boolean;
  /** More is wanted than anyone has counted. */
  readonly isUncounted: boolean;
  /**
   * Peak strain up to which its own swing alone lets the wanted share last, and above which the first flex breaks it: below and
   * above the thickness from which a section counts as thick. Infinity where the strain ratio depends on the shape.
   */
  readonly lasts: Split;
  readonly breaksAtOnce: Split;
}

/** A figure for thin sections and for thick ones. */
export interface Split {
  readonly thin: number;
  readonly thick: number;
}

/** Which of the two holds at a thickness [mm]. */
export function partFor(thickness: number): keyof Split {
  return thickness > THICK_SECTION ? 'thick' : 'thin';
}

/** Strain ratio of the joint's own swing; undefined where it depends on the shape. */
export function ratioOf({ movement: { ways } }: Pick<Lot, 'movement'>): number | undefined {
  if (ways === 'between') return undefined;
  return ways === 'both ways' ? -1 : 0;
}

const THIN = 0.1;
const THICK = 10;

function split(of: (thickness: number) => number): Split {
  return { thin: of(THIN), thick: of(THICK) };
}

function rowOf(filament: Filament, lot: Lot): Row {
  const { movement, lying } = lot;
  const acrossLayers = lying === 'upright';
  const { life, properties } = filament;
  const limits = limitsOf(filament, acrossLayers);
  const modulus = bendingModulus(filament, acrossLayers).typical;
  const ratio = ratioOf(lot);
  const hardness = (thickness: number) =>
    severity({ ratio: ratio ?? 0, acrossLayers, thickness, filament }) || Number.POSITIVE_INFINITY;
  const { cycles, chance, also = [] } = movement;
  const wanted = strainAtLife(medianWanted(cycles, chance, life), life);
  return {
    filament,
    modulus,
    onset: properties.yieldStress.typical / modulus,
    poisson: properties.poissonsRatio.typical,
    breaks: limits.break.value,
    held: movement.held ? limits.held.value : Number.POSITIVE_INFINITY,
    bends: Math.min(limits.single.value, limits.yield.value),
    isWarm: false,
    sagsOut: movement.stays === true && sagsOut(filament),
    isUncounted: Math.max(cycles, ...also.map((swing) => swing.cycles)) > life.maxReportableCycles,
    lasts: split((thickness) => (ratio === undefined ? Number.POSITIVE_INFINITY : wanted / hardness(thickness))),
    breaksAtOnce: split((thickness) =>
      ratio === undefined ? Number.POSITIVE_INFINITY : life.firstFlexBreakStrain / hardness(thickness),
    ),
  };
}

/**
 * The ticked filaments as a lot uses them, where it is used.
 *
 * @param wanted - what is looked for, checked [-]
 * @param lot - how it is moved, and how it lies [-]
 * @returns limits of peak strain as fractions, moduli [MPa]
 *
 * Source: strain-life.
 */
export function rowsFor(wanted: Wanted, lot: Lot): readonly Row[] {
  const { surroundings } = wanted;
  const used = surroundings === undefined ? {} : { surroundings };
  return wanted.filaments.flatMap((id) => {
    const found = findFilament(id);
    if (!found || !laidAlike(found, lot.printed)) return [];
    const filament = asSurrounded(found, used);
    const row = rowOf(filament, lot);
    return [{ ...row, isWarm: warmthOf({ joint: used, filament }).grade !== 'pass' }];
  });
}
