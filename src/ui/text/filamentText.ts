/** What the page of one filament says. */
import type { Standing } from '../../core/design/acrossFilaments.ts';
import { LIFE_HOLDS_FOR } from '../../core/life/assessLife.ts';
import { transitionCycles } from '../../core/life/curveOf.ts';
import type { PushLeft } from '../../core/life/relaxation.ts';
import { reckonedFolds, FOLD_STRAINS } from '../../core/life/reckonedFolds.ts';
import { soundness } from '../../core/material/choose.ts';
import { FOLD_TEST, GUESSED_FOLD, strengthOf, type Anchor, type Strength } from '../../core/material/evidence.ts';
import { evidenceFrom, isAsJudged, plasticOf } from '../../core/material/ownEvidence.ts';
import type { CurveFigure } from '../../core/material/ownLimits.ts';
import { findFilament, isOwn } from '../../core/material/shelf.ts';
import type { ProvenanceKind, Quantity, WholeFilament } from '../../core/material/types.ts';
import { cited, PROPERTIES, rangeText, READ_PROPERTIES, valueText, type Property } from './filamentValueText.ts';
import { READING_KEYS } from './chartText.ts';
import { foldsFigure, manyCycles, readAtText, spanText } from './countText.ts';
import { cycles, grouped, NO_BREAK, percent, share } from './numbers.ts';
import { asMadeText } from './ownText.ts';
import { capital, sentence } from './said.ts';

/** A figure of a sentence, and the place on the page that tells where it comes from. */
export interface Linked {
  readonly figure: string;
  readonly kind: ProvenanceKind;
  readonly to: Property | 'life';
}

type LinkedText = readonly (string | Linked)[];

/** A value of a filament as it stands in a sentence. */
function valueOf({ properties: p }: WholeFilament, to: Property, say = valueText): Linked {
  const quantity = p[to] as Quantity;
  return { figure: say(quantity, PROPERTIES[to].strain), kind: soundness(quantity.provenance), to };
}

/** Where it softens: crystals carry some past their glass transition. */
function softeningOf({ crystalline }: WholeFilament): Property {
  return crystalline ? 'heatDeflection' : 'glassTransition';
}

/** The filament in four numbers. */
export function fourNumbers(row: WholeFilament): LinkedText {
  return [
    ' bends to ',
    valueOf(row, 'permissibleStrainRepeated'),
    ' again and again, stays bent past ',
    valueOf(row, 'yieldStrain'),
    ', breaks at about ',
    valueOf(row, 'strainAtBreak'),
    row.crystalline ? ' and under load sags at ' : ' and softens at ',
    valueOf(row, softeningOf(row)),
    '.',
  ];
}

const EVIDENCE_HEADS: Readonly<Record<Strength, string>> = {
  weak: 'Weak evidence for its life',
  fair: 'Fair evidence for its life, in part',
  strong: 'Strong evidence for its life',
};

export function evidenceHead({ life }: WholeFilament): string {
  return EVIDENCE_HEADS[strengthOf(life.certainty)];
}

/** Beside the published fold test, where it tells of this filament. */
function besideTest(row: WholeFilament): string {
  const plastic = evidenceFrom(row);
  if (plastic === undefined) return '';
  const id = plastic === 'pa6' ? 'pa12' : plastic;
  const test = FOLD_TEST.find((one) => one.row === id);
  if (!test) return '';
  if (test.says === 'more') {
    return ` A published fold test had printed ${test.name} whole after ${grouped(test.cycles)} folds, at a strain that we could not see. Our curve was set to meet it at a guessed ${id === 'pp' ? percent(GUESSED_FOLD, 0) : '30 %'}.`;
  }
  const ours = foldsFigure(reckonedFolds(row).practice, row.life.maxReportableCycles);
  return ` A published fold test puts printed ${test.name} under ${grouped(test.cycles)} folds, at a strain that we could not see. Our curve gives ${ours} at ${percent(FOLD_STRAINS.practice, 1)}. Both can be so.`;
}

export function evidenceText(row: WholeFilament): string {
  const { certainty, doubtFactor } = row.life;
  const from = asInText(row);
  const doubt = `The true curve lies within a factor of ${doubtFactor} of ours, nine times in ten.`;
  return `${sentence(from === '' ? certainty : `${from}: ${certainty}`)}${besideTest(row)} ${doubt}`;
}

/** “as in PETG”, of a row of the user's own whose curve still takes the course that it was copied with. */
export function asInText(row: WholeFilament): string {
  const id = isOwn(row) ? evidenceFrom(row) : undefined;
  const from = id && findFilament(id);
  return from ? asMadeText(from.name, false) : '';
}

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

/* ---- what the curve stands on ---- */

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

/* ---- push left while held ---- */

export const FIGURE_TWO = {
  name: 'Push left while held bent',
  aid: '23 °C, small strains; shade: low to high',
  keys: READING_KEYS,
  table: 'Share of the push left, by time held',
  heads: ['held for', 'usual', 'least', 'most'],
} as const;

/** “a day: 70 % left, 62 % to 78 %”. */
export function leftReading(minutes: number, { usual, least, most }: PushLeft): string {
  return `${spanText(minutes / 60)}: ${share(usual)} left, ${share(least)} to ${share(most)}`;
}

export function heldText(row: WholeFilament): LinkedText {
  const rubber = plasticOf(row) === 'tpu95a' ? ' Under a constant load it sags on: that is creep, not fatigue.' : '';
  return [
    'Held at small strain, it keeps of its push what the curve says, against a minute after it was bent. Let go after a day, ',
    valueOf(row, 'setAfterDayHeld'),
    ' stays. The figure is for a room; nearer to where it softens, ',
    valueOf(row, softeningOf(row)),
    `, it loses more, and none is given.${rubber}`,
  ];
}

/* ---- warmth and water ---- */

const withRange: typeof valueText = (quantity, asStrain) =>
  `${valueText(quantity, asStrain)} (${rangeText(quantity, asStrain)})`;

/** `warmest` is as warm as a joint may get, where there is a joint. */
export function warmthText(row: WholeFilament, warmest: number | undefined): LinkedText {
  const glass = valueOf(row, 'glassTransition', withRange);
  const sags = valueOf(row, 'heatDeflection', withRange);
  const upTo =
    warmest === undefined
      ? '.'
      : `. By our rule a joint may get as warm as ${warmest}${NO_BREAK}°C; past that it is doubtful.`;
  return row.crystalline
    ? ['Its glass transition lies at ', glass, ', but crystals carry it past that; a loaded bar sags at ', sags, upTo]
    : ['It softens at its glass transition, ', glass, '; a loaded bar sags at ', sags, upTo];
}

export function waterText(row: WholeFilament): LinkedText {
  const { properties: p } = row;
  const takes = ['Of water it takes up ', valueOf(row, 'waterUptake')];
  const stiff = p.youngsModulusDry && [valueOf(row, 'youngsModulusDry'), ' stiff'];
  const bent = p.yieldStrainDry && ['stays bent past ', valueOf(row, 'yieldStrainDry')];
  if (stiff || bent) {
    const and = stiff && bent ? [' and '] : [];
    const dry = [...(stiff ?? []), ...and, ...(bent ?? [])];
    return [...takes, '. Its figures are for damp as in a room; dry it is ', ...dry, '.'];
  }
  if (!p.conditionedOverDryModulus) return [...takes, '.'];
  const left = valueOf(row, 'conditionedOverDryModulus', ({ typical }) => share(typical));
  return [...takes, '; in a room ', left, ' of its dry stiffness is left.'];
}

/* ---- the table ---- */

export const NUMBERS = {
  head: 'Every number, and where it comes from',
  aside: 'box: low to high; ticks: the other filaments; open a source for the document',
  heads: ['What', 'Beside the others', 'Usual', 'Low to high', 'Kind', 'Source'],
  copy: 'Copy the numbers',
  copied: 'Copied',
  notCopied: 'This browser does not let it be copied.',
  back: 'All filaments',
} as const;

/** For a table of a program that the user has: one line a property, parted by tabs. */
export function asTabbed(row: WholeFilament): string {
  const lines = READ_PROPERTIES.flatMap((property) => {
    const quantity = row.properties[property];
    if (!quantity) return [];
    const { name, strain } = PROPERTIES[property];
    const kind = soundness(quantity.provenance);
    return [[name, valueText(quantity, strain), rangeText(quantity, strain), kind].join('\t')];
  });
  return [row.fullName, ...lines].join('\n').replaceAll(NO_BREAK, ' ');
}

export function takeItText(jointName: string): string {
  return `Use it for ${jointName}`;
}

export function usedText(jointName: string, name: string, was: string): string {
  return `${jointName} made of ${name}, was ${was}`;
}

/** Who uses it. */
export function usedByText(count: number): string {
  if (count === 0) return 'no joint of this part';
  return count === 1 ? 'one joint of this part' : `${count} joints of this part`;
}

/** How it would bear the open joint. */
export function jointSays(row: WholeFilament, { life }: Standing, jointName: string, wanted: number): LinkedText {
  if (life.breaksOnFirstFlex) return [`As your ${jointName} the first flex breaks it.`];
  const isPast = life.median > life.maxReportableCycles;
  const figure = isPast ? manyCycles(life.maxReportableCycles) : cycles(life.median);
  return [
    `As your ${jointName} half ${isPast ? 'last past' : 'break by'} `,
    { figure, kind: soundness(row.life.provenance), to: 'life' },
    ` cycles${isPast ? ', where counting stops' : ''}; you want ${grouped(wanted)}.`,
  ];
}

export function titleOf(row: WholeFilament): string {
  return capital(row.fullName);
}
