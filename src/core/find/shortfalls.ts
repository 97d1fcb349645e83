import { allowableNamed } from '../design/allowables.ts';
import type { Assessment, VerdictReason } from '../design/assessment.ts';
import { feelOf } from '../design/feel.ts';
import { lifeGrade } from '../design/verdict.ts';
import type { Room, Unsupported } from '../flexures/sought.ts';
import { farthestOverAir, MOST_TALL, tallness } from '../print/printable.ts';
import type { Shortcoming, Shortfall } from './findAnswer.ts';

import type { Wanted } from './wanted.ts';

/** Limits are sums and products of decimals: a part in 10⁹ is no reason to fall short. */
export const ROUND_OFF = 1e-9;

/** As a finding of how it moves is called here. */
const MOVES: Partial<Readonly<Record<VerdictReason, Shortcoming>>> = {
  'comes back': 'comes back',
  stays: 'stays',
  touches: 'touches',
};

function over(reason: Shortcoming, value: number, limit: number): readonly Shortfall[] {
  return value > limit * (1 + ROUND_OFF) ? [{ reason, value, limit }] : [];
}

function under(reason: Shortcoming, value: number, limit: number): readonly Shortfall[] {
  return value < limit * (1 - ROUND_OFF) ? [{ reason, value, limit }] : [];
}

function ofRoom({ room }: Wanted, needed: Room): readonly Shortfall[] {
  return (['along', 'across', 'depth'] as const).flatMap((side) => over(side, needed[side], room[side]));
}

function ofPrinting(wanted: Wanted, a: Assessment, air: Unsupported): readonly Shortfall[] {
  const { section, length, joint } = a;
  const { lying } = joint.profile;
  const { width: depth, thickness } = section;
  const tall = over('tall', tallness({ thickness, length, depth }, lying), MOST_TALL[lying]);
  if (wanted.supports) return tall;
  const { value, limit } = farthestOverAir(air);
  return [...tall, ...over('overhang', value, limit)];
}

/** What breaks at once, lasts too short, or lasts longer than anyone has counted. */
function ofLife({ life, strain, allowables, joint: { movement } }: Assessment): readonly Shortfall[] {
  const breaks = allowableNamed(allowables, 'break');
  if (life.breaksOnFirstFlex || breaks.grade !== 'pass') {
    return [{ reason: 'breaks', value: strain.peak, limit: breaks.limit }];
  }
  const grade = lifeGrade(life, movement);
  if (grade === 'beyond') return [{ reason: 'uncounted', value: movement.cycles, limit: life.maxReportableCycles }];
  return grade === 'pass' ? [] : [{ reason: 'life', value: life.chance, limit: movement.chance }];
}

function ofSet({ setAtMost }: Wanted, a: Assessment): readonly Shortfall[] {
  const limit = (name: 'held' | 'single' | 'yield') => allowableNamed(a.allowables, name);
  const [held, single, yielding] = [limit('held'), limit('single'), limit('yield')];
  const { peak } = a.strain;
  const bends = single.limit < yielding.limit ? single : yielding;
  return [
    ...(held.grade === 'pass' ? [] : [{ reason: 'sags', value: peak, limit: held.limit } as const]),
    ...(single.grade === 'pass' && yielding.grade === 'pass'
      ? []
      : [{ reason: 'bends for good', value: peak, limit: bends.limit } as const]),
    ...(setAtMost === undefined ? [] : over('set', a.set.amount, setAtMost)),
  ];
}

function ofEffort({ effortAtLeast, movement: { effortAtMost } }: Wanted, { effort: { effort } }: Assessment) {
  return [
    // As the verdict has it, to the last digit.
    ...(effortAtMost !== undefined && effort > effortAtMost
      ? [{ reason: 'hard', value: effort, limit: effortAtMost } as const]
      : []),
    ...(effortAtLeast === undefined ? [] : under('soft', effort, effortAtLeast)),
  ];
}

function ofMoving({ joint, effort, filament, solved }: Assessment): readonly Shortfall[] {
  return feelOf(joint.movement, effort, filament, solved).flatMap(({ grade, reason, margin }) => {
    const named = MOVES[reason];
    return named === undefined || grade === 'pass' ? [] : [{ reason: named, value: margin, limit: 1 }];
  });
}

/**
 * All in which a joint as assessed falls short of what is looked for; none where it meets it. The verdict of the joint passes
 * exactly where none but those of room, printing, set and too little effort are left.
 *
 * @param wanted - what is looked for, checked [-]
 * @param a - the joint as assessed, by hand forms or the solver [-]
 * @param room - that it takes [mm]
 * @param air - what of it is laid over air [mm]
 * @returns shortfalls in the order of `SHORTCOMINGS`, each with what it has and what was asked
 */
export function shortfallsOf(wanted: Wanted, a: Assessment, room: Room, air: Unsupported): readonly Shortfall[] {
  const { warmth } = a;
  return [
    ...ofRoom(wanted, room),
    ...ofPrinting(wanted, a, air),
    ...ofLife(a),
    ...ofSet(wanted, a),
    ...(warmth.grade === 'pass'
      ? []
      : [{ reason: 'warmth', value: warmth.temperatureC, limit: warmth.softensAt } as const]),
    ...ofEffort(wanted, a),
    ...ofMoving(a),
  ];
}
