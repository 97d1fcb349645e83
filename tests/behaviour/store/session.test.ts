/** How far a joint is shown moved, as the open joint and what is wanted of it change. */
import { beforeEach, describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { useSession } from '../../../src/store/session.ts';
import { leaf } from '../../support/storeJoints.ts';
import { changed } from '../../support/joints.ts';

const now = () => useSession.getState();
const moved = (id: string, movement: Partial<Joint['movement']>): Joint => ({ ...changed(leaf(id), { movement }), id });
const change = (id: string, movement: Partial<Joint['movement']>) => now().changeJoint(moved(id, movement), 'Changed');

describe('how far a joint is shown moved', () => {
  beforeEach(() => {
    const joints = [leaf('a'), moved('b', { ways: 'both ways' }), leaf('c')];
    now().open({ name: 'Lid', invented: false, joints });
  });

  it('is as far as wanted when a part is opened', () => {
    now().bend(0.3);
    now().open({ name: 'Latch', invented: false, joints: [leaf('a')] });
    expect(now().bent).toBe(1);
  });

  it('is each joint’s own: one that moves one way is never shown where another went the other way', () => {
    now().selectJoint('b');
    now().bend(-0.6);
    now().selectJoint('a');
    expect(now().bent).toBe(1);
    now().bend(0.25);
    now().selectJoint('b');
    expect(now().bent).toBe(-0.6);
    now().selectJoint('a');
    expect(now().bent).toBe(0.25);
  });

  it('stays while a size changes, past the wanted amount too', () => {
    now().bend(1.3);
    now().changeJoint(leaf('a', 15), 'Longer');
    expect(now().bent).toBe(1.3);
  });

  it('comes back to where a joint surely goes when it is driven another way', () => {
    now().bend(1.3);
    change('a', { drive: 'pushed', amount: 2 });
    expect(now().bent).toBe(1);
  });

  it('comes back to rest when the other way is no longer wanted, and so it is after undo', () => {
    now().selectJoint('b');
    now().bend(-0.6);
    change('b', { ways: 'one way' });
    expect(now().bent).toBe(0);
    now().undo();
    expect(now().bent).toBe(0);
  });

  it('follows undo to a joint that is no longer there, and does not stay for one with its id', () => {
    now().selectJoint('c');
    now().bend(0.4);
    now().removeJoint('c', 'Removed');
    now().addJoint(leaf('c'), 'Added');
    expect(now().bent).toBe(1);
    now().undo();
    now().undo();
    expect([now().current, now().bent]).toEqual(['c', 1]);
  });

  it('is forgotten with the part', () => {
    now().bend(0.4);
    now().replacePart({ name: 'Clip', invented: false, joints: [leaf('a')] }, 'Replaced');
    expect(now().bent).toBe(1);
  });
});
