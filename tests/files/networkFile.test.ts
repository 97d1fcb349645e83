import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BeamModel } from '../../src/core/beam/model.ts';
import type { Problem } from '../../src/core/problems.ts';
import type { Result } from '../../src/core/result.ts';
import { MAX_NETWORK_BYTES, readNetwork, readNetworkBytes } from '../../src/files/networkFile.ts';
import { changedAt, EVERY_FIELD, placesIn, type Keys } from '../support/networkGenerators.ts';
import { anyJson } from '../support/partGenerators.ts';

const HEADER = { format: 'bendbook-network', version: 1, units: 'mm N MPa rad' };
const DOCUMENT = { ...HEADER, ...EVERY_FIELD };
const text = (document: unknown) => JSON.stringify(document);

/** As one would write it by hand: a leaf, held at one end and pushed at the other. */
const BY_HAND = `{
  "format": "bendbook-network", "version": 1, "units": "mm N MPa rad",
  "modulus": 2000, "poisson": 0.35,
  "nodes": [{ "id": "root", "x": 0, "y": 0 }, { "id": "tip", "x": 20, "y": 0 }],
  "members": [{ "id": "leaf", "from": "root", "to": "tip", "shape": { "kind": "straight" }, "thickness": 0.84, "width": 6 }],
  "supports": [{ "at": "root", "x": true, "y": true, "turn": true }],
  "motions": [{ "at": "tip", "y": 5 }]
}`;

function problemsOf(file: string): readonly Problem[] {
  const read = readNetwork(file);
  return read.ok ? [] : read.problems;
}

function named(path: Keys): string {
  return path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${key}`))
    .join('')
    .slice(1);
}

function expectSound(result: Result<BeamModel>): void {
  if (result.ok) return;
  expect(result.problems.length).toBeGreaterThan(0);
  expect(result.problems.length).toBeLessThanOrEqual(20);
  for (const { message } of result.problems) expect(message.length).toBeLessThan(600);
}

describe('a network file', () => {
  it('with every field reads as the network it was written from', () => {
    expect(readNetwork(text(DOCUMENT))).toEqual({ ok: true, value: EVERY_FIELD, notes: [] });
  });

  it('written by hand may leave lists out', () => {
    const read = readNetwork(BY_HAND);
    expect(read).toMatchObject({ ok: true, notes: [], value: { pads: [], loads: [], springs: [], ties: [] } });
    expect(read.ok && read.value.motions).toEqual([{ at: 'tip', y: 5 }]);
  });

  it('reads from bytes, with or without a mark of UTF-8', () => {
    const bytes = new TextEncoder().encode(BY_HAND);
    expect(readNetworkBytes(bytes)).toEqual(readNetwork(BY_HAND));
    expect(readNetworkBytes(new Uint8Array([0xef, 0xbb, 0xbf, ...bytes]))).toEqual(readNetwork(BY_HAND));
    expect(readNetwork(`\uFEFF${BY_HAND}`)).toEqual(readNetwork(BY_HAND));
  });
});

describe('a file that is no network', () => {
  it.each([
    ['nothing', '', 'unreadable'],
    ['half a document', BY_HAND.slice(0, 200), 'unreadable'],
    ['brackets a million deep', '['.repeat(9e5), 'unreadable'],
    ['a list', '[]', 'not-our-file'],
    ['a part', text({ ...DOCUMENT, format: 'bendbook-part' }), 'not-our-file'],
    ['a later version', text({ ...DOCUMENT, version: 2 }), 'newer-version'],
    ['no version', text({ ...DOCUMENT, version: undefined }), 'missing-field'],
    ['other units', text({ ...DOCUMENT, units: 'inch lbf psi deg' }), 'not-one-of'],
    ['too many characters', ' '.repeat(MAX_NETWORK_BYTES + 1), 'too-large'],
  ])('%s is refused', (_, file, code) => {
    expect(problemsOf(file)).toMatchObject([{ code }]);
  });

  it.each([
    ['too many', new Uint8Array(MAX_NETWORK_BYTES + 1), 'a network at most'],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x7b, 0]), 'UTF-16'],
    ['no text', new Uint8Array([0x7b, 0xc3, 0x28]), 'not UTF-8'],
  ])('bytes, %s, are refused', (_, bytes, said) => {
    const read = readNetworkBytes(bytes);
    expect(!read.ok && read.problems[0].message).toContain(said);
  });

  it('of another kind is told by its tag', () => {
    expect(problemsOf(text({ ...DOCUMENT, format: 'bendbook-part' }))[0]?.message).toContain('not a network');
  });
});

describe('fields', () => {
  const places = placesIn(DOCUMENT);
  const lists = ['pads', 'supports', 'motions', 'loads', 'springs', 'ties'];
  const optional = new Set(['hinged', 'plane', 'widthRatio', 'follower', 'twist', 'turn', 'moment']);

  it('missing are named, unless they may be left out', () => {
    for (const path of places.filter((each) => typeof each.at(-1) !== 'number' && each[0] !== 'format')) {
      const key = String(path.at(-1));
      const fields = problemsOf(text(changedAt(DOCUMENT, path, undefined))).map(
        ({ code, field }) => `${code} ${field}`,
      );
      const isOptional =
        lists.includes(key) ||
        (optional.has(key) && path[2] !== 'shape') ||
        (key === 'at' && path[0] === 'pads') ||
        (key === 'to' && path[0] === 'springs') ||
        (['x', 'y'].includes(key) && path.length === 3 && path[0] !== 'nodes');
      if (isOptional) expect(fields.filter((field) => field.startsWith('missing'))).toEqual([]);
      else expect(fields).toContain(`missing-field ${named(path)}`);
    }
  });

  it('of the wrong kind are named', () => {
    for (const path of places.filter((each) => each[0] !== 'format')) {
      const old = path.reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], DOCUMENT);
      const wrong = changedAt(DOCUMENT, path, typeof old === 'boolean' ? 'yes' : true);
      const fields = problemsOf(text(wrong)).map(({ field }) => field);
      expect(fields.length, named(path)).toBeGreaterThan(0);
      // What should say its own kind and does not is told by that.
      expect(
        fields.some((field) => field === named(path) || field === `${named(path)}.kind`),
        named(path),
      ).toBe(true);
    }
  });

  it.each([
    [
      'members[0].shape',
      { kind: 'zigzag' },
      'members[0].shape.kind is “zigzag”, expected one of straight, arc, wave, rise, spiral',
    ],
    [
      'members[0].shape',
      { kind: 'toString' },
      'members[0].shape.kind is “toString”, expected one of straight, arc, wave, rise, spiral',
    ],
    ['members[0].shape', { kind: 'arc' }, 'members[0].shape.turn is missing, expected a number'],
    [
      'members[0].shape',
      { kind: 'spiral', turns: 1, centre: { x: 1 } },
      'members[0].shape.centre.y is missing, expected a number',
    ],
    ['members[0].thickness', { kind: 'lens' }, 'members[0].thickness.kind is “lens”, expected one of taper, notch'],
    ['members[0].thickness', '0.84', 'members[0].thickness is “0.84”, expected a number'],
    ['members[0].thickness', { kind: 'taper', from: 1 }, 'members[0].thickness.to is missing, expected a number'],
  ])('of %s as %j are told in words', (field, value, said) => {
    const path = field.split(/[.[\]]+/).map((key) => (/^\d+$/.test(key) ? Number(key) : key));
    expect(problemsOf(text(changedAt(DOCUMENT, path, value))).map(({ message }) => message)).toEqual([said]);
  });

  it('too large for a number are refused by name', () => {
    expect(problemsOf(BY_HAND.replace('"y": 5', '"y": 1e999'))).toMatchObject([
      { code: 'not-a-number', field: 'motions[0].y' },
    ]);
  });

  it('that are not known are left out with a note', () => {
    const read = readNetwork(
      BY_HAND.replace('"width": 6', '"width": 6, "colour": 3').replace('"poisson"', '"author": {}, "poisson"'),
    );
    expect(read.ok && read.notes.map(({ code, field }) => `${code} ${field}`)).toEqual([
      'unknown-field author',
      'unknown-field members[0].colour',
    ]);
    expect(read).toMatchObject({ ok: true, value: (readNetwork(BY_HAND) as { value?: BeamModel }).value });
  });

  it('of a list of strangers a million long are one problem', () => {
    const supports = Array.from({ length: 1e5 }, () => 1);
    expect(problemsOf(text({ ...DOCUMENT, supports }))).toMatchObject([
      { code: 'too-large', field: 'supports', limit: 200 },
    ]);
  });

  it('that cannot be solved are refused as the core words it, twenty at most', () => {
    expect(problemsOf(BY_HAND.replace('0.84', '-0.84'))).toMatchObject([
      { code: 'below-minimum', field: 'members[0].thickness', value: -0.84 },
    ]);
    const nodes = Array.from({ length: 50 }, (_, i) => ({ id: `n${i}`, x: 1e9, y: 0 }));
    const problems = problemsOf(text({ ...DOCUMENT, nodes }));
    expect(problems).toHaveLength(20);
    expect(problems.at(-1)?.message).toMatch(/and \d+ more\)/);
  });

  it('cautions come back as notes', () => {
    const read = readNetwork(BY_HAND.replace('0.84', '8'));
    expect(read.ok && read.notes).toMatchObject([{ code: 'leaf-too-thick-for-length' }]);
  });
});

describe('any file', () => {
  it('of any text or bytes is a network or problems, never an exception', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (any) => expectSound(readNetwork(any))));
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (any) => expectSound(readNetworkBytes(any))));
  });

  it('with any JSON in any place is a network or problems', () => {
    const documents = fc
      .record({ value: anyJson, path: fc.constantFrom(...placesIn(DOCUMENT)) })
      .map(({ value, path }) => changedAt(DOCUMENT, path, value === undefined ? null : value));
    fc.assert(
      fc.property(documents, (document) => expectSound(readNetwork(text(document)))),
      { numRuns: 500 },
    );
  });

  it('cut off anywhere or with a byte changed is a network or problems', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat({ max: 255 }), (at, byte) => {
        const bytes = new TextEncoder().encode(text(DOCUMENT));
        expectSound(readNetworkBytes(bytes.slice(0, at % bytes.length)));
        bytes[at % bytes.length] = byte;
        expectSound(readNetworkBytes(bytes));
      }),
    );
  });
});
