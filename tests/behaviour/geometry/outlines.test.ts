import { describe, expect, it } from 'vitest';
import { bounds, flatten, pathArea, pathLength } from '../../../src/core/geometry/flatten.ts';
import { inset } from '../../../src/core/geometry/inset.ts';
import type { Path, Point } from '../../../src/core/geometry/outline.ts';
import { rollPoint } from '../../../src/core/geometry/roll.ts';
import { roundedOutline } from '../../../src/core/geometry/roundedOutline.ts';
import { radians } from '../../../src/core/units.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';

const EXACT = { abs: 1e-12, because: 'round-off of a few operations on small numbers' } as const;
const corner = (x: number, y: number, radius = 0) => ({ x, y, radius });
const box = (width: number, height: number, radius = 0) =>
  roundedOutline([
    corner(0, 0, radius),
    corner(width, 0, radius),
    corner(width, height, radius),
    corner(0, height, radius),
  ]);
const circle = (radius: number): Path => ({
  start: { x: radius, y: 0 },
  pieces: [{ kind: 'arc', to: { x: radius, y: 0 }, centre: { x: 0, y: 0 }, counterClockwise: true }],
});
function expectPoint(actual: Point | undefined, x: number, y: number): void {
  expectClose(actual?.x ?? Number.NaN, x, EXACT);
  expectClose(actual?.y ?? Number.NaN, y, EXACT);
}

describe('length, area and bounds of known shapes', () => {
  it('a box of 4 by 3', () => {
    expectClose(pathLength(box(4, 3)), 14, EXACT);
    expectClose(pathArea(box(4, 3)), 12, EXACT);
  });

  it('a box of 4 by 3 with corners of 0.5', () => {
    expectClose(pathLength(box(4, 3, 0.5)), 14 - 4 + Math.PI, EXACT);
    expectClose(pathArea(box(4, 3, 0.5)), 12 - (4 - Math.PI) * 0.25, EXACT);
    expect(bounds([box(4, 3, 0.5)])).toEqual({ left: 0, right: 4, bottom: 0, top: 3 });
  });

  it('a circle, and the same run clockwise', () => {
    expectClose(pathArea(circle(2)), 4 * Math.PI, EXACT);
    expectClose(pathLength(circle(2)), 4 * Math.PI, EXACT);
    expect(bounds([circle(2)])).toEqual({ left: -2, right: 2, bottom: -2, top: 2 });
    const clockwise: Path = {
      ...circle(2),
      pieces: circle(2).pieces.map((piece) => ({ ...piece, counterClockwise: false })),
    };
    expectClose(pathArea(clockwise), -4 * Math.PI, EXACT);
  });

  it('bounds of several paths hold them all, and an arc counts only where it goes', () => {
    const quarter: Path = {
      start: { x: 1, y: 0 },
      pieces: [{ kind: 'arc', to: { x: 0, y: 1 }, centre: { x: 0, y: 0 }, counterClockwise: true }],
    };
    expect(bounds([quarter])).toEqual({ left: 0, right: 1, bottom: 0, top: 1 });
    expect(bounds([quarter, box(4, 3)])).toEqual({ left: 0, right: 4, bottom: 0, top: 3 });
    expect(() => bounds([])).toThrow(RangeError);
  });

  it('a chord of a flattened circle stays within the tolerance, and no finer than needed', () => {
    const points = flatten(circle(10), 0.01);
    const sagitta = 10 * (1 - Math.cos(Math.PI / (points.length - 1)));
    expect(sagitta).toBeLessThanOrEqual(0.01);
    expect(10 * (1 - Math.cos(Math.PI / (points.length - 2)))).toBeGreaterThan(0.01);
    expect(() => flatten(circle(1), 0)).toThrow(RangeError);
    expect(() => flatten(circle(1), Number.NaN)).toThrow(RangeError);
  });

  it('a tolerance above the radius still gives a closed path', () => {
    expect(flatten(circle(1), 5).at(-1)).toEqual({ x: 1, y: 0 });
  });
});

/** Area that rounding with radius 1 takes off a corner: two tangents of cot(α/2) less the sector between them. */
function cut(angleDeg: number): number {
  return 1 / Math.tan(radians(angleDeg / 2)) - radians(180 - angleDeg) / 2;
}

describe('rounded outlines', () => {
  it('begin halfway along their last side, and reach corners that are not square', () => {
    const path = roundedOutline([corner(0, 0, 0.2), corner(4, 0, 0.2), corner(2, 2, 0.2)]);
    expectPoint(path.start, 1, 1);
    expectClose(pathArea(path), 4 - 0.04 * (2 * cut(45) + cut(90)), EXACT);
  });

  it('leave out sides that two roundings use up', () => {
    expect(box(2, 2, 1).pieces.filter(({ kind }) => kind === 'line')).toEqual([]);
    expectClose(pathArea(box(2, 2, 1)), Math.PI, EXACT);
  });

  it('refuse what cannot be drawn', () => {
    expect(() => box(2, 1, 1.5)).toThrow(RangeError);
    expect(() => roundedOutline([corner(0, 0), corner(1, 0)])).toThrow(RangeError);
  });
});

describe('inset', () => {
  it('of a box is a smaller box, until nothing is left', () => {
    const smaller = inset(box(4, 3), 1);
    expectClose(pathArea(smaller ?? circle(9)), 2, EXACT);
    expect(inset(box(4, 3), 1.5)).toBeUndefined();
    expect(inset(box(4, 3), 2)).toBeUndefined();
  });

  it('shrinks rounded corners, and mitres those it uses up', () => {
    const kept = inset(box(4, 3, 0.5), 0.3);
    expectClose(pathArea(kept ?? circle(9)), 3.4 * 2.4 - (4 - Math.PI) * 0.04, EXACT);
    const mitred = inset(box(4, 3, 0.5), 0.6);
    expectClose(pathArea(mitred ?? circle(9)), 2.8 * 1.8, EXACT);
    expect(mitred?.pieces.every(({ kind }) => kind === 'line')).toBe(true);
  });

  it('grows fillets', () => {
    // An L of two 1 mm arms, 3 mm long outside, with a fillet of 0.5 in its inner corner.
    const path = roundedOutline([
      corner(0, 0),
      corner(3, 0),
      corner(3, 1),
      corner(1, 1, 0.5),
      corner(1, 3),
      corner(0, 3),
    ]);
    const moved = inset(path, 0.2);
    const fillet = moved?.pieces.find((piece) => piece.kind === 'arc');
    expect(fillet?.centre).toEqual({ x: 1.5, y: 1.5 });
    expectPoint(fillet?.to, 0.8, 1.5);
    expect(inset(path, 0.5)).toBeUndefined();
  });

  it('joins a fillet to a side once the face between them is used up', () => {
    // A step of height 1 whose fillet of 0.9 leaves 0.1 of face: 0.3 in, the fillet must meet the top side directly.
    const path = roundedOutline([
      corner(0, 0),
      corner(6, 0),
      corner(6, 1),
      corner(3, 1, 0.9),
      corner(3, 2),
      corner(0, 2),
    ]);
    const moved = inset(path, 0.3);
    const fillet = moved?.pieces.find((piece) => piece.kind === 'arc');
    // On the circle of 1.2 about (3.9, 1.9) at height 1.7: x = 3.9 − √(1.2² − 0.2²).
    expectPoint(fillet?.to, 3.9 - Math.sqrt(1.44 - 0.04), 1.7);
  });

  it('of a circle is a circle', () => {
    expectClose(pathArea(inset(circle(2), 0.5) ?? circle(9)), 2.25 * Math.PI, EXACT);
    expect(inset(circle(2), 2)).toBeUndefined();
  });

  it('collapses where a neck is too thin, although both bodies have room', () => {
    const necked = [corner(0, 0), corner(3, 0), corner(3, 1.3), corner(6, 1.3), corner(6, 0), corner(9, 0)];
    const path = roundedOutline([...necked, ...necked.map(({ x, y }) => corner(x, 3 - y)).toReversed()]);
    expect(inset(path, 0.19)).toBeDefined();
    expect(inset(path, 0.2)).toBeUndefined();
    expect(inset(path, 0.5)).toBeUndefined();
  });
});

describe('the bend map', () => {
  it.each(checkValues('A', 'A-tip-'))('$id: tip of a rolled leaf', (row) => {
    const tip = rollPoint({ x: 1, y: 0 }, 1, radians(input(row, 'theta_deg')));
    // Absolute, because one of the expected figures is the round-off of 0.
    expectClose(tip.x, row.expected[0] ?? Number.NaN, EXACT);
    expectClose(tip.y, row.expected[1] ?? Number.NaN, EXACT);
  });

  it('changes nothing at no angle', () => {
    expect(rollPoint({ x: 7, y: 1 }, 12, radians(0))).toEqual({ x: 7, y: 1 });
  });

  it('turns the skin of a quarter turn into a quarter circle', () => {
    // R = 2, so the outer skin runs at 2.5 mm about (0, 2).
    for (const share of [0, 0.2, 0.5, 0.9, 1]) {
      const { x, y } = rollPoint({ x: share * Math.PI, y: -0.5 }, Math.PI, radians(90));
      expectClose(Math.hypot(x, y - 2), 2.5, EXACT);
    }
    expectPoint(rollPoint({ x: Math.PI, y: -0.5 }, Math.PI, radians(90)), 2.5, 2);
  });
});
