/** What holds of any mesh and any bytes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { PROBLEM_CODES } from '../../../src/core/problems.ts';
import type { Result } from '../../../src/core/result.ts';
import type { MeshFile } from '../../../src/files/mesh/meshFile.ts';
import { readMesh } from '../../../src/files/mesh/readMesh.ts';
import { ownPart } from '../../support/corpus.ts';
import { trianglesOf } from '../../support/meshSums.ts';
import {
  binaryStl,
  bytesOf,
  modelXml,
  objectXml,
  objText,
  packagedModel,
  textStl,
  threemf,
} from '../../support/meshWriters.ts';
import { boxMesh } from '../../support/meshes.ts';
import { readPart } from '../../support/readPart.ts';

/** On a grid of float32 numbers, so that every format can hold them. */
const coordinate = fc.integer({ min: -2000, max: 2000 }).map((n) => Math.fround(n / 64 / 3));
const mesh: fc.Arbitrary<TriangleMesh> = fc
  .array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 3, maxLength: 12 })
  .chain((places) => {
    const corner = fc.nat({ max: places.length - 1 });
    return fc.record({
      points: fc.constant(Float64Array.from(places.flat())),
      corners: fc
        .array(fc.tuple(corner, corner, corner), { minLength: 1, maxLength: 20 })
        .map((all) => Uint32Array.from(all.flat())),
    });
  });

const plain = (part: TriangleMesh) =>
  trianglesOf(part).map((triangle) => triangle.map((place) => place.map((n) => n + 0)));

describe('a mesh written and read', () => {
  it('is the same in every format', () => {
    fc.assert(
      fc.property(mesh, (written) => {
        const files = [binaryStl(written), bytesOf(textStl(written)), bytesOf(objText(written)), threemf(written)];
        const formats = files.map((bytes) => {
          const { mesh: read, format } = readPart(bytes);
          expect(plain(read)).toEqual(plain(written));
          const places = new Set(plain(written).flat().map(String));
          expect(read.points.length).toBe(3 * places.size);
          return format;
        });
        expect(formats).toEqual(['STL, binary', 'STL, text', 'OBJ', '3MF']);
      }),
    );
  });

  it('keeps every digit in text', () => {
    const any = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(fc.array(any, { minLength: 9, maxLength: 9 }), (numbers) => {
        const written = { points: Float64Array.from(numbers), corners: Uint32Array.of(0, 1, 2) };
        for (const bytes of [bytesOf(textStl(written)), bytesOf(objText(written)), threemf(written)]) {
          expect(plain(readPart(bytes).mesh)).toEqual(plain(written));
        }
      }),
      { numRuns: 1000 },
    );
  });
});

/** A result that the rest of the program can rely on, whatever was read. */
function expectSound(result: Result<MeshFile>): void {
  if (!result.ok) {
    for (const { code, message } of result.problems) {
      expect(PROBLEM_CODES).toContain(code);
      expect(message.length).toBeLessThan(400);
    }
    return;
  }
  const { points, corners } = result.value.mesh;
  expect(corners.length).toBeGreaterThan(0);
  expect(corners.length % 3).toBe(0);
  expect(points.every(Number.isFinite)).toBe(true);
  expect(corners.every((corner) => corner < points.length / 3)).toBe(true);
}

const NAMES = ['part.stl', 'part.obj', 'part.3mf', 'part'];
const BOX = boxMesh(1, 2, 3);
const COMPONENTS = modelXml(
  `${objectXml(1, BOX)}<object id="2"><components><component objectid="1" transform="1 0 0 0 -1 0 0 0 1 5 0 0"/></components></object>`,
  '<item objectid="2"/><item objectid="1" transform="0 1 0 1 0 0 0 0 1 0 0 0"/>',
);
const OBJ_TRAPS = bytesOf(
  '# a\no b\nv 0 0 0\nv 1 0 0 1 1 1\nv 1 1 0\nv 0.3 0.2 0\nvt 0 0\ng c\nf -4 -3/1 3//1 \\\n 4\nf 1 2 3\nl 1 2\n',
);

/** Sound files whose traps a change of a few bytes springs; 3MF unpacked, too, lest its check sum hide all else. */
const SEEDS: readonly (readonly [string, Uint8Array, (bytes: Uint8Array) => Uint8Array])[] = [
  ['STL, binary', binaryStl(BOX, 'solid 12 of 1.5'), (bytes) => bytes],
  ['STL, text', bytesOf(textStl(BOX)), (bytes) => bytes],
  ['OBJ', OBJ_TRAPS, (bytes) => bytes],
  ['a box in OBJ', bytesOf(objText(BOX)), (bytes) => bytes],
  ['a 3MF archive', threemf(BOX), (bytes) => bytes],
  ['a 3MF archive of our own', ownPart('syn-leaf-inch-turned.3mf'), (bytes) => bytes],
  ['a 3MF model', bytesOf(COMPONENTS), packagedModel],
];
const RUNS = 1500;

describe.each(SEEDS)('%s', (_, seed, packed) => {
  const name = fc.constantFrom(...NAMES);
  const at = fc.nat({ max: seed.length - 1 });
  const judge = (bytes: Uint8Array, called: string) => expectSound(readMesh(packed(bytes), called));

  it('with some bytes changed is a mesh or a problem', () => {
    const change = fc.tuple(at, fc.nat({ max: 255 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), name, (changes, called) => {
        const bytes = seed.slice();
        for (const [where, byte] of changes) bytes[where] = byte;
        judge(bytes, called);
      }),
      { numRuns: RUNS },
    );
  });

  it('cut off, or with a piece out of it or twice in it, is a mesh or a problem', () => {
    fc.assert(
      fc.property(at, at, at, name, (from, to, into, called) => {
        const [first, last] = [Math.min(from, to), Math.max(from, to)];
        judge(seed.slice(0, from), called);
        judge(Uint8Array.of(...seed.subarray(0, first), ...seed.subarray(last)), called);
        judge(Uint8Array.of(...seed.subarray(0, into), ...seed.subarray(first, last), ...seed.subarray(into)), called);
      }),
      { numRuns: RUNS / 5 },
    );
  });

  it('with a number changed for another is a mesh or a problem', () => {
    const text = Buffer.from(seed).toString('latin1');
    const numbers = [...text.matchAll(/-?\d+(?:\.\d+)?/g)].map(
      ({ index, 0: number }) => [index, number.length] as const,
    );
    const other = fc.constantFrom(
      '0',
      '-1',
      '1e30',
      '1e999',
      '-0',
      'nan',
      '9'.repeat(400),
      '1.5',
      '4294967296',
      '',
      'x',
      '2147483647',
    );
    fc.assert(
      fc.property(fc.constantFrom(...numbers), other, name, ([index, length], number, called) => {
        judge(
          new Uint8Array(Buffer.from(text.slice(0, index) + number + text.slice(index + length), 'latin1')),
          called,
        );
      }),
      { numRuns: RUNS / 5 },
    );
  });
});

describe('any file', () => {
  it('spliced from two is a mesh or a problem', () => {
    const seed = fc.constantFrom(...SEEDS.map(([, bytes]) => bytes));
    fc.assert(
      fc.property(seed, seed, fc.nat(), fc.nat(), fc.constantFrom(...NAMES), (one, other, from, to, name) => {
        const bytes = Uint8Array.of(...one.subarray(0, from % one.length), ...other.subarray(to % other.length));
        expectSound(readMesh(bytes, name));
      }),
      { numRuns: RUNS },
    );
  });

  it('of any bytes or any text is a mesh or a problem', () => {
    const starts = fc.constantFrom('', 'solid a\n', 'v 1 2 3\n', 'f ', 'PK\u0003\u0004', '\uFEFF', 'facet ', '; G1\n');
    fc.assert(
      fc.property(
        starts,
        fc.uint8Array({ maxLength: 300 }),
        fc.string({ unit: 'binary', maxLength: 100 }),
        (start, bytes, text) => {
          for (const name of NAMES) {
            expectSound(readMesh(Uint8Array.of(...bytesOf(start), ...bytes), name));
            expectSound(readMesh(bytesOf(start + text), name));
          }
        },
      ),
      { numRuns: RUNS },
    );
  });
});
