/**
 * The part as it is kept between visits. The storage is passed in, so that tests use a map. What cannot be read is
 * never overwritten: it is set aside under its own key and can be downloaded.
 */
import type { Part } from '../core/design/joint.ts';
import type { Result } from '../core/result.ts';
import { writePart } from '../files/partText.ts';

/** Bytes by key; every call may fail. */
export interface PartStorage {
  readonly get: (key: string) => Promise<unknown>;
  readonly set: (key: string, value: unknown) => Promise<void>;
  readonly del: (key: string) => Promise<void>;
  readonly keys: () => Promise<readonly IDBValidKey[]>;
}

/** A part that was found and could not be read, as it was. */
export interface SetAside {
  readonly key: string;
  readonly text: string;
  /** Why it could not be read, as the file reader says it. */
  readonly why: string;
}

export interface Found {
  /** Absent on a first visit, and when what was kept could not be read. */
  readonly part?: Part;
  readonly setAside: readonly SetAside[];
}

const KEY = 'part';
const ASIDE = 'set-aside-';

/** Fetched only where something is kept: a first visit reads nothing. */
async function readKept(text: string): Promise<Result<Part>> {
  const { readKeptPart } = await import('../files/partFile.ts');
  return readKeptPart(text);
}

/** What was kept as text, whatever it is; a part is always kept as text. */
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
      return { key, text: stored.text, why: stored.why };
    }),
  );
}

/** The key is padded so that keys sort by age. */
function freeAsideKey(taken: readonly SetAside[]): string {
  const used = taken.map(({ key }) => Number(key.slice(ASIDE.length))).filter(Number.isFinite);
  return ASIDE + String(Math.max(0, ...used) + 1).padStart(4, '0');
}

/**
 * What is kept from the last visit. A part that cannot be read is moved aside before anything can overwrite it.
 * Rejects when the storage refuses; then nothing may be saved either, since that could overwrite what was not seen.
 */
export async function findSaved(storage: PartStorage): Promise<Found> {
  const setAside = await allSetAside(storage);
  const stored = await storage.get(KEY);
  if (stored === undefined) return { setAside };
  const text = asText(stored);
  const read = await readKept(text);
  if (read.ok) return { part: read.value, setAside };
  const record = { key: freeAsideKey(setAside), text, why: read.problems[0].message };
  await storage.set(record.key, { text: record.text, why: record.why });
  await storage.del(KEY);
  return { setAside: [...setAside, record] };
}

/** The part that another window has saved since, if it can be read. */
export async function savedNow(storage: PartStorage): Promise<Part | undefined> {
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
