/**
 * Source [plane-bending]: elementary bending of a straight leaf to a circular arc. The figures of
 * checkvalues/A.json were computed outside this program in higher precision; the pivot rows are the geometry of the
 * arc and are compared with the tip of `rolledTip`, which does not know of them. Fair, because both describe the same
 * unstretched mid-line; tolerances are those of the rows (round-off).
 */
import { describe, expect, it } from 'vitest';
import {
  angleAtStrain,
  bendingStrain,
  minimumLength,
  rolledTip,
  trueBendingStrain,
} from '../../src/core/closedForms/leafBending.ts';
import { leafStiffness, leafTorque } from '../../src/core/closedForms/leafTorque.ts';
import { asRad, radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const bend = (row: CheckValue) => [input(row, 't_mm'), input(row, 'L_mm'), radians(input(row, 'theta_deg'))] as const;

describe('strain of a leaf bent to an arc', () => {
  it.each(checkValues('A', 'A-eps-'))('$id', (row) => {
    const [thickness, length, angle] = bend(row);
    expectRow(row, bendingStrain(thickness, length, angle));
    expectClose(minimumLength(thickness, angle, row.expected[0]!), length, { rel: 1e-12, because: 'round-off' });
    expectClose(angleAtStrain(thickness, length, row.expected[0]!), angle, { rel: 1e-12, because: 'round-off' });
  });

  it.each(checkValues('A', 'A-epslog-'))('$id', (row) => {
    expectRow(row, trueBendingStrain(...bend(row)));
  });
});

describe('torque of a narrow and of a wide leaf', () => {
  it.each(checkValues('A', 'A-M-'))('$id', (row) => {
    const [thickness, length, angle] = bend(row);
    const poisson = row.id.endsWith('plstrain') ? input(row, 'nu') : 0;
    const ratio = 1 / (1 - poisson ** 2);
    const [modulus, width] = [input(row, 'E_MPa'), input(row, 'b_mm')];
    expectRow(row, leafTorque(modulus, width, thickness, length, angle, ratio));
    expectRow(row, leafStiffness(modulus, width, thickness, length, ratio) * angle);
  });
});

describe('tip of a leaf rolled to an arc', () => {
  it.each(checkValues('A', 'A-tip-'))('$id', (row) => {
    const { x, y } = rolledTip(1, radians(input(row, 'theta_deg')));
    expectRow(row, x, y);
  });

  it.each(checkValues('A', 'A-pivot-'))('$id: the end tangents meet there', (row) => {
    const angle = radians(input(row, 'theta_deg'));
    const { x, y } = rolledTip(1, angle);
    expectRow(row, x - y / Math.tan(angle));
  });

  it('does not stop being a number at no angle, and is smooth where the series takes over', () => {
    expect(rolledTip(12, radians(0))).toEqual({ x: 12, y: 0 });
    for (const angle of [0.99e-4, 1.01e-4, -1e-9]) {
      const { x, y } = rolledTip(12, asRad(angle));
      expectClose(x, 12 * (1 - angle ** 2 / 6), { rel: 1e-15, because: 'round-off; the next term is 1e-18' });
      expectClose(y, 6 * angle, { rel: 1e-9, because: 'the next term of the series, θ²/12' });
    }
  });
});

describe('common practice', () => {
  /** Source [common-practice]: 40° in about 2 mm, two lines of 0.42 mm, make 14.7 % nominal strain. */
  it('says 14.7 % for 40° over 2 mm with 0.84 mm', () => {
    expectClose(100 * bendingStrain(0.84, 2, radians(40)), 14.7, { printedTo: 1 });
  });

  /** Sources [s7-moulded-hinge] 0.2 to 0.4 mm by 1.5 mm land; nominal strain when folded flat, computed with the data. */
  it.each([
    [0.2, 0.21],
    [0.3, 0.31],
    [0.4, 0.42],
  ])('a moulded hinge %s mm thick folds at a nominal strain of %s', (thickness, strain) => {
    expectClose(bendingStrain(thickness, 1.5, radians(180)), strain, { printedTo: 2 });
  });
});
