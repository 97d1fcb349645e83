import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { archPath } from '../../src/core/closedForms/archPath.ts';
import { endLoadAtTravel } from '../../src/core/closedForms/endLoadedLeaf.ts';
import { endLoadedLeaf } from '../../src/core/closedForms/leafUnderForce.ts';
import { guidedHeldLeaf } from '../../src/core/closedForms/guidedLeaf.ts';
import { leafAboutPin } from '../../src/core/closedForms/leafAboutPin.ts';
import { restPoints, snapLoads } from '../../src/core/closedForms/snapArch.ts';
import { radians } from '../../src/core/units.ts';
import { expectClose } from '../support/close.ts';
import { angle } from '../support/generators.ts';

/** A number on a grid of equal ratios, so that small and large ones are drawn alike. */
const spread = (fromPower: number, toPower: number) =>
  fc.integer({ min: fromPower * 20, max: toPower * 20 }).map((n) => 10 ** (n / 20));

const share = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);

describe('a leaf under an end force', () => {
  it('keeps its length: the tip is nowhere further from the clamp', () => {
    fc.assert(
      fc.property(spread(-6, 5), angle(0, 180), (load, direction) => {
        const { travel, approach, tipAngle, rootMoment } = endLoadedLeaf(load, direction);
        expect(Math.hypot(travel, 1 - approach)).toBeLessThanOrEqual(1 + 1e-12);
        expect(tipAngle).toBeGreaterThanOrEqual(0);
        expect(tipAngle).toBeLessThanOrEqual(direction + 1e-12);
        expectClose(rootMoment, load * ((1 - approach) * Math.sin(direction) - travel * Math.cos(direction)), {
          abs: 1e-11 * (1 + load),
          because: 'round-off of force times lever',
        });
      }),
    );
  });

  it('goes further the harder it is pushed, and a travel finds its force', () => {
    fc.assert(
      fc.property(spread(-4, 4), (load) => {
        const { travel } = endLoadedLeaf(load, radians(90));
        expect(endLoadedLeaf(1.1 * load, radians(90)).travel).toBeGreaterThan(travel);
        fc.pre(travel <= 0.995);
        expectClose(endLoadAtTravel(travel).load, load, { rel: 1e-9, because: 'round-off of a small travel' });
      }),
    );
  });
});

describe('a leaf held at its ends', () => {
  it('stiffens with travel and pulls', () => {
    fc.assert(
      fc.property(spread(-4, 4), (travel) => {
        const { force, tension, strain } = guidedHeldLeaf(travel);
        expect(force).toBeGreaterThanOrEqual(12 * travel);
        expect(guidedHeldLeaf(1.1 * travel).force / 1.1).toBeGreaterThanOrEqual(force * (1 - 1e-12));
        expect(strain).toBeGreaterThan(tension / 12);
      }),
    );
  });
});

describe('a leaf about a pin', () => {
  it('resists, strains, and is the same seen from either end', () => {
    fc.assert(
      fc.property(spread(-3, -0.7), spread(-4, -0.3), share, (thickness, turn, centre) => {
        const turned = radians((turn * 180) / Math.PI);
        const { thrust, stiffness, strain } = leafAboutPin(thickness, 1, turned, centre);
        expect(stiffness).toBeGreaterThan(0);
        expect(strain).toBeGreaterThanOrEqual((thickness * turn) / 2 / 1.0001);
        const other = leafAboutPin(thickness, 1, turned, 1 - centre);
        const same = { rel: 1e-6, because: 'round-off; a thin leaf magnifies it' };
        expectClose(other.stiffness, stiffness, same);
        expectClose(other.strain, strain, same);
        if (centre >= 0.13 && centre <= 0.87) expect(thrust).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('an arch', () => {
  it('snaps from a higher force to a lower, and stays snapped when that is below zero', () => {
    fc.assert(
      fc.property(spread(-0.5, 1.5), fc.constantFrom('double', 'free'), (ratio, form) => {
        const path = archPath(ratio, form);
        for (const along of [0, 0.5, 1, 1.5, 2, 2.5, 3]) {
          expect(Object.values(path(along)).every(Number.isFinite)).toBe(true);
        }
        const loads = snapLoads(ratio, form);
        if (loads) expect(loads.top.force).toBeGreaterThan(loads.bottom.force);
        expect(restPoints(ratio, form) !== undefined).toBe(loads !== undefined && loads.bottom.force < 0);
      }),
    );
  });
});
