/** Room between what may touch, against movement. */
import type { SolvedPath } from '../../../core/design/solved.ts';
import { isTouching } from '../../../core/geometry/touching.ts';
import type { Mm } from '../../../core/units.ts';
import type { Span } from '../frame.ts';
import type { Answered } from './way.ts';

interface RoomPoint {
  readonly amount: number;
  readonly gap: Mm;
}

export interface Room {
  /** Stretches in which something faces something, in the order of the amounts. */
  readonly stretches: readonly (readonly RoomPoint[])[];
  /** Amounts between which it touches. */
  readonly touching: readonly Span[];
  readonly least: RoomPoint;
}

/** Smaller changes are those of the sampling [mm]. */
const CHANGE = 0.01;
/** Room for more lines than this is never short. */
const PLENTY = 12;

/**
 * Undefined where there is nothing to tell: nothing can touch, the room stays as it is, there is plenty as far as wanted,
 * or things come to face each other only past that and do not come near.
 */
export function roomOf({ solved: { amount: wanted, forward, back }, joint }: Answered): Room | undefined {
  const stretches = stretchesOf([...(back ? lookedAt(back).slice(1).toReversed() : []), ...lookedAt(forward)]);
  const all = stretches.flat();
  const [first] = all;
  if (!first) return undefined;
  const least = all.reduce((best, one) => (one.gap < best.gap ? one : best), first);
  const most = all.reduce((widest, { gap }) => Math.max(widest, gap), first.gap);
  if (most - least.gap < CHANGE) return undefined;
  const { lineWidth } = joint.profile;
  const isShort = all.some(({ amount, gap }) => Math.abs(amount) <= wanted && gap <= PLENTY * lineWidth);
  if (!isShort && least.gap > lineWidth) return undefined;
  return { stretches, touching: stretches.flatMap(touchingIn), least };
}

/** A state, or the place between two states where it first touches. */
interface Looked {
  readonly amount: number;
  readonly gap?: Mm;
}

function lookedAt({ points, touches }: SolvedPath): readonly Looked[] {
  const looked = points.map(({ amount, gap }): Looked => {
    if (!gap) return { amount };
    // What would be told as 0.00 touches.
    return { amount, gap: isTouching(gap.gap) ? Math.min(0, gap.gap) : gap.gap };
  });
  if (!touches) return looked;
  const past = looked.findIndex(({ amount }) => Math.abs(amount) > Math.abs(touches.amount));
  const next = past < 0 ? looked.length : past;
  return [...looked.slice(0, next), { amount: touches.amount, gap: 0 }, ...looked.slice(next)];
}

function stretchesOf(looked: readonly Looked[]): readonly (readonly RoomPoint[])[] {
  const stretches: RoomPoint[][] = [[]];
  for (const { amount, gap } of looked) {
    if (gap !== undefined) stretches.at(-1)?.push({ amount, gap });
    else if (stretches.at(-1)?.length !== 0) stretches.push([]);
  }
  return stretches.filter(({ length }) => length > 1);
}

function touchingIn(stretch: readonly RoomPoint[]): readonly Span[] {
  const spans: [number, number][] = [];
  stretch.slice(1).forEach((point, i) => {
    const before = stretch[i] as RoomPoint;
    if (before.gap > 0 && point.gap > 0) return;
    const at = zeroBetween(before, point);
    const from = before.gap > 0 ? at : before.amount;
    const to = point.gap > 0 ? at : point.amount;
    const last = spans.at(-1);
    if (last && last[1] === from) last[1] = to;
    else spans.push([from, to]);
  });
  return spans;
}

function zeroBetween(one: RoomPoint, other: RoomPoint): number {
  if (one.gap > 0 === other.gap > 0) return one.amount;
  return one.amount + ((other.amount - one.amount) * one.gap) / (one.gap - other.gap);
}

/** The room at an amount, by straight lines; undefined where nothing faces anything. */
export function roomAt({ stretches }: Room, amount: number): Mm | undefined {
  for (const stretch of stretches) {
    const i = stretch.findIndex((point) => point.amount >= amount);
    const [before, after] = [stretch[i - 1], stretch[i]];
    if (after && after.amount === amount) return after.gap;
    if (before && after) {
      return before.gap + ((after.gap - before.gap) * (amount - before.amount)) / (after.amount - before.amount);
    }
  }
  return undefined;
}

/** Where it first touches, either way, the nearest to rest first. */
export function touchesPast({ touching }: Room): readonly number[] {
  const inner = touching
    .map(([from, to]) => (from >= 0 ? from : to <= 0 ? to : 0))
    .toSorted((one, other) => Math.abs(one) - Math.abs(other));
  const [ahead, behind] = [inner.find((amount) => amount >= 0), inner.find((amount) => amount < 0)];
  return inner.filter((amount) => amount === ahead || amount === behind);
}
