import type { Problem } from '../core/problems.ts';
import type { Json } from './keys.ts';

/** Percentiles past anything counted are a guess with a number's face; the terminal says null, as the screen says “beyond”. */
function withheld(value: number, path: string, countedUpTo: number): Problem | undefined {
  if (!/^(how_sure\.)?life_cycles\..*p\d0$/.test(path) || !(value > countedUpTo)) return undefined;
  const message = `${path} lies past the ${countedUpTo} cycles that anyone has counted and is not given`;
  return { code: 'beyond-data', message, field: path, limit: countedUpTo };
}

function notFinite(value: number, path: string): Problem | undefined {
  if (Number.isFinite(value)) return undefined;
  return { code: 'no-answer', message: `${path} has no finite value and is not given`, field: path };
}

/**
 * The same data with null for what JSON cannot hold or nobody can know; each such figure leaves a note.
 *
 * @param data - what is to be said
 * @param path - where it will stand in the document
 * @param notes - gains one for each figure that is not given
 * @param countedUpTo - lives past this are not given
 */
export function sayable(
  data: Json | undefined,
  path: string,
  notes: Problem[],
  countedUpTo = Number.POSITIVE_INFINITY,
): Json | undefined {
  if (typeof data === 'number') {
    const note = notFinite(data, path) ?? withheld(data, path, countedUpTo);
    if (!note) return data;
    notes.push(note);
    return null;
  }
  if (typeof data !== 'object' || data === null) return data;
  if (Array.isArray(data)) {
    return data.map((item: Json, index) => sayable(item, `${path}[${index}]`, notes, countedUpTo) ?? null);
  }
  const entries = Object.entries(data as Readonly<Record<string, Json | undefined>>);
  return Object.fromEntries(
    entries.map(([key, value]) => [key, sayable(value, path === '' ? key : `${path}.${key}`, notes, countedUpTo)]),
  );
}
