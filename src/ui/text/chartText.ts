/** What the curves say: names, readings at a cursor, and what a reader of the page by ear is told. */
import type { AllowableName } from '../../core/design/assessment.ts';
import type { Section } from '../../core/flexures/family.ts';
import type { Mm } from '../../core/units.ts';
import { amountText, effortText, roughAmount, type Measure } from './amountText.ts';
import { counted, cycles, effortFigure, grouped, length, NO_BREAK, percent, type LengthUnit } from './numbers.ts';

type CountOf = Section['countOf'];

const ONE: Readonly<Record<CountOf, string>> = { lines: 'line', layers: 'layer' };

export const FIGURES = {
  life: { number: 2, name: 'Strain against life' },
  length: (called: string) => ({ number: 3, name: `Strain against ${called}` }),
  effort: { number: 4, name: 'Effort against movement' },
} as const;

/** How to read each figure, at the right of its name. */
export const AIDS = {
  life: (of: CountOf) => `dots: ${of === 'lines' ? 'lines across' : 'layers'}; shade: 10 to 90 in 100`,
  length: (of: CountOf) => `one curve a ${ONE[of]} count`,
  effort: (measure: Measure) => (measure === 'turn' ? 'turning effort on the pad' : 'push where it is moved'),
} as const;

export const AXES = {
  cycles: 'cycles to break',
  length: (unit: LengthUnit, called: string) => `${called}, ${unit === 'mm' ? 'mm' : 'in'}`,
  amount: (measure: Measure, unit: LengthUnit) =>
    measure === 'turn' ? 'bent by, degrees' : `moved by, ${unit === 'mm' ? 'mm' : 'in'}`,
} as const;

export const READING_KEYS =
  'Left and Right move the reading, with Shift ten steps, Home and End to the ends. Escape leaves it.';

/** Said once when a figure is reached by keyboard. */
export const HOW_TO_READ = {
  life: `${READING_KEYS} Enter takes the shortest length that strains no more.`,
  length: `${READING_KEYS} Up and Down go to the next curve. Enter takes the length and the count that are read.`,
  effort: READING_KEYS,
} as const;

export const LIMIT_WORDS: Readonly<Record<AllowableName | 'first flex', string>> = {
  repeated: 'again and again',
  held: 'held bent',
  single: 'once in a while',
  yield: 'stays bent',
  break: 'breaks',
  'first flex': 'first flex breaks',
};

/** Of a figure whose curves a formula carries on from what was solved. */
export const BY_FORM = 'Dashed: by simple formula, through the solved point.';
export const OFF_THE_CHART = 'off the chart';
export const BEYOND_THE_DATA = 'beyond the data';
export const ONE_PRINT_RUN = 'one print run';
export const ANY_SPOOL = 'any printer, any spool';
export const MODULUS_BAND = 'low to high modulus';

/** “2 lines”, or what a measured section is called, which is of no whole count. */
export function ownName(count: number, of: CountOf, measured: boolean): string {
  return measured ? 'as measured' : counted(count, ONE[of]);
}

export function countName(count: number, of: CountOf): string {
  return counted(count, ONE[of]);
}

export function wantedCycles(wanted: number): string {
  return `wanted ${grouped(wanted)}`;
}

/** “stays bent, over 3.5 %”. */
export function over(words: string, strain: number): string {
  return `${words}, over ${shortPercent(strain)}`;
}

export function limitLabel(words: string, strain: number): string {
  return `${words} ${shortPercent(strain)}`;
}

/** No more figures than it needs beside a line: “1.47 %”, “3.5 %”, “77 %”. */
function shortPercent(strain: number): string {
  return `${Number((strain * 100).toFixed(strain < 0.1 ? 2 : 0))}${NO_BREAK}%`;
}

function bare(strain: number): string {
  return (strain * 100).toFixed(2);
}

/** Strains by which half, and 10 and 90 in 100, have broken. */
export interface StrainSpread {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** “5 000 cycles: 2.62 % for half, 1.90 to 3.50”; no strain is given where nobody has counted. */
export function lifeReading(at: number, spread: StrainSpread | undefined): string {
  const head = at >= 10 ? `${cycles(at)} cycles` : `${Number(at.toFixed(1))} ${at === 1 ? 'cycle' : 'cycles'}`;
  if (!spread) return `${head}: nobody has counted so far`;
  return `${head}: ${percent(spread.typical)} for half, ${bare(spread.low)} to ${bare(spread.high)}`;
}

/** “14.50 mm: 1.77 %, 3 of 5 limits kept”, with the count before the strain when it is not the joint's own. */
export function lengthReading(
  at: Mm,
  unit: LengthUnit,
  curve: string | undefined,
  strain: number,
  limits: { readonly kept: number; readonly of: number },
): string {
  const head = curve === undefined ? length(at, unit) : `${length(at, unit)}, ${curve}`;
  return `${head}: ${percent(strain)}, ${limits.kept} of ${limits.of} limits kept`;
}

/** “22.5°: 19.4 N·mm, 17.1 to 22.0”. */
export function effortReading(
  at: number,
  { typical, low, high }: { readonly typical: number; readonly low: number; readonly high: number },
  staysBent: boolean,
  measure: Measure,
  unit: LengthUnit,
): string {
  const spread = `${effortFigure(low, typical)} to ${effortFigure(high, typical)}`;
  const reads = `${amountText(at, measure, unit)}: ${effortText(typical, measure)}, ${spread}`;
  return staysBent ? `${reads}; stays bent` : reads;
}

export function takesLength(asked: Mm | undefined, unit: LengthUnit): string {
  return asked === undefined ? 'no length strains so little' : `Enter makes it ${length(asked, unit)} long`;
}

export function jointStrain(at: Mm, unit: LengthUnit, strain: number): string {
  return `${length(at, unit)}, ${percent(strain)}`;
}

export function effortAtAmount(at: number, effort: number, measure: Measure, unit: LengthUnit): string {
  return `${effortText(effort, measure)} at ${amountText(at, measure, unit)}`;
}

export function staysBentPast(at: number, measure: Measure, unit: LengthUnit): string {
  return `stays bent past ${roughAmount(at, measure, unit)}`;
}

/** The first trace of set, before it plainly stays bent. */
export function setBeginsAt(at: number, measure: Measure, unit: LengthUnit): string {
  return `a trace of set from ${roughAmount(at, measure, unit)}`;
}

/** Captions and heads of the tables that stand for the figures. */
export const tableOf = {
  life: 'Strain by which so many have broken, by cycles',
  lifeHeads: ['cycles', '10 in 100', 'half', '90 in 100'],
  points: 'Median life by count',
  length: (called: string) => `Peak strain by ${called} and count; the joint’s own first`,
  effort: (measure: Measure) =>
    measure === 'turn'
      ? 'Turning effort by angle; the joint’s wanted angle first'
      : 'Push by travel; the joint’s wanted travel first',
  effortHeads: (measure: Measure) => [
    measure === 'turn' ? 'bent by' : 'moved by',
    'typical',
    'low modulus',
    'high modulus',
  ],
} as const;
