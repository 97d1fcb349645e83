/** Undo of a place that changes no joints: its values, what was before and after each change, and what is said of the last. */
import { isObject } from '../files/shape.ts';
import { readStored, type PreferenceStorage } from './preferences.ts';
import { sameValue } from './sameValue.ts';
import type { Notice } from './state.ts';

interface Step<V> {
  readonly before: V;
  readonly after: V;
  /** In the past tense with the old value: “Lines set to 0.42 mm, were 0.56”. */
  readonly said: string;
}

export interface History<V> {
  readonly values: V;
  readonly past: readonly Step<V>[];
  readonly future: readonly Step<V>[];
  readonly gesture: string | undefined;
  readonly notice: Notice | undefined;
}

/** What a place with such values can do with them. */
export interface Changing<V> extends History<V> {
  readonly change: (values: V, said: string, gesture?: string) => void;
  /** The next change is a step of its own. */
  readonly endGesture: () => void;
  /** Takes the slip away, because something else has happened since. */
  readonly dismiss: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** Steps kept. */
const MOST_STEPS = 100;

/** Other values in force; changes of one gesture are one step. */
export function changed<V>(state: History<V>, values: V, said: string, gesture?: string): History<V> {
  if (sameValue(state.values, values)) return state;
  const goesOn = gesture !== undefined && gesture === state.gesture;
  const last = goesOn ? state.past.at(-1) : undefined;
  const earlier = last === undefined ? state.past : state.past.slice(0, -1);
  const before = last?.before ?? state.values;
  if (sameValue(before, values)) {
    return { values, past: earlier, future: [], gesture: undefined, notice: undefined };
  }
  const past = [...earlier, { before, after: values, said }].slice(-MOST_STEPS);
  return { values, past, future: [], gesture, notice: { said, how: 'done' } };
}

export function undone<V>(state: History<V>): History<V> {
  const step = state.past.at(-1);
  if (step === undefined) return state;
  const notice = { said: step.said, how: 'undone' } as const;
  const future = [step, ...state.future];
  return { values: step.before, past: state.past.slice(0, -1), future, gesture: undefined, notice };
}

export function redone<V>(state: History<V>): History<V> {
  const [step, ...future] = state.future;
  if (step === undefined) return state;
  const notice = { said: step.said, how: 'redone' } as const;
  return { values: step.after, past: [...state.past, step], future, gesture: undefined, notice };
}

/** The history that a store begins with, and what it can do; `keep` puts values where they outlast the page. */
export function changing<V>(
  first: V,
  set: (next: Partial<History<V>>) => void,
  get: () => History<V>,
  keep: (values: V) => void,
): Changing<V> {
  const put = (next: History<V>) => {
    keep(next.values);
    set(next);
  };
  return {
    values: first,
    past: [],
    future: [],
    gesture: undefined,
    notice: undefined,
    change: (values, said, gesture) => put(changed(get(), values, said, gesture)),
    endGesture: () => set({ gesture: undefined }),
    dismiss: () => set({ notice: undefined }),
    undo: () => put(undone(get())),
    redo: () => put(redone(get())),
  };
}

/** What was kept as JSON under a key; nothing where it cannot be read. */
export function keptRecord(storage: PreferenceStorage | undefined, key: string): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(readStored(storage, key) ?? 'null');
    return isObject(kept) ? kept : {};
  } catch {
    return {};
  }
}

export interface Range {
  readonly min: number;
  readonly max: number;
}

export const isWithin = (value: unknown, { min, max }: Range): value is number =>
  typeof value === 'number' && value >= min && value <= max;
