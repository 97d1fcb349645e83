/**
 * The working of every kind, as it stands on the page: formulas worked out by a computer algebra with units, from the very
 * inputs, against the figures of the core, which is other code that knows no units.
 */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { isExactByHand, askedOf } from '../../src/core/design/response.ts';
import { understand } from '../../src/core/design/understand.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { faultsOf, wordlessOf, workedOut } from '../support/workings.ts';

const MOVED = FAMILIES.flatMap((family) =>
  family.drives.map((drive) => ({ family, drive, name: `${family.id} ${drive.id}` })),
);

function jointOf({ family, drive }: (typeof MOVED)[number]): Joint {
  const joint = newJoint(family, family.id);
  return { ...joint, movement: { ...joint.movement, drive: drive.id, amount: drive.typical } };
}

function answer(joint: Joint, respond?: ReturnType<typeof bySolver>): Assessment {
  const result = assess(joint, respond);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  return result.value;
}

describe.each(MOVED)('the working of $name', (moved) => {
  const joint = jointOf(moved);

  it('gives the figures of its hand forms, with units that agree', () => {
    expect(faultsOf(workedOut(answer(joint)))).toEqual([]);
  });

  it('gives the figures of the solver', () => {
    const checked = understand(joint);
    const isExact = checked.ok && isExactByHand(askedOf(checked.value));
    const solved = answer(joint, bySolver());
    const worked = workedOut(solved);
    expect(faultsOf(worked)).toEqual([]);
    // Where the solver is asked its figures must stand in the working, or the page would show those of an estimate.
    expect(isExact || worked.some(({ step }) => step.id === 'effort-solved')).toBe(true);
  });

  it('has words for every step and symbol', () => {
    expect(wordlessOf(workedOut(answer(joint)), joint.family)).toEqual([]);
  });
});
