import { describe, expect, it } from 'vitest';
import { hollowsOf, marksOf, type WayMark } from '../../../../src/ui/charts/solved/marks.ts';
import { runsOf, staysBentPast, wayOf, whole, type WayPoint } from '../../../../src/ui/charts/solved/way.ts';
import { expectClose } from '../../../support/close.ts';
import { answered } from '../../../support/solvedJoints.ts';

const LINES = { rel: 1e-12, because: 'a straight line between two points' } as const;

/** A way of straight pieces through places given as amount, effort, energy. */
function point(amount: number, typical: number, energy: number, more: Partial<WayPoint> = {}): WayPoint {
  return { amount, typical, low: typical, high: typical, energy, holds: true, ...more };
}

/** Snaps at 1, balanced at 2, returns at 3, rests at 4 and pushes back again past it. */
const SNAPS: readonly WayPoint[] = [
  point(0, 0, 0),
  point(1, 10, 5, { event: 'limit', holds: false, turns: 'ceases' }),
  point(2, 0, 10, { event: 'rest', stable: false, holds: false }),
  point(3, -4, 8, { event: 'limit', turns: 'begins' }),
  point(4, 0, 6, { event: 'rest', stable: true }),
  point(6, 20, 26),
];
const PUSHED: readonly WayPoint[] = [point(0, 0, 0), point(-1, -8, 4)];

function kinds(marks: readonly WayMark[]): readonly string[] {
  return marks.map(({ kind, amount }) => `${kind} ${amount}`);
}

/** Where it lands under the return load. */
function jumpOf(back: readonly WayPoint[]): WayMark['jump'] {
  return marksOf({ forward: SNAPS, back }).find(({ kind }) => kind === 'returns')?.jump;
}

describe('marks on the way', () => {
  it('come from events: rests, balanced, and where it ceases or begins to hold', () => {
    const marks = marksOf({ forward: SNAPS, back: [] });
    expect(kinds(marks)).toEqual(['rests 0', 'snaps 1', 'balanced 2', 'returns 3', 'rests 4']);
  });

  it('jump under the snap load to where it pushes back as hard again', () => {
    const snaps = marksOf({ forward: SNAPS, back: [] }).find(({ kind }) => kind === 'snaps');
    // From 0 at 4 to 20 at 6 the effort passes 10 at 5.
    expectClose(Number(snaps?.jump), 5, LINES);
  });

  it('jump past the end where nothing on the way pushes back as hard', () => {
    const short = [...SNAPS.slice(0, -1), point(4.5, 5, 8)];
    expect(marksOf({ forward: short, back: [] }).find(({ kind }) => kind === 'snaps')?.jump).toBe('end');
  });

  it('jump back under the return load only where the way back is known', () => {
    expect(jumpOf([])).toBeUndefined();
    // From rest to −8 at −1 the effort passes −4 half-way.
    expectClose(Number(jumpOf(PUSHED)), -0.5, LINES);
  });

  it('are the same, mirrored, when it snaps the other way', () => {
    const mirrored = SNAPS.map((one) => ({ ...one, amount: -one.amount, typical: -one.typical }));
    const marks = marksOf({ forward: [point(0, 0, 0), point(1, 8, 4)], back: mirrored });
    expect(kinds(marks)).toEqual(['rests -4', 'returns -3', 'balanced -2', 'snaps -1', 'rests 0']);
    expectClose(Number(marks.find(({ kind }) => kind === 'snaps')?.jump), -5, LINES);
    expectClose(Number(marks.find(({ kind }) => kind === 'returns')?.jump), 0.5, LINES);
    expect(hollowsOf(marks).map(({ kept, toComeBack }) => [kept, toComeBack])).toEqual([[6, 4]]);
  });

  it('ease where it holds again while it still pushes back, and then drop back to a smaller amount', () => {
    const eases = [...SNAPS.slice(0, 2), point(2, 4, 12, { turns: 'begins' }), point(3, 12, 20)];
    const marks = marksOf({ forward: eases, back: [] });
    expect(kinds(marks)).toEqual(['rests 0', 'snaps 1', 'eases 2']);
    expectClose(Number(marks[2]?.jump), 0.4, LINES);
    expect(hollowsOf(marks)).toEqual([]);
  });

  it('tell what is kept in a second rest and what it takes to come back', () => {
    const [hollow] = hollowsOf(marksOf({ forward: SNAPS, back: [] }));
    expect(hollow?.kept).toBe(6);
    expect(hollow?.toComeBack).toBe(4);
    expect(hollow?.hill.amount).toBe(2);
  });
});

describe('runs of the way', () => {
  it('are cut where it ceases to hold and where it holds again, and share their ends', () => {
    const runs = runsOf(SNAPS);
    expect(runs.map(({ holds, points }) => [holds, points[0]?.amount, points.at(-1)?.amount])).toEqual([
      [true, 0, 1],
      [false, 1, 3],
      [true, 3, 6],
    ]);
  });
});

describe('the way of a solved joint', () => {
  it('marks a toggle where its states change from holding to falling and back', () => {
    const a = answered('toggle');
    const way = wayOf(a);
    const marks = marksOf(way);
    expect(marks.map(({ kind }) => kind)).toEqual(['rests', 'snaps', 'balanced', 'returns', 'rests']);
    const rests = a.solved.forward.events.filter(({ kind }) => kind === 'rest').map(({ amount }) => amount);
    expect(marks.filter(({ effort }) => Math.abs(effort) < 1e-6).map(({ amount }) => amount)).toEqual([0, ...rests]);
    const most = way.forward.filter(({ amount }) => amount < 10).map(({ typical }) => typical);
    expect(marks.find(({ kind }) => kind === 'snaps')?.effort).toBe(Math.max(...most));
  });

  it('marks an arch that leaves its even path at the load at which it leaves', () => {
    const a = answered('snapArch');
    const marks = marksOf(wayOf(a));
    expect(marks.map(({ kind }) => kind)).toEqual(['rests', 'snaps', 'balanced', 'returns', 'rests']);
    const leaves = a.solved.forward.leaves?.amount ?? Number.NaN;
    const snap = marks.find(({ kind }) => kind === 'snaps');
    expectClose(snap?.amount ?? 0, leaves, { rel: 1e-3, because: 'the state before it leaves, as it was stepped to' });
  });

  it('has its effort as the slope of its energy: the area under it is what is kept', () => {
    const { forward } = wayOf(answered('parallelLeaves'));
    const area = forward.slice(1).reduce((sum, after, i) => {
      const before = forward[i] as WayPoint;
      return sum + ((after.typical + before.typical) / 2) * (after.amount - before.amount);
    }, 0);
    const wanted = forward.filter(({ amount }) => amount <= 2 * (1 + 1e-9));
    const upTo = wanted.slice(1).reduce((sum, after, i) => {
      const before = wanted[i] as WayPoint;
      return sum + ((after.typical + before.typical) / 2) * (after.amount - before.amount);
    }, 0);
    const because = 'trapezia over 24 points of a nearly straight line';
    expectClose(upTo, wanted.at(-1)?.energy ?? 0, { rel: 1e-3, because });
    // Past yield the effort flattens and the energy, which is counted as if it did not, runs ahead.
    expect(area).toBeLessThan(forward.at(-1)?.energy ?? 0);
  });

  it('runs from the far end of the way back through rest', () => {
    const way = wayOf(answered('spiral', { ways: 'both ways' }));
    const amounts = whole(way).map(({ amount }) => amount);
    expect(amounts).toEqual(amounts.toSorted((one, other) => one - other));
    expect(amounts.filter((amount) => amount === 0)).toHaveLength(1);
    expect(whole(way)[0]?.typical).toBeLessThan(0);
  });

  it('counts what twists out of sight as strained, so that its effort flattens past yield', () => {
    const { forward } = wayOf(answered('slitPanel', {}, { rows: 12 }));
    const first = forward[1] as WayPoint;
    const last = forward.at(-1) as WayPoint;
    expect(last.typical / last.amount).toBeLessThan(0.9 * (first.typical / first.amount));
  });

  it('stays bent from where its own way first strains so far, not from where the other does', () => {
    const both = answered('toggle', { ways: 'both ways' });
    const { ahead, behind } = staysBentPast(both);
    expect(Math.min(ahead, behind)).toBe(both.overBend.atYield);
    // Pulled up instead of pressed in, a roof strains much sooner.
    expect(behind).toBeLessThan(0.5 * ahead);
    expect(ahead).toBe(answered('toggle').overBend.atYield);
  });
});
