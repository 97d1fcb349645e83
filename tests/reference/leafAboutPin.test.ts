/**
 * Source [leaf-about-pin]: a leaf between a clamp and a pad that turns about a pin. The exact figures were computed outside
 * this program: a leaf that stretches but does not shear, at large rotations, as a boundary-value problem of four equations
 * with two unknown forces (collocation, tolerance 1e-9), the end turned in steps. Fair: the closed form has small slopes and
 * the bowing of a beam-column, the other neither; so the difference is the error of small slopes.
 */
import { describe, expect, it } from 'vitest';
import { crossedLeavesMoment, crossedLeavesStiffness } from '../../src/core/closedForms/crossedLeaves.ts';
import { leafAboutPin } from '../../src/core/closedForms/leafAboutPin.ts';
import { beamColumn } from '../../src/core/closedForms/beamColumn.ts';
import { asRad } from '../../src/core/units.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';

/** t/L, pin, angle; then torque per angle T·L/(E·I·θ) and largest strain. */
const EXACT = [
  [0.05, 0.5, 0.02, 1.02656, 0.000536585],
  [0.05, 0.5, 0.1, 1.59851, 0.00370782],
  [0.05, 0.5, 0.3, 3.08295, 0.0196262],
  [0.05, 0.25, 0.1, 1.93212, 0.00610916],
  [0.05, 0.25, 0.3, 2.4837, 0.0171856],
  [0.05, 0.1, 0.1, 2.93479, 0.00877953],
  [0.05, 0.1, 0.3, 3.00023, 0.029075],
  [0.05, 0.75, 0.3, 2.4837, 0.0171856],
  [0.1, 0.5, 0.1, 1.16255, 0.00603044],
  [0.1, 0.5, 0.3, 2.16052, 0.0272266],
  [0.1, 0.25, 0.1, 1.8004, 0.0126735],
  [0.1, 0.25, 0.3, 2.11415, 0.0339887],
  [0.1, 0.1273220037500351, 0.3, 2.67776, 0.0487669],
  [0.1, 0.9, 0.3, 2.9568, 0.0536841],
] as const;

describe('exact shapes of a leaf that stretches', () => {
  it.each(EXACT)('t/L %s, pin at %s, %s rad', (thickness, centre, angle, torque, strain) => {
    const form = leafAboutPin(thickness, 1, asRad(angle), centre);
    noteResidual('torque', form.stiffness, torque);
    noteResidual('strain', form.strain, strain);
    const slopes = { rel: 0.0005 + 0.06 * angle ** 2, because: 'small slopes: the next term, of the order of θ²' };
    expectClose(form.stiffness, torque, slopes);
    expectClose(form.strain, strain, { ...slopes, rel: 0.0005 + 0.15 * angle ** 2 });
  });

  it('an unstretched or a linear leaf is wrong by far at a small angle', () => {
    // T·L/(E·I·θ) = 1 at mid-length by the linear form; a tenth of a radian makes it 1.6
    expect(leafAboutPin(0.05, 1, asRad(0.1), 0.5).stiffness).toBeGreaterThan(1.5);
  });
});

describe('limits', () => {
  it.each([0, 0.12, 0.3, 0.5, 0.8, 1])('the smallest angle is the linear form, pin at %s', (centre) => {
    const form = leafAboutPin(0.1, 1, asRad(1e-6), centre);
    const tiny = { rel: 1e-4, because: 'the squeeze, of the order of θ·L/t' };
    expectClose(form.stiffness, crossedLeavesStiffness(12, 1, 1, 1, centre) / 2, tiny);
    expectClose(form.strain, (0.1 * 1e-6 * crossedLeavesMoment(centre)) / 2, tiny);
    const squeeze = (1e-12 * (9 * centre - 9 * centre ** 2 - 1)) / 15;
    expectClose(form.thrust / 12 / 100, squeeze, { rel: 1e-6, because: 'the thrust eases itself' });
  });

  it.each([0, 0.25, 0.5, 0.9])('torque is the slope of the stored energy, pin at %s', (centre) => {
    const [angle, step] = [0.2, 1e-5];
    const slope = (energy(angle + step, centre) - energy(angle - step, centre)) / (2 * step);
    const { stiffness } = leafAboutPin(0.05, 1, asRad(angle), centre);
    expectClose(stiffness * angle, slope, { rel: 1e-6, because: 'numerical derivative' });
  });

  it('a very thin leaf is thrust up to the load at which a clamped–pinned column buckles, and no further', () => {
    expectClose(leafAboutPin(1e-4, 1, asRad(0.1), 0.5).thrust, 20.190728556, { rel: 1e-4, because: 'its stretch' });
  });

  it('turns alike to either side, and not at all without an angle', () => {
    expect(leafAboutPin(0.4, 10, asRad(-0.1), 0.3)).toEqual(leafAboutPin(0.4, 10, asRad(0.1), 0.3));
    expect(leafAboutPin(0.4, 10, asRad(0), 0.3)).toMatchObject({ thrust: 0, strain: 0 });
  });
});

/** Bending and stretch, over E·I/L, from the end slopes and the bowing. */
function energy(angle: number, centre: number): number {
  const { thrust } = leafAboutPin(0.05, 1, asRad(angle), centre);
  const { stiffness, bowing } = beamColumn(thrust);
  const [s, c] = [((2 * centre - 1) * angle) / 2, angle / 2];
  const bent = stiffness.ofS * s * s + stiffness.ofC * c * c + thrust * (bowing.ofS * s * s + bowing.ofC * c * c);
  return bent + (thrust ** 2 * 0.05 ** 2) / 24;
}
