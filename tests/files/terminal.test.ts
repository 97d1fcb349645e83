import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readArguments } from '../../src/cli/arguments.ts';
import { inBlocks, jsonPieces } from '../../src/cli/document.ts';
import { solvedParts, toldOf } from '../../src/cli/parts.ts';
import { anyJson } from '../support/partGenerators.ts';

describe('arguments', () => {
  it('name parts, and how finely their way is told', () => {
    expect(readArguments(['a.json', '-'])).toEqual({
      kind: 'parts',
      files: ['a.json', '-'],
      path: undefined,
      prints: undefined,
    });
    expect(readArguments(['--path', '1000', 'a.json'])).toMatchObject({ path: 1000 });
    expect(readArguments(['a.json', '--path=7'])).toMatchObject({ path: 7 });
    expect(readArguments(['--', '--odd-name.json'])).toMatchObject({ files: ['--odd-name.json'] });
  });

  it('say from how many prints it is told how sure answers are, and from which', () => {
    expect(readArguments(['a.json'])).toMatchObject({ prints: undefined });
    expect(readArguments(['a.json', '--prints', '64'])).toMatchObject({ prints: { samples: 64, seed: 1 } });
    expect(readArguments(['a.json', '--prints=65536', '--seed=7'])).toMatchObject({
      prints: { samples: 65_536, seed: 7 },
    });
  });

  it('name a network, 40 points when nothing else is said', () => {
    expect(readArguments(['--network', '-'])).toMatchObject({
      kind: 'network',
      file: '-',
      asked: { parts: 40, accuracy: 'interactive' },
    });
    const asked = { parts: 3, accuracy: 'refined', elements: 512, pad: 'a' };
    const given = ['--network=n.json', '--path', '3', '--refined', '--elements', '512', '--pad', 'a'];
    expect(readArguments(given)).toEqual({ kind: 'network', file: 'n.json', asked });
  });

  it.each([
    [[]],
    [['--help']],
    [['-h']],
    [['']],
    [['--path', '3']],
    [['--path', 'a.json']],
    ...['0', '1001', '-1', '1e2', '0x10', '2.5', '', ' 3', '03', 'NaN', 'Infinity', '9'.repeat(400), '٣'].map((n) => [
      [`--path=${n}`, 'a.json'],
    ]),
    [['--path', '2', '--path', '3', 'a.json']],
    ...['63', '100', '131072', '0', '1e3', '-64', ''].map((n) => [[`--prints=${n}`, 'a.json']]),
    [['--seed', '2', 'a.json']],
    [['--prints', '64', '--seed', '1000000', 'a.json']],
    [['--network', 'a.json', '--prints', '64']],
    [['--refined', 'a.json']],
    [['--elements', '8', 'a.json']],
    [['--pad', 'a', 'a.json']],
    [['--network']],
    [['--network', '']],
    [['--network', 'a.json', 'b.json']],
    [['--network', 'a.json', '--network', 'b.json']],
    [['--network', 'a.json', '--elements', '6']],
    [['--network', 'a.json', '--elements', '516']],
    [['--network', 'a.json', '--refined=yes']],
    [['--__proto__', 'a.json']],
  ])('%j are wrong use', (given) => {
    expect(readArguments(given)).toBeUndefined();
  });

  it('of any kind are understood or wrong use, and never throw', () => {
    const word = fc.oneof(
      fc.string(),
      fc.constantFrom(
        '--path',
        '--prints',
        '--seed',
        '64',
        '--network',
        '--refined',
        '--elements',
        '--pad',
        '--',
        '-',
        '4',
        'a.json',
      ),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), (given) => {
        const asked = readArguments(given);
        if (asked) expect(['parts', 'network']).toContain(asked.kind);
      }),
    );
  });
});

describe('the document', () => {
  it('is the JSON of what it is given, however it is cut into blocks', () => {
    fc.assert(
      fc.property(anyJson, fc.integer({ min: 1, max: 50 }), (value, size) => {
        const text = [...inBlocks(jsonPieces(value), size)].join('');
        expect(text.endsWith('\n')).toBe(true);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('holds lists of figures on one line, everything else as is usual, and leaves out what is undefined', () => {
    const text = [...jsonPieces({ a: [1, -2.5, null], b: ['x'], c: undefined, d: {}, e: [] })].join('');
    expect(text).toBe('{\n  "a": [1, -2.5, null],\n  "b": [\n    "x"\n  ],\n  "d": {},\n  "e": []\n}');
    const usual = { part: { name: 'x, y', lists: [{ id: 1 }, { id: 2 }] } };
    expect([...jsonPieces(usual)].join('')).toBe(JSON.stringify(usual, null, 2));
  });
});

describe('parts of a way', () => {
  it('are solved in at least 24, which hold those asked for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), (parts) => {
        const solved = solvedParts(parts);
        expect(solved).toBeGreaterThanOrEqual(24);
        expect(solved % parts).toBe(0);
        const shares = Array.from({ length: solved + 1 }, (_, i) => i / solved);
        const told = toldOf(shares, parts, (share) => share);
        expect(told.map(({ part }) => part)).toEqual([...Array(parts + 1).keys()]);
      }),
    );
  });

  it('keep what lies between them or before the start, without a number', () => {
    const told = toldOf([0, 0.3, 0.5, -0.01, 1], 2, (share) => share);
    expect(told.map(({ part, index }) => [part, index])).toEqual([
      [0, 0],
      [null, 1],
      [1, 2],
      [null, 3],
      [2, 4],
    ]);
  });
});
