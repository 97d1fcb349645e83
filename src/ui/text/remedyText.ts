/** Ways out in words: what to do, what was done, what comes of it and what it costs. */
import type { Assessment, VerdictReason } from '../../core/design/assessment.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { asRad } from '../../core/units.ts';
import type { Remedy, RemedyKind, Spare } from '../../core/design/remedy.ts';
import { amountText, amountWithin, EFFORT_UNIT, effortText, setAmount, type Measure } from './amountText.ts';
import { kindText, lyingText } from './kindText.ts';
import { sizeOf } from './kinds/kind.ts';
import {
  angle,
  cycles,
  grouped,
  inHundred,
  inWords,
  length,
  NO_BREAK,
  setLength,
  share,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import { listed } from './said.ts';
import { gradeWord } from './verdictText.ts';

interface Change {
  readonly before: Assessment;
  readonly after: Assessment;
  readonly unit: LengthUnit;
  readonly scale: number | undefined;
  readonly size: string | undefined;
}

const countOf = (a: Assessment, words = false) =>
  `${words ? inWords(a.fit.nearest) : a.fit.nearest} ${a.section.countOf.slice(0, a.fit.nearest === 1 ? -1 : undefined)}`;
const thick = (a: Assessment, unit: LengthUnit) => `${setLength(a.section.thickness, unit)}${unitAfter(unit)}`;
const width = (a: Assessment, unit: LengthUnit) => `${setLength(a.joint.profile.lineWidth, unit)}${unitAfter(unit)}`;
const long = (a: Assessment, unit: LengthUnit) => `${setLength(a.length, unit)}${unitAfter(unit)}`;
const moves = (a: Assessment, unit: LengthUnit) => setAmount(a.joint.movement.amount, a.drive.measure, unit);
const pieces = (a: Assessment) => (a.inRow === 1 ? kindText(a.joint.family).piece : kindText(a.joint.family).pieces);
const piece = (a: Assessment) => kindText(a.joint.family).piece;
const room = (a: Assessment) => kindText(a.joint.family).room;
const perCent = (scale: number | undefined) => share(scale ?? 1);

const countTitle = ({ before, after }: Change) =>
  `Use ${countOf(after, true)} instead of ${inWords(before.fit.nearest)}`;
const countDone = ({ before, after }: Change) =>
  `Made ${countOf(after)} ${after.section.countOf === 'lines' ? 'across' : 'through'}, was ${before.fit.nearest}`;

/** A size that was changed: what it is, by its own name, and its values in words. */
function sized({ before, after, unit, size = '' }: Change) {
  const { sizes, choices } = kindText(before.joint.family);
  // A choice as it stands in the middle of a brief may end with a comma.
  const chosen = (value: number) => choices?.[size]?.[value]?.replace(/,$/, '');
  const { kind } = familyOf(before.joint).parameters[size] ?? {};
  const [was, is] = [before, after].map(({ joint }) => sizeOf(joint.sizes, size)) as [number, number];
  const said = (value: number): string => {
    if (kind === 'length') return `${setLength(value, unit)}${unitAfter(unit)}`;
    return kind === 'angle' ? angle(asRad(value)) : String(Number(value.toFixed(3)));
  };
  const [name = '', ...rest] = (sizes[size] ?? size).split(/(?=,)/);
  return { kind, was, is, said, name: small(name), rest: rest.join(''), choice: chosen(is), chosen: chosen(was) };
}

/** “Make the rise 4.50 mm”, “Make it 4.00 mm from run to run”, “Use seven runs”, “Make it a double arch”. */
function sizeTitle(change: Change): string {
  const { kind, was, is, said, name, rest, choice } = sized(change);
  if (choice) return `Make it ${choice}`;
  if (kind === 'count') return `Use ${inWords(is)} ${is === 1 ? `instead of ${inWords(was)} ` : ''}${name}`;
  if (name.startsWith('from ')) return `Make it ${said(is)} ${name}`;
  return `Make the ${name} ${said(is)}${rest}`;
}

/** “Rise made 4.50 mm, was 3.00 mm”. */
function sizeDone(change: Change): string {
  const { kind, was, is, said, name, choice, chosen } = sized(change);
  if (choice) return `Made ${choice}, was ${chosen}`;
  if (kind === 'count') return `Made ${is} ${name}, was ${was}`;
  return `${capital(name)} made ${said(is)}, was ${said(was)}`;
}

/** “1.50 mm more”, “two fewer”. */
function sizeCost(change: Change): string {
  const { kind, was, is, said, choice } = sized(change);
  if (choice) return 'drawing it anew';
  const [by, more] = [Math.abs(is - was), is > was];
  return kind === 'count' ? `${inWords(by)} ${more ? 'more' : 'fewer'}` : `${said(by)} ${more ? 'more' : 'less'}`;
}

/** What to do, in the imperative. */
const TITLES: Readonly<Record<RemedyKind, (change: Change) => string>> = {
  lengthen: ({ after, unit }) => `Make the ${room(after).thing} ${long(after, unit)} ${room(after).is}`,
  'fewer lines': countTitle,
  'more lines': countTitle,
  'line width': ({ before, after, unit }) =>
    before.joint.measuredThickness === undefined
      ? `Set ${width(after, unit)} lines`
      : `Set ${width(after, unit)} lines, so that ${inWords(after.fit.nearest)} ${after.fit.nearest === 1 ? 'fits' : 'fit'}`,
  'share the angle': ({ after }) => `Put ${inWords(after.inRow)} ${pieces(after)} in a row`,
  'larger fillet': ({ after, unit }) => `Fillet the roots ${length(after.fillet, unit)}`,
  'other size': sizeTitle,
  'other filament': ({ after }) => `Print it in ${after.filament.name}`,
  'turn the part': ({ after }) => `Print it ${lyingText(after.joint.family, after.joint.profile.lying)}`,
  'stop earlier': ({ after, unit }) => `Stop it at ${moves(after, unit)}`,
  'scale the part': ({ after, scale }) => `Scale the part to ${perCent(scale)}, for ${countOf(after, true)}`,
  'draw whole lines': ({ after, unit }) => `Redraw it ${countOf(after, true)} thick, ${thick(after, unit)}`,
};

/** What was done, in the past tense with the old value. */
const DONE: Readonly<Record<RemedyKind, (change: Change) => string>> = {
  lengthen: ({ before, after, unit }) =>
    `${capital(room(after).thing)} made ${long(after, unit)} ${room(after).is}, was ${setLength(before.length, unit)}`,
  'fewer lines': countDone,
  'more lines': countDone,
  'line width': ({ before, after, unit }) =>
    `Lines set to ${width(after, unit)}, were ${setLength(before.joint.profile.lineWidth, unit)}`,
  'share the angle': ({ before, after }) => `${after.inRow} ${pieces(after)} put in a row, was ${before.inRow}`,
  'larger fillet': ({ before, after, unit }) =>
    `Roots filleted ${length(after.fillet, unit)}, were ${setLength(before.fillet, unit)}`,
  'other size': sizeDone,
  'other filament': ({ before, after }) => `Filament made ${after.filament.name}, was ${before.filament.name}`,
  'turn the part': ({ before, after }) =>
    `Printed ${lyingText(after.joint.family, after.joint.profile.lying)}, was ${lyingText(before.joint.family, before.joint.profile.lying)}`,
  'stop earlier': ({ before, after, unit }) => `Stopped at ${moves(after, unit)}, was ${moves(before, unit)}`,
  'scale the part': ({ scale }) => `Part scaled to ${perCent(scale)}, was ${perCent(1)}`,
  'draw whole lines': ({ before, after, unit }) =>
    `Redrawn ${countOf(after)} thick, was ${setLength(before.section.thickness, unit)}${unitAfter(unit)}`,
};

/** What printing a filament asks for (common practice, no source). */
const TO_PRINT: Readonly<Record<string, string>> = {
  pla: 'a part that softens in a warm car',
  petg: 'some stringing',
  abs: 'an enclosure against warping, and fumes to let out',
  asa: 'an enclosure against warping, and fumes to let out',
  pa6: 'a spool to dry well, warping, and softening as it takes up water',
  pa12: 'a spool to dry',
  pp: 'a plate it sticks to, and warping',
  tpu95a: 'a spool to dry, slow printing, and sagging under a load that stays on',
  pc: 'a spool to dry, a hot nozzle and an enclosure',
};

/** What the change itself costs, without what it does to the feel. */
const COSTS: Readonly<Record<RemedyKind, (change: Change) => string>> = {
  lengthen: ({ before, after, unit }) => {
    const { times = 1, instead } = room(after);
    const grown = times * after.inRow * (after.length - before.length);
    return instead ?? `${setLength(grown, unit)}${unitAfter(unit)} more room`;
  },
  'fewer lines': ({ after }) => (after.fit.nearest === 1 ? singleCost(after) : ''),
  'more lines': () => '',
  'line width': ({ before, after }) =>
    after.joint.profile.lineWidth < before.joint.profile.lineWidth
      ? 'a line laid less surely'
      : 'a line laid more slowly',
  'share the angle': ({ before, after }) => {
    const more = after.inRow - before.inRow;
    return `room for ${inWords(more)} more ${more === 1 ? piece(after) : kindText(after.joint.family).pieces}, with a ${kindText(after.joint.family).padName.toLowerCase()} between`;
  },
  'larger fillet': ({ before, after, unit }) => `${length(after.fillet - before.fillet, unit)} more at each root`,
  'other size': sizeCost,
  'other filament': ({ after }) => TO_PRINT[after.filament.id] ?? 'another spool',
  'turn the part': () => 'support under the part, perhaps',
  'stop earlier': ({ before, after, unit }) => {
    const less = before.joint.movement.amount - after.joint.movement.amount;
    return `${amountText(less, before.drive.measure, unit)} less travel, and a stop on the pad`;
  },
  'scale the part': () => 'a new size for whatever it fits',
  'draw whole lines': () => 'drawing the thin section anew',
};

function singleCost(after: Assessment): string {
  return after.section.countOf === 'lines'
    ? 'a line that tears easily from the side'
    : 'a layer with none to bridge its gaps';
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function small(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** How the feel changes: “20 % softer”, “8 times stiffer”; empty when it hardly does. */
function feelText({ before, after }: Change): string {
  const ratio = after.effort.stiffness / before.effort.stiffness;
  if (Math.abs(ratio - 1) < 0.02) return '';
  const word = ratio < 1 ? 'softer' : 'stiffer';
  const times = ratio < 1 ? 1 / ratio : ratio;
  return times >= 2 ? `${Number(times.toFixed(1))}${NO_BREAK}times ${word}` : `${share(Math.abs(ratio - 1))} ${word}`;
}

function changeOf(before: Assessment, remedy: Remedy, unit: LengthUnit): Change {
  return { before, after: remedy.assessment, unit, scale: remedy.scale, size: remedy.size };
}

function joined(parts: readonly string[]): string {
  const [first = '', ...others] = parts;
  return listed([first, ...others.map(small)]);
}

/** “Print it in PA12 and stop it at 28°”. */
export function remedyTitle(before: Assessment, remedy: Remedy, unit: LengthUnit): string {
  return joined(remedy.kinds.map((kind) => TITLES[kind](changeOf(before, remedy, unit))));
}

/** “Leaf made 15.00 mm long, was 12.00”. */
export function remedyDone(before: Assessment, remedy: Remedy, unit: LengthUnit): string {
  return remedy.kinds
    .map((kind) => DONE[kind](changeOf(before, remedy, unit)))
    .map((said, at) => (at === 0 ? said : small(said)))
    .join('; ');
}

/** How long it lasts after the change; no chance is given past where counting stops. */
function lastingText({ life, joint: { movement } }: Assessment): string {
  if (life.breaksOnFirstFlex) return 'the first flex breaks it';
  if (life.beyond !== 'wanted') return `${inHundred(life.chance)} in 100 reach ${grouped(movement.cycles)}`;
  const counted = grouped(life.maxReportableCycles);
  return life.median > life.maxReportableCycles
    ? `half last past ${counted}, where counting stops`
    : `half break by ${cycles(life.median)}`;
}

/** What is put right, where that was what was wrong and neither life nor effort tells it. */
const MOVES: Partial<Readonly<Record<VerdictReason, string>>> = {
  stays: 'It comes back by itself',
  'comes back': 'It stays in its second place',
  touches: 'It stays clear of itself',
  warmth: 'It stands the temperature there',
};

/** What comes of it: “95 in 100 reach 5 000; effort 30.2 to 24.1 N·mm.” */
export function remedyResult(before: Assessment, remedy: Remedy): string {
  const after = remedy.assessment;
  const [was, now] = [before, after].map(({ effort }) => effortText(effort.effort, effort.measure)) as [string, string];
  const effort = was === now ? `effort stays ${now}` : `effort ${was.replace(/\u00a0.*/, '')} to ${now}`;
  const enough =
    after.verdict.grade === 'pass' ? '' : ` Not enough alone: ${gradeWord(after.verdict.grade).toLowerCase()}.`;
  const { reason } = before.verdict;
  const moving = (reason !== after.verdict.reason && MOVES[reason]) || '';
  return `${moving === '' ? capital(lastingText(after)) : `${moving}; ${lastingText(after)}`}; ${effort}.${enough}`;
}

/** What it costs, to stand after “Costs”: “3.00 mm more room; 20 % softer”. */
export function remedyCosts(before: Assessment, remedy: Remedy, unit: LengthUnit): string {
  const change = changeOf(before, remedy, unit);
  const costs = [...remedy.kinds.map((kind) => COSTS[kind](change)), feelText(change)].filter((cost) => cost !== '');
  return costs.length === 0 ? 'next to nothing' : costs.join('; ');
}

/** Limits are rounded to the safe side, so that the printed one still passes. */
const SPARES: Readonly<
  Record<Spare['value'], (spare: Spare, unit: LengthUnit, measure: Measure) => readonly [string, string]>
> = {
  amount: ({ limit, now }, unit, measure) => [amountWithin(limit, measure, unit), setAmount(now, measure, unit)],
  length: ({ limit, now }, unit) => [
    length(Math.ceil(limit * 100 - 1e-6) / 100, unit),
    `${setLength(now, unit)}${unitAfter(unit)}`,
  ],
  cycles: ({ limit, now }) => [grouped(twoFigures(limit)), grouped(now)],
  count: ({ limit, now }) => [String(limit), String(now)],
};

/** Two figures, rounded down. */
function twoFigures(life: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(life, 1))) - 1);
  return Math.floor(life / unit + 1e-9) * unit;
}

/** How far one value alone may go: its label, the limit, and where it is now. */
export function spareText(a: Assessment, spare: Spare, unit: LengthUnit): readonly [string, string, string] {
  const text = kindText(a.joint.family);
  const labels: Readonly<Record<Spare['value'], string>> = {
    amount: a.drive.measure === 'turn' ? 'Bend it up to' : 'Move it up to',
    length: `${capital(text.room.thing)} as ${text.room.little} as`,
    cycles: 'Flexes, up to',
    count: `${capital(text.unitOfCount)}s, at most`,
  };
  const [limit, now] = SPARES[spare.value](spare, unit, a.drive.measure);
  const atLimit = limit === now || Math.abs(spare.limit - spare.now) <= 1e-9 * Math.abs(spare.now);
  return [labels[spare.value], atLimit ? now : limit, atLimit ? 'as it is' : `now ${now}`];
}

/** Heading of the ways out, and how to read their axes. */
export function waysOutHeading({ verdict, effort, joint }: Assessment): readonly [string, string] {
  const { chance, effortAtMost } = joint.movement;
  if (verdict.reason === 'effort' && effortAtMost !== undefined) {
    const unit = EFFORT_UNIT[effort.measure];
    return ['Ways out', `effort in ${unit}, before and after; ${inHundred(chance)} in 100 wanted`];
  }
  return ['Ways out', `strain %, before and after; ${inHundred(chance)} in 100 wanted`];
}

export const NO_WAY_OUT = 'None of the changes that were tried makes it pass, nor any two of them together.';

/** Shows every way out, or goes back to those that are shown at first. */
export function allWays(count: number, shown: boolean): string {
  return shown ? 'Fewer ways out' : `All ${inWords(count)} ways out`;
}

export function roomHeading(a: Assessment): readonly [string, string] {
  return ['Room to spare', `each alone, ${inHundred(a.joint.movement.chance)} in 100 still last`];
}

/** A strain in per cent as lettered on an axis: three figures at most. */
export function axisFigure(strain: number): string {
  return String(Number((strain * 100).toPrecision(3)));
}

const spoken = (strain: number) => `${axisFigure(strain)} per cent`;

/** What a strain axis shows, for readers of the page by ear. */
export function axisText(before: number, after: number, again: number, staysBent: number): string {
  return `Strain ${spoken(before)} before, ${spoken(after)} after; stood again and again up to ${spoken(again)}, stays bent past ${spoken(staysBent)}`;
}

/** What an axis of effort shows, for readers of the page by ear. */
export function effortAxisText(before: number, after: number, most: number, measure: Measure): string {
  const said = (effort: number) => effortText(effort, measure);
  return `Effort ${said(before)} before, ${said(after)} after; ${said(most)} wanted at most`;
}
