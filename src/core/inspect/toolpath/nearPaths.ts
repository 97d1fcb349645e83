/** A pass over a toolpath that keeps what lies near thin sections. */
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import { clipped } from './clip.ts';
import type { Near, NearPath, NearTravel } from './near.ts';
import type { LaidPath, PathHandler, Travel } from './paths.ts';
import { AROUND, type Place } from './place.ts';
import { spanOf } from './span.ts';

/** Most corners that are kept of one section: some hundred times what a leaf of forty layers has. */
const MOST_CORNERS = 600_000;
const MOST_TRAVELS = 50_000;
/** A little more than rounding of heights in files [mm]. */
const SLACK: Mm = 2e-3;

/** An upright box round the run of a section, turned with it. */
interface Zone {
  readonly middle: Point;
  /** Direction from one end of the run to the other, of length 1. */
  readonly u: Point;
  readonly halfLong: Mm;
  readonly halfAcross: Mm;
}

function zoneOf({ run, reach }: Place): Zone {
  const [first, last] = [run[0]!, run.at(-1)!];
  const long = Math.hypot(last.x - first.x, last.y - first.y) || 1;
  const u = { x: (last.x - first.x) / long, y: (last.y - first.y) / long };
  const at = run.map(({ x, y }) => ({
    along: (x - first.x) * u.x + (y - first.y) * u.y,
    off: (y - first.y) * u.x - (x - first.x) * u.y,
  }));
  const { least: a, most: b } = spanOf(at.map(({ along }) => along))!;
  const { least: c, most: d } = spanOf(at.map(({ off }) => off))!;
  const [along, off] = [(a + b) / 2, (c + d) / 2];
  return {
    middle: { x: first.x + along * u.x - off * u.y, y: first.y + along * u.y + off * u.x },
    u,
    halfLong: (b - a) / 2 + AROUND,
    halfAcross: (d - c) / 2 + reach / 2 + AROUND,
  };
}

/** Whether a straight piece comes into a zone, by clipping it to the slabs between its sides. */
function comesIn({ middle, u, halfLong, halfAcross }: Zone, ax: number, ay: number, bx: number, by: number): boolean {
  const a = (ax - middle.x) * u.x + (ay - middle.y) * u.y;
  const b = (bx - middle.x) * u.x + (by - middle.y) * u.y;
  const c = (ay - middle.y) * u.x - (ax - middle.x) * u.y;
  const d = (by - middle.y) * u.x - (bx - middle.x) * u.y;
  const [from, to] = clipped(c, d, -halfAcross, halfAcross, ...clipped(a, b, -halfLong, halfLong, 0, 1));
  return from <= to;
}

class Gathering {
  readonly place: Place;
  readonly #zone: Zone;
  readonly #paths: NearPath[] = [];
  readonly #travels: NearTravel[] = [];
  #corners = 0;
  #isCut = false;

  constructor(place: Place) {
    this.place = place;
    this.#zone = zoneOf(place);
  }

  #isAtHeight(z: Mm): boolean {
    return z > this.place.bottom + SLACK && z < this.place.top + SLACK;
  }

  path(path: LaidPath): void {
    const { x, y, z, count } = path;
    let from = -1;
    for (let i = 0; i < count; i += 1) {
      const isIn =
        i < count - 1 &&
        this.#isAtHeight((z[i]! + z[i + 1]!) / 2) &&
        comesIn(this.#zone, x[i]!, y[i]!, x[i + 1]!, y[i + 1]!);
      if (isIn && from < 0) from = i;
      if (!isIn && from >= 0) {
        this.#keep(path, from, i);
        from = -1;
      }
    }
  }

  #keep(path: LaidPath, from: number, to: number): void {
    const { x, y, z, feed, count, height, isClosed, begins, ends, line, tool, number } = path;
    this.#corners += to - from + 1;
    if (this.#corners > MOST_CORNERS) {
      this.#isCut = true;
      return;
    }
    const points = new Float64Array(2 * (to - from + 1));
    for (let i = from; i <= to; i += 1) {
      points[2 * (i - from)] = x[i]!;
      points[2 * (i - from) + 1] = y[i]!;
    }
    this.#paths.push({
      path: number,
      z: z[(from + to) >> 1]!,
      height,
      points,
      feeds: feed.slice(from, to),
      isClosed,
      begins: begins && from === 0,
      ends: ends && to === count - 1,
      line,
      tool,
    });
  }

  travel(travel: Travel): void {
    const { from, to, over } = travel;
    if (!this.#isAtHeight(over) || !comesIn(this.#zone, from.x, from.y, to.x, to.y)) return;
    if (this.#travels.length >= MOST_TRAVELS) this.#isCut = true;
    else this.#travels.push(travel);
  }

  near(): Near {
    return { paths: this.#paths, travels: this.#travels, isCut: this.#isCut };
  }
}

/** Keeps what lies near some thin sections. */
export class NearPaths implements PathHandler {
  readonly #all: readonly Gathering[];

  constructor(places: readonly Place[]) {
    this.#all = places.map((place) => new Gathering(place));
  }

  path(path: LaidPath): void {
    for (const one of this.#all) one.path(path);
  }

  travel(travel: Travel): void {
    for (const one of this.#all) one.travel(travel);
  }

  /** What was kept for each section, in their order. */
  end(): readonly { readonly place: Place; readonly near: Near }[] {
    return this.#all.map((one) => ({ place: one.place, near: one.near() }));
  }
}
