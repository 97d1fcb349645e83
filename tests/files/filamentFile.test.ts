import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkFilament } from '../../src/core/material/ownCheck.ts';
import type { OwnFilament } from '../../src/core/material/types.ts';
import type { Problem } from '../../src/core/problems.ts';
import type { Result } from '../../src/core/result.ts';
import { radians } from '../../src/core/units.ts';
import { readFilamentBytes, readFilamentFile, saysFilaments } from '../../src/files/filamentFile.ts';
import { writeFilaments } from '../../src/files/filamentText.ts';
import { MAX_PART_BYTES } from '../../src/files/limits.ts';
import { ownFilament, ownPetg } from '../support/ownFilaments.ts';
import { anyJson } from '../support/partGenerators.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

function problemsOf(text: string): readonly Problem[] {
  const read = readFilamentFile(text);
  return read.ok ? [] : read.problems;
}

type Json = Record<string, unknown>;

/** The file of one row with one of its values put in the place of another. */
function fileWith(path: string, value: unknown, header: Json = {}): string {
  const document = JSON.parse(writeFilaments([ownPetg()])) as { filaments: Json[] };
  const keys = path.split('.');
  const parent = keys.slice(0, -1).reduce<Json>((at, key) => at[key] as Json, document.filaments[0] as Json);
  if (value === undefined) delete parent[keys.at(-1) as string];
  else parent[keys.at(-1) as string] = value;
  return JSON.stringify({ ...document, ...header });
}

function expectSound(read: Result<readonly OwnFilament[]>): void {
  if (read.ok) {
    for (const row of read.value) expect(checkFilament(row)).toEqual([]);
    return;
  }
  expect(read.problems.length).toBeGreaterThan(0);
  expect(read.problems.length).toBeLessThanOrEqual(20);
  for (const { message } of read.problems) expect(message.length).toBeLessThan(500);
}

const LADDER = ['thickness', 'thickness'];
const TESTS = { printer: 'left one', spool: '3', like: 'petg', tallies: [] };
const SAID = { id: 't-1', date: '2026-03-04', seen: '', thickness: 0.84, lying: 'flat' };
const MARK = { ...SAID, kind: 'mark', radius: 5, looks: 'whitened' };
const BENT = { way: 'over', radius: 5 };
const FLEXED = { ...SAID, id: 't-2', kind: 'flexes', bend: BENT, ways: 'one way', cycles: 700, ended: 'broke' };

describe('the file of a tested filament of version 1, as it was released', () => {
  const text = readFileSync(new URL('saved/filament-v1.json', import.meta.url), 'utf8');

  it('reads with every tally and all that they have taught', () => {
    const read = readFilamentFile(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.notes).toEqual([]);
    const [row] = read.value;
    const { printer, spool, like, tallies = [] } = row?.own.tests ?? {};
    expect({ printer, spool, like }).toEqual({ printer: 'the left one', spool: 'spool 3', like: 'petg' });
    const kinds = tallies.map(({ kind }) => kind);
    expect(kinds).toEqual([...LADDER, ...Array.from({ length: 4 }, () => 'flexes'), 'mark', 'sag', 'hold', 'pull']);
    expect(tallies[4]).toMatchObject({ bend: { way: 'over', radius: 8 }, cycles: 2000, ended: 'whole' });
    expect(tallies[5]).toMatchObject({ seen: 'slipped in the vice', leftOut: true });
    expect(tallies[8]).toMatchObject({ held: radians(120), left: radians(9) });
    expect(row?.laid?.lines?.factor).toBeGreaterThan(0.9);
    expect(row?.life.surestLife).toBeGreaterThan(1);
  });

  it('is what is written today', () => {
    const read = readFilamentFile(text);
    expect(read.ok && writeFilaments(read.value)).toBe(text);
  });
});

describe('a file of filaments', () => {
  it('read after writing is the same filaments, and writes the same text', () => {
    const several = fc.uniqueArray(ownFilament, { selector: ({ id }) => id, maxLength: 3 });
    fc.assert(
      fc.property(several, (written) => {
        const text = writeFilaments(written);
        const read = readFilamentBytes(bytesOf(text));
        expect(read).toEqual({ ok: true, value: written, notes: [] });
        expect(read.ok && writeFilaments(read.value)).toBe(text);
        expect(saysFilaments(bytesOf(text))).toBe(true);
      }),
    );
  });

  it('of any text, bytes or JSON is filaments or problems, never an exception', () => {
    const header = { format: 'bendbook-filament', version: 1 };
    const row = JSON.parse(JSON.stringify(ownPetg())) as Json;
    const documents = anyJson.chain((value) =>
      fc.constantFrom<unknown>(
        value,
        { ...header, filaments: value },
        { ...header, filaments: [value] },
        { ...header, filaments: [{ ...row, properties: value }] },
        { ...header, filaments: [{ ...row, life: value, own: value }] },
        { ...header, filaments: [{ ...row, laid: value, own: { from: 'petg', remark: '', tests: value } }] },
        {
          ...header,
          filaments: [{ ...row, own: { from: 'petg', remark: '', tests: { ...TESTS, tallies: [value] } } }],
        },
        { ...header, filaments: [{ ...row, laid: { lines: value, layers: value } }] },
        { ...header, filaments: [{ ...row, properties: { ...(row['properties'] as Json), yieldStrain: value } }] },
        { ...header, filaments: [{ ...row, life: { ...(row['life'] as Json), provenance: value } }] },
      ),
    );
    fc.assert(fc.property(documents, (document) => expectSound(readFilamentFile(JSON.stringify(document)))));
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => expectSound(readFilamentBytes(bytes))));
  });

  it('cut off anywhere or with a byte changed is filaments or problems', () => {
    const whole = bytesOf(writeFilaments([ownPetg()]));
    fc.assert(
      fc.property(fc.nat(), fc.nat({ max: 255 }), (at, byte) => {
        expectSound(readFilamentBytes(whole.slice(0, at % whole.length)));
        const bytes = whole.slice();
        bytes[at % bytes.length] = byte;
        expectSound(readFilamentBytes(bytes));
      }),
    );
  });

  it.each([
    ['a value below its limit', 'properties.youngsModulus.typical', 0.5, 'below-minimum'],
    ['a value above its limit', 'properties.poissonsRatio.typical', 0.6, 'above-maximum'],
    ['a low above the usual value', 'properties.yieldStrain.low', 0.04, 'above-maximum'],
    ['a high below the usual value', 'properties.yieldStrain.high', 0.03, 'below-minimum'],
    ['a text for a number', 'properties.density.typical', 'heavy', 'wrong-type'],
    ['a unit of something else', 'properties.density.unit', 'lb/ft³', 'not-one-of'],
    ['an origin of no kind', 'properties.density.provenance', { kind: 'rumour' }, 'not-one-of'],
    ['an origin without its words', 'properties.density.provenance', { kind: 'measured' }, 'missing-field'],
    ['no value where one is needed', 'properties.yieldStress', undefined, 'missing-field'],
    ['a curve that rises', 'life.b', 0.1, 'above-maximum'],
    ['a flat part that falls faster than the steep one', 'life.b', -0.6, 'below-minimum'],
    ['half a flex', 'life.maxReportableCycles', 1000.5, 'not-whole'],
    ['a key that no address holds', 'id', 'own-<b>', 'not-one-of'],
    ['a key of the table', 'id', 'petg', 'not-one-of'],
  ])('with %s is refused', (_, path, value, code) => {
    const problems = problemsOf(fileWith(path, value));
    expect(problems[0]?.code).toBe(code);
    expect(problems[0]?.field).toContain(`filaments[0].${path}`);
  });

  it.each([
    ['a life below one flex at which it is surest', 'life.surestLife', 0, 'below-minimum'],
    ['a doubt by decade with which no life is long enough', 'life.doubtPerDecade', 0.4, 'above-maximum'],
    ['lines of no thickness', 'laid', { lines: { factor: 0, offset: 0, sigma: 0 } }, 'below-minimum'],
    ['lines as thick as a text', 'laid', { lines: { factor: 'x', offset: 0, sigma: 0 } }, 'wrong-type'],
    ['layers without their doubt', 'laid', { layers: { factor: 1, offset: 0 } }, 'missing-field'],
    ['tests that are no tests', 'own.tests', 'none', 'wrong-type'],
    ['tests like no row', 'own.tests', { printer: '', spool: '', tallies: [] }, 'missing-field'],
    ['a tally of no kind', 'own.tests', { ...TESTS, tallies: [{ kind: 'dip' }] }, 'not-one-of'],
    [
      'a tally of another kind’s fields',
      'own.tests',
      { ...TESTS, tallies: [{ ...MARK, kind: 'sag' }] },
      'missing-field',
    ],
    ['a bend of no way', 'own.tests', { ...TESTS, tallies: [{ ...FLEXED, bend: { way: 'up' } }] }, 'not-one-of'],
    ['a tally past its limit', 'own.tests', { ...TESTS, tallies: [{ ...MARK, radius: 0 }] }, 'below-minimum'],
    ['a tally set aside by half', 'own.tests', { ...TESTS, tallies: [{ ...MARK, leftOut: 'no' }] }, 'not-one-of'],
    ['a day that is none', 'own.tests', { ...TESTS, tallies: [{ ...MARK, date: '2026-02-30' }] }, 'not-one-of'],
    ['two tallies of one key', 'own.tests', { ...TESTS, tallies: [MARK, MARK] }, 'given-twice'],
    ['too many tallies', 'own.tests', { ...TESTS, tallies: Array.from({ length: 501 }, () => 0) }, 'too-large'],
  ])('with %s is refused', (_, path, value, code) => {
    const problems = problemsOf(fileWith(path, value));
    expect(problems[0]?.code).toBe(code);
    expect(problems[0]?.field).toContain(`filaments[0].${path}`);
  });

  it('keeps a tally of every kind and passes over what no kind has', () => {
    const tallies = [MARK, { ...FLEXED, colour: 'blue' }];
    const read = readFilamentFile(fileWith('own.tests', { ...TESTS, tallies }));
    expect(read.ok && read.value[0]?.own.tests?.tallies).toEqual([MARK, FLEXED]);
    expect(read.ok && read.notes.map(({ field }) => field)).toEqual(['filaments[0].own.tests.tallies[1].colour']);
  });

  it('names every fault of a value with the limit and what helps', () => {
    expect(problemsOf(fileWith('properties.yieldStrain.typical', 30))[0]?.message).toBe(
      'strain at which it stays bent: 3000 % is above 2000 % (nothing breaks at less, and no rubber stretches to more); lower it',
    );
  });

  it('that says that it breaks before it yields is refused', () => {
    expect(
      problemsOf(fileWith('properties.yieldStrain', { ...ownPetg().properties.yieldStrain, typical: 0.9, high: 1 })),
    ).toMatchObject([{ code: 'above-maximum', field: 'filaments[0].properties.yieldStrain.typical', limit: 0.77 }]);
  });

  it('with two rows of one key is refused, since a joint could mean either', () => {
    expect(problemsOf(writeFilaments([ownPetg(), ownPetg()]))).toMatchObject([{ code: 'given-twice' }]);
  });

  it('of a later version is refused and left as it is', () => {
    expect(problemsOf(fileWith('name', 'x', { version: 2 }))).toMatchObject([{ code: 'newer-version', limit: 1 }]);
  });

  it('that is something else is refused', () => {
    expect(problemsOf('{"format": "bendbook-part", "version": 1}')).toMatchObject([{ code: 'not-our-file' }]);
    expect(saysFilaments(bytesOf('{"format": "bendbook-part"}'))).toBe(false);
  });

  it('is refused for its size before it is parsed', () => {
    expect(problemsOf(' '.repeat(MAX_PART_BYTES + 1))).toMatchObject([{ code: 'too-large' }]);
    const many = Array.from({ length: 201 }, () => 0);
    expect(problemsOf(JSON.stringify({ format: 'bendbook-filament', version: 1, filaments: many }))).toMatchObject([
      { code: 'too-large', value: 201, limit: 200 },
    ]);
  });

  it('with fields of strangers reads and says what was left out', () => {
    const read = readFilamentFile(fileWith('properties.colour', { typical: 3 }, { author: 'x' }));
    expect(read.ok && read.notes.map(({ code, field }) => `${code} ${field}`)).toEqual([
      'unknown-field filaments[0].properties.colour',
      'unknown-field author',
    ]);
  });

  it('cleans names and words as other names are, and says so of names', () => {
    const read = readFilamentFile(fileWith('name', '  PETG\nblue '));
    expect(read).toMatchObject({ ok: true, value: [{ name: 'PETG blue' }], notes: [{ code: 'changed-name' }] });
    const remark = readFilamentFile(fileWith('own.remark', `${'x'.repeat(500)}\u0000`));
    expect(remark.ok && remark.value[0]?.own.remark).toBe('x'.repeat(400));
  });

  it('takes a source that is not listed here as a document that somebody named', () => {
    const read = readFilamentFile(
      fileWith('properties.density.provenance', { kind: 'published', source: 's99-later', place: 'p. 3' }),
    );
    expect(read.ok && read.value[0]?.properties.density.provenance).toEqual({
      kind: 'published',
      source: 'named-by-user',
      place: 's99-later: p. 3',
    });
  });

  it('that reaches for prototypes does no harm', () => {
    const hostile = '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},';
    const read = readFilamentFile(writeFilaments([ownPetg()]).replaceAll('{', `{${hostile}`));
    expect(read.ok && read.value).toEqual([ownPetg()]);
    expect(({} as Json)['polluted']).toBeUndefined();
  });
});
