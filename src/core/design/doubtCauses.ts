/** Everything about a joint that may turn out otherwise, each as what it comes to at a share from 0 to 1. */
import { curveSigma } from '../life/scatter.ts';
import { soundness, strainFactorAcrossLayers } from '../material/choose.ts';
import type { ProvenanceKind, Quantity } from '../material/types.ts';
import { splitLogNormal, triangular } from '../numeric/distributions.ts';
import { normalQuantile } from '../numeric/normal.ts';
import { CALIPER_SIGMA, type PrinterSpread } from '../print/spread.ts';
import { NOTCH_SENSITIVITY, rootFactor } from '../strength/rootFactor.ts';
import { THICK_SECTION } from '../life/assessLife.ts';
import type { Assessment } from './assessment.ts';
import type { CauseName } from './doubtAnswer.ts';
import type { Response } from './response.ts';
import type { Understood } from './understand.ts';

export interface Cause {
  readonly name: CauseName;
  readonly provenance: ProvenanceKind;
  /** What it comes to below a share of all prints: see `Draft` for its meaning. */
  readonly at: (share: number) => number;
}

/**
 * One print: what each cause came to in it. Thickness, length, modulus and yield stress as a factor on what is set; root,
 * ratio, across layers and thick section as the value itself; specimens and curve in decades of life.
 */
export type Draft = Partial<Readonly<Record<CauseName, number>>>;

/** Standard deviations that hold nine in ten. */
const NINE_IN_TEN = normalQuantile(0.95);

/** As a factor, so that no length comes out below nought; for small spreads it is the same. */
function logNormal(name: CauseName, sigma: number, provenance: ProvenanceKind): readonly Cause[] {
  return sigma > 0 ? [{ name, provenance, at: (share) => Math.exp(sigma * normalQuantile(share)) }] : [];
}

/** Decades of life, evenly to both sides. */
function decades(name: CauseName, sigma: number, provenance: ProvenanceKind): readonly Cause[] {
  return sigma > 0 ? [{ name, provenance, at: (share) => sigma * normalQuantile(share) }] : [];
}

/** A value of the filament row; its low and high are taken as what one in ten lies below and above (our judgement). */
function fromRow(name: CauseName, quantity: Quantity, per = 1): readonly Cause[] {
  const { typical, low = typical, high = typical, provenance } = quantity;
  if (!(low < typical || high > typical)) return [];
  const range = { typical: typical / per, low: low / per, high: high / per };
  return [{ name, provenance: soundness(provenance), at: (share) => splitLogNormal(range, share) }];
}

/** Thickness as a factor: by the width of the lines, the height of the layers, or the calipers. */
function thicknessCause(understood: Understood, spread: PrinterSpread): readonly Cause[] {
  const { joint, family, section, filament } = understood;
  const { thickness } = section;
  if (joint.measuredThickness !== undefined) return logNormal('thickness', CALIPER_SIGMA / thickness, 'memory');
  const byLadder = filament.laid?.[section.countOf];
  if (byLadder) return logNormal('thickness', byLadder.sigma / thickness, 'measured');
  if (section.countOf === 'layers') return logNormal('thickness', spread.layers / NINE_IN_TEN / thickness, 'memory');
  const [width] = logNormal('thickness', spread.lineWidth / NINE_IN_TEN, 'memory');
  if (!width) return [];
  const { profile } = joint;
  const laid = (factor: number) =>
    family.section(joint.sizes, { ...profile, lineWidth: factor * profile.lineWidth }).thickness;
  return [{ ...width, at: (share) => laid(width.at(share)) / thickness }];
}

/** The root is felt somewhere between not at all and in full, and nobody knows where (our judgement: evenly likely). */
function rootCause({ strain }: Assessment, { strainWithin, strainAtRoots }: Response): readonly Cause[] {
  const inFull = rootFactor(strain.concentration, 1) * strainAtRoots;
  if (!(strain.concentration > 1 && inFull > strainWithin)) return [];
  return [{ name: 'root', provenance: NOTCH_SENSITIVITY.provenance.kind, at: (share) => share }];
}

/** The exponent is likeliest what the row says, and for some loads nought or one (fatigue.md: sensitivity 0 to 1). */
function ratioCause({ life, filament }: Assessment): readonly Cause[] {
  if (life.wear.every(({ ratio }) => ratio === 0)) return [];
  return [{ name: 'ratio', provenance: 'memory', at: (share) => triangular(filament.life.gamma, share) }];
}

/** A print may come out thick enough though it is set just thinner; three standard deviations are more than enough. */
const NEARLY = 0.9;

/**
 * The causes of doubt that act on a joint: what nothing depends on is left out.
 *
 * @param understood - a checked joint [-]
 * @param nominal - its assessment [-]
 * @param response - the mechanics that it rests on [-]
 * @param spread - how closely the printer keeps its sizes [-] and [mm]
 * @returns causes, those that usually matter most first
 *
 * Source: common-practice.
 */
export function causesOf(
  understood: Understood,
  nominal: Assessment,
  response: Response,
  spread: PrinterSpread,
): readonly Cause[] {
  const { filament, section, sizes, family, acrossLayers } = understood;
  const { life, properties } = filament;
  const { effort } = nominal;
  const length = sizes[family.roles.length] ?? understood.length;
  const thick = properties.thickSectionStrainFactor;
  const modulus: Quantity = {
    ...properties.youngsModulus,
    typical: effort.modulus,
    low: effort.modulusLow,
    high: effort.modulusHigh,
    provenance: effort.provenance,
  };
  return [
    ...decades('curve', curveSigma(life, nominal.life.median), soundness(life.provenance)),
    ...decades('specimens', life.sigmaLog10N, soundness(life.provenance)),
    ...thicknessCause(understood, spread),
    ...rootCause(nominal, response),
    ...ratioCause(nominal),
    ...(acrossLayers ? fromRow('acrossLayers', strainFactorAcrossLayers(filament)) : []),
    ...(thick && section.thickness > NEARLY * THICK_SECTION ? fromRow('thickSection', thick) : []),
    ...fromRow('modulus', modulus, effort.modulus),
    ...logNormal('length', spread.lengths / NINE_IN_TEN / length, 'memory'),
    ...fromRow('yieldStress', properties.yieldStress, properties.yieldStress.typical),
  ];
}

/**
 * A joint as one print of it comes out.
 *
 * @param understood - a checked joint [-]
 * @param draft - what each cause came to [-]
 * @returns the joint with its sizes, its filament and the feel of its root as in this print
 */
export function printedAs(understood: Understood, draft: Draft): Understood {
  const { family, section, sizes, length } = understood;
  const { thickness: thicker = 1, length: longer = 1, root } = draft;
  const name = family.roles.length;
  return {
    ...understood,
    section: { ...section, thickness: thicker * section.thickness },
    sizes: longer === 1 ? sizes : { ...sizes, [name]: longer * (sizes[name] ?? Number.NaN) },
    length: longer * length,
    filament: filamentAs(understood.filament, draft),
    ...(root === undefined ? {} : { notchSensitivity: root }),
  };
}

/** Every modulus of a row grows alike: which one is bent with, the assessment chooses. */
const MODULI = [
  'youngsModulus',
  'flexuralModulus',
  'designModulus',
  'youngsModulusAcrossLayers',
  'youngsModulusDry',
] as const;

function valued(quantity: Quantity | undefined, value: number | undefined): Quantity | undefined {
  return quantity && value !== undefined ? { ...quantity, typical: value } : quantity;
}

function filamentAs(filament: Understood['filament'], draft: Draft): Understood['filament'] {
  const { modulus = 1, yieldStress = 1, acrossLayers, thickSection, ratio } = draft;
  const { properties, life } = filament;
  const changed = {
    yieldStress: valued(properties.yieldStress, yieldStress * properties.yieldStress.typical),
    acrossLayersStrainFactor: valued(properties.acrossLayersStrainFactor, acrossLayers),
    thickSectionStrainFactor: valued(properties.thickSectionStrainFactor, thickSection),
    ...Object.fromEntries(
      MODULI.map((name) => [name, valued(properties[name], modulus * (properties[name]?.typical ?? Number.NaN))]),
    ),
  };
  return {
    ...filament,
    properties: { ...properties, ...present(changed) },
    life: ratio === undefined ? life : { ...life, gamma: ratio },
  };
}

/** Without what is not there. */
function present<T extends object>(record: T): { readonly [K in keyof T]: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as {
    readonly [K in keyof T]: NonNullable<T[K]>;
  };
}
