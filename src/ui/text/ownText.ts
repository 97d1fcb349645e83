/** Sentences about filaments of the user's own: what is said of changes, of files, and of where a value comes from. */
import { PROPERTY_LIMITS } from '../../core/material/ownLimits.ts';
import type { PropertyName, Provenance } from '../../core/material/types.ts';
import { listed, sentence } from './said.ts';
import { nameOfFile } from './shellText.ts';

const quoted = (name: string) => `“${name}”`;
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

export const OWN_SAID = {
  made: (name: string, from: string) => `${quoted(name)} made from ${from}`,
  copied: (name: string, from: string) => `${quoted(name)} copied from ${quoted(from)}`,
  removed: (name: string) => `${quoted(name)} removed`,
  renamed: (name: string, was: string) => `Filament renamed ${quoted(name)}, was ${quoted(was)}`,
  remarked: (name: string) => `Remark on ${quoted(name)} changed`,
  taken: (names: readonly string[]) => `${listed(names.map(quoted))} put with your filaments`,
  changed: (label: string, now: string, was: string) => `${label} made ${now}, was ${was}`,
  origin: (label: string, origin: string) => `${label} now ${origin}`,
  restored: (label: string, from: string) => `${label} as in ${from} again`,
} as const;

/** What a joint or part brought along, after what is said of it. */
export function alongText(said: string, names: readonly string[]): string {
  return names.length === 0 ? said : `${said}, with ${listed(names.map(quoted))}`;
}

/** Rows that came in under another name, because something else has theirs. */
export function cameAsText(renamed: readonly (readonly [was: string, now: string])[]): string {
  const each = renamed.map(([was, now]) => `${quoted(was)} came in as ${quoted(now)}`);
  return `${capital(listed(each))}, because you have another filament of the same key. Yours is as it was.`;
}

export function nothingNewText(names: readonly string[]): string {
  if (names.length === 0) return 'There is no filament in this file.';
  return `You have ${listed(names.map(quoted))} already, word for word.`;
}

/** Why a row cannot be removed now. */
export function inUseText(joints: readonly string[]): string {
  return `used by ${listed(joints.map(quoted))}; give ${joints.length === 1 ? 'it' : 'them'} another filament first`;
}

export const OWN_ACTIONS = {
  make: 'Make my own from this',
  copy: 'Copy',
  share: 'Share as a file',
  remove: 'Remove',
  open: 'Open a filament file',
  chooser: 'Filament file to open',
} as const;

/** A name for a row made from another: “My PETG”, then “My PETG 2”. */
export function ownName(from: string, taken: readonly string[]): string {
  const stem = /^My /.test(from) ? from.replace(/ \d+$/, '') : `My ${from}`;
  let n = 1;
  const name = () => (n === 1 ? stem : `${stem} ${n}`);
  while (taken.includes(name())) n += 1;
  return name();
}

/** File name of a shared filament. */
export function filamentFileName(name: string): string {
  return nameOfFile(name, 'filament', '.filament.json');
}

/** “Strain at yield”. */
export function propertyLabel(name: PropertyName): string {
  return capital(PROPERTY_LIMITS[name].what);
}

/** Who says so: what the user can choose from, and the row of the table where a value stands as it was. */
export type Origin = 'test' | 'document' | 'memory' | 'as made';

export const ORIGIN_TEXT: Readonly<Record<Exclude<Origin, 'as made'>, string>> = {
  test: 'your test',
  document: 'a document',
  memory: 'from memory',
};

/** What is asked for beside each origin. */
export const ORIGIN_ASKS: Readonly<Record<Exclude<Origin, 'as made'>, string>> = {
  test: 'what you measured, and how often',
  document: 'which document, and where in it',
  memory: 'anything worth knowing',
};

/** The words of an origin that has none yet. */
export const ORIGIN_UNSAID: Readonly<Record<Exclude<Origin, 'as made'>, string>> = {
  test: 'measured by you, not said how',
  document: 'named by you, not said where',
  memory: '',
};

export function asMadeText(from: string): string {
  return `as in ${from}`;
}

/** Where a value comes from, in the user's words; empty where nothing was said. */
export function originWords(provenance: Provenance): string {
  if (provenance.kind === 'measured') return provenance.what;
  if (provenance.kind === 'published') return provenance.place;
  return provenance.kind === 'memory' ? (provenance.because ?? '') : provenance.from;
}

/** A message of the core as it stands under a field. */
export const refusedText = (message: string): string => sentence(message);

export const EDITOR = {
  name: 'Name',
  remark: 'Remark',
  remarkAsks: 'maker, spool, colour, how it was dried',
  low: 'low',
  high: 'high',
  origin: 'where it comes from',
  words: 'in your words',
  add: 'Add a value',
  curve: 'Life curve',
  values: 'Values',
  hint: (step: string) => `up and down keys step ${step}`,
} as const;
