import { describe, expect, it } from 'vitest';
import { dropSetAside, findSaved, savedNow } from '../../../src/store/found.ts';
import { savePart, type PartStorage } from '../../../src/store/savedPart.ts';
import { partOf } from '../../support/storeJoints.ts';
import { mapStorage } from '../../support/mapStorage.ts';

const NEWER = JSON.stringify({ format: 'bendbook-part', version: 999, units: 'furlongs', part: {} });

describe('the saved part', () => {
  it('comes back as it was saved', async () => {
    const { storage } = mapStorage();
    await savePart(storage, partOf('a', 'b'));
    expect(await findSaved(storage)).toEqual({ part: partOf('a', 'b'), filaments: [], setAside: [] });
    expect(await savedNow(storage)).toEqual({ part: partOf('a', 'b'), filaments: [] });
  });

  it('is absent on a first visit', async () => {
    expect(await findSaved(mapStorage().storage)).toEqual({ filaments: [], setAside: [] });
  });

  it.each([
    ['damaged text', '{"format": "bendbook-part", "ver'],
    ['another file', '{"format": "shopping"}'],
    ['a newer version', NEWER],
  ])('%s is set aside word for word before anything can overwrite it', async (_, text) => {
    const { map, storage } = mapStorage({ part: text });
    const found = await findSaved(storage);
    expect(found.part).toBeUndefined();
    expect(found.setAside).toEqual([{ key: 'set-aside-0001', text, why: expect.stringMatching(/\w/) as string }]);
    await savePart(storage, partOf('a'));
    expect(map.get('set-aside-0001')).toMatchObject({ text });
    expect(await findSaved(storage)).toMatchObject({ part: partOf('a'), setAside: [{ text }] });
  });

  it('of a newer version says so', async () => {
    const found = await findSaved(mapStorage({ part: NEWER }).storage);
    expect(found.setAside[0]?.why).toMatch(/newer/);
  });

  it('that is no text at all is set aside as text', async () => {
    const found = await findSaved(mapStorage({ part: { name: 'Lid', joints: [] } }).storage);
    expect(found.setAside[0]?.text).toBe('{"name":"Lid","joints":[]}');
  });

  it('set aside is never overwritten by the next one; several are kept, oldest first', async () => {
    const { map, storage } = mapStorage({ part: 'first' });
    await findSaved(storage);
    map.set('part', 'second');
    await findSaved(storage);
    map.set('part', 'third');
    const { setAside } = await findSaved(storage);
    expect(setAside.map(({ text }) => text)).toEqual(['first', 'second', 'third']);
  });

  it('is not set aside again on the next visit', async () => {
    const { storage } = mapStorage({ part: 'broken' });
    await findSaved(storage);
    expect((await findSaved(storage)).setAside).toHaveLength(1);
  });

  it('set aside goes only when the user lets go of it, and nothing else can go that way', async () => {
    const { map, storage } = mapStorage({ part: 'broken' });
    await findSaved(storage);
    await dropSetAside(storage, 'set-aside-0001');
    expect(map.size).toBe(0);
    await expect(dropSetAside(storage, 'part')).rejects.toThrow(RangeError);
  });

  it('that is damaged where it was set aside is still listed', async () => {
    const { setAside } = await findSaved(mapStorage({ 'set-aside-0003': 42 }).storage);
    expect(setAside).toEqual([{ key: 'set-aside-0003', text: '42', why: 'It is damaged' }]);
  });

  it('that cannot be set aside stays where it is, and the storage counts as refusing', async () => {
    const { map, storage } = mapStorage({ part: 'broken' });
    const full: PartStorage = { ...storage, set: () => Promise.reject(new Error('full')) };
    await expect(findSaved(full)).rejects.toThrow('full');
    expect(map.get('part')).toBe('broken');
  });
});
