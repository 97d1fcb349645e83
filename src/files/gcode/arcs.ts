/** Arcs as firmwares draw them: where they run, and as chords. */

/** An arc in its plane, from a start that is known. */
export interface Arc {
  readonly centre: readonly [a: number, b: number];
  /** Radius at the start and at the end: files round both. */
  readonly radii: readonly [from: number, to: number];
  /** Direction of the start from the centre [rad], and by how much it turns, positive counter-clockwise. */
  readonly from: number;
  readonly turn: number;
}

/** Radii of the two ends may differ by this share, or by this much [mm]: centres are rounded to some digits as well. */
const SAME_RADIUS = 0.01;
const ROUNDING = 0.05;
/** Chords stay within this of the arc [mm]. */
const CHORD = 0.005;
/** A chord spans no more than this [rad], however small the arc. */
const WIDEST = Math.PI / 4;
const MOST_CHORDS = 20_000;
const WHOLE = 2 * Math.PI;

type Flat = readonly [a: number, b: number];

/** From one direction to another, the way that is asked for; the whole way round where they are the same. */
function turnBetween(from: number, to: number, isClockwise: boolean): number {
  const turn = isClockwise ? from - to : to - from;
  // What rounding leaves of no turn at all is a whole one.
  const forward = ((turn % WHOLE) + WHOLE) % WHOLE;
  const whole = forward < 1e-9 || WHOLE - forward < 1e-12 ? WHOLE : forward;
  return isClockwise ? -whole : whole;
}

/**
 * The arc round a centre.
 *
 * @param start - in its plane [mm]
 * @param end - in its plane [mm]; the start itself for a full circle
 * @param centre - in its plane [mm]
 * @param isClockwise - as seen against the third axis [-]
 * @returns the arc; undefined where the centre does not go with the ends
 */
export function arcRound(start: Flat, end: Flat, centre: Flat, isClockwise: boolean): Arc | undefined {
  const [p, q] = [start[0] - centre[0], start[1] - centre[1]];
  const [s, t] = [end[0] - centre[0], end[1] - centre[1]];
  const radii = [Math.hypot(p, q), Math.hypot(s, t)] as const;
  const room = Math.max(ROUNDING, SAME_RADIUS * radii[0]);
  if (!(radii[0] > 0) || !(Math.abs(radii[0] - radii[1]) <= room)) return undefined;
  const from = Math.atan2(q, p);
  const isWhole = start[0] === end[0] && start[1] === end[1];
  const to = isWhole ? from : Math.atan2(t, s);
  return { centre, radii, from, turn: turnBetween(from, to, isClockwise) };
}

/**
 * The arc of a radius.
 *
 * @param radius - positive for the shorter way, negative for the longer [mm]
 * @returns the arc; undefined where the ends are one, or farther apart than two radii
 */
export function arcOfRadius(start: Flat, end: Flat, radius: number, isClockwise: boolean): Arc | undefined {
  const [dx, dy] = [end[0] - start[0], end[1] - start[1]];
  const chord = Math.hypot(dx, dy);
  const size = Math.abs(radius);
  if (!(chord > 0) || !(chord <= 2 * size + ROUNDING)) return undefined;
  const off = Math.sqrt(Math.max(0, size ** 2 - (chord / 2) ** 2));
  // Of the two centres the one at the left of the way from start to end gives the shorter arc counter-clockwise.
  const side = isClockwise === radius > 0 ? -1 : 1;
  const centre = [
    (start[0] + end[0]) / 2 - (side * off * dy) / chord,
    (start[1] + end[1]) / 2 + (side * off * dx) / chord,
  ] as const;
  return arcRound(start, end, centre, isClockwise);
}

/** Into how many chords an arc is cut. */
export function chordsOf({ radii, turn }: Arc): number {
  const radius = Math.max(radii[0], radii[1]);
  const spans = radius > CHORD ? 2 * Math.acos(1 - CHORD / radius) : WIDEST;
  return Math.min(MOST_CHORDS, Math.max(1, Math.ceil(Math.abs(turn) / Math.min(spans, WIDEST))));
}

/** Length of the way in the plane [mm]. */
export function lengthOf({ radii, turn }: Arc): number {
  return (Math.abs(turn) * (radii[0] + radii[1])) / 2;
}

/** The place after a share of the turn. */
export function placeAt({ centre, radii, from, turn }: Arc, share: number): Flat {
  const radius = radii[0] + share * (radii[1] - radii[0]);
  const angle = from + share * turn;
  return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
}
