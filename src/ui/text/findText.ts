/** Words of “Find a joint”: its brief, what may be tried, and its search. What is found is in `foundText.ts`. */
import type { Movement, Surroundings } from '../../core/design/joint.ts';
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import type { Problem } from '../../core/problems.ts';
import { EFFORT_UNIT, setAmount, type Measure } from './amountText.ts';
import { spanText } from './countText.ts';
import { grouped, NO_BREAK, setLength, unitAfter, type LengthUnit } from './numbers.ts';
import { problemText } from './problemText.ts';
import { listed } from './said.ts';
import { CHOOSE } from './shellText.ts';
import { AIR_SAID, CELSIUS, swingAndCycles } from './useText.ts';

export const FIND = {
  name: CHOOSE.find,
  back: 'Back',
  begins: { turn: 'Find a joint that bends', travel: 'Find a joint that moves' } satisfies Record<Measure, string>,
} as const;

export function findFor(about: string): string {
  return about === '' ? FIND.name : `${FIND.name}, as for “${about}”`;
}

export function takeBackText(about: string): string {
  return about === '' ? 'Take back the earlier brief' : `Take back the brief for “${about}”`;
}

/* ---- the brief ---- */

export const WANTED_LABELS = {
  amount: { turn: 'Angle', travel: 'Travel' },
  least: 'How far it comes back',
  ways: 'One way or both ways',
  cycles: 'Number of flexes',
  chance: 'Share that should get there',
  along: 'Room along it',
  across: 'Room across it',
  depth: 'Depth of the room',
  depthAtLeast: 'Depth at least',
  effort: 'Wish for the effort',
  effortAtMost: 'Effort at most',
  effortAtLeast: 'Effort at least',
  set: 'Wish for what stays bent',
  setAtMost: 'What may stay bent',
  stays: 'Whether it should stay',
  supports: 'With or without supports',
  lineWidth: 'Line width',
  layerHeight: 'Layer height',
} as const;

export const WANTED_HINTS = {
  amount: (step: string) => `how far it is moved; up and down keys step ${step}`,
  least: (step: string) => `under 0 to the other side, over 0 it never comes to rest; up and down keys step ${step}`,
  cycles: () => 'flexes in its life; up and down keys step it',
  along: (step: string) => `with its fillets, without the pads at its ends; up and down keys step ${step}`,
  across: (step: string) => `in the plane that it bends in; up and down keys step ${step}`,
  depth: (step: string) => `out of the plane that it bends in; up and down keys step ${step}`,
  depthAtLeast: (step: string) => `shallower ones are not tried; up and down keys step ${step}`,
  effortAtMost: () => 'the hardest push on the way; up and down keys step it',
  effortAtLeast: () => 'what it must push back with; up and down keys step it',
  setAtMost: (step: string) => `after one flex; up and down keys step ${step}`,
  lineWidth: (step: string) => `the line width that is set; up and down keys step ${step}`,
  layerHeight: (step: string) => `up and down keys step ${step}`,
} as const;

export const EFFORT_WISH = {
  any: 'with any effort',
  most: 'with at most',
  least: 'with at least',
  between: 'between',
} as const;
export const SET_WISH = { any: 'does not matter', most: 'is at most' } as const;
export const SUPPORTS = { without: 'without', with: 'with' } as const;

/** What the brief carries along from its joint and does not ask. */
export function carriedText({ movement, measure, surroundings }: Wanted, unit: LengthUnit): string {
  const said = [
    ...(movement.also ?? []).map((swing) => `it also goes ${swingAndCycles(swing, measure, unit)}`),
    ...heldText(movement),
    ...usedText(surroundings),
  ];
  return said.length === 0 ? '' : `Carried along from the joint: ${listed(said)}.`;
}

function heldText({ held, heldHours }: Movement): readonly string[] {
  return held ? [`it is held bent for ${spanText(heldHours ?? 24)} at a time`] : [];
}

function usedText(surroundings: Surroundings | undefined): readonly string[] {
  if (!surroundings) return [];
  return [`it is used at ${surroundings.temperatureC}${CELSIUS} at most in ${AIR_SAID[surroundings.moisture]}`];
}

const LENGTH_FIELDS: Readonly<Record<string, string>> = {
  'room.along': WANTED_LABELS.along,
  'room.across': WANTED_LABELS.across,
  'room.depth': WANTED_LABELS.depth,
  depthAtLeast: WANTED_LABELS.depthAtLeast,
};

/** What is wrong with a brief, in the chosen unit. */
export function wantedProblem(problem: Problem, measure: Measure, unit: LengthUnit): string {
  const { field = '', code, value, limit } = problem;
  const bounds = { 'above-maximum': 'over', 'below-minimum': 'under' } as const;
  if (
    (code === 'above-maximum' || code === 'below-minimum') &&
    typeof value === 'number' &&
    typeof limit === 'number'
  ) {
    const said = (name: string, say: (shown: number) => string) =>
      `${name} cannot be ${bounds[code]} ${say(limit)}; ${say(value)} is.`;
    if (LENGTH_FIELDS[field]) return said(LENGTH_FIELDS[field], (shown) => sizeSet(shown, unit));
    if (field === 'effortAtLeast') return said(WANTED_LABELS.effortAtLeast, (shown) => effortSet(shown, measure));
    if (field === 'setAtMost') return said(WANTED_LABELS.setAtMost, (shown) => setAmount(shown, measure, unit));
    if (field === 'movement.amount' || field === 'movement.least') {
      const name = field === 'movement.least' ? WANTED_LABELS.least : WANTED_LABELS.amount[measure];
      return said(name, (shown) => setAmount(shown, measure, unit));
    }
  }
  return problemText(problem, unit);
}

/** A size that somebody set, without idle decimals: “20 mm”. */
export function sizeSet(value: number, unit: LengthUnit): string {
  return `${setLength(value, unit, unit === 'mm' ? 0 : 2)}${unitAfter(unit)}`;
}

/** An effort that somebody set: “40 N·mm”. */
export function effortSet(value: number, measure: Measure): string {
  return `${Number(value.toPrecision(3))}${NO_BREAK}${EFFORT_UNIT[measure]}`;
}

/* ---- what may be tried ---- */

export const TICKS = {
  head: 'What may be tried',
  families: 'Kinds',
  filaments: 'Filaments',
  lyings: 'How it lies in the print',
  all: 'All',
  none: 'None',
} as const;

export const LYING_TICKS = {
  flat: 'flat, lines run along it',
  crease: 'as a crease, thin in the build direction',
  upright: 'upright, layers stack along it',
} as const;

const LYING_SHORT = { flat: 'flat', crease: 'as a crease', upright: 'upright' } as const;

function howMany(ticked: number, all: number, one: string): string {
  if (ticked === all) return `any ${one}`;
  return ticked === 1 ? `1 ${one}` : `${ticked} of ${all} ${one}s`;
}

/** What is ticked, in a line: “any kind, 4 of 9 filaments, flat or as a crease”. */
export function tickedText(
  { families, filaments, lyings }: Wanted,
  all: { families: number; filaments: number },
): string {
  const lying = listed(
    lyings.map((one) => LYING_SHORT[one]),
    'or',
  );
  const kinds = howMany(families.length, all.families, 'kind');
  return `${kinds}, ${howMany(filaments.length, all.filaments, 'filament')}, ${lying === '' ? 'lying in no way' : lying}`;
}

/** Kinds that are not moved so, after the others. */
export function cannotText(names: readonly string[], measure: Measure): string {
  if (names.length === 0) return '';
  return `Not ${measure === 'turn' ? 'turned by an angle' : 'moved by a travel'}: ${listed(names)}.`;
}

export function evidenceLabel(filament: string, says: string): string {
  return `Life of ${filament}: ${says}; its record`;
}

/* ---- the search ---- */

export const SEARCH = {
  trying: 'Trying kinds, sizes and filaments',
  solving: 'All tried; solving the most promising',
  stop: 'Stop and keep these',
  again: 'Go on',
  waits: 'Waits for a brief that can be searched for.',
} as const;

export function countText({ tried, total }: Pick<FindAnswer, 'tried' | 'total'>): string {
  return `${grouped(tried)} of ${grouped(total)}`;
}

export function soFarText({ meets }: Pick<FindAnswer, 'meets'>, secondsLeft: number | undefined): string {
  const left = secondsLeft === undefined ? '' : `; about ${Math.max(1, Math.round(secondsLeft))}${NO_BREAK}s left`;
  return `${grouped(meets)} meet the brief so far${left}`;
}

export function stoppedText(answer: Pick<FindAnswer, 'tried' | 'total'>): string {
  return `Stopped at ${countText(answer)}`;
}

/** After the last: “Tried 2 460; 310 of them cannot be made, 137 meet the brief”. */
export function doneText({ tried, impossible, meets }: Pick<FindAnswer, 'tried' | 'impossible' | 'meets'>): string {
  const made = impossible === 0 ? '' : `${grouped(impossible)} of them cannot be made, `;
  return `Tried ${grouped(tried)}; ${made}${meets === 0 ? 'none meets' : `${grouped(meets)} meet`} the brief`;
}

export function searchBroke(why: string): string {
  return `The search broke off: ${why}.`;
}
