/**
 * Every change to the part, as plain functions `state → state`. Each leaves one step to undo, except that the changes
 * of one gesture (a drag, a held key) are gathered into a single step. What is said of a change comes from the screen.
 */
import type { Joint, Part } from '../core/design/joint.ts';
import type { OwnFilament } from '../core/material/types.ts';
import { MAX_JOINTS } from '../files/limits.ts';
import { sameValue } from './sameValue.ts';
import type { EditState, Work } from './state.ts';

/** Steps kept; the oldest is let go. Parts share what did not change, so this costs little. */
export const HISTORY_LIMIT = 200;

/** Whether the part has as many joints as a file may hold: more could be made and not opened again. */
export function isFull({ part }: { readonly part: Pick<Part, 'joints'> }): boolean {
  return part.joints.length >= MAX_JOINTS;
}

function make(state: EditState, change: Partial<Work>, said: string, gesture?: string): EditState {
  const { part, current, own } = state;
  const now = { part, current, own };
  const after = { ...now, ...change };
  // A gesture begins with its first real change; else it would be gathered into the step before it.
  if (sameValue(now, after)) {
    return gesture === state.gesture ? state : { ...state, gesture: undefined };
  }
  const last = gesture !== undefined && gesture === state.gesture ? state.past.at(-1) : undefined;
  const earlier = last === undefined ? state.past : state.past.slice(0, -1);
  const before = last?.before ?? now;
  // A gesture that came back to where it began leaves no step.
  if (sameValue(before, after)) {
    return { ...after, past: earlier, future: [], gesture: undefined, notice: undefined };
  }
  const past = [...earlier, { before, after, said }].slice(-HISTORY_LIMIT);
  return { ...after, past, future: [], gesture, notice: { said, how: 'done' } };
}

/** The work as it was before the gesture that goes on under this key, or as it is when none does. */
export function workBefore(state: EditState, gesture: string): Work {
  return (gesture === state.gesture ? state.past.at(-1)?.before : undefined) ?? state;
}

function withJoints(part: Part, joints: readonly Joint[]): Part {
  return { ...part, joints };
}

function indexOf(state: EditState, id: string): number {
  const index = state.part.joints.findIndex((joint) => joint.id === id);
  if (index < 0) throw new RangeError(`no joint has the id ${id}`);
  return index;
}

/** An id that no joint of the part has. */
function freeId(part: Part): string {
  const taken = new Set(part.joints.map((joint) => joint.id));
  let number = part.joints.length + 1;
  while (taken.has(`joint-${number}`)) number += 1;
  return `joint-${number}`;
}

/** Opens another joint of the part; looking is not a change, so there is nothing to undo. */
export function selectJoint(state: EditState, id: string): EditState {
  indexOf(state, id);
  return { ...state, current: id, gesture: undefined };
}

/** Puts `next` in the place of the joint with the same id. */
export function changeJoint(state: EditState, next: Joint, said: string, gesture?: string): EditState {
  const joints = state.part.joints.with(indexOf(state, next.id), next);
  return make(state, { part: withJoints(state.part, joints), current: next.id }, said, gesture);
}

/** Ends a gesture: the next change is a new step. */
export function endGesture(state: EditState): EditState {
  return { ...state, gesture: undefined };
}

/** Adds a joint at the end, so that the numbers of the others stay, and opens it; it gets an id that is free. */
export function addJoint(state: EditState, joint: Joint, said: string, own = state.own): EditState {
  return insert(state, state.part.joints.length, joint, said, own);
}

function insert(state: EditState, at: number, joint: Joint, said: string, own = state.own): EditState {
  if (isFull(state)) throw new RangeError(`a part holds at most ${MAX_JOINTS} joints`);
  const id = freeId(state.part);
  const joints = state.part.joints.toSpliced(at, 0, { ...joint, id });
  return make(state, { part: withJoints(state.part, joints), current: id, own }, said);
}

/** Puts a copy under another name after the joint and opens the copy. */
export function duplicateJoint(state: EditState, id: string, name: string, said: string): EditState {
  const at = indexOf(state, id);
  return insert(state, at + 1, { ...(state.part.joints[at] as Joint), name }, said);
}

export function renameJoint(state: EditState, id: string, name: string, said: string): EditState {
  const joint = state.part.joints[indexOf(state, id)] as Joint;
  return changeJoint(state, { ...joint, name }, said);
}

/** Takes the joint out and opens the one that moves into its place. */
export function removeJoint(state: EditState, id: string, said: string): EditState {
  const at = indexOf(state, id);
  const joints = state.part.joints.toSpliced(at, 1);
  const current = state.current === id ? (joints[at] ?? joints.at(-1))?.id : state.current;
  return make(state, { part: withJoints(state.part, joints), current }, said);
}

/** Moves the joint `by` places to the right (left when negative), as far as there is room. */
export function moveJoint(state: EditState, id: string, by: number, said: string): EditState {
  const from = indexOf(state, id);
  const to = Math.min(Math.max(from + by, 0), state.part.joints.length - 1);
  const joint = state.part.joints[from] as Joint;
  const joints = state.part.joints.toSpliced(from, 1).toSpliced(to, 0, joint);
  return make(state, { part: withJoints(state.part, joints), current: id }, said);
}

export function renamePart(state: EditState, name: string, said: string): EditState {
  return make(state, { part: { ...state.part, name } }, said);
}

/** Puts another part in the place of this one, with the filaments that came along: import, the demo part, a new part. */
export function replacePart(state: EditState, part: Part, said: string, own = state.own): EditState {
  return make(state, { part, current: part.joints[0]?.id, own }, said);
}

/** Joints as new values: what is remembered of them was worked out with the filaments as they were. */
function asUnknown(part: Part): Part {
  return withJoints(
    part,
    part.joints.map((joint) => ({ ...joint })),
  );
}

/** Puts these in the place of the user's own filaments. */
export function changeOwn(state: EditState, own: readonly OwnFilament[], said: string, gesture?: string): EditState {
  return make(state, { part: asUnknown(state.part), own }, said, gesture);
}

/**
 * Takes over what another window has saved of the user's own filaments. It is no change to undo here, and undoing an
 * earlier one must not lose it, so every state that can be come back to has it as well.
 */
export function takeOwn(state: EditState, saved: readonly OwnFilament[]): EditState {
  if (saved.every((row) => state.own.some((one) => sameValue(one, row)))) return state;
  const taken = (work: Work): Work => {
    const kept = work.own.filter(({ id }) => !saved.some((one) => one.id === id));
    return { part: asUnknown(work.part), current: work.current, own: [...kept, ...saved] };
  };
  const inStep = ({ before, after, said }: EditState['past'][number]) => ({
    before: taken(before),
    after: taken(after),
    said,
  });
  return { ...state, ...taken(state), past: state.past.map(inStep), future: state.future.map(inStep) };
}

export function undo(state: EditState): EditState {
  const step = state.past.at(-1);
  if (step === undefined) return state;
  return {
    ...step.before,
    past: state.past.slice(0, -1),
    future: [step, ...state.future],
    gesture: undefined,
    notice: { said: step.said, how: 'undone' },
  };
}

export function redo(state: EditState): EditState {
  const [step, ...future] = state.future;
  if (step === undefined) return state;
  return {
    ...step.after,
    past: [...state.past, step],
    future,
    gesture: undefined,
    notice: { said: step.said, how: 'redone' },
  };
}
