/** The state of part files as programs write them, against what a reader in another language measured of each. */
import { describe, expect, it } from 'vitest';
import type { DamageKind } from '../../../src/core/geometry/mesh/damage.ts';
import { repeatedCorners, withoutTriangles } from '../../../src/core/geometry/mesh/dropTriangles.ts';
import { edgesOf } from '../../../src/core/geometry/mesh/edges.ts';
import { mendMesh } from '../../../src/core/geometry/mesh/mend.ts';
import { meshFigures } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { scaleMesh } from '../../../src/core/geometry/mesh/scaleMesh.ts';
import { shellsOf } from '../../../src/core/geometry/mesh/shells.ts';
import type { TriangleMesh } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { MM_IN } from '../../../src/core/inspect/lengthUnit.ts';
import { partFacts } from '../../../src/core/inspect/partFacts.ts';
import { expectClose } from '../../support/close.ts';
import { corpusOf, corpusPart, ownPart, ownTruth, type Measured } from '../../support/corpus.ts';
import { readPart } from '../../support/readPart.ts';

const OTHERS = corpusOf('stl', 'obj', '3mf').filter(({ measured }) => (measured.triangles ?? 0) > 0);
const ALL = 27;
const PRINTED = 'nine digits are printed';

/** One face, a ring drawn as an outline that goes in and comes back; the other reader splits it like a bulging one. */
const RING = 'obj/concave-polygon.obj';
/** Along a seam one side is cut at more places than the other; only their corners meet, by which the other reader joins them. */
const APART: Readonly<Record<string, number>> = { '3mf/machined-bracket.3mf': 1 };
const inMm = (bytes: Uint8Array, name: string): TriangleMesh => {
  const { mesh, unit } = readPart(bytes, name);
  return scaleMesh(mesh, unit ? MM_IN[unit] : 1);
};

function expectState(mesh: TriangleMesh, measured: Measured, apart = 0): void {
  const { damage } = mendMesh(mesh);
  const count = (kind: DamageKind) => damage.find((one) => one.kind === kind)?.count ?? 0;
  expect(count('open-edges')).toBe(measured.open_edges);
  expect(count('crowded-edges')).toBe(measured.edges_shared_by_more_than_two);
  expect(count('duplicate')).toBe(measured.duplicate_facets);
  expect(count('degenerate')).toBe(measured.degenerate_repeated_vertex! + measured.degenerate_zero_area!);
  const edges = edgesOf(withoutTriangles(mesh, repeatedCorners(mesh)));
  expect(edges.clashing).toBe(measured.edges_with_clashing_orientation);
  expect(count('flipped') > 0).toBe(edges.clashing > 0);
  expect(shellsOf(edges).count).toBe(measured.shells! + apart);
  const { area, volume } = meshFigures(mesh);
  expectClose(area, measured.area!, { rel: 1e-8, because: PRINTED });
  // What an open or clashing surface encloses depends on where it is measured from.
  if (edges.open + edges.clashing > 0) return;
  expectClose(volume, measured.signed_volume!, { rel: 1e-8, because: PRINTED });
}

const damageOf = (file: string) => mendMesh(inMm(corpusPart(file), file));

describe('our own parts', () => {
  const { files } = ownTruth();

  it.each(Object.keys(files))('%s', (name) => expectState(inMm(ownPart(name), name), files[name]!.measured));

  it.each(['12-flipped', '3-missing', 'duplicates'])(
    'damaged, %s, are mended to the part that was damaged',
    (damage) => {
      const name = `syn-dmg-leaf-${damage}.stl`;
      const facts = partFacts(mendMesh(inMm(ownPart(name), name)).mesh);
      const sound = files['syn-leaf-084x6.stl']!.measured;
      expect(facts).toMatchObject({ triangles: sound.triangles, vertices: sound.vertices_after_exact_weld, bodies: 1 });
      expectClose(facts.volume, sound.signed_volume!, { rel: 1e-8, because: PRINTED });
      expectClose(facts.area, sound.area!, { rel: 1e-8, because: PRINTED });
    },
  );

  it('sound, are left as they are', () => {
    const sound = Object.keys(files).filter((name) => !name.includes('-dmg-'));
    for (const name of sound) {
      const mesh = inMm(ownPart(name), name);
      expect(mendMesh(mesh)).toEqual({ mesh, damage: [] });
    }
    expect(partFacts(inMm(ownPart('syn-air-gap-084.stl'), 'stl')).bodies).toBe(2);
  });
});

describe(`the parts of others (${OTHERS.length} beside the project, ${Math.max(0, ALL - OTHERS.length)} skipped)`, () => {
  const comparable = OTHERS.filter(({ file }) => file !== RING);

  it.skipIf(OTHERS.length === 0).each(comparable)('$file', ({ file, measured }) =>
    expectState(inMm(corpusPart(file), file), measured, APART[file]),
  );

  it.skipIf(OTHERS.length === 0)('are mended where that cannot change the part', () => {
    const bracket = damageOf('stl/machined-bracket.stl');
    expect(bracket.damage.map(({ kind, mended }) => [kind, mended])).toEqual([
      ['open-edges', 576],
      ['unjoined', 288],
    ]);
    expect(edgesOf(damageOf('stl/sphere-with-hole.stl').mesh).open).toBe(0);
    const seamed = damageOf('3mf/machined-bracket.3mf');
    expect(seamed.damage.map(({ kind, mended }) => [kind, mended])).toEqual([
      ['open-edges', 18],
      ['unjoined', 8],
    ]);
    expect(partFacts(seamed.mesh).bodies).toBe(1);
    // A triangle and its reverse over one another, beside the clips: nothing is open without them.
    expect(partFacts(damageOf('stl/printed-spring-clips.stl').mesh).bodies).toBe(1);
  });

  it.skipIf(OTHERS.length === 0)('are left where it could: loose triangles, and a single face', () => {
    const soup = damageOf('stl/soup.stl');
    expect(soup.damage.map(({ kind, count, mended }) => [kind, count, mended])).toEqual([['open-edges', 300, 0]]);
    expect(damageOf(RING).damage.every(({ mended }) => mended === 0)).toBe(true);
  });
});
