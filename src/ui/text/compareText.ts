/** Words of joints side by side: rows of figures, curves, and what is said where something is missing. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { standingOf } from '../../core/lesson/demos/standing.ts';
import { amountText, effortText } from './amountText.ts';
import { waysText } from './briefText.ts';
import { manyCycles } from './countText.ts';
import { kindText } from './kindText.ts';
import { STANDS, timesText } from './lessonDemoText.ts';
import { counted, cycles, grouped, inHundred, length, NO_BREAK, percent, type LengthUnit } from './numbers.ts';
import { leftText } from './setText.ts';
import { gradeWord } from './verdictText.ts';

export const COMPARE = {
  title: 'Side by side',
  choose: 'Joints side by side, four at most',
  full: 'Four stand side by side: take one away first',
  left: 'To the left',
  right: 'To the right',
  open: 'Open it',
  away: 'Take away',
  scale: 'All at scale',
  atRest: 'dashed as printed, solid as moved',
  coming: 'The solver is at work.',
  figures: 'Figures, and how many times that of A',
  times: 'times A',
  tooFew: 'Two joints make a comparison; this part has',
  toJoints: 'Add one in Joints.',
  lives: 'Strain against life',
  livesAid: 'half break by then, scatter and doubt not drawn',
  livesAcross: 'cycles',
  efforts: { turn: 'Torque against angle', travel: 'Force against travel' },
  effortsAid: 'each to the movement that is wanted of it',
  across: { turn: 'angle', travel: 'travel' },
  setUp: 'Compared',
  caution: 'Estimates from nominal data, not a safety case. Printed parts vary: test yours.',
  joint: 'joint',
  rows: 'What is compared',
} as const;

export function tooFewText(count: number): string {
  return `${COMPARE.tooFew} ${counted(count, 'joint')}.`;
}

/** “PETG: A, B”: the curve of a filament, and the joints that are flexed by it. */
export function curveText(filament: string, letters: readonly string[]): string {
  return `${filament}: ${letters.join(', ')}`;
}

/** “0.63 %, past 1 M”: a joint that outlasts what was counted. */
export function pastText(strain: string, most: number): string {
  return `${strain}, past ${manyCycles(most)}`;
}

/** One row: what it is, its words for a joint, and a figure that can be set against that of another. */
export interface CompareRow {
  readonly name: string;
  readonly says: (a: Assessment, unit: LengthUnit) => string;
  /** Absent for words alone; of another measure where the joints are moved otherwise. */
  readonly figure?: (a: Assessment) => { readonly value: number; readonly of: string };
}

const strainOf = (value: number) => ({ value, of: 'strain' });

/** No life is told past what was counted, nor a ratio of it. */
function isCounted({ life }: Assessment): boolean {
  return !life.breaksOnFirstFlex && life.median <= life.maxReportableCycles;
}

function lifeSays(a: Assessment): string {
  const { total, breaksOnFirstFlex, median, maxReportableCycles: most } = a.life;
  if (breaksOnFirstFlex) return 'the first flex breaks it';
  if (!isCounted(a)) return `half outlast ${manyCycles(most)}, where counting stops`;
  const long = total.p90 > most ? `over ${manyCycles(most)}` : cycles(total.p90);
  return `half break by ${cycles(median)}; 80 of 100 between ${cycles(total.p10)} and ${long}`;
}

function movementSays({ joint: { movement }, drive }: Assessment, unit: LengthUnit): string {
  return `${amountText(movement.amount, drive.measure, unit)} ${waysText(movement.ways)}, ${grouped(movement.cycles)} times`;
}

function chanceSays({ life }: Assessment): string {
  if (life.breaksOnFirstFlex) return 'none';
  return life.beyond === 'wanted' ? 'not counted so far' : `${inHundred(life.chance)} in 100`;
}

export const COMPARE_ROWS: readonly CompareRow[] = [
  { name: 'Verdict', says: ({ verdict }) => gradeWord(verdict.grade) },
  { name: 'Kind', says: ({ joint }) => kindText(joint.family).name },
  { name: 'Movement', says: movementSays },
  { name: 'Filament', says: ({ filament }) => filament.name },
  {
    name: 'Thickness',
    says: ({ section }, unit) =>
      `${length(section.thickness, unit)}, ${counted(section.count, section.countOf === 'lines' ? 'line' : 'layer')}`,
    figure: ({ section }) => ({ value: section.thickness, of: 'mm' }),
  },
  {
    name: 'Flexing length',
    says: (a, unit) => length(a.length, unit),
    figure: (a) => ({ value: a.length, of: 'mm' }),
  },
  {
    name: 'Peak strain',
    says: (a) => `${percent(a.strain.peak)}, ${STANDS[standingOf(a)]}`,
    figure: (a) => strainOf(a.strain.peak),
  },
  {
    name: 'May strain again and again',
    says: (a) => percent(allowableNamed(a.allowables, 'repeated').limit),
    figure: (a) => strainOf(allowableNamed(a.allowables, 'repeated').limit),
  },
  {
    name: 'Life',
    says: lifeSays,
    figure: (a) => ({ value: a.life.median, of: isCounted(a) ? 'cycles' : `not counted, ${a.joint.id}` }),
  },
  { name: 'Reach what is wanted', says: chanceSays },
  {
    name: 'Effort at full movement',
    says: ({ effort }) => effortText(effort.effort, effort.measure),
    figure: ({ effort }) => ({ value: effort.effort, of: effort.measure }),
  },
  {
    name: 'by its modulus',
    says: ({ effort: { low, high, measure } }) => `${effortText(low, measure)} to ${effortText(high, measure)}`,
  },
  { name: 'Stays bent at once', says: (a, unit) => leftText(a.set.amount, a.drive, unit) },
];

/** “2.0 ×”: so many times the same figure of the first joint; nothing where the two cannot be set against each other. */
export function timesFirst(row: CompareRow, first: Assessment, a: Assessment): string {
  const [one, now] = [row.figure?.(first), row.figure?.(a)];
  if (!one || !now || one.of !== now.of || !(one.value > 0)) return '';
  const ratio = now.value / one.value;
  const size = ratio > 0 && ratio < 0.995 ? Number(ratio.toPrecision(2)).toString() : timesText(ratio);
  return `${size}${NO_BREAK}×`;
}
