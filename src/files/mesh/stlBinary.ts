/** Binary STL: a header of 80 bytes, a count, then fifty bytes a triangle. Source: common practice; the format has no body that keeps it. */
import type { Problem } from '../../core/problems.ts';
import { isPlace, refuseCoordinate } from './coordinates.ts';
import { MeshBuilder, refuseTriangles } from './meshBuilder.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { MAX_TRIANGLES, STEPS_PER_CALL } from './meshLimits.ts';
import { count, FETCH_AGAIN, many, refuse } from './refusal.ts';

export const STL_HEAD_BYTES = 84;
const FACET_BYTES = 50;

/** How many triangles the head promises; 0 where there is no head. */
export function promisedTriangles(bytes: Uint8Array): number {
  return bytes.length < STL_HEAD_BYTES ? 0 : viewOf(bytes).getUint32(STL_HEAD_BYTES - 4, true);
}

/** Bytes that are left after the triangles that the head promises; below 0 where the file is too short for them. */
export function bytesBeyond(bytes: Uint8Array): number {
  return bytes.length - STL_HEAD_BYTES - FACET_BYTES * promisedTriangles(bytes);
}

export function readBinaryStl(bytes: Uint8Array, progress: ReadProgress): MeshFile {
  const triangles = promisedTriangles(bytes);
  checkLength(bytes, triangles);
  const builder = new MeshBuilder(triangles);
  const view = viewOf(bytes);
  for (let i = 0; i < triangles; i += 1) {
    if (i % STEPS_PER_CALL === 0) progress(i / triangles);
    // The stated normal comes first and is passed over: the order of the corners says the same, and is never left at 0.
    const at = STL_HEAD_BYTES + FACET_BYTES * i + 12;
    builder.triangle(
      corner(builder, view, at, i),
      corner(builder, view, at + 12, i),
      corner(builder, view, at + 24, i),
    );
  }
  return { format: 'STL, binary', solids: [''], mesh: builder.finish(), notes: strayNotes(bytes, triangles) };
}

function corner(builder: MeshBuilder, view: DataView, at: number, triangle: number): number {
  const x = view.getFloat32(at, true);
  const y = view.getFloat32(at + 4, true);
  const z = view.getFloat32(at + 8, true);
  if (!(isPlace(x) && isPlace(y) && isPlace(z))) {
    const bad = [x, y, z].find((value) => !isPlace(value))!;
    refuseCoordinate(bad, `Triangle ${count(triangle + 1)}, at byte ${count(at)},`);
  }
  return builder.vertex(x, y, z);
}

function viewOf({ buffer, byteOffset, byteLength }: Uint8Array): DataView {
  return new DataView(buffer, byteOffset, byteLength);
}

function checkLength(bytes: Uint8Array, promised: number): void {
  if (bytes.length < STL_HEAD_BYTES) {
    const message = `The file ends within its head, after ${bytes.length} of ${STL_HEAD_BYTES} bytes; ${FETCH_AGAIN}`;
    refuse('file-damaged', message, { value: bytes.length, limit: STL_HEAD_BYTES });
  }
  const there = Math.floor((bytes.length - STL_HEAD_BYTES) / FACET_BYTES);
  if (promised === 0) {
    const beyond = there > 0 ? `, though there is room for ${count(there)} after its head` : '';
    refuse('file-damaged', `The file says that it holds 0 triangles${beyond}; export the part again`, { value: 0 });
  }
  if (promised > there) {
    const message = `The file is cut off: ${count(there)} of ${count(promised)} triangles are there; ${FETCH_AGAIN}`;
    refuse('file-damaged', message, { value: there, limit: promised });
  }
  if (promised > MAX_TRIANGLES) refuseTriangles(promised);
}

function strayNotes(bytes: Uint8Array, triangles: number): readonly Problem[] {
  const stray = bytesBeyond(bytes);
  if (stray === 0) return [];
  const room = stray < FACET_BYTES ? '' : ', room for further triangles that its head does not count';
  const message = `After the last of ${many(triangles, 'triangle')} ${many(stray, 'byte')} of the file ${stray === 1 ? 'was' : 'were'} passed over${room}; if something is missing, ${FETCH_AGAIN}`;
  return [{ code: 'left-out', message, value: stray }];
}
