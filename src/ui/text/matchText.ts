/** A wish for an effort and what would meet it, in words. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { EffortWanted, FallsShort, Match, MatchStep } from '../../core/design/matchAnswer.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { effortText, setAmount, type Measure } from './amountText.ts';
import { changedText, type BriefValue } from './briefText.ts';
import { kindText } from './kindText.ts';
import { cycles, grouped, inHundred, inWords, type LengthUnit } from './numbers.ts';
import { capital, listed } from './said.ts';

export const MATCH_HEAD = 'Match an effort';
export const MATCH_AID = 'lines and alike stay whole';
/** What stands before and between the live values. */
export const WISH = { pushes: 'I want it to push back', at: 'at', snaps: 'It should snap at' } as const;
export const WISH_LABELS = {
  effort: 'Effort that is wished for',
  snap: 'Effort at which it should snap',
  at: { turn: 'Angle at which it is wished for', travel: 'Travel at which it is wished for' } satisfies Record<
    Measure,
    string
  >,
} as const;
export const WISH_HINTS = {
  effort: (step: string) => `what you feel there; up and down keys step ${step}`,
  at: (step: string) => `may differ from how far it is moved; up and down keys step ${step}`,
} as const;
export const MATCHING = 'Looking for joints that push back so hard…';
export const COUNTS_HEAD = 'Whole counts alone, as near as they come';
export const USE_IT = 'Use it';
export const NO_SNAP =
  'It does not snap as far as it was followed, so there is no effort at which it does: make it rise more, or thinner.';

/** Before anything is wished for: the figures are those of the joint. */
export function untouchedText(snaps: boolean): string {
  return snaps
    ? 'It snaps so hard now. Change the figure to see what would meet it.'
    : 'So hard it pushes back now. Change a figure to see what would meet it.';
}

/** “at 30°”, or where it snaps. */
function placeText(at: EffortWanted['at'], measure: Measure, unit: LengthUnit): string {
  return at === 'snap' ? 'where it snaps' : `at ${setAmount(at, measure, unit)}`;
}

/** A value of a size as it is said: new with its unit, old without. */
export interface Said {
  readonly name: BriefValue;
  readonly label: string;
  readonly now: string;
  readonly was: string;
  readonly count: number;
}

type Titled = (said: Said, a: Assessment) => string;

/** A count of alike: “two leaves side by side”, “six arms”. */
function alike({ count, label }: Said, a: Assessment): string {
  const { piece, pieces } = kindText(a.joint.family);
  const isBeside = familyOf(a.joint).roles.sideBySide === 'sideBySide';
  const called = isBeside ? (count === 1 ? piece : pieces) : label.toLowerCase();
  return isBeside ? `Put ${inWords(count)} ${called} side by side` : `Use ${inWords(count)} ${called}`;
}

const TITLES: Readonly<Record<MatchStep, Titled>> = {
  length: ({ now }, a) => `Make the ${kindText(a.joint.family).room.thing} ${now} ${kindText(a.joint.family).room.is}`,
  depth: ({ now }, a) => `Make it ${now} ${kindText(a.joint.family).deep}`,
  rise: ({ now, label }) => `Make the ${label.charAt(0).toLowerCase()}${label.slice(1)} ${now}`,
  'side by side': alike,
  lines: ({ count }, a) => {
    const lines = `${inWords(count)} ${a.section.countOf.slice(0, count === 1 ? -1 : undefined)}`;
    return a.joint.measuredThickness === undefined
      ? `Use ${lines} instead of ${inWords(a.section.count)}`
      : `Redraw it ${lines} thick`;
  },
};

function joined(parts: readonly string[]): string {
  const [first = '', ...others] = parts;
  return listed([first, ...others.map((part) => `${part.charAt(0).toLowerCase()}${part.slice(1)}`)]);
}

/** What to do, in the imperative: “Use three lines instead of two and make the leaf 17.35 mm long”. */
export function matchTitle(a: Assessment, steps: Match['steps'], said: (step: MatchStep) => Said): string {
  return joined(steps.map((step) => TITLES[step](said(step), a)));
}

/** What was done, in the past tense with the old value. */
export function matchDone(a: Assessment, steps: Match['steps'], said: (step: MatchStep) => Said): string {
  const kind = kindText(a.joint.family);
  const parts = steps.map((step) => {
    const { name, ...change } = said(step);
    return changedText(name, { ...change, kind, measure: a.drive.measure });
  });
  return parts.map((part, i) => (i === 0 ? part : `${part.charAt(0).toLowerCase()}${part.slice(1)}`)).join('; ');
}

/** How long it lasts; no chance is given past where counting stops. */
function lastingText({ life, joint: { movement } }: Assessment): string {
  if (life.breaksOnFirstFlex) return 'the first flex breaks it';
  if (life.beyond !== 'wanted') return `${inHundred(life.chance)} in 100 reach ${grouped(movement.cycles)}`;
  const counted = grouped(life.maxReportableCycles);
  return life.median > life.maxReportableCycles
    ? `half last past ${counted}, where counting stops`
    : `half break by ${cycles(life.median)}`;
}

/** What comes of it: “20.0 N·mm at 30°; 95 in 100 reach 5 000.” */
export function matchResult({ effort, assessment: a }: Match, at: EffortWanted['at'], unit: LengthUnit): string {
  return `${effortText(effort, a.drive.measure)} ${placeText(at, a.drive.measure, unit)}; ${lastingText(a)}.`;
}

const STEP_NAMES: Readonly<Record<MatchStep, (a: Assessment) => string>> = {
  length: (a) => kindText(a.joint.family).room.called,
  depth: () => 'depth',
  rise: () => 'rise',
  'side by side': () => 'how many are alike',
  lines: (a) => a.section.countOf,
};

/** Ways that end before the wish: “By flexing length alone it comes to 51.9 N·mm and no nearer.” */
export function shortText(a: Assessment, short: readonly FallsShort[]): string {
  return short
    .map(({ steps, effort }) => {
      const by = listed(steps.map((step) => STEP_NAMES[step](a)));
      return `By ${by}${steps.length === 1 ? ' alone' : ''} it comes to ${effortText(effort, a.drive.measure)} and no nearer.`;
    })
    .join(' ');
}

/** It has what is wished for. */
export function metText(now: number, at: EffortWanted['at'], measure: Measure, unit: LengthUnit): string {
  return `It has that as it is: ${effortText(now, measure)} ${placeText(at, measure, unit)}.`;
}

/** For readers of the page by ear, once the ways have come. */
export function matchedText(count: number): string {
  return `${capital(count === 1 ? 'one way' : `${inWords(count)} ways`)} to that effort found`;
}

/** Shows every way, or goes back to those that are shown at first. */
export function allMatches(count: number, shown: boolean): string {
  return shown ? 'Fewer ways' : `All ${inWords(count)} ways`;
}
