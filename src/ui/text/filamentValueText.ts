/** How the values of a filament are said: name, figure with its unit, range, where it comes from, and how surely. */
import { soundness } from '../../core/material/choose.ts';
import type { Trait } from '../../core/material/compare.ts';
import type { Provenance, ProvenanceKind, Quantity, WholeFilament } from '../../core/material/types.ts';
import { SOURCES, type SourceKey } from '../../core/sources.ts';
import { grouped, NO_BREAK } from './numbers.ts';
import { sentence } from './said.ts';

export type Property = keyof WholeFilament['properties'];

/** How one property is called, and how its figure is written. */
interface Words {
  readonly name: string;
  /** A fraction that is said as a per cent of strain. */
  readonly strain?: true;
  /** Compared on an axis of ratios. */
  readonly log?: true;
}

const strain = (name: string): Words => ({ name, strain: true, log: true });
const ratio = (name: string): Words => ({ name, log: true });

/** Every property in the order in which they are read. */
export const PROPERTIES: Readonly<Record<Property, Words>> = {
  youngsModulus: ratio('Stiffness, pulled along lines'),
  flexuralModulus: ratio('Stiffness, bent'),
  designModulus: ratio('Stiffness to design with'),
  youngsModulusDry: ratio('Stiffness when dry'),
  conditionedOverDryModulus: { name: 'Share of the dry stiffness left in a room' },
  youngsModulusAcrossLines: ratio('Stiffness across lines'),
  youngsModulusAcrossLayers: ratio('Stiffness across layers'),
  permissibleStrainRepeated: strain('Bent again and again'),
  permissibleStrainSingle: strain('Bent once in a while'),
  permissibleStrainSingleHandbook: strain('Bent once in a while, by handbooks'),
  sustainedStrainLimit: strain('Held bent for long'),
  yieldStrain: strain('Stays bent'),
  yieldStrainDry: strain('Stays bent, when dry'),
  yieldStress: ratio('Stress at which it stays bent'),
  strainAtBreak: strain('Breaks'),
  strainAtBreakAcrossLayers: strain('Breaks, across layers'),
  acrossLayersStrainFactor: { name: 'Share of strain left across layers' },
  acrossLayersStrengthRatio: { name: 'Share of strength left across layers' },
  acrossLayersFatigueRatio: { name: 'Share of long-life stress left across layers' },
  thickSectionStrainFactor: { name: 'Share of strain left in thick sections' },
  tensileStrength: ratio('Strength, pulled'),
  tensileStrengthAcrossLines: ratio('Strength across lines'),
  tensileStrengthAcrossLayers: ratio('Strength across layers'),
  stressAtBreak: ratio('Stress at break'),
  fatigueFraction: { name: 'Share of strength left at a million cycles' },
  cyclicStiffnessLoss: { name: 'Stiffness lost by cycling' },
  relaxationExponent: { name: 'Exponent of what relaxes' },
  stressLossHour: { name: 'Push lost after an hour held' },
  stressLossDay: { name: 'Push lost after a day held' },
  setAfterDayHeld: { name: 'Stays bent after a day held' },
  compressionSetRoom: { name: 'Set after squeezing, in a room' },
  compressionSetWarm: { name: 'Set after squeezing, warm' },
  glassTransition: { name: 'Softens, glass transition' },
  heatDeflection: { name: 'Sags under load, 0.45 MPa' },
  waterUptake: ratio('Water taken up'),
  wetFilamentStrengthLoss: { name: 'Strength lost by printing damp' },
  poissonsRatio: { name: 'Narrows as it is pulled' },
  density: { name: 'Density' },
  hingeThickness: { name: 'Thickness of moulded hinges' },
  hingeLandLength: { name: 'Length of moulded hinges' },
  hingeNominalStrain: strain('Strain of moulded hinges'),
};

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

const minus = (text: string) => text.replace('-', '\u2212');

/** Three figures at most: “1 900”, “3.5”, “−10”. */
export function bareFigure(value: number): string {
  const text = Math.abs(value) >= 1000 ? grouped(value) : String(Number(value.toPrecision(3)));
  return minus(text);
}

export function figureIn(value: number, asStrain: boolean): string {
  return bareFigure(asStrain ? value * 100 : value);
}

function unitIn({ unit }: Pick<Quantity, 'unit'>, asStrain: boolean): string {
  if (asStrain) return `${NO_BREAK}%`;
  return unit === '' ? '' : `${NO_BREAK}${unit}`;
}

/** “1 900 MPa”; a strain in per cent. */
export function valueText(quantity: Quantity, asStrain: boolean): string {
  return `${figureIn(quantity.typical, asStrain)}${unitIn(quantity, asStrain)}`;
}

/** “1 500 to 2 200”; empty where the row has one figure only. */
export function rangeText({ low, high }: Quantity, asStrain: boolean): string {
  return low === undefined || high === undefined ? '' : `${figureIn(low, asStrain)} to ${figureIn(high, asStrain)}`;
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

function originText(provenance: Provenance): string {
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

/** Where a figure comes from: in words, with its note, and every document that either names. */
export function originOf(provenance: Provenance, note = '', range?: ProvenanceKind): Origin {
  const remembered = range === 'memory' && provenance.kind !== 'memory' ? '; low and high from memory' : '';
  const said = originText(provenance);
  const own = provenance.kind === 'published' ? [provenance.source] : [];
  const keys = [...new Set([...own, ...namedSources(`${said} ${note}`)])];
  return {
    kind: soundness(provenance),
    says: sentence(`${said}${remembered}`),
    note: note === '' ? '' : sentence(note),
    full: keys.map((key) => sentence(cited(key))),
  };
}

export function originOfQuantity({ provenance, note, range }: Quantity): Origin {
  return originOf(provenance, note, range);
}
