import { describe, expect, it } from 'vitest';
import { bandLoop, bandOutline, sideOf } from '../../../src/core/geometry/band.ts';
import { pathArea } from '../../../src/core/geometry/flatten.ts';
import { isInside, loopPath, pathLoop } from '../../../src/core/geometry/loop.ts';
import { arcBand, straightBand } from '../../support/bands.ts';
import { expectClose } from '../../support/close.ts';

const EXACT = { abs: 1e-12, because: 'round-off of a few operations on small numbers' } as const;

describe('a band', () => {
  it('of a straight member is its rectangle, counter-clockwise, left side first', () => {
    const path = bandOutline(straightBand({ x: 1, y: 2 }, { x: 5, y: 2 }, 0.8, 1));
    expect([path.start, ...path.pieces.map(({ to }) => to)]).toEqual([
      { x: 5, y: 2.4 },
      { x: 1, y: 2.4 },
      { x: 1, y: 1.6 },
      { x: 5, y: 1.6 },
      { x: 5, y: 2.4 },
    ]);
    expectClose(pathArea(path), 3.2, EXACT);
  });

  it('of a taper is its trapezium', () => {
    const taper = { x: [0, 10], y: [0, 0], angle: [0, 0], thickness: [2, 1] };
    expectClose(pathArea(bandOutline(taper)), 15, EXACT);
    expect(sideOf(taper, 1, -0.5)).toEqual({ x: 10, y: -0.5 });
  });

  it('of an arc is the part of an annulus between its chords', () => {
    // Trapezia of 40 equal turns: ½(R² − r²) sin(α) each; R² − r² is twice the radius times the thickness.
    const path = bandOutline(arcBand({ x: 3, y: -1 }, 10, 0, 2, 1));
    expectClose(pathArea(path), 40 * 10 * Math.sin(2 / 40), EXACT);
  });

  it('needs two samples', () => {
    expect(() => bandLoop({ x: [0], y: [0], angle: [0], thickness: [1] })).toThrow(RangeError);
    expect(() => sideOf({ x: [0], y: [0], angle: [0], thickness: [1] }, 1, 0)).toThrow(RangeError);
  });
});

describe('loops', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 4, y: 4 },
    { x: 0, y: 4 },
  ];
  const hole = [
    { x: 1, y: 1 },
    { x: 1, y: 3 },
    { x: 3, y: 3 },
    { x: 3, y: 1 },
  ];

  it('go to a path and back', () => {
    expect(pathLoop(loopPath(square), 0.01)).toEqual(square);
    expect(() => loopPath(square.slice(0, 2))).toThrow(RangeError);
  });

  it('hold what they wind round, less their holes', () => {
    expect(isInside([square, hole], { x: 0.5, y: 2 })).toBe(true);
    expect(isInside([square, hole], { x: 2, y: 2 })).toBe(false);
    expect(isInside([square], { x: 2, y: 2 })).toBe(true);
    expect(isInside([square, hole], { x: 5, y: 2 })).toBe(false);
    expect(isInside([], { x: 0, y: 0 })).toBe(false);
  });
});
