/** Brings a joint to a feel: what small changes do, and what would give it an effort. Apart, since no drawing waits for it. */
import { looksBeyond } from '../core/design/looksBeyond.ts';
import { matchEffort } from '../core/design/matchEffort.ts';
import { nudgesOf } from '../core/design/nudges.ts';
import { rememberSolved, withinSolves } from '../core/design/rememberSolved.ts';
import { withoutWay } from '../core/design/withoutWay.ts';
import { ok } from '../core/result.ts';
import { judgeWith } from './judgeWith.ts';
import type { Alive, Input, Output } from './protocol.ts';

const solve = rememberSolved();

/** All that a table has rows for, and room for filaments of the user's own; those beyond say so. */
const MOST_NUDGES = 60;
/** Every way to its end, each with as many efforts as it may ask for. */
const MOST_TRIED = 80;

export function nudgesJob({ joint }: Input<'nudges'>, alive: Alive): Output<'nudges'> {
  const before = judgeWith({}, alive, solve)(joint);
  if (!before.ok) return before;
  const detail = looksBeyond(before.value) ? {} : { beyond: false };
  const judge = judgeWith(detail, alive, withinSolves(solve, MOST_NUDGES).solve);
  const nudges = nudgesOf(joint);
  const nudged = nudges.map((nudge, i) => {
    const assessed = judge(nudge.after);
    alive((i + 1) / nudges.length);
    return { ...nudge, assessed: assessed.ok ? ok(withoutWay(assessed.value), assessed.notes) : assessed };
  });
  return ok({ before: withoutWay(before.value), nudged });
}

export function matchEffortJob({ joint, wanted }: Input<'matchEffort'>, alive: Alive): Output<'matchEffort'> {
  const bounded = withinSolves(solve, MOST_TRIED).solve;
  // Where it snaps may lie past how far it is moved.
  const quick = judgeWith({ whole: false, beyond: wanted.at === 'snap' }, alive, bounded);
  const before = joint.movement.stays === undefined ? undefined : judgeWith({}, alive, solve)(joint);
  const beyond = before?.ok === true && looksBeyond(before.value);
  const full = judgeWith(beyond ? {} : { beyond }, alive, solve);
  const answer = matchEffort(joint, wanted, { quick, full });
  if (!answer.ok) return answer;
  const matches = answer.value.matches.map((match) => ({ ...match, assessment: withoutWay(match.assessment) }));
  return ok({ ...answer.value, matches }, answer.notes);
}
