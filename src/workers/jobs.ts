/** What each job does: the same functions run in a worker and, where none can start, on the page. */
import { assess, type Judge } from '../core/design/assess.ts';
import type { Assessment, VerdictReason } from '../core/design/assessment.ts';
import { bySolver } from '../core/design/bySolver.ts';
import { rememberSolved } from '../core/design/rememberSolved.ts';
import type { Remedy } from '../core/design/remedy.ts';
import type { SolveDetail } from '../core/design/solveJoint.ts';
import { roomToSpare, waysOut } from '../core/design/waysOut.ts';
// Joints of every kind are sent here.
import '../core/flexures/index.ts';
import { ok } from '../core/result.ts';
import type { Input, JobName, Output, Ways } from './protocol.ts';

/** Called again and again while a job computes, so that whoever waits can tell long from hung. */
type Alive = () => void;
type Jobs = { readonly [K in JobName]: (input: Input<K>, alive: Alive) => Output<K> };

const solve = rememberSolved();

/** Points up to the wanted amount of the many solves of a search; limits of effort between them are found all the same. */
const SEARCH_PARTS = 12;
/** A search that judges strain, effort and life alone does not see these. */
const SEEN_BY_SHAPE: readonly VerdictReason[] = ['touches', 'stays', 'comes back'];

/** What assesses by the solver; a change of filament, of cycles or of chance does not solve anew. */
function judgeWith(detail: SolveDetail, alive: Alive): Judge {
  const cancelled = () => {
    alive();
    return false;
  };
  const respond = bySolver({ ...detail, cancelled }, solve);
  return (joint) => assess(joint, respond);
}

/**
 * Remedies for a joint, or room to spare. A search that does not look at shapes finds them, and each one that is told
 * has been assessed with its shapes as well.
 */
function waysOf(before: Assessment, alive: Alive): Ways {
  const quick = judgeWith({ whole: false, parts: SEARCH_PARTS }, alive);
  // A second rest may lie beyond the wanted amount; all else that a verdict weighs lies before it.
  const full = judgeWith(before.joint.movement.stays === undefined ? { beyond: false } : {}, alive);
  const confirmed = (remedy: Remedy): readonly Remedy[] => {
    const again = full(remedy.after);
    const stands = again.ok && again.value.verdict.grade === remedy.assessment.verdict.grade;
    return stands ? [{ ...remedy, assessment: withoutWay(again.value) }] : [];
  };
  const isBlind = SEEN_BY_SHAPE.includes(before.verdict.reason);
  const found = isBlind ? [] : waysOut(before, quick);
  const told = found.flatMap(confirmed);
  const isTold = told.length > 0 || (found.length === 0 && !isBlind);
  return { remedies: isTold ? told : waysOut(before, full).flatMap(confirmed), spares: roomToSpare(before, quick) };
}

function withoutWay(assessment: Assessment): Assessment {
  const { solved: _solved, ...rest } = assessment;
  return rest;
}

const JOBS: Jobs = {
  assess: ({ joint, drawn }, alive) => {
    const assessed = judgeWith({}, alive)(joint);
    return assessed.ok && !drawn ? ok(withoutWay(assessed.value), assessed.notes) : assessed;
  },
  waysOut: ({ joint }, alive) => {
    const assessed = judgeWith({}, alive)(joint);
    return assessed.ok ? ok(waysOf(assessed.value, alive)) : assessed;
  },
};

/** Does a job; `alive` is called every few milliseconds meanwhile. */
export function runJob<K extends JobName>(job: K, input: Input<K>, alive: Alive): Output<K> {
  return JOBS[job](input, alive);
}
