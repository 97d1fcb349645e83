import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { gaugeOf, snapEffort } from '../../../src/core/design/effortAt.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { MATCHED, type EffortWanted, type MatchAnswer } from '../../../src/core/design/matchAnswer.ts';
import { matchEffort } from '../../../src/core/design/matchEffort.ts';
import { rememberSolved } from '../../../src/core/design/rememberSolved.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { expectClose } from '../../support/close.ts';
import { solvedOf } from '../../support/families.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const AS_WISHED = { rel: MATCHED, because: 'a joint is matched to one in a hundred' };

function answerTo(joint: Joint, wanted: EffortWanted): MatchAnswer {
  const answer = matchEffort(joint, wanted);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

/** Asks the solver, as the worker does. */
function solvedAnswer(joint: Joint, wanted: EffortWanted): ReturnType<typeof matchEffort> {
  const solve = rememberSolved();
  const quick = (one: Joint) => assess(one, bySolver({ whole: false, beyond: wanted.at === 'snap' }, solve));
  return matchEffort(joint, wanted, { quick, full: quick });
}

const stepsOf = ({ matches }: MatchAnswer) => matches.map(({ steps }) => steps.join(' + '));

describe('a leaf that is to push back less', () => {
  const wanted = { effort: 20, at: radians(35) };
  const answer = answerTo(LEAF, wanted);
  const matched = answer.matches.filter(({ isMatched }) => isMatched);

  it('gets shallower or longer, each as wished when assessed alone', () => {
    expect(stepsOf(answer).slice(0, 2).toSorted()).toEqual(['depth', 'length']);
    for (const { after } of matched) expectClose(assessed(after).effort.effort, wanted.effort, AS_WISHED);
  });

  it('keeps all that was not changed, and says its own verdict', () => {
    for (const { after, assessment } of answer.matches) {
      expect({ ...after, sizes: LEAF.sizes }).toEqual(LEAF);
      expect(assessment.verdict).toEqual(assessed(after).verdict);
    }
  });

  it('is offered whole lines with the effort that they have', () => {
    const [count] = answer.matches.filter(({ isMatched }) => !isMatched);
    expect(count?.after.sizes['lines']).toBe(1);
    expectClose(count?.effort ?? Number.NaN, assessed(changed(LEAF, { sizes: { lines: 1 } })).effort.effort, {
      rel: 1e-12,
      because: 'the same assessment',
    });
  });

  it('says how near the ways come that do not get there', () => {
    expect(answer.short.map(({ steps }) => steps)).toEqual([['lines', 'length']]);
    expect(answer.short[0]?.effort).toBeLessThan(wanted.effort);
  });
});

describe('a leaf that is to push back more', () => {
  const wanted = { effort: 90, at: radians(35) };
  const answer = answerTo(LEAF, wanted);

  it('is told the whole counts on either side, alone and with the rest taken up', () => {
    const beside = answer.matches.filter(({ steps }) => steps[0] === 'side by side');
    const counts = beside.map(({ after }) => after.sizes['sideBySide']);
    expect(new Set(counts)).toEqual(new Set([3, 4]));
    expect(stepsOf(answer)).toContain('side by side + depth');
    const lines = answer.matches.filter(({ steps }) => steps[0] === 'lines').map(({ after }) => after.sizes['lines']);
    expect(new Set(lines)).toEqual(new Set([3, 4]));
  });

  it('is told the smallest change first, and what is matched before what is not', () => {
    const matched = answer.matches.filter(({ isMatched }) => isMatched);
    expect(answer.matches.slice(0, matched.length)).toEqual(matched);
    const changes = matched.map(({ change }) => change);
    expect(changes).toEqual(changes.toSorted((one, other) => one - other));
  });
});

describe('where an effort is wished for', () => {
  it('may be another amount than its own', () => {
    const at = radians(60);
    const [first] = answerTo(LEAF, { effort: 30, at }).matches;
    const moved = assessed(changed(first?.after ?? LEAF, { movement: { amount: at } }));
    expectClose(moved.effort.effort, 30, AS_WISHED);
    expect(first?.after.movement).toEqual(LEAF.movement);
  });

  it('takes no notice of what else the joint does', () => {
    const also = [{ amount: radians(30), ways: 'one way', cycles: 10 }] as const;
    const busy = changed(LEAF, { movement: { also, ways: 'both ways', effortAtMost: 1 } });
    const at = radians(10);
    expect(answerTo(busy, { effort: 5, at }).now).toBe(answerTo(LEAF, { effort: 5, at }).now);
  });

  it('is met already where it differs by no more than is felt', () => {
    const { effort } = assessed(LEAF).effort;
    const answer = answerTo(LEAF, { effort: 1.009 * effort, at: LEAF.movement.amount });
    expect(answer).toEqual({ now: effort, isMet: true, matches: [], short: [] });
  });
});

describe('a part that exists', () => {
  it('is redrawn in whole lines, those that it nearly has too', () => {
    const measured = changed(LEAF, { measuredThickness: 0.7 });
    const { matches } = answerTo(measured, { effort: 20, at: radians(35) });
    const redrawn = matches.filter(({ steps }) => steps[0] === 'lines');
    expect(redrawn.length).toBeGreaterThan(0);
    for (const { after, change } of redrawn) {
      expect(after.measuredThickness).toBeUndefined();
      expect(change).toBeGreaterThan(0);
    }
    expect(redrawn.map(({ after }) => after.sizes['lines'])).toContain(2);
  });
});

describe('layers', () => {
  it('are whole as lines are', () => {
    const { effort } = assessed(CREASE).effort;
    const { matches } = answerTo(CREASE, { effort: 5 * effort, at: CREASE.movement.amount });
    for (const { after } of matches) expect(Number.isInteger(after.sizes['layers'])).toBe(true);
    expect(matches.some(({ steps }) => steps[0] === 'lines')).toBe(true);
  });
});

describe('a wish that cannot be met', () => {
  it.each([
    ['no effort', { effort: 0, at: radians(35) }, 'below-minimum', 'wanted.effort'],
    ['no number', { effort: Number.NaN, at: radians(35) }, 'not-a-number', 'wanted.effort'],
    ['more than any print', { effort: 1e7, at: radians(35) }, 'above-maximum', 'wanted.effort'],
    ['past a full turn', { effort: 20, at: radians(400) }, 'above-maximum', 'wanted.at'],
    ['no amount', { effort: 20, at: Number.NaN }, 'not-a-number', 'wanted.at'],
  ])('%s is refused by its field', (_, wanted, code, field) => {
    expect(matchEffort(LEAF, wanted)).toMatchObject({ ok: false, problems: [{ code, field }] });
  });

  it('is told the range that is reached, and the nearest of it', () => {
    const answer = matchEffort(LEAF, { effort: 0.002, at: radians(35) });
    if (answer.ok) throw new Error('nothing is so soft');
    const [problem] = answer.problems;
    expect(problem).toMatchObject({ code: 'effort-out-of-reach', field: 'wanted.effort', value: 0.002 });
    expect(Number(problem.limit)).toBeGreaterThan(0.002);
    expect(Number(problem.limit)).toBeLessThan(assessed(LEAF).effort.effort);
    expect(problem.message).toMatch(/they go from [\d.]+ to [\d.]+, and the nearest is [\d.]+; ask for/);
  });

  it('is a mistake of the caller where hand forms are to tell a snap', () => {
    expect(() => matchEffort(LEAF, { effort: 1, at: 'snap' })).toThrow(RangeError);
  });
});

describe('what snaps', () => {
  const arch = newJoint(familyOf({ family: 'snapArch' }), 'arch');

  it('is matched where it snaps: by its rise as well', () => {
    const now = gaugeOf('snap', (joint) => assess(joint, bySolver({ whole: false })))(arch);
    if (!now.ok) throw new Error(now.problems[0].message);
    const effort = 0.8 * now.value;
    const answer = solvedAnswer(arch, { effort, at: 'snap' });
    if (!answer.ok) throw new Error(answer.problems[0].message);
    expect(stepsOf(answer.value)).toEqual(expect.arrayContaining(['length', 'depth', 'rise']));
    const risen = answer.value.matches.find(({ steps }) => steps[0] === 'rise');
    expectClose(snapEffort(solvedOf(risen?.after ?? arch)) ?? Number.NaN, effort, AS_WISHED);
    expect(risen?.after.sizes['rise']).toBeLessThan(arch.sizes['rise'] ?? 0);
  });

  it('is refused where it does not snap, with what would help', () => {
    const flat = changed(arch, { sizes: { rise: 0.6 }, movement: { amount: 0.6 } });
    const answer = solvedAnswer(flat, { effort: 5, at: 'snap' });
    expect(answer).toMatchObject({ ok: false, problems: [{ code: 'does-not-snap', field: 'wanted.at' }] });
  });

  it('is refused where it pulls itself on at the amount that is asked for', () => {
    const { solved } = solvedOf(arch);
    const lowest = solved.forward.points.reduce((one, other) => (other.effort < one.effort ? other : one));
    expect(lowest.effort).toBeLessThan(0);
    expect(solvedAnswer(arch, { effort: 5, at: lowest.amount })).toMatchObject({
      ok: false,
      problems: [{ code: 'effort-out-of-reach', field: 'wanted.at', limit: 0 }],
    });
  });
});
