import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { leastGap, touchesAt } from '../../src/core/design/solvedPath.ts';
import { isTouching } from '../../src/core/geometry/touching.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { DRIVEN } from '../support/families.ts';

const JOINTS: readonly Joint[] = [
  ...demoPart().joints,
  ...DRIVEN.map(({ id, kind, drive }) => newJoint(kind.family, id, undefined, drive)),
];

const solvedAs = (joint: Joint, amount: number): Assessment | undefined => {
  const found = assess({ ...joint, movement: { ...joint.movement, amount } }, bySolver());
  return found.ok ? found.value : undefined;
};

const gapUpTo = ({ solved }: Assessment, amount: number) => (solved ? leastGap(solved, amount)?.gap : undefined) ?? 9;

describe('a hard stop', () => {
  it.each(JOINTS.map((joint) => [joint.name, joint] as const))('of %s lies where nothing touches', (_, joint) => {
    const own = solvedAs(joint, joint.movement.amount);
    const at = own?.overBend.hardStop ?? 0;
    const there = solvedAs(joint, at);
    if (!own || !there) throw new Error('a joint can be solved as it stands and at its hard stop');
    // Where it touches on the way that is wanted no stop can mend that.
    if (gapUpTo(own, joint.movement.amount) > 0) expect(gapUpTo(there, at)).toBeGreaterThan(-0.02);
  });
});

describe('where a joint first touches itself', () => {
  const touching = JOINTS.flatMap((joint) => {
    const own = solvedAs(joint, joint.movement.amount);
    const at = own?.solved ? touchesAt(own.solved) : Infinity;
    return at < Infinity ? [[joint.name, joint, at] as const] : [];
  });

  it('is known of several kinds', () => {
    expect(touching.length).toBeGreaterThan(5);
  });

  it.each(touching)('as told of %s is the last that is clear, to half a per cent', (_, joint, at) => {
    const [there, past] = [solvedAs(joint, at), solvedAs(joint, 1.005 * at)];
    if (!there) throw new Error('a joint can be solved where it is about to touch');
    expect(gapUpTo(there, at)).toBeGreaterThan(-0.02);
    // Past the last that it may be asked for pads have met.
    if (past) expect(isTouching(gapUpTo(past, 1.005 * at))).toBe(true);
  });
});
