import { describe, expect, it } from 'vitest';
import { padOutline, standOff, type PadRoot } from '../../../src/core/flexures/commonNetwork.ts';
import { arcReach, pinnedReach } from '../../../src/core/flexures/reach.ts';
import { bounds, pathArea } from '../../../src/core/geometry/flatten.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';

const BOX = { left: -5, right: 5, bottom: -3, top: 0 };
/** What a fillet of radius r adds in a square corner. */
const FILLET = (radius: number) => radius ** 2 * (1 - Math.PI / 4);

function rootAt(x: number): PadRoot {
  return { side: 'top', end: { x, y: 0.5 }, heading: Math.PI / 2, thickness: 0.8, fillet: 0.5 };
}

describe('the outline of a pad', () => {
  it('is its rectangle less its rounded corners', () => {
    expectClose(pathArea(padOutline(BOX, [])), 30 - 4 * FILLET(0.5), { rel: 1e-12, because: 'round-off' });
    expectClose(pathArea(padOutline(BOX, [], 0)), 30, { rel: 1e-12, because: 'round-off' });
  });

  it.each(['top', 'bottom', 'left', 'right'] as const)('grows a filleted root at its %s', (side) => {
    const end = {
      top: { x: 1, y: 0.6, heading: 90 },
      bottom: { x: 1, y: -3.6, heading: -90 },
      left: { x: -5.6, y: -1.5, heading: 180 },
      right: { x: 5.6, y: -1.5, heading: 0 },
    }[side];
    const heading = radians(end.heading);
    const root: PadRoot = { side, end: { x: end.x, y: end.y }, heading, thickness: 0.8, fillet: 0.6 };
    // 0.6 of the leaf's own width, and a fillet on either side.
    const wanted = 30 + 0.6 * 0.8 + 2 * FILLET(0.6);
    expectClose(pathArea(padOutline(BOX, [root], 0)), wanted, { rel: 1e-9, because: 'round-off' });
  });

  it('takes several roots in any order', () => {
    expect(padOutline(BOX, [rootAt(-3), rootAt(0), rootAt(3)])).toEqual(
      padOutline(BOX, [rootAt(3), rootAt(-3), rootAt(0)]),
    );
  });

  it('reaches to the end of a leaning leaf, whose sharper corner just takes its fillet', () => {
    const lean = radians(40);
    const off = standOff(0.5, 0.8, lean);
    const heading = Math.PI / 2 - lean;
    const end = { x: off * Math.sin(lean), y: off * Math.cos(lean) };
    const path = padOutline(BOX, [{ side: 'top', end, heading, thickness: 0.8, fillet: 0.5 }], 0);
    expectClose(bounds([path]).top, end.y + 0.4 * Math.sin(lean), { rel: 1e-12, because: 'round-off' });
    const shorter = { x: end.x * 0.99, y: end.y * 0.99 };
    expect(() => padOutline(BOX, [{ side: 'top', end: shorter, heading, thickness: 0.8, fillet: 0.5 }], 0)).toThrow(
      'does not fit',
    );
  });
});

describe('how far pads turn before they meet', () => {
  it.each([
    // Without a fillet the faces point at the centre of the arc: they meet where its radius is the pad's reach, L/θ = h.
    { length: 12, inner: 4, standOff: 0, turn: 3 },
    { length: 10, inner: 1, standOff: 0, turn: 2 * Math.PI },
    // A leaf of no length folds like a gap of two fillets, which closes when each face has turned up to a corner.
    { length: 1e-9, inner: 2, standOff: 2, turn: Math.PI / 2 },
  ])('on a leaf of $length mm, pads reaching $inner mm: $turn rad', ({ length, inner, standOff: off, turn }) => {
    expectClose(arcReach(length, inner, off), turn, { rel: 1e-6, because: 'halved 50 times; length of 1e-9 mm' });
  });

  it.each([
    // Square faces at the same distance as their half width close like the hands of a book, a quarter turn.
    { moving: 2, fixed: 2, half: 2, turn: Math.PI / 2 },
    { moving: 1, fixed: 1, half: 1e6, turn: 0 },
    { moving: 3, fixed: 3, half: 1e-9, turn: Math.PI },
  ])(
    'about a pin between faces $moving and $fixed mm off, $half mm wide: $turn rad',
    ({ moving, fixed, half, turn }) => {
      expectClose(pinnedReach(moving, fixed, half), turn, { abs: 1e-5, because: 'a width of 1e6 mm for no end' });
    },
  );

  it('is the same whichever pad is the moving one', () => {
    expect(pinnedReach(2, 5, 4)).toBe(pinnedReach(5, 2, 4));
  });
});
