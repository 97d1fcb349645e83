/** Words of “In use”: where a joint is used, how long it is held, and the smaller movements beside its own. */
import { leastOf, type Swing } from '../../core/design/joint.ts';
import { setAmount, type Measure } from './amountText.ts';
import { backAsFar, waysText } from './briefText.ts';
import { grouped, inWords, NO_BREAK, type LengthUnit } from './numbers.ts';

export const IN_USE = 'In use';
export const IN_USE_AID = 'what else its life depends on';

export const AIR = { damp: 'damp', dry: 'dry' } as const;
export const AIR_SAID = { damp: 'damp air', dry: 'dry air' } as const;

export const USE_LABELS = {
  temperature: 'Warmest that it gets in use',
  moisture: 'Damp or dry air',
  hours: 'Hours held bent at a time',
} as const;

export const USE_HINTS = {
  temperature: 'in degrees Celsius; up and down keys step 1, with Shift 10',
  hours: 'in hours, a month is 24*30; up and down keys step it',
} as const;

export const CELSIUS = `${NO_BREAK}°C`;

export const USE_SAID = {
  temperature: (now: string, was: string) => `Used at ${now} at most, was ${was}`,
  moisture: (now: string, was: string) => `Used in ${now}, was ${was}`,
  hours: (now: string, was: string) => `Held bent for ${now} at a time, was ${was}`,
} as const;

const DAY = 24;

/** After the hours of a long hold: “, 30 days,”. */
export function inDays(hours: number): string {
  if (hours < 2 * DAY) return '';
  const days = Number((hours / DAY).toPrecision(3));
  return `, ${grouped(days)} days,`;
}

/** “10° one way”, “4 mm and back as far as 1 mm”. */
export function swingText(swing: Swing, measure: Measure, unit: LengthUnit): string {
  const amount = setAmount(swing.amount, measure, unit);
  if (swing.ways !== 'between') return `${amount} ${waysText(swing.ways)}`;
  return `${amount} and ${backAsFar(setAmount(leastOf(swing), measure, unit))}`;
}

/** “10° one way, 100 000 times”. */
export function swingAndCycles(swing: Swing, measure: Measure, unit: LengthUnit): string {
  return `${swingText(swing, measure, unit)}, ${timesText(swing.cycles)}`;
}

export function timesText(cycles: number): string {
  return cycles === 1 ? 'once' : `${grouped(cycles)} times`;
}

type SwingField = 'amount' | 'least' | 'ways' | 'cycles';

/** The joint’s own movement is the first. */
function swingName(at: number): string {
  return `Movement ${at + 2}`;
}

const CHANGED: Readonly<Record<SwingField, (now: string, was: string) => string>> = {
  amount: (now, was) => `made ${now}, was ${was}`,
  least: (now, was) => `made to come ${backAsFar(now)}, was ${was}`,
  ways: (now, was) => `made ${now}, was ${was}`,
  cycles: (now, was) => `made ${now} times, was ${was}`,
};

/** What is said of a changed movement: “Movement 2 made 10°, was 12”. */
export function swingSaid(at: number, field: SwingField, now: string, was: string): string {
  return `${swingName(at)} ${CHANGED[field](now, was)}`;
}

const LABELS: Readonly<Record<SwingField, (name: string) => string>> = {
  amount: (name) => `How far ${name} goes`,
  least: (name) => `How far ${name} comes back`,
  ways: (name) => `Which way ${name} goes`,
  cycles: (name) => `Number of flexes of ${name}`,
};

/** “How far movement 2 goes”. */
export function swingLabel(at: number, field: SwingField): string {
  return LABELS[field](swingName(at).toLowerCase());
}

export const SWING_HINTS: Readonly<Record<'amount' | 'least' | 'cycles', (step: string) => string>> = {
  amount: (step) => `no farther than the joint’s own movement; up and down keys step ${step}`,
  least: (step) => `no farther to the other side than the joint’s own; up and down keys step ${step}`,
  cycles: () => 'flexes in its life; up and down keys step it',
};

export const MOVES: Readonly<Record<Measure, string>> = { turn: 'it bends', travel: 'it moves' };

export const ADD_SWING = 'Add another movement';
export const REMOVE_SWING = 'Remove';
export function removeLabel(at: number): string {
  return `Remove ${swingName(at).toLowerCase()}`;
}
export function enough(most: number): string {
  return `A joint has at most ${inWords(most)} movements beside its own.`;
}
export function addedSaid(swing: Swing, measure: Measure, unit: LengthUnit): string {
  return `Movement added: ${swingAndCycles(swing, measure, unit)}`;
}
export function removedSaid(swing: Swing, measure: Measure, unit: LengthUnit): string {
  return `Movement removed, was ${swingAndCycles(swing, measure, unit)}`;
}
