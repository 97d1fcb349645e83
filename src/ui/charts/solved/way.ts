/** The solved way of one joint as plain figures: amounts [rad] or [mm], efforts [N·mm] or [N], energies [N·mm]. */
import { allowableNamed } from '../../../core/design/allowables.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import { feltEfforts } from '../../../core/design/feltEffort.ts';
import { leastOf } from '../../../core/design/joint.ts';
import { amountAtStrain } from '../../../core/design/solvedPath.ts';
import type { Span } from '../frame.ts';
import type { Solved, SolvedEvent, SolvedPath, SolvedPoint } from '../../../core/design/solved.ts';

/** One place on the way: a state that was solved, or an event between two of them. */
export interface WayPoint {
  readonly amount: number;
  readonly typical: number;
  readonly low: number;
  readonly high: number;
  readonly energy: number;
  readonly event?: SolvedEvent['kind'];
  /** Whether a rest stays there by itself. */
  readonly stable?: boolean;
  /** Whether what follows, outward from rest, would hold when pushed by a weight. */
  readonly holds: boolean;
  /** Here it ceases to hold when pushed by a weight, or begins to. */
  readonly turns?: 'ceases' | 'begins';
}

/** A stretch that holds under a weight, or that needs a guide. */
export interface Run {
  readonly holds: boolean;
  readonly points: readonly WayPoint[];
}

export interface Way {
  /** Outward from rest, each in the order in which it was followed. */
  readonly forward: readonly WayPoint[];
  /** The other way; empty for a movement one way. */
  readonly back: readonly WayPoint[];
}

/** A joint that the solver has answered. */
export type Answered = Assessment & { readonly solved: Solved };

export function isAnswered(a: Assessment): a is Answered {
  return a.solved !== undefined;
}

export function wayOf(a: Answered): Way {
  const { forward, back } = a.solved;
  return { forward: pointsOf(a, forward), back: back ? pointsOf(a, back) : [] };
}

interface Followed {
  readonly place: Omit<WayPoint, 'holds' | 'turns'>;
  /** Of a solved state; absent for an event. */
  readonly holds?: boolean;
}

function pointsOf(a: Answered, path: SolvedPath): readonly WayPoint[] {
  const followed = followedOn(a, path);
  const outward = Math.sign(followed.at(-1)?.place.amount ?? 1);
  const holds = followed.map(() => followed.at(-1)?.holds ?? true);
  const turns = new Map<number, 'ceases' | 'begins'>();
  let from = 0;
  for (const [to, { holds: then }] of followed.entries()) {
    if (to === 0 || then === undefined) continue;
    const was = followed[from]?.holds ?? true;
    const turn = was === then ? to : turnBetween(followed, from, to, was ? outward : -outward);
    holds.fill(was, from, turn).fill(then, turn, to);
    if (was !== then) turns.set(turn, was ? 'ceases' : 'begins');
    from = to;
  }
  return followed.map(({ place }, i) => {
    const turn = turns.get(i);
    return { ...place, holds: holds[i] === true, ...(turn ? { turns: turn } : {}) };
  });
}

/** It ceases to hold at what pushes back hardest on the way out, and holds again from what pushes back least. */
function turnBetween(followed: readonly Followed[], from: number, to: number, sign: number): number {
  const push = (i: number) => sign * (followed[i]?.place.typical ?? 0);
  let turn = from;
  for (let i = from + 1; i <= to; i += 1) if (push(i) > push(turn)) turn = i;
  return turn;
}

/** States and events in the order in which they come, for the filament. */
function followedOn(a: Answered, { points, events }: SolvedPath): readonly Followed[] {
  const waiting = [...events];
  const felt = feltEfforts(a);
  const placeOf = (state: Pick<SolvedPoint, 'amount' | 'effort' | 'energy'>) => ({
    amount: state.amount,
    ...felt(state),
    energy: state.energy * a.effort.modulus,
  });
  return points.flatMap((point, i) => {
    const before = points[i - 1];
    const met = before ? waiting.findIndex(({ amount }) => !isBetween(amount, before.amount, point.amount)) : 0;
    const passed = waiting.splice(0, met < 0 ? waiting.length : met).map((event): Followed => ({
      place: { ...placeOf(event), event: event.kind, stable: event.stable },
    }));
    return [...passed, { place: placeOf(point), holds: point.unstableFree === 0 }];
  });
}

function isBetween(at: number, one: number, other: number): boolean {
  return at >= Math.min(one, other) && at <= Math.max(one, other);
}

/** From the far end of the way back through rest to the far end of the way there. */
export function whole({ forward, back }: Way): readonly WayPoint[] {
  return [...back.slice(1).toReversed(), ...forward];
}

/** One way cut where it begins or ceases to hold; neighbours share their end. */
export function runsOf(points: readonly WayPoint[]): readonly Run[] {
  const runs: { holds: boolean; points: WayPoint[] }[] = [];
  points.slice(1).forEach((point, i) => {
    const before = points[i] as WayPoint;
    const run = runs.at(-1);
    if (run?.holds === before.holds) run.points.push(point);
    else runs.push({ holds: before.holds, points: [before, point] });
  });
  return runs;
}

const AT_REST: WayPoint = { amount: 0, typical: 0, low: 0, high: 0, energy: 0, holds: true };

/** The state at an amount, by straight lines; that of the nearest end beyond the way. */
export function readWay({ forward, back }: Way, amount: number): WayPoint {
  const points = amount < 0 && back.length > 0 ? back : forward;
  const size = Math.abs(amount);
  const next = points.findIndex((point) => Math.abs(point.amount) >= size);
  const after = points[next] ?? points.at(-1);
  const before = points[next - 1];
  if (!after) return AT_REST;
  if (next < 1 || !before) return after;
  const share = (size - Math.abs(before.amount)) / (Math.abs(after.amount) - Math.abs(before.amount));
  const between = (of: 'typical' | 'low' | 'high' | 'energy') => before[of] + share * (after[of] - before[of]);
  return {
    amount,
    typical: between('typical'),
    low: between('low'),
    high: between('high'),
    energy: between('energy'),
    holds: before.holds,
  };
}

/** Amounts between which it pulls itself on instead of pushing back. */
export function pullingSpans(way: Way): readonly Span[] {
  return [way.back, way.forward].flatMap((points) => {
    const pulls = points.filter(({ amount, typical }) => typical * Math.sign(amount) < 0).map(({ amount }) => amount);
    const ends = points.filter(({ event }) => event === 'rest').map(({ amount }) => amount);
    const all = [...pulls, ...(pulls.length > 0 ? ends : [])];
    return all.length > 1 ? [[Math.min(...all), Math.max(...all)] as const] : [];
  });
}

/** Amounts past which it stays bent, on the way there and on the way back. */
export function staysBentPast(a: Answered): { readonly ahead: number; readonly behind: number } {
  const { atYield } = a.overBend;
  const { back, ...there } = a.solved;
  const { limit } = allowableNamed(a.allowables, 'yield');
  const reached = (solved: Solved) => amountAtStrain(solved, limit, a.strain.rootFactor);
  const [ahead, behind] = [reached(there), reached({ ...there, forward: back ?? there.forward })];
  // Either way counts in the answer; where that comes from a formula, the way itself does not know of it.
  const first = a.solved.least === undefined ? Math.min(ahead, behind) : ahead;
  const isOnTheWay = Math.abs(first - atYield) <= 1e-6 * atYield;
  return isOnTheWay ? { ahead, behind } : { ahead: atYield, behind: atYield };
}

/** The same as stretches of the way. */
export function staysBentSpans(a: Answered, way: Way): readonly Span[] {
  const { ahead, behind } = staysBentPast(a);
  const amounts = whole(way).map(({ amount }) => amount);
  const [low, high] = [Math.min(...amounts), Math.max(...amounts)];
  return [...(low < -behind ? [[low, -behind] as const] : []), ...(high > ahead ? [[ahead, high] as const] : [])];
}

/** What it may push back at most, against either way of the movement; empty where that does not matter. */
export function wantedLevels({ joint: { movement } }: Answered): readonly number[] {
  const { effortAtMost } = movement;
  if (effortAtMost === undefined) return [];
  return leastOf(movement) < 0 ? [effortAtMost, -effortAtMost] : [effortAtMost];
}
