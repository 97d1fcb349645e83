import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { nearJudge } from '../../../src/core/design/nearJudge.ts';
import { narrowingLike, rememberSolved } from '../../../src/core/design/rememberSolved.ts';
import { solveJoint } from '../../../src/core/design/solveJoint.ts';
import { waysOut } from '../../../src/core/design/waysOut.ts';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const FAILING = [
  ['a doubtful leaf', LEAF],
  ['a PLA leaf', changed(LEAF, { profile: { filament: 'pla' } })],
  [
    'a severe PLA neck',
    changed(LEAF, { sizes: { length: 2 }, movement: { amount: radians(40) }, profile: { filament: 'pla' } }),
  ],
  ['a leaf printed upright', changed(LEAF, { profile: { lying: 'upright' } })],
  [
    'four lines to a right angle',
    changed(LEAF, { sizes: { lines: 4, length: 20 }, movement: { amount: radians(90) } }),
  ],
  ['a measured neck', changed(LEAF, { measuredThickness: 0.63, sizes: { length: 6 } })],
  ['a crease in PETG', changed(CREASE, { sizes: { length: 3 }, profile: { filament: 'petg' } })],
  ['a leaf held bent', changed(LEAF, { movement: { held: true, cycles: 10 }, sizes: { length: 20 } })],
] as const;

describe.each(FAILING)('%s', (_, joint) => {
  const before = assessed(joint);
  const ways = waysOut(before);

  it('has ways out that pass when assessed again', () => {
    expect(before.verdict.grade).not.toBe('pass');
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) {
      const again = assess(way.after);
      expect(again.ok && again.value.verdict.grade).toBe('pass');
      expect(again.ok && again.value.strain.peak).toBe(way.assessment.strain.peak);
    }
  });

  it('are ranked by cost, none twice', () => {
    expect(ways.map((way) => way.cost)).toEqual(ways.map((way) => way.cost).toSorted((x, y) => x - y));
    expect(new Set(ways.map((way) => JSON.stringify(way.after))).size).toBe(ways.length);
  });
});

describe('a doubtful PETG leaf', () => {
  const kinds = waysOut(assessed(LEAF)).flatMap((way) => way.kinds);

  it.each(['lengthen', 'other filament', 'stop earlier', 'share the angle', 'fewer lines'] as const)(
    'is offered: %s',
    (kind) => {
      expect(kinds).toContain(kind);
    },
  );
});

describe('a leaf with a sharp root that only just fails', () => {
  it('is offered a larger fillet', () => {
    const sharp = changed(LEAF, { sizes: { length: 17, fillet: 0.4 } });
    expect(waysOut(assessed(sharp)).flatMap((way) => way.kinds)).toContain('larger fillet');
  });
});

describe('a leaf that only just fails', () => {
  it('is offered a narrower line', () => {
    const close = changed(LEAF, { sizes: { length: 16 }, profile: { lineWidth: 0.45 } });
    expect(waysOut(assessed(close)).flatMap((way) => way.kinds)).toContain('line width');
  });
});

describe('an upright leaf', () => {
  it('is offered to be turned on the plate', () => {
    const upright = changed(LEAF, { sizes: { length: 20 }, profile: { lying: 'upright' } });
    expect(waysOut(assessed(upright)).map((way) => way.kinds)).toContainEqual(['turn the part']);
  });
});

describe('a joint that passes', () => {
  it('is offered no way out', () => {
    expect(waysOut(assessed(changed(LEAF, { sizes: { length: 30 } })))).toEqual([]);
  });
});

describe('a short double arch that has to be solved', () => {
  const button = demoPart().joints.find(({ id }) => id === 'mode-button');
  if (!button) throw new Error('no button');
  let solves = 0;
  const counted = rememberSolved((understood, detail) => {
    solves += 1;
    return solveJoint(understood, detail);
  });
  const judge = (joint: Joint) => assess(joint, bySolver({ whole: false, beyond: false, parts: 12 }, counted));
  const before = judge(button);
  if (!before.ok) throw new Error('refused');
  const narrowing = narrowingLike(counted, before.value.filament);
  const ways = waysOut(before.value, (joint) =>
    assess(joint, bySolver({ whole: false, beyond: false, parts: 12 }, narrowing)),
  );

  it('has ways out that pass, by its length alone and together with another filament', () => {
    expect(ways.map(({ kinds }) => kinds.toSorted())).toEqual(
      expect.arrayContaining([['lengthen'], ['lengthen', 'other filament']]),
    );
    expect(ways.every(({ assessment }) => assessment.verdict.grade === 'pass')).toBe(true);
    expect(ways.map((way) => way.cost)).toEqual(ways.map((way) => way.cost).toSorted((x, y) => x - y));
  });

  it('is made no longer than it must be: a tenth shorter would not do', () => {
    const longer = ways.find(({ kinds }) => kinds.length === 1 && kinds[0] === 'lengthen')?.after;
    const { span = Number.NaN } = longer?.sizes ?? {};
    const shorter = judge({ ...button, sizes: { ...button.sizes, span: 0.9 * span } });
    expect(shorter.ok && shorter.value.verdict.grade).not.toBe('pass');
  });

  it('is solved a score of times for them, not a hundred', () => {
    expect(solves).toBeLessThanOrEqual(20);
  });

  it('is judged near it as it is, and its strain grows there as the hand form says', () => {
    const near = nearJudge(before.value);
    const same = near(button);
    expectClose(same.ok ? same.value.strain.peak : Number.NaN, before.value.strain.peak, {
      rel: 1e-9,
      because: 'round-off',
    });
    const longer = near({ ...button, sizes: { ...button.sizes, span: 40 } });
    const solved = judge({ ...button, sizes: { ...button.sizes, span: 40 } });
    expectClose(longer.ok ? longer.value.strain.peak : 0, solved.ok ? solved.value.strain.peak : 1, {
      rel: 0.15,
      because: 'an estimate that lets through what is within 15 % of passing, before it is solved',
    });
    expect(() => nearJudge(assessed(LEAF))).toThrow(RangeError);
  });
});
