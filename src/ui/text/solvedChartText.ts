/** What the curves of a solved joint say: names, readings, marks on the way, and the tables that stand for the figures. */
import type { Direction } from '../../core/beam/spatialStiffness.ts';
import type { Mm } from '../../core/units.ts';
import { amountText, EFFORT_UNIT, effortText, type Measure } from './amountText.ts';
import { READING_KEYS } from './chartText.ts';
import { effortFigure, grouped, inWords, length, lengthFigure, NO_BREAK, share, type LengthUnit } from './numbers.ts';
import { figure, listed, type Said } from './said.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';

export const SOLVED_NAMES = {
  effort: 'Effort against movement',
  energy: 'Energy against movement',
  sideBySide: 'Effort side by side',
  compass: 'How far the pad gives',
  room: 'Room against movement',
} as const;

export const SOLVED_AIDS = {
  effort: (measure: Measure) => (measure === 'turn' ? 'turning effort' : 'push along the way'),
  marked: 'ball in a cup: it rests there',
  energy: 'hollows are rests',
  sideBySide: 'strain does not change',
  compass: (radius: Mm, unit: LengthUnit) => `mm under 1${NO_BREAK}N, turns at ${length(radius, unit, 1)}`,
  room: 'least clear distance',
} as const;

export const SOLVED_HOW = {
  way: READING_KEYS,
  sideBySide: 'Left and Right change the count that is read, Home and End go to the ends. Escape leaves it.',
  compass: 'Left and Right go round the six directions. Escape leaves them.',
} as const;

export const SOLVED_AXES = {
  sideBySide: 'alike, side by side',
} as const;

export const ENERGY_UNIT = 'N·mm';

function energyText(energy: number): string {
  return `${effortFigure(energy)}${NO_BREAK}${ENERGY_UNIT}`;
}

export type MarkKind = 'rests' | 'balanced' | 'snaps' | 'eases' | 'returns';

/** Beside a mark on effort against movement: “snap load 82.0 N”, “rests, 5.64 mm”. */
export function markText(kind: MarkKind, amount: number, effort: number, measure: Measure, unit: LengthUnit): string {
  const load = effortText(Math.abs(effort), measure);
  if (kind === 'snaps') return `snap load ${load}`;
  if (kind === 'returns') return `return load ${load}`;
  if (kind === 'eases') return `eases to ${load}`;
  return `${kind}, ${amountText(amount, measure, unit)}`;
}

export const UNDER_A_WEIGHT = {
  lands: 'under a weight it jumps across',
  passes: 'under a weight it jumps past the end',
} as const;
export const PULLS_ITSELF = 'below the line it pulls itself on';
export const ONLY_GUIDED = 'dashed: only when guided';
const WEAKER_BY_FORM = 'thin dashes: simple formula';

export function wantedAtMost(effort: number, measure: Measure): string {
  return `wanted: at most ${Number(effort.toPrecision(4))}${NO_BREAK}${EFFORT_UNIT[measure]}`;
}

/** “−35°: −22.1 N·mm, 19.1 to 24.6; only when guided”. */
export function wayReading(
  { amount, typical, low, high, holds }: WayFigures,
  measure: Measure,
  unit: LengthUnit,
  staysBent: boolean,
): string {
  const spread = `${signed(low, typical)} to ${signed(high, typical)}`;
  const head = `${signedAmount(amount, measure, unit)}: ${signed(typical)}${NO_BREAK}${EFFORT_UNIT[measure]}, ${spread}`;
  return [head, ...(holds ? [] : ['only when guided']), ...(staysBent ? ['stays bent'] : [])].join('; ');
}

interface WayFigures {
  readonly amount: number;
  readonly typical: number;
  readonly low: number;
  readonly high: number;
  readonly holds: boolean;
}

function signed(value: number, like = value): string {
  const text = effortFigure(Math.abs(value), Math.abs(like));
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

export function signedAmount(amount: number, measure: Measure, unit: LengthUnit): string {
  return `${amount < 0 ? '−' : ''}${amountText(Math.abs(amount), measure, unit)}`;
}

/** “49.9 N at 2.20 mm”. */
export function nowText(effort: number, amount: number, measure: Measure, unit: LengthUnit): string {
  return `${signed(effort)}${NO_BREAK}${EFFORT_UNIT[measure]} at ${signedAmount(amount, measure, unit)}`;
}

export function energyReading(amount: number, energy: number, measure: Measure, unit: LengthUnit): string {
  return `${signedAmount(amount, measure, unit)}: ${energyText(energy)} kept`;
}

export const ENERGY_WORDS = {
  hill: (energy: number) => `hill ${effortFigure(energy)}`,
  kept: (energy: number) => `kept ${effortFigure(energy)}`,
  comeBack: (energy: number) => `${effortFigure(energy)} to come back`,
} as const;

/** “6 side by side: 15.6 N, within the 20 N wanted”. */
export function sideReading(count: number, effort: number, atMost: number, measure: Measure): string {
  const kept = effort <= atMost ? 'within' : 'over';
  const wanted = `${Number(atMost.toPrecision(4))}${NO_BREAK}${EFFORT_UNIT[measure]}`;
  return `${count} side by side: ${effortText(effort, measure)}, ${kept} the ${wanted} wanted`;
}

export function sideNow(count: number, effort: number, measure: Measure): string {
  return `now ${count}, ${effortText(effort, measure)}`;
}

export function sideNote(keeps: number, most: number): string {
  if (keeps === 0) return 'Even one pushes harder than is wanted.';
  return keeps === most
    ? `Up to ${inWords(most)} keep to what is wanted, as far as the figure goes.`
    : `Up to ${inWords(keeps)} ${keeps === 1 ? 'keeps' : 'keep'} to what is wanted.`;
}

const DIRECTION_WORDS: Readonly<Record<Direction, string>> = {
  x: 'along x',
  y: 'along y',
  z: 'out of the plane',
  turnX: 'tilt about x',
  turnY: 'tilt about y',
  turnZ: 'turn in the plane',
};

export function directionText(direction: Direction): string {
  return DIRECTION_WORDS[direction];
}

/** A give under one newton, to two figures: “1.5 mm”; nothing moves without resistance for ever. */
export function giveText(give: number): string {
  return Number.isFinite(give) ? `${twoFigures(give)}${NO_BREAK}mm` : 'freely';
}

function twoFigures(value: number): string {
  if (value < 0.001) return 'under 0.001';
  return value >= 10 ? String(Math.round(value)) : String(Number(value.toPrecision(2)));
}

/** In the direction's own unit: “0.98 N/mm”, “86.5 N·mm/rad”. */
export function stiffnessText(stiffness: number, direction: Direction): string {
  const unit = direction.startsWith('turn') ? 'N·mm/rad' : 'N/mm';
  return `${threeFigures(stiffness)}${NO_BREAK}${unit}`;
}

function threeFigures(value: number): string {
  if (value === 0) return '0';
  const shown = Number(value.toPrecision(3));
  return shown >= 1000 ? grouped(shown) : String(shown);
}

export function compassReading(direction: Direction, give: number, stiffness: number): string {
  const how = Number.isFinite(give) ? `gives ${giveText(give)}` : 'gives freely';
  return `${directionText(direction)}: ${how}, ${stiffnessText(stiffness, direction)}`;
}

interface SoftAndStiff {
  readonly soft: { readonly direction: Direction; readonly give: number };
  readonly stiff: { readonly direction: Direction; readonly give: number };
  readonly ratio: number;
  readonly apart: number;
}

/** “Softest: turn in the plane, 4.0 mm. Stiffest: along x, 1.1 mm, 3.6 times less. …”. */
export function softStiffSaid({ soft, stiff, ratio, apart }: SoftAndStiff, mark: ProvenanceKind): Said {
  const named = (one: SoftAndStiff['soft']) => `${directionText(one.direction)}, ${giveText(one.give)}`;
  if (!Number.isFinite(ratio)) return [`It gives freely: ${directionText(soft.direction)}. Stiffest: ${named(stiff)}.`];
  const next = apart < 1.05 ? 'The next softest gives as much.' : `The next softest gives ${times(apart)} times less.`;
  return [
    `Softest: ${named(soft)}. Stiffest: ${named(stiff)}, `,
    figure(`${times(ratio)} times`, mark),
    ` less. ${next}`,
  ];
}

function times(ratio: number): string {
  const shown = Number(ratio.toPrecision(2));
  return shown >= 1000 ? grouped(shown) : String(shown);
}

export const TWIST_NOTE =
  'Small movements; twist as of a plain rectangle free at its ends, so short strips are stiffer.';
export const STILL_SOLVING = 'More figures come with the solver’s answer.';
export const NO_LENGTHS =
  'Strain against length is left out: no simple formula of this kind carries the strain to other lengths.';

/** “0.26 mm at −35°”. */
export function roomReading(amount: number, gap: Mm | undefined, measure: Measure, unit: LengthUnit): string {
  const at = signedAmount(amount, measure, unit);
  if (gap === undefined) return `${at}: nothing faces anything`;
  return gap > 0 ? `${at}: ${length(gap, unit)} apart` : `${at}: it touches`;
}

export function oneLine(width: Mm, unit: LengthUnit): string {
  return `one line, ${lengthFigure(width, unit)}`;
}

export const TOUCHES = 'touches';

/** Said of the whole way: how near it comes, or from where on it touches, nearest first. */
export function roomNote(least: Mm, touchesPast: readonly number[], measure: Measure, unit: LengthUnit): string {
  if (touchesPast.length === 0) return `Never less than ${length(least, unit)} apart on the whole way.`;
  const from = listed(touchesPast.map((amount) => signedAmount(amount, measure, unit)));
  return `It touches past ${from}; what it pushes back there is not known.`;
}

/** How far off the simple formula is at the wanted amount. */
export function formNote(byForm: number | undefined, solved: number, amount: string): string {
  if (byForm === undefined) return '';
  const off = byForm / solved - 1;
  if (!Number.isFinite(off) || Math.abs(off) > 1) return `${sentenceCase(WEAKER_BY_FORM)}, an estimate.`;
  if (Math.abs(off) < 0.005) return `${sentenceCase(WEAKER_BY_FORM)}, right at ${amount}.`;
  return `${sentenceCase(WEAKER_BY_FORM)}, ${share(Math.abs(off))} too ${off < 0 ? 'soft' : 'stiff'} at ${amount}.`;
}

function sentenceCase(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

export const EFFORT_NOTE = 'Followed state by state; shaded: low to high modulus.';
export const ENERGY_NOTE = 'Kept in what bends, for the usual modulus, as if nothing stayed bent.';
export const RISE_NOTE = 'Efforts add up.';

export const solvedTables = {
  effort: 'Effort by movement; the wanted movement first, then what is marked on the way',
  effortHeads: (measure: Measure) => [
    measure === 'turn' ? 'bent by' : 'moved by',
    'typical',
    'low modulus',
    'high modulus',
    'holds',
  ],
  holds: (holds: boolean) => (holds ? 'under a weight' : 'only when guided'),
  energy: 'Energy by movement; rests and hills first',
  energyHeads: ['at', 'energy'],
  energyCell: energyText,
  sideBySide: 'Effort by count',
  sideHeads: ['side by side', 'effort', 'wanted'],
  compass: 'How the moving pad gives, softest first',
  compassHeads: ['direction', 'gives under 1 N', 'stiffness'],
  room: 'Least clear distance by movement',
  roomHeads: ['at', 'apart'],
  within: (kept: boolean) => (kept ? 'within' : 'over'),
} as const;
