import type { Joint, Part } from '../core/design/joint.ts';
import type { OwnFilament } from '../core/material/types.ts';

/** The work itself and which joint is open: what undo puts back. */
export interface Work {
  readonly part: Part;
  /** Id of the joint that is open; absent only when the part has none. */
  readonly current: string | undefined;
  /** Filaments that the user has made: those of all parts. */
  readonly own: readonly OwnFilament[];
}

/** The joint that is open; absent when the part has none. */
export function openJointOf({ part, current }: Pick<Work, 'part' | 'current'>): Joint | undefined {
  return part.joints.find(({ id }) => id === current);
}

/** One change that can be taken back and made again. */
interface Step {
  readonly before: Work;
  readonly after: Work;
  /** In the past tense with the old value: “Leaf made 15.00 mm long, was 12.00”. */
  readonly said: string;
}

/** What the slip says of the last change. */
export interface Notice {
  readonly said: string;
  readonly how: 'done' | 'undone' | 'redone';
}

export interface EditState extends Work {
  readonly past: readonly Step[];
  /** Nearest first: the step that redo makes again. */
  readonly future: readonly Step[];
  /** Key of the drag or run of keys that goes on; its changes are one step. */
  readonly gesture: string | undefined;
  readonly notice: Notice | undefined;
}

/** A part just opened: nothing to undo, its first joint open. */
export function opened(part: Part, own: readonly OwnFilament[] = []): EditState {
  return {
    part,
    current: part.joints[0]?.id,
    own,
    past: [],
    future: [],
    gesture: undefined,
    notice: undefined,
  };
}
