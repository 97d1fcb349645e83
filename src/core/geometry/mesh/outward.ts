import { sortedByKey, wholeNumbers } from './countingSort.ts';
import { windingsRound, type ShellFigures, type Shells } from './shells.ts';
import { pointOf, type TriangleMesh } from './triangleMesh.ts';

/** Of a surface with a rim, what it encloses says which side is out only from this share of area^1.5 on; a ball has 0.094. */
const TELLING = 0.01;
/** How many triangles may be looked at to tell voids from bodies; beyond it what lies in the box of another stays as it is. */
const MOST_LOOKS = 2e7;

/**
 * Which shells are to be turned inside out: those that enclose less than nothing and lie in no other. One that lies in
 * another may be a void, and stays as the file has it.
 *
 * @param mesh - a mesh whose shells are each wound alike [mm]
 * @param shells - its shells [-]
 * @param figures - figures of the shells [mm², mm³]
 * @returns 1 for each shell to be turned [-]
 */
export function insideOutShells(mesh: TriangleMesh, shells: Shells, figures: ShellFigures): Uint8Array {
  const isTurned = new Uint8Array(shells.count);
  const doubtful = [...isTurned.keys()].filter((shell) => isNegative(figures, shell));
  if (doubtful.length === 0) return isTurned;
  const looking = new InsideLook(mesh, shells);
  for (const shell of doubtful) if (!looking.isInAnother(shell)) isTurned[shell] = 1;
  return isTurned;
}

function isNegative({ rim, area, volume }: ShellFigures, shell: number): boolean {
  if (!(volume[shell]! < 0)) return false;
  return rim[shell] === 0 || -volume[shell]! > TELLING * area[shell]! ** 1.5;
}

/** Looks whether one shell lies inside another. */
class InsideLook {
  readonly #mesh: TriangleMesh;
  readonly #count: number;
  /** Triangles shell by shell, and where each shell begins. */
  readonly #sorted: Uint32Array;
  readonly #starts: Uint32Array;
  readonly #boxes: Float64Array;
  #looks = 0;

  constructor(mesh: TriangleMesh, { shellOf, count }: Shells) {
    this.#mesh = mesh;
    this.#count = count;
    this.#sorted = sortedByKey(wholeNumbers(shellOf.length), shellOf, count);
    this.#starts = new Uint32Array(count + 1);
    for (let triangle = 0; triangle < shellOf.length; triangle += 1) this.#starts[shellOf[triangle]! + 1]! += 1;
    for (let shell = 0; shell < count; shell += 1) this.#starts[shell + 1]! += this.#starts[shell]!;
    this.#boxes = boxesOf(mesh, { shellOf, count });
  }

  isInAnother(shell: number): boolean {
    const corner = this.#mesh.corners[3 * this.#sorted[this.#starts[shell]!]!]!;
    const at = pointOf(this.#mesh, corner);
    for (let other = 0; other < this.#count; other += 1) {
      this.#looks += 1;
      if (other === shell || !this.#isBoxIn(shell, other)) continue;
      const triangles = this.#sorted.subarray(this.#starts[other], this.#starts[other + 1]);
      this.#looks += triangles.length;
      if (this.#looks > MOST_LOOKS) return true;
      if (Math.abs(windingsRound(this.#mesh, triangles, at)) > 0.5) return true;
    }
    return false;
  }

  #isBoxIn(inner: number, outer: number): boolean {
    const boxes = this.#boxes;
    for (let k = 0; k < 3; k += 1) {
      if (boxes[6 * inner + k]! < boxes[6 * outer + k]!) return false;
      if (boxes[6 * inner + 3 + k]! > boxes[6 * outer + 3 + k]!) return false;
    }
    return true;
  }
}

/** Least x, y, z and greatest x, y, z of each shell. */
function boxesOf({ points, corners }: TriangleMesh, { shellOf, count }: Shells): Float64Array {
  const boxes = new Float64Array(6 * count);
  for (let k = 0; k < boxes.length; k += 1) boxes[k] = k % 6 < 3 ? Infinity : -Infinity;
  for (let i = 0; i < corners.length; i += 1) {
    const box = 6 * shellOf[Math.floor(i / 3)]!;
    for (let axis = 0; axis < 3; axis += 1) {
      const value = points[3 * corners[i]! + axis]!;
      if (value < boxes[box + axis]!) boxes[box + axis] = value;
      if (value > boxes[box + 3 + axis]!) boxes[box + 3 + axis] = value;
    }
  }
  return boxes;
}
