/**
 * What is kept between visits, read: fetched only where something is kept, as a first visit finds nothing. What cannot be read is
 * never overwritten: it is set aside under its own key and can be downloaded.
 */
import type { Part } from '../core/design/joint.ts';
import type { OwnFilament } from '../core/material/types.ts';
import { readFilamentFile } from '../files/filamentFile.ts';
import { readKeptPart, type PartOnFile } from '../files/partFile.ts';
import { KEPT_AS, type PartStorage } from './savedPart.ts';

/** Something that was found and could not be read, as it was. */
export interface SetAside {
  readonly key: string;
  readonly text: string;
  /** What it was; a part when absent. */
  readonly of?: 'filaments';
  /** Why it could not be read, as the file reader says it. */
  readonly why: string;
}

export interface Found {
  /** Absent on a first visit, and when what was kept could not be read. */
  readonly part?: Part;
  /** The user's own filaments that the part brings along. */
  readonly filaments: readonly OwnFilament[];
  readonly setAside: readonly SetAside[];
}

const ASIDE = 'set-aside-';

/** What was kept as text, whatever it is; everything is always kept as text. */
function asText(stored: unknown): string {
  if (typeof stored === 'string') return stored;
  return JSON.stringify(stored) ?? String(stored);
}

function isSetAside(stored: unknown): stored is Omit<SetAside, 'key'> {
  if (typeof stored !== 'object' || stored === null || !('text' in stored) || !('why' in stored)) return false;
  return typeof stored.text === 'string' && typeof stored.why === 'string';
}

async function allSetAside(storage: PartStorage): Promise<SetAside[]> {
  const keys = (await storage.keys()).filter((key) => typeof key === 'string' && key.startsWith(ASIDE)) as string[];
  return Promise.all(
    keys.toSorted().map(async (key) => {
      const stored = await storage.get(key);
      if (!isSetAside(stored)) return { key, text: asText(stored), why: 'It is damaged' };
      return { key, ...stored };
    }),
  );
}

/** The key is padded so that keys sort by age. */
function freeAsideKey(taken: readonly SetAside[]): string {
  const used = taken.map(({ key }) => Number(key.slice(ASIDE.length))).filter(Number.isFinite);
  return ASIDE + String(Math.max(0, ...used) + 1).padStart(4, '0');
}

/** Moves something that cannot be read aside, before anything can overwrite it. */
async function putAside(storage: PartStorage, from: string, what: Omit<SetAside, 'key'>): Promise<SetAside> {
  const record = { key: freeAsideKey(await allSetAside(storage)), ...what };
  await storage.set(record.key, what);
  await storage.del(from);
  return record;
}

/**
 * What is kept from the last visit. A part that cannot be read is moved aside before anything can overwrite it.
 * Rejects when the storage refuses; then nothing may be saved either, since that could overwrite what was not seen.
 */
export async function findSaved(storage: PartStorage): Promise<Found> {
  const setAside = await allSetAside(storage);
  const stored = await storage.get(KEPT_AS.part);
  if (stored === undefined) return { filaments: [], setAside };
  const text = asText(stored);
  const read = readKeptPart(text);
  if (read.ok) return { ...read.value, setAside };
  const record = await putAside(storage, KEPT_AS.part, { text, why: read.problems[0].message });
  return { filaments: [], setAside: [...setAside, record] };
}

/** The part that another window has saved since, if it can be read. */
export async function savedNow(storage: PartStorage): Promise<PartOnFile | undefined> {
  const read = readKeptPart(asText(await storage.get(KEPT_AS.part)));
  return read.ok ? read.value : undefined;
}

/** What is kept from the last visit; what cannot be read is moved aside. Rejects when the storage refuses. */
export async function findShelf(storage: PartStorage): Promise<readonly OwnFilament[]> {
  const stored = await storage.get(KEPT_AS.shelf);
  if (stored === undefined) return [];
  const text = asText(stored);
  const read = readFilamentFile(text);
  if (read.ok) return read.value;
  await putAside(storage, KEPT_AS.shelf, { text, why: read.problems[0].message, of: 'filaments' });
  return [];
}

/** What another window has saved since, if there is any and it can be read. */
export async function shelfNow(storage: PartStorage): Promise<readonly OwnFilament[] | undefined> {
  const stored = await storage.get(KEPT_AS.shelf);
  if (stored === undefined) return undefined;
  const read = readFilamentFile(asText(stored));
  return read.ok ? read.value : undefined;
}

/** Lets go of a part that was set aside, when the user says so. */
export async function dropSetAside(storage: PartStorage, key: string): Promise<void> {
  if (!key.startsWith(ASIDE)) throw new RangeError(`${key} is not the key of a part that was set aside`);
  await storage.del(key);
}
