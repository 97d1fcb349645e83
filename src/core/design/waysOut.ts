import { ok } from '../result.ts';
import type { Assessment, Grade } from './assessment.ts';
import { assess, type Judge } from './assess.ts';
import { DESIGN_CHANGES, MEASURED_CHANGES, type Change, type KindOfChange } from './changes.ts';
import { isByShape } from './leastChange.ts';
import { nearJudge } from './nearJudge.ts';
import { isPassing } from './passing.ts';
import type { Remedy } from './remedy.ts';
import { remedyCost } from './remedyCost.ts';
import { secondRest } from './solvedPath.ts';

/** More than these would be a list to study instead of a choice. */
export const SHOWN = 6;
/** One change dearer than this is absurd alone (a leaf five times as long); a pair is then looked for. */
const ABSURD = 2.5;
/** So many ways out may rest on the same change of filament. */
const PER_FILAMENT = 2;
/** So many may be of the same kinds of change. */
const PER_KIND = 2;
/** With fewer sensible single changes than this, or none cheaper than `CHEAP`, pairs are tried as well. */
const ENOUGH = 2;
const CHEAP = 1;
/** A pair whose strain and effort are estimated no higher than what is allowed over this is worth a solve. */
const HOPE = 0.85;
/** So many pairs of a joint that needs solving are looked at, those first that are estimated to cost least. */
const PAIRS_SOLVED = 10;

const WORSE: Readonly<Record<Grade, number>> = { pass: 0, beyond: 1, caution: 2, fail: 3 };

function isBetter(after: Assessment, before: Assessment): boolean {
  // Whatever else is better, it moves as badly as before.
  if (isByShape(before) && after.verdict.reason === before.verdict.reason) return false;
  const grades = WORSE[before.verdict.grade] - WORSE[after.verdict.grade];
  return grades > 0 || (grades === 0 && after.life.chance > before.life.chance + 1e-9);
}

/** What the verdict rests on is put right, whatever else may be wrong then. */
function isPutRight(after: Assessment, { verdict }: Assessment): boolean {
  if (verdict.reason === 'warmth') return after.warmth.grade === 'pass';
  const { effortAtMost = Number.POSITIVE_INFINITY } = after.joint.movement;
  return verdict.reason === 'effort' && after.effort.effort <= effortAtMost;
}

interface Tried extends Change {
  readonly assessment: Assessment;
}

/** Whether nothing but another filament helps: it softens, or sags out of a place in which it rests as wanted. */
function isOfFilament({ verdict, solved }: Assessment): boolean {
  return (
    verdict.reason === 'warmth' || (verdict.reason === 'comes back' && solved !== undefined && !!secondRest(solved))
  );
}

function kindsFor(a: Assessment): readonly KindOfChange[] {
  const kinds = a.joint.measuredThickness === undefined ? DESIGN_CHANGES : MEASURED_CHANGES;
  return isOfFilament(a) ? kinds.filter(({ kind }) => kind === 'other filament') : kinds;
}

/** Every single change of a joint. */
function changesOf(a: Assessment, judge: Judge): readonly Change[] {
  return kindsFor(a).flatMap(({ propose }) => propose(a, judge));
}

/** Those that can be assessed. */
function triedOf(changes: readonly Change[], judge: Judge): readonly Tried[] {
  return changes.flatMap((change) => {
    const tried = change.assessed ? ok(change.assessed) : judge(change.after);
    return tried.ok ? [{ ...change, assessment: tried.value }] : [];
  });
}

function remedyOf(before: Assessment, steps: readonly [Tried, ...Tried[]]): Remedy {
  const last = steps.at(-1) ?? steps[0];
  const kinds = steps.map((step) => step.kind) as unknown as Remedy['kinds'];
  const scale = steps.find((step) => step.scale !== undefined)?.scale;
  const size = steps.find((step) => step.size !== undefined)?.size;
  return {
    kinds,
    after: last.after,
    assessment: last.assessment,
    cost: remedyCost(kinds, before, last.assessment, size),
    ...(scale === undefined ? {} : { scale }),
    ...(size === undefined ? {} : { size }),
  };
}

/** The joint without its name, as a key: the same pair comes up in either order. */
function keyOf({ after }: Remedy): string {
  return JSON.stringify([after.sizes, after.profile, after.movement, after.measuredThickness]);
}

/** Two changes of different kinds, the second assessed or, of a joint that is solved, estimated. */
type Pair = readonly [first: Tried, second: Tried];

/**
 * Pairs whose first change helps and does not pass alone. Hand forms are asked at once for all of them; where the solver
 * is, an estimate from the first change as solved says which are worth a solve.
 */
function likelyPairs(a: Assessment, singles: readonly Tried[], judge: Judge): readonly Pair[] {
  return singles
    .filter(({ assessment }) => !isPassing(assessment) && (isBetter(assessment, a) || isPutRight(assessment, a)))
    .flatMap((first) => {
      const known = first.assessment;
      const near = known.solved ? nearJudge(known) : judge;
      const hopeful = known.solved ? nearJudge(known, HOPE) : judge;
      return triedOf(changesOf(known, near), hopeful)
        .filter((second) => second.kind !== first.kind && isPassing(second.assessment))
        .map((second): Pair => [first, second]);
    });
}

/** A pair as it is assessed; how far its second change goes is set anew by the judge, where that is one of a scale. */
function settled([first, second]: Pair, judge: Judge): Pair | undefined {
  const known = first.assessment;
  const kind = kindsFor(known).find((one) => one.kind === second.kind);
  const [anew, other] = known.solved && kind ? kind.propose(known, judge, second.size) : [];
  const [found] = triedOf([anew && !other ? anew : second], judge);
  return found && isPassing(found.assessment) ? [first, found] : undefined;
}

/**
 * Two changes of different kinds together, the first of which does not pass alone. A pair is dropped where one change
 * of its second kind would do alone for no more.
 */
function pairs(a: Assessment, singles: readonly Tried[], alone: readonly Remedy[], judge: Judge): readonly Remedy[] {
  const cheaperAlone = (pair: Remedy): boolean =>
    alone.some(
      ({ kinds: [kind], size, assessment: { filament }, cost }) =>
        pair.kinds.includes(kind) &&
        (size === undefined || size === pair.size) &&
        filament.id === pair.assessment.filament.id &&
        cost <= pair.cost,
    );
  const costOf = (pair: Pair) => remedyOf(a, pair).cost;
  const likely = likelyPairs(a, singles, judge)
    .filter((pair) => costOf(pair) < 2 * ABSURD && !cheaperAlone(remedyOf(a, pair)))
    .toSorted((x, y) => costOf(x) - costOf(y));
  const found: Remedy[] = [];
  const isSolved = singles.some(({ assessment }) => assessment.solved !== undefined);
  for (const pair of isSolved ? likely.slice(0, PAIRS_SOLVED) : likely) {
    const count = (more: readonly Remedy[]) => ranked([...alone, ...found, ...more], a.filament.id).length;
    if (isSolved && count([]) >= SHOWN) break;
    // One more of a kind that is told often enough is not worth a solve.
    if (isSolved && count([remedyOf(a, pair)]) === count([])) continue;
    const told = settled(pair, judge);
    if (told) found.push(remedyOf(a, told));
  }
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
    .filter(({ kinds, size = '', assessment: { filament } }) => {
      const key = [...kinds.toSorted((x, y) => x.localeCompare(y)), size].join('+');
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
 * @param most - how many are told [-]
 * @returns ways out; none when the joint passes or lies beyond the data
 */
export function waysOut(a: Assessment, judge: Judge = assess, most = SHOWN): readonly Remedy[] {
  if (isPassing(a) || a.verdict.grade === 'beyond') return [];
  const tried = triedOf(changesOf(a, judge), judge);
  const passing = tried.filter(({ assessment }) => isPassing(assessment));
  const alone = passing.map((change) => remedyOf(a, [change]));
  const singles = ranked(alone, a.filament.id);
  const sensible = singles.filter((remedy) => remedy.cost < ABSURD);
  const [cheapest] = sensible;
  if (sensible.length >= ENOUGH && cheapest && cheapest.cost < CHEAP) return sensible.slice(0, most);
  const paired = pairs(a, tried, alone, judge).filter((remedy) => remedy.cost < 2 * ABSURD);
  const found = ranked([...sensible, ...paired], a.filament.id).slice(0, most);
  if (found.length > 0) return found;
  return singles.length > 0 ? singles.slice(0, most) : mostHelpful(a, tried);
}

function mostHelpful(a: Assessment, tried: readonly Tried[]): readonly Remedy[] {
  return tried
    .filter((change) => isBetter(change.assessment, a))
    .toSorted((x, y) => y.assessment.life.chance - x.assessment.life.chance)
    .slice(0, 3)
    .map((change) => remedyOf(a, [change]));
}
