import type { Mm } from '../units.ts';
import { sideOf, type MiddleLine } from './band.ts';
import { isInside, type Loop } from './loop.ts';
import type { Point } from './outline.ts';
import { fromSegment } from './segment.ts';
import { along, from } from './vector.ts';

/** An end of a band. */
export interface BandEnd {
  readonly at: Point;
  readonly thickness: Mm;
  /** Whether it lies in a pad or on its edge. */
  readonly isOnPad: boolean;
}

/** A band is carried on into its pad by so many thicknesses first, then in steps, until both its corners are covered. */
const FIRST = 0.05;
const STEP = 0.25;
const STEPS = 40;
/** Curvatures to add when the band would miss its pad otherwise, over its thickness [-]. */
const HARDER = [0.125, 0.25, 0.5, 1];
/** Halvings of one sample's way when looking where a side of a band leaves a pad: far below what is kept of a place. */
const HALVINGS = 24;

/**
 * Both ends of a band, and whether pads hold them.
 *
 * @param line - middle line [mm] and [rad]
 * @param solid - outlines of all pads [mm]
 * @param reach - how far off a pad an end may lie and still be on it [mm]
 * @returns the near end and the far end
 */
export function bandEnds(line: MiddleLine, solid: readonly Loop[], reach: Mm): readonly [BandEnd, BandEnd] {
  const endAt = (i: number): BandEnd => {
    const at = sideOf(line, i, 0);
    const isOnEdge = solid.some((loop) => loop.some((b, k) => fromSegment(at, loop.at(k - 1) ?? b, b) < reach));
    return { at, thickness: line.thickness[i] ?? 0, isOnPad: isOnEdge || isInside(solid, at) };
  };
  return [endAt(0), endAt(line.x.length - 1)];
}

/**
 * A band carried on into the pads that hold it, bending on as it does at its ends if it can, so that no wedge of air is left
 * between its square end and the edge of a round pad, or of one that it leaves at a slant.
 *
 * @param line - middle line [mm] and [rad]
 * @param ends - its ends, near and far [mm]
 * @param solid - outlines of all pads [mm]
 * @returns the longer middle line [mm] and [rad]
 */
export function sunk(line: MiddleLine, ends: readonly BandEnd[], solid: readonly Loop[]): MiddleLine {
  const [near, far] = ends;
  const count = line.x.length;
  const before = near?.isOnPad ? onwards(line, 0, 1, solid).toReversed() : [];
  const after = far?.isOnPad ? onwards(line, count - 1, count - 2, solid) : [];
  const whole = (own: ArrayLike<number>, key: keyof Sample) => [
    ...before.map((sample) => sample[key]),
    ...Array.from(own),
    ...after.map((sample) => sample[key]),
  ];
  return {
    x: whole(line.x, 'x'),
    y: whole(line.y, 'y'),
    angle: whole(line.angle, 'angle'),
    thickness: whole(line.thickness, 'thickness'),
  };
}

interface Sample extends Point {
  readonly angle: number;
  readonly thickness: Mm;
}

/**
 * Samples beyond an end, from the end on: with the curvature between it and the sample next to it, or else straight, or
 * bent the harder the later it would come in otherwise.
 */
function onwards(line: MiddleLine, end: number, next: number, solid: readonly Loop[]): readonly Sample[] {
  const [at, beside] = [sideOf(line, end, 0), sideOf(line, next, 0)];
  const [angle, thickness] = [line.angle[end] ?? 0, line.thickness[end] ?? 0];
  const sign = end > next ? 1 : -1;
  const own = (sign * (angle - (line.angle[next] ?? angle))) / Math.hypot(at.x - beside.x, at.y - beside.y);
  const start = { ...at, angle, thickness };
  const tried = [[own], [0], ...HARDER.map((bend) => [own + bend / thickness, own - bend / thickness])];
  for (const curvatures of tried) {
    const ways = curvatures.flatMap((curvature) => wayIn(start, sign, curvature, solid) ?? []);
    const [shortest] = ways.toSorted((a, b) => a.length - b.length);
    if (shortest) return shortest.samples;
  }
  return [bentOn(start, sign * thickness * FIRST, own)];
}

interface WayIn {
  readonly length: number;
  readonly samples: readonly Sample[];
}

/** The samples of an arc up to where both corners of the band are covered, unless its middle has come out again before. */
function wayIn(start: Sample, sign: number, curvature: number, solid: readonly Loop[]): WayIn | undefined {
  const samples: Sample[] = [];
  let wasIn = false;
  for (let step = 0; step <= STEPS; step += 1) {
    const sample = bentOn(start, sign * start.thickness * (step === 0 ? FIRST : step * STEP), curvature);
    samples.push(sample);
    // The chords of a round pad may lie just short of its edge, so the first samples may be outside still.
    const isIn = isInside(solid, sample);
    if (wasIn && !isIn) return undefined;
    wasIn = isIn;
    const corners = [0.5, -0.5].map((share) => cornerOf(sample, share));
    if (corners.every((corner) => isInside(solid, corner))) return { length: step, samples };
  }
  return undefined;
}

/** The sample so far along an arc from another, backwards when below 0. */
function bentOn({ x, y, angle, thickness }: Sample, way: Mm, curvature: number): Sample {
  const half = (curvature * way) / 2;
  // A chord of an arc: its length over that of the arc is sin(α/2)/(α/2).
  const chord = half === 0 ? way : (way * Math.sin(half)) / half;
  return {
    x: x + chord * Math.cos(angle + half),
    y: y + chord * Math.sin(angle + half),
    angle: angle + 2 * half,
    thickness,
  };
}

/**
 * The corners of a root: where the sides of a band first come out of the pads, walked from one of its ends.
 *
 * @param line - middle line carried on into its pads [mm] and [rad]
 * @param end - which end to walk from [-]
 * @param solid - outlines of all pads [mm]
 * @returns up to two places [mm]; a side that starts in the open has none
 */
export function rootCorners(line: MiddleLine, end: 'near' | 'far', solid: readonly Loop[]): readonly Point[] {
  const count = line.x.length;
  const order = Array.from({ length: count }, (_, i) => (end === 'near' ? i : count - 1 - i));
  return [0.5, -0.5].flatMap((share) => {
    const side = order.map((i) => sideOf(line, i, share));
    const out = side.findIndex((place) => !isInside(solid, place));
    const [inner, outer] = [side[out - 1], side[out]];
    return inner && outer ? [crossing(solid, inner, outer)] : [];
  });
}

/** Where the way from a place inside to one outside crosses the edge. */
function crossing(solid: readonly Loop[], inner: Point, outer: Point): Point {
  const at = (share: number) => along(inner, from(inner, outer), share);
  let [inside, outside] = [0, 1];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (inside + outside) / 2;
    if (isInside(solid, at(middle))) inside = middle;
    else outside = middle;
  }
  return at(inside);
}

function cornerOf({ x, y, angle, thickness }: Sample, share: number): Point {
  return { x: x - share * thickness * Math.sin(angle), y: y + share * thickness * Math.cos(angle) };
}
