import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleAtStrain,
  bendingStrain,
  minimumLength,
  rolledTip,
  trueBendingStrain,
} from '../../src/core/closedForms/leafBending.ts';
import { leafStiffness, leafTorque, momentRatio, widthRatio } from '../../src/core/closedForms/leafTorque.ts';
import { asRad, radians } from '../../src/core/units.ts';
import { expectClose } from '../support/close.ts';
import { angle, length } from '../support/generators.ts';

const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;
const thickness = length(0.05, 5);
const flexing = length(0.5, 200);
const width = length(0.5, 100);
const bend = angle(0.1, 360);
const poisson = fc.integer({ min: 0, max: 50 }).map((n) => n / 100);
const scale = fc.integer({ min: 10, max: 1000 }).map((n) => n / 100);

describe('strain of a bent leaf', () => {
  it('falls with length and rises with thickness and angle', () => {
    fc.assert(
      fc.property(thickness, flexing, bend, (t, l, a) => {
        const strain = bendingStrain(t, l, a);
        expect(bendingStrain(t, l + 0.001, a)).toBeLessThan(strain);
        expect(bendingStrain(t + 0.001, l, a)).toBeGreaterThan(strain);
        expect(bendingStrain(t, l, asRad(a + 0.001))).toBeGreaterThan(strain);
        expect(trueBendingStrain(t, l, a)).toBeLessThan(strain);
      }),
    );
  });

  it('does not change when the whole part is scaled; torque goes with the cube', () => {
    fc.assert(
      fc.property(thickness, flexing, width, bend, poisson, scale, (t, l, b, a, nu, s) => {
        expectClose(bendingStrain(s * t, s * l, a), bendingStrain(t, l, a), ROUND_OFF);
        const torque = (k: number) => leafTorque(1900, k * b, k * t, k * l, a, widthRatio(k * b, k * l, k * t, a, nu));
        expectClose(torque(s), s ** 3 * torque(1), { rel: 1e-9, because: 'round-off, also in the width ratio' });
      }),
    );
  });

  it('length and angle found from a strain give that strain back', () => {
    fc.assert(
      fc.property(thickness, flexing, bend, (t, l, a) => {
        const strain = bendingStrain(t, l, a);
        expectClose(minimumLength(t, a, strain), l, ROUND_OFF);
        expectClose(angleAtStrain(t, l, strain), a, ROUND_OFF);
      }),
    );
  });

  it('is the same both ways, and the tip is mirrored', () => {
    fc.assert(
      fc.property(thickness, flexing, bend, (t, l, a) => {
        const [there, back] = [rolledTip(l, a), rolledTip(l, asRad(-1 * a))];
        expect(bendingStrain(t, l, asRad(-1 * a))).toBe(bendingStrain(t, l, a));
        expect([back.x, back.y]).toEqual([there.x, -there.y]);
      }),
    );
  });

  it('keeps the tip no farther from the clamp than the leaf is long', () => {
    fc.assert(
      fc.property(flexing, angle(-360, 360), (l, a) => {
        const { x, y } = rolledTip(l, a);
        expect(Math.hypot(x, y)).toBeLessThanOrEqual(l * (1 + 1e-15));
      }),
    );
  });
});

describe('stiffening by width', () => {
  it('lies between a narrow leaf and a plate, and rises with width', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), poisson, (thousandths, nu) => {
        const searle = thousandths / 1000;
        const ratio = momentRatio(searle, nu);
        expect(ratio).toBeGreaterThanOrEqual(1 - 1e-15);
        expect(ratio).toBeLessThanOrEqual((1 + 1e-15) / (1 - nu ** 2));
        expect(momentRatio(searle + 0.01, nu)).toBeGreaterThanOrEqual(ratio - 1e-15);
      }),
    );
  });

  it('makes no jump however a size is dragged', () => {
    fc.assert(
      fc.property(thickness, flexing, width, bend, poisson, (t, l, b, a, nu) => {
        const step = Math.abs(widthRatio(b, l * (1 + 1e-6), t, a, nu) - widthRatio(b, l, t, a, nu));
        expect(step).toBeLessThan(1e-5);
      }),
    );
  });

  it('torque is stiffness times angle, and never less than for a narrow leaf', () => {
    fc.assert(
      fc.property(thickness, flexing, width, bend, poisson, (t, l, b, a, nu) => {
        const ratio = widthRatio(b, l, t, a, nu);
        const torque = leafTorque(1900, b, t, l, a, ratio);
        expectClose(torque, leafStiffness(1900, b, t, l, ratio) * a, ROUND_OFF);
        expect(torque).toBeGreaterThanOrEqual(leafTorque(1900, b, t, l, a, 1) * (1 - 1e-15));
        expect(leafTorque(1900, b, t, l, radians(0), ratio)).toBe(0);
      }),
    );
  });
});
