import { describe, expect, it } from 'vitest';
import { levelMarks, levelsOver } from '../../../../src/ui/charts/levels.ts';
import { amountMarks, amountSpan, effortLevel, energyLevel } from '../../../../src/ui/charts/solved/spans.ts';
import { hollowsOf, marksOf } from '../../../../src/ui/charts/solved/marks.ts';
import { wayOf } from '../../../../src/ui/charts/solved/way.ts';
import { answered } from '../../../support/solvedJoints.ts';

const words = (marks: readonly { readonly text: string }[]) => marks.map(({ text }) => text);

describe('axes that run both ways', () => {
  it('are figured in round steps on both sides of nought, with a true minus', () => {
    expect(words(levelMarks(levelsOver(-33, 82)))).toEqual(['−50', '0', '50', '100']);
    expect(words(levelMarks(levelsOver(0, 0.9)))).toEqual(['0', '0.2', '0.4', '0.6', '0.8', '1']);
    expect(words(levelMarks(levelsOver(-1500, 900)))).toEqual([
      '−1\u2009500',
      '−1\u2009000',
      '−500',
      '0',
      '500',
      '1\u2009000',
    ]);
  });

  it('are round in the chosen unit', () => {
    const level = levelsOver(0, 25.4, 25.4);
    expect(words(levelMarks(level)).at(-1)).toBe('1');
    expect(level.span).toEqual([0, 25.4]);
  });

  it('figure turns in whole steps of degrees, fewer on narrow paper, the last with its sign', () => {
    expect(words(amountMarks([-65, 65], 'turn', 'mm', false))).toEqual(['−60', '−30', '0', '30', '60°']);
    expect(words(amountMarks([0, 900], 'turn', 'mm', true))).toEqual(['0', '180', '360', '540', '720', '900°']);
    expect(amountMarks([0, 25.4], 'travel', 'inch', false).at(-1)).toEqual({ at: 25.4, text: '1' });
  });

  it('reach from the end of the way back to the end of the way there', () => {
    const spiral = wayOf(answered('spiral', { ways: 'both ways' }));
    const [low, high] = amountSpan(spiral, 'turn');
    expect(low).toBeCloseTo(-high, 9);
    expect(amountSpan({ ...spiral, back: [] }, 'turn')[0]).toBe(0);
  });
});

describe('papers of what snaps', () => {
  const a = answered('toggle', { ways: 'both ways', effortAtMost: 1 });
  const way = wayOf(a);
  const marks = marksOf(way);

  it('are as high as the marks ask for, not as the far end of the way does', () => {
    const snap = marks.find(({ kind }) => kind === 'snaps')?.effort ?? 0;
    const [low, high] = effortLevel(a, way, marks).span;
    expect(high).toBeGreaterThan(snap);
    expect(high).toBeLessThan(5 * snap);
    expect(Math.min(...way.back.map(({ typical }) => typical))).toBeLessThan(low);
    const hollows = hollowsOf(marks);
    expect(energyLevel(way, hollows).span[1]).toBeLessThan(4 * (hollows[0]?.hill.energy ?? 0));
  });

  it('show what is wanted at most unless that would press the curve flat', () => {
    const easy = answered('parallelLeaves', { effortAtMost: 1000 });
    const mild = answered('parallelLeaves', { effortAtMost: 8 });
    const top = (of: typeof easy) => effortLevel(of, wayOf(of), marksOf(wayOf(of))).span[1];
    expect(top(easy)).toBeLessThan(100);
    expect(top(mild)).toBeGreaterThan(8);
  });
});
