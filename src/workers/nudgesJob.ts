/** Works out what small changes of a joint do: apart from the other jobs, since no drawing waits for it. */
import { looksBeyond } from '../core/design/looksBeyond.ts';
import { nudgesOf } from '../core/design/nudges.ts';
import { rememberSolved, withinSolves } from '../core/design/rememberSolved.ts';
import { withoutWay } from '../core/design/withoutWay.ts';
import { ok } from '../core/result.ts';
import { judgeWith } from './judgeWith.ts';
import type { Alive, Input, Output } from './protocol.ts';

const solve = rememberSolved();

/** All that a table has rows for, and room for filaments of the user's own; those beyond say so. */
const MOST_SOLVES = 60;

export function nudgesJob({ joint }: Input<'nudges'>, alive: Alive): Output<'nudges'> {
  const before = judgeWith({}, alive, solve)(joint);
  if (!before.ok) return before;
  const detail = looksBeyond(before.value) ? {} : { beyond: false };
  const judge = judgeWith(detail, alive, withinSolves(solve, MOST_SOLVES).solve);
  const nudges = nudgesOf(joint);
  const nudged = nudges.map((nudge, i) => {
    const assessed = judge(nudge.after);
    alive((i + 1) / nudges.length);
    return { ...nudge, assessed: assessed.ok ? ok(withoutWay(assessed.value), assessed.notes) : assessed };
  });
  return ok({ before: withoutWay(before.value), nudged });
}
