/** The user's own filaments as they are kept between visits, beside the part and with the same care. */
import type { OwnFilament } from '../core/material/types.ts';
import type { Result } from '../core/result.ts';
import { writeFilaments } from '../files/filamentText.ts';
import { asText, putAside, type PartStorage } from './savedPart.ts';

const KEY = 'filaments';

/** Fetched only where something is kept: a first visit reads nothing. */
async function readKept(text: string): Promise<Result<readonly OwnFilament[]>> {
  const { readFilamentFile } = await import('../files/filamentFile.ts');
  return readFilamentFile(text);
}

/** What is kept from the last visit; what cannot be read is moved aside. Rejects when the storage refuses. */
export async function findShelf(storage: PartStorage): Promise<readonly OwnFilament[]> {
  const stored = await storage.get(KEY);
  if (stored === undefined) return [];
  const text = asText(stored);
  const read = await readKept(text);
  if (read.ok) return read.value;
  await putAside(storage, KEY, { text, why: read.problems[0].message, of: 'filaments' });
  return [];
}

/** What another window has saved since, if there is any and it can be read. */
export async function shelfNow(storage: PartStorage): Promise<readonly OwnFilament[] | undefined> {
  const stored = await storage.get(KEY);
  if (stored === undefined) return undefined;
  const read = await readKept(asText(stored));
  return read.ok ? read.value : undefined;
}

export async function saveShelf(storage: PartStorage, filaments: readonly OwnFilament[]): Promise<void> {
  await storage.set(KEY, writeFilaments(filaments));
}
