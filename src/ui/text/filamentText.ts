/** What the page of one filament says. */
import { curveDoubt } from './curveDoubtText.ts';
import type { Standing } from '../../core/design/acrossFilaments.ts';
import type { PushLeft } from '../../core/life/relaxation.ts';
import { reckonedFolds, FOLD_STRAINS } from '../../core/life/reckonedFolds.ts';
import { soundness } from '../../core/material/choose.ts';
import { FOLD_TEST, GUESSED_FOLD, strengthOf, type Strength } from '../../core/material/evidence.ts';
import { evidenceFrom, plasticOf } from '../../core/material/ownEvidence.ts';
import { findFilament, isOwn } from '../../core/material/shelf.ts';
import type { ProvenanceKind, Quantity, WholeFilament } from '../../core/material/types.ts';
import { rangeText, valueText } from './figureText.ts';
import { PROPERTIES, READ_PROPERTIES, type Property } from './filamentValueText.ts';
import { READING_KEYS } from './chartText.ts';
import { foldsFigure, manyCycles, spanText } from './countText.ts';
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
  const { certainty } = row.life;
  const from = asInText(row);
  const doubt = `Against ours the true curve lies within a factor of ${curveDoubt(row.life)}.`;
  return `${sentence(from === '' ? certainty : `${from}: ${certainty}`)}${besideTest(row)} ${doubt}`;
}

/** “as in PETG”, of a row of the user's own whose curve still takes the course that it was copied with. */
export function asInText(row: WholeFilament): string {
  const id = isOwn(row) ? evidenceFrom(row) : undefined;
  const from = id && findFilament(id);
  return from ? asMadeText(from.name, false) : '';
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
