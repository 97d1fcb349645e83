/**
 * Reading, mending, searching and drawing a part of some 16 000 triangles and one of a million: the gripper of our own
 * files, each triangle split in four twice and five times. How much memory the process has come to hold by the end of a
 * step, with what it needed on the way, stands beside its name, since a bench cannot say it: some 100 MB are the engine's
 * and these tests', and files and meshes stay for the steps after.
 */
import { bench, describe } from 'vitest';
import { mendMesh } from '../../src/core/geometry/mesh/mend.ts';
import { triangleCount, type TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';
import { partFacts } from '../../src/core/inspect/partFacts.ts';
import { cures } from '../../src/core/inspect/cures.ts';
import { findFlexures } from '../../src/core/inspect/findFlexures.ts';
import { drawPart } from '../../src/core/inspect/picture/drawPart.ts';
import { readMesh } from '../../src/files/mesh/readMesh.ts';
import { ownPart } from '../support/corpus.ts';
import { AS_DROPPED, ASKED } from '../support/flexures.ts';
import { bytesOf, objText, threemf } from '../support/meshWriters.ts';

const NAME = 'syn-four-hinge-gripper-084.stl';
const SEARCH = { thickest: 6 * AS_DROPPED.profile.lineWidth, build: { x: 0, y: 0, z: 1 } };
/** The picture at the width of a desk screen, in mm on paper. */
const PICTURE = { room: { width: 190, height: 66 } };
const quiet = () => undefined;

function read(bytes: Uint8Array): TriangleMesh {
  const result = readMesh(bytes, NAME);
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value.mesh;
}

/** Each triangle split in four at the middles of its sides, which neighbours share. */
function split({ points, corners }: TriangleMesh): TriangleMesh {
  const places = [...points];
  const middles = new Map<number, number>();
  const middle = (a: number, b: number) => {
    const key = Math.min(a, b) * (points.length / 3) + Math.max(a, b);
    const known = middles.get(key);
    if (known !== undefined) return known;
    const made = places.length / 3;
    for (let k = 0; k < 3; k += 1) places.push((points[3 * a + k]! + points[3 * b + k]!) / 2);
    middles.set(key, made);
    return made;
  };
  const finer = new Uint32Array(4 * corners.length);
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
    const [d, e, f] = [middle(a, b), middle(b, c), middle(c, a)];
    finer.set([a, d, f, d, b, e, f, e, c, d, e, f], 4 * i);
  }
  return { points: Float64Array.from(places), corners: finer };
}

/** Written straight into its bytes: a million triangles as lists of lists would fill the memory that is to be measured. */
function stlOf({ points, corners }: TriangleMesh): Uint8Array {
  const count = corners.length / 3;
  const bytes = new Uint8Array(84 + 50 * count);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, count, true);
  for (let i = 0; i < corners.length; i += 1) {
    const at = 84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3);
    for (let k = 0; k < 3; k += 1) view.setFloat32(at + 4 * k, points[3 * corners[i]! + k]!, true);
  }
  return bytes;
}

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;

/** What a step gives, and its name with how much the process holds after it and has held at the most so far. */
function measured<T>(name: string, step: () => T): readonly [said: string, value: T] {
  const value = step();
  const { maxRSS } = process.resourceUsage();
  return [`${name} (${megabytes(process.memoryUsage().rss)} after, ${megabytes(1024 * maxRSS)} at most so far)`, value];
}

const ONCE = { iterations: 3, time: 0, warmupIterations: 0, warmupTime: 0 };

describe.each([2, 5])('a part split in four %d times', (times) => {
  let fine = read(ownPart(NAME));
  for (let i = 0; i < times; i += 1) fine = split(fine);
  const bytes = stlOf(fine);
  const size = `${triangleCount(fine).toLocaleString('en')} triangles, ${megabytes(bytes.length)}`;
  const [reading, mesh] = measured('read', () => read(bytes));
  const [mending, { mesh: whole }] = measured('mend', () => mendMesh(mesh));
  const [telling] = measured('figures and bodies', () => partFacts(whole));
  const [finding, { flexures }] = measured('find', () => findFlexures(whole, SEARCH));
  if (flexures.length !== 4) throw new Error(`the gripper has four thin sections, not ${flexures.length}`);
  const [drawing] = measured('draw', () => drawPart(whole, '+z', PICTURE, quiet));
  bench(`${reading}: binary STL, ${size}`, () => void read(bytes), ONCE);
  bench(mending, () => void mendMesh(mesh), ONCE);
  bench(telling, () => void partFacts(whole), ONCE);
  bench(finding, () => void findFlexures(whole, SEARCH), ONCE);
  bench(drawing, () => void drawPart(whole, '+z', PICTURE, quiet), ONCE);
});

describe('other formats, the same part split twice', () => {
  const fine = split(split(read(ownPart(NAME))));
  const [obj, archive] = [bytesOf(objText(fine)), threemf(fine)];
  bench(`OBJ, ${megabytes(obj.length)}`, () => void read(obj));
  bench(`3MF, ${megabytes(archive.length)}`, () => void read(archive));
});

describe('what happens when the brief changes', () => {
  const mesh = read(ownPart(NAME));
  const { flexures } = findFlexures(mesh, SEARCH);
  const { box } = partFacts(mesh);
  bench('judge four sections and look for cures', () => void cures(flexures, box, AS_DROPPED, ASKED, NAME));
});
