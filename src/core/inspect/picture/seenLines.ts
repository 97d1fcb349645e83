import { chainsOf, type Chain } from './chains.ts';
import { planeOnScreen, type Alive, type DepthBuffer, type ScreenPlane } from './depthBuffer.ts';
import type { DrawnEdges } from './drawnEdges.ts';
import type { Facing } from './facing.ts';
import type { Hiding, Slack, Spot } from './hiding.ts';
import type { OnScreen } from './onScreen.ts';
import type { PictureLine } from './picture.ts';
import { simplerLine } from './simplerLine.ts';
import { visibleRuns, type Line } from './visibleRuns.ts';

/** What a picture is drawn from. */
export interface Drawing {
  readonly corners: Uint32Array;
  readonly screen: OnScreen;
  readonly facing: Facing;
  readonly buffer: DepthBuffer;
  readonly hiding: Hiding;
  /** What is nearer by less touches [mm]. */
  readonly touching: number;
  readonly alive: Alive;
}

/** How closely lines are looked at [pixels], and at how many places at most. */
const STEP = 0.75;
const MOST_LOOKS = 2_500_000;
/** Lines shorter than this [mm on paper] are no wider than long, and left out. */
const SHORTEST = 0.3;
/** How far a line may move by being drawn with fewer corners [mm on paper]: a tenth of a thin line. */
const SIMPLER = 0.02;
/** A surface is taken to rise by at least and at most this much over a pixel [lengths of a pixel]. */
const RISE = { least: 1, most: 6, ofTrace: 4 } as const;
/** After how many lines a sign of life is given. */
const SIGN_AFTER = 256;

/**
 * Lines along edges of the part, as far as they are seen.
 *
 * @param drawn - edges [-]
 * @param drawing - what it is drawn from [-]
 * @returns lines on paper [mm]
 */
export function seenEdges(drawn: DrawnEdges, drawing: Drawing): readonly PictureLine[] {
  const isUsed = new Uint8Array(drawn.count);
  let total = lengthOf(drawn, drawing.screen, isUsed);
  if (total > MOST_LOOKS * STEP) {
    leaveUnseen(drawn, drawing.buffer, isUsed, drawing.facing.side.length);
    total = lengthOf(drawn, drawing.screen, isUsed);
  }
  const step = Math.max(STEP, total / MOST_LOOKS);
  const lines: PictureLine[] = [];
  for (const silhouettes of [1, 0] as const) {
    let count = 0;
    for (const chain of chainsOf(drawn, silhouettes, isUsed, drawing.screen)) {
      if ((count += 1) % SIGN_AFTER === 0) drawing.alive();
      const kind = silhouettes === 1 ? 'silhouette' : 'edge';
      for (const line of drawnParts(lineOf(chain, drawn, drawing), kind, step, drawing)) lines.push(line);
    }
  }
  return lines;
}

/**
 * A line on the surface of the part, as far as it is seen.
 *
 * @param spots - corners on the grid [pixels]
 * @param drawing - what it is drawn from [-]
 * @returns lines on paper [mm]
 */
export function seenTrace(spots: readonly Spot[], drawing: Drawing): readonly PictureLine[] {
  if (spots.length < 2) return [];
  const { touching, screen } = drawing;
  const slack: Slack = { exact: 2 * touching, pixels: touching + RISE.ofTrace * screen.pixel };
  return drawnParts({ spots, slackOf: () => slack }, 'trace', STEP, drawing);
}

function lengthOf({ count, from, to }: DrawnEdges, { x, y }: OnScreen, isUsed: Uint8Array): number {
  let total = 0;
  for (let edge = 0; edge < count; edge += 1) {
    if (isUsed[edge] === 1) continue;
    const across = x[to[edge]!]! - x[from[edge]!]!;
    const down = y[to[edge]!]! - y[from[edge]!]!;
    total += Math.sqrt(across * across + down * down);
  }
  return total;
}

/** Where there is too much to look at, edges of triangles that no pixel shows are left out beforehand. */
function leaveUnseen(
  { count, triangle, other }: DrawnEdges,
  { seen }: DepthBuffer,
  isUsed: Uint8Array,
  all: number,
): void {
  const isSeen = new Uint8Array(all);
  for (let i = 0; i < seen.length; i += 1) if (seen[i]! >= 0) isSeen[seen[i]!] = 1;
  for (let edge = 0; edge < count; edge += 1) {
    if (isSeen[triangle[edge]!] === 0 && isSeen[other[edge]!] === 0) isUsed[edge] = 1;
  }
}

function lineOf({ edges, vertices }: Chain, drawn: DrawnEdges, drawing: Drawing): Line {
  const { x, y, near } = drawing.screen;
  const spots = vertices.map((vertex): Spot => ({ x: x[vertex]!, y: y[vertex]!, near: near[vertex]! }));
  // One object, so that a closed line is known by it.
  if (vertices.length > 3 && vertices[0] === vertices.at(-1)) spots[spots.length - 1] = spots[0]!;
  let last = { piece: -1, slack: { exact: 0, pixels: 0 } };
  const slackOf = (piece: number): Slack => {
    if (piece !== last.piece) last = { piece, slack: slackAt(edges[piece]!, drawn, drawing) };
    return last.slack;
  };
  return { spots, slackOf };
}

/**
 * In a hollow edge both faces come towards the eye from it, so that all pixels round it lie in front by as much as they rise.
 * Round any other edge one of the four pixels at least lies beyond the surface, or farther away on it.
 */
function slackAt(edge: number, { triangle, other }: DrawnEdges, drawing: Drawing): Slack {
  const { screen, touching } = drawing;
  const [one, two] = [planeSeen(triangle[edge]!, drawing), planeSeen(other[edge]!, drawing)];
  const isHollow = one !== undefined && two !== undefined && isBeyond(other[edge]!, one, drawing);
  const rise = isHollow ? Math.max(riseOf(one), riseOf(two)) : 0;
  const { least, most } = RISE;
  return { exact: touching, pixels: touching + Math.min(most * screen.pixel, Math.max(least * screen.pixel, rise)) };
}

/** Of a triangle that looks at the eye. */
function planeSeen(triangle: number, { screen, corners, facing }: Drawing): ScreenPlane | undefined {
  return facing.side[triangle]! > 0 ? planeOnScreen(screen, corners, triangle) : undefined;
}

/** Whether some of a triangle is nearer the eye than a plane on which one of its sides lies. */
function isBeyond(triangle: number, plane: ScreenPlane, { screen, corners, touching }: Drawing): boolean {
  return [0, 1, 2].some((k) => {
    const vertex = corners[3 * triangle + k]!;
    return (
      screen.near[vertex]! > plane.at + plane.right * screen.x[vertex]! + plane.down * screen.y[vertex]! + touching
    );
  });
}

function riseOf({ right, down }: ScreenPlane): number {
  return Math.abs(right) + Math.abs(down);
}

function drawnParts(line: Line, kind: PictureLine['kind'], step: number, drawing: Drawing): readonly PictureLine[] {
  const { pixelsPerMm, margin } = drawing.screen.grid;
  return visibleRuns(line, drawing.hiding, step)
    .map((spots) => spots.map(({ x, y }) => ({ x: (x - margin) / pixelsPerMm, y: (y - margin) / pixelsPerMm })))
    .filter((points) => extentOf(points) >= SHORTEST)
    .map((points) => ({ kind, points: simplerLine(points, SIMPLER) }));
}

function extentOf(points: readonly { readonly x: number; readonly y: number }[]): number {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return Math.max(right - left, bottom - top);
}
