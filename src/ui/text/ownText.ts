/** Sentences about filaments of the user's own: what is said of changes, of files, and of where a value comes from. */
import type { Provenance } from '../../core/material/types.ts';
import { capital, listed } from './said.ts';
import { nameOfFile } from './shellText.ts';

const quoted = (name: string) => `“${name}”`;

/** Names one by one as long as they are few: two hundred may come at once. */
function namedAll(names: readonly string[]): string {
  const [first = '', second = ''] = names.map(quoted);
  return names.length <= 3 ? listed(names.map(quoted)) : `${first}, ${second} and ${names.length - 2} more`;
}

export const OWN_SAID = {
  made: (name: string, from: string) => `${quoted(name)} made from ${from}`,
  copied: (name: string, from: string) => `${quoted(name)} copied from ${quoted(from)}`,
  removed: (name: string) => `${quoted(name)} removed`,
  renamed: (name: string, was: string) => `Filament renamed ${quoted(name)}, was ${quoted(was)}`,
  remarked: (name: string) => `Remark on ${quoted(name)} changed`,
  taken: (names: readonly string[]) => `${namedAll(names)} put with your filaments`,
  changed: (label: string, now: string, was: string) => `${label} made ${now}, was ${was}`,
  origin: (label: string, origin: string) => `${label} now ${origin}`,
  restored: (label: string, from: string) => `${label} as in ${from} again`,
} as const;

/** What a joint or part brought along, after what is said of it. */
export function alongText(said: string, names: readonly string[]): string {
  return names.length === 0 ? said : `${said}, with ${namedAll(names)}`;
}

/** Rows that came in under another name, because something else has theirs. */
export function cameAsText(renamed: readonly (readonly [was: string, now: string])[]): string {
  const each = renamed
    .slice(0, renamed.length <= 3 ? 3 : 2)
    .map(([was, now]) => `${quoted(was)} came in as ${quoted(now)}`);
  const rest = renamed.length - each.length;
  const all = rest === 0 ? listed(each) : `${each.join(', ')} and ${rest} more under other names`;
  return `${all}, because you have another filament of the same key. Yours is as it was.`;
}

export function nothingNewText(names: readonly string[]): string {
  if (names.length === 0) return 'There is no filament in this file.';
  return `You have ${namedAll(names)} already, word for word.`;
}

/** Why no more can be made. */
export function fullText(most: number): string {
  return `you have ${most} filaments of your own, as many as are kept; remove one first`;
}

/** Why a row cannot be removed now. */
export function inUseText(joints: readonly string[]): string {
  return `used by ${namedAll(joints)}; give ${joints.length === 1 ? 'it' : 'them'} another filament first`;
}

export const OWN_ACTIONS = {
  make: 'Make my own from this',
  copy: 'Copy',
  test: 'Test prints of it',
  tallies: 'Its tallies under Tests',
  share: 'Share as a file',
  remove: 'Remove',
  open: 'Open a filament file',
  chooser: 'Filament file to open',
} as const;

/** A name for a row made from another: “My PETG”, then “My PETG 2”. */
export function ownName(from: string, taken: readonly string[]): string {
  const stem = from.startsWith('My ') ? from.replace(/ \d+$/, '') : `My ${from}`;
  let n = 1;
  const name = () => (n === 1 ? stem : `${stem} ${n}`);
  while (taken.includes(name())) n += 1;
  return name();
}

/** File name of a shared filament. */
export function filamentFileName(name: string): string {
  return nameOfFile(name, 'filament', '.filament.json');
}

/** Who says so: what the user can choose from, and what a value was made from where it stands as it was. */
export type Told = 'test' | 'document' | 'memory' | 'as made';
type Chosen = Exclude<Told, 'as made'>;

export const TOLD_TEXT: Readonly<Record<Chosen, string>> = {
  test: 'your test',
  document: 'a document',
  memory: 'from memory',
};

/** What is asked for beside each. */
export const TOLD_ASKS: Readonly<Record<Chosen, string>> = {
  test: 'what you measured, and how often',
  document: 'which document, and where in it',
  memory: 'anything worth knowing',
};

/** The words that stand until there are some. */
const UNSAID: Readonly<Record<'test' | 'document', string>> = {
  test: 'not said how',
  document: 'not said which',
};

/** The provenance that a choice and its words make. */
export function provenanceOf(told: Chosen, words: string): Provenance {
  if (told === 'test') return { kind: 'measured', what: words || UNSAID.test };
  if (told === 'document') return { kind: 'published', source: 'named-by-user', place: words || UNSAID.document };
  return words === '' ? { kind: 'memory' } : { kind: 'memory', because: words };
}

/** What was said of where a value comes from, in the user's words; empty where nothing was. */
export function wordsOf(provenance: Provenance): string {
  const words =
    provenance.kind === 'measured' ? provenance.what : provenance.kind === 'published' ? provenance.place : '';
  if (provenance.kind === 'memory') return provenance.because ?? '';
  return Object.values(UNSAID).includes(words) ? '' : words;
}

/** A value that nobody has touched: “as in PETG”, or by the rule that it follows. */
export function asMadeText(from: string, isRule: boolean): string {
  return isRule ? 'by its rule' : `as in ${from}`;
}

/** What a point that a curve of the user's own was set through is called, and what the user says of it. */
export function anchorWords(provenance: Provenance): { readonly what: string; readonly more: string } {
  const kind = provenance.kind === 'measured' ? 'test' : provenance.kind === 'published' ? 'document' : 'memory';
  return { what: capital(TOLD_TEXT[kind].replace(/^a /, '')), more: wordsOf(provenance) };
}

export const EDITOR = {
  name: 'Name',
  remark: 'Remark',
  remarkAsks: 'maker, spool, colour, how it was dried',
  curve: 'Life curve',
  typical: (label: string) => label,
  low: (label: string) => `${label}, low`,
  high: (label: string) => `${label}, high`,
  told: (label: string) => `${label}, where it comes from`,
  words: (label: string) => `${label}, in your words`,
  hint: (step: string, why: string) => `up and down keys step ${step}; ${why}`,
  anchors: ['Half break by ', ' cycles at ', ', by ', ' at '],
  isSaid: 'The curve: ',
  readAt: 'where the curve is read',
  notRead: (label: string, least: string, most: string) => `${label} must be from ${least} to ${most}.`,
  anchorsMore: 'Two points that the curve goes through, its exponents kept.',
  labels: {
    fewCycles: 'Few cycles',
    fewStrain: 'Strain at few cycles',
    manyCycles: 'Many cycles',
    manyStrain: 'Strain at many cycles',
    curve: 'The life curve',
  },
} as const;
