/** Any bytes at all: figures that can be relied on, the same however the bytes are cut, and never an exception. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../../../src/core/problems.ts';
import { bytesSource } from '../../../src/files/gcode/byteSource.ts';
import { MOST_TOLD } from '../../../src/files/gcode/gcodeText.ts';
import { scanGcode } from '../../../src/files/gcode/scanGcode.ts';
import { gcodeBytes, gcodeCorpus } from '../../support/gcodeCorpus.ts';
import { bytesOfText, Kept, readGcode, type ReadGcode } from '../../support/readGcode.ts';

/** No printer reaches farther [mm]; places on an arc are rounded. */
const FARTHEST = 1e6 * (1 + 1e-9);

const finite = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(finite);
};

function expectSound({ text, figures, moves }: ReadGcode, bytes: Uint8Array): void {
  const ends = bytes.filter((byte) => byte === 10).length;
  expect(text.bytes).toBe(bytes.length);
  expect(text.lines).toBe(ends + (bytes.length > 0 && bytes.at(-1) !== 10 ? 1 : 0));
  expect(text.badLines.length).toBe(Math.min(text.bad, MOST_TOLD));
  expect(text.commands + text.bad).toBeLessThanOrEqual(2 * text.lines);
  expect(text.badLines.every((line) => line.text.length <= 80 && line.line >= 1 && line.line <= text.lines)).toBe(true);
  expect(finite(figures) && finite(text) && finite(moves)).toBe(true);
  for (const { x, y, z, feed, laid, length } of moves) {
    expect(Math.max(Math.abs(x), Math.abs(y), Math.abs(z), Math.abs(feed))).toBeLessThanOrEqual(FARTHEST);
    expect(laid >= 0 && length >= 0 && laid <= 10 * Math.max(0, feed)).toBe(true);
  }
  const asked = text.moves.reduce((sum, count) => sum + count, 0);
  expect(figures.printingMoves + figures.travelMoves + figures.feedOnlyMoves).toBeLessThanOrEqual(asked);
  expect(figures.filament).toBeLessThanOrEqual(figures.feedForward + 1e-6);
  const pieces = figures.layers.reduce((sum, layer) => sum + layer.pieces, 0);
  expect(pieces).toBeLessThanOrEqual(moves.length);
}

/** Every trap of the reader in a few lines. */
const TRAPS = bytesOfText(
  [
    '\uFEFFN1 G21*84',
    'G90 G17 (a) M83 ; b',
    'G28',
    'G1 X10.5 Y-3.25 E1.23456 F900',
    'X11 E.5',
    'g2x21y-3.25i5z1e2',
    'G3 X21 I-5 P2',
    'G18 G2 X25 Z1 R-4',
    'G20',
    'G1 X1 Y1 E0.1',
    'G92 X0 E0',
    'M200 D1.75',
    'G91 G0 X0.001',
    'T1',
    'M221 S95',
    'G10',
    'SET_X FOO=1',
    'M117 a*b ; c',
    '/G1 X1',
    '%',
    'N12 G1 X123456.7890123 Y1E2*77',
    'G92.1',
    'G2 I0.5',
  ].join('\r\n'),
);
const FILES = gcodeCorpus().filter(({ measured }) => measured.lines > 0);
const SEEDS: readonly (readonly [string, Uint8Array])[] = [
  ['our traps', TRAPS],
  ...FILES.map(({ file }) => [file, gcodeBytes(file).slice(0, 3000)] as const),
];

describe.each(SEEDS)('%s', (_, seed) => {
  const at = fc.nat({ max: seed.length - 1 });
  const runs = seed === TRAPS ? 1500 : 150;

  it('with some bytes changed', () => {
    const change = fc.tuple(at, fc.nat({ max: 255 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 8 }), (changes) => {
        const bytes = seed.slice();
        for (const [where, byte] of changes) bytes[where] = byte;
        expectSound(readGcode(bytes), bytes);
      }),
      { numRuns: runs },
    );
  });

  it('cut off, or with a piece out of it or twice in it', () => {
    fc.assert(
      fc.property(at, at, at, (from, to, into) => {
        const [first, last] = [Math.min(from, to), Math.max(from, to)];
        const all = [
          seed.slice(0, from),
          Uint8Array.of(...seed.subarray(0, first), ...seed.subarray(last)),
          Uint8Array.of(...seed.subarray(0, into), ...seed.subarray(first, last), ...seed.subarray(into)),
        ];
        for (const bytes of all) expectSound(readGcode(bytes), bytes);
      }),
      { numRuns: runs / 5 },
    );
  });

  it('with a number changed for another', () => {
    const text = Buffer.from(seed).toString('latin1');
    const numbers = [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(
      ({ index, 0: number }) => [index, number.length] as const,
    );
    const other = fc.constantFrom(
      '0',
      '-1',
      '1e30',
      '-0',
      'nan',
      '9'.repeat(400),
      '1e6',
      '1000000',
      '999999.9',
      '',
      '.',
      '-',
      '20',
      '92',
      '28',
      '0.00001',
    );
    fc.assert(
      fc.property(fc.constantFrom(...numbers), other, ([index, length], number) => {
        const bytes = new Uint8Array(Buffer.from(text.slice(0, index) + number + text.slice(index + length), 'latin1'));
        expectSound(readGcode(bytes), bytes);
      }),
      { numRuns: runs / 5 },
    );
  });

  it('is the same however it is cut', () => {
    const pieces = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(pieces, at, fc.nat({ max: 255 }), (sizes, where, byte) => {
        const bytes = seed.slice();
        bytes[where] = byte;
        expect(readGcode(bytes, { pieces: sizes })).toEqual(readGcode(bytes));
      }),
      { numRuns: runs / 10 },
    );
  });
});

describe('any bytes', () => {
  const words = fc.constantFrom('G1', 'G2', 'G3', 'G91', 'G90', 'G20', 'G92', 'G28', 'G18', 'M200', 'M83', 'T1', 'N5');
  const letters = fc.constantFrom('X', 'Y', 'Z', 'E', 'I', 'J', 'K', 'R', 'P', 'S', 'D', 'F');
  const number = fc.oneof(
    fc.integer({ min: -1000, max: 1000 }).map((n) => n / 8),
    fc.double({ min: -1e7, max: 1e7, noNaN: true }),
    fc.constantFrom(0, 1e6, -1e6, 1e-7),
  );
  const word = fc.oneof(
    words,
    fc.tuple(letters, number).map(([letter, of]) => `${letter}${of.toFixed(7)}`),
  );
  const line = fc.array(word, { maxLength: 7 }).map((all) => all.join(' '));

  it('of words in any order are sound', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 30 }), (lines) => {
        const bytes = bytesOfText(lines.join('\n'));
        expectSound(readGcode(bytes), bytes);
      }),
      { numRuns: 1500 },
    );
  });

  it('are read, or refused with a problem', async () => {
    const starts = fc.constantFrom('', 'G1 X1\n', ';', 'GCDE', '\uFEFFG1', 'PK', '(', 'N1');
    await fc.assert(
      fc.asyncProperty(starts, fc.uint8Array({ maxLength: 300 }), async (start, rest) => {
        const bytes = Uint8Array.of(...bytesOfText(start), ...rest);
        expectSound(readGcode(bytes), bytes);
        const result = await scanGcode(bytesSource(bytes), { filamentDiameter: 1.75 }, new Kept());
        if (!result.ok) expect(PROBLEM_CODES).toContain(result.problems[0].code);
      }),
      { numRuns: 1500 },
    );
  });
});
