/** Files as programs write them, against what a reader in another language measured of each. */
import { describe, expect, it } from 'vitest';
import { MM_IN } from '../../../src/core/inspect/lengthUnit.ts';
import type { MeshFile } from '../../../src/files/mesh/meshFile.ts';
import { readMesh } from '../../../src/files/mesh/readMesh.ts';
import { expectClose } from '../../support/close.ts';
import { corpusOf, corpusPart, ownPart, ownTruth, type Measured } from '../../support/corpus.ts';
import { meshSums } from '../../support/meshSums.ts';

const OTHERS = corpusOf('stl', 'obj', '3mf');
const ALL = 32;
if (OTHERS.length === 0)
  console.log(`corpus: skipped ${ALL} files, the collection of part files is not beside the project`);

function read(bytes: Uint8Array, name: string): MeshFile {
  const result = readMesh(bytes, name);
  if (!result.ok) throw new Error(`${name} was refused: ${result.problems[0].message}`);
  return result.value;
}

/** One face, a ring drawn as an outline that goes in and comes back; the other reader splits it like a bulging one. */
const RING = 'obj/concave-polygon.obj';

/** Gears that touch in a vertex share it here; the other reader joins vertices within each item only. */
const TOUCHING: Readonly<Record<string, number>> = { '3mf/cube-gears.3mf': 12 };

/** @param places - decimals to which lengths are printed, areas and volumes to nine digits */
function expectAsMeasured({ mesh, unit }: MeshFile, measured: Measured, places: number, touching = 0): void {
  const sums = meshSums(mesh, unit ? MM_IN[unit] : 1);
  expect(sums.triangles).toBe(measured.triangles);
  expect(sums.vertices).toBe(measured.vertices_after_exact_weld! - touching);
  const size = Math.hypot(...sums.max.map((most, axis) => most - sums.min[axis]!));
  const far = Math.max(...[...sums.min, ...sums.max].map(Math.abs));
  const length = {
    abs: 10 ** -places + 1e-8 * far,
    because: 'lengths are printed with so many decimals, or with nine digits',
  };
  for (const axis of [0, 1, 2]) {
    expectClose(sums.min[axis]!, measured.bbox_min![axis]!, length);
    expectClose(sums.max[axis]!, measured.bbox_max![axis]!, length);
  }
  const printed = 'nine digits are printed';
  expectClose(sums.area, measured.area!, { rel: 1e-8, because: printed });
  // The volume of an open surface may cancel to little: then the digits are those of area times size.
  expectClose(sums.volume, measured.signed_volume!, { abs: 1e-8 * sums.area * size, because: printed });
}

describe('our own parts', () => {
  const files = Object.entries(ownTruth().files);

  it('are all there', () => expect(files.length).toBe(18));

  it.each(files)('%s', (name, { measured }) => expectAsMeasured(read(ownPart(name), name), measured, 5));
});

describe(`the parts of others (${OTHERS.length} beside the project, ${ALL - OTHERS.length} skipped)`, () => {
  const sound = OTHERS.filter(({ measured }) => (measured.triangles ?? 0) > 0);

  it.skipIf(OTHERS.length === 0)('are as many as there were', () => expect(OTHERS.length).toBe(ALL));

  it.each(sound.filter(({ file }) => file !== RING))('$file', ({ file, measured }) => {
    const part = read(corpusPart(file), file);
    expectAsMeasured(part, measured, 9, TOUCHING[file]);
    if (measured.solids !== undefined) expect(part.solids.length).toBe(measured.solids);
  });

  it.each(sound)('$file is told by its content alone', ({ file }) => {
    expect(readMesh(corpusPart(file), 'part.bin').ok).toBe(true);
  });
});

describe.skipIf(OTHERS.length === 0)('the damaged parts of others', () => {
  it.each([
    [
      '3mf/bad-corrupt-zip.3mf',
      'not-our-file',
      /like text of another kind and not like the zip archive that a 3MF file is/,
    ],
    ['3mf/bad-missing-model-part.3mf', 'file-damaged', /_rels\/\.rels names no 3D model/],
    ['3mf/bad-unknown-object.3mf', 'file-damaged', /3dmodel\.model”, line \d+, names object “\d+”, which is not in/],
    ['stl/empty-ascii.stl', 'file-damaged', /0 triangles/],
    ['stl/empty-binary.stl', 'file-damaged', /0 triangles/],
  ])('%s is refused', (file, code, said) => {
    const result = readMesh(corpusPart(file), file);
    expect(result).toMatchObject({ ok: false, problems: [{ code }] });
    if (!result.ok) expect(result.problems[0].message).toMatch(said);
  });

  it('are all of them', () => {
    expect(OTHERS.filter(({ measured }) => !measured.triangles).length).toBe(5);
  });
});

describe.skipIf(OTHERS.length === 0)('traps in the parts of others', () => {
  it('a face with a hole is as large as its outline says', () => {
    const lines = new TextDecoder().decode(corpusPart(RING)).split(/\s*\n/);
    const places = lines.filter((line) => line.startsWith('v ')).map((line) => line.split(/\s+/).slice(1).map(Number));
    const face = lines.find((line) => line.startsWith('f '))!;
    const ring = face
      .split(' ')
      .slice(1)
      .map((corner) => places[Number.parseInt(corner, 10) - 1]!);
    const twice = ring.map(([, y, z], i) => {
      const [, nextY, nextZ] = ring[(i + 1) % ring.length]!;
      return y! * nextZ! - z! * nextY!;
    });
    const sums = meshSums(read(corpusPart(RING), RING).mesh);
    expect([sums.triangles, sums.vertices]).toEqual([64, 64]);
    const area = twice.reduce((total, part) => total + part, 0) / 2;
    expectClose(sums.area, area, { rel: 1e-12, because: 'round-off of 64 triangles' });
  });

  it('a stray byte after the last triangle is noted, and “solid” in a binary head is no text', () => {
    const result = readMesh(corpusPart('stl/halfdonut-binary.stl'), 'a.stl');
    expect(result).toMatchObject({
      ok: true,
      value: { format: 'STL, binary' },
      notes: [{ code: 'left-out', value: 1 }],
    });
  });

  it('names in any script and none at all are told', () => {
    expect(read(corpusPart('stl/moon-nonlatin-name-ascii.stl'), 'a.stl').solids).toEqual(['月球']);
    expect(read(corpusPart('stl/tiny-two-solids.stl'), 'a.stl').solids).toEqual(['testTriangle_1', 'testTriangle_2']);
  });

  it('a unit that is stated is told', () => {
    expect(read(corpusPart('3mf/machined-bracket.3mf'), 'a.3mf').unit).toBe('inch');
    expect(read(corpusPart('stl/machined-bracket.stl'), 'a.stl').unit).toBeUndefined();
  });
});
