/** One layer of a thin section, cut square to its run at every station. */
import type { Mm } from '../../units.ts';
import { clipped } from './clip.ts';
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

/** What beads cover of the cut of a station: three numbers each, from and to [mm off the run], and width [mm]. */
export type Covers = readonly number[];
export const COVER_SIZE = 3;

/** Crossings of one path as they follow one another; `closes` where the last goes on into the first. */
export interface Walk {
  readonly crossings: readonly Crossing[];
  readonly closes: boolean;
}

export interface LayerCut {
  readonly walks: readonly Walk[];
  /** By station. */
  readonly covers: readonly Covers[];
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
  readonly covers: number[][];
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
      const x1 = points[2 * i]!;
      const y1 = points[2 * i + 1]!;
      const x2 = points[2 * i + 2]!;
      const y2 = points[2 * i + 3]!;
      const long = Math.sqrt((x2 - x1) ** 2 + (y2 - y1) ** 2);
      if (!(long > 0) || !(widths[i]! > 0)) continue;
      for (const run of this.#frame.pieces) {
        const s1 = (x1 - run.x) * run.ux + (y1 - run.y) * run.uy;
        const s2 = (x2 - run.x) * run.ux + (y2 - run.y) * run.uy;
        const half = widths[i]! / 2;
        if (Math.max(s1, s2) < -half || Math.min(s1, s2) > run.length + half) continue;
        const t1 = (y1 - run.y) * run.ux - (x1 - run.x) * run.uy;
        const t2 = (y2 - run.y) * run.ux - (x2 - run.x) * run.uy;
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
    const low = Math.min(s1, s2) - width / 2 + run.from;
    const high = Math.max(s1, s2) + width / 2 + run.from;
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
    this.#cover(k, s, local, piece);
  }

  /** What a piece with round ends covers of a cut: of a rectangle and two circles. Numbers one by one, as most of the work is here. */
  #cover(k: number, s: Mm, { s1, t1, s2, t2, long, width }: Local, piece: number): void {
    const r = width / 2;
    let low = Infinity;
    let high = -Infinity;
    for (let end = 0; end < 2; end += 1) {
      const ds = s - (end === 0 ? s1 : s2);
      if (Math.abs(ds) >= r) continue;
      const chord = Math.sqrt(r * r - ds * ds);
      const t = end === 0 ? t1 : t2;
      low = Math.min(low, t - chord);
      high = Math.max(high, t + chord);
    }
    const ms = (-r * (t2 - t1)) / long;
    const mt = (r * (s2 - s1)) / long;
    for (let side = -1; side < 2; side += 2) {
      const a = s1 + side * ms;
      const b = s2 + side * ms;
      if (a < s === b < s) continue;
      const t = t1 + side * mt + ((s - a) / (b - a)) * (t2 - t1);
      low = Math.min(low, t);
      high = Math.max(high, t);
    }
    if (high > low) this.#addCover(k, low, high, width, piece);
  }

  #addCover(k: number, low: Mm, high: Mm, width: Mm, piece: number): void {
    const covers = this.covers[k]!;
    const last = covers.length - COVER_SIZE;
    const hangsOn = this.#lastPiece[k]! >= piece - 1 && last >= 0;
    // Pieces that follow one another overlap at their corner: they are one cover, as wide as the wider.
    if (hangsOn && covers[last]! <= high && covers[last + 1]! >= low) {
      covers[last] = Math.min(covers[last]!, low);
      covers[last + 1] = Math.max(covers[last + 1]!, high);
      covers[last + 2] = Math.max(covers[last + 2]!, width);
    } else covers.push(low, high, width);
    if (this.#lastPiece[k]! < piece - 1 && high >= -this.#reach / 2 && low <= this.#reach / 2) this.beads[k]! += 1;
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
