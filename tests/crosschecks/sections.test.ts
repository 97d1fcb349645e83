/**
 * Sections against a solid library from the registry, which cuts the same parts by its own robust way: areas of plane
 * sections, and how thick the thinnest place of one is, by how far its outline can be drawn in before it falls apart.
 */
import Module, { type CrossSection, type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { mendMesh } from '../../src/core/geometry/mesh/mend.ts';
import { cutByPlane } from '../../src/core/geometry/mesh/planeSection.ts';
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import type { Point } from '../../src/core/geometry/outline.ts';
import { checkPart, mendPart } from '../../src/core/inspect/checkPart.ts';
import { planeAt } from '../../src/core/inspect/thin/sectionAt.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { expectClose } from '../support/close.ts';
import { corpusOf, corpusPart, ownPart } from '../support/corpus.ts';
import { placedMesh, type Placing } from '../support/solids.ts';
import { knownParts } from '../support/thinTruth.ts';

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await Module();
  wasm.setup();
});

const OTHERS = [
  'stl/printed-leaf-leg.stl',
  'obj/printed-flexure-stage.obj',
  'obj/printed-stiffener.obj',
  'stl/halfdonut-binary.stl',
];
const isThere = corpusOf('stl', 'obj').length > 0;
if (!isThere) console.log(`corpus: skipped ${OTHERS.length} parts, the collection is not beside the project`);

function read(bytes: Uint8Array, name: string): TriangleMesh {
  const file = readMesh(bytes, name);
  if (!file.ok) throw new Error(file.problems[0].message);
  return mendMesh(file.value.mesh).mesh;
}

function solid({ points, corners }: TriangleMesh): Manifold {
  const mesh = new wasm.Mesh({ numProp: 3, vertProperties: Float32Array.from(points), triVerts: corners });
  mesh.merge();
  return new wasm.Manifold(mesh);
}

function areaOf(loops: readonly (readonly Point[])[]): number {
  let twice = 0;
  for (const loop of loops) {
    for (const [i, p] of loop.entries()) {
      const q = loop[(i + 1) % loop.length]!;
      twice += p.x * q.y - p.y * q.x;
    }
  }
  return twice / 2;
}

const PLACINGS: readonly Placing[] = [
  { axis: [0, 0, 1], angle: 0, shift: [0, 0, 0] },
  { axis: [1, 1, 0.3], angle: 0.8, shift: [3, -2, 5] },
  { axis: [-0.2, 0.5, 1], angle: 2.2, shift: [0, 10, -7] },
];
const SHARES = [0.113, 0.29, 0.5131, 0.77, 0.931];

/** Areas of level sections by both, at shares of the height. */
function compare(mesh: TriangleMesh): void {
  const other = solid(mesh);
  const { min, max } = other.boundingBox();
  for (const share of SHARES) {
    const z = min[2] + share * (max[2] - min[2]);
    const plane = planeAt({ x: 0, y: 0, z }, { x: 0, y: 0, z: 1 });
    const { loops, open } = cutByPlane(mesh, plane);
    expect(open).toEqual([]);
    const section = other.slice(z);
    const area = section.area();
    const because = 'the library keeps coordinates in single precision';
    const size = Math.hypot(max[0] - min[0], max[1] - min[1]);
    expectClose(areaOf(loops), area, { abs: 1e-5 * size * size, because });
    section.delete();
  }
  other.delete();
}

describe('areas of sections', () => {
  const own = knownParts().filter(([name]) => !name.includes('dmg'));
  it.each(own)('%s', (name) => {
    const mesh = read(ownPart(name), name);
    for (const placing of PLACINGS) compare(placedMesh(mesh, placing));
  });

  it.skipIf(!isThere).each(OTHERS)('%s', (name) => {
    const mesh = read(corpusPart(name), name);
    for (const placing of PLACINGS) compare(placedMesh(mesh, placing));
  });
});

/** How many pieces are left of a section when its outline is drawn in. */
function pieces(section: CrossSection, by: number): number {
  const inner = section.offset(-by, 'Round');
  const parts = inner.decompose();
  const count = parts.filter((part) => part.area() > 1e-6).length;
  for (const part of parts) part.delete();
  inner.delete();
  return count;
}

describe('the thinnest place of a section', () => {
  /** Parts in whose section the thinnest place parts what it joins, and half of its thickness there. */
  const PARTING = knownParts()
    .filter(([, { necks }]) => necks.length === 1)
    .map(([name]) => name);

  it.each(PARTING)('%s falls apart when drawn in by half of what was measured', (name) => {
    const file = readMesh(ownPart(name), name);
    if (!file.ok) throw new Error(file.problems[0].message);
    const part = mendPart(file.value);
    const { sections, flexures } = checkPart(part, 3.4).findings;
    const [flexure] = flexures;
    const { outlines } = sections[flexure!.section]!;
    const drawn = new wasm.CrossSection(outlines.map((loop) => loop.map(({ x, y }): [number, number] => [x, y])));
    const half = flexure!.thickness.least / 2;
    // An arch stands in a frame that holds together without it: then what is left of the arch goes.
    const whole = pieces(drawn, 0.97 * half);
    const gone = pieces(drawn, 1.03 * half);
    expect(whole).toBe(1);
    if (!name.includes('arch')) expect(gone).toBe(2);
    drawn.delete();
  });
});

describe('printed flexures of others', () => {
  it.skipIf(!isThere)('have the thin skins that their files state', () => {
    const file = readMesh(corpusPart('stl/printed-leaf-leg.stl'), 'leg.stl');
    if (!file.ok) throw new Error(file.problems[0].message);
    const { flexures } = checkPart(mendPart(file.value), 3.4).findings;
    // Heights of the walls as the file has them: 0 to 0.75, 35 to 35.75; 11.417 to 11.917, 23.083 to 23.583.
    const skins = flexures.map(({ thickness }) => thickness.least).toSorted((a, b) => a - b);
    const stated = [0.5, 0.5, 0.75, 0.75, 0.75, 0.75];
    expect(skins.length).toBe(stated.length);
    for (const [i, skin] of skins.entries()) {
      expectClose(skin, stated[i]!, { abs: 2e-3, because: 'the file prints three decimals of each wall' });
    }
    for (const { kind } of flexures) expect(kind).toBe('crease');
  });

  it.skipIf(!isThere)('are found where a solid library sees the section fall apart: eight leaves of a stage', () => {
    const file = readMesh(corpusPart('obj/printed-flexure-stage.obj'), 'stage.obj');
    if (!file.ok) throw new Error(file.problems[0].message);
    const part = mendPart(file.value);
    const { flexures } = checkPart(part, 3.4).findings;
    const leaves = flexures.filter(({ kind, depth }) => kind !== 'crease' && depth > 9);
    expect(leaves.length).toBe(8);
    for (const { thickness } of leaves)
      expectClose(thickness.least, 0.75, { rel: 0.02, because: 'asked of the finder' });
    const other = solid(part.mesh);
    const section = other.slice(7);
    const before = pieces(section, 0.37);
    const after = pieces(section, 0.38);
    // Each of the eight parts a bar or the frame from what it hangs on.
    expect(after - before).toBe(8);
    section.delete();
    other.delete();
  });
});
