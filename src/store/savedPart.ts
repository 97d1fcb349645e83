/**
 * The part as it is kept between visits. The storage is passed in, so that tests use a map. What cannot be read is
 * never overwritten: it is set aside under its own key and can be downloaded.
 */
import type { Part } from '../core/design/joint.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Result } from '../core/result.ts';
import type { PartOnFile } from '../files/partFile.ts';
import { writePart } from '../files/partText.ts';

/** Bytes by key; every call may fail. */
export interface PartStorage {
  readonly get: (key: string) => Promise<unknown>;
  readonly set: (key: string, value: unknown) => Promise<void>;
  readonly del: (key: string) => Promise<void>;
  readonly keys: () => Promise<readonly IDBValidKey[]>;
}

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

const KEY = 'part';
const ASIDE = 'set-aside-';

/** Fetched only where something is kept: a first visit reads nothing. */
async function readKept(text: string): Promise<Result<PartOnFile>> {
  const { readKeptPart } = await import('../files/partFile.ts');
  return readKeptPart(text);
}

/** What was kept as text, whatever it is; everything is always kept as text. */
export function asText(stored: unknown): string {
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
export async function putAside(storage: PartStorage, from: string, what: Omit<SetAside, 'key'>): Promise<SetAside> {
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
  const stored = await storage.get(KEY);
  if (stored === undefined) return { filaments: [], setAside };
  const text = asText(stored);
  const read = await readKept(text);
  if (read.ok) return { ...read.value, setAside };
  const record = await putAside(storage, KEY, { text, why: read.problems[0].message });
  return { filaments: [], setAside: [...setAside, record] };
}

/** The part that another window has saved since, if it can be read. */
export async function savedNow(storage: PartStorage): Promise<PartOnFile | undefined> {
  const read = await readKept(asText(await storage.get(KEY)));
  return read.ok ? read.value : undefined;
}

export async function savePart(storage: PartStorage, part: Part): Promise<void> {
  await storage.set(KEY, writePart(part));
}

/** Lets go of a part that was set aside, when the user says so. */
export async function dropSetAside(storage: PartStorage, key: string): Promise<void> {
  if (!key.startsWith(ASIDE)) throw new RangeError(`${key} is not the key of a part that was set aside`);
  await storage.del(key);
}
