import { describe, expect, it } from 'vitest';
import { touchesAt } from '../../../../src/core/design/solvedPath.ts';
import { roomAt, roomOf, touchesPast } from '../../../../src/ui/charts/solved/room.ts';
import { expectClose } from '../../../support/close.ts';
import { answered } from '../../../support/solvedJoints.ts';

describe('room against movement', () => {
  it('is left out where nothing can touch, and where there is plenty as far as is wanted', () => {
    expect(roomOf(answered('straightLeaf'))).toBeUndefined();
    const crossed = answered('crossedLeaves');
    expect(crossed.solved.forward.points.some(({ gap }) => gap !== undefined)).toBe(true);
    expect(roomOf(crossed)).toBeUndefined();
  });

  it('reads what was solved, and straight lines between', () => {
    const a = answered('spiral', { ways: 'both ways' });
    const room = roomOf(a);
    if (!room) throw new Error('arms of a spiral come near each other');
    const [, one, two] = a.solved.forward.points;
    const [gap, next] = [one?.gap?.gap ?? Number.NaN, two?.gap?.gap ?? Number.NaN];
    expect(roomAt(room, one?.amount ?? 0)).toBe(gap);
    const middle = ((one?.amount ?? 0) + (two?.amount ?? 0)) / 2;
    expectClose(roomAt(room, middle) ?? 0, (gap + next) / 2, { rel: 1e-9, because: 'half-way on a straight line' });
    expect(roomAt(room, 100)).toBeUndefined();
  });

  it('touches between the amounts at which the room is nought', () => {
    const a = answered('spiral', { ways: 'both ways' });
    const room = roomOf(a);
    if (!room) throw new Error('arms of a spiral come near each other');
    const ends = touchesPast(room);
    expect(ends).toHaveLength(2);
    for (const end of ends) {
      expectClose(roomAt(room, end) ?? 1, 0, { abs: 1e-9, because: 'the foot of a straight line' });
      expect(roomAt(room, end * 1.02)).toBeLessThan(0);
      expect(roomAt(room, end * 0.98)).toBeGreaterThan(0);
    }
    expect(room.least.gap).toBe(
      Math.min(
        ...[a.solved.forward, a.solved.back].flatMap((path) => path?.points.map(({ gap }) => gap?.gap ?? 9) ?? []),
      ),
    );
  });

  it('comes to nought where the way is told to touch first', () => {
    const a = answered('cellPanel');
    const room = roomOf(a);
    if (!room) throw new Error('ends of a panel meet');
    expect(touchesPast(room)).toEqual([touchesAt(a.solved)]);
    expect(roomAt(room, touchesAt(a.solved))).toBe(0);
  });

  it('keeps stretches apart between which it comes free again', () => {
    const folded = roomOf(answered('foldedLeaf', { drive: 'turned', amount: Math.PI / 6 }));
    expect(folded?.touching).toHaveLength(2);
    expect(folded && touchesPast(folded)).toEqual([folded?.touching[0]?.[0]]);
  });

  it('touches where the room would be told as nought', () => {
    const a = answered('spiral');
    const { forward } = a.solved;
    const points = forward.points.map((point, i) =>
      point.gap && i >= forward.points.length - 2 ? { ...point, gap: { ...point.gap, gap: 0.004 } } : point,
    );
    const last = points.at(-2)?.amount;
    const room = roomOf({ ...a, solved: { ...a.solved, forward: { ...forward, points } } });
    expect(room?.touching.some(([from, to]) => last !== undefined && from <= last && to > last)).toBe(true);
  });
});
