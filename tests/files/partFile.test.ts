import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../src/core/design/joint.ts';
import type { Problem } from '../../src/core/problems.ts';
import { findFilament, ownFilaments } from '../../src/core/material/shelf.ts';
import { radians } from '../../src/core/units.ts';
import { readFilamentFile } from '../../src/files/filamentFile.ts';
import { MAX_NAME } from '../../src/files/names.ts';
import { MAX_PART_BYTES, PART_VERSION } from '../../src/files/limits.ts';
import { readKeptPart, readPart, readPartBytes } from '../../src/files/partFile.ts';
import { writePart } from '../../src/files/partText.ts';
import { LEAF as WORKED } from '../support/joints.ts';
import { ownPetg } from '../support/ownFilaments.ts';
import { migrate, MIGRATIONS, versionAfter, type Document, type Migration } from '../../src/files/partMigrations.ts';

const LEAF = { ...WORKED, id: 'flap', name: 'Rain flap' };
const PART = { name: 'Station', invented: false, joints: [LEAF] };

type Changes = { readonly [key: string]: unknown };

/** The file of one leaf with some of its fields changed; groups are merged. */
function fileWith(changes: Changes, joint: Changes = {}, header: Changes = {}): string {
  const joints = [{ ...LEAF, ...joint }];
  const part = { ...PART, joints, ...changes };
  return JSON.stringify({ format: 'bendbook-part', version: 3, units: 'mm N MPa rad', part, filaments: [], ...header });
}

function problemsOf(text: string): readonly Problem[] {
  const read = readPart(text);
  return read.ok ? [] : read.problems;
}

function notesOf(text: string): readonly Problem[] {
  const read = readPart(text);
  expect(read.ok, JSON.stringify(read)).toBe(true);
  return read.ok ? read.notes : [];
}

// A planted step: an imagined version 1 that kept the title beside the part.
const moveTitle: Migration = ({ title, part, ...rest }) => ({ ...rest, part: { ...(part as object), name: title } });
function older() {
  const document = JSON.parse(fileWith({}, {}, { version: 1, title: 'Old title' })) as {
    part: Record<string, unknown>;
  };
  delete document.part['name'];
  return document;
}

/** A step that only leaves word that it ran. */
const tag =
  (n: number): Migration =>
  (document) => ({ ...document, ran: [...((document['ran'] as number[] | undefined) ?? []), n] });

const many = (count: number) => Array.from({ length: count }, (_, index) => ({ ...LEAF, id: `joint-${index}` }));

const turned = (value: object) => Object.fromEntries(Object.entries(value).toReversed());

const saved = (name: string) => readFileSync(new URL(`saved/${name}`, import.meta.url), 'utf8');

describe('the file of version 1, as it was released', () => {
  const text = saved('part-v1.json');

  it('reads with every value', () => {
    const read = readPart(text);
    expect(read).toMatchObject({
      ok: true,
      value: { part: { name: 'Balcony weather station', invented: true }, filaments: [] },
    });
    if (!read.ok) return;
    expect(read.value.part.joints.map(({ id, family }) => `${id} ${family}`)).toEqual([
      'rain-flap straightLeaf',
      'battery-door crease',
      'borrowed-clip straightLeaf',
    ]);
    const [flap, door, clip] = read.value.part.joints;
    expect(flap).toEqual({
      id: 'rain-flap',
      name: 'Rain-flap hinge',
      family: 'straightLeaf',
      sizes: { lines: 2, length: 12, depth: 6, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
      movement: { drive: 'turned', amount: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.95 },
      profile: LEAF.profile,
    });
    expect(door?.profile).toMatchObject({ lying: 'crease', filament: 'pp' });
    expect(clip?.measuredThickness).toBe(0.63);
  });

  it('is turned into the newest version by its steps, and by nothing else', () => {
    const read = readPart(text);
    expect(read).toMatchObject({ ok: true, notes: [] });
    const again = readPart(read.ok ? writePart(read.value.part) : '');
    expect(again).toEqual(read);
  });

  it('keeps a field that its step cannot make sense of for the shape to refuse', () => {
    const broken = text.replace('"angle": 0.6108652381980153', '"angle": "far"');
    expect(problemsOf(broken)).toMatchObject([{ code: 'wrong-type', field: 'joints[0].movement.amount' }]);
    const without = text.replace('"angle": 0.6108652381980153,', '');
    expect(problemsOf(without)).toMatchObject([{ code: 'missing-field', field: 'joints[0].movement.amount' }]);
  });
});

describe('the file of version 2, as it was released', () => {
  const text = saved('part-v2.json');

  it('reads with every value', () => {
    const read = readPart(text);
    if (!read.ok) throw new Error('the saved file must read');
    expect(read.notes).toEqual([]);
    const [flap, , , clip, lever] = read.value.part.joints;
    expect(flap?.movement).toMatchObject({ drive: 'turned', amount: radians(35) });
    expect(clip?.movement).toMatchObject({ drive: 'pushed', amount: 3, effortAtMost: 5, stays: false });
    expect(clip?.sizes).toMatchObject({ sideBySide: 2, taper: 0.8 });
    expect(lever?.movement).toMatchObject({ drive: 'centred', amount: radians(8) });
    expect(lever?.sizes).toMatchObject({ centre: 0.4 });
  });

  it('is the same part as one of the newest version, which may bring filaments along', () => {
    const read = readPart(text);
    const newest = readPart(read.ok ? writePart(read.value.part) : '');
    expect(newest).toEqual(read);
    expect(read.ok && read.value.filaments).toEqual([]);
  });
});

describe('the file of version 3, as it was released', () => {
  const text = saved('part-v3.json');

  it('reads with every value', () => {
    const read = readPart(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.notes.filter(({ code }) => code === 'unknown-field')).toEqual([]);
    const [flap, latch] = read.value.part.joints;
    expect(flap?.movement).toMatchObject({
      amount: radians(35),
      also: [{ amount: radians(10), ways: 'one way', cycles: 20_000 }],
      held: true,
      heldHours: 12,
    });
    expect(flap?.surroundings).toEqual({ temperatureC: 40, moisture: 'dry' });
    expect(latch?.movement).toMatchObject({ amount: 2, ways: 'between', least: 0.5 });
    expect([flap, latch].map((joint) => joint?.profile.filament)).toEqual(['own-petg-blue', 'petg']);
    const [blue] = read.value.filaments;
    expect(blue).toMatchObject({ id: 'own-petg-blue', name: 'PETG blue', own: { from: 'petg' } });
    expect(blue?.properties.flexuralModulus).toMatchObject({
      typical: 1700,
      low: 1600,
      high: 1800,
      provenance: { kind: 'measured', what: 'three bars over supports, first spool' },
    });
    expect(blue?.life).toMatchObject({ sigmaLog10N: 0.5, certainty: 'by your own test' });
  });

  it('is what is written today', () => {
    const read = readPart(text);
    expect(read.ok && writePart(read.value.part, read.value.filaments)).toBe(text);
  });
});

describe('writing a part', () => {
  it('gives the same text whatever order the fields were made in', () => {
    const joint = { ...turned(LEAF), sizes: turned(LEAF.sizes), movement: turned(LEAF.movement) } as unknown as Joint;
    expect(writePart({ joints: [joint], invented: false, name: 'Station' })).toBe(writePart(PART));
  });

  it('carries the tallies of a tested filament that a joint uses, and reads them back the same', () => {
    const tested = readFilamentFile(saved('filament-v1.json'));
    if (!tested.ok) throw new Error(JSON.stringify(tested.problems));
    const [row] = tested.value;
    const joints = [{ ...LEAF, profile: { ...LEAF.profile, filament: row!.id } }];
    const read = readPart(writePart({ ...PART, joints }, tested.value));
    expect(read).toMatchObject({ ok: true, value: { filaments: tested.value } });
    expect(row?.own.tests?.tallies).toHaveLength(10);
  });

  it('leaves out a thickness that was not measured', () => {
    expect(writePart(PART)).not.toContain('measuredThickness');
    expect(writePart({ ...PART, joints: [{ ...LEAF, measuredThickness: 0.9 }] })).toContain('"measuredThickness": 0.9');
  });
});

describe('a file that is not a part', () => {
  it.each([
    ['nothing', '', 'unreadable'],
    ['only blanks', ' \n\t', 'unreadable'],
    ['half a document', '{"format": "bendbook-part"', 'unreadable'],
    ['prose', 'Once upon a hinge', 'unreadable'],
    ['a number', '42', 'not-our-file'],
    ['null', 'null', 'not-our-file'],
    ['a list', '[]', 'not-our-file'],
    ['another format', '{"format": "other", "version": 1}', 'not-our-file'],
    ['brackets a million deep', '['.repeat(1e6), 'unreadable'],
  ])('%s is refused', (_, text, code) => {
    expect(problemsOf(text)).toMatchObject([{ code }]);
  });

  it('is refused for its size before it is parsed', () => {
    expect(problemsOf(' '.repeat(MAX_PART_BYTES + 1))).toMatchObject([{ code: 'too-large', limit: MAX_PART_BYTES }]);
    const bytes = new Uint8Array(MAX_PART_BYTES + 1);
    expect(readPartBytes(bytes)).toMatchObject({ ok: false, problems: [{ code: 'too-large' }] });
  });
});

describe('bytes', () => {
  const text = fileWith({ name: 'Höhe' });
  const utf8 = new TextEncoder().encode(text);

  it('read with and without a mark of UTF-8, and so does text with its mark', () => {
    expect(readPartBytes(utf8)).toMatchObject({ ok: true, value: { part: { name: 'Höhe' } } });
    expect(readPartBytes(new Uint8Array([0xef, 0xbb, 0xbf, ...utf8]))).toEqual(readPartBytes(utf8));
    expect(readPart(`\uFEFF${text}`)).toEqual(readPart(text));
  });

  it.each([
    ['little end first, marked', [0xff, 0xfe], 0],
    ['big end first, marked', [0xfe, 0xff], 1],
    ['little end first', [], 0],
    ['big end first', [], 1],
  ])('of UTF-16, %s, are refused by name', (_, mark, at) => {
    const wide = Array.from(text).flatMap((c) => (at === 0 ? [c.charCodeAt(0), 0] : [0, c.charCodeAt(0)]));
    const read = readPartBytes(new Uint8Array([...mark, ...wide]));
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'unreadable' }] });
    expect(!read.ok && read.problems[0].message).toContain('UTF-16');
  });

  it('that are no text are refused', () => {
    const read = readPartBytes(new Uint8Array([0x7b, 0xc3, 0x28]));
    expect(!read.ok && read.problems[0].message).toContain('not UTF-8');
  });
});

describe('versions', () => {
  it('end with the one that is written', () => {
    expect(PART_VERSION).toBe(versionAfter(MIGRATIONS));
  });

  it('newer than this program are refused and said to be untouched', () => {
    const [problem] = problemsOf(fileWith({}, {}, { version: 7 }));
    expect(problem).toMatchObject({ code: 'newer-version', field: 'version', value: 7, limit: 3 });
    expect(problem?.message).toContain('made by a newer Bendbook');
    expect(problem?.message).toContain('untouched');
  });

  it.each([0, -1, 1.5, '1', null, true])('%s is no version', (version) => {
    expect(problemsOf(fileWith({}, {}, { version }))).toMatchObject([{ code: 'wrong-type', field: 'version' }]);
  });

  it('missing is said', () => {
    const text = JSON.stringify({ format: 'bendbook-part', part: {} });
    expect(problemsOf(text)).toMatchObject([{ code: 'missing-field', field: 'version' }]);
  });

  it('older are taken through the steps that follow', () => {
    const read = readPart(JSON.stringify(older()), [moveTitle]);
    expect(read).toMatchObject({ ok: true, value: { part: { name: 'Old title', joints: [LEAF] } }, notes: [] });
  });

  it('at the newest skip every step', () => {
    const read = readPart(fileWith({}, {}, { version: 2 }), [moveTitle]);
    expect(read).toMatchObject({ ok: true, value: { part: { name: 'Station' } } });
  });

  it('past the newest step are still refused', () => {
    const read = readPart(fileWith({}, {}, { version: 3 }), [moveTitle]);
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'newer-version', limit: 2 }] });
  });

  it('run only the steps from their own, in order, and count up', () => {
    const steps = [tag(1), tag(2), tag(3)];
    const start: Document = { version: 2 };
    expect(migrate(start, 2, steps)).toEqual({ version: 4, ran: [2, 3] });
    expect(start).toEqual({ version: 2 });
  });

  it('that a step cannot make sense of end as problems of shape', () => {
    const read = readPart('{"format": "bendbook-part", "version": 1, "part": 5}', [moveTitle]);
    expect(read.ok).toBe(false);
  });
});

describe('fields', () => {
  it('missing or of the wrong kind are all named at once, with value and what was expected', () => {
    const movement = { ...LEAF.movement, held: 'no', ways: 'sideways' };
    const { depth: _, ...sizes } = LEAF.sizes as { depth: number };
    const text = fileWith({ invented: 1 }, { movement, sizes: { ...sizes, length: '12' }, profile: null });
    expect(problemsOf(text).map(({ code, message }) => `${code}: ${message}`)).toEqual([
      'wrong-type: invented is 1, expected true or false',
      'wrong-type: joints[0].sizes.length is “12”, expected a number',
      'missing-field: joints[0].sizes.depth is missing, expected a number',
      'not-one-of: joints[0].movement.ways is “sideways”, expected one of one way, both ways, between',
      'wrong-type: joints[0].movement.held is “no”, expected true or false',
      'wrong-type: joints[0].profile is null, expected an object',
    ]);
  });

  it('past twenty are counted', () => {
    const problems = problemsOf(fileWith({ joints: Array.from({ length: 9 }, () => ({})) }));
    expect(problems).toHaveLength(20);
    // Six fields of each of nine joints are missing: id, name, family, sizes, movement, profile.
    expect(problems.at(-1)?.message).toContain('(and 34 more)');
  });

  it('of a list where an object belongs is refused', () => {
    expect(problemsOf(fileWith({}, { sizes: [1, 2] })).map(({ field }) => field)).toContain('joints[0].sizes.lines');
  });

  it('in other units are refused', () => {
    expect(problemsOf(fileWith({}, {}, { units: 'inch lbf psi deg' }))).toMatchObject([
      { code: 'not-one-of', field: 'units', value: 'inch lbf psi deg' },
    ]);
  });

  it('too large for a number are refused by name', () => {
    const text = fileWith({}).replace('"length":12', '"length":1e999');
    expect(problemsOf(text)).toMatchObject([{ code: 'not-a-number', field: 'joints[0].sizes.length' }]);
  });

  it('that are not known are left out with a note, whatever they hold', () => {
    const sizes = { ...LEAF.sizes, colour: 3 };
    const text = fileWith({ author: {} }, { sizes, note: [[1]] }, { later: 1 });
    expect(readPart(text)).toMatchObject({ ok: true, value: { part: PART } });
    expect(notesOf(text).map(({ code, field }) => `${code} ${field}`)).toEqual([
      'unknown-field later',
      'unknown-field joints[0].sizes.colour',
      'unknown-field joints[0].note',
      'unknown-field author',
    ]);
  });

  it('that reach for prototypes do no harm', () => {
    const hostile = '"__proto__":{"polluted":1,"held":true},"constructor":{"prototype":{"polluted":1}},';
    const text = fileWith({}).replaceAll('{', `{${hostile}`);
    const read = readPart(text);
    expect(read).toMatchObject({ ok: true, value: { part: PART } });
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(read.ok && Object.keys(read.value.part)).toEqual(['name', 'invented', 'joints']);
    expect(read.ok && Object.getPrototypeOf(read.value.part.joints[0]?.sizes)).toBe(Object.prototype);
  });

  it('cannot be lent by a prototype', () => {
    const joint = '{"__proto__": {"id": "a", "name": "a", "family": "straightLeaf"}}';
    const text = `{"format":"bendbook-part","version":1,"units":"mm N MPa rad","part":{"name":"x","invented":false,"joints":[${joint}]}}`;
    expect(problemsOf(text).map(({ field }) => field)).toContain('joints[0].family');
  });
});

describe('values', () => {
  it.each([
    ['an unknown family', { family: 'zigzag' }, 'unknown-family', 'joints[0].family'],
    [
      'an unknown filament',
      { profile: { ...LEAF.profile, filament: 'wood' } },
      'unknown-filament',
      'joints[0].profile.filament',
    ],
    [
      'an impossible lie',
      { profile: { ...LEAF.profile, lying: 'crease' } },
      'lying-not-possible',
      'joints[0].profile.lying',
    ],
    ['a size out of range', { sizes: { ...LEAF.sizes, length: 0 } }, 'below-minimum', 'joints[0].sizes.length'],
    ['half a line', { sizes: { ...LEAF.sizes, lines: 2.5 } }, 'not-whole', 'joints[0].sizes.lines'],
    ['a nozzle out of range', { profile: { ...LEAF.profile, nozzle: 9 } }, 'above-maximum', 'joints[0].profile.nozzle'],
    ['a thickness out of range', { measuredThickness: 0.01 }, 'below-minimum', 'joints[0].measuredThickness'],
    [
      'an angle past a turn',
      { movement: { ...LEAF.movement, amount: 35 } },
      'above-maximum',
      'joints[0].movement.amount',
    ],
  ])('%s is refused', (_, joint, code, field) => {
    expect(problemsOf(fileWith({}, joint))).toMatchObject([{ code, field }]);
  });

  it('of every joint are judged', () => {
    const bad = { ...LEAF, sizes: { ...LEAF.sizes, length: 0 } };
    const fields = problemsOf(fileWith({ joints: [bad, LEAF, bad] })).map(({ field }) => field);
    expect(fields).toEqual(['joints[0].sizes.length', 'joints[2].sizes.length']);
  });

  it('that deserve caution come back as notes', () => {
    const notes = notesOf(fileWith({}, { sizes: { ...LEAF.sizes, fillet: 0 } }));
    expect(notes).toMatchObject([{ code: 'sharp-root', field: 'joints[0].sizes.fillet' }]);
  });

  it('name a family of any length in a short message', () => {
    expect(problemsOf(fileWith({}, { family: 'z'.repeat(1e5) }))[0]?.message.length).toBeLessThan(200);
  });
});

describe('names and ids', () => {
  it('are trimmed to one line of at most 80 characters, with a note', () => {
    const text = fileWith({ name: '  Two\nlines\u0000 ' }, { name: '🌦'.repeat(90) });
    expect(readPart(text)).toMatchObject({
      ok: true,
      value: { part: { name: 'Two lines', joints: [{ name: '🌦'.repeat(MAX_NAME) }] } },
    });
    expect(notesOf(text)).toMatchObject([
      { code: 'changed-name', field: 'name' },
      { code: 'changed-name', field: 'joints[0].name' },
    ]);
  });

  it('hold no half of a character, which a link could not carry', () => {
    expect(readPart(fileWith({ name: 'a\uD800b' }))).toMatchObject({ ok: true, value: { part: { name: 'a\uFFFDb' } } });
  });

  it('that are empty get a name', () => {
    expect(readPart(fileWith({ name: ' ' }, { name: '', id: '' }))).toMatchObject({
      ok: true,
      value: { part: { name: 'Part', joints: [{ name: 'Joint 1', id: 'joint-1' }] } },
    });
  });

  it('used twice are parted, with a note for each change', () => {
    const ids = ['a', 'a', 'a-2', 'a'];
    const text = fileWith({ joints: ids.map((id) => ({ ...LEAF, id })) });
    const read = readPart(text);
    expect(read.ok && read.value.part.joints.map(({ id }) => id)).toEqual(['a', 'a-2', 'a-2-2', 'a-3']);
    expect(notesOf(text).map(({ code, field }) => `${code} ${field}`)).toEqual([
      'repaired-id joints[1].id',
      'repaired-id joints[2].id',
      'repaired-id joints[3].id',
    ]);
  });

  it('stay within their length when parted, so that they read back unchanged', () => {
    const id = 'x'.repeat(MAX_NAME);
    const read = readPart(
      fileWith({
        joints: [
          { ...LEAF, id },
          { ...LEAF, id },
        ],
      }),
    );
    expect(read.ok && read.value.part.joints[1]?.id).toBe(`${'x'.repeat(MAX_NAME - 2)}-2`);
    expect(read.ok && readPart(writePart(read.value.part))).toMatchObject({ ok: true, notes: [] });
  });
});

describe('the number of joints', () => {
  it('may be none, and may be 200', () => {
    expect(readPart(fileWith({ joints: [] }))).toMatchObject({ ok: true, value: { part: { joints: [] } } });
    expect(readPart(fileWith({ joints: many(200) })).ok).toBe(true);
  });

  it('past 200 is one problem', () => {
    expect(problemsOf(fileWith({ joints: many(201) }))).toMatchObject([
      { code: 'too-large', field: 'joints', value: 201, limit: 200 },
    ]);
    expect(problemsOf(fileWith({ joints: Array.from({ length: 3e5 }, () => 0) }))).toHaveLength(1);
  });
});

describe('filaments of the user’s own', () => {
  const blue = ownPetg('own-blue');
  const used = { profile: { ...LEAF.profile, filament: 'own-blue' } };

  it('come along with the joints that use them, and no others do', () => {
    const joint = { ...LEAF, ...used };
    const text = writePart({ ...PART, joints: [joint] }, [blue, ownPetg('own-red')]);
    expect(readPart(text)).toEqual({
      ok: true,
      value: { part: { ...PART, joints: [joint] }, filaments: [blue] },
      notes: [],
    });
  });

  it('are known to the joints of their part and stay off the shelf', () => {
    const before = ownFilaments();
    expect(readPart(fileWith({}, used, { filaments: [blue] })).ok).toBe(true);
    expect(findFilament('own-blue')).toBeUndefined();
    expect(ownFilaments()).toBe(before);
  });

  it('that did not come along are said, with what helps', () => {
    const [problem] = problemsOf(fileWith({}, used));
    expect(problem).toMatchObject({ code: 'unknown-filament', field: 'joints[0].profile.filament', value: 'own-blue' });
    expect(problem?.message).toContain('open the file of that filament first');
    expect(readKeptPart(fileWith({}, used)).ok).toBe(false);
  });

  it('are judged as those of a file of their own', () => {
    const low = { ...blue.properties.youngsModulus, low: 3000 };
    const bad = { ...blue, properties: { ...blue.properties, youngsModulus: low } };
    expect(problemsOf(fileWith({}, used, { filaments: [bad] }))).toMatchObject([
      { code: 'above-maximum', field: 'filaments[0].properties.youngsModulus.low', value: 3000, limit: 1900 },
    ]);
  });
});

describe('a part that was kept', () => {
  const text = fileWith({}, { sizes: { ...LEAF.sizes, length: 0 } });

  it('is given back as it stood, what the core refuses as notes', () => {
    expect(readPart(text).ok).toBe(false);
    expect(readKeptPart(text)).toMatchObject({
      ok: true,
      value: { part: { joints: [{ sizes: { length: 0 } }] } },
      notes: [{ code: 'below-minimum', field: 'joints[0].sizes.length' }],
    });
  });

  it('is refused, and so set aside, where a kind or filament is not known', () => {
    for (const change of [{ family: 'hinge' }, { profile: { ...LEAF.profile, filament: 'wood' } }]) {
      expect(readKeptPart(fileWith({}, change)).ok).toBe(false);
    }
  });

  it('must still have the right shape', () => {
    expect(readKeptPart(fileWith({ joints: [{}] })).ok).toBe(false);
    // Infinity would be written as null and then lost.
    expect(readKeptPart(fileWith({}).replace('"length":12', '"length":1e999')).ok).toBe(false);
  });
});
