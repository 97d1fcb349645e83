/** Joints whose shape is right, taken over: names cleaned, ids made unique, everything else judged by the core. */
import type { Joint } from '../core/design/joint.ts';
import { understand } from '../core/design/understand.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { MAX_NAME, readName } from './names.ts';
import { shown, within } from './shape.ts';

/** What nobody types: the screen has no way to show it, and it must not be taken for a half-typed value. */
const STRANGE: ReadonlySet<Problem['code']> = new Set(['unknown-family', 'unknown-filament']);

/**
 * All of these joints, with repairs and cautions as notes; or every problem of every joint. When refusals are
 * tolerated they come back as notes as well, but for kinds and filaments that are not known.
 */
export function readJoints(shaped: readonly Joint[], tolerant: boolean): Result<readonly Joint[]> {
  const notes: Problem[] = [];
  const problems: Problem[] = [];
  const taken = new Set<string>();
  const joints = shaped.map((given, index) => {
    const place = `joints[${index}]`;
    const named = nameAndId(given, index + 1, taken);
    taken.add(named.joint.id);
    notes.push(...named.notes.map((note) => within(place, note)));
    const understood = understand(named.joint);
    if (understood.ok) notes.push(...understood.notes.map((note) => within(place, note)));
    else problems.push(...understood.problems.map((problem) => within(place, explained(problem))));
    return named.joint;
  });
  if (tolerant && !problems.some(({ code }) => STRANGE.has(code))) return ok(joints, [...problems, ...notes]);
  return failIfAny(problems) ?? ok(joints, notes);
}

/** One joint on its own, as from a link; fields are named from the joint. */
export function readJoint(shaped: Joint): Result<Joint> {
  const { joint, notes } = nameAndId(shaped, 1, new Set());
  const understood = understand(joint);
  if (understood.ok) return ok(joint, [...notes, ...understood.notes]);
  const [first, ...more] = understood.problems;
  return fail(explained(first), ...more.map(explained));
}

/** A filament of somebody's own is in no list to choose from: it has to come along, or before. */
function explained(problem: Problem): Problem {
  const { code, value } = problem;
  if (code !== 'unknown-filament' || !String(value).startsWith('own-')) return problem;
  const message = `${shown(value)} is a filament of somebody’s own that did not come along; open the file of that filament first, or have the part exported anew`;
  return { ...problem, message };
}

function nameAndId(
  given: Joint,
  count: number,
  taken: ReadonlySet<string>,
): { joint: Joint; notes: readonly Problem[] } {
  const { name, notes } = readName(given.name, 'name', `Joint ${count}`);
  const wanted = readName(given.id, 'id', `joint-${count}`).name;
  const id = firstFree(wanted, taken);
  const joint = { ...given, name, id };
  if (id === given.id) return { joint, notes };
  const message = `id ${shown(given.id)} cannot be kept or is used twice; it is now “${id}”`;
  return { joint, notes: [...notes, { code: 'repaired-id', message, field: 'id', value: id }] };
}

/** `leaf`, then `leaf-2`, `leaf-3`, …, never longer than a name may be. */
function firstFree(wanted: string, taken: ReadonlySet<string>): string {
  let id = wanted;
  for (let n = 2; taken.has(id); n += 1) {
    const ending = `-${n}`;
    id =
      Array.from(wanted)
        .slice(0, MAX_NAME - ending.length)
        .join('') + ending;
  }
  return id;
}
