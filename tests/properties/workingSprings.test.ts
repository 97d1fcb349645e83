/** The working of stages, folds, spirals, arches and toggles, whatever their sizes and however they are moved. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { DRIVEN } from '../support/families.ts';
import { anyJoint, workingFaults } from '../support/workedJoints.ts';

const KINDS = ['parallelLeaves', 'foldedLeaf', 'spiral', 'snapArch', 'toggle'];
const CASES = 300;
/** Sizes are drawn one by one, so that many joints are refused: of those that are left, enough. */
const AT_LEAST = 30;

describe.each(DRIVEN.filter(({ kind }) => KINDS.includes(kind.family.id)))('the working of $id', (driven) => {
  it('gives the figures of the core for any joint, with units that agree and words for all', () => {
    let worked = 0;
    fc.assert(
      fc.property(anyJoint(driven), (joint) => {
        const faults = workingFaults(joint);
        if (faults === undefined) return;
        worked += 1;
        expect(faults).toEqual([]);
      }),
      { numRuns: CASES },
    );
    expect(worked).toBeGreaterThanOrEqual(AT_LEAST);
  });
});
