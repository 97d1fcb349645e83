/** The working of leaves, creases, necks and panels, whatever their sizes and however they are moved. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { DRIVEN, jointOf } from '../support/families.ts';
import { anyJoint, workingFaults } from '../support/workedJoints.ts';

const KINDS = ['straightLeaf', 'crease', 'neck', 'crossedLeaves', 'cellPanel', 'slitPanel'];
const CASES = 300;
/** Sizes are drawn one by one, so that many joints are refused: of those that are left, enough. */
const AT_LEAST = 30;

/** The only drive with this name. */
function driven(id: string): (typeof DRIVEN)[number] {
  const found = DRIVEN.find((one) => one.id === id);
  if (!found) throw new Error(`nothing is ${id}`);
  return found;
}

describe('on both sides of where one formula gives way to another', () => {
  it.each([0.005, 0.5, 0.9, 0.95, 0.96, 0.960001, 0.98, 0.99, 0.990001, 2])(
    'a tip pushed %s of the length',
    (share) => {
      const { kind, drive } = driven('straightLeaf pushed');
      expect(workingFaults(jointOf(kind, drive, { length: 50 }, share * 50))).toEqual([]);
    },
  );

  /** Little thrust, none, much, and a pull; pins at which the leaf is squeezed by next to nothing (0.1273) or bulges. */
  const PINS = [0, 0.1, 0.127, 0.1273, 0.13, 0.49, 0.5, 0.51, 0.8727, 0.95, 1];
  const TURNS = [0.0018, 0.01, 0.05, 0.06, 0.1, 0.4, 1.57];
  const LENGTHS = [2, 12, 200];
  const TURNED = PINS.flatMap((centre) => TURNS.flatMap((amount) => LENGTHS.map((length) => [centre, amount, length])));

  it('a leaf turned about a pin', () => {
    const { kind, drive } = driven('straightLeaf centred');
    for (const [centre = 0, amount = 0, length = 0] of TURNED) {
      expect(
        workingFaults(jointOf(kind, drive, { centre, length }, amount)),
        `${centre}, ${amount}, ${length}`,
      ).toEqual([]);
    }
  });
});

describe.each(DRIVEN.filter(({ kind }) => KINDS.includes(kind.family.id)))('the working of $id', (moved) => {
  it('gives the figures of the core for any joint, with units that agree and words for all', () => {
    let worked = 0;
    fc.assert(
      fc.property(anyJoint(moved), (joint) => {
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
