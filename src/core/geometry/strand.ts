/** Curves cut into short segments, kept so that near ones are found fast: what least gaps are looked for between. */
import type { Mm } from '../units.ts';
import type { MiddleLine } from './band.ts';
import { spansOf } from './flatten.ts';
import type { Path, Point } from './outline.ts';
import { distance, sweep } from './vector.ts';

/** Segments that are tried together: few enough that a circle fits them closely. */
const BUNCH = 4;
/** How far chords of an edge lie from its arcs [mm]: well below any clearance, though cubics make the distance good. */
const SAGITTA: Mm = 0.005;

/** A middle line with its thickness, or an edge of none. */
export interface Strand {
  readonly count: number;
  /** Ends of the segments [mm], one more than there are segments; so are the next four. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Half the thickness [mm]. */
  readonly half: Float64Array;
  /** Distance from the first end [mm]. */
  readonly along: Float64Array;
  /** Direction [rad]. */
  readonly angle: Float64Array;
  /** Slope of the curve against the chord of each segment, at its start and at its end [-]. */
  readonly slopes: Float64Array;
  /** How far a segment with its thickness reaches from its middle [mm]. */
  readonly reach: Float64Array;
  /** Centre and radius of a circle round every bunch of segments [mm]. */
  readonly bunches: Float64Array;
}

/** A member in one state. */
export function bandStrand({ x, y, angle, thickness }: MiddleLine): Strand {
  const count = x.length - 1;
  const slopes = new Float64Array(2 * count);
  for (let i = 0; i < count; i += 1) {
    const [dx, dy] = [x[i + 1]! - x[i]!, y[i + 1]! - y[i]!];
    slopes[2 * i] = slopeOf(angle[i]!, dx, dy);
    slopes[2 * i + 1] = slopeOf(angle[i + 1]!, dx, dy);
  }
  const half = Float64Array.from({ length: x.length }, (_, i) => thickness[i]! / 2);
  return strandOf(Float64Array.from(x), Float64Array.from(y), half, Float64Array.from(angle), slopes);
}

/** A closed outline, its arcs as cubics that touch them in the middle. */
export function edgeStrand(path: Path): Strand {
  const points: Point[] = [path.start];
  const slopes: number[] = [];
  for (const { start, piece } of spansOf(path)) {
    const turn = piece.kind === 'arc' ? sweep(start, piece) : 0;
    const chords = piece.kind === 'arc' ? Math.ceil(Math.abs(turn) / chordTurn(distance(start, piece.centre))) : 1;
    for (let k = 1; k <= chords; k += 1) {
      points.push(piece.kind === 'arc' && k < chords ? turned(start, piece.centre, (turn * k) / chords) : piece.to);
      const slope = 2 * Math.tan(turn / chords / 4);
      slopes.push(-slope, slope);
    }
  }
  const [x, y] = [Float64Array.from(points, (point) => point.x), Float64Array.from(points, (point) => point.y)];
  const none = new Float64Array(points.length);
  return strandOf(x, y, none, none, Float64Array.from(slopes));
}

/** How far a circle turns over one chord [rad]. */
function chordTurn(radius: Mm): number {
  return 2 * Math.acos(Math.max(0, 1 - SAGITTA / radius));
}

function turned({ x, y }: Point, centre: Point, turn: number): Point {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [dx, dy] = [x - centre.x, y - centre.y];
  return { x: centre.x + cos * dx - sin * dy, y: centre.y + sin * dx + cos * dy };
}

/** A strand turned about the origin, then moved. */
export function movedStrand(strand: Strand, to: Point, turn: number): Strand {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const x = strand.x.map((was, i) => to.x + cos * was - sin * strand.y[i]!);
  const y = strand.y.map((was, i) => to.y + sin * strand.x[i]! + cos * was);
  return { ...strand, x, y, bunches: bunched(x, y, strand.reach) };
}

function strandOf(
  x: Float64Array,
  y: Float64Array,
  half: Float64Array,
  angle: Float64Array,
  slopes: Float64Array,
): Strand {
  const count = x.length - 1;
  const along = new Float64Array(count + 1);
  const reach = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    const length = lengthOf(x[i + 1]! - x[i]!, y[i + 1]! - y[i]!);
    along[i + 1] = along[i]! + length;
    // A cubic between two slopes stays within 4/27 of its length times each of them.
    const bulge = (4 / 27) * length * (Math.abs(slopes[2 * i]!) + Math.abs(slopes[2 * i + 1]!));
    reach[i] = length / 2 + bulge + Math.max(half[i]!, half[i + 1]!);
  }
  return { count, x, y, half, along, angle, slopes, reach, bunches: bunched(x, y, reach) };
}

/** Slope of a direction against a chord. */
function slopeOf(angle: number, dx: Mm, dy: Mm): number {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (dx * sin - dy * cos) / (dx * cos + dy * sin);
}

function bunched(x: Float64Array, y: Float64Array, reach: Float64Array): Float64Array {
  const count = reach.length;
  const bunches = new Float64Array(3 * Math.ceil(count / BUNCH));
  for (let first = 0, k = 0; first < count; first += BUNCH, k += 3) {
    const last = Math.min(first + BUNCH, count);
    const cx = (x[first]! + x[last]!) / 2;
    const cy = (y[first]! + y[last]!) / 2;
    let radius = 0;
    for (let i = first; i < last; i += 1) {
      const away = lengthOf((x[i]! + x[i + 1]!) / 2 - cx, (y[i]! + y[i + 1]!) / 2 - cy);
      radius = Math.max(radius, away + reach[i]!);
    }
    bunches.set([cx, cy, radius], k);
  }
  return bunches;
}

/** A circle round a whole strand with its thickness. */
export interface Circle {
  readonly x: Mm;
  readonly y: Mm;
  readonly radius: Mm;
}

export function roundOf({ bunches }: Strand): Circle {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let k = 0; k < bunches.length; k += 3) {
    const [x, y, radius] = [bunches[k]!, bunches[k + 1]!, bunches[k + 2]!];
    [left, right] = [Math.min(left, x - radius), Math.max(right, x + radius)];
    [low, high] = [Math.min(low, y - radius), Math.max(high, y + radius)];
  }
  const [x, y] = [(left + right) / 2, (low + high) / 2];
  let reach = 0;
  for (let k = 0; k < bunches.length; k += 3) {
    reach = Math.max(reach, lengthOf(bunches[k]! - x, bunches[k + 1]! - y) + bunches[k + 2]!);
  }
  return { x, y, radius: reach };
}

/** A circle round several strands; of none it has no size. */
export function roundOfAll(strands: readonly Strand[]): Circle {
  const rounds = strands.map(roundOf);
  const [first = { x: 0, y: 0, radius: 0 }] = rounds.toSorted((a, b) => b.radius - a.radius);
  const radius = Math.max(
    first.radius,
    ...rounds.map((one) => lengthOf(one.x - first.x, one.y - first.y) + one.radius),
  );
  return { ...first, radius };
}

/** How far two circles are clear of each other, below 0 where they overlap. */
export function clearOf(a: Circle, b: Circle): Mm {
  return lengthOf(b.x - a.x, b.y - a.y) - a.radius - b.radius;
}

/** Where two segments come nearest, surfaces and all. Written over by every look, since there are very many. */
export interface Meeting {
  /** Between the surfaces, below 0 where they overlap [mm]. */
  gap: Mm;
  /** Segments, and how far along each [0 to 1]. */
  i: number;
  u: number;
  j: number;
  v: number;
  /** Places on the two middle lines [mm]. */
  ax: Mm;
  ay: Mm;
  bx: Mm;
  by: Mm;
}

export const newMeeting = (): Meeting => ({ gap: Infinity, i: 0, u: 0, j: 0, v: 0, ax: 0, ay: 0, bx: 0, by: 0 });

/**
 * Visits every pair of segments that may be nearer than a limit, which may fall on the way. Of a strand with itself each
 * pair comes once, and only those with more than `apart` of it between them. Bunches may be passed over together: asked
 * are their first segments, the segments past their last, and how far they are clear of each other.
 */
export function forNear(
  a: Strand,
  b: Strand,
  limit: { readonly gap: Mm },
  visit: (i: number, j: number) => void,
  apart: Mm = 0,
  isPassedOver?: (firstA: number, lastA: number, firstB: number, lastB: number, clear: Mm) => boolean,
): void {
  const isSelf = a === b;
  for (let ka = 0, firstA = 0; firstA < a.count; ka += 3, firstA += BUNCH) {
    const lastA = Math.min(firstA + BUNCH, a.count);
    for (let kb = isSelf ? ka : 0, firstB = isSelf ? firstA : 0; firstB < b.count; kb += 3, firstB += BUNCH) {
      const radii = a.bunches[ka + 2]! + b.bunches[kb + 2]!;
      const room = limit.gap + radii;
      const dx = a.bunches[ka]! - b.bunches[kb]!;
      const dy = a.bunches[ka + 1]! - b.bunches[kb + 1]!;
      if (room < 0 || dx * dx + dy * dy > room * room) continue;
      const lastB = Math.min(firstB + BUNCH, b.count);
      const clear = lengthOf(dx, dy) - radii;
      if (clear > 0 && isPassedOver?.(firstA, lastA, firstB, lastB, clear)) continue;
      for (let i = firstA; i < lastA; i += 1) {
        for (let j = firstB; j < lastB; j += 1) {
          if (isSelf && (j < i + 2 || a.along[j + 1]! - a.along[i]! <= apart)) continue;
          if (mayBeNear(a, i, b, j, limit.gap)) visit(i, j);
        }
      }
    }
  }
}

function mayBeNear(a: Strand, i: number, b: Strand, j: number, limit: Mm): boolean {
  const room = limit + a.reach[i]! + b.reach[j]!;
  const dx = (a.x[i]! + a.x[i + 1]! - b.x[j]! - b.x[j + 1]!) / 2;
  const dy = (a.y[i]! + a.y[i + 1]! - b.y[j]! - b.y[j + 1]!) / 2;
  return room >= 0 && dx * dx + dy * dy <= room * room;
}

/**
 * Where two segments come nearest: found on their chords, then moved onto the curves, which are cubics through the ends
 * with the directions there. What is nearest on the chords is so on the curves but for terms of second order.
 */
export function nearest(a: Strand, i: number, b: Strand, j: number, out: Meeting): void {
  // Written out one by one: this is done thousands of times for every frame.
  const ax = a.x[i]!;
  const ay = a.y[i]!;
  const bx = b.x[j]!;
  const by = b.y[j]!;
  const px = a.x[i + 1]! - ax;
  const py = a.y[i + 1]! - ay;
  const qx = b.x[j + 1]! - bx;
  const qy = b.y[j + 1]! - by;
  const pp = px * px + py * py;
  const qq = qx * qx + qy * qy;
  const pq = px * qx + py * qy;
  const pr = px * (ax - bx) + py * (ay - by);
  const qr = qx * (ax - bx) + qy * (ay - by);
  const flat = pp * qq - pq * pq;
  let u = flat > 1e-12 * pp * qq ? clamped((pq * qr - qq * pr) / flat) : thickerEnd(a, i, b, j, pq);
  const v = clamped((pq * u + qr) / qq);
  u = clamped((pq * v - pr) / pp);
  out.i = i;
  out.u = u;
  out.j = j;
  out.v = v;
  const riseA = rise(a, i, u);
  const riseB = rise(b, j, v);
  out.ax = ax + u * px - riseA * py;
  out.ay = ay + u * py + riseA * px;
  out.bx = bx + v * qx - riseB * qy;
  out.by = by + v * qy + riseB * qx;
  out.gap = lengthOf(out.bx - out.ax, out.by - out.ay) - halfAt(a, i, u) - halfAt(b, j, v);
}

/** Of segments side by side: where along the first they are thickest together, or its middle. */
function thickerEnd(a: Strand, i: number, b: Strand, j: number, sense: number): number {
  const grows = a.half[i + 1]! - a.half[i]! + Math.sign(sense) * (b.half[j + 1]! - b.half[j]!);
  return 0.5 + 0.5 * Math.sign(grows);
}

/** Quicker than the careful length of a vector, and no worse for lengths in mm. */
export function lengthOf(dx: Mm, dy: Mm): Mm {
  return Math.sqrt(dx * dx + dy * dy);
}

/** Within 0 and 1; a segment without length has no share and counts from its start. */
function clamped(share: number): number {
  if (!(share > 0)) return 0;
  return share < 1 ? share : 1;
}

/** How far the curve lies to the left of its chord, over the length of the chord. */
function rise({ slopes }: Strand, i: number, u: number): number {
  return u * (1 - u) * (slopes[2 * i]! * (1 - u) - slopes[2 * i + 1]! * u);
}

export function halfAt({ half }: Strand, i: number, u: number): Mm {
  return half[i]! + u * (half[i + 1]! - half[i]!);
}

export function alongAt({ along }: Strand, i: number, u: number): Mm {
  return along[i]! + u * (along[i + 1]! - along[i]!);
}

export function angleAt({ angle }: Strand, i: number, u: number): number {
  return angle[i]! + u * (angle[i + 1]! - angle[i]!);
}
