import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingStrain, rolledTip } from '../../src/core/closedForms/leafBending.ts';
import { rollPoint } from '../../src/core/geometry/roll.ts';
import { expectClose } from '../support/close.ts';
import { angle, length } from '../support/generators.ts';

const ROUND_OFF = { abs: 1e-8, because: 'round-off of coordinates up to a few hundred mm' } as const;
const between = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(b.x - a.x, b.y - a.y);

describe('a leaf rolled to an arc', () => {
  it('has its tip where the closed form has it', () => {
    fc.assert(
      fc.property(length(0.5, 200), angle(-350, 350), (flexing, theta) => {
        const tip = rollPoint({ x: flexing, y: 0 }, flexing, theta);
        const expected = rolledTip(flexing, theta);
        expectClose(tip.x, expected.x, ROUND_OFF);
        expectClose(tip.y, expected.y, ROUND_OFF);
      }),
    );
  });

  it('leaves the fixed pad and moves the other as a rigid body turned by the angle', () => {
    fc.assert(
      fc.property(length(0.5, 200), angle(-350, 350), length(0, 20), length(-10, 10), (flexing, theta, out, y) => {
        expect(rollPoint({ x: -out, y }, flexing, theta)).toEqual({ x: -out, y });
        const root = rollPoint({ x: flexing, y: 0 }, flexing, theta);
        const moved = rollPoint({ x: flexing + out, y }, flexing, theta);
        expectClose(moved.x - root.x, out * Math.cos(theta) - y * Math.sin(theta), ROUND_OFF);
        expectClose(moved.y - root.y, out * Math.sin(theta) + y * Math.cos(theta), ROUND_OFF);
      }),
    );
  });

  it('strains its skin by t·θ/(2L): a short piece of it changes length by that much', () => {
    fc.assert(
      fc.property(length(1, 200), length(0.1, 2), angle(1, 180), share(), (flexing, thickness, theta, at) => {
        const strain = bendingStrain(thickness, flexing, theta);
        const [x, dx] = [at * flexing, flexing * 1e-5];
        for (const side of [1, -1]) {
          const y = (-side * thickness) / 2;
          const piece = between(rollPoint({ x, y }, flexing, theta), rollPoint({ x: x + dx, y }, flexing, theta));
          const stretch = side * (piece / dx - 1);
          // On the inner side the skin passes through zero length and out again once the strain exceeds 1.
          const expected = side === -1 && strain > 1 ? 2 - strain : strain;
          expectClose(stretch, expected, {
            abs: 1e-6 * (1 + strain),
            because: 'chord instead of arc over a turn of θ/100 000, and round-off of 1e-11 over a 1e-5 piece',
          });
        }
      }),
    );
  });
});

function share() {
  return fc.integer({ min: 0, max: 99 }).map((n) => n / 100);
}
