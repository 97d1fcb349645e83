/** Which thick parts of a section are one: what is left of it when its thin runs are taken out. */
import type { Point } from '../../geometry/outline.ts';
import { chordInto } from './chords.ts';
import type { MeasuredRun } from './measureRun.ts';
import type { Triangles } from './triangles.ts';

export interface PadInSection {
  /** The middle of its widest way across. */
  readonly at: Point;
  readonly triangles: ReadonlySet<number>;
}

/** All that hangs together without passing through a thin run. */
function reach(triangles: Triangles, isThin: Uint8Array, start: number): ReadonlySet<number> {
  const seen = new Set([start]);
  const queue = [start];
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    for (let s = 3 * t; s < 3 * t + 3; s += 1) {
      const neighbour = triangles.across[s]!;
      if (neighbour < 0 || isThin[neighbour] === 1 || seen.has(neighbour)) continue;
      seen.add(neighbour);
      queue.push(neighbour);
    }
  }
  return seen;
}

function widestIn(triangles: Triangles, pad: ReadonlySet<number>): Point {
  let widest = -1;
  let at: Point = { x: 0, y: 0 };
  for (const t of pad) {
    for (let s = 3 * t; s < 3 * t + 3; s += 1) {
      if (triangles.across[s]! < 0 || !pad.has(triangles.across[s]!)) continue;
      const { width, middle } = chordInto(triangles, s);
      if (width <= widest) continue;
      widest = width;
      at = middle;
    }
  }
  if (widest >= 0) return at;
  const [t = 0] = pad;
  const { boundary, corners } = triangles;
  const mean = (values: readonly number[]) => [0, 1, 2].reduce((sum, k) => sum + values[corners[3 * t + k]!]! / 3, 0);
  return { x: mean(boundary.x), y: mean(boundary.y) };
}

/** The pads that the runs of a section end at. */
export function padsOf(triangles: Triangles, runs: readonly MeasuredRun[]): readonly PadInSection[] {
  const isThin = new Uint8Array(triangles.corners.length / 3);
  for (const { run } of runs) for (const t of run.triangles) isThin[t] = 1;
  const pads: PadInSection[] = [];
  for (const { run } of runs) {
    for (const end of run.ends) {
      if (end.kind !== 'pad' || isThin[end.triangle] === 1) continue;
      if (pads.some((pad) => pad.triangles.has(end.triangle))) continue;
      const own = reach(triangles, isThin, end.triangle);
      pads.push({ at: widestIn(triangles, own), triangles: own });
    }
  }
  return pads;
}
