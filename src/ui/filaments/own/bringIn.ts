/** Filaments that come with a part, a link or a file of their own, taken to those that the user has. */
import type { Joint, Part } from '../../../core/design/joint.ts';
import { takeIn } from '../../../core/material/takeIn.ts';
import type { OwnFilament } from '../../../core/material/types.ts';
import { ok, type Result } from '../../../core/result.ts';
import { useSession } from '../../../store/session.ts';
import { cameAsText, nothingNewText, OWN_SAID } from '../../text/ownText.ts';

export interface BroughtIn {
  /** All of the user's own filaments, with those that came. */
  readonly own: readonly OwnFilament[];
  /** Names of those that are new. */
  readonly names: readonly string[];
  /** What must be said of names that had to change; empty where none had. */
  readonly renamed: string;
  /** A joint that came along, with its filament as it is found now. */
  readonly joint: (joint: Joint) => Joint;
  /** The key under which each row that came is found now. */
  readonly ids: ReadonlyMap<string, string>;
  readonly part: (part: Part) => Part;
}

/** What the user's filaments become with these. Nothing is in force yet. */
export function bringIn(filaments: readonly OwnFilament[]): Result<BroughtIn> {
  const taken = takeIn(useSession.getState().own, filaments);
  if (!taken.ok) return taken;
  const { shelf, added, ids } = taken.value;
  const changed = filaments.flatMap((filament) => {
    const now = shelf.find(({ id }) => id === ids.get(filament.id));
    return now === undefined || now.id === filament.id ? [] : [[filament.name, now.name] as const];
  });
  const joint = (came: Joint): Joint => {
    const filament = ids.get(came.profile.filament) ?? came.profile.filament;
    return { ...came, profile: { ...came.profile, filament } };
  };
  return ok({
    own: shelf,
    names: added.map(({ name }) => name),
    renamed: changed.length === 0 ? '' : cameAsText(changed),
    ids,
    joint,
    part: (came) => ({ ...came, joints: came.joints.map(joint) }),
  });
}

/** Puts the filaments of a file with the user's: the key of the first one, and what must be said of it. */
export function takeFilaments(
  filaments: readonly OwnFilament[],
): Result<{ readonly first: string | undefined; readonly said: string }> {
  const brought = bringIn(filaments);
  if (!brought.ok) return brought;
  const { own, names, renamed, ids } = brought.value;
  if (names.length > 0) useSession.getState().changeOwn(own, OWN_SAID.taken(names));
  const nothingNew = names.length === 0 ? nothingNewText(filaments.map(({ name }) => name)) : '';
  const [first] = filaments;
  return ok({ first: first && ids.get(first.id), said: renamed || nothingNew });
}
