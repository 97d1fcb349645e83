import fc from 'fast-check';
import { describe, it } from 'vitest';
import '../support/seed.ts';
import { pushedBeyondTip, toggleAt, type ToggleParts } from '../../src/core/closedForms/toggle.ts';
import { shallowTrussForce } from '../../src/core/closedForms/twoBarTruss.ts';
import { expectClose } from '../support/close.ts';
import { length } from '../support/generators.ts';

const parts: fc.Arbitrary<ToggleParts> = fc
  .record({
    half: length(10, 80),
    slope: length(0.05, 0.7),
    thrust: length(0, 2),
    lean: length(0, 0.2),
    pin: length(0, 3),
  })
  .map(({ slope, ...rest }) => ({ ...rest, height: slope * rest.half }));

/** ½·k·δ² and the pins, from the same states but not from their effort. */
function energyAt(toggle: ToggleParts, travel: number): number {
  const { opened, turned, lastTurned } = toggleAt(toggle, travel);
  return (toggle.thrust * opened ** 2 + toggle.pin * (3 * turned ** 2 + lastTurned ** 2)) / 2;
}

describe('a pinned toggle', () => {
  it('takes the effort by which its energy grows', () => {
    fc.assert(
      fc.property(parts, length(0.05, 1.95), (toggle, share) => {
        const [travel, step] = [share * toggle.height, 1e-4 * toggle.height];
        const slope = (energyAt(toggle, travel + step) - energyAt(toggle, travel - step)) / (2 * step);
        const scale = energyAt(toggle, 2 * toggle.height) + energyAt(toggle, toggle.height);
        expectClose(toggleAt(toggle, travel).effort, slope, {
          abs: (1e-6 * scale) / toggle.height + 1e-12,
          because: 'central difference of a step of 10⁻⁴ of the height',
        });
      }),
    );
  });

  it('without pins is a two-bar truss whose bars give as its spring does', () => {
    // Bars of stiffness EA/l each against a spring that takes both their stretches: δ = 2·(l₀ − l), so k = EA/(2·l).
    fc.assert(
      fc.property(length(20, 100), length(0.02, 0.08), length(0.1, 1.9), (half, slope, share) => {
        const height = slope * half;
        const link = Math.hypot(half, height);
        const toggle = { half, height, thrust: 1 / (2 * link), lean: 0, pin: 0 };
        const scale = shallowTrussForce(half, height, height * (1 - 1 / Math.sqrt(3)));
        expectClose(toggleAt(toggle, share * height).effort, shallowTrussForce(half, height, share * height), {
          abs: 0.02 * scale,
          because: 'slopes up to 0.08, of which both take other squares',
        });
      }),
    );
  });

  it('leans its leaf as a cantilever does', () => {
    const { stiffness, lean } = pushedBeyondTip(2, 10, 0);
    expectClose(stiffness, (3 * 2) / 10 ** 3, { rel: 1e-12, because: 'round-off' });
    expectClose(lean, 1.5 / 10, { rel: 1e-12, because: 'round-off' });
  });
});
