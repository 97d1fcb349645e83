import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withOnShelf } from '../../src/core/material/shelf.ts';
import { understand } from '../../src/core/design/understand.ts';
import type { Result } from '../../src/core/result.ts';
import { readKeptPart, readPart, readPartBytes, type PartOnFile } from '../../src/files/partFile.ts';
import { writePart } from '../../src/files/partText.ts';
import { anyJson, part } from '../support/partGenerators.ts';

type Json = { [key: string]: unknown };

function expectSound(result: Result<PartOnFile>): void {
  if (result.ok) {
    const { part: read, filaments } = result.value;
    withOnShelf(filaments, () => {
      for (const joint of read.joints) expect(understand(joint).ok).toBe(true);
    });
    expect(new Set(read.joints.map(({ id }) => id)).size).toBe(read.joints.length);
    return;
  }
  expect(result.problems.length).toBeGreaterThan(0);
  expect(result.problems.length).toBeLessThanOrEqual(20);
  for (const { message } of result.problems) expect(message.length).toBeLessThan(500);
}

/** Every place in a document that holds a value, as the keys that lead to it. */
function placesIn(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([key, item]) =>
    placesIn(item, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return path.length === 0 ? inside : [path, ...inside];
}

function parentOf(document: Json, path: readonly (string | number)[]): Json {
  return path.slice(0, -1).reduce<Json>((at, key) => at[key] as Json, document);
}

/** `['part', 'joints', 0, 'id']` → `joints[0].id`. */
function named(path: readonly (string | number)[]): string {
  return path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${key}`))
    .join('')
    .replace(/^\.part(?=.)/, '')
    .slice(1);
}

const mutation = part
  .filter(({ joints }) => joints.length > 0)
  .chain((written) => {
    const document = JSON.parse(writePart(written)) as Json;
    // An entry of the list of joints may be taken out: the part is then simply shorter.
    const places = placesIn(document).filter((path) => typeof path.at(-1) !== 'number');
    return fc.record({ document: fc.constant(document), path: fc.constantFrom(...places) });
  });

/** What a joint need not say. */
const OPTIONAL = [
  'measuredThickness',
  'surroundings',
  'least',
  'also',
  'heldHours',
  'effortAtMost',
  'stays',
  'low',
  'high',
  'range',
  'note',
  'because',
];

describe('a part file', () => {
  it('read after writing is the same part, and writes the same text', () => {
    fc.assert(
      fc.property(part, (written) => {
        const text = writePart(written);
        const read = readPart(text);
        expect(read).toMatchObject({ ok: true, value: { part: written } });
        if (read.ok) expect(writePart(read.value.part, read.value.filaments)).toBe(text);
        expect(readPartBytes(new TextEncoder().encode(text))).toEqual(read);
        expect(readKeptPart(text)).toEqual(read);
      }),
    );
  });

  it('of any text is a part or problems, never an exception', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => expectSound(readPart(text))));
  });

  it('of any bytes is a part or problems, never an exception', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => expectSound(readPartBytes(bytes))));
  });

  it('of any JSON is a part or problems, at any depth of the document', () => {
    const header = { format: 'bendbook-part', version: 1, units: 'mm N MPa rad' };
    const documents = anyJson.chain((value) =>
      fc.constantFrom<unknown>(
        value,
        { ...header, part: value },
        { ...header, part: { name: 'x', invented: false, joints: value } },
        { ...header, part: { name: 'x', invented: false, joints: [value] } },
        { ...header, part: { name: 'x', invented: false, joints: [{ family: 'straightLeaf', sizes: value }] } },
      ),
    );
    fc.assert(fc.property(documents, (document) => expectSound(readPart(JSON.stringify(document)))));
  });

  it('cut off anywhere or with a byte changed is a part or problems', () => {
    const cuts = fc.record({ written: part, at: fc.nat(), byte: fc.nat({ max: 255 }) });
    fc.assert(
      fc.property(cuts, ({ written, at, byte }) => {
        const bytes = new TextEncoder().encode(writePart(written));
        expectSound(readPartBytes(bytes.slice(0, at % bytes.length)));
        bytes[at % bytes.length] = byte;
        expectSound(readPartBytes(bytes));
      }),
    );
  });

  it('without one of its fields names that field; only some may be absent', () => {
    fc.assert(
      fc.property(mutation, ({ document, path }) => {
        delete parentOf(document, path)[path.at(-1) as string];
        const read = readPart(JSON.stringify(document));
        if (OPTIONAL.includes(path.at(-1) as string)) return;
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.problems.map(({ field }) => field)).toContain(named(path));
      }),
    );
  });

  it('with a field of the wrong kind names that field', () => {
    fc.assert(
      fc.property(mutation, ({ document, path }) => {
        const parent = parentOf(document, path);
        const key = path.at(-1) as string;
        parent[key] = typeof parent[key] === 'boolean' ? 'yes' : true;
        const read = readPart(JSON.stringify(document));
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.problems.map(({ field }) => field)).toContain(named(path));
      }),
    );
  });

  it('with a number far out of reach names that field', () => {
    fc.assert(
      fc.property(mutation, fc.constantFrom(-1, 1e12, 1e300), ({ document, path }, wild) => {
        const parent = parentOf(document, path);
        const key = path.at(-1) as string;
        if (typeof parent[key] !== 'number') return;
        // It may be that cold, and a swing may end on the other side.
        if (wild === -1 && ['temperatureC', 'least'].includes(key)) return;
        parent[key] = wild;
        const read = readPart(JSON.stringify(document));
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.problems.map(({ field }) => field)).toContain(named(path));
      }),
    );
  });

  it('with fields of strangers anywhere reads as the same part and says what was left out', () => {
    fc.assert(
      fc.property(mutation, anyJson, ({ document, path }, value) => {
        const parent = parentOf(document, path);
        const before = readPart(JSON.stringify(document));
        Object.defineProperty(parent, 'stranger', { value, enumerable: true });
        const after = readPart(JSON.stringify(document));
        expect(before.ok && after.ok && after.value).toEqual(before.ok && before.value);
        if (after.ok) expect(after.notes.some(({ code }) => code === 'unknown-field')).toBe(true);
      }),
    );
  });
});
