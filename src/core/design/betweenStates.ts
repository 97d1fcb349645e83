/** Poses and shapes between two states of a way, drawn smoothly through the four next to it. */
import type { MemberShape, Pose } from '../beam/answer.ts';
import type { MiddleLine } from '../geometry/band.ts';
import { lagrangeWeights } from '../numeric/lagrange.ts';
import type { Mm } from '../units.ts';
import type { SolvedPoint } from './solved.ts';

/** Between two states something moves at most so many times as far, for the amount, as between those next to them. */
const LEAP = 3;
/** What is drawn through four states is surer than what is drawn through three, by about this share of what they differ. */
const SURER = 0.25;

/** A joint between two states. */
export interface StateBetween {
  readonly poses: Readonly<Record<string, Pose>>;
  readonly shapes: readonly MiddleLine[];
  /** How far places may be out [mm]. */
  readonly doubt: Mm;
}

/** A joint at an amount [rad] or [mm] between two states. */
export type Between = (amount: number) => StateBetween;

/**
 * What a joint is like between a state and the one before it.
 *
 * @param points - states in the order in which they are passed [-]
 * @param i - the later of the two [-], ≥ 1
 * @returns a function from amounts; undefined where the states leap from one to the other or turn back
 */
export function betweenStates(points: readonly SolvedPoint[], i: number): Between | undefined {
  const first = Math.max(0, Math.min(i - 2, points.length - 4));
  const states = points.slice(first, first + 4);
  const at = i - first;
  const [before, after] = [states[at - 1], states[at]];
  if (!before || !after || !goOn(states) || leaps(states, at)) return undefined;
  const three = states.length === 4 ? withoutFurthest(states, at) : states;
  return (amount) => {
    const [all, fewer] = [weightsAt(states, amount), weightsAt(three, amount)];
    const poses = posesBy(states, all);
    const shapes = after.shapes.map((shape, k) => shapeBy(states, all, shape, k));
    const rough = posesBy(three, fewer);
    const out = Object.entries(poses).map(([id, pose]) => apart(pose, rough[id] ?? pose));
    const bent = after.shapes.map((shape, k) => furthestApart(shapes[k]!, shapeBy(three, fewer, shape, k)));
    return { poses, shapes, doubt: SURER * Math.max(0, ...out, ...bent) };
  };
}

const apart = (a: { x: Mm; y: Mm }, b: { x: Mm; y: Mm }): Mm => Math.hypot(a.x - b.x, a.y - b.y);

/** Whether amounts only grow, or only fall, and members are sampled alike. */
function goOn(states: readonly SolvedPoint[]): boolean {
  const sense = Math.sign((states.at(-1)?.amount ?? 0) - (states[0]?.amount ?? 0));
  return states.slice(1).every((state, k) => {
    const before = states[k]!;
    const isAlike = state.shapes.every((shape, m) => shape.x.length === before.shapes[m]?.x.length);
    return isAlike && sense * (state.amount - before.amount) > 0;
  });
}

function leaps(states: readonly SolvedPoint[], at: number): boolean {
  const rates = states
    .slice(1)
    .map((state, k) => movedFrom(states[k]!, state) / Math.abs(state.amount - states[k]!.amount));
  const beside = [rates[at - 2] ?? 0, rates[at] ?? 0];
  return rates.length > 1 && (rates[at - 1] ?? 0) > LEAP * Math.max(...beside);
}

function movedFrom(a: SolvedPoint, b: SolvedPoint): Mm {
  const pads = Object.entries(a.poses).map(([id, pose]) => apart(pose, b.poses[id] ?? pose));
  return Math.max(0, ...pads, ...a.shapes.map((shape, k) => furthestApart(shape, b.shapes[k] ?? shape)));
}

function furthestApart(a: MiddleLine, b: MiddleLine): Mm {
  let most = 0;
  for (let k = 0; k < a.x.length; k += 1) {
    const [dx, dy] = [a.x[k]! - b.x[k]!, a.y[k]! - b.y[k]!];
    most = Math.max(most, dx * dx + dy * dy);
  }
  return Math.sqrt(most);
}

/** The two states and whichever of the others is nearer. */
function withoutFurthest(states: readonly SolvedPoint[], at: number): readonly SolvedPoint[] {
  const middle = (states[at - 1]!.amount + states[at]!.amount) / 2;
  const away = (state: SolvedPoint) => Math.abs(state.amount - middle);
  const furthest = Math.max(...states.map(away));
  return states.filter((state) => away(state) < furthest || state === states[at] || state === states[at - 1]);
}

function weightsAt(states: readonly SolvedPoint[], amount: number): readonly number[] {
  return lagrangeWeights(
    states.map((state) => state.amount),
    amount,
  );
}

function posesBy(states: readonly SolvedPoint[], weights: readonly number[]): Readonly<Record<string, Pose>> {
  const names = Object.keys(states[0]?.poses ?? {});
  const sum = (id: string, key: keyof Pose) =>
    states.reduce((total, { poses }, k) => total + weights[k]! * (poses[id]?.[key] ?? 0), 0);
  return Object.fromEntries(names.map((id) => [id, { x: sum(id, 'x'), y: sum(id, 'y'), turn: sum(id, 'turn') }]));
}

function shapeBy(
  states: readonly SolvedPoint[],
  weights: readonly number[],
  { thickness }: MemberShape,
  k: number,
): MiddleLine {
  const sum = (key: 'x' | 'y' | 'angle') => {
    const total = new Float64Array(thickness.length);
    for (const [s, { shapes }] of states.entries()) {
      const values = shapes[k]![key];
      for (let n = 0; n < total.length; n += 1) total[n]! += weights[s]! * values[n]!;
    }
    return total;
  };
  return { x: sum('x'), y: sum('y'), angle: sum('angle'), thickness };
}
