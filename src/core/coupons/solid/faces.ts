/** Level faces of a solid: closed ways along the edges of a plan, and triangles that fill them without leaving out a place. */
import earcut from 'earcut';
import { isInside, loopArea } from '../../geometry/loop.ts';
import { turnOf, type Spot } from './spot.ts';

/** From one place to another, what is to be filled at its left. */
export type Step = readonly [number, number];
type Round = readonly number[];

/**
 * Triangles that fill what lies at the left of closed ways.
 *
 * @param steps - all steps of the ways [-]
 * @param spots - places [µm]
 * @returns three places a triangle, counter-clockwise [-]; every step is a side of exactly one
 */
export function filled(steps: readonly Step[], spots: readonly Spot[]): readonly (readonly [number, number, number])[] {
  return facesOf(roundsOf(steps, spots), spots).flatMap((face) => {
    const triangles = trianglesOf(face, spots);
    const area = triangles.reduce((sum, [a, b, c]) => sum + turnOf(spots[a]!, spots[b]!, spots[c]!), 0);
    const asked = face.reduce((sum, round) => sum + areaOf(round, spots), 0);
    if (area !== asked) throw new RangeError(`a face of ${asked / 2} µm² was filled with ${area / 2}`);
    return triangles;
  });
}

/** Twice the area, exact. */
function areaOf(round: Round, spots: readonly Spot[]): number {
  const first = spots[round[0]!]!;
  return round.reduce((sum, spot, i) => sum + turnOf(first, spots[round.at(i - 1)!]!, spots[spot]!), 0);
}

/** Closed ways that pass no place twice. */
function roundsOf(steps: readonly Step[], spots: readonly Spot[]): readonly Round[] {
  const leaving = new Map<number, number[]>();
  for (const [from, to] of steps) leaving.set(from, [...(leaving.get(from) ?? []), to]);
  const rounds: Round[] = [];
  for (const [start] of steps) {
    while ((leaving.get(start)?.length ?? 0) > 0) rounds.push(...followed(start, leaving, spots));
  }
  return rounds;
}

/** Goes on from a start until nothing leads on, and cuts off each round as it closes. */
function followed(start: number, leaving: ReadonlyMap<number, number[]>, spots: readonly Spot[]): readonly Round[] {
  const rounds: Round[] = [];
  const way = [start];
  for (;;) {
    const at = way.at(-1)!;
    const choices = leaving.get(at) ?? [];
    if (choices.length === 0) return rounds;
    const next = sharpestLeft(way.at(-2), at, choices, spots);
    choices.splice(choices.indexOf(next), 1);
    const before = way.indexOf(next);
    if (before < 0) way.push(next);
    else rounds.push(way.splice(before + 1).concat(next));
  }
}

/** Where rounds touch, turning left as far as it goes keeps to the same face. */
function sharpestLeft(
  from: number | undefined,
  at: number,
  choices: readonly number[],
  spots: readonly Spot[],
): number {
  if (from === undefined || choices.length === 1) return choices[0]!;
  const here = spots[at]!;
  const bearing = (to: number) => Math.atan2(spots[to]!.y - here.y, spots[to]!.x - here.x);
  const back = bearing(from);
  const clockwise = (to: number) => (((back - bearing(to)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return choices.reduce((best, to) => (clockwise(to) < clockwise(best) ? to : best));
}

/** Outer rounds, each with the holes in it after it. */
function facesOf(rounds: readonly Round[], spots: readonly Spot[]): readonly (readonly Round[])[] {
  const loopOf = (round: Round) => round.map((spot) => spots[spot]!);
  const outers = rounds
    .filter((round) => areaOf(round, spots) > 0)
    .map((round) => ({ loop: loopOf(round), face: [round] }))
    .toSorted((a, b) => loopArea(a.loop) - loopArea(b.loop));
  for (const hole of rounds) {
    if (!(areaOf(hole, spots) < 0)) continue;
    // The middle of an edge lies on no other outline, which a corner may.
    const [a, b] = [spots[hole[0]!]!, spots[hole[1]!]!];
    const place = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    outers.find(({ loop }) => loopArea(loop) > -loopArea(loopOf(hole)) && isInside([loop], place))?.face.push(hole);
  }
  return outers.map(({ face }) => face);
}

function trianglesOf(face: readonly Round[], spots: readonly Spot[]): (readonly [number, number, number])[] {
  const round = face.flat();
  const starts = face.slice(1).map((_, i) => face.slice(0, i + 1).flat().length);
  const cut = earcut(
    round.flatMap((spot) => [spots[spot]!.x, spots[spot]!.y]),
    starts,
  );
  const sides = new Set(face.flatMap((each) => each.map((spot, i) => `${each.at(i - 1)} ${spot}`)));
  const triangles: (readonly [number, number, number])[] = [];
  for (let i = 0; i < cut.length; i += 3) {
    const [a, b, c] = [round[cut[i]!]!, round[cut[i + 1]!]!, round[cut[i + 2]!]!];
    const turn = turnOf(spots[a]!, spots[b]!, spots[c]!);
    if (turn !== 0) triangles.push(...splitAt(turn > 0 ? [a, b, c] : [a, c, b], round, sides, spots));
  }
  return triangles;
}

/** The filler leaves out places in the middle of straight runs, which neighbours have: they are let in again. */
function splitAt(
  triangle: readonly [number, number, number],
  round: Round,
  sides: ReadonlySet<string>,
  spots: readonly Spot[],
): readonly (readonly [number, number, number])[] {
  for (const side of [0, 1, 2]) {
    const [a, b, c] = [0, 1, 2].map((k) => triangle[(side + k) % 3]!) as [number, number, number];
    if (sides.has(`${a} ${b}`)) continue;
    const on = round.find((spot) => liesBetween(spots[spot]!, spots[a]!, spots[b]!));
    if (on === undefined) continue;
    return [[a, on, c] as const, [on, b, c] as const].flatMap((half) => splitAt(half, round, sides, spots));
  }
  return [triangle];
}

function liesBetween(at: Spot, a: Spot, b: Spot): boolean {
  if (turnOf(a, b, at) !== 0) return false;
  const along = (at.x - a.x) * (b.x - a.x) + (at.y - a.y) * (b.y - a.y);
  return along > 0 && along < (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
}
