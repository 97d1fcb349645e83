import { describe, expect, it } from 'vitest';
import { momentRatio, widthRatio, WIDTH_BRIDGE } from '../../../src/core/closedForms/leafTorque.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';

const ANGLE = radians(35);
const PLATE = 1 / (1 - 0.38 ** 2);
const at = (length: number, angle = ANGLE): number => widthRatio(6, length, 0.84, angle, 0.38);

describe('stiffening of a leaf by its width', () => {
  it('is that of a plate up to one width long, whatever the angle', () => {
    for (const length of [0.5, 3, 6]) expect(at(length)).toBe(PLATE);
    expect(at(6, radians(0))).toBe(PLATE);
  });

  it('is that of a strip with free edges from twice its width', () => {
    for (const length of [12, 30]) {
      expectClose(at(length), momentRatio((36 * ANGLE) / (length * 0.84), 0.38), { rel: 1e-15, because: 'round-off' });
    }
  });

  it('is bridged in a straight line between, so that a dragged length does not jump', () => {
    const free = momentRatio((36 * ANGLE) / (9 * 0.84), 0.38);
    expectClose(at(9), (PLATE + free) / 2, { rel: 1e-15, because: 'round-off' });
    for (const length of [6, 12]) {
      expectClose(at(length - 1e-9), at(length + 1e-9), { abs: 1e-9, because: 'slope times the gap' });
    }
    expect(WIDTH_BRIDGE.because).toContain('assumed');
  });

  it('does not depend on the sense of the angle', () => {
    expect(at(20, radians(-35))).toBe(at(20));
  });
});
