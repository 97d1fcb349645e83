import { afterEach, describe, expect, it } from 'vitest';
import { withWords } from '../../../src/core/material/ownFilament.ts';
import { findFilament, putOnShelf } from '../../../src/core/material/shelf.ts';
import type { OwnFilament } from '../../../src/core/material/types.ts';
import { writePart } from '../../../src/files/partText.ts';
import * as edits from '../../../src/store/edits.ts';
import { findSaved, findShelf, shelfNow } from '../../../src/store/found.ts';
import { saveShelf } from '../../../src/store/savedPart.ts';
import { useSession } from '../../../src/store/session.ts';
import { addFilaments, changeFilament, removeFilament, usersOf, withUnknown } from '../../../src/store/shelf.ts';
import { opened } from '../../../src/store/state.ts';
import { ownPetg } from '../../support/ownFilaments.ts';
import { leaf, partOf } from '../../support/storeJoints.ts';
import { mapStorage } from '../../support/mapStorage.ts';

const blue = ownPetg('own-blue', 'PETG blue');
const red = ownPetg('own-red', 'PETG red');

function named(row: OwnFilament, name: string): OwnFilament {
  const next = withWords(row, { name });
  if (!next.ok) throw new Error(next.problems[0].message);
  return next.value;
}

function of(filament: string) {
  const plain = leaf('a');
  return { ...plain, profile: { ...plain.profile, filament } };
}

const session = () => useSession.getState();
const names = () => session().own.map(({ name }) => name);

afterEach(() => {
  session().open(partOf(), []);
});

describe('filaments of the user’s own', () => {
  it('are found by joints as soon as they are added, and no longer once that is taken back', () => {
    addFilaments([blue], 'Made');
    expect(findFilament('own-blue')?.name).toBe('PETG blue');
    session().undo();
    expect(findFilament('own-blue')).toBeUndefined();
    session().redo();
    expect(findFilament('own-blue')?.name).toBe('PETG blue');
  });

  it('stand in one history with the part: each undo takes back what was done last', () => {
    session().open(partOf('a'), []);
    addFilaments([blue], 'Made');
    session().renamePart('Box', 'Renamed');
    changeFilament(named(blue, 'PETG navy'), 'Renamed');
    expect([names(), session().part.name]).toEqual([['PETG navy'], 'Box']);
    session().undo();
    expect([names(), session().part.name]).toEqual([['PETG blue'], 'Box']);
    session().undo();
    expect([names(), session().part.name]).toEqual([['PETG blue'], 'Lid']);
    session().undo();
    expect(names()).toEqual([]);
  });

  it('changed in one gesture are one step', () => {
    session().open(partOf(), [blue]);
    for (const name of ['P1', 'P2', 'P3']) changeFilament(named(blue, name), name, 'run');
    expect(session().past).toHaveLength(1);
    session().undo();
    expect(names()).toEqual(['PETG blue']);
  });

  it('go only where no joint of the open part uses them, and come back by undo', () => {
    session().open({ ...partOf(), joints: [of('own-blue')] }, [blue, red]);
    expect(usersOf('own-blue')).toEqual(['Leaf a']);
    expect(removeFilament('own-blue', 'Removed')).toBe(false);
    expect(removeFilament('own-red', 'Removed')).toBe(true);
    expect(names()).toEqual(['PETG blue']);
    session().undo();
    expect(names()).toEqual(['PETG blue', 'PETG red']);
  });

  it('make every joint a new value when they change, so that nothing worked out before is taken for it', () => {
    session().open({ ...partOf(), joints: [of('own-blue')] }, [blue]);
    const [before] = session().part.joints;
    changeFilament(named(blue, 'PETG navy'), 'Renamed');
    const [after] = session().part.joints;
    expect(after).toEqual(before);
    expect(after).not.toBe(before);
    session().undo();
    expect(session().part.joints[0]).toBe(before);
  });

  it('stay when another part takes the place of this one', () => {
    session().open(partOf('a'), [blue]);
    session().replacePart(partOf('b'), 'Opened', [blue, red]);
    expect(names()).toEqual(['PETG blue', 'PETG red']);
    session().undo();
    expect(names()).toEqual(['PETG blue']);
    expect(session().part.joints[0]?.id).toBe('a');
  });
});

describe('what another window has saved', () => {
  it('is taken over into every state that can be come back to', () => {
    const added = edits.changeOwn(opened(partOf('a'), []), [blue], 'Made');
    const heard = edits.takeOwn(added, [red]);
    expect(heard.own.map(({ id }) => id)).toEqual(['own-blue', 'own-red']);
    expect(edits.undo(heard).own.map(({ id }) => id)).toEqual(['own-red']);
    expect(edits.redo(edits.undo(heard)).own.map(({ id }) => id)).toEqual(['own-blue', 'own-red']);
    expect(heard.past).toHaveLength(1);
  });

  it('takes the place of the same row here, and loses none that it does not know', () => {
    const heard = edits.takeOwn(opened(partOf('a'), [blue, red]), [named(blue, 'PETG navy')]);
    expect(heard.own.map(({ name }) => name).toSorted()).toEqual(['PETG navy', 'PETG red']);
  });

  it('changes nothing where it says nothing new', () => {
    const state = opened(partOf('a'), [blue, red]);
    expect(edits.takeOwn(state, [ownPetg('own-blue', 'PETG blue')])).toBe(state);
  });
});

describe('the shelf between visits', () => {
  it('comes back as it was saved, and is empty on a first visit', async () => {
    const { storage } = mapStorage();
    expect([await findShelf(storage), await shelfNow(storage)]).toEqual([[], undefined]);
    await saveShelf(storage, [blue, red]);
    expect(await findShelf(storage)).toEqual([blue, red]);
    expect(await shelfNow(storage)).toEqual([blue, red]);
  });

  it('that cannot be read is set aside word for word, beside parts that could not', async () => {
    const { map, storage } = mapStorage({ filaments: '{"format": "bendbook-filament", "ver', part: 'broken' });
    expect(await findShelf(storage)).toEqual([]);
    const { setAside } = await findSaved(storage);
    expect(setAside.map(({ of: what, text }) => [what, text])).toEqual([
      ['filaments', '{"format": "bendbook-filament", "ver'],
      [undefined, 'broken'],
    ]);
    expect(map.has('filaments')).toBe(false);
    await saveShelf(storage, [blue]);
    expect(await findShelf(storage)).toEqual([blue]);
    expect((await findSaved(storage)).setAside).toHaveLength(2);
  });

  it('that another window saved and cannot be read here is left where it is', async () => {
    const { map, storage } = mapStorage({ filaments: '{"format": "bendbook-filament", "version": 9}' });
    expect(await shelfNow(storage)).toBeUndefined();
    expect(map.size).toBe(1);
  });

  it('is known to the part that is read after it; a part brings along what the shelf has lost', async () => {
    const part = { ...partOf(), joints: [of('own-blue')] };
    const { storage } = mapStorage({ part: writePart(part, [blue]) });
    const found = await findSaved(storage);
    expect(found).toMatchObject({ part, filaments: [blue] });
    const navy = named(blue, 'PETG navy');
    // The shelf is the newer where both have a row.
    expect(withUnknown([navy], [blue, red])).toEqual([navy, red]);
    const alone = mapStorage({ part: writePart(part, []) });
    putOnShelf([navy]);
    expect((await findSaved(alone.storage)).part).toEqual(part);
    putOnShelf([]);
    const lost = await findSaved(mapStorage({ part: writePart(part, []) }).storage);
    expect(lost.part).toBeUndefined();
    expect(lost.setAside[0]?.why).toContain('open the file of that filament first');
  });
});
