/** What is marked on the way: where it rests, is balanced, snaps and comes back, and how far a weight would throw it. */
import { whole, type Way, type WayPoint } from './way.ts';

export interface WayMark {
  /**
   * `rests`: stays there by itself; `balanced`: falls either way; `snaps`: pushed by such a weight it goes on by itself;
   * `eases`: under less than this weight it goes back by itself; `returns`: pulled by this much it goes back by itself.
   */
  readonly kind: 'rests' | 'balanced' | 'snaps' | 'eases' | 'returns';
  readonly amount: number;
  readonly effort: number;
  readonly energy: number;
  /** Amount to which it jumps under that weight; `end` where nothing on the way holds it. */
  readonly jump?: number | 'end';
}

/** Marks in the order of the way, the start among them. */
export function marksOf(way: Way): readonly WayMark[] {
  const all = whole(way);
  const start = Math.max(0, way.back.length - 1);
  // Seen from the other side the way back is a way there.
  const seenFromBehind = all.toReversed().map(turned);
  const behind = marksAhead(seenFromBehind, all.length - 1 - start).map(turned);
  return [...behind.toReversed(), { kind: 'rests', amount: 0, effort: 0, energy: 0 }, ...marksAhead(all, start)];
}

function turned<T extends WayPoint | WayMark>(one: T): T {
  const { amount } = one;
  const effort = 'typical' in one ? { typical: -one.typical } : { effort: -one.effort };
  const jump = 'jump' in one && typeof one.jump === 'number' ? { jump: -one.jump } : {};
  return { ...one, amount: -amount, ...effort, ...jump };
}

function marksAhead(points: readonly WayPoint[], start: number): readonly WayMark[] {
  return points.flatMap((point, i) => {
    const kind = i > start ? kindOf(point) : undefined;
    if (kind === undefined) return [];
    const { amount, typical: effort, energy } = point;
    const jump = jumpOf(kind, points, i);
    return [{ kind, amount, effort, energy, ...(jump === undefined ? {} : { jump }) }];
  });
}

function kindOf({ event, stable, turns, typical }: WayPoint): WayMark['kind'] | undefined {
  if (event === 'rest') return stable === true ? 'rests' : 'balanced';
  if (turns === 'ceases') return typical > 0 ? 'snaps' : undefined;
  if (turns === 'begins') return typical < 0 ? 'returns' : 'eases';
  return undefined;
}

/** A weight that snaps it carries it on to where it pushes back as hard again; one that is too light lets it go back. */
function jumpOf(kind: WayMark['kind'], points: readonly WayPoint[], from: number): WayMark['jump'] {
  const effort = (points[from] as WayPoint).typical;
  if (kind === 'snaps') return crossing(points.slice(from + 1), effort) ?? 'end';
  if (kind === 'eases' || kind === 'returns')
    return crossing(points.slice(0, from).toReversed().map(turned), -effort, -1);
  return undefined;
}

/** The first amount at which effort rises to a level again. */
function crossing(points: readonly WayPoint[], level: number, sign = 1): number | undefined {
  for (const [i, after] of points.entries()) {
    const before = points[i - 1];
    if (before && before.typical < level && after.typical >= level) {
      const share = (level - before.typical) / (after.typical - before.typical);
      return sign * (before.amount + share * (after.amount - before.amount));
    }
  }
  return undefined;
}

/** A place where it rests, the hill before it, and what it takes to come back over that hill. */
export interface Hollow {
  readonly rest: WayMark;
  readonly hill: WayMark;
  /** Energy kept in that rest, and energy to come back from it [N·mm]. */
  readonly kept: number;
  readonly toComeBack: number;
}

/** Rests beyond the start with the hill on their way back to it. */
export function hollowsOf(marks: readonly WayMark[]): readonly Hollow[] {
  return marks.flatMap((rest, i) => {
    if (rest.kind !== 'rests' || rest.amount === 0) return [];
    const inward = rest.amount > 0 ? marks.slice(0, i).toReversed() : marks.slice(i + 1);
    const hill = inward.find(({ kind }) => kind === 'balanced');
    return hill ? [{ rest, hill, kept: rest.energy, toComeBack: hill.energy - rest.energy }] : [];
  });
}
