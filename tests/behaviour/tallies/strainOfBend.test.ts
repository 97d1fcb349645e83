import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { strainOfBend } from '../../../src/core/tallies/strainOfBend.ts';
import { asRad, radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';

const sizes = fc.record({
  radius: fc.double({ min: 0.1, max: 100, noNaN: true }),
  thickness: fc.double({ min: 0.05, max: 10, noNaN: true }),
});
const ROUND_OFF = { rel: 1e-12, because: 'round-off of lengths that are nearly the same' } as const;

describe('the strain of a bend', () => {
  it('over a bar is by how much a thread on the outside is longer than one in the middle', () => {
    fc.assert(
      fc.property(sizes, ({ radius, thickness }) => {
        const [outer, middle] = [radius + thickness, radius + thickness / 2].map((r) => 2 * Math.PI * r) as [
          number,
          number,
        ];
        const strain = strainOfBend({ way: 'over', radius }, thickness);
        expectClose(strain, outer / middle - 1, { abs: 1e-12, because: 'round-off of the lengths' });
      }),
    );
  });

  it('to a turn is that over the bar on which as long a strip turns as far', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.02, max: 6, noNaN: true }), ({ radius, thickness }, turn) => {
        const length = (radius + thickness / 2) * turn;
        const turned = strainOfBend({ way: 'to', turn: asRad(turn), length }, thickness);
        expectClose(turned, strainOfBend({ way: 'over', radius }, thickness), ROUND_OFF);
      }),
    );
  });

  it('doubles with the thickness, halves with the length, and folds flat at 100 % over nothing', () => {
    const once = strainOfBend({ way: 'to', turn: radians(90), length: 10 }, 0.84);
    expectClose(strainOfBend({ way: 'to', turn: radians(90), length: 10 }, 1.68), 2 * once, ROUND_OFF);
    expectClose(strainOfBend({ way: 'to', turn: radians(90), length: 20 }, 0.84), once / 2, ROUND_OFF);
    expect(strainOfBend({ way: 'over', radius: 0 }, 0.84)).toBe(1);
  });
});
