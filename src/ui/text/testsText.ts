/** Words of the place where test prints are made and counted: its sentence, its title block, its buttons. */
import type { Bend, FlexTally, PullTally } from '../../core/material/tally.ts';
import type { Lying } from '../../core/print/profile.ts';
import type { Mm } from '../../core/units.ts';
import type { Doing } from '../../store/tests.ts';
import { angle, grouped, length, NO_BREAK, percent, setLength, type LengthUnit } from './numbers.ts';
import { listed } from './said.ts';

export const TESTS = {
  title: 'Tests',
  says: 'What is tested',
  sureness: 'Eye protection: strips part suddenly. One spool, one printer, one room: counts move only their own curve.',
  testing: 'Testing',
  for: 'For',
  noJoint: 'no joint',
  marks: 'Marks beside numbers',
  invented: 'invented counts',
  inventedSpool: 'invented',
  tryInvented: 'Show it with invented counts',
  another: 'Another spool',
  pieces: 'Test pieces',
  toPieces: 'See the pieces to print',
  noStrip: (strip: string) => `no ${strip} of the piece`,
  ofPlate: 'pieces of the plate',
} as const;

export const INVENTED = {
  clean: 'at the corner, clean',
  whitened: 'at the corner; whitened from 700',
  beside: 'beside the corner',
  stopped: 'whitened; stopped to go on later',
} as const;

/** What is done, as the sentence begins. */
export const DOING_WORDS: Readonly<Record<Doing, string>> = {
  flexes: 'Flex',
  mark: 'Bend once',
  thickness: 'Measure',
  sag: 'Hang',
  hold: 'Hold',
  pull: 'Pull',
};

export const LABELS = {
  doing: 'What is done',
  strips: 'Strips',
  filament: 'Filament or spool',
  count: { lines: 'Lines across the strips', layers: 'Layers through the strips' },
  way: 'How the strips are bent',
  radius: 'Radius of the bar',
  turn: 'Turned to',
  length: 'Free length',
  strip: 'Strip of the piece',
  ways: 'Flexed',
  joint: 'Joint it is for',
  lying: 'Strips lie',
  depth: 'Width of the strips',
  grams: 'Weight',
  arm: 'From the clamp to the weight',
  held: 'Held at',
  hours: 'Hours held',
  direction: 'Pulled',
  barWidth: 'Width of the bar',
  barThickness: 'Thickness of the bar',
  knowsGauge: 'Whether the gauge length is known',
  gaugeLength: 'Gauge length',
  knowsSpeed: 'Whether the speed is known',
  speed: 'Speed of the grips',
  plateX: 'Plate, left to right',
  plateY: 'Plate, front to back',
  printer: 'Printer',
  spool: 'Spool',
} as const;

export const ASKS = { printer: 'which printer', spool: 'which spool' } as const;

export const WAY_WORDS: Readonly<Record<Bend['way'], string>> = { over: 'over', to: 'to' };
export const WAYS_WORDS: Readonly<Record<FlexTally['ways'], string>> = {
  'one way': 'one way',
  'both ways': 'both ways',
};
export const LYING_WORDS: Readonly<Record<Lying, string>> = {
  flat: 'flat',
  crease: 'as a crease',
  upright: 'upright',
};
export const DIRECTION_WORDS: Readonly<Record<PullTally['direction'], string>> = {
  'along lines': 'along lines',
  'across layers': 'across layers',
};
export const KNOWN_WORDS = {
  knowsGauge: { true: 'a length of', false: 'a length not known' },
  knowsSpeed: { true: 'at', false: 'at a speed not known' },
} as const;

const quoted = (name: string) => `“${name}”`;
const limits = (label: string, from: string, to: string, unit: string) => `${label} may be ${from} to ${to}${unit}.`;

export const TESTS_SAID = {
  limits,
  hint: (next: string) => `up and down keys step; next ${next}`,
  made: (spool: string, like: string) => `${quoted(spool)} begun from ${like}`,
  first: (what: string, spool: string) => `${what}; ${quoted(spool)} made for it`,
  reckoned: (joints: readonly string[], now: string, was: string) =>
    `${joints.length > 3 ? `${joints.length} joints` : listed(joints.map(quoted))} reckoned by ${now}, ${
      joints.length === 1 ? 'was' : 'were'
    } by ${was}`,
  place: (now: string, was: string) =>
    was === '' ? `Printer: ${now}` : `Printer now ${now || 'not said'}, was ${was}`,
  spool: (now: string, was: string) => (was === '' ? `Spool: ${now}` : `Spool now ${now || 'not said'}, was ${was}`),
} as const;

/** A name for a tested row: “PETG, spool 3”, then “PETG, spool 3 (2)”. */
export function spoolName(base: string, spool: string, taken: readonly string[]): string {
  const stem = `${base}, ${spool || 'my spool'}`;
  const nameOf = (n: number) => (n === 1 ? stem : `${stem} (${n})`);
  let n = 1;
  while (taken.includes(nameOf(n))) n += 1;
  return nameOf(n);
}

/** The next spool after one: “spool 3” → “spool 4”. */
export function nextSpool(spool: string): string {
  const found = /^(.*?)(\d+)$/.exec(spool);
  return found ? `${found[1]}${Number(found[2]) + 1}` : `${spool || 'spool'} 2`;
}

/** A spool in a list beside plain filaments. */
export function spoolOption(name: string, tallies: number): string {
  return `${name} (${tallies === 0 ? 'nothing counted' : tallies === 1 ? 'one tally' : `${tallies} tallies`})`;
}

/** “over R 5”, “to 90° over 12 mm”. */
export function bendText(bend: Bend, unit: LengthUnit): string {
  if (bend.way === 'over') return `over R${NO_BREAK}${setLength(bend.radius, unit, unit === 'mm' ? 0 : 3)}`;
  return `to ${angle(bend.turn)} over ${length(bend.length, unit, unit === 'mm' ? 1 : 3)}`;
}

/** “0.84 over R 5 strains 7.75 %”. */
export function strainText(thickness: Mm, bend: Bend, strain: number, unit: LengthUnit): string {
  return `${setLength(thickness, unit)} ${bendText(bend, unit)} strains ${percent(strain)}`;
}

export const COUNTER = {
  name: (strip: number) => `Counter, strip ${strip}`,
  keys: 'Space counts one bend, B says it broke, S stops with it still whole, Backspace takes one back.',
  this: (strip: number) => `strip ${strip}, this hundred`,
  after: (hundreds: number) => (hundreds === 0 ? 'struck in fives' : `after ${grouped(hundreds)}; struck in fives`),
  bent: 'Bent',
  broke: 'Broke',
  stop: 'Stop, whole',
  back: 'Take one back',
  stands: 'Count so far',
  standsAt: 'It stands at ',
  bends: ' bends.',
  fell: (strip: number, was: number, now: number) =>
    `Strip ${strip} says ${grouped(was)}, then ${grouped(now)}: a count cannot fall.`,
  slip: 'If it was a slip of the pen, remove the strip and put it in again.',
  nothing: 'Bend it once first.',
  told: (strip: number, cycles: number) => `Strip ${strip}: ${grouped(cycles)}`,
} as const;

export const CSV = {
  out: 'Tallies as CSV',
  into: 'Bring in a CSV',
  chooser: 'CSV of tallies to bring in',
  share: 'Filament with its tallies',
  taken: (tallies: number, name: string, to: string) =>
    `${tallies === 1 ? 'One tally' : `${tallies} tallies`} of ${quoted(name)} put with ${quoted(to)}`,
  known: (name: string) => `Every tally of ${quoted(name)} is here already.`,
  refused: (name: string, why: string) => `${quoted(name)} was not taken. ${why}`,
  partly: (name: string, why: string) => `${quoted(name)} was taken but for this. ${why}`,
  andMore: (count: number) => `${count} more like these.`,
  unread: 'The browser could not read it.',
  noReader: 'What reads tables did not come; load the page again.',
  tooLong: (bytes: number, most: number) => `It holds ${bytes} bytes, a tally file at most ${most}.`,
} as const;
