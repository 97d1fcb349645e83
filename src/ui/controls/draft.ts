/** What was typed into a value field and not yet taken; plain values and functions. */
import { settled } from './settle.ts';
import type { QuantityReading } from './quantity.ts';
import type { ValueSpec } from './valueSpec.ts';

export interface Draft {
  readonly text: string;
  /** The value in force when it was typed; once that changes from elsewhere, the draft is void. */
  readonly over: number;
  /** Undefined while a sum is being worked out. */
  readonly reading: QuantityReading | undefined;
}

/** Steps that follow each other are one change to undo. */
export interface Run {
  readonly key: string;
  readonly was: number;
  readonly now: number;
}

/** What stands under a field while it is edited. */
export function hintOf(spec: ValueSpec, draft: Draft | undefined): string {
  if (draft === undefined) return spec.hint;
  const leaves = `Esc leaves ${spec.figure}`;
  if (draft.reading === undefined) return 'working it out';
  if (!draft.reading.ok) return `not yet a number or a sum; ${leaves}`;
  const value = settled(draft.reading.value, spec.kind, spec.unit);
  return `= ${spec.say(value)}${spec.suffix}; Enter takes it, ${leaves}`;
}

/** Where a press of an arrow key leads, from what was typed if that can be read; never past the limits. */
export function stepped(spec: ValueSpec, draft: Draft | undefined, direction: 1 | -1, tenfold: boolean): number {
  const from = draft?.reading?.ok ? settled(draft.reading.value, spec.kind, spec.unit) : spec.value;
  const to = from + direction * spec.step(from, direction > 0) * (tenfold ? 10 : 1);
  return settled(Math.min(spec.max, Math.max(spec.min, to)), spec.kind, spec.unit);
}

let runs = 0;

/** The run that a step belongs to: the one before it when nothing else has changed the value since. */
export function runOf(spec: ValueSpec, before: Run | undefined, value: number): Run {
  if (before?.now === spec.value) return { ...before, now: value };
  runs += 1;
  return { key: `${spec.key}-${runs}`, was: spec.value, now: value };
}
