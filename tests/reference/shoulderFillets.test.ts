/**
 * Source [roark-17.1]: stepped flat bar with shoulder fillets; coefficients read on pages that quote the table, values in
 * checkvalues/E.json computed from them outside this program.
 *
 * Source [peterson-3]: an independent set of coefficients for the same bar, written out here and nowhere in the program,
 * with the two misprints that circulate corrected. Fair as a comparison: both are fits to photoelastic tests of one shape.
 *
 * Source [carvill-21]: a handbook's own table of the same factors, read from a scan.
 */
import { describe, expect, it } from 'vitest';
import { shoulderConcentration } from '../../src/core/strength/stressConcentration.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

type Load = 'bending' | 'tension';
type Branch = readonly (readonly [number, number, number])[];

const PETERSON: Record<Load, { low: Branch; high: Branch }> = {
  tension: {
    low: [
      [1.006, 1.008, -0.044],
      [-0.115, -0.584, 0.315],
      [0.245, -1.006, -0.257],
      [-0.135, 0.582, -0.017],
    ],
    high: [
      [1.02, 1.009, -0.048],
      [-0.065, -0.165, -0.007],
      [-3.459, 1.266, -0.016],
      [3.505, -2.109, 0.069],
    ],
  },
  bending: {
    low: [
      [1.006, 0.967, 0.013],
      [-0.27, -2.372, 0.708],
      [0.662, 1.157, -0.908],
      [-0.405, 0.249, 0.2],
    ],
    high: [
      [1.058, 1.002, -0.038],
      [-3.652, 1.639, -0.436],
      [6.17, -5.687, 1.175],
      [-2.558, 3.046, -0.701],
    ],
  },
};

/** As two pages print it: minus 0.200 in C4 of the first branch in bending. */
const MISPRINTED_BENDING: Branch = PETERSON.bending.low.map((c, i) => (i === 3 ? ([-0.405, 0.249, -0.2] as const) : c));
/** As one page prints it: −3.495 for −3.459 in C3 of the second branch in tension. */
const MISPRINTED_TENSION: Branch = PETERSON.tension.high.map((c, i) =>
  i === 2 ? ([-3.495, 1.266, -0.016] as const) : c,
);

const fit = (branch: Branch, x: number, y: number): number =>
  branch.reduce((sum, [a, b, c], power) => sum + (a + b * Math.sqrt(x) + c * x) * y ** power, 0);

function peterson(load: Load, thickness: number, shoulder: number, fillet: number): number {
  const h = (shoulder - thickness) / 2;
  const { low, high } = PETERSON[load];
  return fit(h / fillet <= 2 ? low : high, h / fillet, (2 * h) / shoulder);
}

const roark = (load: Load, shoulder: number, fillet: number) => shoulderConcentration(load, 1, shoulder, fillet);

/** Sum of the terms that do not depend on h/r. */
const constants = (branch: Branch): number => branch.reduce((sum, [a]) => sum + a, 0);

/** y from 0 to 1 in tenths, at which the branches are compared where they meet. */
const DEPTHS = Array.from({ length: 11 }, (_, i) => i / 10);
const jump = (low: Branch, high: Branch): number =>
  Math.max(...DEPTHS.map((y) => Math.abs(fit(low, 2, y) - fit(high, 2, y))));

describe.each(['bending', 'tension'] as const)('stepped bar in %s', (load) => {
  it.each(checkValues('E', `E-roark-${load}`))('$id', (row) => {
    expectRow(row, roark(load, input(row, 'D_over_d'), input(row, 'r_over_d')).factor);
  });

  const published = checkValues('E', `E-peterson-${load}`);
  it.each(published)('$id: the second set as written here gives its own figures', (row) => {
    expectRow(row, peterson(load, 1, input(row, 'D_over_d'), input(row, 'r_over_d')));
  });

  it.each(published)('$id: both sets agree', (row) => {
    const found = roark(load, input(row, 'D_over_d'), input(row, 'r_over_d'));
    expect(found.outsideTable).toBe(false);
    expectClose(found.factor, row.expected[0]!, { rel: 0.02, because: 'two fits to tests of the same bar' });
  });

  it.each(checkValues('E', `E-hb-${load}`))('$id', (row) => {
    expectRow(row, roark(load, input(row, 'D_over_d'), input(row, 'r_over_d')).factor);
  });

  it('has branches that meet at h/r = 2', () => {
    for (const y of DEPTHS.slice(1, -1)) {
      const shoulder = 1 / (1 - y);
      const h = (shoulder - 1) / 2;
      const [below, above] = [roark(load, shoulder, h / 1.9999999), roark(load, shoulder, h / 2.0000001)];
      expectClose(below.factor, above.factor, { abs: 0.001, because: 'the jump stated for this set of coefficients' });
    }
  });
});

describe('the misprints in circulation break the meeting of the branches', () => {
  it('bending, first branch, C4: −0.200 for +0.200', () => {
    expect(jump(PETERSON.bending.low, PETERSON.bending.high)).toBeLessThan(0.005);
    expect(jump(MISPRINTED_BENDING, PETERSON.bending.high)).toBeGreaterThan(0.5);
    expectClose(fit(PETERSON.bending.low, 2, 0.5), 1.4592, { printedTo: 4 });
    expectClose(fit(PETERSON.bending.high, 2, 0.5), 1.4588, { printedTo: 4 });
    expectClose(fit(MISPRINTED_BENDING, 2, 0.5), 1.36, { printedTo: 2 });
  });

  it('tension, second branch, C3: −3.495 for −3.459', () => {
    expect(jump(PETERSON.tension.low, PETERSON.tension.high)).toBeLessThan(0.01);
    expect(jump(PETERSON.tension.low, MISPRINTED_TENSION)).toBeGreaterThan(0.03);
    // A step of no depth and one without end both leave a plain bar: at y = 1 the constant terms sum to 1.
    expectClose(constants(PETERSON.tension.high), 1, { abs: 0.002, because: 'coefficients printed to 3 places' });
    expect(Math.abs(constants(MISPRINTED_TENSION) - 1)).toBeGreaterThan(0.03);
  });
});
