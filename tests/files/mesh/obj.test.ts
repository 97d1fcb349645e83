import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close.ts';
import { meshSums, trianglesOf } from '../../support/meshSums.ts';
import { objText } from '../../support/meshWriters.ts';
import { boxMesh } from '../../support/meshes.ts';
import { readPart, refused } from '../../support/readPart.ts';

const SQUARE = 'v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\n';
const BOX = boxMesh(1, 2, 3);

/** Vertices of a face in the plane z = 5, and the face. */
function face(places: readonly (readonly number[])[]): string {
  return `${places.map(([x, y]) => `v ${x} ${y} 5\n`).join('')}f ${places.map((_, i) => i + 1).join(' ')}\n`;
}

/** Area inside an outline, counter-clockwise positive. */
function areaOf(places: readonly (readonly number[])[]): number {
  const twice = places.map(([x, y], i) => {
    const [nextX, nextY] = places[(i + 1) % places.length]!;
    return x! * nextY! - y! * nextX!;
  });
  return twice.reduce((total, part) => total + part, 0) / 2;
}

/** Edges that no second triangle walks the other way. */
function openEdges(corners: Uint32Array): number {
  const edges = Array.from(corners, (from, i) => `${from} ${corners[i % 3 === 2 ? i - 2 : i + 1]!}`);
  const all = new Set(edges);
  return edges.filter((edge) => !all.has(edge.split(' ').toReversed().join(' '))).length;
}

describe('OBJ', () => {
  it.each([
    ['vertex and texture', 'f 1/1 2/1 3/1 4/1'],
    ['vertex, texture and normal', 'f 1/1/1 2/1/1 3/1/1 4/1/1'],
    ['vertex and normal', 'f 1//1 2//1 3//1 4//1'],
    ['numbers from the end', 'f -4 -3 -2 -1'],
    ['numbers from the end with others', 'f -4/-1/-1 -3//-1 3/-1 -1'],
    ['the old word for it', 'fo 1 2 3 4'],
    ['a comment behind it', 'f 1 2 3 4 # a square'],
    ['a line carried on', 'f 1 2 \\\n 3 4'],
    ['a line carried on within other line ends', 'f 1 2\\\r\n3 4\r\n'],
    ['a corner named twice in a row', 'f 1 2 2 3 4 4 1'],
    ['a folder at the end of a comment', '# C:\\parts\\\nf 1 2 3 4 # C:\\parts\\\nl 1 2'],
    ['a capital letter', 'F 1 2 3 4'],
  ])('a face with %s', (_, line) => {
    const { mesh, notes } = readPart(`vn 0 0 1\nvt 0 0\n${SQUARE}${line}`);
    expect(mesh.points.length).toBe(12);
    expectClose(meshSums(mesh).area, 1, { abs: 1e-15, because: 'round-off' });
    expect(notes.length).toBe(line.endsWith('l 1 2') ? 1 : 0);
  });

  it('vertices with a weight, a colour or both', () => {
    const text = 'v 0 0 0 1\nv 1 0 0 0.2 0.3 0.4\nv 0 1 0 0.5 0.2 0.3 0.4\nf 1 2 3';
    expect(readPart(text).mesh.points).toEqual(Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0));
  });

  it('numbers from the end count from where they stand', () => {
    const { mesh } = readPart(`${SQUARE}f -4 -3 -2\nv 9 9 9\nf -5 -3 -2`);
    expect(trianglesOf(mesh)).toEqual([
      [[0, 0, 0], [1, 0, 0], [1, 1, 0]],
      [[0, 0, 0], [1, 1, 0], [0, 1, 0]],
    ]); // prettier-ignore
  });

  it.each([
    ['utf8', '', 'o Élan 月\n'],
    ['utf8', '\uFEFF', 'o Élan 月\n'],
    ['utf16le', '', 'o Élan 月\n'],
    ['utf16le', '\uFEFF', 'o Élan 月\n'],
    ['utf16be', '', 'o Élan 月\n'],
    ['utf16be', '\uFEFF', 'o Élan 月\n'],
  ])('%s text with “%s” at its head', (encoding, mark, name) => {
    const wide = encoding === 'utf16be';
    const bytes = Buffer.from(mark + name + objText(BOX).slice(7), wide ? 'utf16le' : (encoding as BufferEncoding));
    const { mesh, solids } = readPart(new Uint8Array(wide ? bytes.swap16() : bytes));
    expect(trianglesOf(mesh)).toEqual(trianglesOf(BOX));
    expect(solids).toEqual(['Élan 月']);
  });

  it('names of objects that have faces; of groups where there are none', () => {
    const f = 'f 1 2 3\n';
    expect(readPart(`${SQUARE}o a\no b c\n${f}g x\n${f}o d\n${f}o b c\n${f}`).solids).toEqual(['b c', 'd']);
    expect(readPart(`${SQUARE}g left right\n${f}g other\n${f}`).solids).toEqual(['left right', 'other']);
    expect(readPart(SQUARE + f).solids).toEqual(['']);
  });

  it('leaves out curves, lines, points and words that it does not know, with one note each', () => {
    const { notes } = readPart(
      `${SQUARE}f 1 2 3\nl 1 2\np 1\ncstype bezier\nvp 1 2\ncurv 0 1 1 2\nsmile\nsmile 2\nfrown`,
    );
    expect(notes.map(({ code }) => code)).toEqual(['left-out', 'left-out']);
    expect(notes[0]!.message).toMatch(/^5 lines of the file about curves/);
    expect(notes[1]!.message).toMatch(/“smile”, “frown”/);
  });

  it.each([
    ['f 0 1 2', /line 5 names vertex “0”, vertices are counted from 1/],
    ['f 1 2 5', /line 5 names vertex “5”, and 4 vertices come before it/],
    ['f 1 2 -5/1', /line 5 names vertex “-5\/1”, and 4 vertices come before it/],
    ['\n\\\n\nf 1 2 x', /line 8 names vertex “x”, which is no number/],
    ['f 1 2 1.5', /“1.5”, which is no number of a vertex/],
    ['f 1 2 99999999999999999999', /4 vertices come before it/],
    ['f 1 2', /face in line 5 has 2 corners/],
    ['f', /face in line 5 has 0 corners/],
    ['v 1 2', /vertex in line 5 has fewer than 3 coordinates/],
    ['v 1 2 nan', /vertex in line 5 has the coordinate “nan”, which is not a number/],
    ['v 1 2 1e10', /vertex in line 5 has the coordinate “1e10”, farther out/],
    ['o nothing', /4 vertices and 0 faces/],
  ])('refuses %j and says where', (line, said) => {
    expect(refused(`${SQUARE}${line}\n`).message).toMatch(said);
  });

  it('of too many objects is refused', () => {
    const text = Array.from({ length: 10_001 }, (_, i) => `o ${i}\nf 1 2 3\n`).join('');
    expect(refused(SQUARE + text)).toMatchObject({ code: 'too-large', limit: 10_000 });
  });
});

describe('a face of many corners', () => {
  const ARROW = [
    [0, 0],
    [4, 0],
    [1, 1],
    [0, 4],
  ];
  const COMB = [
    [0, 0],
    [7, 0],
    [7, 3],
    [6, 3],
    [6, 1],
    [5, 1],
    [5, 3],
    [4, 3],
    [4, 1],
    [3, 1],
    [3, 3],
    [2, 3],
    [2, 1],
    [0, 1],
  ];
  const IN_A_ROW = [
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 0],
    [3, 1],
    [2, 1],
    [1, 1],
    [0, 1],
  ];
  const HOLED = [[0, 0], [6, 0], [6, 6], [0, 6], [0, 0], [2, 2], [2, 4], [4, 4], [4, 2], [2, 2]]; // prettier-ignore

  it.each([
    ['that points inwards', ARROW],
    ['like a comb', COMB],
    ['with corners in a row', IN_A_ROW],
    ['with a hole', HOLED],
  ])('%s is covered once, from whatever corner and side', (_, outline) => {
    for (const places of [outline, outline.toReversed()]) {
      for (let i = 0; i < places.length; i += 1) {
        const turned = [...places.slice(i), ...places.slice(0, i)];
        const { mesh, notes } = readPart(face(turned));
        const sums = meshSums(mesh);
        expect(sums.triangles).toBe(places.length - 2);
        expectClose(sums.area, Math.abs(areaOf(places)), { rel: 1e-14, because: 'round-off' });
        expect(notes).toEqual([]);
        const up = trianglesOf(mesh).map((triangle) => areaOf(triangle));
        expect(up.every((area) => area * areaOf(places) > 0)).toBe(true);
      }
    }
  });

  it('keeps every corner on its edges, so that neighbours stay joined', () => {
    const top = IN_A_ROW.map(([x, y]) => `v ${x} ${y} 2\n`).join('');
    const bottom = IN_A_ROW.map(([x, y]) => `v ${x} ${y} 0\n`).join('');
    const sides = IN_A_ROW.map((_, i) => `f ${i + 9} ${((i + 1) % 8) + 9} ${((i + 1) % 8) + 1} ${i + 1}\n`).join('');
    const { mesh } = readPart(`${top}${bottom}f 1 2 3 4 5 6 7 8\nf 16 15 14 13 12 11 10 9\n${sides}`);
    expect(openEdges(mesh.corners)).toBe(0);
    expectClose(meshSums(mesh).volume, 6, { rel: 1e-14, because: 'round-off' });
  });

  it('that crosses itself is read and says so', () => {
    const { notes } = readPart(face([[0, 0], [2, 2], [2, 0], [0, 3], [-1, 1]])); // prettier-ignore
    expect(notes).toMatchObject([{ code: 'file-damaged', value: 1 }]);
    expect(notes[0]!.message).toMatch(/1 face crossing itself/);
  });

  it('without any area keeps its edges', () => {
    expect(readPart(face([[0, 0], [1, 1], [2, 2], [3, 3]])).mesh.corners.length).toBe(6); // prettier-ignore
  });

  it('in any direction is as large as in the plane', () => {
    const angle = fc.integer({ min: 0, max: 359 }).map((degrees) => (degrees * Math.PI) / 180);
    fc.assert(
      fc.property(angle, angle, fc.constantFrom(ARROW, COMB, HOLED), (turn, tip, outline) => {
        const places = outline.map(([x, y]) => {
          const [u, v] = [x! * Math.cos(turn) - y! * Math.sin(turn), x! * Math.sin(turn) + y! * Math.cos(turn)];
          return [u, v * Math.cos(tip), v * Math.sin(tip)];
        });
        const text = `${places.map((place) => `v ${place.join(' ')}\n`).join('')}f ${places.map((_, i) => i + 1).join(' ')}\n`;
        const { mesh, notes } = readPart(text);
        expectClose(meshSums(mesh).area, areaOf(outline), { rel: 1e-9, because: 'round-off of turning' });
        expect(notes).toEqual([]);
      }),
    );
  });
});
