/** Whole files: what is read and what is refused, how far it is told to be, giving up. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../../../src/core/problems.ts';
import { blobSource, bytesSource, type ByteSource } from '../../../src/files/gcode/byteSource.ts';
import { saysGcode } from '../../../src/files/gcode/notGcode.ts';
import { scanGcode } from '../../../src/files/gcode/scanGcode.ts';
import { gcodeBytes, gcodeCorpus } from '../../support/gcodeCorpus.ts';
import { wide } from '../../support/gcodeDialects.ts';
import { bytesOfText, Kept, readGcode } from '../../support/readGcode.ts';

const OPTIONS = { filamentDiameter: 1.75 };
const scan = (bytes: Uint8Array | string, sink = new Kept()) =>
  scanGcode(bytesSource(bytesOfText(bytes)), OPTIONS, sink);

/** Bytes that begin so. */
const at = (...codes: number[]) => Uint8Array.of(...codes, ...new Uint8Array(100));
const giveUp = () => {
  throw new Error('given up');
};

describe('what is refused', () => {
  it.each<readonly [string, Uint8Array | string, string, RegExp]>([
    ['an empty file', '', 'unreadable', /empty/],
    ['binary G-code', at(0x47, 0x43, 0x44, 0x45, 1), 'not-our-file', /binary G-code; export it as text/],
    ['a zip archive', at(0x50, 0x4b, 3, 4), 'not-our-file', /zip archive; unpack it/],
    ['a gzip archive', at(0x1f, 0x8b), 'not-our-file', /gzip archive; unpack it/],
    ['a PNG picture', at(0x89, 0x50, 0x4e, 0x47), 'not-our-file', /PNG picture/],
    ['a PDF document', '%PDF-1.4\n%abc', 'not-our-file', /PDF document/],
    ['an STL part', 'solid a\nfacet normal 0 0 1\n', 'not-our-file', /STL part/],
    ['an OBJ part', 'v 0 0 0\nv 1 0 0\nf 1 2 3\n', 'not-our-file', /no line of its beginning asks for a move/],
    ['prose', 'Dear all,\nplease find enclosed\n', 'not-our-file', /choose the file that goes to the printer/],
    ['bytes of any kind', at(1, 2, 3), 'not-our-file', /does not read like G-code/],
    ['wide characters that say nothing', wide('\u0001\u0002 hello', true), 'not-our-file', /does not read like G-code/],
  ])('%s', async (_, bytes, code, said) => {
    const sink = new Kept();
    const result = await scan(bytes, sink);
    expect(result).toMatchObject({ ok: false, problems: [{ code }] });
    if (!result.ok) expect(result.problems[0].message).toMatch(said);
    expect(sink.moves).toEqual([]);
    expect(PROBLEM_CODES).toContain(code);
  });

  it('a file that can no longer be read', async () => {
    const source: ByteSource = { size: 100, read: () => Promise.reject(new Error('it has been moved')) };
    const result = await scanGcode(source, OPTIONS, new Kept());
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'unreadable' }] });
    if (!result.ok) expect(result.problems[0].message).toMatch(/it has been moved/);
  });
});

describe('what is read', () => {
  it('a head of comments as long as one likes', async () => {
    const result = await scan(`; thumbnail ${'x'.repeat(60)}\n`.repeat(3000) + 'G1 X1\n');
    expect(result).toMatchObject({ ok: true, value: { lines: 3001, commands: 1 } });
  });

  it('a file of several pieces, with lines across their ends', async () => {
    const text = 'G1 X100.123 Y100.456 E1.2345 ; a comment\nG1 X1 E0\n'.repeat(250_000);
    const [parts, whole] = [new Kept(), readGcode(text)];
    const shares: number[] = [];
    const result = await scanGcode(blobSource(new Blob([text])), OPTIONS, parts, (share) => shares.push(share));
    expect(result).toEqual({ ok: true, value: whole.text, notes: [] });
    expect(parts.moves.length).toBe(500_000);
    expect(parts.moves.at(-1)).toEqual(whole.moves.at(-1));
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });

  it('until whoever waits gives up', async () => {
    const sink = new Kept();
    const text = 'G1 X1\n'.repeat(1_000_000);
    await expect(scanGcode(bytesSource(bytesOfText(text)), OPTIONS, sink, giveUp)).rejects.toThrow('given up');
    expect(sink.moves.length).toBeLessThan(300_000);
  });
});

describe('what reads like G-code', () => {
  it.each([
    'G28\nG1 X1\n',
    '; made by nobody\n\nN1 G90*20\n',
    'g1x1y1\nx2\n',
    '%\nO1000\n(part)\nG17 G20\nX1\n',
    '\uFEFFG1 X1',
    'M104 S200\r\nSET_FAN SPEED=1\r\nG1 Z1\r\n',
  ])('%j', (text) => expect(saysGcode(bytesOfText(text))).toBe(true));

  it.each(['', 'solid a\n', 'v 0 0 0\n', '{"a": 1}', '<svg/>', '0\nSECTION\n', 'Hello\n', 'x,y,z\n1,2,3\n'])(
    'not %j',
    (text) => expect(saysGcode(bytesOfText(text))).toBe(false),
  );

  it('in wide characters too', () => {
    expect(saysGcode(wide('G1 X1\n', true))).toBe(true);
    expect(saysGcode(wide('hello\n', false))).toBe(false);
  });

  const FILES = gcodeCorpus().filter(({ measured }) => measured.lines > 0);
  it.each(FILES)('$file', ({ file }) => expect(saysGcode(gcodeBytes(file))).toBe(true));

  const parts = new URL('../mesh/parts/', import.meta.url);
  it.each(readdirSync(parts).filter((name) => /\.(?:stl|3mf|json|md)$/.test(name)))('not %s', (name) => {
    expect(saysGcode(new Uint8Array(readFileSync(new URL(name, parts))))).toBe(false);
  });
});
