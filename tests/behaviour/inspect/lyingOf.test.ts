import { describe, expect, it } from 'vitest';
import { lyingOf } from '../../../src/core/inspect/lyingOf.ts';
import { PLATE_UPS } from '../../../src/core/inspect/judged.ts';
import { degrees, radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { archOf, curved, straight, X, Y, Z } from '../../support/flexures.ts';

describe('how a thin section lies', () => {
  it.each([
    ['+z', 'flat'],
    ['-z', 'flat'],
    ['+x', 'upright'],
    ['-x', 'upright'],
    ['+y', 'crease'],
    ['-y', 'crease'],
  ] as const)('a leaf along x, thin along y, with %s up is %s', (up, lying) => {
    expect(lyingOf(straight(), up)).toEqual({ lying, aslant: 0 });
  });

  it('is the nearest of the three, with the angle off it', () => {
    const tilt = radians(30);
    const axis = { x: 0, y: -Math.sin(tilt), z: Math.cos(tilt) };
    const across = { x: 0, y: Math.cos(tilt), z: Math.sin(tilt) };
    const { lying, aslant } = lyingOf(straight({ axis, across }), '+z');
    expect(lying).toBe('flat');
    expectClose(degrees(aslant), 30, { abs: 1e-9, because: 'round-off of one arc cosine' });
  });

  it('is never further off than a direction square on three axes alike', () => {
    const third = 1 / Math.sqrt(3);
    const frame = {
      along: { x: third, y: third, z: third },
      across: { x: 1 / Math.SQRT2, y: -1 / Math.SQRT2, z: 0 },
      axis: { x: 1 / Math.sqrt(6), y: 1 / Math.sqrt(6), z: -2 / Math.sqrt(6) },
    };
    const angles = PLATE_UPS.map((up) => degrees(lyingOf(straight(frame), up).aslant));
    expect(Math.max(...angles)).toBeLessThanOrEqual(54.7357);
  });
});

describe('a curved section', () => {
  it('is flat by its axis alone', () => {
    expect(lyingOf(archOf(), '+z').lying).toBe('flat');
    expect(lyingOf(archOf({ along: Y, across: X }), '+z').lying).toBe('flat');
  });

  it('is upright as soon as any of it is steeper than half-way', () => {
    const lyingDown = { along: X, across: Z, axis: Y };
    // A round arc that turns by 60° leaves its straight line at 30° to either side.
    expect(lyingOf(curved(60, lyingDown), '+z').lying).toBe('crease');
    expect(lyingOf(curved(120, lyingDown), '+z').lying).toBe('upright');
    expect(lyingOf(curved(60, { along: Z, across: X, axis: Y }), '+z')).toEqual({ lying: 'upright', aslant: 0 });
  });

  it('tells how far its steepest place is from lying so', () => {
    const arc = curved(120, { along: X, across: Z, axis: Y });
    // 32 straight pieces: the outermost is steeper than the arc by half a piece at most.
    expectClose(degrees(lyingOf(arc, '+z').aslant), 30, { abs: 2, because: 'half of one of 32 pieces of 120°' });
  });
});
