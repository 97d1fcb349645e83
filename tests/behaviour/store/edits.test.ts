import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MAX_JOINTS } from '../../../src/files/limits.ts';
import * as edits from '../../../src/store/edits.ts';
import { opened, type EditState } from '../../../src/store/state.ts';
import { leaf, partOf } from '../../support/storeJoints.ts';

const lengthen = (state: EditState, length: number, gesture?: string) =>
  edits.changeJoint(state, leaf('a', length), `Leaf made ${length} mm long`, gesture);

const order = ({ part }: EditState) => part.joints.map(({ id }) => id).join('');

const lengthBefore = (state: EditState, gesture: string) =>
  edits.workBefore(state, gesture).part.joints[0]?.sizes['length'];

const work = ({ part, current }: EditState) => ({ part, current });

describe('a change', () => {
  it('puts the new joint in place, says so, and leaves the others alone', () => {
    const before = opened(partOf('a', 'b'));
    const after = lengthen(before, 15);
    expect(after.part.joints[0]?.sizes['length']).toBe(15);
    expect(after.part.joints[1]).toBe(before.part.joints[1]);
    expect(after.notice).toEqual({ said: 'Leaf made 15 mm long', how: 'done' });
  });

  it('to the same value is no step', () => {
    const after = lengthen(opened(partOf('a')), 12);
    expect(after.past).toHaveLength(0);
    expect(after.notice).toBeUndefined();
  });

  it('throws away what could be made again', () => {
    const undone = edits.undo(lengthen(opened(partOf('a')), 15));
    expect(undone.future).toHaveLength(1);
    expect(lengthen(undone, 16).future).toHaveLength(0);
  });

  it('of a joint that is not there is a programmer’s error', () => {
    expect(() => edits.changeJoint(opened(partOf('a')), leaf('x'), 'Changed')).toThrow(RangeError);
  });
});

describe('a gesture', () => {
  it('is one step however many changes it makes, and says the last', () => {
    let state = opened(partOf('a'));
    for (const length of [12.5, 13, 13.5, 14]) state = lengthen(state, length, 'drag length');
    expect(state.past).toHaveLength(1);
    expect(state.notice?.said).toBe('Leaf made 14 mm long');
    expect(edits.undo(state).part.joints[0]?.sizes['length']).toBe(12);
  });

  it('that follows another of the same key is a step of its own', () => {
    let state = edits.endGesture(lengthen(opened(partOf('a')), 13, 'drag length'));
    state = edits.endGesture(lengthen(state, 14, 'drag length'));
    expect(state.past).toHaveLength(2);
    expect(edits.undo(state).part.joints[0]?.sizes['length']).toBe(13);
  });

  it('that comes back to where it began leaves no step', () => {
    let state = lengthen(opened(partOf('a')), 13, 'drag length');
    state = edits.endGesture(lengthen(state, 12, 'drag length'));
    expect(state.past).toHaveLength(0);
    expect(state.notice).toBeUndefined();
  });

  it('that passes through where it began is still one step', () => {
    let state = opened(partOf('a'));
    for (const length of [13, 12, 11]) state = lengthen(state, length, 'drag length');
    expect(state.past).toHaveLength(1);
    expect(edits.undo(state).part.joints[0]?.sizes['length']).toBe(12);
  });

  it('knows where it began, for what is said of it', () => {
    const dragging = lengthen(lengthen(opened(partOf('a')), 13, 'drag'), 14, 'drag');
    expect(lengthBefore(dragging, 'drag')).toBe(12);
    expect(lengthBefore(dragging, 'another')).toBe(14);
    expect(lengthBefore(edits.endGesture(dragging), 'drag')).toBe(14);
  });

  it('that begins without a change is not gathered into the step before it', () => {
    let state = lengthen(opened(partOf('a')), 15);
    state = lengthen(state, 15, 'drag length');
    state = lengthen(state, 16, 'drag length');
    expect(state.past).toHaveLength(2);
  });

  it('ends when another joint is opened', () => {
    let state = lengthen(opened(partOf('a', 'b')), 13, 'drag length');
    state = edits.selectJoint(edits.selectJoint(state, 'b'), 'a');
    expect(lengthen(state, 14, 'drag length').past).toHaveLength(2);
  });
});

describe('the joints of a part', () => {
  it('a new one comes last, is opened, and gets a free id', () => {
    const state = edits.addJoint(opened(partOf('joint-3', 'b')), leaf('b'), 'Added');
    expect(state.part.joints.map(({ id }) => id)).toEqual(['joint-3', 'b', 'joint-4']);
    expect(state.current).toBe('joint-4');
    const taken = edits.addJoint(opened(partOf('joint-2')), leaf('joint-2'), 'Added');
    expect(taken.part.joints.map(({ id }) => id)).toEqual(['joint-2', 'joint-3']);
  });

  it('stop at the number that a part file can hold', () => {
    let state = opened({ ...partOf(), joints: Array.from({ length: MAX_JOINTS }, (_, i) => leaf(`j${i}`)) });
    expect(edits.isFull(state)).toBe(true);
    expect(() => edits.addJoint(state, leaf('x'), 'Added')).toThrow(RangeError);
    state = edits.removeJoint(state, 'j0', 'Deleted');
    expect(edits.isFull(state)).toBe(false);
  });

  it('a copy differs in id and name only', () => {
    const state = edits.duplicateJoint(opened(partOf('a', 'b')), 'a', 'Leaf a, copy', 'Copied');
    const copy = state.part.joints[1];
    expect(copy).toEqual({ ...leaf('a'), id: copy?.id, name: 'Leaf a, copy' });
    expect(copy?.id).not.toBe('a');
    expect(state.current).toBe(copy?.id);
  });

  it('deleting one opens the next, or the last, or none', () => {
    const three = opened(partOf('a', 'b', 'c'));
    expect(edits.removeJoint(three, 'a', 'Deleted').current).toBe('b');
    expect(edits.removeJoint(edits.selectJoint(three, 'c'), 'c', 'Deleted').current).toBe('b');
    expect(edits.removeJoint(three, 'b', 'Deleted').current).toBe('a');
    expect(edits.removeJoint(opened(partOf('a')), 'a', 'Deleted').current).toBeUndefined();
  });

  it('move as far as there is room', () => {
    const three = opened(partOf('a', 'b', 'c'));
    expect(order(edits.moveJoint(three, 'a', 1, 'Moved'))).toBe('bac');
    expect(order(edits.moveJoint(three, 'c', -2, 'Moved'))).toBe('cab');
    expect(edits.moveJoint(three, 'a', -1, 'Moved').past).toHaveLength(0);
  });

  it('another part can take the place of this one, and undo brings it back', () => {
    const before = edits.selectJoint(opened(partOf('a', 'b')), 'b');
    const after = edits.replacePart(before, partOf('c'), 'Part opened');
    expect(after.current).toBe('c');
    expect(work(edits.undo(after))).toEqual(work(before));
  });
});

describe('history', () => {
  it('keeps the newest steps and lets the oldest go', () => {
    let state = opened(partOf('a'));
    for (let i = 1; i <= edits.HISTORY_LIMIT + 5; i += 1) state = lengthen(state, 12 + i);
    expect(state.past).toHaveLength(edits.HISTORY_LIMIT);
    for (let i = 0; i < edits.HISTORY_LIMIT + 5; i += 1) state = edits.undo(state);
    expect(state.part.joints[0]?.sizes['length']).toBe(17);
  });

  it('opens the joint that the undone change was made to', () => {
    const changed = lengthen(opened(partOf('a', 'b')), 15);
    const elsewhere = edits.selectJoint(changed, 'b');
    expect(edits.undo(elsewhere).current).toBe('a');
    expect(edits.redo(edits.selectJoint(edits.undo(elsewhere), 'b')).current).toBe('a');
  });

  it('with nothing to undo or redo stays as it is', () => {
    const state = opened(partOf('a'));
    expect(edits.undo(state)).toBe(state);
    expect(edits.redo(state)).toBe(state);
  });
});

type Edit = (state: EditState) => EditState;

/** An edit that fits whatever part it meets: the number picks the joint. */
const anyEdit: fc.Arbitrary<Edit> = fc
  .record({ kind: fc.integer({ min: 0, max: 7 }), pick: fc.nat(20), amount: fc.integer({ min: -3, max: 30 }) })
  .map(({ kind, pick, amount }): Edit => {
    return (state) => {
      const joint = state.part.joints[pick % Math.max(1, state.part.joints.length)];
      if (kind === 0 || joint === undefined) return edits.addJoint(state, leaf('new', 5 + amount), 'Added');
      const longer = { ...joint, sizes: { ...joint.sizes, length: 5 + amount } };
      const by: readonly Edit[] = [
        (s) => edits.changeJoint(s, longer, 'Changed'),
        (s) => edits.changeJoint(s, longer, 'Changed', 'drag'),
        (s) => edits.duplicateJoint(s, joint.id, 'Copy', 'Copied'),
        (s) => edits.renameJoint(s, joint.id, `Name ${amount}`, 'Renamed'),
        (s) => edits.removeJoint(s, joint.id, 'Deleted'),
        (s) => edits.moveJoint(s, joint.id, amount, 'Moved'),
        (s) => edits.renamePart(s, `Part ${amount}`, 'Renamed'),
      ];
      return (by[kind - 1] as Edit)(state);
    };
  });

describe('laws of undo, for any run of edits', () => {
  const anyRun = fc.array(anyEdit, { minLength: 1, maxLength: 30 });

  it('undo after one more edit gives the work before it', () => {
    fc.assert(
      fc.property(anyRun, anyEdit, (run, edit) => {
        const before = edits.endGesture(run.reduce((state, next) => next(state), opened(partOf('a', 'b'))));
        const after = edit(before);
        if (after.past.length === before.past.length) expect(work(after)).toEqual(work(before));
        else expect(work(edits.undo(after))).toEqual(work(before));
      }),
    );
  });

  it('undoing everything gives the part as opened, and redoing everything the part as left', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const first = opened(partOf('a', 'b'));
        const last = run.reduce((state, next) => next(state), first);
        let state = last;
        for (let i = 0; i < last.past.length; i += 1) state = edits.undo(state);
        expect(state.part).toEqual(first.part);
        for (let i = 0; i < last.past.length; i += 1) state = edits.redo(state);
        expect(state.part).toEqual(last.part);
      }),
    );
  });

  it('ids stay unique and the open joint is one of the part', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const { part, current } = run.reduce((state, next) => next(state), opened(partOf('a', 'b')));
        const ids = part.joints.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        if (ids.length === 0) expect(current).toBeUndefined();
        else expect(ids).toContain(current);
      }),
    );
  });
});
