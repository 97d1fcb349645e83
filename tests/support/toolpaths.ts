/**
 * Toolpaths of known beads, from one description both as text and as what lies near a section: every width, gap, start point and
 * height in them is set here, so that what is told of them can be held against it.
 */
import type { Point } from '../../src/core/geometry/outline.ts';
import {
  FEED,
  FLAGS,
  JUMP,
  LAID,
  LENGTH,
  LINE,
  MOVE_SIZE,
  X,
  Y,
  Z,
  type MoveSink,
} from '../../src/core/inspect/toolpath/moves.ts';
import type { Near, NearPath, NearTravel } from '../../src/core/inspect/toolpath/near.ts';

/** A bead: its centre line, and how wide it is on each piece [mm]. One that comes back to its first corner is a contour. */
export interface Bead {
  readonly points: readonly Point[];
  readonly widths: number | readonly number[];
}

/** A move that lays nothing, between two beads; lifted by so much [mm]. */
export interface Hop {
  readonly from: Point;
  readonly to: Point;
  readonly lifted: number;
}

export interface Layer {
  /** Its top, and how high it is [mm]. */
  readonly z: number;
  readonly height: number;
  readonly beads: readonly Bead[];
  readonly hops?: readonly Hop[];
}

export interface Toolpath {
  readonly diameter: number;
  readonly layers: readonly Layer[];
}

/**
 * Filament per length for a bead of known width: a strip with round sides, an ellipse where it is narrower than high. From the
 * rectangle, the circle and the ellipse, apart from the program's own inverse.
 */
function feedFor(width: number, height: number, diameter: number): number {
  const area =
    width >= height ? (width - height) * height + Math.PI * (height / 2) ** 2 : Math.PI * (width / 2) * (height / 2);
  return area / (Math.PI * (diameter / 2) ** 2);
}

const isContour = ({ points }: Bead): boolean => {
  const [first, last] = [points[0]!, points.at(-1)!];
  return points.length > 3 && Math.hypot(first.x - last.x, first.y - last.y) < 1e-6;
};

const widthAt = ({ widths }: Bead, piece: number) => (typeof widths === 'number' ? widths : widths[piece]!);

/** How a text is written: nothing of it changes what is laid. */
export interface Writing {
  readonly inch?: boolean;
  readonly relativeFeed?: boolean;
  /** Filament as volume [mm³]. */
  readonly volumetric?: boolean;
  /** Every piece in so many. */
  readonly pieces?: number;
  readonly numbered?: boolean;
}

class Text {
  readonly lines: string[] = [];
  readonly #writing: Writing;
  readonly #feedUnit: number;
  #fed = 0;

  constructor(writing: Writing, diameter: number) {
    this.#writing = writing;
    const volume = writing.volumetric ? Math.PI * (diameter / 2) ** 2 : 1;
    this.#feedUnit = writing.inch && !writing.volumetric ? 25.4 : 1 / volume;
  }

  say(line: string): void {
    this.lines.push(this.#writing.numbered ? `N${this.lines.length + 1} ${line}` : line);
  }

  length(value: number): string {
    return (this.#writing.inch ? value / 25.4 : value).toFixed(this.#writing.inch ? 9 : 6);
  }

  go({ x, y }: Point, feed = 0): void {
    const place = `X${this.length(x)} Y${this.length(y)}`;
    if (feed === 0) return this.say(`G0 ${place}`);
    this.#fed += feed;
    const told = (this.#writing.relativeFeed ? feed : this.#fed) / this.#feedUnit;
    this.say(`G1 ${place} E${told.toFixed(8)}`);
  }
}

const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
});

function writeBead(out: Text, bead: Bead, height: number, diameter: number, pieces: number): void {
  const [first, ...others] = bead.points;
  out.go(first!);
  let from = first!;
  for (const [i, to] of others.entries()) {
    const feed = feedFor(widthAt(bead, i), height, diameter) * Math.hypot(to.x - from.x, to.y - from.y);
    for (let k = 1; k <= pieces; k += 1) out.go(between(from, to, k / pieces), feed / pieces);
    from = to;
  }
}

/**
 * The text of a toolpath.
 *
 * @param toolpath - what is laid [mm]
 * @param writing - units, how filament is told, numbers of lines
 */
export function gcodeOf({ diameter, layers }: Toolpath, writing: Writing = {}): string {
  const out = new Text(writing, diameter);
  out.say(writing.inch ? 'G20' : 'G21');
  out.say('G90');
  out.say(writing.relativeFeed ? 'M83' : 'M82');
  if (writing.volumetric) out.say(`M200 D${diameter}`);
  out.say('G92 E0');
  for (const { z, height, beads, hops = [] } of layers) {
    out.say(`G0 Z${out.length(z)}`);
    for (const bead of beads) writeBead(out, bead, height, diameter, writing.pieces ?? 1);
    for (const { from, to, lifted } of hops) {
      out.go(from);
      if (lifted > 0) out.say(`G0 Z${out.length(z + lifted)}`);
      out.go(to);
      if (lifted > 0) out.say(`G0 Z${out.length(z)}`);
    }
  }
  return `${out.lines.join('\n')}\n`;
}

/** The moves of a toolpath, as a reader hands them on. */
export function movesOf({ diameter, layers }: Toolpath, sink: MoveSink): void {
  const row = new Float64Array(MOVE_SIZE);
  let line = 0;
  const send = ({ x, y }: Point, z: number, feed = 0, flags = 0) => {
    const length = flags & JUMP ? 0 : Math.hypot(x - row[X]!, y - row[Y]!, z - row[Z]!);
    line += 1;
    row[X] = x;
    row[Y] = y;
    row[Z] = z;
    row[LENGTH] = length;
    row[FEED] = feed * length;
    row[LAID] = feed * length;
    row[FLAGS] = flags;
    row[LINE] = line;
    sink.take(row, 1);
  };
  send({ x: 0, y: 0 }, 0, 0, JUMP);
  for (const { z, height, beads, hops = [] } of layers) {
    for (const bead of beads) {
      for (const [i, point] of bead.points.entries())
        send(point, z, i === 0 ? 0 : feedFor(widthAt(bead, i - 1), height, diameter));
    }
    for (const { from, to, lifted } of hops) {
      send(from, z);
      if (lifted > 0) send(from, z + lifted);
      send(to, z + lifted);
      if (lifted > 0) send(to, z);
    }
  }
}

function nearPath(bead: Bead, { z, height }: Layer, diameter: number, path: number): NearPath {
  const { points } = bead;
  return {
    path,
    z,
    height,
    points: Float64Array.from(points.flatMap(({ x, y }) => [x, y])),
    feeds: Float64Array.from(points.slice(1), (_, i) => feedFor(widthAt(bead, i), height, diameter)),
    isClosed: isContour(bead),
    begins: true,
    ends: true,
    line: path + 1,
    tool: 0,
  };
}

/** Everything that is laid, as if all of it lay near; paths numbered in the order laid, and as many lines of text. */
export function nearOf({ diameter, layers }: Toolpath): Near {
  const paths: NearPath[] = [];
  const travels: NearTravel[] = [];
  for (const layer of layers) {
    for (const bead of layer.beads) paths.push(nearPath(bead, layer, diameter, paths.length));
    for (const { from, to, lifted } of layer.hops ?? [])
      travels.push({ from, to, z: layer.z + lifted, over: layer.z, line: paths.length });
  }
  return { paths, travels, isCut: false };
}

/** Carries every point of a toolpath elsewhere; widths stay. */
export function carried(toolpath: Toolpath, to: (point: Point) => Point): Toolpath {
  const layers = toolpath.layers.map((layer) => ({
    ...layer,
    beads: layer.beads.map((bead) => ({ ...bead, points: bead.points.map(to) })),
    hops: (layer.hops ?? []).map((hop) => ({ ...hop, from: to(hop.from), to: to(hop.to) })),
  }));
  return { ...toolpath, layers };
}

/** A turn about the origin, counter-clockwise [rad], then a shift [mm]. */
export function turned(angle: number, dx = 0, dy = 0): (point: Point) => Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return ({ x, y }) => ({ x: c * x - s * y + dx, y: s * x + c * y + dy });
}

/** Rolls the x axis up to an arc of a radius [mm] about a centre straight above the origin. */
export function rolled(radius: number): (point: Point) => Point {
  return ({ x, y }) => ({
    x: (radius - y) * Math.sin(x / radius),
    y: radius - (radius - y) * Math.cos(x / radius),
  });
}

/** Pieces no longer than a step, in the same line with the same width. */
export function split(toolpath: Toolpath, step: number): Toolpath {
  const layers = toolpath.layers.map((layer) => ({
    ...layer,
    beads: layer.beads.map((bead) => splitBead(bead, step)),
  }));
  return { ...toolpath, layers };
}

function splitBead(bead: Bead, step: number): Bead {
  const points: Point[] = [bead.points[0]!];
  const widths: number[] = [];
  for (const [i, to] of bead.points.slice(1).entries()) {
    const from = bead.points[i]!;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
    for (let k = 1; k <= count; k += 1) {
      points.push(k === count ? to : between(from, to, k / count));
      widths.push(widthAt(bead, i));
    }
  }
  return { points, widths };
}
