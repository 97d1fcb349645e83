/** How the values of a filament are said: name, figure with its unit, range, where it comes from, and how surely. */
import { soundness } from '../../core/material/choose.ts';
import type { Trait } from '../../core/material/compare.ts';
import { PROPERTY_LIMITS } from '../../core/material/ownLimits.ts';
import type { Provenance, ProvenanceKind, Quantity, WholeFilament } from '../../core/material/types.ts';
import { SOURCES, type SourceKey } from '../../core/sources.ts';
import { rangeText, valueText } from './figureText.ts';
import { capital, sentence } from './said.ts';

export type Property = keyof WholeFilament['properties'];

/** How one property is called, and how its figure is written. */
interface Words {
  readonly name: string;
  /** Whether it is a fraction that is said as a per cent of strain. */
  readonly strain: boolean;
  /** Whether it is compared on an axis of ratios. */
  readonly log: boolean;
}

/** Every property in the order in which they are read, and how they are compared. */
const READ: Readonly<Record<Property, 'by ratio' | 'evenly'>> = {
  youngsModulus: 'by ratio',
  flexuralModulus: 'by ratio',
  designModulus: 'by ratio',
  youngsModulusDry: 'by ratio',
  conditionedOverDryModulus: 'evenly',
  youngsModulusAcrossLines: 'by ratio',
  youngsModulusAcrossLayers: 'by ratio',
  permissibleStrainRepeated: 'by ratio',
  permissibleStrainSingle: 'by ratio',
  permissibleStrainSingleHandbook: 'by ratio',
  sustainedStrainLimit: 'by ratio',
  yieldStrain: 'by ratio',
  yieldStrainDry: 'by ratio',
  yieldStress: 'by ratio',
  strainAtBreak: 'by ratio',
  strainAtBreakAcrossLayers: 'by ratio',
  acrossLayersStrainFactor: 'evenly',
  acrossLayersStrengthRatio: 'evenly',
  acrossLayersFatigueRatio: 'evenly',
  thickSectionStrainFactor: 'evenly',
  tensileStrength: 'by ratio',
  tensileStrengthAcrossLines: 'by ratio',
  tensileStrengthAcrossLayers: 'by ratio',
  stressAtBreak: 'by ratio',
  fatigueFraction: 'evenly',
  cyclicStiffnessLoss: 'evenly',
  relaxationExponent: 'evenly',
  stressLossHour: 'evenly',
  stressLossDay: 'evenly',
  setAfterDayHeld: 'evenly',
  compressionSetRoom: 'evenly',
  compressionSetWarm: 'evenly',
  glassTransition: 'evenly',
  heatDeflection: 'evenly',
  waterUptake: 'by ratio',
  wetFilamentStrengthLoss: 'evenly',
  poissonsRatio: 'evenly',
  density: 'evenly',
  hingeThickness: 'evenly',
  hingeLandLength: 'evenly',
  hingeNominalStrain: 'by ratio',
};

export const READ_PROPERTIES = Object.keys(READ) as readonly Property[];

/** “Strain stood again and again”: names are those of the core, so that a problem calls a value as its table does. */
export const PROPERTIES = Object.fromEntries(
  READ_PROPERTIES.map((property): [Property, Words] => {
    const { what, isShare = false } = PROPERTY_LIMITS[property];
    return [property, { name: capital(what), strain: isShare, log: READ[property] === 'by ratio' }];
  }),
) as Readonly<Record<Property, Words>>;

/** How a trait that is compared is called above its column. */
export const TRAIT_NAMES: Readonly<Record<Trait, string>> = {
  stiffness: 'Stiffness',
  yields: 'Stays bent at',
  repeated: 'Again and again',
  breaks: 'Breaks at',
  layers: 'Across layers',
  glass: 'Softens at',
  sags: 'Sags at',
  water: 'Takes up water',
  kept: 'Push left after a day',
};

const STRAINS: readonly Trait[] = ['yields', 'repeated', 'breaks'];

export function isStrain(trait: Trait): boolean {
  return STRAINS.includes(trait);
}

/** What kind of figure it is, beside its mark. */
const IN_WORDS: Readonly<Record<ProvenanceKind, string>> = {
  published: 'published',
  computed: 'computed here',
  memory: 'from memory',
  measured: 'your own test',
};

/** The kind that a figure deserves, in words. */
export function kindWords(kind: ProvenanceKind): string {
  return IN_WORDS[kind];
}

/** “Stiffness: 1 300 MPa, 1 000 to 1 700, from memory”. */
export function spokenTrait(name: string, quantity: Quantity, asStrain: boolean): string {
  const range = rangeText(quantity, asStrain);
  const between = range === '' ? '' : `, ${range}`;
  return `${name}: ${valueText(quantity, asStrain)}${between}, ${kindWords(soundness(quantity.provenance))}`;
}

/** Whether low and high are known no better than by memory, so that their ends are drawn dashed. */
export function isRangeRemembered({ range, provenance }: Quantity): boolean {
  return (range ?? soundness(provenance)) === 'memory';
}

/** Document, place, and how much of it was read. */
export function cited(key: SourceKey): string {
  const { cite, read } = SOURCES[key];
  return `${cite} (${read})`;
}

function sayingOf(provenance: Provenance): string {
  switch (provenance.kind) {
    case 'published':
      return `published: ${provenance.place}`;
    case 'measured':
      return `your own test: ${provenance.what}`;
    case 'memory':
      return provenance.because ?? 'from memory, not looked up';
    case 'computed':
      return provenance.inputs === 'published'
        ? `computed: ${provenance.from}`
        : `computed: ${provenance.from}; rests on what is ${provenance.inputs === 'memory' ? 'from memory' : 'in part from memory'}`;
  }
}

/** Sources that a text names as S1, S2 and so on. */
function namedSources(text: string): readonly SourceKey[] {
  const keys = Object.keys(SOURCES) as SourceKey[];
  const named = [...text.matchAll(/\bS(\d+)\b/g)].map(([, number = '']) => number);
  return [...new Set(named)].flatMap((number) => keys.find((key) => key.startsWith(`s${number}-`)) ?? []);
}

export interface Origin {
  readonly kind: ProvenanceKind;
  /** Where it comes from, in words. */
  readonly says: string;
  /** What is known besides; empty where there is nothing. */
  readonly note: string;
  /** The documents in full. */
  readonly full: readonly string[];
}

/** Where a figure comes from, in words within a line. */
export function originText(provenance: Provenance, range?: ProvenanceKind): string {
  const remembered = range === 'memory' && provenance.kind !== 'memory' ? '; low and high from memory' : '';
  return `${sayingOf(provenance)}${remembered}`;
}

/** The same with its note, and every document that either names. */
export function originOf(provenance: Provenance, note = '', range?: ProvenanceKind): Origin {
  const said = originText(provenance, range);
  const own = provenance.kind === 'published' ? [provenance.source] : [];
  const keys = [...new Set([...own, ...namedSources(`${said} ${note}`)])];
  return {
    kind: soundness(provenance),
    says: sentence(said),
    note: note === '' ? '' : sentence(note),
    full: keys.map((key) => sentence(cited(key))),
  };
}

export function originOfQuantity({ provenance, note, range }: Quantity): Origin {
  return originOf(provenance, note, range);
}
