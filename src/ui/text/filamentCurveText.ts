/** What the curve of one filament says, and what it stands on. */
import { LIFE_HOLDS_FOR } from '../../core/life/assessLife.ts';
import { transitionCycles } from '../../core/life/curveOf.ts';
import { soundness } from '../../core/material/choose.ts';
import type { Anchor } from '../../core/material/evidence.ts';
import { isAsJudged, plasticOf } from '../../core/material/ownEvidence.ts';
import type { CurveFigure } from '../../core/material/ownLimits.ts';
import type { ProvenanceKind, WholeFilament } from '../../core/material/types.ts';
import { READING_KEYS } from './chartText.ts';
import { manyCycles, readAtText } from './countText.ts';
import { cited } from './filamentValueText.ts';
import { cycles, grouped, percent } from './numbers.ts';
import { sentence } from './said.ts';

export const FIGURE_ONE = {
  name: 'Strain against life, and what it stands on',
  aid: 'shade: 10 to 90 in 100; darker: one print run',
  keys: READING_KEYS,
  ways: 'Drawn for flexing',
  oneWay: 'One way',
  bothWays: 'Both ways',
  across: 'across layers',
  firstFlex: 'first flex breaks',
  gamma: (exponent: number) => `exponent ${exponent}`,
  joint: (strain: number, isAsIs: boolean) => `your joint, ${isAsIs ? '' : 'counted as '}${percent(strain)}`,
  table: 'Peak strain by which so many have broken, by cycles',
  heads: ['cycles', '10 in 100', 'half', '90 in 100'],
} as const;

/** What its points and lines are. */
export const POINTS =
  'Filled: seen in a document; hollow: remembered or chosen; arrows: a bound whose strain nobody saw. Dotted: across layers.';

export const SENSITIVITY =
  'Both ways counts as peak strain × 2 to the power ½. Hairlines: powers 0 and 1, between which nobody has measured.';

/** “5 000 cycles: 2.6 % for half, 1.9 to 3.4”. */
export function curveReading(
  at: number,
  spread: { readonly low: number; readonly half: number; readonly high: number } | undefined,
): string {
  const head = readAtText(at);
  if (!spread) return `${head}: nobody has counted so far`;
  return `${head}: ${percent(spread.half)} for half, ${(spread.low * 100).toFixed(2)} to ${(spread.high * 100).toFixed(2)}`;
}

export const STANDS_ON = 'What the curve stands on';

export interface StandsRow {
  readonly key: string;
  readonly kind: ProvenanceKind;
  readonly head: string;
  readonly more: string;
  /** The documents in full. */
  readonly full: readonly string[];
}

function anchorHead({ what, cycles: count, strain, says }: Anchor): string {
  const many = manyCycles(count);
  if (says === 'at') return `${what}; half break by ${many}${strain === undefined ? '' : ` at ${percent(strain)}`}`;
  const at = strain === undefined ? '' : ` at ${percent(strain)}`;
  return `${what}: ${says === 'fewer' ? 'fewer than' : 'at least'} ${many}${at}`;
}

/** Label of a point on the curve, in few words. */
export function anchorLabel({ strain, seen, what, cycles: count }: Anchor): string {
  if (strain === undefined) return '';
  if (seen) return `${what.split(/[ ,:]/)[0]?.toLowerCase() ?? 'seen'}, ${percent(strain)}`;
  return /practice/.test(what) ? `practice, ${cycles(count)} at ${percent(strain, 1)}` : `chosen, ${percent(strain)}`;
}

export function boundLabel({ says, cycles: count }: Anchor): string {
  return `fold test: ${says === 'fewer' ? 'fewer than' : 'at least'} ${manyCycles(count)}, strain not seen`;
}

/** Figures of a curve that are given as they are, in the order in which they are read. */
export const GIVEN_FIGURES = [
  'firstFlexBreakStrain',
  'sigmaLog10N',
  'doubtFactor',
  'gamma',
  'maxReportableCycles',
] as const satisfies readonly CurveFigure[];

export type GivenFigure = (typeof GIVEN_FIGURES)[number];

/** What stands before and after each. */
export const GIVEN_SAYS: Readonly<Record<GivenFigure, readonly [before: string, after: string]>> = {
  firstFlexBreakStrain: ['First flex breaks it above ', ''],
  sigmaLog10N: ['Specimens scatter by ', ' in powers of ten'],
  doubtFactor: ['The whole curve may be off by a factor of ', ''],
  gamma: ['Both ways counts by the power ', ' of 2'],
  maxReportableCycles: ['Nobody has counted past ', ' cycles'],
};

/** What each means, and who says so where it is as the table has it. */
const CURVE_MORE: Readonly<Record<GivenFigure, { readonly what: string; readonly by: string }>> = {
  firstFlexBreakStrain: { what: 'A coefficient of the fit may say more; it is never a ductility.', by: '' },
  sigmaLog10N: { what: '', by: 'By judgement; printed PLA was published with 0.55.' },
  doubtFactor: { what: 'Nine times in ten.', by: 'By judgement.' },
  gamma: { what: 'Between 0, only the peak counts, and 1, only the range.', by: 'By judgement.' },
  maxReportableCycles: { what: 'No life is given beyond.', by: '' },
};

function givenHead({ life }: WholeFilament, name: GivenFigure): string {
  const [before, after] = GIVEN_SAYS[name];
  const value = life[name];
  const says = {
    firstFlexBreakStrain: () => percent(value, 0),
    sigmaLog10N: () => String(value),
    doubtFactor: () => String(value),
    gamma: () => String(value),
    maxReportableCycles: () => grouped(value),
  }[name];
  return `${before}${says()}${after}`;
}

/** How the curve changes its course. */
function turnText(turn: number, { maxReportableCycles: counted }: WholeFilament['life']): string {
  if (turn < 1) return 'Bending that springs back counts most, however often';
  if (turn > counted) return 'Bending that stays counts most, as far as anyone has counted';
  return `Up to ${cycles(turn)} cycles bending that stays counts most, beyond them bending that springs back`;
}

/** Everything that the curve stands on: what was seen, remembered and chosen, then what is read off it. */
export function standsOn(row: WholeFilament, anchors: readonly Anchor[]): readonly StandsRow[] {
  const { life } = row;
  const kind = soundness(life.provenance);
  const seen = anchors.map((anchor, at) => ({
    key: `anchor ${at}`,
    kind: anchor.kind,
    head: anchorHead(anchor),
    more: sentence(anchor.more),
    full: anchor.sources.map((source) => sentence(cited(source))),
  }));
  const plain = (key: string, head: string, more: string, of: ProvenanceKind = kind): StandsRow => ({
    key,
    kind: of,
    head,
    more,
    full: [],
  });
  const figures = GIVEN_FIGURES.map((name): StandsRow => {
    const isJudged = isAsJudged(row, name);
    const isPublished = name === 'sigmaLog10N' && plasticOf(row) === 'pla';
    const { what, by } = CURVE_MORE[name];
    const more = !isJudged ? what : isPublished ? 'Computed from the published band.' : `${what} ${by}`.trim();
    return plain(name, givenHead(row, name), more.trim(), isJudged ? (isPublished ? 'published' : 'memory') : kind);
  });
  return [
    ...seen,
    plain('transition', turnText(transitionCycles(life), life), 'Where both parts of the curve are alike.'),
    ...figures,
    plain(
      'rest',
      `Holds at ${LIFE_HOLDS_FOR.roomTemperatureC} °C, up to ${LIFE_HOLDS_FOR.flexesPerSecond} flexes a second, ${LIFE_HOLDS_FOR.surface}`,
      life.note === undefined ? '' : sentence(life.note),
    ),
  ];
}
