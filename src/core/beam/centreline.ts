/** The middle line of a member as printed, as a smooth curve of one parameter u from 0 to 1. */
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import type { Member, Shape } from './model.ts';

export interface Centreline {
  readonly start: Point;
  /** Direction at the start [rad]. */
  readonly heading: number;
  /** Length per unit of u [mm], > 0 inside; it may vanish at an end. */
  speed(u: number): number;
  /** As-printed curvature [1/mm], left positive. */
  curvature(u: number): number;
  /** Thickness in the plane [mm]. */
  thickness(u: number): number;
  readonly length: Mm;
}

interface Curve {
  readonly heading: number;
  readonly speed: (u: number) => number;
  readonly curvature: (u: number) => number;
  readonly length: Mm;
}

/** A turn smaller than this bends the chord by less than its own round-off. */
const STRAIGHT_BELOW = 1e-9;

/**
 * The middle line of a member between two points, parametrised so that every family of shape is smooth in u.
 *
 * A notch runs in the angle of its ellipse instead of along the chord: its thickness has an infinite slope at the
 * thick end, which no polynomial follows.
 *
 * @param member - checked member [-]
 * @param from - its first node [mm]
 * @param to - its second node [mm]
 * @returns start [mm], heading [rad], speed [mm], curvature [1/mm], thickness [mm], length [mm]
 */
export function centrelineOf(member: Member, from: Point, to: Point): Centreline {
  const { thickness } = member;
  if (typeof thickness === 'object' && thickness.kind === 'notch') {
    return { start: from, ...notched(thickness, from, to) };
  }
  const curve = curveOf(member.shape, from, to);
  return { start: from, ...curve, thickness: plainThickness(thickness) };
}

function curveOf(shape: Shape, from: Point, to: Point): Curve {
  switch (shape.kind) {
    case 'straight':
      return straight(from, to);
    case 'arc':
      return Math.abs(shape.turn) < STRAIGHT_BELOW ? straight(from, to) : arc(shape.turn, from, to);
    case 'wave':
      return wave(shape.rise, from, to);
    case 'rise':
      return halfWave(shape.heading, from, to);
    case 'spiral':
      return spiral(shape.centre, shape.turns, from, to);
  }
}

function chordOf(from: Point, to: Point): { readonly length: Mm; readonly heading: number } {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return { length: Math.hypot(dx, dy), heading: Math.atan2(dy, dx) };
}

function straight(from: Point, to: Point): Curve {
  const { length, heading } = chordOf(from, to);
  return { heading, speed: () => length, curvature: () => 0, length };
}

function arc(turn: number, from: Point, to: Point): Curve {
  const chord = chordOf(from, to);
  const length = (chord.length * turn) / (2 * Math.sin(turn / 2));
  return { heading: chord.heading - turn / 2, speed: () => length, curvature: () => turn / length, length };
}

/** w = (h/2)(1 − cos 2πu) off the chord. */
function wave(rise: Mm, from: Point, to: Point): Curve {
  const chord = chordOf(from, to);
  const k = 2 * Math.PI;
  const slope = (u: number) => ((rise * k) / (2 * chord.length)) * Math.sin(k * u);
  const speed = (u: number) => chord.length * Math.hypot(1, slope(u));
  const bend = (u: number) => ((rise * k * k) / (2 * chord.length ** 2)) * Math.cos(k * u);
  const curvature = (u: number) => bend(u) / Math.hypot(1, slope(u)) ** 3;
  return { heading: chord.heading, speed, curvature, length: lengthOf(speed) };
}

/** w = r(1 − cos πu)/2 off the heading, u·a along it. */
function halfWave(heading: number, from: Point, to: Point): Curve {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const a = dx * Math.cos(heading) + dy * Math.sin(heading);
  const r = dy * Math.cos(heading) - dx * Math.sin(heading);
  const slope = (u: number) => ((r * Math.PI) / (2 * a)) * Math.sin(Math.PI * u);
  const speed = (u: number) => a * Math.hypot(1, slope(u));
  const bend = (u: number) => ((r * Math.PI * Math.PI) / (2 * a * a)) * Math.cos(Math.PI * u);
  const curvature = (u: number) => bend(u) / Math.hypot(1, slope(u)) ** 3;
  return { heading, speed, curvature, length: lengthOf(speed) };
}

/** r grows evenly from the radius of the first node to that of the second over the whole angle. */
function spiral(centre: Point, turns: number, from: Point, to: Point): Curve {
  const [r0, r1] = [Math.hypot(from.x - centre.x, from.y - centre.y), Math.hypot(to.x - centre.x, to.y - centre.y)];
  const sweep = 2 * Math.PI * turns;
  const a = (r1 - r0) / sweep;
  const radius = (u: number) => r0 + (r1 - r0) * u;
  const speed = (u: number) => Math.hypot(radius(u), a) * Math.abs(sweep);
  const curvature = (u: number) => {
    const r = radius(u);
    return (Math.sign(sweep) * (r * r + 2 * a * a)) / Math.hypot(r, a) ** 3;
  };
  const ray = Math.atan2(from.y - centre.y, from.x - centre.x);
  // Outward along the ray by a, across it by r; both reversed where the angle runs clockwise.
  const heading = ray + Math.atan2(Math.sign(sweep) * r0, Math.sign(sweep) * a);
  return { heading, speed, curvature, length: lengthOf(speed) };
}

function notched(
  { least, deep, part }: { readonly least: Mm; readonly deep: Mm; readonly part: 'whole' | 'opening' | 'closing' },
  from: Point,
  to: Point,
): Omit<Centreline, 'start'> {
  const { length, heading } = chordOf(from, to);
  const first = part === 'closing' ? 0 : -Math.PI / 2;
  const sweep = part === 'whole' ? Math.PI : Math.PI / 2;
  // x runs as a·sin p: over the whole notch from −a to a.
  const along = part === 'whole' ? length / 2 : length;
  return {
    heading,
    speed: (u) => along * sweep * Math.cos(first + sweep * u),
    curvature: () => 0,
    thickness: (u) => least + 2 * deep * (1 - Math.cos(first + sweep * u)),
    length,
  };
}

function plainThickness(thickness: Exclude<Member['thickness'], { kind: 'notch' }>) {
  if (typeof thickness === 'number') return () => thickness;
  // Exact where u is the share of the length, which it is for straight lines and arcs; a taper of others is even in u.
  return (u: number) => thickness.from + (thickness.to - thickness.from) * u;
}

/** Length by Gauss's rule of five points on many stretches: the curves are smooth, and 1e-12 is far below any need. */
function lengthOf(speed: (u: number) => number): Mm {
  const stretches = 64;
  const half = 0.5 / stretches;
  let total = 0;
  for (let i = 0; i < stretches; i += 1) {
    const middle = (i + 0.5) / stretches;
    for (const [at, weight] of GAUSS_5) total += weight * half * speed(middle + half * at);
  }
  return total;
}

const GAUSS_5: readonly (readonly [number, number])[] = [
  [-0.906179845938664, 0.23692688505618908],
  [-0.5384693101056831, 0.47862867049936647],
  [0, 0.5688888888888889],
  [0.5384693101056831, 0.47862867049936647],
  [0.906179845938664, 0.23692688505618908],
];
