import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { nudgesOf } from '../../../src/core/design/nudges.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { runRequest } from '../../../src/workers/jobs.ts';
import type { Output } from '../../../src/workers/protocol.ts';
import { matchEffortJob, nudgesJob } from '../../../src/workers/tuningJobs.ts';

const leaves = newJoint(familyOf({ family: 'parallelLeaves' }), 'leaves');

describe('small changes in a worker', () => {
  it('are those of the core, each as a fresh assessment tells it, and come without their ways', () => {
    const shares: number[] = [];
    const told = nudgesJob({ joint: leaves }, (share) => shares.push(share ?? Number.NaN));
    if (!told.ok) throw new Error(told.problems[0].message);
    const { before, nudged } = told.value;
    expect(nudged.map(({ after }) => after)).toEqual(nudgesOf(leaves).map(({ after }) => after));
    for (const { after, assessed } of nudged.filter(({ of }) => of !== 'depth')) {
      const fresh = assess(after, bySolver({ beyond: false }));
      if (!assessed.ok || !fresh.ok) throw new Error('none is refused');
      expect(assessed.value.solved).toBeUndefined();
      expect(assessed.value.effort).toEqual(fresh.value.effort);
      expect(assessed.value.strain).toEqual(fresh.value.strain);
      expect(assessed.value.verdict).toEqual(fresh.value.verdict);
    }
    expect(before.solved).toBeUndefined();
    expect(shares.at(-1)).toBe(1);
  });

  it('have the problems of a joint that cannot be', () => {
    const none = { ...leaves, sizes: { ...leaves.sizes, length: 0 } };
    expect(nudgesJob({ joint: none }, () => undefined)).toMatchObject({
      ok: false,
      problems: [{ code: 'below-minimum', field: 'sizes.length' }],
    });
  });
});

describe('an effort that is matched in a worker', () => {
  it('answers as plain data without ways, through the door of all jobs', async () => {
    const wanted = { effort: 1, at: leaves.movement.amount };
    const direct = matchEffortJob({ joint: leaves, wanted }, () => undefined);
    const request = { id: 1, job: 'matchEffort', input: { joint: leaves, wanted }, own: [] } as const;
    const answer = (await runRequest(request, () => undefined)) as Output<'matchEffort'>;
    expect(answer).toEqual(direct);
    if (!answer.ok) throw new Error(answer.problems[0].message);
    expect(answer.value.matches.length).toBeGreaterThan(2);
    for (const { assessment } of answer.value.matches) expect(assessment.solved).toBeUndefined();
    expect(structuredClone(answer)).toEqual(answer);
  });
});
