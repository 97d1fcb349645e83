import { describe, expect, it } from 'vitest';
import { scaleJoint, scaleToWhole } from '../../../src/core/design/scalePart.ts';
import { waysOut } from '../../../src/core/design/waysOut.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const measured = (thickness: number) => changed(LEAF, { measuredThickness: thickness, sizes: { length: 6 } });

describe('a part that somebody else drew, measured with calipers', () => {
  it('lands on one and a half lines and is said to be uneven', () => {
    const a = assessed(measured(0.63));
    expectClose(a.fit.exact, 1.5, { rel: 1e-9, because: 'round-off' });
    expect(a.fit).toMatchObject({ outcome: 'uneven', nearest: 1 });
    expect(a.verdict).toMatchObject({ grade: 'caution', reason: 'printing' });
  });

  it('vanishes when thinner than a line', () => {
    const a = assessed(measured(0.3));
    expect(a.fit.outcome).toBe('vanishes');
    expect(a.verdict.grade).toBe('fail');
  });

  it('counts as whole within what calipers can read', () => {
    expect(assessed(measured(0.83)).fit.outcome).toBe('whole');
    expect(assessed(measured(0.78)).fit.outcome).toBe('uneven');
  });

  it('is scaled by 4/3 to make two lines: strain as it was, torque by the cube', () => {
    const a = assessed(measured(0.63));
    const two = scaleToWhole(a).find((row) => row.count === 2);
    expectClose(two?.scale ?? 0, 4 / 3, { rel: 1e-9, because: 'round-off' });
    const scaled = assessed(scaleJoint(a.joint, 4 / 3));
    expectClose(scaled.strain.peak, a.strain.peak, { rel: 1e-6, because: 'sizes are rounded to a nanometre' });
    expectClose(scaled.effort.effort / a.effort.effort, (4 / 3) ** 3, {
      rel: 1e-6,
      because: 'sizes are rounded to a nanometre',
    });
    expect(scaled.fit.outcome).toBe('whole');
  });

  it('may be made whole by the line width instead, where the nozzle can lay it', () => {
    const rows = scaleToWhole(assessed(measured(0.75)));
    expectClose(rows.find((row) => row.count === 2)?.lineWidthInstead ?? 0, 0.375, { rel: 1e-9, because: 'round-off' });
  });

  it('is offered what a person with the file can change, and never a longer leaf of the same file', () => {
    const ways = waysOut(assessed(measured(0.63)));
    expect(ways.length).toBeGreaterThan(0);
    expect(ways.some((way) => way.kinds.includes('scale the part'))).toBe(true);
    expect(ways.every((way) => way.kinds[0] !== 'lengthen')).toBe(true);
  });
});
