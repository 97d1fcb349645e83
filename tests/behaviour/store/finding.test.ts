import { beforeEach, describe, expect, it } from 'vitest';
import { wantedOf } from '../../../src/core/find/wantedOf.ts';
import { keepBriefs, openedFor, readBriefs, takenBack, type KeptBriefs } from '../../../src/store/finding.ts';
import type { PreferenceStorage } from '../../../src/store/preferences.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';

const NONE: KeptBriefs = { brief: undefined, earlier: undefined };

function storage(text?: string): PreferenceStorage & { readonly kept: Map<string, string> } {
  const kept = new Map(text === undefined ? [] : [['bendbook.finder', text]]);
  return { kept, getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

function refuses(): never {
  throw new Error('refused');
}

/** What is looked for, with a room that no joint gives by itself. */
function roomier(kept: KeptBriefs): KeptBriefs {
  if (!kept.brief) throw new Error('no brief stands');
  const { wanted } = kept.brief;
  return { ...kept, brief: { ...kept.brief, wanted: { ...wanted, room: { ...wanted.room, along: 77 } } } };
}

describe('the brief of the finder', () => {
  let opened: KeptBriefs;
  beforeEach(() => {
    opened = roomier(openedFor(LEAF, NONE));
  });

  it('begins as that of the joint that is open', () => {
    expect(openedFor(LEAF, NONE).brief?.wanted).toEqual(wantedOf(LEAF));
    expect(openedFor(LEAF, NONE).brief?.about).toBe(LEAF.name);
    expect(openedFor(LEAF, NONE).earlier).toBeUndefined();
  });

  it('begins as that of a usual leaf where there is no joint', () => {
    const { brief } = openedFor(undefined, NONE);
    expect(brief?.about).toBe('');
    expect(brief?.wanted.measure).toBe('turn');
  });

  it('stays when it is opened again from the same joint, whatever its sizes, filament and name are now', () => {
    expect(openedFor(LEAF, opened)).toBe(opened);
    const longer = {
      ...changed(LEAF, { sizes: { length: 20 }, profile: { filament: 'pla', lying: 'upright' } }),
      name: 'B',
    };
    expect(openedFor(longer, opened)).toBe(opened);
  });

  it('is that of another joint, or of another movement, and one press takes the earlier back', () => {
    for (const other of [CREASE, changed(LEAF, { movement: { cycles: 7 } })]) {
      const now = openedFor(other, opened);
      expect(now.brief?.wanted).toEqual(wantedOf(other));
      expect(now.earlier).toEqual(opened.brief);
      const back = takenBack(now);
      expect(back.brief?.wanted).toEqual(opened.brief?.wanted);
      expect(back.brief?.about).toBe(LEAF.name);
      // Closed and opened again from the same joint, it is still the one that was taken back.
      expect(openedFor(other, back)).toBe(back);
      expect(takenBack(back).brief?.wanted).toEqual(now.brief?.wanted);
    }
  });

  it('is kept, and read again', () => {
    const place = storage();
    const both = openedFor(CREASE, opened);
    keepBriefs(place, both);
    expect(readBriefs(place)).toEqual(both);
  });

  it.each([
    undefined,
    '',
    'not json',
    'null',
    '7',
    '[]',
    '{"brief":7}',
    '{"brief":{"basis":"","about":"","wanted":{}}}',
    '{"brief":{"basis":1,"about":"","wanted":null},"earlier":[]}',
  ])('is none where %s is kept', (text) => {
    expect(readBriefs(storage(text))).toEqual(NONE);
  });

  it('is set aside where a figure of it is damaged', () => {
    const { wanted } = openedFor(LEAF, NONE).brief ?? {};
    for (const damage of [
      { room: { along: 1e9, across: 10, depth: 6 } },
      { room: { along: null, across: 10, depth: 6 } },
      { families: 'all' },
      { families: [] },
      { measure: 'push' },
      { movement: {} },
    ]) {
      const text = JSON.stringify({ brief: { basis: '', about: '', wanted: { ...wanted, ...damage } } });
      expect(readBriefs(storage(text)).brief).toBeUndefined();
    }
  });

  it('lets go of kinds and filaments that are gone since, and of nothing else', () => {
    const { brief } = openedFor(LEAF, NONE);
    if (!brief) throw new Error('no brief stands');
    const { families, filaments } = brief.wanted;
    const wanted = { ...brief.wanted, families: ['gone', ...families], filaments: ['own-gone', ...filaments] };
    const text = JSON.stringify({ brief: { ...brief, wanted } });
    expect(readBriefs(storage(text)).brief).toEqual(brief);
  });

  it('is none where storage is refused', () => {
    expect(readBriefs({ getItem: refuses, setItem: refuses })).toEqual(NONE);
    expect(() => keepBriefs({ getItem: refuses, setItem: refuses }, opened)).not.toThrow();
  });
});
