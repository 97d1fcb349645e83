import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { checkSizes, isRefusal } from '../../src/core/flexures/checkSizes.ts';
import type { HandForm, Parameter } from '../../src/core/flexures/family.ts';
import type { Kind } from '../support/networks.ts';
import { springFaults, SPRING_KINDS } from '../support/springKinds.ts';
import { length } from '../support/generators.ts';

const BEAD = { lineWidth: 0.42, layerHeight: 0.2 };

/** Anywhere within its limits, and often at one of them or near the usual. */
const sizeOf = ({ kind, min, max, typical }: Parameter): fc.Arbitrary<number> =>
  kind === 'count'
    ? fc.oneof(fc.integer({ min, max }), fc.constantFrom(min, typical))
    : fc.oneof(
        length(min, max),
        fc.constantFrom(min, max, typical),
        length(Math.max(min, 0.7 * typical), Math.min(max, 1.4 * typical)),
      );

const sized = ({ family }: Kind) =>
  fc.record({
    sizes: fc.record(Object.fromEntries(Object.entries(family.parameters).map(([name, p]) => [name, sizeOf(p)]))),
    drive: fc.constantFrom(...family.drives),
    share: fc.integer({ min: -100, max: 100 }).filter((n) => n !== 0),
  });

const thicknessOf = ({ family }: Kind, sizes: Readonly<Record<string, number>>) =>
  (sizes[family.roles.count] ?? Number.NaN) * (family.countOf === 'lines' ? BEAD.lineWidth : BEAD.layerHeight);

function figuresOf(
  form: HandForm<Record<string, number>>,
  ...asked: readonly [Readonly<Record<string, number>>, number, number]
) {
  return [form.peakStrain?.(...asked) ?? 0, form.effort?.(...asked) ?? 0];
}

describe.each(SPRING_KINDS.map((kind) => ({ id: kind.family.id, kind })))('any $id within its limits', ({ kind }) => {
  const { family, mechanics } = kind;

  it('is refused in words, or has a network that the solver takes', () => {
    let accepted = 0;
    fc.assert(
      fc.property(sized(kind), ({ sizes, drive, share }) => {
        const thickness = thicknessOf(kind, sizes);
        const problems = checkSizes(family, sizes, thickness, BEAD);
        for (const { message } of problems) expect(message).not.toMatch(/NaN|Infinity|undefined|\.$/);
        if (problems.some(isRefusal)) return;
        accepted += 1;
        const reach = mechanics.reach(sizes, thickness, drive.id);
        expect(reach).toBeGreaterThan(0);
        expect(Number.isFinite(reach)).toBe(true);
        const asked = { drive: drive.id, amount: (share / 100) * drive.max, widthRatio: 1.1 };
        expect(springFaults(kind, sizes, mechanics.network(sizes, thickness, asked))).toEqual([]);
      }),
      { numRuns: 400 },
    );
    expect(accepted).toBeGreaterThan(20);
  });

  it('has hand forms that give finite figures and know where they hold', () => {
    fc.assert(
      fc.property(sized(kind), ({ sizes, drive, share }) => {
        const thickness = thicknessOf(kind, sizes);
        if (checkSizes(family, sizes, thickness, BEAD).some(isRefusal)) return;
        const amount = Math.abs(share / 100) * Math.min(drive.max, 2 * mechanics.reach(sizes, thickness, drive.id));
        const forms = family.handForms.filter((form) => form.drive === drive.id);
        expect(forms.some((form) => 'peakStrain' in form && 'effort' in form)).toBe(true);
        for (const form of forms) {
          expect(typeof form.appliesTo(sizes, thickness, amount)).toBe('boolean');
          const figures = figuresOf(form, sizes, thickness, amount);
          expect(figures.filter((figure) => !Number.isFinite(figure))).toEqual([]);
          expect(figures[0]).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});
