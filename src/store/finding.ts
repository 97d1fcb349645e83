/** What is being looked for: kept when the finder is closed, and between visits, until it is opened for another joint. */
import { create } from 'zustand';
import type { Joint } from '../core/design/joint.ts';
import type { Wanted } from '../core/find/wanted.ts';
import { wantedOf } from '../core/find/wantedOf.ts';
import { straightLeaf } from '../core/flexures/straightLeaf.ts';
import { isObject } from '../files/shape.ts';
import { readWanted } from '../files/wantedFile.ts';
import { newJoint } from './newJoint.ts';
import { browserStorage, keepChoice, readStored, type PreferenceStorage } from './preferences.ts';

/** A brief of the finder, and what it is for. */
interface FindBrief {
  /** What stood in the joint that the finder was opened from: once that is otherwise, so is what is looked for. */
  readonly basis: string;
  /** Name of the joint that it was made from; empty where there was none. */
  readonly about: string;
  readonly wanted: Wanted;
}

export interface KeptBriefs {
  readonly brief: FindBrief | undefined;
  /** The one before, when the finder was opened for another joint. */
  readonly earlier: FindBrief | undefined;
}

const KEY = 'bendbook.finder';
const NONE: KeptBriefs = { brief: undefined, earlier: undefined };

/** As much of a joint as a brief is made from, but for its room: a joint that is made longer still wants the same. */
function basisOf(joint: Joint | undefined): string {
  if (joint === undefined) return '';
  const { filament: _filament, lying: _lying, ...printer } = joint.profile;
  return JSON.stringify([joint.id, joint.movement, printer, joint.surroundings]);
}

/** A part that has no joint yet is looked for as a leaf is begun. */
function briefFor(joint: Joint | undefined): FindBrief {
  const like = joint ?? newJoint(straightLeaf, '');
  return { basis: basisOf(joint), about: joint?.name ?? '', wanted: wantedOf(like) };
}

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return undefined;
  }
}

function readBrief(value: unknown): FindBrief | undefined {
  if (!isObject(value)) return undefined;
  const { basis, about } = value;
  const wanted = readWanted(value['wanted']);
  if (typeof basis !== 'string' || typeof about !== 'string' || !wanted.ok) return undefined;
  return { basis, about, wanted: wanted.value };
}

/** What was looked for before, as far as it can still be used. */
export function readBriefs(storage: PreferenceStorage | undefined): KeptBriefs {
  const kept = parsed(readStored(storage, KEY));
  if (!isObject(kept)) return NONE;
  return { brief: readBrief(kept['brief']), earlier: readBrief(kept['earlier']) };
}

export function keepBriefs(storage: PreferenceStorage | undefined, { brief, earlier }: KeptBriefs): void {
  keepChoice(storage, KEY, JSON.stringify({ brief, earlier }));
}

/** The brief that stands when the finder is opened from a joint: the kept one where that is the same joint, asking the same. */
export function openedFor(joint: Joint | undefined, kept: KeptBriefs): KeptBriefs {
  if (kept.brief?.basis === basisOf(joint)) return kept;
  return { brief: briefFor(joint), earlier: kept.brief };
}

/** The earlier brief in force, for the joint that the finder is open from; the other is kept in its place. */
export function takenBack({ brief, earlier }: KeptBriefs): KeptBriefs {
  if (!earlier) return { brief, earlier };
  return { brief: { ...earlier, basis: brief?.basis ?? earlier.basis }, earlier: brief };
}

interface Finding extends KeptBriefs {
  /** The finder is opened from this joint, or in a part that has none. */
  readonly openFor: (joint: Joint | undefined) => void;
  readonly want: (wanted: Wanted) => void;
  readonly takeBack: () => void;
}

export const useFinding = create<Finding>()((set, get) => {
  const put = (next: KeptBriefs) => {
    keepBriefs(browserStorage(), next);
    set(next);
  };
  return {
    ...readBriefs(browserStorage()),
    openFor: (joint) => put(openedFor(joint, get())),
    want: (wanted) => {
      const { brief, earlier } = get();
      if (brief) put({ brief: { ...brief, wanted }, earlier });
    },
    takeBack: () => put(takenBack(get())),
  };
});
