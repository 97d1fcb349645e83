/** Files of test pieces: read back by our own readers and by the loaders of three, which share no code with the writers. */
import { Box3, Mesh, type BufferGeometry, type Object3D } from 'three';
import { ThreeMFLoader } from 'three/examples/jsm/loaders/3MFLoader.js';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { layOut } from '../../../src/core/coupons/layOut.ts';
import { PIECE_IDS, type Piece, type Plate } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { boxOf } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { mendMesh } from '../../../src/core/geometry/mesh/mend.ts';
import { triangleCount } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { pieceFile, plateFile, type SolidFormat } from '../../../src/files/mesh/pieceFiles.ts';
import { expectClose } from '../../support/close.ts';
import { lyingAs, made } from '../../support/coupons.ts';
import { TestDomParser } from '../../support/domParser.ts';
import { readPart } from '../../support/readPart.ts';

beforeAll(() => {
  vi.stubGlobal('DOMParser', TestDomParser);
});

/** Single precision keeps a coordinate below 256 mm to 1.5e-5 mm. */
const SINGLE = { abs: 1.6e-5, because: 'the file or the loader keeps single precision' };
const EXACT = { abs: 1e-9, because: 'decimals are read as they were written' };
const FORMATS: readonly SolidFormat[] = ['stl', '3mf'];
const SIDES = ['x', 'y', 'z'] as const;

const trianglesOf = ({ bodies }: Piece) => bodies.reduce((sum, body) => sum + triangleCount(solidOf(body)), 0);

const toBuffer = (bytes: Uint8Array): ArrayBuffer => Uint8Array.from(bytes).buffer;

/** Triangles and box of all that a loader has made. */
function loaded(object: Object3D): { readonly count: number; readonly box: Box3; readonly bodies: number } {
  let [count, bodies] = [0, 0];
  object.traverse((each) => {
    if (!(each instanceof Mesh)) return;
    const geometry = each.geometry as BufferGeometry;
    count += (geometry.index?.count ?? geometry.getAttribute('position').count) / 3;
    bodies += 1;
  });
  return { count, bodies, box: new Box3().setFromObject(object, true) };
}

const byThree = (bytes: Uint8Array, format: SolidFormat): ReturnType<typeof loaded> =>
  format === 'stl'
    ? loaded(new Mesh(new STLLoader().parse(toBuffer(bytes))))
    : loaded(new ThreeMFLoader().parse(toBuffer(bytes)));

const CASES = FORMATS.flatMap((format) =>
  LYINGS.flatMap((lying) => PIECE_IDS.map((id) => [format, id, lying] as const)),
);

describe.each(CASES)('the %s file of %s lying %s', (format, id, lying) => {
  const piece = made(id, lyingAs(lying));
  const bytes = pieceFile(piece, format);

  it('is read back by our own reader: same triangles, same box, nothing to mend', () => {
    const { mesh, unit, solids } = readPart(bytes);
    expect(triangleCount(mesh)).toBe(trianglesOf(piece));
    if (format === '3mf') expect(unit).toBe('millimetre');
    if (format === '3mf') expect(solids.length).toBe(piece.bodies.length);
    const { min, max } = boxOf(mesh);
    for (const side of SIDES) {
      expectClose(min[side], 0, EXACT);
      expectClose(max[side], piece.size[side], format === 'stl' ? SINGLE : EXACT);
    }
    expect(mendMesh(mesh).damage).toEqual([]);
  });

  it('loads in the loaders of three with the same triangles and box', () => {
    const { count, box, bodies } = byThree(bytes, format);
    expect(count).toBe(trianglesOf(piece));
    if (format === '3mf') expect(bodies).toBe(piece.bodies.length);
    for (const side of SIDES) {
      expectClose(box.min[side], 0, SINGLE);
      expectClose(box.max[side], piece.size[side], SINGLE);
    }
  });

  it('is the same, byte by byte, each time', () => {
    expect(Buffer.compare(pieceFile(made(id, lyingAs(lying)), format), bytes)).toBe(0);
  });
});

describe('the file of a plate', () => {
  const result = layOut(
    PIECE_IDS.map((id) => made(id)),
    { x: 220, y: 220 },
  );
  if (!result.ok) throw new Error(result.problems[0].message);
  const plate: Plate = result.value[0]!;
  const right = Math.max(...plate.map(({ piece, at }) => at.x + piece.size.x));
  const back = Math.max(...plate.map(({ piece, at }) => at.y + piece.size.y));

  it.each(FORMATS)('%s holds all that stands on it, where it stands', (format) => {
    const bytes = plateFile(plate, format);
    const { min, max } = boxOf(readPart(bytes).mesh);
    const three = byThree(bytes, format);
    const least = plate.map(({ at }) => at);
    expectClose(min.x, Math.min(...least.map(({ x }) => x)), SINGLE);
    expectClose(min.y, Math.min(...least.map(({ y }) => y)), SINGLE);
    expectClose(max.x, right, SINGLE);
    expectClose(max.y, back, SINGLE);
    expectClose(three.box.max.x, right, SINGLE);
    expectClose(three.box.max.y, back, SINGLE);
    expect(three.count).toBe(plate.reduce((sum, { piece }) => sum + trianglesOf(piece), 0));
  });

  it('names each body of a 3MF by its piece', () => {
    expect(readPart(pieceFile(made('comb'), '3mf')).solids).toEqual(['Strip comb']);
    const { solids } = readPart(pieceFile(made('hold'), '3mf'));
    expect(solids).toEqual(['Hold piece, body 1 of 2', 'Hold piece, body 2 of 2']);
  });
});
