/** What each job does: the same functions run in a worker and, where none can start, on the page. */
import type { Assessment, VerdictReason } from '../core/design/assessment.ts';
import { looksBeyond } from '../core/design/looksBeyond.ts';
import { quickFirst } from '../core/design/quickFirst.ts';
import { narrowingLike, rememberSolved, withinSolves } from '../core/design/rememberSolved.ts';
import type { Remedy } from '../core/design/remedy.ts';
import { remedyCost } from '../core/design/remedyCost.ts';
import { roomToSpare } from '../core/design/roomToSpare.ts';
import { SHOWN, waysOut } from '../core/design/waysOut.ts';
import { withoutWay } from '../core/design/withoutWay.ts';
// Joints of every kind are sent here.
import '../core/flexures/index.ts';
import { putOnShelf } from '../core/material/shelf.ts';
import { ok } from '../core/result.ts';
import { judgeWith } from './judgeWith.ts';
import type { Alive, Input, JobName, Output, Request, Tell, Ways } from './protocol.ts';

/** What is not here comes when it is first asked for. */
type AtOnce = 'assess' | 'waysOut';
type Jobs = { readonly [K in AtOnce]: (input: Input<K>, alive: Alive) => Output<K> };

const solve = rememberSolved();

/** Points up to the wanted amount of the many solves of a search; limits of effort between them are found all the same. */
const SEARCH_PARTS = 12;
/** A search that does not look at shapes does not see this; where it rests, a way tells without them. */
const SEEN_BY_SHAPE: readonly VerdictReason[] = ['touches'];
/** So many more are found than are told, because shapes may speak against some. */
const TO_SPARE = 3;
/** A search ends after so many solves, some ten seconds of the slowest kind, and says that it was cut short. */
const MOST_SOLVES = 60;

/**
 * Remedies for a joint, or room to spare. A search that does not look at shapes, nor at how much each filament narrows,
 * finds them, and each one that is told has been assessed as it is, with its shapes as well.
 */
function waysOf(before: Assessment, alive: Alive): Ways {
  const beyond = looksBeyond(before);
  const search = withinSolves(solve, MOST_SOLVES);
  const narrowing = narrowingLike(search.solve, before.filament);
  // Whether it just rests, or just does not, is told by the points between which it would.
  const parts = beyond ? {} : { parts: SEARCH_PARTS };
  const quick = judgeWith({ whole: false, beyond, ...parts }, alive, narrowing);
  const detail = beyond ? {} : { beyond };
  const full = judgeWith(detail, alive, solve);
  const confirmed = (remedy: Remedy): readonly Remedy[] => {
    const again = full(remedy.after);
    const stands = again.ok && again.value.verdict.grade === remedy.assessment.verdict.grade;
    if (!stands) return [];
    const cost = remedyCost(remedy.kinds, before, again.value, remedy.size);
    return [{ ...remedy, cost, assessment: withoutWay(again.value) }];
  };
  const told = (found: readonly Remedy[]) => {
    const stand: Remedy[] = [];
    for (const remedy of found) if (stand.length < SHOWN) stand.push(...confirmed(remedy));
    return stand.toSorted((x, y) => x.cost - y.cost);
  };
  const isBlind = SEEN_BY_SHAPE.includes(before.verdict.reason);
  const found = isBlind ? [] : waysOut(before, quick, SHOWN + TO_SPARE);
  const remedies = told(found);
  const isTold = remedies.length > 0 || (found.length === 0 && !isBlind);
  return {
    before: withoutWay(before),
    remedies: isTold ? remedies : told(waysOut(before, judgeWith(detail, alive, search.solve))),
    spares: roomToSpare(before, quickFirst(quick, full)),
    isCut: search.isCut(),
  };
}

const JOBS: Jobs = {
  assess: ({ joint, drawn }, alive) => {
    const assessed = judgeWith({}, alive, solve)(joint);
    return assessed.ok && !drawn ? ok(withoutWay(assessed.value), assessed.notes) : assessed;
  },
  waysOut: ({ joint }, alive) => {
    const assessed = judgeWith({}, alive, solve)(joint);
    return assessed.ok ? ok(waysOf(assessed.value, alive)) : assessed;
  },
};

/** Does a job; `alive` is called every few milliseconds meanwhile. */
export function runJob<K extends AtOnce>(job: K, input: Input<K>, alive: Alive): Output<K> {
  return JOBS[job](input, alive);
}

/** Does whatever a request asks for, with the user's own filaments that it brings along; `tell` hears news on the way. */
export async function runRequest(
  { job, input, own }: Request,
  alive: Alive,
  tell: Tell = () => undefined,
): Promise<Output<JobName>> {
  putOnShelf(own);
  if (job === 'assess' || job === 'waysOut') return runJob(job, input as Input<AtOnce>, alive);
  return (await import('./lateJobs.ts')).lateJob(job, input, alive, tell);
}
