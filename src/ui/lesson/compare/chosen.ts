/** Which joints stand side by side: kept in the address by their ids. */
import type { Joint } from '../../../core/design/joint.ts';
import { LETTERS } from '../../../core/lesson/demos/demo.ts';

export const MOST = LETTERS.length;

/** Between ids; what an id holds of it is written out. */
const BETWEEN = ',';

export function idsText(ids: readonly string[]): string {
  return ids.map((id) => encodeURIComponent(id)).join(BETWEEN);
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * The joints that an address asks for, in its order, those that are gone left out; where it asks for none that there is, the
 * open joint and those after it, as many as stand side by side.
 */
export function chosenIds(
  asked: string | null,
  joints: readonly Joint[],
  current: string | undefined,
): readonly string[] {
  const there = new Set(joints.map(({ id }) => id));
  const found = [...new Set((asked ?? '').split(BETWEEN).map(decoded))].filter((id) => there.has(id)).slice(0, MOST);
  if (found.length > 0) return found;
  const start = Math.max(
    0,
    joints.findIndex(({ id }) => id === current),
  );
  const after = [...joints.slice(start), ...joints.slice(0, start)];
  return after.slice(0, MOST).map(({ id }) => id);
}

/** With a joint more, or without it. */
export function toggled(ids: readonly string[], id: string): readonly string[] {
  return ids.includes(id) ? ids.filter((one) => one !== id) : [...ids, id].slice(0, MOST);
}

/** With a joint one place to the left (−1) or right (1). */
export function shifted(ids: readonly string[], at: number, by: -1 | 1): readonly string[] {
  const [one, other] = [ids[at], ids[at + by]];
  if (one === undefined || other === undefined) return ids;
  return ids.map((id, i) => (i === at ? other : i === at + by ? one : id));
}
