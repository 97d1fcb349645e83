/**
 * Source [unit-load-method]: linear frames of straight and curved bars; any text on structural mechanics.
 *
 * What is compared: a folded leaf of two runs that are next to nothing long is half a ring, and its two ends, kept from
 * turning and pulled apart, are where a whole ring is pulled by two opposite forces W. Tables of thin rings (recalled,
 * not opened) give the opening (π/4 − 2/π)·W·R³/(E·I) = 0.1488·W·R³/(E·I) and the moment under a force
 * W·R/π = 0.3183·W·R. A single run is a straight leaf with parallel ends, 12·E·I/L³ and 3·t·δ/L², or a bar that is
 * stretched, E·A/L and δ/L. Fair because none of these was used to derive the form.
 */
import { describe, expect, it } from 'vitest';
import { foldedEffort, unfoldedLength } from '../../src/core/closedForms/foldedLeafTurns.ts';
import { expectClose } from '../support/close.ts';

/** Half a ring of radius R and a thickness small enough for stretch to matter little. */
const RING = { radius: 40, thickness: 0.4 };
const HALF_RING = { runs: 2, length: 1e-6, spacing: 2 * RING.radius };
const THIN = { rel: 2e-4, because: 'four printed figures; stretch adds 0.8·(t/R)², and the runs 1e-6 mm' } as const;

describe('two runs of no length are half a ring', () => {
  const { stiffness, strain } = foldedEffort(HALF_RING, RING.thickness, 'across');
  const bending = RING.thickness ** 3 / 12;

  it('that opens as a ring does', () => {
    // Either half carries W/2.
    const constant = bending / (2 * stiffness * RING.radius ** 3);
    console.log(`ring: opening ${constant.toFixed(6)} against 0.1488`);
    expectClose(constant, 0.1488, { printedTo: 4 });
    expectClose(constant, Math.PI / 4 - 2 / Math.PI, THIN);
  });

  it('that is bent most under the force as a ring is', () => {
    const moment = (strain * RING.thickness ** 2) / 6;
    const constant = moment / (2 * stiffness * RING.radius);
    console.log(`ring: moment ${constant.toFixed(6)} against 0.3183`);
    expectClose(constant, 1 / Math.PI, THIN);
  });
});

describe('one run', () => {
  const [length, thickness] = [20, 0.84];

  it('is a leaf with parallel ends when it is moved across', () => {
    const { stiffness, strain } = foldedEffort({ runs: 1, length, spacing: 5 }, thickness, 'across');
    expectClose(stiffness, (thickness / length) ** 3, { rel: 1e-12, because: 'round-off' });
    expectClose(strain, (3 * thickness) / length ** 2, { rel: 1e-12, because: 'round-off' });
  });

  it('is a bar when it is moved along itself', () => {
    const { stiffness, strain } = foldedEffort({ runs: 1, length, spacing: 5 }, thickness, 'along');
    expectClose(stiffness, thickness / length, { rel: 1e-12, because: 'round-off' });
    expectClose(strain, 1 / length, { rel: 1e-12, because: 'round-off' });
  });
});

describe('many runs', () => {
  it.each([2, 3, 4, 9])('%d of them, close together, are as many parallel leaves one behind the other', (runs) => {
    const shape = { runs, length: 100, spacing: 0.01 };
    const { stiffness, strain } = foldedEffort(shape, 1e-3, 'across');
    const turns = { rel: 2e-3, because: 'turns of 0.01 mm still give a little, as runs 0.03 % longer would' } as const;
    expectClose(stiffness * runs, (1e-3 / 100) ** 3, turns);
    expectClose(strain * runs, (3 * 1e-3) / 100 ** 2, turns);
  });

  it('unfold to runs and half circles', () => {
    expect(unfoldedLength({ runs: 2, length: 10, spacing: 2 })).toBe(20 + Math.PI);
  });
});
