/** The short working of each demonstration, in symbols, then numbers with units, then a result. Greek stands only here. */
import type { Assessment } from '../../core/design/assessment.ts';
import { bistableRatio } from '../../core/closedForms/snapArch.ts';
import type { DemoId } from '../../core/lesson/demos/ids.ts';
import { countedLife } from '../../core/lesson/demos/goals.ts';
import { heldOf, hoursHeld } from '../../core/lesson/demos/heldOrFlexed.ts';
import { wholeRow } from '../../core/material/wholeRow.ts';
import { asRad } from '../../core/units.ts';
import { effortText } from './amountText.ts';
import type { Told } from './lessonDemoWords.ts';
import { timesText } from './lessonDemoText.ts';
import { angle, cycles, grouped, length, MINUS, percent, type LengthUnit } from './numbers.ts';

/** One line: what stands left of the equals sign, then a fraction or plain figures, then words that are no formula. */
export interface WorkLine {
  readonly left?: string;
  readonly fraction?: { readonly top: string; readonly under: string };
  readonly text?: string;
  readonly note?: string;
  /** Set small: a step on the side. */
  readonly aside?: true;
  /** Set strong: what it comes to. */
  readonly result?: true;
}

interface LeafSymbols {
  readonly top: string;
  readonly under: string;
}

const PLAIN: LeafSymbols = { top: 't · θ', under: '2 · L' };

function radiansLine(turn: number): WorkLine {
  return { left: 'θ', text: `${angle(asRad(turn))} × π / 180° = ${turn.toFixed(3)}`, aside: true };
}

/** Strain of a leaf that rolls to an arc: t·θ/(2·n·L), and what its root makes of it. */
function leafStrain(b: Assessment, unit: LengthUnit, symbols = PLAIN): readonly WorkLine[] {
  const { thickness } = b.section;
  const turn = b.joint.movement.amount;
  const many = b.inRow > 1 ? ` × ${b.inRow}` : '';
  return [
    { left: 'ε', fraction: symbols },
    radiansLine(turn),
    {
      left: 'ε',
      fraction: {
        top: `${length(thickness, unit)} × ${turn.toFixed(3)}`,
        under: `2${many} × ${length(b.length, unit)}`,
      },
    },
    { left: 'ε', text: `${b.strain.nominal.toFixed(4)} = ${percent(b.strain.nominal)}`, result: true },
    { text: `at the root ${b.strain.rootFactor.toFixed(2)} times as much: ${percent(b.strain.peak)}`, aside: true },
  ];
}

function cubeOfLines([a, b]: readonly [Assessment, Assessment], unit: LengthUnit): readonly WorkLine[] {
  const ratio = b.section.thickness / a.section.thickness;
  return [
    { left: 'M', fraction: { top: 'E · b · t³ · θ', under: '12 · L' } },
    {
      left: 'B over A',
      fraction: { top: `(${length(b.section.thickness, unit)})³`, under: `(${length(a.section.thickness, unit)})³` },
    },
    { text: `${ratio.toFixed(2)}³ = ${timesText(ratio ** 3)}`, result: true },
    {
      text: `worked out in full, with width and yielding: ${timesText(b.effort.effort / a.effort.effort)} times`,
      aside: true,
    },
  ];
}

function asDeep([a, b]: readonly [Assessment, Assessment], unit: LengthUnit): readonly WorkLine[] {
  const [thick, long] = [a.section.thickness / b.section.thickness, b.length / a.length];
  return [
    { left: 'M', fraction: { top: 'E · b · t³ · θ', under: '12 · L' }, note: 'the same for both' },
    {
      left: 'b',
      text: `${length(a.section.width, unit, 1)} × ${thick.toFixed(2)}³ × ${long.toFixed(2)}, about ${length(a.section.width * thick ** 3 * long, unit, 1)}`,
      aside: true,
    },
    { left: 'b', text: length(b.section.width, unit, 1), note: 'worked out in full, with width and yielding' },
    { left: 'ε', fraction: PLAIN, note: `= ${percent(b.strain.nominal)}` },
    { text: `at the root ${percent(b.strain.peak)}; of A ${percent(a.strain.peak)}`, result: true },
  ];
}

function pushLeft(b: Assessment, time: number): readonly WorkLine[] {
  const held = heldOf(b);
  if (!held) return [];
  const exponent = wholeRow(b.filament).properties.relaxationExponent.typical;
  const minutes = 60 * hoursHeld(time);
  return [
    { left: 'push', text: `(T / 1 min) to the power of ${MINUS}m` },
    { left: 'push', text: `${grouped(minutes)} to the power of ${MINUS}${exponent.toFixed(3)}` },
    { left: 'push', text: held.left.typical.toFixed(2), result: true },
    {
      text: `between ${held.left.low.toFixed(2)} and ${held.left.high.toFixed(2)}: common practice, no source`,
      aside: true,
    },
  ];
}

function archRatio([a]: readonly [Assessment, Assessment], unit: LengthUnit): readonly WorkLine[] {
  const rise = a.sizes['rise'] ?? 0;
  return [
    { left: 'h over t', fraction: { top: length(rise, unit), under: length(a.section.thickness, unit) } },
    { left: 'h over t', text: (rise / a.section.thickness).toFixed(2), result: true },
    { text: `two joined stay from ${bistableRatio('double').toFixed(2)} on`, aside: true },
    { text: `one alone from ${bistableRatio('free').toFixed(2)} on, by the theory of shallow arches`, aside: true },
  ];
}

type Working = (both: readonly [Assessment, Assessment], told: Told) => readonly WorkLine[];

const sideBySide: Working = ([, b]) => {
  const leaves = b.sizes['leaves'] ?? 1;
  const { effort, measure } = b.effort;
  return [
    { left: 'F', text: 'n × push of one leaf' },
    { left: 'F', text: `${leaves} × ${effortText(effort / leaves, measure)}` },
    { left: 'F', text: effortText(effort, measure), result: true },
  ];
};

const livesCompared: Working = ([a, b], { unit }) => {
  const isPast = b.life.median > b.life.maxReportableCycles;
  const lives = `half of PLA break by ${cycles(countedLife(a))}, half of ${b.filament.name} ${isPast ? 'outlast' : 'by'} ${cycles(countedLife(b))}`;
  return [...leafStrain(b, unit).slice(0, -1), { text: lives, aside: true }];
};

const rootStrain: Working = ([, b], { unit }) => [
  ...leafStrain(b, unit).slice(0, -1),
  { left: 'at the root k · ε', text: `${b.strain.rootFactor.toFixed(2)} × ${percent(b.strain.nominal)}` },
  { text: percent(b.strain.peak), result: true },
];

const WORKINGS: Readonly<Record<DemoId, Working>> = {
  'three-lengths': ([, b], { unit }) => leafStrain(b, unit),
  'one-line-more': (both, { unit }) => cubeOfLines(both, unit),
  'scaled-part': ([, b], { unit }) => leafStrain(b, unit, { top: 's · t · θ', under: '2 · s · L' }),
  'one-or-many-bends': ([, b], { unit }) => leafStrain(b, unit, { top: 't · θ', under: '2 · n · L' }),
  'fillet-or-corner': rootStrain,
  'filament-against-filament': livesCompared,
  'short-or-long': (both, { unit }) => asDeep(both, unit),
  'side-by-side': sideBySide,
  'held-or-flexed': ([, b], { values }) => pushLeft(b, values['time'] ?? 0),
  'arch-springs-back': (both, { unit }) => archRatio(both, unit),
};

/** The working of B, or of both, with the numbers that the core has found. */
export function workingSaid(id: DemoId, told: Told): readonly WorkLine[] {
  const [a, b] = told.answers;
  return a && b ? WORKINGS[id]([a, b], told) : [];
}
