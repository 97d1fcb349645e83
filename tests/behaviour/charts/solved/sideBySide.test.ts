import { describe, expect, it } from 'vitest';
import { sideBySideOf } from '../../../../src/ui/charts/solved/sideBySide.ts';
import { expectClose } from '../../../support/close.ts';
import { answered } from '../../../support/solvedJoints.ts';

describe('effort side by side', () => {
  it('is left out where nothing is wanted of the effort, or the kind is not laid side by side', () => {
    expect(sideBySideOf(answered('parallelLeaves'))).toBeUndefined();
    expect(sideBySideOf(answered('cellPanel', { effortAtMost: 5 }))).toBeUndefined();
  });

  it('is a point a count from 1 to 12 on a line through nought, the joint on it', () => {
    const a = answered('parallelLeaves', { effortAtMost: 4 });
    const side = sideBySideOf(a);
    expect(side?.points.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const { count, effort } of side?.points ?? []) {
      expectClose(effort / count, a.effort.effort, { rel: 1e-12, because: 'one straight line' });
    }
    expect(side?.now).toEqual({ count: 1, effort: a.effort.effort });
    expect(side?.keeps).toBe(Math.floor(4 / a.effort.effort));
  });

  it('tells what the solver tells of a joint that is laid so', () => {
    const one = answered('parallelLeaves', { effortAtMost: 4 });
    const three = answered('parallelLeaves', { effortAtMost: 4 }, { sideBySide: 3 });
    const because = 'the same network, three times over';
    expectClose(sideBySideOf(one)?.points[2]?.effort ?? 0, three.effort.effort, { rel: 1e-9, because });
    expectClose(three.strain.peak, one.strain.peak, { rel: 1e-9, because: 'they share the effort, not the movement' });
  });

  it('stops at the counts that the kind may have, and says when even one is over', () => {
    const spiral = sideBySideOf(answered('spiral', { effortAtMost: 1 }));
    expect(spiral?.points.at(-1)?.count).toBe(6);
    expect(spiral?.keeps).toBe(0);
  });
});
