/** Words of the two figures of tests: the curve before and after, and a strip over a bar. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Filament } from '../../core/material/types.ts';
import { doubtSigma } from '../../core/life/scatter.ts';
import { cycles, grouped, inWords, NO_BREAK, percent } from './numbers.ts';
import { capital, figure, type Said } from './said.ts';

interface Spread {
  readonly low: number;
  readonly half: number;
  readonly high: number;
}

export const LEARNED_FIGURE = {
  number: 2,
  name: 'The curve before and after',
  nameBefore: 'The curve that counts will move',
  aid: 'shade: 10 to 90 in 100',
  how: 'Left and right read the curves from cycles to cycles, Page Up and Page Down farther, Esc ends the reading.',
  before: 'before',
  after: 'after',
  past: 'beyond the data',
  wanted: (count: number) => `wanted ${grouped(count)}`,
  strips: (count: number) => `your ${count === 1 ? 'strip' : `${inWords(count)} strips`}`,
  table: 'Strains at which 10, 50 and 90 in 100 have broken, before and after the counts',
  heads: ['Cycles', 'Before: 10', '50', '90 in 100', 'After: 10', 'After: 50', 'After: 90 in 100'],
  stripTable: 'Strips that were counted',
  stripHeads: ['Strip', 'Bends', 'Strain as the joint feels it', 'What happened'],
  odd: ', far from the others',
} as const;

export function learnedReading(at: number, before: Spread | undefined, after: Spread | undefined): string {
  const by = `${cycles(at)} cycles: `;
  if (!before) return `${by}past what was counted`;
  const say = ({ low, half, high }: Spread) => `half at ${percent(half)} (${percent(low)} to ${percent(high)})`;
  return after ? `${by}${say(after)}; before ${percent(before.half)}` : `${by}${say(before)}`;
}

const lives = ({ life }: Assessment): Said => {
  const end = life.maxReportableCycles;
  const high = life.total.p90 > end ? `past ${grouped(end)}` : cycles(life.total.p90);
  return [figure(cycles(Math.max(1, life.total.p10))), ' and ', figure(high)];
};

/** Under the figure: what the two bands are at the strain of the joint. */
export function learnedNote(before: Assessment | undefined, after: Assessment | undefined, prior: Filament): Said {
  const { sigmaLog10N, doubtFactor } = prior.life;
  const of =
    doubtSigma(doubtFactor) > 0
      ? `the curve itself within ${Number(doubtFactor.toPrecision(2))} times either way, nine times in ten`
      : 'no doubt of the curve';
  const known = `Before: ${sigmaLog10N.toFixed(2)} decades of scatter within a run, and ${of}.`;
  if (!before) return [known];
  const at = `At ${percent((after ?? before).strain.peak)} 10 to 90 in 100 `;
  if (!after) return [`${at}break between `, ...lives(before), `. ${known}`];
  const whole = ' A strip still whole counts as “more than”.';
  return [`${at}broke between `, ...lives(before), ' before; between ', ...lives(after), ` now. ${known}${whole}`];
}

export const BAR_FIGURE = {
  name: (radius: string, scale: string) => ({ what: `A strip laid ${radius}`, scale }),
  aid: 'colour: strain, worst at the skin',
  scale: (scale: string) => `scale ${scale}`,
  spoken: (what: string, strain: number, thickness: string) =>
    `A strip ${thickness} thick, ${what}: its skin strains ${percent(strain)}.`,
} as const;

/** “skin 7.75 %, twice the yield”. */
export function skinText(strain: number, yields: number): string {
  const times = strain / yields;
  if (times < 0.95) return `skin ${percent(strain)}, ${Math.round(times * 100)}${NO_BREAK}% of the yield`;
  if (times < 1.05) return `skin ${percent(strain)}, at the yield`;
  const said = times < 1.75 ? `${times.toFixed(1)} times` : times < 2.25 ? 'twice' : `${times.toFixed(1)} times`;
  return `skin ${percent(strain)}, ${said} the yield`;
}

export const stripWords = (ended: 'broke' | 'whole', isOdd: boolean) =>
  `${capital(ended === 'broke' ? 'broke' : 'still whole')}${isOdd ? LEARNED_FIGURE.odd : ''}`;
