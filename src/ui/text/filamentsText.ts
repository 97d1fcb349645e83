/** What the comparison of all filaments says. */
import { ORDERS, type Order, type Standing } from '../../core/design/acrossFilaments.ts';
import type { AllowableName } from '../../core/design/assessment.ts';
import type { Movement } from '../../core/design/joint.ts';
import type { Reckoned } from '../../core/life/reckonedFolds.ts';
import { FOLD_STRAINS } from '../../core/life/reckonedFolds.ts';
import { SUITS, type Suited, type Use } from '../../core/life/suits.ts';
import { FOLD_SOURCE, FOLD_TEST, GUESSED_FOLD, type Folded } from '../../core/material/evidence.ts';
import type { Filament, ProvenanceKind, RowId } from '../../core/material/types.ts';
import { READING_KEYS } from './chartText.ts';
import { foldsFigure, manyCycles, readAtText } from './countText.ts';
import { cited } from './filamentValueText.ts';
import { cycles, grouped, inHundred, inWords, percent, share } from './numbers.ts';
import { capital, figure, type Said } from './said.ts';
import { gradeWord } from './verdictText.ts';

const ORDER_WORDS: Readonly<Record<Order, string>> = {
  repeated: 'strain stood again and again',
  life: 'life at your joint',
  stiffness: 'stiffness',
  breaks: 'strain at break',
  softens: 'where they soften',
  name: 'name',
};

/** Without a joint there is no life to go by. */
export function orderOptions(hasJoint: boolean): readonly { value: Order; text: string }[] {
  return ORDERS.filter((order) => hasJoint || order !== 'life').map((order) => ({
    value: order,
    text: ORDER_WORDS[order],
  }));
}

export type ShownRows = 'all' | 'marked';

export function shownOptions(all: number, marked: number): readonly { value: ShownRows; text: string }[] {
  return [
    { value: 'all', text: `All ${inWords(all)}` },
    { value: 'marked', text: marked === 1 ? 'The one marked' : `The ${inWords(marked)} marked` },
  ];
}

/** “PETG”, “Moulded PP”: a name where it begins a line. */
export function rowName({ name }: Pick<Filament, 'name'>): string {
  return capital(name);
}

/** Under the name: what matters about the row. */
export function rowNote({ id, printable, fullName }: Filament, isInUse: boolean): string {
  if (isInUse) return 'in your joint';
  if (!printable) return 'to compare with';
  if (id.startsWith('own-')) return 'your own';
  return /conditioned/.test(fullName) ? 'damp as in a room' : '';
}

const WAYS: Readonly<Record<Movement['ways'], string>> = {
  'one way': 'one way',
  'both ways': 'both ways',
  between: 'between two amounts',
};

export function waysWords({ ways }: Movement): string {
  return WAYS[ways];
}

export function timesWords({ cycles: wanted, also = [] }: Movement): string {
  return `${grouped(wanted)} times${also.length > 0 ? ', smaller movements beside' : ''}`;
}

/** “one way, 5 000 times”. */
export function movementWords(movement: Movement): string {
  return `${waysWords(movement)}, ${timesWords(movement)}`;
}

export const NOT_HERE =
  'No filament is kept under this address: it was removed, or belongs to another machine. Here are all.';
export const NO_JOINT = 'Nothing bends in your part yet, so no life is told.';
export const JOINT_REFUSED = 'Your joint cannot be worked out as it stands, so no life is told.';
export const STRAIN_SOURCE =
  'worked out from its sizes, with the share of the root’s concentration from memory; every step stands on its sheet,';
export const SAME_STRAIN =
  'All bear the strain of your joint as it is; another filament would change it by a little shear only.';

export const FIGURE_1 = {
  name: 'Side by side, along the lines, 23 °C',
  aid: 'Box: low to high, dashed if only remembered; upright: usual; ring: again and again; diamond: where a loaded bar sags',
  keys: 'Up and Down go between filaments, Left and Right along one; Enter opens.',
} as const;

/** Half break by: “24 000”, “over 1 M”, “first flex”. */
export function lifeText({ life }: Standing): string {
  if (life.breaksOnFirstFlex) return 'first flex';
  return life.median > life.maxReportableCycles ? `over ${manyCycles(life.maxReportableCycles)}` : cycles(life.median);
}

/** “87 in 100”, “breaks”; no chance is given of more cycles than anyone has counted. */
export function chanceText({ life }: Standing): string {
  if (life.breaksOnFirstFlex) return 'breaks';
  return life.beyond === 'wanted' ? 'beyond the data' : `${inHundred(life.chance)} in 100`;
}

const REASONS: Readonly<Record<AllowableName, string>> = {
  repeated: 'wears with every flex',
  single: 'may stay bent',
  yield: 'stays bent',
  break: 'bent past breaking',
  held: 'sags when held',
};

/** Why it is not better, where that is not its life. */
export function reasonText({ reason, grade }: Standing): string {
  return reason === 'life' || reason === 'repeated' || grade === 'pass' ? '' : REASONS[reason];
}

/** All of it for those who do not see it: “Pass: half last past 1 M, over 99 in 100 reach 5 000”. */
export function spokenStanding(standing: Standing, wanted: number): string {
  const { grade, life } = standing;
  const why = reasonText(standing);
  const reach = life.beyond === 'wanted' ? 'no chance is given' : `${chanceText(standing)} reach ${grouped(wanted)}`;
  const says = life.breaksOnFirstFlex ? 'the first flex breaks it' : `${halfText(life)}, ${reach}`;
  return `${gradeWord(grade)}: ${says}${why === '' ? '' : `, ${why}`}`;
}

/** “half break by 24 000”, “half last past 1 M”. */
function halfText({ median, maxReportableCycles: counted }: Standing['life']): string {
  return median > counted ? `half last past ${manyCycles(counted)}` : `half break by ${cycles(median)}`;
}

/* ---- the conflict ---- */

const folded = (row: RowId): Folded => {
  const found = FOLD_TEST.find((one) => one.row === row);
  if (!found) throw new RangeError(`the fold test tells nothing of ${row}`);
  return found;
};

const COUNTS = new Map([
  [1e6, 'a million'],
  [2e6, 'two million'],
]);
const countWords = (count: number) => COUNTS.get(count) ?? grouped(count);

export const CONFLICT = {
  head: 'The evidence on nylon and PP disagrees',
  source: 'The source',
} as const;

/** What was counted, before any number of ours. */
export function conflictText(): Said {
  return [
    'A published fold test of printed hinges had PP last ',
    figure(countWords(folded('pp').cycles), 'published'),
    ' folds and nylon ',
    figure(`fewer than ${grouped(folded('pa12').cycles)}`, 'published'),
    ', no better than PETG or PLA. Practice holds nylon the best. See Fig. 3 for how both can be so.',
  ];
}

export function foldSourceText(): string {
  return cited(FOLD_SOURCE);
}

/** How both can hold, from what our curve of nylon gives. */
export function bothHoldText(nylon: Reckoned): Said {
  return [
    'Both can hold. The test folded hinges hard; we saw its lives but not its strain. At ',
    figure(percent(FOLD_STRAINS.practice, 1)),
    ' our nylon curve itself gives ',
    figure(cycles(nylon.practice), 'memory'),
    ' folds, and at ',
    figure(percent(FOLD_STRAINS.mild, 0)),
    ' it gives ',
    figure(cycles(nylon.mild), 'memory'),
    '. So: for a full fold choose PP or TPU; for a moderate bend nylon outlasts PETG. Our PP curve was set to meet this one test at a guessed ',
    figure(percent(GUESSED_FOLD, 0), 'memory'),
    ', so it agrees because it was made to.',
  ];
}

/** “over 2 million”, “1 million, whole”, “244 424”, “fewer than 1 000”. */
export function foldedText({ cycles: count, says }: Folded): string {
  const million = count >= 1e6 ? `${count / 1e6} million` : grouped(count);
  return { fewer: `fewer than ${million}`, more: `at least ${million}`, at: million }[says];
}

/** “ours, 30 to 5 %: 210 to 14 000; 1 000 at 14.7 %”. */
export function reckonedText({ hard, practice, mild }: Reckoned, counted: number): string {
  const most = (count: number) => foldsFigure(count, counted);
  return `ours ${most(hard)} to ${most(mild)}, ${most(practice)} at ${percent(FOLD_STRAINS.practice, 1)}`;
}

export const FIGURE_3 = {
  name: 'What was counted, against what we reckon',
  aid: `ink: counted; shade: our curve, ${share(FOLD_STRAINS.hard)} to ${share(FOLD_STRAINS.mild)}; tick: ${percent(FOLD_STRAINS.practice, 1)}`,
} as const;

/* ---- what each suits ---- */

const USES: Readonly<Record<Use, readonly [suits: string, not: string]>> = {
  'full folds': ['full folds, many times', 'full folds'],
  'far bends': ['bending far, again and again', 'bending far'],
  'stiff springs': ['stiff springs', 'stiff springs'],
  'being held': ['being held bent', 'being held bent for days'],
  'warm places': ['warm places', 'warm places'],
  'damp and dry': ['', 'a push that must not change with the weather'],
};

export function usesText(suited: readonly Suited[], which: boolean): string {
  const uses = suited.filter(({ suits }) => suits === which).map(({ use }) => USES[use][which ? 0 : 1]);
  return uses.length === 0 ? '' : capital(`${uses.join('; ')}.`);
}

/** What practice adds; none of it has a source. */
const PRACTICE: Partial<Readonly<Record<RowId, string>>> = {
  pla: 'As a switch of two states, bent 40° over 2 mm, it whitens and breaks within few cycles.',
  petg: 'As a switch of two states it lives through many cycles.',
  asa: 'As a switch of two states it lives through many cycles, and discolours.',
  pa6: 'The best of these as a switch of two states.',
  pa12: 'The best of these as a switch of two states.',
  tpu95a: 'Does not hold a second state. Under a constant load it sags, which is creep and not fatigue.',
};

export function practiceText(id: string): string {
  return PRACTICE[id as RowId] ?? '';
}

export const SUITS_TEXT = {
  head: 'What each suits, in terms of flexing',
  suits: 'Suits',
  not: 'Does not suit',
  practice: 'Common practice, no source',
  /** The limits by which it is said. */
  rules: [
    `Full folds: half last ${grouped(SUITS.fullFolds.many)} or more at ${percent(FOLD_STRAINS.practice, 1)} by the curve, or fewer than ${grouped(SUITS.fullFolds.few)}`,
    `bending far: ${percent(SUITS.bends.far, 1)} or more again and again, or under ${percent(SUITS.bends.little, 0)}`,
    `stiff springs: ${grouped(SUITS.springs.stiff)} MPa or more, or under ${grouped(SUITS.springs.soft)}`,
    `held: ${share(SUITS.held.keeps)} or more of the push left after a day, or under ${share(SUITS.held.loses)}`,
    `warm places: softens at ${SUITS.warmth.warm} °C or more, or under ${SUITS.warmth.cool} °C. Between these nothing is said; the limits are our own`,
  ].join('; '),
} as const;

/* ---- the shared curves ---- */

export const FIGURE_2 = {
  name: 'Strain against life, all of them',
  aid: 'line: half are broken; shade: 10 to 90 in 100, scatter and doubt together',
  note: 'A line ends where counting ends. A dot at its head: the first bend above it breaks. Curves of PP and TPU are nearly level: a tenth more strain divides the life by about five, so read them as “lasts” or “does not”.',
  keys: READING_KEYS,
  table: 'Strain at which half have broken, by cycles',
  marked: 'Show the spread of',
} as const;

/** Asked at a fourth band. */
export const FOURTH = {
  asks: (name: string) => `Three bands read well, a fourth hides them. Show ${name} in the place of`,
  leave: 'Leave it',
} as const;

/** A strain at so many cycles, where anyone has counted so far. */
export function countedStrain(strain: number | undefined): string {
  return strain === undefined ? 'not counted' : percent(strain);
}

/** “5 000 cycles: PETG 2.62 %, PA12 5.9 %”, of those marked; nothing past what was counted. */
export function sharedReading(
  at: number,
  strains: readonly (readonly [name: string, strain: number | undefined])[],
): string {
  const known = strains.map(([name, strain]) => `${name} ${countedStrain(strain)}`);
  return `${readAtText(at)}: ${known.join(', ')}`;
}

const notLookedUp = (which: string, memory: number) =>
  `Estimates from nominal data, not a safety case. Of ${which}, ${grouped(memory)} are from memory. Test yours.`;

/** How many numbers of one filament nobody has looked up. */
export function countedBelow(memory: number, all: number): string {
  return notLookedUp(`its ${grouped(all)} numbers`, memory);
}

/** The same of the figure that compares them. */
export function countedNote(memory: number, all: number): string {
  return notLookedUp(`the ${grouped(all)} values in Fig. 1`, memory);
}

/** Under a sentence whose figure was asked about. */
export const FIGURE_SOURCES: Readonly<Record<ProvenanceKind, string>> = {
  published: foldSourceText(),
  computed: 'by the formula of the curve.',
  memory:
    'read off our curve, or chosen with it. The curve is set by what practice remembers; open the filament for all that it stands on.',
  measured: 'counted by you.',
};
