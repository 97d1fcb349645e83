/** One layer of a thin section, cut square to its run at every station. */
import type { Mm } from '../../units.ts';
import { pieceWidths, type NearLayer } from './laidLayers.ts';
import type { NearPath } from './near.ts';
import type { RunFrame, RunPiece } from './runFrame.ts';

/** What runs within so much of the run is a line along it; a degree over half-way, so that what is laid at 45° is not told by chance. */
const ALONG = Math.cos((46 * Math.PI) / 180);
/** What is laid runs along the section to within 30°. */
const WELL_ALONG = Math.cos((30 * Math.PI) / 180);
/** Half a usual line: lines that lie so far outside what was drawn belong to it still [mm]. */
const HALF_LINE: Mm = 0.25;
/** The cut is first made so far beyond the section; what belongs to it is known only when widths are [mm]. */
const BEYOND: Mm = 1;

/** The middle of a line meets the cut of a station. */
export interface Crossing {
  readonly station: number;
  readonly off: Mm;
  readonly width: Mm;
  /** Half of what it takes of the cut, which is more than half its width where it runs aslant. */
  readonly half: Mm;
  /** Whether it goes up the run (1) or down it (−1). */
  readonly sense: 1 | -1;
  readonly path: number;
}

/** What a bead covers of the cut of a station [mm off the run]. */
export interface Cover {
  readonly low: Mm;
  readonly high: Mm;
  readonly width: Mm;
}

/** Crossings of one path as they follow one another; `closes` where the last goes on into the first. */
export interface Walk {
  readonly crossings: readonly Crossing[];
  readonly closes: boolean;
}

export interface LayerCut {
  readonly walks: readonly Walk[];
  /** By station. */
  readonly covers: readonly (readonly Cover[])[];
  /** By station: how many beads that hang together cover it. */
  readonly beads: Int32Array;
  /** Length that lies in the section [mm], and how much of it runs along. */
  readonly length: Mm;
  readonly along: Mm;
}

/** A piece of bead in the coordinates of a piece of the run. */
interface Local {
  readonly s1: Mm;
  readonly t1: Mm;
  readonly s2: Mm;
  readonly t2: Mm;
  readonly long: Mm;
  readonly width: Mm;
}

class Cutting {
  readonly walks: Walk[] = [];
  readonly covers: Cover[][];
  readonly beads: Int32Array;
  length = 0;
  along = 0;
  readonly #frame: RunFrame;
  readonly #reach: Mm;
  #crossings: Crossing[] = [];
  /** By station: the last piece of this path that covers it, and whether its first does. */
  readonly #lastPiece: Int32Array;
  readonly #firstPiece: Int32Array;

  constructor(frame: RunFrame, reach: Mm) {
    this.#frame = frame;
    this.#reach = reach;
    const { length } = frame.stations;
    this.covers = Array.from({ length }, () => []);
    this.beads = new Int32Array(length);
    this.#lastPiece = new Int32Array(length);
    this.#firstPiece = new Int32Array(length);
  }

  path(path: NearPath, widths: Float64Array): void {
    const { points } = path;
    this.#crossings = [];
    this.#lastPiece.fill(-2);
    this.#firstPiece.fill(-2);
    let piece = 0;
    for (let i = 0; i < widths.length; i += 1) {
      const [x1, y1, x2, y2] = [points[2 * i]!, points[2 * i + 1]!, points[2 * i + 2]!, points[2 * i + 3]!];
      const long = Math.hypot(x2 - x1, y2 - y1);
      if (!(long > 0) || !(widths[i]! > 0)) continue;
      for (const run of this.#frame.pieces) {
        const [ax, ay, bx, by] = [x1 - run.x, y1 - run.y, x2 - run.x, y2 - run.y];
        const s1 = ax * run.ux + ay * run.uy;
        const t1 = ay * run.ux - ax * run.uy;
        const s2 = bx * run.ux + by * run.uy;
        const t2 = by * run.ux - bx * run.uy;
        const half = widths[i]! / 2;
        if (Math.max(s1, s2) < -half || Math.min(s1, s2) > run.length + half) continue;
        const reach = this.#reach / 2 + BEYOND + half;
        if (Math.max(t1, t2) < -reach || Math.min(t1, t2) > reach) continue;
        this.#piece(run, { s1, t1, s2, t2, long, width: widths[i]! }, path.path, piece);
      }
      piece += 1;
    }
    const closes = path.isClosed && path.begins && path.ends;
    if (closes) this.#joinEnds(piece - 1);
    if (this.#crossings.length > 0) this.walks.push({ crossings: this.#crossings, closes });
  }

  /** The last and the first piece of a contour hang together. */
  #joinEnds(last: number): void {
    for (let k = 0; k < this.beads.length; k += 1) {
      const isApart = this.#firstPiece[k] === 0 && this.#lastPiece[k] === last && last > 0;
      if (isApart && this.beads[k]! > 1) this.beads[k]! -= 1;
    }
  }

  #piece(run: RunPiece, local: Local, path: number, piece: number): void {
    this.#measure(run, local);
    const { s1, s2, width } = local;
    const { step, stations } = this.#frame;
    const [low, high] = [Math.min(s1, s2) - width / 2 + run.from, Math.max(s1, s2) + width / 2 + run.from];
    const from = Math.max(run.first, Math.ceil(low / step - 0.5 - 1e-9));
    const end = Math.min(run.end, Math.floor(high / step - 0.5 + 1e-9) + 1);
    // Crossings come in the order in which the path meets them.
    for (let i = 0; i < end - from; i += 1) {
      const k = s2 >= s1 ? from + i : end - 1 - i;
      this.#meet(k, stations[k]! - run.from, local, path, piece);
    }
  }

  #meet(k: number, s: Mm, local: Local, path: number, piece: number): void {
    const { s1, t1, s2, t2, long, width } = local;
    const share = Math.abs(s2 - s1) / long;
    const isMet = s1 < s !== s2 < s;
    if (isMet && share >= ALONG) {
      const off = t1 + ((s - s1) / (s2 - s1)) * (t2 - t1);
      const sense = s2 > s1 ? 1 : -1;
      this.#crossings.push({ station: k, off, width, half: width / 2 / share, sense, path });
    }
    const cover = covered(s, local);
    if (!cover) return;
    this.covers[k]!.push(cover);
    if (cover.high < -this.#reach / 2 || cover.low > this.#reach / 2) return;
    if (this.#lastPiece[k]! < piece - 1) this.beads[k]! += 1;
    this.#lastPiece[k] = piece;
    if (piece === 0) this.#firstPiece[k] = 0;
  }

  /** Adds what of a piece lies in the section to its length. */
  #measure(run: RunPiece, { s1, t1, s2, t2, long }: Local): void {
    const half = this.#reach / 2 + HALF_LINE;
    const [from, to] = clipped(s1, s2, 0, run.length, ...clipped(t1, t2, -half, half, 0, 1));
    if (!(to > from)) return;
    this.length += (to - from) * long;
    if (Math.abs(s2 - s1) >= WELL_ALONG * long) this.along += (to - from) * long;
  }
}

/** The part of a way from one number to another, as shares of it, on which it is between two limits. */
function clipped(a: number, b: number, low: number, high: number, from: number, to: number): [number, number] {
  if (a === b) return a >= low && a <= high ? [from, to] : [0, 0];
  const [p, q] = [(low - a) / (b - a), (high - a) / (b - a)];
  return [Math.max(from, Math.min(p, q)), Math.min(to, Math.max(p, q))];
}

/** What a piece with round ends covers of the cut at `s`: of a rectangle and two circles. */
function covered(s: Mm, { s1, t1, s2, t2, long, width }: Local): Cover | undefined {
  const r = width / 2;
  let [low, high] = [Infinity, -Infinity];
  const take = (a: number, b: number) => {
    low = Math.min(low, a);
    high = Math.max(high, b);
  };
  for (let end = 0; end < 2; end += 1) {
    const [ds, t] = end === 0 ? [s - s1, t1] : [s - s2, t2];
    if (Math.abs(ds) >= r) continue;
    const chord = Math.sqrt(r * r - ds * ds);
    take(t - chord, t + chord);
  }
  const [ms, mt] = [(-r * (t2 - t1)) / long, (r * (s2 - s1)) / long];
  for (let side = -1; side < 2; side += 2) {
    const [a, b] = [s1 + side * ms, s2 + side * ms];
    if (a < s === b < s) continue;
    const t = t1 + side * mt + ((s - a) / (b - a)) * (t2 - t1);
    take(t, t);
  }
  return high > low ? { low, high, width } : undefined;
}

/**
 * A layer, cut at every station.
 *
 * @param frame - the run and its stations [mm]
 * @param reach - of the section, square to the run [mm], > 0
 * @param layer - what is laid near it [mm]
 * @param diameter - of the filament [mm], > 0
 * @returns lines that meet the cuts, what is covered, and how much runs along [mm]
 *
 * Source: bead-section.
 */
export function cutLayer(frame: RunFrame, reach: Mm, layer: NearLayer, diameter: Mm): LayerCut {
  const cutting = new Cutting(frame, reach);
  for (const path of layer.paths) cutting.path(path, pieceWidths(path, layer.height, diameter));
  const { walks, covers, beads, length, along } = cutting;
  return { walks, covers, beads, length, along };
}
