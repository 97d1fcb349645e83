import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import { medianLifeAt, peakStrainFor, strainAtCycles, effortAt } from '../../src/core/design/curves.ts';
import { scaleJoint } from '../../src/core/design/scalePart.ts';
import { allowedPeakStrain, shortestLength } from '../../src/core/design/sizeFor.ts';
import { withCount } from '../../src/core/design/withCount.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { asRad } from '../../src/core/units.ts';
import { angle, count, length } from '../support/generators.ts';
import { assessed, changed, LEAF } from '../support/joints.ts';

/** Leaves of everyday size that are not refused. */
const joints: fc.Arbitrary<Joint> = fc
  .record({
    lines: count(6),
    // Longer than a dozen lines are thick: thicker than long is refused.
    flexing: length(5.1, 80),
    fillet: length(0.1, 1),
    turn: angle(1, 170),
    cycles: fc.integer({ min: 1, max: 900_000 }),
    both: fc.boolean(),
    upright: fc.boolean(),
    filament: fc.constantFrom(...FILAMENTS.filter((row) => row.printable).map((row) => row.id)),
  })
  .map(({ lines, flexing, fillet, turn, cycles, both, upright, filament }) =>
    changed(LEAF, {
      // Pads that leave room for a dozen lines, so that no law fails for want of a pad.
      sizes: { lines, length: flexing, fillet, pad: 20 },
      movement: { amount: turn, cycles, ways: both ? 'both ways' : 'one way' },
      profile: { filament, lying: upright ? 'upright' : 'flat' },
    }),
  );

const RANK = { pass: 0, beyond: 1, caution: 2, fail: 3 } as const;

/** Every number anywhere inside a value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('laws of one joint', () => {
  it('no figure of an assessment is NaN', () => {
    fc.assert(fc.property(joints, (joint) => numbersIn(assessed(joint)).every((figure) => !Number.isNaN(figure))));
  });

  it('strain falls with length and rises with lines', () => {
    fc.assert(
      fc.property(joints, length(0.001, 20), (joint, more) => {
        const a = assessed(joint);
        expect(peakStrainFor(a, { length: a.length + more })).toBeLessThan(a.strain.peak);
        expect(assessed(withCount(joint, a.section.count + 1)).strain.nominal).toBeGreaterThan(a.strain.nominal);
      }),
    );
  });

  it('a longer leaf never has a worse chance, nor a worse verdict', () => {
    fc.assert(
      fc.property(joints, length(0.001, 20), (joint, more) => {
        const a = assessed(joint);
        const b = assessed(changed(joint, { sizes: { length: a.length + more } }));
        expect(b.life.chance).toBeGreaterThanOrEqual(a.life.chance);
        expect(RANK[b.verdict.grade]).toBeLessThanOrEqual(RANK[a.verdict.grade]);
      }),
    );
  });

  it('more cycles never have a better chance', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const more = changed(joint, { movement: { cycles: joint.movement.cycles * 2 } });
        expect(assessed(more).life.chance).toBeLessThanOrEqual(assessed(joint).life.chance);
      }),
    );
  });

  it('the shortest length passes, and one per mille less does not', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const a = assessed(joint);
        const shortest = shortestLength(a);
        fc.pre(shortest > 1.01 * a.section.thickness && shortest < 190);
        const at = (share: number) => assessed(changed(joint, { sizes: { length: shortest * share } })).verdict.grade;
        expect(at(1.001)).toBe('pass');
        expect(at(0.999)).not.toBe('pass');
      }),
    );
  });

  it('sizing lines for a strain meets it, and one line more does not', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const a = assessed(joint);
        const target = allowedPeakStrain(a);
        const fits = (lines: number) => peakStrainFor(a, { count: lines }) <= target;
        const lines = Array.from({ length: 12 }, (_, i) => i + 1)
          .filter(fits)
          .at(-1);
        fc.pre(lines !== undefined && lines < 12);
        const rounding = 1e-12;
        expect(assessed(withCount(joint, lines ?? 1)).strain.peak).toBeLessThanOrEqual(target + rounding);
        expect(assessed(withCount(joint, (lines ?? 1) + 1)).strain.peak).toBeGreaterThan(target);
      }),
    );
  });

  it('scaling a part leaves strain as it was and multiplies torque by s³', () => {
    fc.assert(
      fc.property(joints, length(0.5, 3), (joint, s) => {
        const whole = { ...joint, measuredThickness: assessed(joint).section.thickness };
        const before = assessed(whole);
        const after = assess(scaleJoint(whole, s));
        fc.pre(after.ok);
        if (!after.ok) return;
        // Sizes are rounded to a nanometre, which is 2e-6 of the thinnest section here.
        expect(Math.abs(after.value.strain.nominal / before.strain.nominal - 1)).toBeLessThan(1e-5);
        expect(Math.abs(after.value.effort.effort / before.effort.effort / s ** 3 - 1)).toBeLessThan(1e-5);
      }),
    );
  });

  it('the curve of strain against life is the inverse of life at a strain', () => {
    fc.assert(
      fc.property(joints, fc.integer({ min: 10, max: 1_000_000 }), (joint, cycles) => {
        const a = assessed(joint);
        const strain = strainAtCycles(a, cycles);
        fc.pre(medianLifeAt(a, strain) > 0);
        expect(Math.abs(medianLifeAt(a, strain) / cycles - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('torque never falls as the joint bends further, and meets the assessment at the wanted angle', () => {
    fc.assert(
      fc.property(joints, fc.integer({ min: 1, max: 100 }), (joint, per) => {
        const a = assessed(joint);
        const part = effortAt(a, asRad((joint.movement.amount * per) / 100));
        const next = effortAt(a, asRad((joint.movement.amount * (per + 1)) / 100));
        expect(next.typical).toBeGreaterThanOrEqual(part.typical);
        expect(part.low).toBeLessThanOrEqual(part.typical);
        expect(effortAt(a, joint.movement.amount).typical).toBeCloseTo(a.effort.effort, 9);
      }),
    );
  });
});
