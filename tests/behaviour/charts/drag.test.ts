import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedByLength, nearestStop, type LengthDrag } from '../../../src/ui/charts/drag.ts';
import { frameOf, type Px } from '../../../src/ui/charts/frame.ts';
import { everyLength, lengthCurves, lengthDomainOf, lengthLimits } from '../../../src/ui/charts/lengthCurves.ts';
import { lifeByLength, lifeDomainOf } from '../../../src/ui/charts/lifeCurves.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const SIZE = { width: 383, height: 262 };

function lengthDrag(joint = LEAF): LengthDrag {
  const a = assessed(joint);
  const domain = lengthDomainOf(a, 'mm');
  const frame = frameOf(SIZE, { span: domain.span, kind: 'linear' }, { span: [0, domain.top], kind: 'linear' }, 48);
  return {
    from: { length: a.length, count: a.section.count },
    start: { x: frame.x(a.length), y: frame.y(a.strain.peak) },
    frame,
    snap: domain.snap,
    limits: lengthLimits(a, domain),
    curves: lengthCurves(a),
  };
}

/** Where the point of a count stands at a length. */
function placeOf({ frame, curves }: LengthDrag, length: number, count: number): Px {
  const curve = curves.find((one) => one.count === count);
  return { x: frame.x(length), y: frame.y(curve?.strainAt(length) ?? Number.NaN) };
}

describe('dragging the joint in strain against flexing length', () => {
  const drag = lengthDrag();

  it('asks for what is there when nothing has moved', () => {
    expect(askedByLength(drag, drag.start)).toEqual({ length: 12, count: 2 });
  });

  it('gives every length back from its own place on the curve', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 60 }), (halves) => {
        const length = halves / 2;
        // Within the wander of a hand round the start the length stays as it is.
        fc.pre(Math.abs(drag.frame.x(length) - drag.start.x) >= 6);
        expect(askedByLength(drag, placeOf(drag, length, 2))).toEqual({ length, count: 2 });
      }),
    );
  });

  it('gives any place across back to within half a step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 289 }), (across) => {
        const x = 46 + across;
        fc.pre(Math.abs(x - drag.start.x) >= 6);
        const { length } = askedByLength(drag, { x, y: drag.start.y });
        expect(Math.abs(length - drag.frame.x.invert(x))).toBeLessThanOrEqual(drag.snap / 2 + 1e-9);
      }),
    );
  });

  it('keeps the count when dragged sideways, however near another curve comes', () => {
    for (const dx of [-80, -40, 40, 120]) {
      expect(askedByLength(drag, { x: drag.start.x + dx, y: drag.start.y + 10 }).count).toBe(2);
    }
  });

  it('jumps to the curve it is dragged up or down to, at the same length', () => {
    for (const count of [1, 3, 4]) {
      const { y } = placeOf(drag, 12, count);
      expect(askedByLength(drag, { x: drag.start.x + 3, y })).toEqual({ length: 12, count });
    }
  });

  it('stays on the paper and within what the flexure may be', () => {
    expect(askedByLength(drag, { x: -500, y: drag.start.y }).length).toBe(4);
    expect(askedByLength(drag, { x: 5000, y: drag.start.y }).length).toBe(30);
  });

  it('goes from a measured thickness to whole lines, and has no count of its own', () => {
    const measured = lengthDrag(changed(LEAF, { measuredThickness: 0.63 }));
    const { y } = placeOf(measured, 12, 1);
    expect(askedByLength(measured, { x: measured.start.x, y }).count).toBe(1);
    const own = measured.curves.at(-1);
    expect(own?.own).toBe(true);
    expect(own?.count).toBeNaN();
  });
});

describe('dragging the joint along strain against life', () => {
  const a = assessed(LEAF);
  const domain = lifeDomainOf(a);
  const frame = frameOf(SIZE, { span: domain.cycles, kind: 'log' }, { span: domain.strain, kind: 'log' });
  const stops = lifeByLength(a, everyLength(a, 'mm')).map(({ length, cycles, strain }) => ({
    length,
    x: frame.x(cycles),
    y: frame.y(strain),
  }));

  it('gives every length back from its own place on the curve', () => {
    for (const stop of stops.filter(({ length }) => length >= 2 && length <= 60)) {
      expect(nearestStop(stops, stop)?.length).toBe(stop.length);
    }
  });

  it('gets longer to the right and shorter to the left', () => {
    const at = stops.find(({ length }) => length === 12) as Px;
    expect(nearestStop(stops, { x: at.x + 40, y: at.y + 20 })?.length).toBeGreaterThan(12);
    expect(nearestStop(stops, { x: at.x - 40, y: at.y - 20 })?.length).toBeLessThan(12);
  });

  it('has nothing to ask for where there are no stops', () => {
    expect(nearestStop([], { x: 0, y: 0 })).toBeUndefined();
  });
});
