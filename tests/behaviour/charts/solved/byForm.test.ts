import { describe, expect, it } from 'vitest';
import { peakStrainFor } from '../../../../src/core/design/curves.ts';
import { formCurve, formEffort, lengthsByForm } from '../../../../src/ui/charts/solved/byForm.ts';
import { papersOf } from '../../../../src/ui/charts/solved/papers.ts';
import { wayOf } from '../../../../src/ui/charts/solved/way.ts';
import { everyLength, lengthCurves } from '../../../../src/ui/charts/lengthCurves.ts';
import { isByFormula, strainByLength } from '../../../../src/ui/charts/strainByLength.ts';
import { expectClose } from '../../../support/close.ts';
import { answered } from '../../../support/solvedJoints.ts';

describe('the simple formula beside the solver', () => {
  it('has no curve of its own where it is exact', () => {
    const leaf = answered('straightLeaf');
    expect(isByFormula(leaf)).toBe(true);
    expect(formCurve(leaf, 1)).toEqual([]);
    expect(papersOf(leaf, 'mm').length?.byForm).toBeUndefined();
  });

  it('is near the solver where it holds', () => {
    const a = answered('parallelLeaves');
    const solved = wayOf(a).forward.find(({ amount }) => Math.abs(amount - 2) < 1e-9)?.typical ?? 0;
    expectClose(formEffort(a, 2) ?? 0, solved, { rel: 0.05, because: 'guided leaves at a twelfth of their length' });
  });

  it('carries the strain through the solved point, wherever its worst place is', () => {
    for (const a of [answered('spiral'), answered('parallelLeaves'), answered('toggle')]) {
      expectClose(strainByLength(a, a.length), a.strain.peak, { rel: 1e-9, because: 'held to it' });
      const own = lengthCurves(a).at(-1);
      expectClose(own?.strainAt(a.length) ?? 0, a.strain.peak, { rel: 1e-9, because: 'held to it' });
    }
  });

  it('is asked at few lengths, and drawn through the rest', () => {
    const a = answered('parallelLeaves');
    for (const length of [18, 21.3, 33, 40]) {
      const because = 'between lengths a seventh apart, on log paper';
      expectClose(strainByLength(a, length), peakStrainFor(a, { length }), { rel: 0.005, because });
    }
  });

  it('keeps to lengths that the kind can have', () => {
    const spiral = answered('spiral');
    const span = lengthsByForm(spiral, everyLength(spiral, 'mm'));
    // The ring must be wider than its hub of 12 mm.
    expect(span?.[0]).toBeGreaterThan(12);
    const { length, life } = papersOf(spiral, 'mm');
    expect(length?.byForm).toEqual(span);
    expect(life.lengths?.[0]).toBe(span?.[0]);
    expect(Math.min(...(life.lengths ?? []).map((one) => strainByLength(spiral, one)))).toBeGreaterThan(0);
  });
});
