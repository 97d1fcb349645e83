import type { SourceKey } from '../sources.ts';
import type { Mm } from '../units.ts';
import type { Tests } from './tally.ts';

/**
 * Where a number comes from. `memory` is a recalled value that nobody has looked up and is marked so on screen;
 * `computed` carries what it was computed from, so that a result built on memory is not mistaken for a published one.
 */
export type Provenance =
  | { readonly kind: 'published'; readonly source: SourceKey; readonly place: string }
  | {
      readonly kind: 'computed';
      readonly from: string;
      readonly inputs: 'published' | 'memory' | 'published and memory';
    }
  | { readonly kind: 'memory'; readonly because?: string }
  | { readonly kind: 'measured'; readonly what: string };

export type ProvenanceKind = Provenance['kind'];

export type Direction = 'along lines' | 'across lines' | 'across layers' | 'flow' | 'any';

/** One property of a filament: typical with its low and high, and where each comes from. */
export interface Quantity {
  readonly typical: number;
  readonly low?: number;
  readonly high?: number;
  /** Unit as printed on screen: MPa, °C, kg/m³, %, mm, or '' for a fraction. */
  readonly unit: string;
  readonly direction: Direction;
  /** Of the typical value. */
  readonly provenance: Provenance;
  /** Of low and high, where it differs from the typical value's. */
  readonly range?: ProvenanceKind;
  readonly note?: string;
}

/** What answers rest on. Strains and ratios are fractions. */
export interface FilamentProperties {
  readonly youngsModulus: Quantity;
  readonly flexuralModulus?: Quantity;
  readonly designModulus?: Quantity;
  readonly youngsModulusAcrossLayers?: Quantity;
  readonly yieldStress: Quantity;
  readonly yieldStrain: Quantity;
  readonly strainAtBreak: Quantity;
  readonly strainAtBreakAcrossLayers?: Quantity;
  readonly acrossLayersStrainFactor?: Quantity;
  readonly poissonsRatio: Quantity;
  readonly sustainedStrainLimit: Quantity;
  readonly permissibleStrainSingle: Quantity;
  readonly permissibleStrainRepeated: Quantity;
  readonly thickSectionStrainFactor?: Quantity;
  /** [°C], of the dry plastic. */
  readonly glassTransition: Quantity;
  /** Where a loaded bar sags under 0.45 MPa [°C]. */
  readonly heatDeflection: Quantity;
  /** Of nylons, which a room keeps damp. */
  readonly youngsModulusDry?: Quantity;
  readonly yieldStrainDry?: Quantity;
  readonly conditionedOverDryModulus?: Quantity;
}

/** What else is known of a filament and no answer rests on yet. */
interface FurtherProperties {
  readonly youngsModulusAcrossLines?: Quantity;
  readonly conditionedOverDryModulus?: Quantity;
  readonly tensileStrength: Quantity;
  readonly tensileStrengthAcrossLines?: Quantity;
  readonly tensileStrengthAcrossLayers?: Quantity;
  readonly stressAtBreak: Quantity;
  readonly acrossLayersStrengthRatio?: Quantity;
  readonly acrossLayersFatigueRatio?: Quantity;
  readonly density: Quantity;
  readonly setAfterDayHeld: Quantity;
  readonly waterUptake: Quantity;
  readonly permissibleStrainSingleHandbook?: Quantity;
  readonly relaxationExponent: Quantity;
  readonly stressLossHour: Quantity;
  readonly stressLossDay: Quantity;
  readonly fatigueFraction: Quantity;
  readonly wetFilamentStrengthLoss?: Quantity;
  readonly compressionSetRoom?: Quantity;
  readonly compressionSetWarm?: Quantity;
  readonly cyclicStiffnessLoss?: Quantity;
  readonly hingeThickness?: Quantity;
  readonly hingeLandLength?: Quantity;
  readonly hingeNominalStrain?: Quantity;
}

/**
 * Strain–life curve of one filament, in equivalent strain (peak outer-fibre strain of a 0 → θ → 0 cycle):
 *
 *     ε_eq = A·(2N)^b + B·(2N)^c,   ε_eq = ε_peak·(1 − R)^γ
 *
 * B is a fit coefficient and may exceed 1; it is never a ductility.
 */
export interface StrainLifeCurve {
  readonly A: number;
  readonly b: number;
  readonly B: number;
  readonly c: number;
  /** Walker exponent γ. */
  readonly gamma: number;
  /** Equivalent strain above which the first flex breaks it, as a fraction. */
  readonly firstFlexBreakStrain: number;
  /** Standard deviation of log10 N between specimens of one print run. */
  readonly sigmaLog10N: number;
  /** No life is reported beyond this many cycles. */
  readonly maxReportableCycles: number;
  /** The true curve lies within this factor of N nine times in ten; where tests have moved it, at `surestLife`. */
  readonly doubtFactor: number;
  /** Life about which tests have told most; absent where the doubt is the same everywhere. */
  readonly surestLife?: number;
  /** Standard deviation of log10 N that a decade of life away from there adds, as independent. */
  readonly doubtPerDecade?: number;
  readonly certainty: string;
  readonly provenance: Provenance;
  readonly note?: string;
}

/** How thick lines or layers come out, by a ladder that was measured: t = offset + factor·t_set. */
export interface LaidThickness {
  readonly factor: number;
  readonly offset: Mm;
  /** Standard deviation of a thickness foretold in this way. */
  readonly sigma: Mm;
}

/** Keys of the rows that come with the program. */
export type RowId = 'pla' | 'petg' | 'abs' | 'asa' | 'pa6' | 'pa12' | 'pp' | 'tpu95a' | 'pc' | 'pp-moulded';

/** One row of the filament table, as far as answers rest on it. */
export interface Filament {
  /** A `RowId`, or `own-…` for a row that the user has made. */
  readonly id: string;
  /** As said in a sentence: “PETG”. */
  readonly name: string;
  /** With what matters about the grade: “PA6 (nylon 6, conditioned)”. */
  readonly fullName: string;
  /** False for the moulded row, which is there to compare with and cannot be printed. */
  readonly printable: boolean;
  /** Whether crystals carry it past its glass transition, so that it softens where it sags and not there. */
  readonly crystalline: boolean;
  readonly properties: FilamentProperties;
  readonly life: StrainLifeCurve;
  /** Of a printer whose ladder was measured. */
  readonly laid?: Readonly<Partial<Record<'lines' | 'layers', LaidThickness>>>;
}

/** The rest of a row: it is to be read, and comes when somebody does. */
export interface FurtherRow {
  /** Notes on what answers rest on, by property. */
  readonly notes: Partial<Readonly<Record<keyof FilamentProperties, string>>>;
  /** Note on the strain–life curve. */
  readonly life: string;
  readonly properties: FurtherProperties;
}

/** A row with its notes and all that is known. */
export interface WholeFilament extends Filament {
  readonly properties: FilamentProperties & FurtherProperties;
}

export type PropertyName = keyof WholeFilament['properties'];

/** A row that the user has made: always whole, and never changed in place. */
export interface OwnFilament extends WholeFilament {
  /** Begins with `own-`. */
  readonly id: string;
  readonly own: {
    /** Id of the row of the table that it goes back to, through however many copies. */
    readonly from: string;
    /** What the user says of it: maker, spool, colour, how it was dried. */
    readonly remark: string;
    /** Of a row that tests correct. */
    readonly tests?: Tests;
  };
}
