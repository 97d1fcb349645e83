/** What a search tries of every kind: how many shapes, which values, and how many of them can be made. */
import { describe, expect, it } from 'vitest';
import { checkSizes, isRefusal } from '../../../src/core/flexures/checkSizes.ts';
import { isAsked } from '../../../src/core/flexures/drives.ts';
import { soughtOf } from '../../../src/core/flexures/soughts.ts';
import { everyShape, rungsFor, SEARCHED, shapeOf, USUAL } from '../../support/soughts.ts';

/** Every combination of rungs, all of them asked. A search looks at each by hand forms, which must not take long. */
const SHAPES: Readonly<Record<string, number>> = {
  straightLeaf: 7300,
  crease: 3840,
  neck: 3200,
  crossedLeaves: 3870,
  parallelLeaves: 3120,
  foldedLeaf: 7140,
  spiral: 864,
  snapArch: 3600,
  toggle: 4608,
  cellPanel: 2652,
  slitPanel: 6048,
};

/** How far from its typical value the nearest rung of a size may be, as a share of it. */
const NEAR_TYPICAL = 0.25;

it('knows of every kind how to search it, and of nothing else', () => {
  expect(SEARCHED.map(({ id }) => id).toSorted()).toEqual(Object.keys(SHAPES).toSorted());
  expect(() => soughtOf('rubberBand')).toThrow(RangeError);
});

describe.each(SEARCHED)('$id', ({ id, family, sought }) => {
  const shapes = everyShape(sought.rungs);

  it(`has ${SHAPES[id]} shapes, enough to choose from and not too many to look at`, () => {
    expect(shapes).toHaveLength(SHAPES[id] ?? Number.NaN);
    expect(shapes.length).toBeGreaterThanOrEqual(500);
    expect(shapes.length).toBeLessThanOrEqual(30_000);
  });

  it('tries values within the limits of each size, in rising order, its typical one or one near it among them', () => {
    for (const { size, values } of sought.rungs) {
      const parameter = family.parameters[size];
      if (!parameter) throw new Error(`${id} has no size ${size}`);
      const { min, max, typical, kind } = parameter;
      expect(values).toEqual([...new Set(values)].toSorted((a, b) => a - b));
      for (const value of values) {
        expect(value >= min && value <= max, `${size} of ${value}`).toBe(true);
        if (kind === 'count') expect(Number.isInteger(value)).toBe(true);
      }
      const off = Math.min(...values.map((value) => Math.abs(value - typical)));
      expect(off, `${size} near ${typical}`).toBeLessThanOrEqual(NEAR_TYPICAL * typical);
    }
  });

  it('varies lines or layers and length, and nothing that is in proportion besides', () => {
    const varied = sought.rungs.map(({ size }) => size);
    expect(varied).toEqual(expect.arrayContaining([family.roles.count, family.roles.length]));
    expect(varied.filter((size) => sought.inProportion.includes(size))).toEqual([]);
    for (const size of sought.inProportion) expect(family.parameters).toHaveProperty(size);
  });

  it('leaves at their typical value sizes that the drive does not ask for', () => {
    for (const drive of family.drives) {
      const [tried] = everyShape(
        rungsFor(family, sought, drive).map((rung) => ({ ...rung, values: rung.values.slice(0, 1) })),
      );
      if (!tried) throw new Error('every rung has a value');
      const { sizes } = shapeOf(family, sought, tried, USUAL);
      for (const [size, parameter] of Object.entries(family.parameters)) {
        if (!isAsked(parameter, drive.id)) expect(sizes[size]).toBe(parameter.typical);
      }
    }
  });

  it('can be made in at least a quarter of its shapes on a usual printer, the others refused for a size that is tried', () => {
    const refused = shapes.map((tried) => {
      const { sizes, thickness } = shapeOf(family, sought, tried, USUAL);
      return checkSizes(family, sizes, thickness, USUAL).filter(isRefusal);
    });
    const made = refused.filter((problems) => problems.length === 0);
    expect(made.length / shapes.length).toBeGreaterThanOrEqual(0.25);
    const fields = new Set(refused.flat().map(({ field }) => field));
    const tried = sought.rungs.map(({ size }) => `sizes.${size}`);
    expect([...fields].filter((field) => field === undefined || !tried.includes(field))).toEqual([]);
  });
});
