/** Laws of small changes and of efforts that are matched, for joints of every kind. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import { gaugeOf } from '../../src/core/design/effortAt.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { MATCHED } from '../../src/core/design/matchAnswer.ts';
import { matchEffort } from '../../src/core/design/matchEffort.ts';
import { nudgesOf } from '../../src/core/design/nudges.ts';
import { rememberSolved } from '../../src/core/design/rememberSolved.ts';
import { withCount } from '../../src/core/design/withCount.ts';
import { familyOf } from '../../src/core/flexures/known.ts';
import { expectClose } from '../support/close.ts';
import { DRIVEN, jointOf } from '../support/families.ts';
import { leaf } from '../support/generators.ts';
import { changed, LEAF } from '../support/joints.ts';

const AS_WISHED = { rel: MATCHED * (1 + 1e-9), because: 'a joint is matched to one in a hundred' };

/** Counts of a joint, which are never anything but whole. */
function countsOf(joint: Joint): readonly number[] {
  const { parameters } = familyOf(joint);
  return Object.entries(joint.sizes).flatMap(([name, value]) => (parameters[name]?.kind === 'count' ? [value] : []));
}

describe('an effort that is matched', () => {
  it('is what the joint has when it is assessed alone, with whole lines, for any leaf that is bent', () => {
    const ratio = fc.integer({ min: 2, max: 60 }).map((n) => n / 10);
    fc.assert(
      fc.property(leaf, ratio, ({ sizes, thickness }, times) => {
        const line = thickness / sizes.lines;
        const profile = { nozzle: line / 1.05, lineWidth: line, layerHeight: line / 2, firstLayerHeight: line / 2 };
        const joint = changed(LEAF, { sizes, profile });
        const own = assess(joint);
        fc.pre(own.ok && own.value.effort.effort > 0.01 && own.value.effort.effort < 1e5);
        const effort = times * (own.ok ? own.value.effort.effort : Number.NaN);
        const answer = matchEffort(joint, { effort, at: joint.movement.amount });
        if (!answer.ok) {
          expect(answer.problems[0].code).toBe('effort-out-of-reach');
          return;
        }
        for (const { after, isMatched, effort: told } of answer.value.matches) {
          const alone = assess(after);
          if (!alone.ok) throw new Error(alone.problems[0].message);
          expectClose(told, alone.value.effort.effort, { rel: 1e-12, because: 'the same assessment' });
          if (isMatched) expectClose(alone.value.effort.effort, effort, AS_WISHED);
          for (const count of countsOf(after)) expect(Number.isInteger(count)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

const SMALL: Readonly<Record<string, number>> = { cells: 4, rows: 6 };

/** A joint of each kind in each drive; panels with few cells or rows, asked for as much less. */
const JOINTS = DRIVEN.map(({ id, kind, drive }) => {
  const few = Object.entries(SMALL).filter(([name]) => name in kind.family.parameters);
  const amount = few.length > 0 ? drive.typical / 4 : drive.typical;
  return [id, jointOf(kind, drive, Object.fromEntries(few), amount)] as const;
});

/** A joint with what tells its effort: where it snaps, or as far as it is moved. */
function gauged(joint: Joint) {
  const at = familyOf(joint).snaps ? ('snap' as const) : joint.movement.amount;
  const solve = rememberSolved();
  const judge = (one: Joint) => assess(one, bySolver({ whole: false, beyond: at === 'snap' }, solve));
  const gauge = gaugeOf(at, judge);
  const now = gauge(joint);
  if (!now.ok) throw new Error(now.problems[0].message);
  return { at, judge, gauge, now: now.value };
}

describe.each(JOINTS)('%s', (_, joint) => {
  const family = familyOf(joint);
  const { at, judge, gauge, now } = gauged(joint);

  it('is matched to an effort, as an assessment without memory tells', () => {
    const effort = 1.4 * now;
    const answer = matchEffort(joint, { effort, at }, { quick: judge, full: judge });
    if (!answer.ok) throw new Error(answer.problems[0].message);
    const [first] = answer.value.matches;
    const afresh = gaugeOf(at, (one) => assess(one, bySolver({ whole: false, beyond: at === 'snap' })));
    const alone = afresh(first?.after ?? joint);
    expectClose(alone.ok ? alone.value : Number.NaN, effort, AS_WISHED);
    for (const { after } of answer.value.matches) {
      for (const count of countsOf(after)) expect(Number.isInteger(count)).toBe(true);
    }
  });

  it('pushes harder with one line or layer more', () => {
    const { count } = family.roles;
    const thicker = gauge(withCount(joint, (joint.sizes[count] ?? 1) + 1));
    if (thicker.ok) expect(thicker.value).toBeGreaterThan(now);
    else expect(thicker.problems[0].field).toBeDefined();
  });

  it('changes a little as a fresh assessment tells, also of a way that was solved for another filament', () => {
    for (const { after } of nudgesOf(joint).filter(({ of, by }) => of === 'length' && by > 0)) {
      const other = { ...after, profile: { ...after.profile, filament: 'pla' } };
      judge(other);
      const [remembered, fresh] = [judge(after), assess(after, bySolver({ whole: false, beyond: at === 'snap' }))];
      if (!remembered.ok || !fresh.ok) throw new Error('a little longer is never refused');
      expect(remembered.value.effort).toEqual(fresh.value.effort);
      expect(remembered.value.strain).toEqual(fresh.value.strain);
    }
  });
});

// Arms of a spiral share one hub, so that they are no springs side by side.
const BESIDE = JOINTS.filter(([, joint]) => familyOf(joint).roles.sideBySide === 'sideBySide');

describe.each(BESIDE)('%s', (_, joint) => {
  it('pushes twice as hard where twice as many stand side by side', () => {
    const { gauge, now } = gauged(joint);
    const sideBySide = 2 * (joint.sizes['sideBySide'] ?? Number.NaN);
    const two = gauge({ ...joint, sizes: { ...joint.sizes, sideBySide } });
    expectClose(two.ok ? two.value : Number.NaN, 2 * now, {
      rel: 1e-9,
      because: 'round-off: one is solved and counted as often as there are alike',
    });
  });
});
