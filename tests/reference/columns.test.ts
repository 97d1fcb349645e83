/**
 * Source [euler-column]: buckling of a straight column. The rows of checkvalues/I.json repeat the formula; the factors are
 * compared with the conditions from which they come, and clamped–guided with the stiffness that vanishes there.
 */
import { describe, it } from 'vitest';
import { beamColumn } from '../../src/core/closedForms/beamColumn.ts';
import { BUCKLING_FACTORS, bucklingForce, bucklingStrain } from '../../src/core/closedForms/columns.ts';
import { endLoadedLeaf } from '../../src/core/closedForms/leafUnderForce.ts';
import { guidedStiffnessUnderLoad } from '../../src/core/closedForms/guidedLeaf.ts';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const loadOf = (factor: number) => bucklingForce(12, 1, 1, 1, factor);

describe('the load at which a column buckles', () => {
  it.each(checkValues('I', 'I-euler-'))('$id', (row) => {
    const factor = input(row, 'K');
    expectRow(row, loadOf(factor), bucklingStrain(1, 1, factor));
    expectRow(row, (bucklingForce(2000, 6, 0.84, 20, factor) * 400 * 12) / (2000 * 6 * 0.84 ** 3));
    expectRow({ ...row, expected: [row.expected[1]!] }, bucklingStrain(0.84, 20, factor) * (20 / 0.84) ** 2);
  });

  it('of a clamped–pinned one is where tan x = x', () => {
    const root = Math.PI / BUCKLING_FACTORS.clampedPinned;
    expectClose(Math.tan(root), root, { rel: 1e-12, because: 'round-off of the tangent' });
    // an end that a moment can turn freely: stiffness of S and C together vanish
    const { ofS, ofC } = beamColumn(loadOf(BUCKLING_FACTORS.clampedPinned)).stiffness;
    expectClose(ofS + ofC, 0, { abs: 1e-9, because: 'round-off' });
  });

  it('of a pinned one and of a clamped one are where a C, and a C against clamps, give way', () => {
    expectClose(beamColumn(loadOf(BUCKLING_FACTORS.pinnedPinned)).stiffness.ofC, 0, {
      abs: 1e-9,
      because: 'round-off',
    });
    const clamped = beamColumn(loadOf(BUCKLING_FACTORS.clampedClamped) * (1 - 1e-9)).stiffness.ofC;
    expectClose(1 / clamped, 0, { abs: 1e-8, because: 'just below the load at which the sine is zero' });
  });

  it('of a clamped–guided one is where it no longer holds itself across', () => {
    const share = loadOf(BUCKLING_FACTORS.clampedGuided) / Math.PI ** 2;
    expectClose(guidedStiffnessUnderLoad(share), 0, { abs: 1e-12, because: 'round-off' });
  });

  it('of a clamped–free one is where the exact shape leaves the straight line', () => {
    const load = loadOf(BUCKLING_FACTORS.clampedFree);
    const { tipAngle } = endLoadedLeaf(load * 1.0001, radians(180));
    expectClose(endLoadedLeaf(load * 0.9999, radians(180)).tipAngle, 0, { abs: 0, because: 'straight' });
    // P/P₀ = 1 + θ²/8 + …
    expectClose(tipAngle, Math.sqrt(8e-4), { rel: 1e-3, because: 'the next term' });
  });
});
