/** What small changes of a joint do, in words and figures. */
import type { Moved, NudgeFigure } from '../../core/design/nudgeFigures.ts';
import type { Nudge, NudgeOf } from '../../core/design/nudges.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { amountText, effortText, setAmount, type Measure } from './amountText.ts';
import { AMOUNT_LABELS, LABELS } from './briefText.ts';
import { kindText } from './kindText.ts';
import { inHundred, MINUS, NO_BREAK, percent, setLength, share, unitAfter, type LengthUnit } from './numbers.ts';

export const NUDGES_HEAD = 'What a little more does';
export const NUDGES_AID = 'one thing at a time, the rest as it is';
export const NUDGE_HEADS = { change: 'change', verdict: 'verdict' } as const;
export const FIGURE_HEADS: Readonly<Record<NudgeFigure, string>> = {
  strain: 'strain',
  chance: 'in 100 reach',
  effort: 'effort',
  set: 'stays bent',
};
export const AS_IT_IS = 'As it is';
export const IN_ANOTHER = 'In another filament';
export const NUDGES_SAY =
  'Under each figure, by how much it changes: strain and effort in per cent, the others by so many. The largest change of each column is heavy.';
/** After a change that is heavy to the eye. */
export const LARGEST = ', the largest change';
/** Changed by less than is shown. */
export const SAME = 'same';

/** Names of the sizes by the role that they play. */
function sizeName({ after }: Nudge, role: 'length' | 'fillet' | 'depth' | 'sideBySide'): string {
  const { sizes } = kindText(after.family);
  return sizes[familyOf(after).roles[role] ?? ''] ?? role;
}

const more = (by: number) => (by > 0 ? 'more' : 'less');

/** “Leaf length 0.1 mm more”. */
function byLength(name: string, by: number, unit: LengthUnit): string {
  return `${name} ${setLength(Math.abs(by), unit, unit === 'mm' ? 1 : 3)}${unitAfter(unit)} ${more(by)}`;
}

type Named = (nudge: Nudge, unit: LengthUnit, measure: Measure) => string;

const NAMES: Readonly<Record<NudgeOf, Named>> = {
  count: ({ by, after }) => `One ${kindText(after.family).unitOfCount} ${by > 0 ? 'more' : 'fewer'}`,
  thickness: ({ by }, unit) => byLength('Thickness', by, unit),
  length: (nudge, unit) => byLength(sizeName(nudge, 'length'), nudge.by, unit),
  lineWidth: ({ by }, unit) => byLength(LABELS.lineWidth, by, unit),
  fillet: (nudge, unit) => byLength(sizeName(nudge, 'fillet'), nudge.by, unit),
  depth: (nudge, unit) => byLength(sizeName(nudge, 'depth'), nudge.by, unit),
  amount: ({ by }, unit, measure) => `${AMOUNT_LABELS[measure]} ${setAmount(Math.abs(by), measure, unit)} ${more(by)}`,
  sideBySide: (nudge) => `${sizeName(nudge, 'sideBySide')}, one more`,
  filament: ({ after }) => findFilament(after.profile.filament)?.name ?? after.profile.filament,
};

/** What is changed: “One line more”, “Angle 1° less”, “PLA”. */
export function nudgeName(nudge: Nudge, unit: LengthUnit, measure: Measure): string {
  return NAMES[nudge.of](nudge, unit, measure);
}

/** What cannot be said: a chance past what anybody has counted. */
const NOT_COUNTED = 'not counted';

/** A figure of a joint: “2.14 %”, “87”, “28.5 N·mm”, “1.2°”. */
export function figureText(figure: NudgeFigure, moved: Moved | undefined, measure: Measure, unit: LengthUnit): string {
  if (moved === undefined) return NOT_COUNTED;
  const { now } = moved;
  if (figure === 'strain') return percent(now);
  if (figure === 'chance') return inHundred(now);
  if (figure === 'effort') return effortText(now, measure);
  return isNothing(now, measure) ? 'nothing' : amountText(now, measure, unit);
}

/** Under a twentieth of a degree, or half a hundredth of a millimetre, nothing is shown. */
function isNothing(amount: number, measure: Measure): boolean {
  return Math.abs(amount) < (measure === 'turn' ? 0.05 * (Math.PI / 180) : 0.005);
}

/** “+34 %”, “−4.2 %”; empty where it rounds to nothing. */
function byPercent(by: number): string {
  const size = Math.abs(by) * 100;
  const shown = size.toFixed(size >= 10 ? 0 : 1);
  return Number(shown) === 0 ? '' : `${sign(by)}${shown}${NO_BREAK}%`;
}

const sign = (by: number) => (by > 0 ? '+' : MINUS);

/** By how much a figure has changed; `SAME` where that is less than is shown. */
export function changeText(figure: NudgeFigure, moved: Moved | undefined, measure: Measure, unit: LengthUnit): string {
  const by = moved?.by;
  if (by === undefined) return '';
  return CHANGES[figure](by, measure, unit) || SAME;
}

const CHANGES: Readonly<Record<NudgeFigure, (by: number, measure: Measure, unit: LengthUnit) => string>> = {
  strain: byPercent,
  effort: byPercent,
  chance: (by) => (Math.abs(by) < 0.005 ? '' : `${sign(by)}${Math.round(Math.abs(by) * 100)}`),
  set: (by, measure, unit) => (isNothing(by, measure) ? '' : `${sign(by)}${amountText(Math.abs(by), measure, unit)}`),
};

/** Until the figures have come: how far it is. */
export function nudgingText(done: number | undefined): string {
  return `Working out what small changes do…${done === undefined ? '' : ` ${share(done)}`}`;
}

/** For readers of the page by ear, once the figures have come. */
export function nudgedText(count: number): string {
  return `${count} small changes worked out`;
}
