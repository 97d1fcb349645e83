import type { MemberShape, Pose } from '../../../core/beam/answer.ts';
import type { Solved, SolvedPoint } from '../../../core/design/solved.ts';
import type { Gap, GapSide } from '../../../core/geometry/gaps.ts';

/** A solved joint at any amount, between two states of its way. */
export interface StateNow {
  readonly amount: number;
  readonly poses: Readonly<Record<string, Pose>>;
  readonly shapes: readonly MemberShape[];
  /** Largest strain along members, and where they grow out of pads, as fractions. */
  readonly within: number;
  readonly atRoots: number;
  readonly gap: Gap | undefined;
  /** Every two parts that are nearer than a line is wide. */
  readonly near: readonly Gap[];
}

/** The two states of the way between which an amount is first passed, and how far it is from one to the other. */
function around(points: readonly SolvedPoint[], size: number): readonly [SolvedPoint, SolvedPoint, number] {
  const [rest] = points;
  if (!rest) throw new RangeError('a solved way has at least the state at rest');
  const next = points.findIndex((point) => Math.abs(point.amount) >= size);
  const after = next === -1 ? points.at(-1)! : points[next]!;
  const before = next <= 0 ? after : points[next - 1]!;
  const span = Math.abs(after.amount) - Math.abs(before.amount);
  return [before, after, span > 0 ? (size - Math.abs(before.amount)) / span : 1];
}

/** The state at an amount: on the way there when it is positive, on the way back when it is negative. */
export function stateAt(solved: Solved, amount: number): StateNow {
  const { points } = amount < 0 && solved.back ? solved.back : solved.forward;
  const [a, b, share] = around(points, Math.abs(amount));
  const between = (p: number, q: number) => p + share * (q - p);
  return {
    amount,
    poses: Object.fromEntries(
      Object.entries(a.poses).map(([id, from]) => {
        const to = b.poses[id] ?? from;
        return [id, { x: between(from.x, to.x), y: between(from.y, to.y), turn: between(from.turn, to.turn) }];
      }),
    ),
    shapes: a === b ? a.shapes : a.shapes.map((shape, i) => mixedShape(shape, b.shapes[i] ?? shape, share)),
    within: between(a.peakWithin, b.peakWithin),
    atRoots: between(a.peakAtEnds, b.peakAtEnds),
    gap: mixedGap(a.gap, b.gap, share),
    near: mixedNear(a.near ?? [], b.near ?? [], share),
  };
}

function mixedShape(a: MemberShape, b: MemberShape, share: number): MemberShape {
  const mixed = (key: 'x' | 'y' | 'angle' | 'left' | 'right') =>
    a[key].map((value, i) => value + share * ((b[key][i] ?? value) - value));
  return { ...a, x: mixed('x'), y: mixed('y'), angle: mixed('angle'), left: mixed('left'), right: mixed('right') };
}

/** What is near in both states slides along; what is near in one only is told in the nearer half of the way. */
function mixedNear(a: readonly Gap[], b: readonly Gap[], share: number): readonly Gap[] {
  const nearer = share < 0.5 ? a : b;
  const all = [...a, ...b.filter((gap) => !a.some((other) => isSamePair(gap, other)))];
  return all.flatMap((gap) => {
    const [from, to] = [a, b].map((state) => state.find((other) => isSamePair(gap, other)));
    const mixed = from && to ? mixedGap(from, to, share) : nearer.find((other) => isSamePair(gap, other));
    return mixed ? [mixed] : [];
  });
}

/** Whether both gaps lie between the same two parts. */
export function isSamePair(one: Gap, other: Gap): boolean {
  return one.a.what === other.a.what && one.b.what === other.b.what;
}

/** The nearest places slide along while the same two parts are nearest; where others take over, the mark jumps. */
function mixedGap(a: Gap | undefined, b: Gap | undefined, share: number): Gap | undefined {
  if (!a || !b) return share < 0.5 ? a : b;
  if (!isSamePair(a, b)) return share < 0.5 ? a : b;
  const side = (p: GapSide, q: GapSide): GapSide => ({
    what: p.what,
    at: { x: p.at.x + share * (q.at.x - p.at.x), y: p.at.y + share * (q.at.y - p.at.y) },
  });
  return { gap: a.gap + share * (b.gap - a.gap), a: side(a.a, b.a), b: side(a.b, b.b) };
}
