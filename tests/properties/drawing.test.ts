/** Laws of the drawing that hold for any joint of a kind with an outline of its own, however odd, on any width of screen. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import { asRad } from '../../src/core/units.ts';
import { rollPoint } from '../../src/core/geometry/roll.ts';
import { angleMarks } from '../../src/ui/drawing/angleDimension.ts';
import { fibre, padTransform } from '../../src/ui/drawing/bentPath.ts';
import { handlesOf } from '../../src/ui/drawing/handles.ts';
import { layOut } from '../../src/ui/drawing/layout.ts';
import { NOMINAL_PX_PER_MM, onSheet, pair, SCALES } from '../../src/ui/drawing/sheet.ts';
import { strainMap } from '../../src/ui/drawing/strainMap.ts';
import { outlinedJoint } from '../support/partGenerators.ts';

const drawn = fc
  .record({
    joint: outlinedJoint,
    width: fc.integer({ min: 280, max: 1400 }),
    fraction: fc.integer({ min: 0, max: 20 }),
  })
  .map(({ joint: any, width, fraction }) => {
    const result = assess(any);
    if (!result.ok) throw new Error('the generator gives only joints that are understood');
    return { layout: layOut(result.value, width, NOMINAL_PX_PER_MM, 'mm'), width, fraction: fraction / 20 };
  });

/** Every number of a value that is plain data, wherever it is. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') return /NaN|Infinity/u.test(value) ? [Number.NaN] : [];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const RUNS = { numRuns: 60 };

describe('the drawing of any joint with an outline', () => {
  it('is laid out in finite numbers, at one of the scales', () => {
    fc.assert(
      fc.property(drawn, ({ layout, fraction }) => {
        const { a: _, ...laid } = layout;
        const marks = angleMarks(layout.figure, layout.sheet, layout.angle, fraction);
        expect(numbersIn(laid).filter((value) => !Number.isFinite(value))).toEqual([]);
        expect(numbersIn(marks).filter((value) => !Number.isFinite(value))).toEqual([]);
        expect(SCALES).toContain(layout.sheet.scale);
        expect(layout.sheet.top).toBeLessThan(0);
        expect(layout.sheet.bottom).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it('shows strain from none to the peak and no more, in rising steps', () => {
    fc.assert(
      fc.property(drawn, ({ layout }) => {
        const { along, roots } = strainMap(layout.a, layout.figure, 8);
        const shares = roots.map(({ share }) => share);
        expect(shares).toEqual(shares.toSorted((p, q) => p - q));
        expect(Math.min(...shares)).toBeGreaterThan(0);
        expect(Math.max(...shares)).toBeLessThan(layout.a.strain.rootFactor);
        expect(along.every(({ share }) => share > 0 && share < 1)).toBe(true);
        expect(numbersIn(roots).filter((value) => !Number.isFinite(value))).toEqual([]);
      }),
      RUNS,
    );
  });

  it('offers handles whose values lie between their ends', () => {
    fc.assert(
      fc.property(drawn, ({ layout }) => {
        for (const { value, min, max } of handlesOf(layout)) {
          expect(value).toBeGreaterThanOrEqual(min);
          expect(value).toBeLessThanOrEqual(max);
        }
      }),
      RUNS,
    );
  });

  it('bends a fibre to where the core rolls its ends, and carries the pad along', () => {
    fc.assert(
      fc.property(drawn, ({ layout, fraction }) => {
        const { figure, sheet } = layout;
        // What does not roll to an arc is drawn at rest.
        fc.pre(fraction > 0 && figure.angle > 0);
        const angle = asRad(figure.angle * fraction);
        const roll = { sheet, length: figure.length, angle };
        const [start, end] = [0, figure.length].map((x) =>
          pair(onSheet(sheet, rollPoint({ x, y: figure.thickness / 2 }, figure.length, angle))),
        );
        const path = fibre(roll, 0, figure.length, figure.thickness / 2);
        expect(path.startsWith(`M${start}A`)).toBe(true);
        expect(path.endsWith(` ${end}`)).toBe(true);
        const tip = pair(onSheet(sheet, rollPoint({ x: figure.length, y: 0 }, figure.length, angle)));
        expect(padTransform(roll)).toContain(`translate(${tip}) rotate(`);
      }),
      RUNS,
    );
  });
});
