import type { Assessment, Grade } from './assessment.ts';
import { assess, type Judge } from './assess.ts';
import { DESIGN_CHANGES, MEASURED_CHANGES, type Change } from './changes.ts';
import type { Remedy, Spare } from './remedy.ts';
import { remedyCost } from './remedyCost.ts';
import { largestAmount, mostCount, shortestLength } from './sizeFor.ts';
import { lifeAtChance } from './lifeAtChance.ts';

/** More than these would be a list to study instead of a choice. */
const SHOWN = 6;
/** One change dearer than this is absurd alone (a leaf five times as long); a pair is then looked for. */
const ABSURD = 2.5;
/** So many ways out may rest on the same change of filament. */
const PER_FILAMENT = 2;
/** So many may be of the same kinds of change. */
const PER_KIND = 2;
/** With fewer sensible single changes than this, or none cheaper than `CHEAP`, pairs are tried as well. */
const ENOUGH = 2;
const CHEAP = 1;

const WORSE: Readonly<Record<Grade, number>> = { pass: 0, beyond: 1, caution: 2, fail: 3 };

function isBetter(after: Assessment, before: Assessment): boolean {
  const grades = WORSE[before.verdict.grade] - WORSE[after.verdict.grade];
  return grades > 0 || (grades === 0 && after.life.chance > before.life.chance + 1e-9);
}

interface Tried extends Change {
  readonly assessment: Assessment;
}

/** Every single change of a joint that can be assessed. */
function triedChanges(a: Assessment, judge: Judge): readonly Tried[] {
  const proposers = a.joint.measuredThickness === undefined ? DESIGN_CHANGES : MEASURED_CHANGES;
  return proposers
    .flatMap((propose) => propose(a, judge))
    .flatMap((change) => {
      const tried = judge(change.after);
      return tried.ok ? [{ ...change, assessment: tried.value }] : [];
    });
}

function passes({ assessment }: Tried): boolean {
  return assessment.verdict.grade === 'pass';
}

function remedyOf(before: Assessment, steps: readonly [Tried, ...Tried[]]): Remedy {
  const last = steps.at(-1) ?? steps[0];
  const kinds = steps.map((step) => step.kind) as unknown as Remedy['kinds'];
  const scale = steps.find((step) => step.scale !== undefined)?.scale;
  return {
    kinds,
    after: last.after,
    assessment: last.assessment,
    cost: remedyCost(kinds, before, last.assessment),
    ...(scale === undefined ? {} : { scale }),
  };
}

/** The joint without its name, as a key: the same pair comes up in either order. */
function keyOf({ after }: Remedy): string {
  return JSON.stringify([after.sizes, after.profile, after.movement, after.measuredThickness]);
}

/**
 * Two changes of different kinds together, the first of which does not pass alone. A pair is dropped where one change
 * of its second kind would do alone for no more.
 */
function pairs(a: Assessment, singles: readonly Tried[], alone: readonly Remedy[], judge: Judge): readonly Remedy[] {
  const cheaperAlone = (pair: Remedy): boolean =>
    alone.some(
      ({ kinds: [kind], assessment: { filament }, cost }) =>
        pair.kinds.includes(kind) && filament.id === pair.assessment.filament.id && cost <= pair.cost,
    );
  const found = singles
    .filter((first) => !passes(first) && isBetter(first.assessment, a))
    .flatMap((first) =>
      triedChanges(first.assessment, judge)
        .filter((second) => second.kind !== first.kind && passes(second))
        .map((second) => remedyOf(a, [first, second])),
    );
  return [...new Map(found.map((pair) => [keyOf(pair), pair])).values()].filter((pair) => !cheaperAlone(pair));
}

/** Counts one more of this key and says how many that makes. */
function countUp(counts: Map<string, number>, key: string): number {
  const seen = (counts.get(key) ?? 0) + 1;
  counts.set(key, seen);
  return seen;
}

/**
 * Cheapest first, and only the cheapest few of each combination of kinds and of each filament, so that the list shows
 * choices and not shades of one choice.
 */
function ranked(remedies: readonly Remedy[], home: string): readonly Remedy[] {
  const kindsSeen = new Map<string, number>();
  const filamentsSeen = new Map<string, number>();
  return remedies
    .toSorted((x, y) => x.cost - y.cost)
    .filter(({ kinds, assessment: { filament } }) => {
      const key = kinds.toSorted((x, y) => x.localeCompare(y)).join('+');
      const other = filament.id !== home && countUp(filamentsSeen, filament.id) > PER_FILAMENT;
      return !other && countUp(kindsSeen, key) <= PER_KIND;
    });
}

/**
 * Changes that would make a failing or doubtful joint pass, cheapest first, each computed through `assess`.
 *
 * Where fewer than two sensible single changes pass, or the cheapest is dear, pairs of changes are tried as well; where
 * nothing passes, the single changes that help most are given, and their own assessment says that they do not pass.
 *
 * @param a - the joint as assessed [-]
 * @param judge - what assesses each change [-]
 * @returns at most six ways out; none when the joint passes or lies beyond the data
 */
export function waysOut(a: Assessment, judge: Judge = assess): readonly Remedy[] {
  if (a.verdict.grade === 'pass' || a.verdict.grade === 'beyond') return [];
  const tried = triedChanges(a, judge);
  const passing = tried.filter(passes);
  const alone = passing.map((change) => remedyOf(a, [change]));
  const singles = ranked(alone, a.filament.id);
  const sensible = singles.filter((remedy) => remedy.cost < ABSURD);
  const [cheapest] = sensible;
  if (sensible.length >= ENOUGH && cheapest && cheapest.cost < CHEAP) return sensible.slice(0, SHOWN);
  const paired = pairs(a, tried, alone, judge).filter((remedy) => remedy.cost < 2 * ABSURD);
  const found = ranked([...sensible, ...paired], a.filament.id).slice(0, SHOWN);
  if (found.length > 0) return found;
  return singles.length > 0 ? singles.slice(0, SHOWN) : mostHelpful(a, tried);
}

function mostHelpful(a: Assessment, tried: readonly Tried[]): readonly Remedy[] {
  return tried
    .filter((change) => isBetter(change.assessment, a))
    .toSorted((x, y) => y.assessment.life.chance - x.assessment.life.chance)
    .slice(0, 3)
    .map((change) => remedyOf(a, [change]));
}

/** Counts are looked at up to here; beyond it a section is a pad. */
const THICKEST = 12;

/**
 * When a joint passes: how far each value alone may go while it still passes.
 *
 * @param a - a passing joint as assessed [-]
 * @param judge - what assesses each change [-]
 * @returns amount [rad] or [mm], length [mm], cycles and count, each with the present value
 */
export function roomToSpare(a: Assessment, judge: Judge = assess): readonly Spare[] {
  if (a.verdict.grade !== 'pass') return [];
  const { amount, cycles } = a.joint.movement;
  const often = Math.min(lifeAtChance(a), a.life.maxReportableCycles);
  const spare: Spare[] = [
    { value: 'amount', limit: Math.max(amount, largestAmount(a)), now: amount },
    { value: 'length', limit: Math.min(a.length, shortestLength(a)), now: a.length },
    { value: 'cycles', limit: Math.max(cycles, often), now: cycles },
  ];
  if (a.joint.measuredThickness !== undefined) return spare;
  const count = mostCount(a.joint, THICKEST, judge) ?? a.section.count;
  return [...spare, { value: 'count', limit: Math.max(count, a.section.count), now: a.section.count }];
}
