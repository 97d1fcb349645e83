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
import { changing, isWithin, keptRecord, type Changing, type Range } from './history.ts';
import { USUAL_PROFILE } from './newJoint.ts';
import { browserStorage, keepChoice, type PreferenceStorage } from './preferences.ts';
import { useSession } from './session.ts';
import { openJointOf } from './state.ts';

export interface CheckValues {
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
  /** The thickest that is looked for [mm], in the part as its file has it. */
  readonly thickest: Mm;
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

const KEY = 'bendbook.check';

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

/** The values of the last visit, each as far as it can still be used. */
export function readCheckValues(storage: PreferenceStorage | undefined, otherwise = FIRST_VALUES): CheckValues {
  const kept = keptRecord(storage, KEY);
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

export const useChecking = create<Changing<CheckValues>>()((set, get) =>
  changing(readCheckValues(browserStorage(), firstValues()), set, get, (values) =>
    keepCheckValues(browserStorage(), values),
  ),
);
