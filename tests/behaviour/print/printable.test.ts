import { describe, expect, it } from 'vitest';
import { farthestOverAir, MOST_OVER_AIR, MOST_TALL, tallness } from '../../../src/core/print/printable.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';

/** Two lines of 0.42 mm, as in the demo part. */
const WALL = { thickness: 0.84, length: 12, depth: 6 };

describe('how tall a thin wall stands', () => {
  it('goes by depth where it lies flat, by length where it stands, and not at all on the plate', () => {
    expect(tallness(WALL, 'flat')).toBeCloseTo(7.142857, 6);
    expect(tallness(WALL, 'upright')).toBeCloseTo(14.285714, 6);
    expect(tallness(WALL, 'crease')).toBe(0);
  });

  it('lets usual leaves stand, and not a sheet of one line a hand high', () => {
    for (const lying of LYINGS) expect(tallness(WALL, lying)).toBeLessThan(MOST_TALL[lying]);
    const sheet = { thickness: 0.42, length: 60, depth: 60 };
    expect(tallness(sheet, 'flat')).toBeGreaterThan(MOST_TALL.flat);
    expect(tallness(sheet, 'upright')).toBeGreaterThan(MOST_TALL.upright);
  });

  it('grants more to a wall that pads hold on every layer than to one that grows alone', () => {
    expect(MOST_TALL.flat).toBeGreaterThan(MOST_TALL.upright);
  });
});

describe('what is laid over air', () => {
  it('tells the reach that comes nearer to its limit', () => {
    expect(farthestOverAir({ bridge: 5, ledge: 1 })).toEqual({ value: 1, limit: MOST_OVER_AIR.ledge });
    expect(farthestOverAir({ bridge: 30, ledge: 1 })).toEqual({ value: 30, limit: MOST_OVER_AIR.bridge });
  });

  it('is within the limit where nothing is', () => {
    const { value, limit } = farthestOverAir({ bridge: 0, ledge: 0 });
    expect(value).toBe(0);
    expect(limit).toBeGreaterThan(0);
  });

  it('lets what is held at both ends reach further than what is held at one', () => {
    expect(MOST_OVER_AIR.bridge).toBeGreaterThan(MOST_OVER_AIR.ledge);
  });
});
