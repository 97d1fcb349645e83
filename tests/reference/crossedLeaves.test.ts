/**
 * Source [crossed-leaves]: two crossed leaves at small angles; J. A. Haringx 1949 and W. H. Wittrick 1951 from memory, not
 * opened. The rows of checkvalues/G.json were derived outside this program. The exact rows are full elastica of both leaves
 * with force and angle compatibility, solved by shooting there; the small-angle form is compared with those of 1°, and the
 * exact solver has to meet all of them.
 */
import { describe, expect, it } from 'vitest';
import {
  crossedLeavesMoment,
  crossedLeavesShift,
  crossedLeavesStiffness,
  crossedLeavesStrain,
  NEUTRAL_CROSSINGS,
} from '../../src/core/closedForms/crossedLeaves.ts';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

/** Twelve of modulus times width make E·I/L one at unit thickness and length. */
const ratioOf = (crossing: number) => crossedLeavesStiffness(12, 1, 1, 1, crossing);

describe('two crossed leaves at small angles', () => {
  it.each(checkValues('G', 'G-k-'))('$id', (row) => {
    expectRow(row, ratioOf(input(row, 'lam')));
    expectClose(crossedLeavesStiffness(1200, 20, 0.42, 5, input(row, 'lam')), 29.6352 * row.expected[0]!, {
      rel: 1e-9,
      because: 'round-off of the row',
    });
  });

  it.each(checkValues('G', 'G-eps-'))('$id', (row) => {
    const crossing = input(row, 'lam');
    expectRow(row, crossedLeavesMoment(crossing));
    expectClose(crossedLeavesStrain(0.84, 10, radians(-90), crossing), 0.065973446 * row.expected[0]!, {
      rel: 1e-8,
      because: 'printed places of the strain of a leaf bent evenly',
    });
  });

  it.each(checkValues('G', 'G-shift-'))('$id', (row) => {
    const crossing = input(row, 'lam');
    expectRow(row, crossedLeavesShift(1, radians(180 / Math.PI), crossing, radians(0)));
    expectRow(row, (crossedLeavesShift(7, radians(3), crossing, radians(60)) * 0.5) / (7 * radians(3) ** 2));
  });

  it.each(checkValues('G', 'G-lam0'))('$id', (row) => {
    expectRow(row, NEUTRAL_CROSSINGS.near, NEUTRAL_CROSSINGS.far);
  });

  it('turn the same whichever end is held', () => {
    for (const crossing of [0, 0.1, 0.3]) {
      expectClose(ratioOf(crossing), ratioOf(1 - crossing), ROUND_OFF);
      expectClose(crossedLeavesMoment(crossing), crossedLeavesMoment(1 - crossing), ROUND_OFF);
    }
  });
});

describe('the exact rows go over into the small-angle form', () => {
  it.each(checkValues('G', 'G-exact-').filter((row) => input(row, 'theta_deg') === 1))('$id', (row) => {
    const [crossing, angle] = [input(row, 'lam'), radians(1)];
    const [moment = 0, shift = 0] = row.expected;
    expectClose(ratioOf(crossing) * angle, moment, {
      rel: 1e-4,
      because: 'the next term: 0.5 % at 10°, a hundredth at 1°',
    });
    const next = { abs: 1e-8, because: 'the next term of the shift and the tolerance of the row' };
    expectClose(crossedLeavesShift(1, angle, crossing, radians(45)), shift, next);
  });

  it.each(checkValues('G', 'G-exact-0.5').filter((row) => input(row, 'theta_deg') > 1))(
    '$id: the exact moment is over the form by as much as is said of it',
    (row) => {
      const angle = radians(input(row, 'theta_deg'));
      const over = row.expected[0]! / (ratioOf(0.5) * angle) - 1;
      // 0.5 % at 10°, growing with the square
      expect(over / angle ** 2).toBeGreaterThan(0.15);
      expect(over / angle ** 2).toBeLessThan(0.18);
    },
  );
});
