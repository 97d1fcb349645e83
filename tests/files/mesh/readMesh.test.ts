import { describe, expect, it } from 'vitest';
import { readMesh } from '../../../src/files/mesh/readMesh.ts';
import { binaryStl, bytesOf, objText, textStl, threemf } from '../../support/meshWriters.ts';
import { boxMesh, wavyMesh } from '../../support/meshes.ts';
import { readPart, refused } from '../../support/readPart.ts';

const BOX = boxMesh(1, 2, 3);
const binary = (...codes: readonly number[]) => Uint8Array.of(...codes, ...Array<number>(200).fill(200));
const G_CODE = '; made by hand\nG21\nM104 S200\nG1 X1 Y2 E0.3\ng1 x3\nN40 G1 X4*33\nT0\nG92 E0\n';

describe('a file is told by what is in it', () => {
  it.each([
    ['STL, binary', binaryStl(BOX)],
    ['STL, text', bytesOf(textStl(BOX))],
    ['OBJ', bytesOf(objText(BOX))],
    ['3MF', threemf(BOX)],
  ])('%s, whatever its name', (format, bytes) => {
    for (const name of ['part.stl', 'part.OBJ', 'part.3mf', 'picture.png', '']) {
      expect(readPart(bytes, name).format).toBe(format);
    }
  });

  it.each([
    ['empty', new Uint8Array()],
    ['a PNG picture', binary(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10)],
    ['a JPEG picture', binary(0xff, 0xd8, 0xff, 0xe0)],
    ['a PDF document', bytesOf('%PDF-1.7\n')],
    ['a gzip archive; unpack it first', binary(0x1f, 0x8b, 8)],
    ['G-code, the way of a printer and not a part', bytesOf(G_CODE)],
    ['G-code, the way of a printer and not a part', bytesOf(G_CODE.replaceAll('\n', '\r\n'))],
    ['binary G-code', bytesOf('GCDE\u0001\0\0\0')],
    ['an SVG drawing', bytesOf('<?xml version="1.0"?>\n<!-- a -->\n<svg xmlns="x"/>')],
    ['a web page', bytesOf('<!DOCTYPE html><title>Not found</title>')],
    ['XML; a 3MF part is a zip archive with such a file in it', bytesOf('<?xml version="1.0"?><model/>')],
    ['an AMF part', bytesOf('<?xml version="1.0"?><amf unit="inch"/>')],
    ['a DXF drawing', bytesOf('  0\nSECTION\n  2\nHEADER\n')],
    ['a STEP file', bytesOf('ISO-10303-21;\nHEADER;')],
    ['a PLY mesh', bytesOf('ply\nformat ascii 1.0\n')],
    ['an OFF mesh', bytesOf('OFF\n8 6 0\n')],
    ['JSON', bytesOf('{"format":"bendbook-part"}')],
    ['text of another kind', bytesOf('Dear all,\nhere is the part.\n')],
    ['bytes of another kind', binary(1, 2, 3)],
    ['bytes of another kind and not like the zip archive that a 3MF file is', binary(1, 2, 3), 'a.3mf'],
  ])('%s is refused by what it looks like', (said, bytes, name = 'part.stl.txt') => {
    const problem = refused(bytes, name);
    expect(problem.message).toContain(said);
    if (said !== 'empty') expect(problem.code).toBe('not-our-file');
  });

  it('by its name where that alone tells', () => {
    expect(refused(binary(1, 2, 3), 'part.stl').message).toMatch(/2 of 3 368 601 800 triangles are there/);
    expect(refused('# nothing yet\n', 'part.obj').message).toMatch(/OBJ text with 0 vertices and 0 faces/);
    expect(refused('# nothing yet\n', 'part.txt').code).toBe('not-our-file');
  });

  it('of more bytes than are read is refused unread', () => {
    expect(refused(new Uint8Array(200_000_001))).toMatchObject({ code: 'too-large', limit: 200_000_000 });
  });
});

describe('the progress', () => {
  const many = wavyMesh(150);

  it.each([
    ['STL, binary', binaryStl(many)],
    ['STL, text', bytesOf(textStl(many))],
    ['OBJ', bytesOf(objText(many))],
    ['3MF', threemf(many)],
  ])('of %s is heard often, grows, and ends at 1', (_, bytes) => {
    const heard: number[] = [];
    expect(readMesh(bytes, 'part', (share) => heard.push(share)).ok).toBe(true);
    expect(heard.length).toBeGreaterThan(3);
    expect(heard).toEqual(heard.toSorted((a, b) => a - b));
    expect(heard.at(-1)).toBe(1);
    expect(heard[0]).toBeLessThan(0.5);
  });

  it.each([
    ['STL, binary', binaryStl(many)],
    ['STL, text', bytesOf(textStl(many))],
    ['OBJ', bytesOf(objText(many))],
    ['3MF', threemf(many)],
  ])('of %s may give up at any call', (_, bytes) => {
    class Stopped extends Error {}
    for (const last of [1, 2, 3]) {
      let calls = 0;
      const stop = () => {
        calls += 1;
        if (calls === last) throw new Stopped('enough');
      };
      expect(() => readMesh(bytes, 'part', stop)).toThrow(Stopped);
      expect(calls).toBe(last);
    }
  });
});
