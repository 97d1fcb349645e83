import type { Facing } from './facing.ts';
import type { OnScreen } from './onScreen.ts';

/** Called now and then while something long goes on; may throw to give up. */
export type Alive = () => void;

/** After how many steps a sign of life is given. */
const SIGN_AFTER = 1 << 13;

/** What is nearest the eye at the middle of each pixel. */
export interface DepthBuffer {
  /** The triangle; −1 for none. */
  readonly seen: Int32Array;
  /** How near the eye it is there [mm]. */
  readonly near: Float32Array;
}

/**
 * How near the eye the plane of a triangle is over the grid: near = least + x·right + y·down.
 */
export interface ScreenPlane {
  readonly at: number;
  readonly right: number;
  readonly down: number;
}

/**
 * The plane of a triangle over the grid.
 *
 * @param screen - vertices on the grid [pixels, mm]
 * @param corners - of the mesh [-]
 * @param triangle - its number [-]
 * @returns nearness at the corner of the grid [mm] and its rise [mm per pixel]; undefined where it is seen on edge
 */
export function planeOnScreen(screen: OnScreen, corners: Uint32Array, triangle: number): ScreenPlane | undefined {
  const { x, y, near } = screen;
  const a = corners[3 * triangle]!;
  const b = corners[3 * triangle + 1]!;
  const c = corners[3 * triangle + 2]!;
  const bx = x[b]! - x[a]!;
  const by = y[b]! - y[a]!;
  const cx = x[c]! - x[a]!;
  const cy = y[c]! - y[a]!;
  const twice = bx * cy - cx * by;
  if (Math.abs(twice) < 1e-12) return undefined;
  const bn = near[b]! - near[a]!;
  const cn = near[c]! - near[a]!;
  const right = (bn * cy - cn * by) / twice;
  const down = (bx * cn - cx * bn) / twice;
  return { at: near[a]! - right * x[a]! - down * y[a]!, right, down };
}

/**
 * Lays all triangles on the grid and keeps the nearest at each pixel; where two are equally near, the one whose outside is
 * seen.
 *
 * @param screen - vertices on the grid [pixels, mm]
 * @param corners - of the mesh [-]
 * @param facing - which way the triangles look [-]
 * @param alive - called now and then [-]
 * @returns what is seen where
 */
export function fillDepth(screen: OnScreen, corners: Uint32Array, { side }: Facing, alive: Alive): DepthBuffer {
  const { width, height } = screen.grid;
  const buffer = {
    seen: new Int32Array(width * height).fill(-1),
    near: new Float32Array(width * height).fill(-Infinity),
  };
  for (const facing of [-1, 1]) {
    for (let triangle = 0; triangle < side.length; triangle += 1) {
      if (triangle % SIGN_AFTER === 0) alive();
      if ((side[triangle]! > 0 ? 1 : -1) === facing) layTriangle(screen, corners, triangle, buffer);
    }
  }
  return buffer;
}

function layTriangle(screen: OnScreen, corners: Uint32Array, triangle: number, buffer: DepthBuffer): void {
  const { x, y, grid } = screen;
  const ax = x[corners[3 * triangle]!]!;
  const ay = y[corners[3 * triangle]!]!;
  const bx = x[corners[3 * triangle + 1]!]!;
  const by = y[corners[3 * triangle + 1]!]!;
  const cx = x[corners[3 * triangle + 2]!]!;
  const cy = y[corners[3 * triangle + 2]!]!;
  const first = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const last = Math.min(grid.height - 1, Math.ceil(Math.max(ay, by, cy) - 0.5) - 1);
  if (last < first || Math.ceil(Math.max(ax, bx, cx) - 0.5) === Math.ceil(Math.min(ax, bx, cx) - 0.5)) return;
  const plane = planeOnScreen(screen, corners, triangle);
  if (plane === undefined) return;
  for (let row = first; row <= last; row += 1) {
    const middle = row + 0.5;
    const one = crossing(ax, ay, bx, by, middle);
    const two = crossing(bx, by, cx, cy, middle);
    const three = crossing(cx, cy, ax, ay, middle);
    // A row crosses two of the sides; the third is not a number, which these pass over.
    const from = least(one, two, three);
    const to = most(one, two, three);
    layRow(buffer, row * grid.width, Math.max(0, Math.ceil(from - 0.5)), Math.min(grid.width, Math.ceil(to - 0.5)), {
      at: plane.at + plane.down * middle + plane.right * 0.5,
      right: plane.right,
      triangle,
    });
  }
}

function crossing(ax: number, ay: number, bx: number, by: number, middle: number): number {
  return ay <= middle === by <= middle ? Number.NaN : ax + ((middle - ay) / (by - ay)) * (bx - ax);
}

function least(a: number, b: number, c: number): number {
  const ab = a < b || Number.isNaN(b) ? a : b;
  return ab < c || Number.isNaN(c) ? ab : c;
}

function most(a: number, b: number, c: number): number {
  const ab = a > b || Number.isNaN(b) ? a : b;
  return ab > c || Number.isNaN(c) ? ab : c;
}

function layRow(
  { seen, near }: DepthBuffer,
  row: number,
  from: number,
  to: number,
  { at, right, triangle }: { readonly at: number; readonly right: number; readonly triangle: number },
): void {
  for (let column = from; column < to; column += 1) {
    const here = at + right * column;
    if (here < near[row + column]!) continue;
    near[row + column] = here;
    seen[row + column] = triangle;
  }
}
