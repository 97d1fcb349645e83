/** Words about tallies: the heads of their tables, what is said of each change, and what is found odd. */
import type { Tally, TallyKind, MarkTally } from '../../core/material/tally.ts';
import type { Doing } from '../../store/tests.ts';
import { GRAVITY } from '../tests/weight.ts';
import { angle, counted, grouped, inWords, length, NO_BREAK, percent, setLength, type LengthUnit } from './numbers.ts';
import { capital } from './said.ts';
import { bendText } from './testsText.ts';

export const TALLY = {
  heading: 'Tally',
  strip: 'Strip',
  bends: 'Bends',
  happened: 'What happened',
  seen: 'Seen',
  date: 'Date',
  does: 'What can be done',
  broke: 'broke',
  whole: 'still whole',
  counting: 'being counted',
  goOn: 'Go on',
  aside: 'Set aside',
  back: 'Bring back',
  remove: 'Remove',
  odd: 'far from the others: look again',
  out: 'set aside',
  seenAsks: 'what was seen',
  put: 'Put it in',
  begin: 'Count a strip',
  elsewhere: 'Counted elsewhere: ',
  other: 'Also told of this spool',
  yours: 'your test',
} as const;

const quoted = (name: string) => `“${name}”`;

export const LOOKS: Readonly<Record<MarkTally['looks'], string>> = {
  unmarked: 'unmarked',
  whitened: 'whitened',
  cracked: 'cracked',
};

/** Each kind by the word for one of them. */
const ONE: Readonly<Record<TallyKind, string>> = {
  flexes: 'strip',
  thickness: 'reading',
  mark: 'look',
  sag: 'weighing',
  hold: 'hold',
  pull: 'pull',
};

export function oneOf(kind: TallyKind, number: number): string {
  return `${capital(ONE[kind])} ${number}`;
}

/** What was measured, in a few words. */
export function tallyText(tally: Tally, unit: LengthUnit): string {
  const mm = (value: number) => length(value, unit);
  switch (tally.kind) {
    case 'flexes':
      return `${grouped(tally.cycles)}, ${tally.ended === 'broke' ? TALLY.broke : TALLY.whole}`;
    case 'thickness':
      return `${counted(tally.count, tally.countOf.slice(0, -1))}: ${mm(tally.measured)}`;
    case 'mark':
      return `${bendText({ way: 'over', radius: tally.radius }, unit)}: ${LOOKS[tally.looks]}`;
    case 'sag':
      return `${gramsText(tally.force)}: ${mm(tally.sag)}`;
    case 'hold':
      return `${Number(tally.hours.toPrecision(3))}${NO_BREAK}h: ${angle(tally.left)} left of ${angle(tally.held)}`;
    case 'pull':
      return `${tally.direction}: ${stress(tally.strength)}${tally.modulus === undefined ? '' : `, stiffness ${stress(tally.modulus)}`}`;
  }
}

const stress = (mpa: number) => `${mpa < 1000 ? Number(mpa.toPrecision(3)) : grouped(mpa)}${NO_BREAK}MPa`;
/** “100 g”, “2.5 g”: as it stands on the weight. */
function gramsText(force: number): string {
  const grams = force / GRAVITY;
  return `${grams < 100 ? Number(grams.toPrecision(3)) : grouped(grams)}${NO_BREAK}g`;
}

/** With what it was measured, in the second column. */
export function madeWith(tally: Tally, unit: LengthUnit): string {
  const mm = (value: number) => length(value, unit);
  switch (tally.kind) {
    case 'flexes':
      return `${setLength(tally.thickness, unit)} ${bendText(tally.bend, unit)}`;
    case 'thickness':
      return `${counted(tally.count, tally.countOf.slice(0, -1))}, set to ${mm(tally.set)}`;
    case 'mark':
      return `${setLength(tally.thickness, unit)} ${bendText({ way: 'over', radius: tally.radius }, unit)}`;
    case 'sag':
      return `${gramsText(tally.force)} at ${mm(tally.length)}`;
    case 'hold':
      return `${Number(tally.hours.toPrecision(3))}${NO_BREAK}h over R${NO_BREAK}${setLength(tally.radius, unit, 0)}`;
    case 'pull':
      return tally.direction;
  }
}

/** Heads of the table of a kind: what is under the caliper, the scale or the eye. */
export const HEADS: Readonly<Record<Exclude<TallyKind, 'flexes'>, readonly [string, string, string]>> = {
  thickness: ['Rung', 'As set', 'Measured'],
  mark: ['Look', 'Laid', 'Looks'],
  sag: ['Weighing', 'Hung', 'Sag'],
  hold: ['Hold', 'Held', 'Left bent'],
  pull: ['Pull', 'Pulled', 'Broke at'],
};

export const SAID_OF = {
  put: (what: string, text: string) => `${what} put in: ${text}`,
  changed: (what: string, now: string, was: string) => `${what} made ${now}, was ${was}`,
  ended: (what: string, text: string) => `${what} counted: ${text}`,
  aside: (what: string) => `${what} set aside`,
  back: (what: string) => `${what} brought back`,
  removed: (what: string, text: string) => `${what} removed: ${text}`,
  seen: (what: string) => `What was seen of ${what.toLowerCase()} changed`,
} as const;

/** Under the heading when there is nothing: what would tell most for the least. */
const FIRST_ONES: Readonly<Record<Doing, string>> = {
  flexes: 'Five strips over R 5 take about two hours and would tell most for the least printing.',
  mark: 'One strip round each corner takes ten minutes, and tells where it whitens and where it cracks.',
  thickness: 'Six rungs under a caliper take two minutes, and tell how thick its lines come out.',
  sag: 'Three weights take five minutes, and tell how stiff it is.',
  hold: 'One strip left in the slot for a day tells how much of a bend stays.',
  pull: 'One bar on a machine takes five minutes, and tells at what stress it breaks and, by its stretch, how stiff it is.',
};

export function emptyText(name: string, doing: Doing): string {
  return `Nothing counted for ${name} yet. ${FIRST_ONES[doing]}`;
}

const strips = (count: number) => `${capital(inWords(count))} strip${count === 1 ? '' : 's'}`;

/** “Three strips broke, two are still whole.” */
export function countsText(broke: number, whole: number): string {
  if (broke === 0) return `${strips(whole)} ${whole === 1 ? 'is' : 'are'} still whole.`;
  const rest = whole === 0 ? '' : `, ${inWords(whole)} ${whole === 1 ? 'is' : 'are'} still whole`;
  return `${strips(broke)} broke${rest}.`;
}

/** What a row of the table of strips says beside its marks. */
export function groupText(thickness: number, bend: string, strain: number, unit: LengthUnit, lying: string): string {
  return `${setLength(thickness, unit)} ${bend}, ${lying}: ${percent(strain)}`;
}

/** The line in which a reading is put in, before and behind its figure. */
export const FORM: Readonly<Record<Doing, readonly [before: string, behind: string]>> & { readonly seen: string } = {
  flexes: ['Counted elsewhere:', ' bends,'],
  mark: ['It came back', ''],
  thickness: ['The caliper reads', ''],
  sag: ['It hangs lower by', ''],
  hold: ['Of that there stayed', ''],
  pull: ['It broke at', ','],
  seen: 'What was seen',
};

/** Bars that are pulled on a machine elsewhere, and the tables of forces that it leaves. */
export const PULL = {
  note: 'No piece of the plate is pulled: cut or print a bar, and pull it on a machine. Eye protection: bars part suddenly and fling splinters.',
  stretch: 'Whether its stretch was measured',
  stretched: { none: 'no stretch measured', known: 'with a stiffness of' },
  stiffness: 'Stiffness',
  beside: 'stiffness',
  table: ['Or from its table of forces: stretch read over', ', pulled'],
  read: 'Read a table of forces',
  chooser: 'Table of forces to read',
  seen: (name: string) => `read from ${quoted(name)}`,
  partly: (name: string, why: string) => `${quoted(name)} was read but for this. ${why}`,
  again: (name: string, pull: string) =>
    `This very bar is in already, as ${pull.toLowerCase()}. Remove that one first if ${quoted(name)} should be read again.`,
  check: 'Check the width and the thickness of the bar, and the unit at the head of its forces.',
  elsewhere:
    'It holds the forces of a pulled bar and no tallies. Choose “Pull” as the first word under Tests, give the size of the bar, and drop it there again.',
} as const;
