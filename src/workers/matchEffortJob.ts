/** Looks for joints that push back as hard as is wished: apart from the other jobs, since no drawing waits for it. */
import { looksBeyond } from '../core/design/looksBeyond.ts';
import { matchEffort } from '../core/design/matchEffort.ts';
import { rememberSolved, withinSolves } from '../core/design/rememberSolved.ts';
import { withoutWay } from '../core/design/withoutWay.ts';
import { ok } from '../core/result.ts';
import { judgeWith } from './judgeWith.ts';
import type { Alive, Input, Output } from './protocol.ts';

const solve = rememberSolved();

/** Every way to its end, each with as many efforts as it may ask for. */
const MOST_SOLVES = 80;

export function matchEffortJob({ joint, wanted }: Input<'matchEffort'>, alive: Alive): Output<'matchEffort'> {
  const bounded = withinSolves(solve, MOST_SOLVES).solve;
  // How far it follows a joint that has not snapped yet, and to what else it pushes on, is told by its kind.
  const quick = judgeWith({ whole: false, beyond: wanted.at === 'snap' }, alive, bounded);
  const before = joint.movement.stays === undefined ? undefined : judgeWith({}, alive, solve)(joint);
  const beyond = before?.ok === true && looksBeyond(before.value);
  const full = judgeWith(beyond ? {} : { beyond }, alive, solve);
  const answer = matchEffort(joint, wanted, { quick, full });
  if (!answer.ok) return answer;
  const matches = answer.value.matches.map((match) => ({ ...match, assessment: withoutWay(match.assessment) }));
  return ok({ ...answer.value, matches }, answer.notes);
}
