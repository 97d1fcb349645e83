/**
 * Source [shallow-arch]: clamped cosine arch in column modes. The rows of checkvalues/I.json were computed outside this
 * program, the limit points by search; here the path is entered by its travel instead. Fair, because both are states of
 * the same theory.
 */
import { describe, expect, it } from 'vitest';
import { archAtTravel } from '../../src/core/closedForms/archAtTravel.ts';
import { archStrainFactor } from '../../src/core/closedForms/archStrain.ts';
import { checkValues, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';

const ROWS = [
  ...checkValues('I', 'I-double-').map((row) => ({ row, form: 'double' as const })),
  ...checkValues('I', 'I-free-').map((row) => ({ row, form: 'free' as const })),
];

describe('an arch pushed to a travel', () => {
  it.each(ROWS)('$row.id: snap, straight branch and return', ({ row, form }) => {
    const [top, topAt, bottom, bottomAt, slope, intercept] = row.expected as readonly [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const ratio = input(row, 'Q');
    const points = [
      [topAt, top],
      [bottomAt, bottom],
      [1.2, intercept + 1.2 * slope],
    ] as const;
    for (const [travel, force] of points) {
      const found = archAtTravel(ratio, form, travel).force;
      noteResidual(form, found, force);
      expectClose(found, force, { rel: 1e-9, because: 'root found to round-off' });
    }
  });

  it.each(checkValues('I', 'I-eps-'))('$id: strain on the way grows to that of the whole way', (row) => {
    const ratio = input(row, 'Q');
    const factors = [0.1, 0.5, 1, 1.5, 2].map((travel) => archStrainFactor(ratio, 'double', travel));
    // Other states are looked at for each travel, so the largest may be missed by a thousandth.
    for (const [i, factor] of factors.entries()) expect(factor).toBeGreaterThan(0.999 * (factors[i - 1] ?? 0));
    expectClose(factors.at(-1) ?? Number.NaN, row.expected[0] ?? Number.NaN, {
      rel: 2e-3,
      because: 'the largest of 121 states and 41 places',
    });
  });

  it('outside its path is at the nearer end', () => {
    expectClose(archAtTravel(5, 'double', -1).travel, 0, { abs: 1e-12, because: 'round-off' });
    expectClose(archAtTravel(5, 'double', 3).travel, 2, { rel: 1e-9, because: 'root found to round-off' });
  });
});
