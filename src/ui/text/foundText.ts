/** Words of what “Find a joint” finds: designs, their figures, the list, and where the numbers come from. */
import type { Figures, FindAnswer } from '../../core/find/findAnswer.ts';
import { EFFORT_UNIT, effortText, type Measure } from './amountText.ts';
import { sizeSet } from './findText.ts';
import { kindText } from './kindText.ts';
import { cycles, grouped, inHundred, inWords, lengthFigure, percent, unitAfter, type LengthUnit } from './numbers.ts';
import { capital } from './said.ts';

/* ---- a design ---- */

/** “5.2 mm”. */
export function sizeText(value: number, unit: LengthUnit): string {
  return `${sizeFigure(value, unit)}${unitAfter(unit)}`;
}

function sizeFigure(value: number, unit: LengthUnit): string {
  return lengthFigure(value, unit, unit === 'mm' ? 1 : 2);
}

/** “5.2 × 1.3 × 6.0 mm”: along, across and deep. */
export function roomText({ room: { along, across, depth } }: Pick<Figures, 'room'>, unit: LengthUnit): string {
  return `${[along, across, depth].map((side) => sizeFigure(side, unit)).join(' × ')}${unitAfter(unit)}`;
}

export const BY = {
  'hand form': 'exact by hand',
  solver: 'solved',
  estimate: 'an estimate, not solved yet',
} as const satisfies Record<Figures['by'], string>;

export function chanceText(chance: number): string {
  return `${inHundred(chance)} in 100`;
}

export function strainText(strain: number): string {
  return `strain ${percent(strain)}`;
}

export function medianText({ median, pastCount }: Pick<Figures, 'median' | 'pastCount'>): string {
  return pastCount ? 'half outlast what was ever counted' : `half break by ${cycles(median)}`;
}

/** All that a mark stands for, where it is pointed at. */
export function markText(name: string, filament: string, figures: Figures, measure: Measure, unit: LengthUnit): string {
  const { size, chance, effort } = figures;
  return `${name}, ${filament}: ${sizeText(size, unit)}, ${chanceText(chance)}, ${effortText(effort, measure)}`;
}

/** A joint that was found, named after what it is for: “Crease for the rain-flap hinge”. */
export function foundName(family: string, about: string): string {
  const kind = capital(kindText(family).name);
  if (about === '') return kind;
  // What was itself found for something is not named twice over.
  const [, of = about] = /^.+? for the (.+?)(?: \d+)?$/.exec(about) ?? [];
  return `${kind} for the ${/^\p{Lu}\p{Ll}/u.test(of) ? of.charAt(0).toLowerCase() + of.slice(1) : of}`;
}

/* ---- Fig. 1 and Fig. 2 ---- */

export const FIG = {
  room: 'Room against chance',
  roomAid: 'size of ring: effort; heavy: nothing is both smaller and surer',
  effort: 'Effort of all found',
  effortAid: 'high: shown; low: outside the bars',
  over: 'ticks: over 99.95',
} as const;

export function reachText(wanted: number): string {
  return `in 100 reach ${grouped(wanted)}`;
}

export function wantedChance(chance: number): string {
  return `wanted ${chanceText(chance)}`;
}

export function roomWanted(size: number, unit: LengthUnit, isFar: boolean): string {
  return `${isFar ? 'wanted up to' : 'room'} ${sizeSet(size, unit)}`;
}

export function sizeAxis(unit: LengthUnit): string {
  return `larger side of the room, ${unit === 'mm' ? 'mm' : 'in'}`;
}

export function effortAxis(measure: Measure, amount: string): string {
  return `${EFFORT_UNIT[measure]} at ${amount}`;
}

export const BARS = {
  size: 'Largest room shown',
  chance: 'Smallest chance shown',
  effortAtLeast: 'Smallest effort shown',
  effortAtMost: 'Largest effort shown',
  open: 'all',
} as const;

/** What the figures say to those who do not see them. */
export function plotLabel(count: number, best: number): string {
  const heavy = best === 1 ? 'one is a heavy ring' : `${grouped(best)} are heavy rings`;
  return `${FIG.room}: ${grouped(count)} designs, ${heavy}, than which nothing is both smaller and surer. All are in the list.`;
}

export function shownText(shown: number, all: number, limits: readonly string[]): string {
  if (limits.length === 0) return all === 1 ? 'The one found is shown.' : `All ${grouped(all)} are shown.`;
  return `Shown: ${limits.join(', ')}: ${grouped(shown)} of ${grouped(all)}.`;
}

export const SHOWN = {
  size: (figure: string) => `room up to ${figure}`,
  chance: (figure: string) => `chance from ${figure}`,
  effortAtLeast: (figure: string) => `effort from ${figure}`,
  effortAtMost: (figure: string) => `effort up to ${figure}`,
  all: 'Show all',
  nothing: 'Nothing left',
} as const;

/* ---- the list ---- */

export const LIST = {
  aside: 'smallest first, then softest; life size',
  keys: 'One for each kind and filament. Up and down keys pick, Enter uses.',
  use: 'Use it',
  look: 'Look at it',
  waits: 'Newer ones are put in when you leave the list.',
  coming: 'Nothing found so far.',
  nothing: 'Nothing meets the brief',
  nearest: 'nearest misses',
} as const;

export function listHead(shown: number, all: number, isDone: boolean): string {
  return `Best ${grouped(shown)} of ${grouped(all)}${isDone ? '' : ' so far'}`;
}

export function labelOfUse(name: string, filament: string): string {
  return `${LIST.use}: ${name}, ${filament}`;
}

export function moreText(count: number, filament: string, isOpen: boolean): string {
  return isOpen
    ? `Hide the others in ${filament}`
    : `${inWords(count)} more of this kind in ${filament}`.replace(/^./, (c) => c.toUpperCase());
}

export function restText(count: number): string {
  return `Show the other ${grouped(count)}`;
}

/** Said when there is an answer, for those who do not see it. */
export function answeredText({ designs, meets }: Pick<FindAnswer, 'designs' | 'meets'>): string {
  if (designs.length === 0) return LIST.nothing;
  return `${grouped(meets)} meet the brief; the best ${grouped(designs.length)} are in the list`;
}

/* ---- where the numbers come from ---- */

export const FOUND_SOURCES = {
  head: 'Where these numbers come from',
  rows: [
    {
      about: 'life',
      kind: 'memory',
      name: 'How many reach it',
      says: 'each filament’s curve of life, scatter and doubt together; its record tells what it stands on',
    },
    {
      about: 'strain',
      kind: 'computed',
      name: 'Strain',
      says: 'by hand forms where they are exact, else by the solver; root factors as on the sheet of a joint',
    },
    {
      about: 'effort',
      kind: 'memory',
      name: 'Effort',
      says: 'by the stiffness of each filament, which its record tells; as first bent, at the wanted amount',
    },
  ],
  full: 'A joint that is used has all of them on its own sheet.',
  records: 'Records of the filaments',
  recordsAt: '#filaments',
} as const;
