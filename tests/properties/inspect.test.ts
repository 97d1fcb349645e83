/** Laws of checking a part: how it is judged hangs on nothing that does not matter. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPart, mendPart } from '../../src/core/inspect/checkPart.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { scaleMesh } from '../../src/core/geometry/mesh/scaleMesh.ts';
import { judgeAll } from '../../src/core/inspect/judge.ts';
import type { Judged, PlateUp, PrintedAs } from '../../src/core/inspect/judged.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { expectClose } from '../support/close.ts';
import { ownPart } from '../support/corpus.ts';
import { AS_DROPPED, ASKED } from '../support/flexures.ts';
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
