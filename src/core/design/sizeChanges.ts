/** Changes of one size: the length, and whatever else a kind is sized by. */
import { isAsked } from '../flexures/drives.ts';
import type { Parameter } from '../flexures/family.ts';
import { familyOf } from '../flexures/known.ts';
import type { Assessment } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Change } from './changes.ts';
import { isByShape, leastChange, likelyStep, type Steps } from './leastChange.ts';
import { nearJudge } from './nearJudge.ts';
import { remedyCost, sizeChange } from './remedyCost.ts';
import { withSize } from './withSize.ts';

/** A size changed by more than this factor makes another joint: judgement, no source. */
const REACH = 4;
/** So many sizes of a joint that is solved are looked at, those first that are estimated to cost least. */
const SIZES_SOLVED = 4;
/** A change estimated to cost more is not worth a solve. */
const DEAREST = 2;

/**
 * One size, step by step to one side, on values that are whole steps.
 *
 * @param a - the joint as assessed [-]
 * @param name - name of the size [-]
 * @param way - larger or smaller [-]
 * @param reach - factor up to which it is changed [-]
 * @returns the joints, nearest first
 */
export function sizeSteps(a: Assessment, name: string, way: 1 | -1, reach = REACH): Steps {
  const parameter = familyOf(a.joint).parameters[name] as Parameter;
  const { kind, step, min, max } = parameter;
  const now = a.joint.sizes[name] ?? Number.NaN;
  // A part in 10⁹ keeps 15.000000001 from becoming 15.5; it is far below any printable step.
  const from = way > 0 ? Math.floor(now / step + 1e-9) : Math.ceil(now / step - 1e-9);
  const valueAt = (k: number) =>
    kind === 'angle' ? (from + way * k) * step : Number(((from + way * k) * step).toFixed(6));
  const isPast = (k: number) => {
    const value = valueAt(k);
    const far = Math.abs(sizeChange(parameter, a.length, now, value)) > Math.log(reach) + 1e-9;
    return far || value > max * (1 + 1e-9) || value < min * (1 - 1e-9) - 1e-12;
  };
  let most = 0;
  while (!isPast(most + 1)) most += 1;
  return { most, at: (k) => withSize(a.joint, name, valueAt(k)) };
}

/** Longer, as little as will do. */
export function lengthen(a: Assessment, judge: Judge): readonly Change[] {
  const steps = sizeSteps(a, familyOf(a.joint).roles.length, 1, Number.POSITIVE_INFINITY);
  const found = leastChange(a, steps, judge);
  return found ? [{ kind: 'lengthen', ...found }] : [];
}

/** A size, and the way it is changed. */
interface Turn {
  readonly size: string;
  readonly steps: Steps;
}

/** Longer rows than this are counted like any size; shorter ones share the movement by `share the angle`. */
export const LONGEST_ROW = 6;

/**
 * Sizes that no other kind of change is about, each to both sides where that can help. A pad is taken as rigid, so that
 * what its thickness does is not known; more of them side by side push harder and strain no less; depth moves nothing in
 * the plane of bending.
 */
function turnsOf(a: Assessment, only: string | undefined): readonly Turn[] {
  const { parameters, roles } = familyOf(a.joint);
  const others = [roles.count, roles.length, roles.fillet, roles.pad, a.inRow < LONGEST_ROW ? roles.inRow : undefined];
  return Object.entries(parameters)
    .filter(([name, parameter]) => !others.includes(name) && isAsked(parameter, a.drive.id))
    .filter(([name]) => (only === undefined || name === only) && !(isByShape(a) && name === roles.depth))
    .flatMap(([size]) =>
      ([1, -1] as const)
        .filter((way) => way < 0 || size !== roles.sideBySide)
        .map((way) => ({ size, steps: sizeSteps(a, size, way) })),
    );
}

/**
 * Any other size of the kind, changed as little as will do, cheapest first.
 *
 * @param a - the joint as assessed [-]
 * @param judge - what assesses each change [-]
 * @param only - the one size to look at [-]; all when left out
 * @returns changes that pass
 */
export function otherSize(a: Assessment, judge: Judge, only?: string): readonly Change[] {
  const estimate = a.solved ? nearJudge(a) : judge;
  const likely = turnsOf(a, only).flatMap(({ size, steps }) => {
    const guess = likelyStep(a, steps, judge);
    const near = guess === undefined ? undefined : estimate(steps.at(guess));
    if (guess === undefined || !near?.ok) return [];
    const cost = remedyCost(['other size'], a, near.value, size);
    return cost < DEAREST ? [{ size, steps, guess, cost }] : [];
  });
  const found: Change[] = [];
  for (const { size, steps, guess } of likely.toSorted((x, y) => x.cost - y.cost)) {
    if (a.solved && found.length >= SIZES_SOLVED) break;
    const least = leastChange(a, steps, judge, guess);
    if (least) found.push({ kind: 'other size', size, ...least });
  }
  return found;
}
