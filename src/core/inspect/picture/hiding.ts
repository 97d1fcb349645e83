import { planeOnScreen, type DepthBuffer } from './depthBuffer.ts';
import type { OnScreen } from './onScreen.ts';

/** A place on the grid. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly near: number;
}

/** How much nearer the eye something must be to hide [mm]. */
export interface Slack {
  /** Where it is known exactly: round-off of the file. */
  readonly exact: number;
  /** Where only the pixels round about are known: as much as the surface itself rises over a pixel. */
  readonly pixels: number;
}

/**
 * Tells what is hidden: by the triangles that are seen near a spot, each in its exact plane, and where triangles are finer
 * than pixels, by all four pixels round it lying in front.
 */
export class Hiding {
  readonly #screen: OnScreen;
  readonly #corners: Uint32Array;
  readonly #buffer: DepthBuffer;

  constructor(screen: OnScreen, corners: Uint32Array, buffer: DepthBuffer) {
    this.#screen = screen;
    this.#corners = corners;
    this.#buffer = buffer;
  }

  isHidden(spot: Spot, slack: Slack): boolean {
    return this.#isBehindPixels(spot, slack.pixels) || this.#isBehindTriangle(spot, slack.exact);
  }

  #isBehindPixels({ x, y, near }: Spot, slack: number): boolean {
    const { width, height } = this.#screen.grid;
    const column = Math.floor(x - 0.5);
    const row = Math.floor(y - 0.5);
    if (column < 0 || row < 0 || column + 1 >= width || row + 1 >= height) return false;
    const at = row * width + column;
    const front = this.#buffer.near;
    const least = near + slack;
    return front[at]! > least && front[at + 1]! > least && front[at + width]! > least && front[at + width + 1]! > least;
  }

  #isBehindTriangle(spot: Spot, slack: number): boolean {
    const { width, height } = this.#screen.grid;
    const [column, row] = [Math.floor(spot.x), Math.floor(spot.y)];
    let last = -1;
    for (let r = Math.max(0, row - 1); r <= Math.min(height - 1, row + 1); r += 1) {
      for (let c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c += 1) {
        const triangle = this.#buffer.seen[r * width + c]!;
        if (triangle < 0 || triangle === last) continue;
        last = triangle;
        if (this.#isInFront(triangle, spot, slack)) return true;
      }
    }
    return false;
  }

  #isInFront(triangle: number, { x, y, near }: Spot, slack: number): boolean {
    const plane = planeOnScreen(this.#screen, this.#corners, triangle);
    if (plane === undefined || plane.at + plane.right * x + plane.down * y <= near + slack) return false;
    return this.#covers(triangle, x, y);
  }

  #covers(triangle: number, x: number, y: number): boolean {
    const screen = this.#screen;
    const a = this.#corners[3 * triangle]!;
    const b = this.#corners[3 * triangle + 1]!;
    const c = this.#corners[3 * triangle + 2]!;
    const one = sideOf(screen, a, b, x, y);
    const two = sideOf(screen, b, c, x, y);
    const three = sideOf(screen, c, a, x, y);
    return (one >= -EDGE && two >= -EDGE && three >= -EDGE) || (one <= EDGE && two <= EDGE && three <= EDGE);
  }
}

/** Twice an area that is nothing [pixels²]: what lies on the side of a triangle counts as covered. */
const EDGE = 1e-7;

function sideOf({ x, y }: OnScreen, a: number, b: number, px: number, py: number): number {
  return (x[b]! - x[a]!) * (py - y[a]!) - (y[b]! - y[a]!) * (px - x[a]!);
}
