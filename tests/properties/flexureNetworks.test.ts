/** Laws of the networks of leaves and necks: any sizes within their limits are refused in words, or give a sound network. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSizes, isRefusal } from '../../src/core/flexures/checkSizes.ts';
import { sizesInForce } from '../../src/core/flexures/drives.ts';
import type { FlexureFamily, Parameter, Sizes } from '../../src/core/flexures/family.ts';
import { radians } from '../../src/core/units.ts';
import { LEAF_KINDS } from '../support/leafKinds.ts';
import { faultsOf } from '../support/networks.ts';
import '../support/seed.ts';

const BEAD = { lineWidth: 0.42, layerHeight: 0.2 };
const STEP: Readonly<Record<Parameter['kind'], number>> = { length: 1e-3, count: 1, angle: radians(0.1), ratio: 0.01 };

/** A size anywhere between its limits, on a grid that keeps counterexamples readable, and often at the ends. */
function sizeOf({ kind, min, max, typical }: Parameter): fc.Arbitrary<number> {
  const steps = Math.floor((max - min) / STEP[kind]);
  const usual = fc.integer({ min: 0, max: 20 }).map((n) => Math.min(max, Math.max(min, (typical * n) / 10)));
  const anywhere = fc.integer({ min: 0, max: steps }).map((n) => (n === steps ? max : min + n * STEP[kind]));
  if (kind === 'count') return fc.integer({ min, max });
  return fc.oneof(usual, usual, anywhere, fc.constantFrom(min, max));
}

function sizesOf(family: FlexureFamily): fc.Arbitrary<Sizes> {
  return fc.record(
    Object.fromEntries(Object.entries(family.parameters).map(([name, parameter]) => [name, sizeOf(parameter)])),
  );
}

const asked = (family: FlexureFamily) =>
  fc.record({
    sizes: sizesOf(family),
    drive: fc.constantFrom(...family.drives),
    /** Share of the way from the least to the largest movement of the drive. */
    share: fc.integer({ min: 0, max: 20 }).map((n) => (n / 20) ** 3),
  });

describe.each(LEAF_KINDS.map((kind) => ({ id: kind.family.id, kind })))('$id', ({ kind }) => {
  const { family, mechanics } = kind;
  const unit = family.countOf === 'lines' ? BEAD.lineWidth : BEAD.layerHeight;
  const thicknessOf = (sizes: Sizes) => (sizes[family.roles.count] ?? 1) * unit;

  it('is refused in words that say what would help, or has a sound network', () => {
    let [refused, sound] = [0, 0];
    fc.assert(
      fc.property(asked(family), ({ sizes: given, drive, share }) => {
        const sizes = sizesInForce(family, given, drive.id);
        const thickness = thicknessOf(sizes);
        const problems = checkSizes(family, sizes, thickness, BEAD);
        for (const { message } of problems) expect(message).toMatch(/^[^\n]{20,}[^.]$/u);
        if (problems.some(isRefusal)) {
          refused += 1;
          return;
        }
        sound += 1;
        const amount = drive.min + share * (drive.max - drive.min);
        const network = mechanics.network(sizes, thickness, { drive: drive.id, amount, widthRatio: 1.1 });
        expect(faultsOf(kind, sizes, network)).toEqual([]);
        const reach = mechanics.reach(sizes, thickness, drive.id);
        expect(reach > 0 && Number.isFinite(reach)).toBe(true);
      }),
      { numRuns: 400 },
    );
    // The law says nothing if all cases fall on one side of it.
    expect(sound).toBeGreaterThan(40);
    expect(refused).toBeGreaterThan(0);
  });

  it('has hand forms with numbers in them wherever it is not refused', () => {
    fc.assert(
      fc.property(asked(family), ({ sizes: given, drive, share }) => {
        const sizes = sizesInForce(family, given, drive.id);
        const thickness = thicknessOf(sizes);
        if (checkSizes(family, sizes, thickness, BEAD).some(isRefusal)) return;
        const amount = drive.min + share * (drive.max - drive.min);
        for (const form of family.handForms.filter(({ drive: id }) => id === drive.id)) {
          const told = [form.peakStrain?.(sizes, thickness, amount), form.effort?.(sizes, thickness, amount)];
          for (const value of told) if (value !== undefined) expect(value > 0 && Number.isFinite(value)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('pushes as many times as hard as there are alike, with the same network', () => {
    const name = family.roles.sideBySide;
    if (name === undefined) throw new Error(`${family.id} says nothing of how many push side by side`);
    fc.assert(
      fc.property(asked(family), fc.integer({ min: 2, max: 12 }), ({ sizes, drive }, alike) => {
        const thickness = thicknessOf(sizes);
        const of = (count: number) => ({ ...sizesInForce(family, sizes, drive.id), [name]: count });
        if (checkSizes(family, of(1), thickness, BEAD).some(isRefusal)) return;
        const how = { drive: drive.id, amount: drive.typical, widthRatio: 1 };
        const [one, many] = [1, alike].map((count) => mechanics.network(of(count), thickness, how));
        expect(many).toEqual({ ...one, alike });
        for (const form of family.handForms.filter(({ drive: id }) => id === drive.id)) {
          const effort = (count: number) => form.effort?.(of(count), thickness, drive.typical) ?? 0;
          expect(effort(alike) / effort(1)).toBeCloseTo(alike, 9);
          expect(form.peakStrain?.(of(alike), thickness, drive.typical)).toBe(
            form.peakStrain?.(of(1), thickness, drive.typical),
          );
        }
      }),
      { numRuns: 60 },
    );
  });
});
