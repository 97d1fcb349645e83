import { describe, expect, it } from 'vitest';
import { binaryStl, bytesOf, textStl } from '../../support/meshWriters.ts';
import { boxMesh, looseMesh } from '../../support/meshes.ts';
import { trianglesOf } from '../../support/meshSums.ts';
import { readPart, refused } from '../../support/readPart.ts';

const BOX = boxMesh(1, 2, 3);
const FACET = 'facet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\nvertex 0 1 0\nendloop\nendfacet\n';
const solid = (inside: string, name = 'a') => `solid ${name}\n${inside}endsolid ${name}\n`;

function changed(bytes: Uint8Array, change: (view: DataView) => void): Uint8Array {
  change(new DataView(bytes.buffer));
  return bytes;
}

describe('binary STL', () => {
  it.each([
    ['that begins with “solid”', 'solid part made by hand'],
    ['of zeros', '\0'.repeat(80)],
    ['that begins like a picture', 'BM and so on'],
    ['that begins like other text', 'v 1 2 3'],
  ])('is told by its length, whatever its head: one %s', (_, head) => {
    expect(readPart(binaryStl(BOX, head)).format).toBe('STL, binary');
    expect(readPart(binaryStl(BOX, head)).mesh).toEqual(readPart(binaryStl(BOX)).mesh);
  });

  it('joins vertices that are alike, 0 and −0 too', () => {
    const { mesh } = readPart(binaryStl(looseMesh([0, 0, 0, 1, 0, 0, 0, 1, 0], [-0, 0, -0, 0, 1, 0, 1, 0, 0])));
    expect(mesh.points).toEqual(Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0));
    expect(mesh.corners).toEqual(Uint32Array.of(0, 1, 2, 0, 2, 1));
  });

  it('is read from the middle of a larger buffer', () => {
    const bytes = binaryStl(BOX);
    const larger = new Uint8Array(bytes.length + 7);
    larger.set(bytes, 3);
    expect(readPart(larger.subarray(3, 3 + bytes.length)).mesh).toEqual(readPart(bytes).mesh);
  });

  it.each([1, 2, 49, 50, 137])('with %i stray bytes at its end is read and says so', (stray) => {
    const { mesh, notes } = readPart(Uint8Array.of(...binaryStl(BOX), ...Array<number>(stray).fill(7)), 'a.STL');
    expect(mesh.corners.length).toBe(36);
    expect(notes).toMatchObject([{ code: 'left-out', value: stray }]);
    expect(notes[0]!.message).toContain(
      stray < 50 ? `After the last of 12 triangles ${stray} byte` : 'room for further',
    );
  });

  it('that is cut off says how many triangles are there', () => {
    const problem = refused(binaryStl(BOX).subarray(0, 84 + 50 * 7 + 12), 'a.stl');
    expect(problem).toMatchObject({ code: 'file-damaged', value: 7, limit: 12 });
    expect(problem.message).toMatch(/7 of 12 triangles are there; download or export it again/);
  });

  it('that ends in its head says so', () => {
    expect(
      refused(
        binaryStl(BOX)
          .subarray(0, 50)
          .map((byte) => byte & 15),
        'a.stl',
      ).message,
    ).toMatch(/after 50 of 84 bytes/);
  });

  it('that counts none says whether there would be room', () => {
    expect(refused(new Uint8Array(84), 'a').message).toMatch(/holds 0 triangles; export/);
    const uncounted = changed(binaryStl(BOX), (view) => view.setUint32(80, 0, true));
    expect(refused(uncounted, 'a.stl').message).toMatch(/0 triangles, though there is room for 12/);
  });

  it.each([
    [Number.NaN, 'file-damaged', /Triangle 3, at byte 208, has the coordinate “NaN”/],
    [Number.POSITIVE_INFINITY, 'file-damaged', /Triangle 3, .*“Infinity”, which is not a number/],
    [1e30, 'too-large', /Triangle 3, .*farther out than 1000000000 units/],
  ])('with the coordinate %d says which triangle has it', (value, code, said) => {
    const problem = refused(changed(binaryStl(BOX), (view) => view.setFloat32(84 + 100 + 12 + 16, value, true)));
    expect(problem.code).toBe(code);
    expect(problem.message).toMatch(said);
  });

  it('of too many triangles says how many there may be', () => {
    const bytes = changed(new Uint8Array(84 + 50 * 4_000_001), (view) => view.setUint32(80, 4_000_001, true));
    expect(refused(bytes)).toMatchObject({ code: 'too-large', limit: 200_000_000 });
  });
});

describe('STL text', () => {
  it.each([
    ['line ends of two characters', (text: string) => text.replaceAll('\n', '\r\n')],
    ['line ends of one', (text: string) => text.replaceAll('\n', '\r')],
    ['tabs', (text: string) => text.replaceAll(' ', '\t \t')],
    ['capitals', (text: string) => text.toUpperCase()],
    ['a mark at its head', (text: string) => `\uFEFF${text}`],
    ['blanks at its head', (text: string) => `\n  ${text}`],
    ['a name on each end and none', (text: string) => text.replaceAll(/solid part/g, 'solid')],
    ['normals that are no numbers', (text: string) => text.replaceAll('normal 0 0 0', 'normal -nan(ind) nan inf')],
    ['no normals', (text: string) => text.replaceAll(' normal 0 0 0', '')],
    ['everything of a facet in one line', (text: string) => text.replaceAll(/(?<!part)\n/g, ' ')],
  ])('with %s is the same', (_, change) => {
    const { format, mesh } = readPart(change(textStl(BOX)));
    expect(format).toBe('STL, text');
    expect(trianglesOf(mesh)).toEqual(trianglesOf(BOX));
  });

  it.each(['utf-16le', 'utf-16be'] as const)('in %s is the same, with a mark and without', (encoding) => {
    for (const mark of ['', '\uFEFF']) {
      const bytes = new Uint8Array(Buffer.from(mark + textStl(BOX), 'utf16le'));
      if (encoding === 'utf-16be') Buffer.from(bytes.buffer).swap16();
      expect(trianglesOf(readPart(bytes).mesh)).toEqual(trianglesOf(BOX));
    }
  });

  it.each([
    '1',
    '+1.0',
    '.1e1',
    '10E-1',
    '1.',
    '100e-2',
    '0.00000000000000000001e20',
    '1.0000000000000000000000000000',
  ])('reads %s as one', (number) => {
    expect(readPart(solid(FACET.replace('vertex 1 0 0', `vertex ${number} -0 0`))).mesh.points[3]).toBe(1);
  });

  it.each([
    '0.1',
    '123456.789',
    '1e-300',
    '5e-324',
    '0.30000000000000004',
    '9007199254740993',
    '179769.31348623157',
    '1e22',
    '7.2057594037927933e7',
    '2.2250738585072014e-308',
  ])('rounds %s as the language does', (number) => {
    const text = solid(FACET.replace('vertex 1 0 0', `vertex ${number} 0 0`));
    const result = Number(number) > 1e9 ? refused(text).value : readPart(text).mesh.points[3];
    expect(result).toBe(Number(number));
  });

  it.each(['nan', 'inf', '-Infinity', '1,5', '0x10', '1e', '1e+', '--1', '1.2.3', 'e5', '.', '1d3'])(
    'refuses %s as a coordinate and says where',
    (number) => {
      const problem = refused(solid(FACET + FACET.replace('vertex 1 0 0', `vertex 1 ${number} 0`)));
      expect(problem.code).toBe('file-damaged');
      expect(problem.message).toContain(`Line 12, triangle 2, has the coordinate “${number}”`);
    },
  );

  it('refuses what is farther out than any part, read as the number that it is', () => {
    const problem = refused(solid(FACET.replace('1 0 0', '1e30 0 0')));
    expect(problem).toMatchObject({ code: 'too-large', value: 1e30, limit: 1e9 });
    expect(refused(solid(FACET.replace('1 0 0', '1e400 0 0'))).code).toBe('file-damaged');
  });

  it('keeps several solids with their names, in any script', () => {
    const { solids, mesh } = readPart(
      solid(FACET, 'Élan') + solid(FACET.replaceAll('vertex 0 ', 'vertex 5 '), '月 球') + solid('', ''),
    );
    expect(solids).toEqual(['Élan', '月 球', '']);
    expect(mesh.corners.length).toBe(6);
  });

  it('stands a name that is not UTF-8', () => {
    const [before, after] = [bytesOf('solid caf'), bytesOf(`\n${FACET}endsolid\n`)];
    expect(readPart(Uint8Array.of(...before, 0xe9, ...after)).solids).toEqual(['caf\uFFFD']);
  });

  it('cuts a name of a million characters', () => {
    expect(readPart(solid(FACET, 'x'.repeat(1_000_000))).solids[0]!.length).toBe(80);
  });

  it('without its last line is read and says so', () => {
    const { notes } = readPart(`solid a\n${FACET}${FACET}`);
    expect(notes).toMatchObject([{ code: 'file-damaged', value: 2 }]);
    expect(notes[0]!.message).toMatch(/without “endsolid”, so it may be cut off after triangle 2/);
  });

  it.each([
    ['two vertices', FACET.replace('vertex 1 0 0\n', ''), /facet in line 9 has 2 corners/],
    ['four vertices', FACET.replace('vertex 1 0 0', 'vertex 1 0 0\nvertex 1 1 0'), /facet in line 9 has 4 corners/],
    ['no vertices', 'facet normal 0 0 1\nendfacet\n', /facet in line 9 has 0 corners/],
    [
      'a facet in a facet',
      FACET.replace('endfacet\n', ''),
      /facet in line 9 is not ended before “endsolid” in line 15/,
    ],
    ['a vertex outside', 'vertex 1 2 3\n', /Line 9 has a vertex outside of any facet/],
    ['an end too many', 'endfacet\n', /Line 9 ends a facet that was not begun/],
    ['a foreign word', 'triangle 1\n', /Line 9 has “triangle”, which is not a word of STL text/],
  ])('with %s is refused by its line', (_, inside, said) => {
    expect(refused(solid(FACET + inside)).message).toMatch(said);
  });

  it('that is cut off within a facet says where, wherever that is', () => {
    const whole = `solid a\n${FACET}${FACET}`;
    const [first, last] = [whole.lastIndexOf('facet normal') + 5, whole.lastIndexOf('endfacet') + 7];
    for (let length = first; length <= last; length += 1) {
      const problem = refused(whole.slice(0, length));
      expect(problem).toMatchObject({ code: 'file-damaged', value: 1 });
      expect(problem.message).toMatch(/cut off in line (?:9|1[0-5]), within triangle 2, which begins in line 9/);
    }
  });

  it('that is cut off within a word between facets is read and says so', () => {
    for (const half of ['f', 'face', 'endsoli']) {
      expect(readPart(`solid a\n${FACET}${half}`).notes[0]!.message).toMatch(/without “endsolid”/);
    }
  });

  it('without facets is refused', () => {
    expect(refused(solid('')).message).toMatch(/0 triangles/);
  });

  it('of too many solids is refused', () => {
    expect(refused('solid\nendsolid\n'.repeat(10_001))).toMatchObject({ code: 'too-large', limit: 10_000 });
  });
});
