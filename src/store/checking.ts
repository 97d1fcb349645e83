/**
 * How a part that is checked is printed and what is asked of it: kept between visits, with an undo of its own, because
 * none of it changes the joints. The file itself is not kept.
 */
import { create } from 'zustand';
import { MOVEMENT_LIMITS } from '../core/design/movementLimits.ts';
import { PLATE_UPS, type AskedOfAll, type PrintedAs } from '../core/inspect/judged.ts';
import { findFilament } from '../core/material/shelf.ts';
import { checkProfile } from '../core/print/checkProfile.ts';
import type { PrintProfile } from '../core/print/profile.ts';
import { radians, type Mm } from '../core/units.ts';
import { isObject } from '../files/shape.ts';
import { USUAL_PROFILE } from './newJoint.ts';
import { browserStorage, keepChoice, readStored, type PreferenceStorage } from './preferences.ts';
import { sameValue } from './sameValue.ts';
import { useSession } from './session.ts';
import { openJointOf } from './state.ts';

export interface CheckValues {
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
  /** The thickest that is looked for [mm], in the part as its file has it. */
  readonly thickest: Mm;
}

interface Range {
  readonly min: number;
  readonly max: number;
}

/** What each value may be; chosen, wide enough for any part of a desktop printer. Turns in rad, lengths in mm. */
export const CHECK_LIMITS: Readonly<Record<'scale' | 'turn' | 'thickest', Range>> = {
  scale: { min: 0.05, max: 20 },
  turn: { min: radians(1), max: radians(180) },
  thickest: { min: 0.2, max: 8 },
};

/** A first question: fifteen degrees, a thousand times, for nearly all; chosen. Anything up to some six lines is looked for. */
export const FIRST_VALUES: CheckValues = {
  as: { scale: 1, up: '+z', profile: USUAL_PROFILE },
  asked: { ways: 'one way', turn: radians(15), cycles: 1000, chance: 0.95, held: false },
  thickest: 2.6,
};

/** The same on the printer and in the filament of the joint that is open: they are most likely the user's own. */
function firstValues(): CheckValues {
  const joint = openJointOf(useSession.getState());
  const profile = joint ? { ...joint.profile, lying: FIRST_VALUES.as.profile.lying } : FIRST_VALUES.as.profile;
  return { ...FIRST_VALUES, as: { ...FIRST_VALUES.as, profile } };
}

interface Step {
  readonly before: CheckValues;
  readonly after: CheckValues;
  /** In the past tense with the old value: “Lines set to 0.42 mm, were 0.56”. */
  readonly said: string;
}

export interface CheckHistory {
  readonly values: CheckValues;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  readonly gesture: string | undefined;
  readonly notice: { readonly said: string; readonly how: 'done' | 'undone' | 'redone' } | undefined;
}

/** Steps kept. */
const MOST_STEPS = 100;

/** Other values in force; changes of one gesture are one step. */
export function changed(state: CheckHistory, values: CheckValues, said: string, gesture?: string): CheckHistory {
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

export function undone(state: CheckHistory): CheckHistory {
  const step = state.past.at(-1);
  if (step === undefined) return state;
  const notice = { said: step.said, how: 'undone' } as const;
  const future = [step, ...state.future];
  return { values: step.before, past: state.past.slice(0, -1), future, gesture: undefined, notice };
}

export function redone(state: CheckHistory): CheckHistory {
  const [step, ...future] = state.future;
  if (step === undefined) return state;
  const notice = { said: step.said, how: 'redone' } as const;
  return { values: step.after, past: [...state.past, step], future, gesture: undefined, notice };
}

const KEY = 'bendbook.check';

const isWithin = (value: unknown, { min, max }: Range): value is number =>
  typeof value === 'number' && value >= min && value <= max;

function readProfile(value: unknown): PrintProfile | undefined {
  if (!isObject(value)) return undefined;
  const { nozzle, lineWidth, layerHeight, firstLayerHeight, filament } = value;
  const lengths = [nozzle, lineWidth, layerHeight, firstLayerHeight];
  if (typeof filament !== 'string' || !lengths.every((one) => typeof one === 'number')) return undefined;
  const profile = { ...USUAL_PROFILE, nozzle, lineWidth, layerHeight, firstLayerHeight, filament } as PrintProfile;
  const isGood = findFilament(filament) !== undefined && checkProfile(profile).problems.length === 0;
  return isGood ? profile : undefined;
}

function readAs(value: unknown, otherwise: PrintedAs): PrintedAs {
  if (!isObject(value)) return otherwise;
  const { scale, up } = value;
  return {
    scale: isWithin(scale, CHECK_LIMITS.scale) ? scale : otherwise.scale,
    up: PLATE_UPS.find((one) => one === up) ?? otherwise.up,
    profile: readProfile(value['profile']) ?? otherwise.profile,
  };
}

function readAsked(value: unknown, otherwise: AskedOfAll): AskedOfAll {
  if (!isObject(value)) return otherwise;
  const { ways, turn, cycles, chance, held } = value;
  return {
    ways: ways === 'both ways' || ways === 'one way' ? ways : otherwise.ways,
    turn: isWithin(turn, CHECK_LIMITS.turn) ? (turn as AskedOfAll['turn']) : otherwise.turn,
    cycles: isWithin(cycles, MOVEMENT_LIMITS.cycles) && Number.isInteger(cycles) ? cycles : otherwise.cycles,
    chance: isWithin(chance, MOVEMENT_LIMITS.chance) ? chance : otherwise.chance,
    held: typeof held === 'boolean' ? held : otherwise.held,
  };
}

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return undefined;
  }
}

/** The values of the last visit, each as far as it can still be used. */
export function readCheckValues(storage: PreferenceStorage | undefined, otherwise = FIRST_VALUES): CheckValues {
  const kept = parsed(readStored(storage, KEY));
  if (!isObject(kept)) return otherwise;
  const { thickest } = kept;
  return {
    as: readAs(kept['as'], otherwise.as),
    asked: readAsked(kept['asked'], otherwise.asked),
    thickest: isWithin(thickest, CHECK_LIMITS.thickest) ? thickest : otherwise.thickest,
  };
}

export function keepCheckValues(storage: PreferenceStorage | undefined, values: CheckValues): void {
  keepChoice(storage, KEY, JSON.stringify(values));
}

interface Checking extends CheckHistory {
  readonly change: (values: CheckValues, said: string, gesture?: string) => void;
  /** The next change is a step of its own. */
  readonly endGesture: () => void;
  /** Takes the slip away, because something else has happened since. */
  readonly dismiss: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

export const useChecking = create<Checking>()((set, get) => {
  const put = (next: CheckHistory) => {
    keepCheckValues(browserStorage(), next.values);
    set(next);
  };
  return {
    values: readCheckValues(browserStorage(), firstValues()),
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
});
