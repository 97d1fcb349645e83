/** Reducing one run to its two ends. */
import { elementTangent } from './element.ts';
import { eliminate } from './eliminate.ts';
import type { Run } from './mesh.ts';
import type { Network, RunRoom } from './network.ts';

/**
 * Eliminates everything inside a run; what is left in its room couples x, y, turn of its two ends.
 *
 * @param network - the network [-]
 * @param run - one of its runs [-]
 * @param room - where that run works [-]; filled
 * @param nodes - x, y [mm], angle [rad] of its nodes
 * @param stress - N, V [N], M [N·mm] carried at its points
 * @returns strain energy [N·mm]
 */
export function condense(
  { rule }: Network,
  run: Run,
  room: RunRoom,
  nodes: Float64Array,
  stress: Float64Array,
): number {
  const size = 3 * (rule.degree + 1);
  const inner = size - 6;
  let energy = 0;
  let negative = 0;
  for (let e = 0; e < run.elements; e += 1) {
    const { matrix, force } = room.elements[e]!;
    energy += elementTangent(rule, run, e, nodes, stress, room.kept, matrix, force);
    negative += eliminate(matrix, force, size, inner);
    if (e > 0) negative += join(room, e, size, inner);
  }
  takeEnds(room, size, inner);
  // A hinged end turns by itself: its turn goes as well.
  const { matrix, force } = room.ends;
  if (run.ends[0].hinged) negative += eliminateOne(matrix, force, 2, -1);
  if (run.ends[1].hinged) negative += eliminateOne(matrix, force, 5, run.ends[0].hinged ? 2 : -1);
  room.negative = negative;
  return energy;
}

/** Joins element e to those before it and eliminates the node between; order in the join: between, start, end. */
function join(room: RunRoom, e: number, size: number, inner: number): number {
  const { matrix, force } = room.joins[e - 1]!;
  const next = room.elements[e]!;
  matrix.fill(0);
  const before = e === 1 ? room.elements[0]! : room.joins[e - 2]!;
  // Where start and end of what came before stand in its square.
  const [side, at] = e === 1 ? [size, inner] : [9, 3];
  for (let i = 0; i < 3; i += 1) {
    for (let j = 0; j < 3; j += 1) {
      const upper = i <= j;
      const [startStart, startEnd] = [(at + i) * side + at + j, (at + i) * side + at + 3 + j];
      const endEnd = (at + 3 + i) * side + at + 3 + j;
      if (upper) {
        matrix[i * 9 + j] = before.matrix[endEnd]! + next.matrix[(inner + i) * size + inner + j]!;
        matrix[(3 + i) * 9 + 3 + j] = before.matrix[startStart]!;
        matrix[(6 + i) * 9 + 6 + j] = next.matrix[(inner + 3 + i) * size + inner + 3 + j]!;
      }
      // Start to between stands in the other order here.
      matrix[j * 9 + 3 + i] = before.matrix[startEnd]!;
      matrix[i * 9 + 6 + j] = next.matrix[(inner + i) * size + inner + 3 + j]!;
    }
    force[i] = before.force[at + 3 + i]! + next.force[inner + i]!;
    force[3 + i] = before.force[at + i]!;
    force[6 + i] = next.force[inner + 3 + i]!;
  }
  return eliminate(matrix, force, 9, 3);
}

function takeEnds(room: RunRoom, size: number, inner: number): void {
  const isOne = room.joins.length === 0;
  const from = isOne ? room.elements[0]! : room.joins.at(-1)!;
  const [side, at] = isOne ? [size, inner] : [9, 3];
  for (let i = 0; i < 6; i += 1) {
    for (let j = i; j < 6; j += 1) room.ends.matrix[i * 6 + j] = from.matrix[(at + i) * side + at + j]!;
    room.ends.force[i] = from.force[at + i]!;
  }
}

/** Eliminates one of the six end movements in place, `gone` before it; its row stays as it was for the way back. */
function eliminateOne(matrix: Float64Array, force: Float64Array, k: number, gone: number): number {
  const pivot = matrix[k * 6 + k]!;
  const couple = (i: number) => (i < k ? matrix[i * 6 + k]! : matrix[k * 6 + i]!);
  const row = Float64Array.from({ length: 6 }, (_, i) => couple(i));
  for (let i = 0; i < 6; i += 1) {
    if (i === k || i === gone) continue;
    for (let j = i; j < 6; j += 1) {
      if (j !== k && j !== gone) matrix[i * 6 + j] = matrix[i * 6 + j]! - (row[i]! * row[j]!) / pivot;
    }
    force[i] = force[i]! - (row[i]! * force[k]!) / pivot;
  }
  return pivot < 0 ? 1 : 0;
}
