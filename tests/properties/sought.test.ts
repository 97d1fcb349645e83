/** Laws of what a search tries: sizes within their limits, efforts in proportion, and the room that the network takes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSizes, isRefusal } from '../../src/core/flexures/checkSizes.ts';
import type { FlexureFamily, Sizes } from '../../src/core/flexures/family.ts';
import { mechanicsOf } from '../../src/core/flexures/networks.ts';
import type { Mm } from '../../src/core/units.ts';
import { actingSizes, sizesNear, thicknessOf } from '../support/families.ts';
import { extentOf, printedEdges } from '../support/roomBox.ts';
import '../support/seed.ts';
import { profiles, rungsFor, SEARCHED, shapeOf, triedOf } from '../support/soughts.ts';

/** Said of a single size alone, apart from the rest. */
const OF_LIMITS = new Set([
  'missing-field',
  'not-one-of',
  'not-a-number',
  'not-whole',
  'below-minimum',
  'above-maximum',
]);

/** Two numbers that are reckoned in another order differ in their last digits. */
const ROUND_OFF_PLACES = 9;

/** What is tried of a kind under any of its drives, and a printer. */
function triedCases({ family, sought }: Pick<(typeof SEARCHED)[number], 'family' | 'sought'>) {
  return fc.constantFrom(...family.drives).chain((drive) =>
    fc.record({
      drive: fc.constant(drive),
      tried: triedOf(rungsFor(family, sought, drive)),
      profile: profiles,
      depth: fc.integer({ min: 1, max: 300 }),
      alike: fc.integer({ min: 1, max: 24 }),
    }),
  );
}

describe.each(SEARCHED)('$id as it is tried', ({ family, sought }) => {
  it('has every size, within its own limits, with any printer', () => {
    fc.assert(
      fc.property(triedCases({ family, sought }), ({ tried, profile }) => {
        const { sizes, thickness } = shapeOf(family, sought, tried, profile);
        const problems = checkSizes(family, sizes, thickness, profile);
        expect(problems.filter(({ code }) => OF_LIMITS.has(code))).toEqual([]);
        expect(sizes).toMatchObject(tried);
      }),
      { numRuns: 300 },
    );
  });

  it('pushes in proportion to what is in proportion, which neither strains, refuses nor widens it', () => {
    let compared = 0;
    fc.assert(
      fc.property(triedCases({ family, sought }), ({ drive, tried, profile, depth, alike }) => {
        const { sizes: one, thickness } = shapeOf(family, sought, tried, profile);
        for (const name of sought.inProportion) {
          const value = name === family.roles.depth ? depth : alike;
          const many: Sizes = { ...one, [name]: value };
          const times = value / (one[name] ?? Number.NaN);
          const said = (sizes: Sizes) => family.check(sizes, thickness, profile).map(({ code }) => code);
          expect(said(many)).toEqual(said(one));
          const [narrow, wide] = [sought.room(one, thickness), sought.room(many, thickness)];
          expect([wide.along, wide.across]).toEqual([narrow.along, narrow.across]);
          if (family.check(one, thickness, profile).some(isRefusal)) continue;
          for (const form of family.handForms.filter(({ drive: id }) => id === drive.id)) {
            const strains = [one, many].map((sizes) => form.peakStrain?.(sizes, thickness, drive.typical));
            if (strains[0] !== undefined) expect((strains[1] ?? 0) / strains[0]).toBeCloseTo(1, ROUND_OFF_PLACES);
            const efforts = [one, many].map((sizes) => form.effort?.(sizes, thickness, drive.typical));
            if (efforts[0] !== undefined)
              expect((efforts[1] ?? 0) / efforts[0] / times).toBeCloseTo(1, ROUND_OFF_PLACES);
            compared += 1;
          }
        }
      }),
      { numRuns: 60 },
    );
    // A panel with slits has nothing in proportion; of any other the law must have been asked.
    expect(compared > 0).toBe(sought.inProportion.length > 0);
  });
});

/** Bodies that are the user's own, of which only the root fillets take room of the joint. */
const OWN: Readonly<Record<string, (sizes: Sizes) => readonly string[]>> = {
  spiral: () => ['hub', 'ring'],
  snapArch: () => ['frame', 'block'],
  toggle: () => ['frame'],
  cellPanel: ({ cells }) => ['slat0', `slat${cells}`],
  slitPanel: () => [],
};
const ENDS = () => ['fixed', 'moving'];

/** Kinds whose network lies along y. */
const UPWARDS = new Set(['crossedLeaves', 'parallelLeaves']);

/**
 * How much larger than the network a room may be. Arms of a spiral end anywhere round the ring: they run into it by half
 * their thickness on one side or on several.
 */
const SPARE: Readonly<Record<string, (thickness: Mm) => Mm>> = { spiral: (thickness) => thickness };

/** Chords of curves and the summing up of middle lines are good to a thousandth; nobody sees a hundredth of a millimetre. */
const NEAR: Mm = 0.01;

function measured(family: FlexureFamily, sizes: Sizes, thickness: Mm, drive: string) {
  const network = mechanicsOf(family.id).network(sizes, thickness, { drive, amount: 0.1, widthRatio: 1 });
  const { x, y } = extentOf(printedEdges(network, (OWN[family.id] ?? ENDS)(sizes)));
  const planes = new Set(network.model.members.map(({ plane }) => plane ?? 0)).size;
  const wide = Math.max(...network.model.members.map(({ width }) => width));
  const depth = planes * wide + (planes - 1) * (sizes['gap'] ?? 0);
  return UPWARDS.has(family.id) ? { along: y, across: x, depth } : { along: x, across: y, depth };
}

describe.each(SEARCHED)('the room of $id', ({ family, sought }) => {
  it('is that of its network as printed, with root fillets and without the bodies at its ends', () => {
    let compared = 0;
    const cases = fc.record({ given: sizesNear(family), drive: fc.constantFrom(...family.drives) });
    fc.assert(
      fc.property(cases, ({ given, drive }) => {
        const sizes = actingSizes(family, given, drive);
        if (!sizes) return;
        compared += 1;
        const thickness = thicknessOf(family, sizes);
        const room = sought.room(sizes, thickness);
        const network = measured(family, sizes, thickness, drive.id);
        const spare = (SPARE[family.id] ?? (() => 0))(thickness);
        for (const side of ['along', 'across'] as const) {
          expect(network[side]).toBeLessThanOrEqual(room[side] + NEAR);
          expect(room[side]).toBeLessThanOrEqual(network[side] + spare + NEAR);
        }
        expect(room.depth).toBeCloseTo(network.depth, ROUND_OFF_PLACES);
      }),
      { numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(30);
  });
});
