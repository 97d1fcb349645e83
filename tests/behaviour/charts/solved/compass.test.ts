import { describe, expect, it } from 'vitest';
import {
  compassLayout,
  compassOf,
  figured,
  nearestNeedle,
  needleCorners,
} from '../../../../src/ui/charts/solved/compass.ts';
import { expectClose } from '../../../support/close.ts';
import { answered } from '../../../support/solvedJoints.ts';

describe('the compass of give', () => {
  const leaf = answered('straightLeaf');
  const compass = compassOf(leaf);
  const needle = (direction: string) => compass?.needles.find((one) => one.direction === direction);

  it('takes the radius from the middle of the moving pad to the far end of the flexure', () => {
    expect(compass?.radius).toBe(leaf.length);
    expect(compassOf(answered('spiral'))?.radius).toBe(11.5);
  });

  it('has needles of 1/k for moves and R²/K for turns', () => {
    const free = leaf.solved.stiffness?.free;
    if (!free || !compass) throw new Error('a leaf has six stiffnesses');
    const { modulus } = leaf.effort;
    const same = { rel: 1e-12, because: 'the same division' } as const;
    for (const direction of ['x', 'y', 'z'] as const)
      expectClose(needle(direction)?.give ?? 0, 1 / (free[direction] * modulus), same);
    for (const direction of ['turnX', 'turnY', 'turnZ'] as const)
      expectClose(needle(direction)?.give ?? 0, compass.radius ** 2 / (free[direction] * modulus), same);
  });

  // A clamped beam, of any textbook: K = E·I/L in turn and k = 3·E·I/L³ across; R = L.
  it('gives for a clamped leaf three times as far in turn as across, but for shear', () => {
    const because = 'shear adds to the give across, 0.5 % at a length of 14 thicknesses';
    expectClose((needle('turnZ')?.give ?? 0) / (needle('y')?.give ?? 1), 3, { rel: 0.01, because });
  });

  it('has what is wanted at the top and its neighbours round it', () => {
    expect(compass?.needles[0]?.direction).toBe('turnZ');
    expect(compass?.needles.map(({ bearingDeg }) => bearingDeg)).toEqual([0, 60, 120, 180, 240, 300]);
    expect(compass?.needles.filter(({ isWanted }) => isWanted)).toHaveLength(1);
    expect(compassOf(answered('parallelLeaves'))?.needles[0]?.direction).toBe('x');
  });

  it('shows even rings, the longest needle within the last of them', () => {
    if (!compass) throw new Error('a leaf has six stiffnesses');
    const rings = figured(compass).map(({ at }) => at);
    expect(rings.at(-1)).toBe(compass.top);
    expect(Math.max(...compass.needles.map(({ give }) => give))).toBeLessThanOrEqual(compass.top);
    expectClose(rings[0] ?? 0, compass.top / rings.length, { rel: 1e-9, because: 'even steps' });
  });

  it('is told of strips that twist out of sight too: softest as the panel wraps', () => {
    expect(compassOf(answered('slitPanel'))?.says.soft.direction).toBe('turnZ');
  });

  it('draws a needle as long as it is told, and finds the one that a pointer is near', () => {
    const [tip] = needleCorners(90, 50, 4);
    expectClose(tip?.x ?? 0, 50, { rel: 1e-12, because: 'straight to the right' });
    const { centre, reach } = compassLayout({ width: 360, height: 262 });
    const needles = compass?.needles ?? [];
    expect(nearestNeedle(needles, { x: centre.x, y: centre.y - reach }, centre)).toBe(0);
    expect(nearestNeedle(needles, { x: centre.x + reach, y: centre.y - reach * 0.5 }, centre)).toBe(1);
    expect(nearestNeedle(needles, { x: centre.x - 1, y: centre.y + reach }, centre)).toBe(3);
  });
});
