/** How sure the answer is, in words: chance, causes, and how it was found. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { CauseName, CauseShare, Checked, DoubtAnswer, Percentiles } from '../../core/design/doubtAnswer.ts';
import { weakest } from '../../core/material/choose.ts';
import type { ProvenanceKind } from '../../core/material/types.ts';
import type { SamplingHow } from '../../core/numeric/sampling.ts';
import type { SpreadName } from '../../core/print/spread.ts';
import { effortText, type Measure } from './amountText.ts';
import { grouped, inHundred, inWords, NO_BREAK, percent, share } from './numbers.ts';
import { capital, figure, type Said } from './said.ts';
import { shareOf } from './wearText.ts';

export const HOW_SURE = 'How sure is this?';
export const HOW_SURE_AID = 'many prints imagined, each as it may come out';

/** What thickness rests on: its words differ. */
type Of = Pick<Assessment, 'joint' | 'section'>;

function thicknessName({ joint, section }: Of): string {
  if (joint.measuredThickness !== undefined) return 'what calipers read';
  return section.countOf === 'lines' ? 'how wide lines come out' : 'how high layers come out';
}

/** Causes as rows of a list. */
const CAUSES: Readonly<Record<Exclude<CauseName, 'thickness'>, string>> = {
  specimens: 'how alike prints of one run are',
  curve: 'the filament’s curve',
  length: 'how long it comes out',
  root: 'how much its root feels',
  ratio: 'what its other end counts',
  acrossLayers: 'how well layers hold',
  thickSection: 'what a thick section stands',
  modulus: 'how stiff the filament is',
  yieldStress: 'when the filament yields',
};

function causeText(cause: CauseName, of: Of): string {
  return cause === 'thickness' ? thicknessName(of) : CAUSES[cause];
}

/** What would make a doubt smaller. */
const CURES: Readonly<Record<Exclude<CauseName, 'thickness'>, string>> = {
  specimens: 'no test takes that away; only less strain helps',
  curve: 'counting five strips of your own would narrow it most',
  length: 'measuring the printed length would narrow it most',
  root: 'a larger fillet would narrow it most',
  ratio: 'counting strips that are flexed as it is would narrow it most',
  acrossLayers: 'laying it so that lines run along it would take it away',
  thickSection: 'keeping it thinner than 0.5 mm would take it away',
  modulus: 'pressing a print of your own on scales would narrow it most',
  yieldStress: 'bending a strip of your own until it stays bent would narrow it most',
};

function cureText(cause: CauseName, { joint }: Of): string {
  if (cause !== 'thickness') return CURES[cause];
  if (joint.measuredThickness !== undefined) return 'measuring it at several places would narrow it most';
  return 'measuring the printed section, and setting it as measured, would narrow it most';
}

/** One cause is most of the doubt from the first share on, about half of it from the second on; below, only the largest part. */
const MOST = 0.6;
const HALF = 0.4;
/** Causes of less than this decide nothing. */
const COUNTS = 0.01;

/** Where the chance comes from: the weakest of what decides it. */
export function chanceMark({ causes }: Pick<DoubtAnswer, 'causes'>): ProvenanceKind {
  return weakest('computed', ...causes.filter(({ life }) => life >= COUNTS).map(({ provenance }) => provenance));
}

/** Where the percentiles of effort come from. */
export function effortMark({ causes }: Pick<DoubtAnswer, 'causes'>): ProvenanceKind {
  return weakest('computed', ...causes.filter(({ effort }) => effort >= COUNTS).map(({ provenance }) => provenance));
}

/** Nine times in ten the error is no more than this many standard deviations. */
const NINE_IN_TEN = 1.645;

/** “1 by sampling”, “under 1 by sampling”: in a hundred prints. */
function errorText(error: number): string {
  const inAHundred = 100 * NINE_IN_TEN * error;
  return inAHundred < 0.5 ? `±${NO_BREAK}under 1` : `±${NO_BREAK}${Math.round(inAHundred)}`;
}

/** The chance and what makes most of the doubt, in a sentence or two. */
export function sureSentence(a: Assessment, answer: DoubtAnswer): Said {
  const { chance, wanted, breaksAtOnce } = answer;
  if (breaksAtOnce > 0.995)
    return [`The first flex breaks it, in ${a.filament.name} and in every print that is imagined.`];
  if (a.life.beyond === 'wanted') {
    const counted = a.life.maxReportableCycles;
    const most = figure(grouped(counted), a.provenance.life, 'life');
    const asked = wanted > counted ? grouped(wanted) : 'as many as are asked of its smaller movements';
    return [
      'Nobody has counted further than ',
      most,
      ` cycles, so for ${asked} no chance is given. `,
      ...mostOf(a, answer),
    ];
  }
  return [
    figure(capital(`${inHundred(chance.share)} in 100`), chanceMark(answer), 'life'),
    ` (${errorText(chance.error)} by sampling) reach your ${grouped(wanted)}${verdictToo(answer)}. `,
    ...(breaksAtOnce >= 0.01 ? [`The first flex breaks ${inHundred(breaksAtOnce)} in 100. `] : []),
    ...mostOf(a, answer),
    ...(a.warmth.grade === 'pass' ? [] : [' How warm or cold it is used is not counted in it.']),
  ];
}

/** The verdict counts curve and specimens alone; it is told where that makes a difference that is seen. */
function verdictToo({ chance, chanceOfVerdict }: DoubtAnswer): string {
  const [here, there] = [inHundred(chance.share), inHundred(chanceOfVerdict)];
  return here === there
    ? ', as many as by the verdict, which counts curve and specimens alone'
    : `; by the verdict, which counts curve and specimens alone, ${there}`;
}

function mostOf(of: Of, { causes }: DoubtAnswer): Said {
  const [first, second] = causes;
  if (!first || !(first.life > 0)) return ['Nothing about its life is in doubt.'];
  const said = `${howMuch(first.life)} of the doubt about its life is ${causeText(first.cause, of)}: ${cureText(first.cause, of)}`;
  // What cannot be narrowed leaves the next in line to be said.
  const next = first.cause === 'specimens' && second && second.life >= 0.1;
  return [next ? `${said}. After it comes ${causeText(second.cause, of)}: ${cureText(second.cause, of)}.` : `${said}.`];
}

function howMuch(part: number): string {
  if (part >= MOST) return 'Most';
  return part >= HALF ? 'About half' : 'The largest part';
}

export const SHARES = {
  caption: 'What makes the doubt',
  heads: { cause: 'cause', life: 'of life', effort: 'of effort' },
  together: 'several of them together',
  rest: 'everything else',
} as const;

/** “51 %”, “under 1 %”, or “none”. */
export function shareText(part: number): string {
  return part < 0.0005 ? 'none' : shareOf(part);
}

/** A row of the list: a cause, or several that hardly count. */
export interface ShareRow extends Pick<CauseShare, 'life' | 'effort'> {
  readonly text: string;
}

function isSeen({ life, effort }: Pick<CauseShare, 'life' | 'effort'>): boolean {
  return Math.max(life, effort) >= COUNTS;
}

/** Causes by what they do; those that do next to nothing to either are one row. */
export function shareRows(of: Of, { causes, together }: DoubtAnswer): readonly ShareRow[] {
  const [seen, rest] = [causes.filter(isSeen), causes.filter((cause) => !isSeen(cause))];
  const sum = (which: 'life' | 'effort') => rest.reduce((total, cause) => total + cause[which], 0);
  return [
    ...seen.map(({ cause, life, effort }) => ({ text: causeText(cause, of), life, effort })),
    ...(isSeen(together) ? [{ text: SHARES.together, ...together }] : []),
    ...(rest.length > 0 ? [{ text: SHARES.rest, life: sum('life'), effort: sum('effort') }] : []),
  ];
}

export const PERCENTILES = {
  caption: 'Between what it lies',
  of: 'of a hundred prints',
  heads: ['10 are below', '50', '90'],
  life: 'cycles to break',
  strain: 'peak strain',
  effort: { turn: 'turning effort', travel: 'push' } satisfies Record<Measure, string>,
} as const;

export function strainFigures({ p10, p50, p90 }: Percentiles): readonly string[] {
  return [p10, p50, p90].map((strain) => percent(strain));
}

export function effortFigures({ p10, p50, p90 }: Percentiles, measure: Measure): readonly string[] {
  return [p10, p50, p90].map((effort) => effortText(effort, measure));
}

/** Of printers, as live values in a sentence. */
export const SPREAD = {
  begins: 'Your printer keeps ',
  names: { lineWidth: 'line width', layers: 'layers on the plate', lengths: 'lengths' },
  labels: {
    lineWidth: 'Line width kept within',
    layers: 'Thickness of layers kept within',
    lengths: 'Lengths kept within',
  },
  ends: ' in nine prints of ten.',
  hint: 'what a test print of yours shows; the usual value is common practice, no source',
} as const satisfies { readonly names: Readonly<Record<SpreadName, string>> } & Record<string, unknown>;

export function notWithin(name: SpreadName, least: string, most: string): string {
  return `${SPREAD.labels[name]} must be from ${least} to ${most}.`;
}

export const HOW_SAMPLED: Readonly<Record<SamplingHow, string>> = {
  'quasi-random': 'spread evenly (quasi-random)',
  plain: 'drawn plainly at random',
};
export const SAMPLED = {
  samples: 'Number of prints imagined',
  how: 'How they are drawn',
  again: 'Draw again',
} as const;

export function samplesText(count: number): string {
  return `${grouped(count)} prints`;
}

/** After the choices: which draw it is, and what its error rests on. */
export function drawText(seed: number, { replicates }: Pick<DoubtAnswer, 'replicates'>): string {
  const how = replicates > 1 ? `their error from ${replicates} sets` : 'their error from their number';
  return `, draw ${grouped(seed)}; ${how}. `;
}

/** What was carried over, and how far it is off. */
export function checkedText(checked: Checked | undefined): string {
  if (!checked) return 'An exact form answers each print by itself.';
  const { prints, strain, effort, chance } = checked;
  const moved = chance < 0.0005 ? 'less than one in a thousand' : `${(100 * chance).toFixed(1)} in 100`;
  return (
    `Strain and effort are carried over from a few solves, to second order. ` +
    `${capital(inWords(prints))} of the prints solved in full differ by ${off(strain)} in strain and ${off(effort)} in effort at most, which moves the chance by ${moved}.`
  );
}

function off(difference: number): string {
  return difference < 0.0001 ? `less than 0.01${NO_BREAK}%` : percent(difference);
}

export const MAKING = 'Imagining prints';
export const STOP = 'Stop';
export const STOPPED = 'Stopped.';
export const GO_ON = 'Go on';

export function brokeOff(message: string): string {
  return `This broke off: ${message}.`;
}

export function doneText(part: number): string {
  return `${MAKING}: ${share(part)}`;
}
