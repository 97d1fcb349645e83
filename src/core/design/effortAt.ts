import { fail, ok, type Result } from '../result.ts';
import type { Judge } from './assess.ts';
import type { Assessment } from './assessment.ts';
import { feltAt, feltEfforts } from './feltEffort.ts';
import type { Joint } from './joint.ts';
import type { EffortWanted } from './matchAnswer.ts';

/** An effort that falls by less than this share is round-off or a kink on its way, and no snap. */
const DROP = 0.005;

/**
 * The effort at which a joint snaps: the largest on the way before it falls.
 *
 * @param a - a joint that the solver has answered [-]
 * @returns effort [N·mm] or [N]; undefined where it never falls, as far as its way is known
 *
 * Source: elastic-plastic.
 */
export function snapEffort(a: Assessment): number | undefined {
  if (!a.solved) throw new RangeError('only a solved way tells where it snaps');
  const felt = feltEfforts(a);
  const { points, events } = a.solved.forward;
  // At rest there is no push to fall from.
  const moved = [...points, ...events].filter(({ amount }) => amount > 0);
  let most = 0;
  for (const state of moved.toSorted((one, other) => one.amount - other.amount)) {
    const push = felt(state).typical;
    if (most > 0 && push < most * (1 - DROP)) return most;
    most = Math.max(most, push);
  }
  return undefined;
}

/** The joint moved as far as its effort is asked for, one way and by nothing else. */
function movedTo(joint: Joint, at: EffortWanted['at']): Joint {
  const { drive, amount, cycles, chance } = joint.movement;
  return {
    ...joint,
    movement: { drive, amount: at === 'snap' ? amount : at, ways: 'one way', cycles, held: false, chance },
  };
}

function notSnapping(): Result<never> {
  return fail({
    code: 'does-not-snap',
    message:
      'It does not snap as far as it was followed, so it has no effort at which it does; make it rise more or thinner',
    field: 'wanted.at',
    value: 'snap',
  });
}

/** The effort of a joint that was moved as far as is asked. */
function effortOf(a: Assessment, at: EffortWanted['at']): Result<number> {
  if (at !== 'snap') return ok(a.solved ? feltAt(a, at) : a.effort.effort);
  const effort = snapEffort(a);
  return effort === undefined ? notSnapping() : ok(effort);
}

/** Tells the effort of a joint where one is wished for. */
export type Gauge = (joint: Joint) => Result<number>;

/**
 * What tells the effort of joints at an amount, or where they snap.
 *
 * Problems: those of the judge, `does-not-snap`.
 *
 * @param at - the amount [rad] or [mm], or where it snaps; that needs a judge by the solver, which looks beyond the movement
 * @param judge - what assesses each [-]
 * @returns effort [N·mm] or [N] of a joint, in the direction of its movement
 *
 * Source: elastic-plastic.
 */
export function gaugeOf(at: EffortWanted['at'], judge: Judge): Gauge {
  return (joint) => {
    const judged = judge(movedTo(joint, at));
    return judged.ok ? effortOf(judged.value, at) : judged;
  };
}
