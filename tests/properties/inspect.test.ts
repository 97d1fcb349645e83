/** Laws of checking a part: how it is judged hangs on nothing that does not matter, and no file whatever upsets it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inspectReport } from '../../src/cli/inspectReport.ts';
import { checkPart, mendPart } from '../../src/core/inspect/checkPart.ts';
import { cures } from '../../src/core/inspect/cures.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { scaleMesh } from '../../src/core/geometry/mesh/scaleMesh.ts';
import { judgeAll } from '../../src/core/inspect/judge.ts';
import type { Judged, PlateUp, PrintedAs } from '../../src/core/inspect/judged.ts';
import { replyFor } from '../../src/core/inspect/reply.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { expectClose } from '../support/close.ts';
import { ownPart } from '../support/corpus.ts';
import { AS_DROPPED, ASKED } from '../support/flexures.ts';
import { binaryStl, bytesOf, modelXml, objectXml, objText, packagedModel } from '../support/meshWriters.ts';
import { leafOutline, placedMesh, pulledUp, type LeafSizes } from '../support/solids.ts';

const THICKEST = 6 * AS_DROPPED.profile.lineWidth;

function judged(mesh: TriangleMesh, as: PrintedAs = AS_DROPPED, thickest = THICKEST): readonly Judged[] {
  const source = { format: 'STL, binary', solids: [''], mesh, notes: [] };
  const { findings, facts } = checkPart(mendPart(source, 'millimetre'), thickest);
  return judgeAll(findings.flexures, facts.box, as, ASKED, 'part.stl');
}

interface Leaf extends LeafSizes {
  readonly depth: number;
}

/** Leaves on a grid, with pads thick enough to be pads; facets of fillets few, as files have them. */
const leaves: fc.Arbitrary<Leaf> = fc
  .record({
    thickness: fc.integer({ min: 40, max: 200 }),
    slenderness: fc.integer({ min: 5, max: 20 }),
    rounding: fc.constantFrom(0, 0.5, 1),
    taller: fc.integer({ min: 5, max: 9 }),
    depth: fc.integer({ min: 4, max: 12 }),
  })
  .map(({ thickness, slenderness, rounding, taller, depth }) => {
    const t = thickness / 100;
    const fillet = rounding * t;
    return {
      thickness: t,
      length: t * slenderness,
      fillet,
      pad: Math.max(6, 3 * t),
      height: taller * t + 2 * fillet,
      depth,
      facets: 6,
    };
  });
const solidOf = (leaf: Leaf) => pulledUp(leafOutline(leaf), 0, leaf.depth);

const NEW_SEARCH = 'a new search of the moved part: ties in the triangulation of its section fall otherwise';
const SAME_WALLS =
  'sections are kept to 1e-5 mm, so that two walls are off by 1.4e-5 of 0.4 mm at the most, before and after';

function strainOf({ assessed }: Judged): number {
  if (!assessed.ok) throw new Error(assessed.problems[0].message);
  return assessed.value.strain.peak;
}

/** Both tell of one section, and alike. */
function expectAlike(are: readonly Judged[], were: readonly Judged[]): void {
  expect(were.length).toBe(1);
  expect(are.length).toBe(1);
  const [is, was] = [are[0]!, were[0]!];
  expect(is.lying).toBe(was.lying);
  expect(is.landing.countOf).toBe(was.landing.countOf);
  expectClose(is.landing.exact, was.landing.exact, { rel: 1e-4, because: SAME_WALLS });
  expect(Math.abs(is.layer - was.layer)).toBeLessThanOrEqual(1);
  expectClose(strainOf(is), strainOf(was), {
    rel: 0.012,
    because: `${NEW_SEARCH}; sizes of a joint are kept to a micron`,
  });
}

describe('how a part is judged', () => {
  const RUNS = { numRuns: 15 };

  it('does not change when it is turned about the build axis and moved on the plate', () => {
    const tenth = fc.integer({ min: -1800, max: 1800 }).map((n) => n / 10);
    fc.assert(
      fc.property(leaves, tenth, tenth, tenth, (leaf, angleDeg, x, y) => {
        const mesh = solidOf(leaf);
        const moved = placedMesh(mesh, { axis: [0, 0, 1], angle: (angleDeg * Math.PI) / 180, shift: [x, y, 0] });
        expectAlike(judged(moved), judged(mesh));
      }),
      RUNS,
    );
  });

  it('goes from flat to upright or crease as it is turned over, by the side named or in the file', () => {
    const sides: readonly (readonly [PlateUp, readonly [number, number, number], number, string])[] = [
      ['+z', [0, 0, 1], 0, 'flat'],
      ['-z', [1, 0, 0], Math.PI, 'flat'],
      // A turn about y by a right angle backwards stands x up; one about x forwards stands y up.
      ['+x', [0, 1, 0], -Math.PI / 2, 'upright'],
      ['-x', [0, 1, 0], Math.PI / 2, 'upright'],
      ['+y', [1, 0, 0], Math.PI / 2, 'crease'],
      ['-y', [1, 0, 0], -Math.PI / 2, 'crease'],
    ];
    fc.assert(
      fc.property(leaves, fc.constantFrom(...sides), (leaf, [up, axis, angle, lying]) => {
        const mesh = solidOf(leaf);
        const named = judged(mesh, { ...AS_DROPPED, up });
        const inFile = judged(placedMesh(mesh, { axis, angle, shift: [0, 0, 0] }));
        expect(named.map((one) => one.lying)).toEqual([lying]);
        expectAlike(inFile, named);
      }),
      RUNS,
    );
  });

  it('is the same for a part that is scaled in the brief and one that was drawn so', () => {
    const scale = fc.constantFrom(0.8, 1.333, 1.5, 2, 2.667, 3);
    fc.assert(
      fc.property(leaves, scale, (leaf, s) => {
        const mesh = solidOf(leaf);
        const inBrief = judged(mesh, { ...AS_DROPPED, scale: s });
        // What is thin is asked of the file: of a larger one it is larger.
        const drawn = judged(scaleMesh(mesh, s), AS_DROPPED, s * THICKEST);
        expectAlike(drawn, inBrief);
        expectClose(drawn[0]!.flexure.thickness.least, s * inBrief[0]!.flexure.thickness.least, {
          rel: 1e-4,
          because: SAME_WALLS,
        });
        expectClose(drawn[0]!.flexure.length, s * inBrief[0]!.flexure.length, { rel: 0.01, because: NEW_SEARCH });
      }),
      RUNS,
    );
  });
});

/** Numbers in plain data, with the way to each. */
function* numbersIn(value: unknown, way = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [way, value];
  else if (ArrayBuffer.isView(value)) return;
  else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${way}.${key}`);
  }
}

/** Everything that is told of a file, as the page and the terminal tell it; undefined where it is refused. */
function allTold(bytes: Uint8Array, name: string) {
  const read = readMesh(bytes, name);
  if (!read.ok) {
    expect(read.problems.length).toBeGreaterThan(0);
    return undefined;
  }
  const part = checkPart(mendPart(read.value), THICKEST);
  const { findings, facts, unit } = part;
  const asked = [findings.flexures, facts.box, AS_DROPPED, ASKED, name] as const;
  const reply = replyFor({ fileName: name, box: facts.box, unit, flexures: findings.flexures }, AS_DROPPED, ASKED);
  return { part, report: inspectReport(part, AS_DROPPED), judged: judgeAll(...asked), cured: cures(...asked), reply };
}

function expectNumbers(bytes: Uint8Array, name: string): void {
  const told = allTold(bytes, name);
  if (!told) return;
  for (const [way, value] of numbersIn(told)) {
    if (!Number.isFinite(value)) throw new Error(`${way} is ${value}`);
  }
}

/** With few facets, so that most changes hit something that is measured. */
const LEAF: Leaf = { thickness: 0.84, length: 6, fillet: 1, pad: 12, height: 12, depth: 8, facets: 4 };
const same = (bytes: Uint8Array) => bytes;

/** A part of each format; of 3MF the model within as well, lest its check sum hides all changes. */
const FORMATS: readonly (readonly [string, Uint8Array, (bytes: Uint8Array) => Uint8Array])[] = [
  ['own.stl', ownPart('syn-leaf-084x6.stl'), same],
  ['text.stl', ownPart('syn-leaf-042x8-sharp-ascii.stl'), same],
  ['leaf.obj', bytesOf(objText(solidOf(LEAF))), same],
  ['own.3mf', ownPart('syn-leaf-inch-turned.3mf'), same],
  ['model.3mf', bytesOf(modelXml(objectXml(1, solidOf(LEAF)), '<item objectid="1"/>')), packagedModel],
];

describe.each(FORMATS)('any change to %s', (name, seed, packed) => {
  const at = fc.nat({ max: seed.length - 1 });
  const judge = (bytes: Uint8Array) => expectNumbers(packed(bytes), name);

  it('of some bytes is judged in numbers, or refused', () => {
    const change = fc.tuple(at, fc.nat({ max: 255 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 8 }), (changes) => {
        const bytes = seed.slice();
        for (const [where, byte] of changes) bytes[where] = byte;
        judge(bytes);
      }),
      { numRuns: 100 },
    );
  });

  it('that cuts it off, or splices it, is judged in numbers, or refused', () => {
    fc.assert(
      fc.property(at, at, at, fc.nat({ max: 2 }), (a, b, into, how) => {
        const [first, last] = [Math.min(a, b), Math.max(a, b)];
        if (how === 0) judge(seed.slice(0, last));
        else if (how === 1) judge(Uint8Array.of(...seed.subarray(0, first), ...seed.subarray(last)));
        else judge(Uint8Array.of(...seed.subarray(0, into), ...seed.subarray(first, last), ...seed.subarray(into)));
      }),
      { numRuns: 60 },
    );
  });

  it('of numbers for huge, tiny or strange ones is judged in numbers, or refused', () => {
    const text = Buffer.from(seed).toString('latin1');
    const numbers = [...text.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(
      ({ index, 0: number }) => [index, number.length] as const,
    );
    const other = fc.constantFrom(
      '0',
      '-0',
      '1',
      '-7.5',
      '999999999',
      '1e8',
      '1e-30',
      '1e30',
      '1e999',
      'NaN',
      'inf',
      '9'.repeat(400),
    );
    fc.assert(
      fc.property(fc.constantFrom(...numbers), other, fc.boolean(), ([index, length], number, isAll) => {
        const old = text.slice(index, index + length);
        const changed = isAll
          ? text.replaceAll(` ${old} `, ` ${number} `)
          : text.slice(0, index) + number + text.slice(index + length);
        judge(new Uint8Array(Buffer.from(changed, 'latin1')));
      }),
      { numRuns: 80 },
    );
  });
});

describe('places in binary STL', () => {
  it('changed for any numbers a float can hold are judged in numbers, or refused', () => {
    const seed = binaryStl(solidOf(LEAF));
    const count = (seed.length - 84) / 50;
    const place = fc.tuple(fc.nat({ max: count - 1 }), fc.nat({ max: 8 }));
    const value = fc.oneof(
      fc.float({ min: -50, max: 50, noNaN: true }),
      fc.float(),
      fc.constantFrom(0, 1e-38, 1e9, -1e9, 6, 8),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(place, value), { minLength: 1, maxLength: 12 }), (changes) => {
        const bytes = seed.slice();
        const view = new DataView(bytes.buffer);
        for (const [[triangle, k], number] of changes) view.setFloat32(96 + 50 * triangle + 4 * k, number, true);
        expectNumbers(bytes, 'part.stl');
      }),
      { numRuns: 150 },
    );
  });
});

describe('a head that promises more than is there', () => {
  it.each([0xff_ff_ff_ff, 4_000_000])('of %d triangles is refused before room is made for them', (promised) => {
    const bytes = ownPart('syn-leaf-084x6.stl');
    new DataView(bytes.buffer).setUint32(80, promised, true);
    const before = process.memoryUsage();
    const read = readMesh(bytes, 'part.stl');
    const after = process.memoryUsage();
    expect(read).toMatchObject({ ok: false, problems: [{ code: 'file-damaged' }] });
    // A mesh of four million takes 100 MB and more while it is read; half of that is far above what else may come in between.
    expect(after.arrayBuffers - before.arrayBuffers).toBeLessThan(50e6);
    expect(after.rss - before.rss).toBeLessThan(50e6);
  });
});
