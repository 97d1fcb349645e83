/**
 * The part and the user's own filaments as they are written between visits; reading them, which needs much more, is in `found.ts`.
 * The storage is passed in, so that tests use a map.
 */
import type { Part } from '../core/design/joint.ts';
import type { OwnFilament } from '../core/material/types.ts';
import { writeFilaments } from '../files/filamentText.ts';
import { writePart } from '../files/partText.ts';
import { readable } from './readable.ts';

/** Bytes by key; every call may fail. */
export interface PartStorage {
  readonly get: (key: string) => Promise<unknown>;
  readonly set: (key: string, value: unknown) => Promise<void>;
  readonly del: (key: string) => Promise<void>;
  readonly keys: () => Promise<readonly IDBValidKey[]>;
}

/** Keys under which they are kept. */
export const KEPT_AS = { part: 'part', shelf: 'filaments' } as const;

/** Rejects, and leaves what was kept, where the storage refuses or the part could not be read back. */
export async function savePart(storage: PartStorage, part: Part): Promise<void> {
  await storage.set(KEPT_AS.part, await readable(writePart(part)));
}

/** The same of filaments. */
export async function saveShelf(storage: PartStorage, filaments: readonly OwnFilament[]): Promise<void> {
  await storage.set(KEPT_AS.shelf, await readable(writeFilaments(filaments)));
}
