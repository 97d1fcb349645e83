/** Why designs fall short of a brief, in words: the reasons, the nearest miss of each, and what of the brief would admit it. */
import type { Miss, Shortcoming, Shortfall } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { amountText, effortText, setAmount, type Measure } from './amountText.ts';
import { manyCycles } from './countText.ts';
import { effortSet, sizeSet } from './findText.ts';
import { chanceText } from './foundText.ts';
import { CELSIUS } from './useText.ts';
import { grouped, length, NO_BREAK, percent, type LengthUnit } from './numbers.ts';
import { listed } from './said.ts';

export const WHY = {
  aside: 'solid: for this alone; light: with others too',
  nearest: 'nearest miss:',
} as const;

export function whyHead(short: number, isDone: boolean): string {
  return `Why ${grouped(short)} fell short${isDone ? '' : ' so far'}`;
}

const REASONS: Readonly<Record<Shortcoming, string>> = {
  along: 'Need more room along',
  across: 'Need more room across',
  depth: 'Need more depth',
  tall: 'Too tall to stand while printed',
  overhang: 'Laid too far over air',
  breaks: 'Break at once',
  life: 'Too few last',
  uncounted: 'Not counted so far by anybody',
  sags: 'Sag while held',
  'bends for good': 'Stay bent: past yield',
  set: 'Stay bent by too much',
  warmth: 'Too near to softening, or brittle',
  hard: 'Push back too hard',
  soft: 'Push back too little',
  'comes back': 'Come back, should stay',
  stays: 'Stay, should come back',
  touches: 'Touch themselves on the way',
};

export function reasonText(reason: Shortcoming): string {
  return REASONS[reason];
}

/** “72 + 682”: alone, and with others too. */
export function bothCounts(alone: number, withOthers: number): string {
  return `${grouped(alone)} + ${grouped(withOthers)}`;
}

export function bothCountsSaid(alone: number, withOthers: number): string {
  return `${grouped(alone)} for this alone, ${grouped(withOthers)} with others too`;
}

/** Two figures that differ, with as many decimals as that takes: a miss by a hair must not read as a hit. */
function apart(one: number, other: number, say: (value: number, places: number) => string): readonly [string, string] {
  for (let places = 1; places < 5; places += 1) {
    const [a, b] = [say(one, places), say(other, places)];
    if (a !== b) return [a, b];
  }
  return [say(one, 5), say(other, 5)];
}

interface In {
  readonly measure: Measure;
  readonly unit: LengthUnit;
}

const inLength =
  ({ unit }: In) =>
  (value: number, places: number) =>
    length(value, unit, unit === 'mm' ? places : places + 1);
const inPercent = (value: number, places: number) => percent(value, places + 1);
const inChance = (value: number, places: number) => `${(100 * value).toFixed(places - 1)} in 100`;

function inEffort({ measure }: In) {
  return (value: number, places: number) =>
    places === 1 ? effortText(value, measure) : exactEffort(value, measure, places);
}

function exactEffort(value: number, measure: Measure, places: number): string {
  return `${Number(value.toPrecision(3 + places))}${NO_BREAK}${measure === 'turn' ? 'N·mm' : 'N'}`;
}

/** A chance nearer than this to another is the same for anybody [share]. */
const A_HAIR = 0.0005;

type Saying = (short: Shortfall, of: In) => string;

const pair = (
  { value, limit }: Shortfall,
  say: (value: number, places: number) => string,
  words: (has: string, asked: string) => string,
) => words(...apart(value, limit, say));

const room =
  (side: string): Saying =>
  (short, of) =>
    pair(short, inLength(of), (has, asked) => `needs ${has} ${side}, ${asked} is wanted`);
const strained =
  (what: string): Saying =>
  (short) =>
    pair(short, inPercent, (has, most) => `strains ${has}, ${what} ${most}`);

const SHORT: Readonly<Record<Shortcoming, Saying>> = {
  along: room('along'),
  across: room('across'),
  depth: room('of depth'),
  tall: (short) =>
    pair(
      short,
      (value, places) => value.toFixed(places - 1),
      (has, most) => `stands ${has} times as tall as thick, ${most} is the most`,
    ),
  overhang: (short, of) =>
    pair(short, inLength(of), (has, most) => `is laid over ${has} of air, ${most} is the most without supports`),
  breaks: strained('breaks at'),
  life: (short) =>
    short.limit - short.value < A_HAIR
      ? `is a hair short of the ${chanceText(short.limit)} that are wanted`
      : pair(short, inChance, (has, asked) => `lasts in ${has}, ${asked} are wanted`),
  uncounted: ({ value, limit }) => `is to last ${manyCycles(value)}, and nobody has counted past ${manyCycles(limit)}`,
  sags: strained('sags when held past'),
  'bends for good': strained('stays bent past'),
  set: (short, of) => {
    const say = (value: number, places: number) =>
      of.measure === 'turn' ? `${((value * 180) / Math.PI).toFixed(places)}°` : inLength(of)(value, places);
    return pair(short, say, (has, most) => `stays bent by ${has}, ${most} is wanted at most`);
  },
  warmth: ({ value, limit }) =>
    value < limit
      ? `softens at ${Math.round(limit)}${CELSIUS}, too near to the ${Math.round(value)}${CELSIUS} of its use`
      : `softens at ${Math.round(limit)}${CELSIUS}, ${Math.round(value)}${CELSIUS} is its use`,
  hard: (short, of) => pair(short, inEffort(of), (has, most) => `pushes back ${has}, ${most} is the most`),
  soft: (short, of) => pair(short, inEffort(of), (has, least) => `pushes back ${has}, ${least} is the least`),
  'comes back': () => 'comes back, where it should stay',
  stays: () => 'stays, where it should come back',
  touches: () => 'touches itself on the way',
};

/** What a design has and what was asked, as it stands after “it”: “needs 11.0 mm along, 8.0 mm is wanted”. */
export function shortText({ short }: Pick<Miss, 'short'>, of: In): string {
  return short.map((one) => SHORT[one.reason](one, of)).join('; ');
}

const SIDES: Partial<Readonly<Record<Shortcoming, string>>> = { along: 'along', across: 'across', depth: 'of depth' };

/** Where nothing meets the brief: “No folded leaf in PA6 fits in 2.0 mm along; 3.4 mm would.” */
export function noneText(kind: string, filament: string, miss: Pick<Miss, 'short'>, of: In): string {
  const [only, ...others] = miss.short;
  const side = SIDES[only.reason];
  if (side === undefined || others.length > 0) return `It ${shortText(miss, of)}.`;
  const [has, asked] = apart(only.value, only.limit, inLength(of));
  return `No ${kind} in ${filament} fits in ${asked} ${side}; ${has} would.`;
}

/** A miss whole: “Leaf, 2 lines, 9.50 mm, PLA: needs …”. */
export function missText(name: string, filament: string, miss: Pick<Miss, 'short'>, of: In): string {
  return `${name}, ${filament}: ${shortText(miss, of)}`;
}

type Change = (after: Wanted, before: Wanted, unit: LengthUnit) => string | undefined;

const CHANGES: readonly Change[] = [
  ...(['along', 'across'] as const).map(
    (side): Change =>
      (after, before, unit) =>
        after.room[side] === before.room[side] ? undefined : `${sizeSet(after.room[side], unit)} ${side}`,
  ),
  (after, before, unit) =>
    after.room.depth === before.room.depth ? undefined : `${sizeSet(after.room.depth, unit)} of depth`,
  (after, before) =>
    after.movement.effortAtMost === before.movement.effortAtMost
      ? undefined
      : effortWish(after, after.movement.effortAtMost),
  (after, before) =>
    after.effortAtLeast === before.effortAtLeast ? undefined : effortWish(after, after.effortAtLeast),
  (after, before) => (after.movement.chance === before.movement.chance ? undefined : chanceText(after.movement.chance)),
  (after, before) =>
    after.movement.cycles === before.movement.cycles ? undefined : `${grouped(after.movement.cycles)} times`,
  (after, before, unit) =>
    after.movement.amount === before.movement.amount
      ? undefined
      : setAmount(after.movement.amount, after.measure, unit),
  (after, before, unit) =>
    after.setAtMost === before.setAtMost
      ? undefined
      : after.setAtMost === undefined
        ? 'any to stay bent'
        : `${amountText(after.setAtMost, after.measure, unit)} to stay bent`,
  (after, before) => (after.supports === before.supports ? undefined : 'supports'),
  (after, before) => (after.movement.held === before.movement.held ? undefined : 'it to be let go'),
  (after, before) => (after.movement.stays === before.movement.stays ? undefined : 'either'),
  (after, before) =>
    after.surroundings?.temperatureC === before.surroundings?.temperatureC
      ? undefined
      : `${after.surroundings?.temperatureC ?? 23}${CELSIUS} at most`,
];

function effortWish({ measure }: Wanted, effort: number | undefined): string {
  return effort === undefined ? 'any effort' : effortSet(effort, measure);
}

/** What the button says that changes the brief: “Allow 11 mm along”. */
export function allowText(before: Wanted, after: Wanted, unit: LengthUnit): string {
  const changes = CHANGES.flatMap((change) => change(after, before, unit) ?? []);
  return changes.length === 0 ? 'Allow it' : `Allow ${listed(changes)}`;
}
