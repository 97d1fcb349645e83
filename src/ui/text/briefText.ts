/** Words of the brief's value fields: labels, hints, and what is said of a change, in the past tense with the old value. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Ways } from '../../core/design/joint.ts';
import type { Measure } from './amountText.ts';
import type { KindText } from './kinds/kind.ts';
import { setLength, unitAfter, type LengthUnit } from './numbers.ts';

/** Sizes by the role they play, whatever a family calls them. */
export type SizeRole = 'count' | 'length' | 'depth' | 'fillet' | 'pad' | 'inRow' | 'sideBySide';
export type ProfileField = 'nozzle' | 'lineWidth' | 'layerHeight' | 'firstLayerHeight';
/** A size that plays no common role, by its name. */
export type NamedSize = `sizes.${string}`;
type KnownValue = SizeRole | ProfileField | 'amount' | 'least' | 'cycles' | 'thickness' | 'effortAtMost';
export type BriefValue = KnownValue | NamedSize;
type KnownChoice = 'drive' | 'ways' | 'filament' | 'lying' | 'held' | 'stays' | 'chance' | 'effort' | 'fitRule';
/** A size that is chosen in words goes by its name too. */
export type BriefChoice = KnownChoice | NamedSize;

/** A value as it is said: with its unit, and bare for the old one beside it. */
interface Change {
  readonly now: string;
  readonly was: string;
  /** What its field is called. */
  readonly label: string;
  readonly kind: KindText;
  readonly measure: Measure;
  /** The new value where it is a count. */
  readonly count: number;
}

const plural = (count: number, one: string) => (count === 1 ? one : `${one}s`);
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const CHANGED: Readonly<Record<KnownValue | KnownChoice, (change: Change) => string>> = {
  amount: ({ label, now, was }) => `${label} made ${now}, was ${was}`,
  least: ({ now, was }) => `Made to come ${backAsFar(now)}, was ${was}`,
  drive: ({ now, was }) => `Made so that it ${now}, was: ${was}`,
  cycles: ({ now, was }) => `Flexes made ${now}, were ${was}`,
  count: ({ now, was, kind, count }) =>
    `Made ${now} ${plural(count, kind.unitOfCount)} ${kind.unitOfCount === 'line' ? 'across' : 'through'}, was ${was}`,
  length: ({ now, was, kind: { room } }) => `${capital(room.thing)} made ${now} ${room.is}, was ${was}`,
  depth: ({ now, was, kind }) => `${capital(kind.piece)} made ${now} ${kind.deep}, was ${was}`,
  fillet: ({ now, was }) => `Roots filleted ${now}, were ${was}`,
  pad: ({ now, was, kind }) => `${kind.padName}s made ${now} thick, were ${was}`,
  inRow: ({ now, was, kind, count }) => `${now} ${count === 1 ? kind.piece : kind.pieces} put in a row, was ${was}`,
  sideBySide: ({ now, was, kind, count }) =>
    `${now} ${count === 1 ? kind.piece : kind.pieces} put side by side, was ${was}`,
  nozzle: ({ now, was }) => `Nozzle made ${now}, was ${was}`,
  lineWidth: ({ now, was }) => `Lines made ${now} wide, were ${was}`,
  layerHeight: ({ now, was }) => `Layers made ${now}, were ${was}`,
  firstLayerHeight: ({ now, was }) => `First layer made ${now}, was ${was}`,
  thickness: ({ now, was }) => `Measured thickness made ${now}, was ${was}`,
  ways: ({ now, was, measure }) => `${measure === 'turn' ? 'Bends' : 'Moves'} ${now}, was ${was}`,
  filament: ({ now, was }) => `Filament made ${now}, was ${was}`,
  lying: ({ now, was }) => `Printed ${now}, was ${was}`,
  held: ({ now, was }) => `Now ${now}, was ${was}`,
  stays: ({ now, was }) => `Now it ${now}, was: ${was}`,
  chance: ({ now, was }) => `Made ${now} that should get there, was ${was}`,
  effort: ({ now, was }) => `Effort ${now}, was ${was}`,
  effortAtMost: ({ now, was }) => `Effort at most ${now}, was ${was}`,
  fitRule: ({ now, was }) => `Lines counted as ${now}, were ${was}`,
};

const isNamed = (name: BriefValue | BriefChoice): name is NamedSize => name.startsWith('sizes.');

/** What is said of a change, in the past tense with the old value. */
export function changedText(name: BriefValue | BriefChoice, change: Change): string {
  if (isNamed(name)) return `${change.label} made ${change.now}, was ${change.was}`;
  return CHANGED[name](change);
}

/** What is said of a size that is chosen in words. */
export function chosenText(now: string, was: string): string {
  return `Made ${now.replace(/,$/, '')}, was ${was.replace(/,$/, '')}`;
}

export const AMOUNT_LABELS: Readonly<Record<Measure, string>> = { turn: 'Angle', travel: 'Travel' };

export const LABELS: Readonly<Record<Exclude<KnownValue, SizeRole | 'amount'> | KnownChoice, string>> = {
  drive: 'How it is moved',
  least: 'How far it comes back',
  cycles: 'Number of flexes',
  thickness: 'Measured thickness',
  nozzle: 'Nozzle',
  lineWidth: 'Line width',
  layerHeight: 'Layer height',
  firstLayerHeight: 'First layer',
  ways: 'One way or both ways',
  filament: 'Filament',
  lying: 'How it lies on the plate',
  held: 'What happens after a flex',
  stays: 'Whether it stays in its second place',
  chance: 'Share that should get there',
  effort: 'How hard it may push back',
  effortAtMost: 'Effort at most',
  fitRule: 'How lines side by side are counted',
};

const sums = (example: string) => (step: string) =>
  `up and down keys step ${step}; sums and inches too, such as ${example}`;

const HINTS: Readonly<Record<KnownValue, (step: string) => string>> = {
  amount: (step) => `of the whole joint; up and down keys step ${step}, with Shift ten times as far`,
  least: (step) => `under 0 to the other side, over 0 it never comes to rest; up and down keys step ${step}`,
  cycles: () => 'flexes in its life; up and down keys step it',
  count: () => 'whole numbers only; up and down keys step by one',
  length: sums('3/8 in + 2'),
  depth: sums('1/4 in'),
  fillet: sums('2*0.42'),
  pad: sums('3 + 2*0.8'),
  inRow: () => 'one behind the other, each bends its share of the angle',
  sideBySide: () => 'alike and driven together: effort times as many, strain as it was',
  nozzle: (step) => `diameter of the nozzle; up and down keys step ${step}`,
  lineWidth: (step) => `the line width that is set; up and down keys step ${step}`,
  layerHeight: (step) => `up and down keys step ${step}`,
  firstLayerHeight: (step) => `up and down keys step ${step}`,
  thickness: (step) => `as calipers read it; up and down keys step ${step}`,
  effortAtMost: (step) => `the hardest push on the way; up and down keys step ${step}`,
};

/** What a field takes, said before anything is typed; `step` is one press of an arrow key. */
export function hintText(name: BriefValue, step: string): string {
  return isNamed(name) ? `up and down keys step ${step}` : HINTS[name](step);
}

/** Which way it swings, as it stands in a sentence; of what snaps, apart from how far. */
export function waysText(ways: Ways, apart?: boolean): string {
  if (ways !== 'between') return ways;
  return apart ? BACK : `and ${BACK}`;
}

const BACK = 'back as far as';

export function backAsFar(amount: string): string {
  return `${BACK} ${amount}`;
}

/** After what is said of an amount that takes the other end of the swing along. */
export function backWithIt(amount: string): string {
  return `; comes ${backAsFar(amount)} now`;
}

export const HELD = { released: 'let go after each flex', held: 'held bent' } as const;

export const STAYS = { stays: 'stays there', back: 'comes back', either: 'stays or comes back' } as const;

/** The wish for the effort where a kind has no words of its own for it, as it stands after “it may push back”. */
export const WISH = { any: 'with any effort', most: 'with at most' } as const;
/** The same as it is said of a change. */
export const WISH_SAID = { any: 'of any size', most: (figure: string) => `at most ${figure}` } as const;

/** How lines side by side make a thickness, with the thickness where a count is given. */
export function fitRuleText(rule: 'nominal' | 'overlapped', count: string, thickness: string | undefined): string {
  if (rule === 'overlapped') return thickness === undefined ? 'overlapped beads' : `overlapped beads, ${thickness}`;
  return thickness === undefined ? 'side by side' : `${count} = ${thickness}`;
}

export const MEASURE_IT = 'Enter a measured thickness';

export function sizeIt(countOf: 'lines' | 'layers'): string {
  return `Size it in whole ${countOf} instead`;
}

export function sizedSaid({ fit, section }: Assessment, unit: LengthUnit): string {
  const count = `${fit.nearest} whole ${fit.nearest === 1 ? fit.countOf.slice(0, -1) : fit.countOf}`;
  return `Sized as ${count}, was measured ${setLength(section.thickness, unit)}${unitAfter(unit)} thick`;
}

export function measuredSaid({ fit, section }: Assessment, unit: LengthUnit): string {
  const count = `${fit.nearest} whole ${fit.nearest === 1 ? fit.countOf.slice(0, -1) : fit.countOf}`;
  return `Thickness now measured, ${setLength(section.thickness, unit)}${unitAfter(unit)}, was ${count}`;
}
