/** What is written can be read back, however much it is; or it is not written, and what was kept stays. */
import { beforeEach, describe, expect, it } from 'vitest';
import { readFilamentBytes } from '../../src/files/filamentFile.ts';
import { writeFilaments } from '../../src/files/filamentText.ts';
import { MAX_JOINTS, MAX_PART_BYTES, MAX_TABLE_BYTES } from '../../src/files/limits.ts';
import { MAX_NAME } from '../../src/files/names.ts';
import { readPartBytes } from '../../src/files/partFile.ts';
import { writePart } from '../../src/files/partText.ts';
import { readTallies, writeTallies } from '../../src/files/tallyCsv.ts';
import { findSaved, findShelf } from '../../src/store/found.ts';
import { useMessages } from '../../src/store/messages.ts';
import { savePart, saveShelf } from '../../src/store/savedPart.ts';
import { putOnShelf } from '../../src/core/material/shelf.ts';
import { fullRow, fullRows } from '../support/fullRows.ts';
import { leaf, partOf } from '../support/storeJoints.ts';
import { mapStorage } from '../support/mapStorage.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('one filament with as many tallies as it may have, every text as long as is kept', () => {
  const row = fullRow(0);

  it('takes less than a megabyte as a file', () => {
    const { length } = bytesOf(writeFilaments([row]));
    expect(length).toBeGreaterThan(800_000);
    expect(length).toBeLessThan(1_000_000);
  });

  it('comes back from a table of its tallies', () => {
    const bytes = bytesOf(writeTallies(row));
    expect(bytes.length).toBeLessThan(MAX_TABLE_BYTES / 4);
    const read = readTallies(bytes);
    expect(read.ok && read.value).toEqual(row.own.tests?.tallies);
  });
});

describe('thirty such filaments and as many joints as a part may have', () => {
  const rows = fullRows(30);
  const swing = { amount: 0.123456789012345, ways: 'one way', cycles: 999_999_999 } as const;
  const joints = Array.from({ length: MAX_JOINTS }, (_, i) => {
    const { movement, profile, ...joint } = leaf(`leaf-${i}`);
    return {
      ...joint,
      name: '𝄞'.repeat(MAX_NAME),
      movement: { ...movement, also: Array.from({ length: 12 }, () => swing) },
      profile: { ...profile, filament: rows[i % rows.length]!.id },
    };
  });
  const text = writePart({ name: 'Lid', invented: false, joints }, rows);

  it('come back from a part file', () => {
    const bytes = bytesOf(text);
    expect(bytes.length).toBeGreaterThan(0.8 * MAX_PART_BYTES);
    expect(bytes.length).toBeLessThan(MAX_PART_BYTES);
    const read = readPartBytes(bytes);
    if (!read.ok) throw new Error(read.problems[0].message);
    expect(read.value.part.joints).toHaveLength(MAX_JOINTS);
    expect(read.value.filaments).toEqual(rows);
  });

  it('come back from a file of filaments', () => {
    const read = readFilamentBytes(bytesOf(writeFilaments(rows)));
    expect(read.ok && read.value).toEqual(rows);
  });
});

describe('more than could be read back', () => {
  const few = fullRows(2);
  const many = fullRows(40);
  const part = {
    ...partOf(),
    joints: many.map(({ id }) => ({ ...leaf(id), profile: { ...leaf(id).profile, filament: id } })),
  };
  const refused = { name: 'QuotaExceededError' };

  beforeEach(() => {
    putOnShelf([]);
    useMessages.getState().clear();
  });

  it('is not kept in the place of what could: filaments', async () => {
    const { storage } = mapStorage();
    await saveShelf(storage, few);
    await expect(saveShelf(storage, many)).rejects.toMatchObject(refused);
    expect(await findShelf(storage)).toEqual(few);
  });

  it('is not kept in the place of what could: a part with the filaments that it uses', async () => {
    const { storage } = mapStorage();
    await savePart(storage, partOf('a'));
    putOnShelf(many);
    await expect(savePart(storage, part)).rejects.toMatchObject(refused);
    putOnShelf([]);
    expect((await findSaved(storage)).part).toEqual(partOf('a'));
  });

  it('is said with its size, the limit and what helps', async () => {
    await expect(saveShelf(mapStorage().storage, many)).rejects.toMatchObject(refused);
    const { length } = bytesOf(writeFilaments(many));
    const { message } = useMessages.getState();
    expect(message).toMatchObject({ grade: 'fail' });
    expect(message!.text).toContain(`${length} bytes`);
    expect(message!.text).toContain(`at most ${MAX_PART_BYTES}`);
    expect(message!.text).toMatch(
      /^Not written\..* export those filaments one by one and remove tallies or filaments\.$/,
    );
  });
});
