import { ok } from '../../../src/core/result.ts';
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { effortAt, peakStrainFor } from '../../../src/core/design/curves.ts';
import { scaleToWhole } from '../../../src/core/design/scalePart.ts';
import { allowedPeakStrain, largestAmount, shortestLength } from '../../../src/core/design/sizeFor.ts';
import { roomToSpare } from '../../../src/core/design/roomToSpare.ts';
import { waysOut } from '../../../src/core/design/waysOut.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const pushed = (amount: number, sizes: Readonly<Record<string, number>> = {}) =>
  changed(LEAF, { movement: { drive: 'pushed', amount }, sizes: { length: 20, ...sizes } });
const centred = (angleDeg: number, sizes: Readonly<Record<string, number>> = {}) =>
  changed(LEAF, { movement: { drive: 'centred', amount: radians(angleDeg) }, sizes: { length: 20, ...sizes } });

const SMALL = { rel: 0.004, because: 'a cantilever that bends little: the next term is 1.03·(w/L)², here 0.0026' };
const SAME = { rel: 1e-9, because: 'the same chain of formulas, only round-off differs' };

describe('a leaf pushed at its tip', () => {
  // Textbook cantilever, 0.84 thick, 6 deep, 20 long, 1 mm of travel: ε = 3·0.84·1/(2·400), F = 3·1850·0.296352/8000.
  it('strains and pushes back as a cantilever does while it bends little', () => {
    const a = assessed(pushed(1));
    expectClose(a.strain.nominal, 0.00315, SMALL);
    expectClose(a.effort.effort / a.effort.widthRatio, 0.20559, SMALL);
    expectClose(a.effort.stiffness, a.effort.effort, SAME);
    expect(a.effort.measure).toBe('travel');
  });

  it('is an estimate, and rolls to no arc', () => {
    const a = assessed(pushed(3));
    expect(a.estimate).toBe(true);
    expect(a.travel).toBeUndefined();
    expect(assessed(LEAF)).toMatchObject({ estimate: false });
  });

  it('knows nothing of a row, whatever the sizes say', () => {
    const a = assessed(pushed(3, { inRow: 4, centre: 0.1 }));
    expect(a).toMatchObject({ inRow: 1, amountEach: 3 });
    expect(a.strain).toEqual(assessed(pushed(3)).strain);
  });

  it('takes a solved answer in the place of the hand form', () => {
    const solved = assess(pushed(3), () =>
      ok({
        nominalStrain: 0.01,
        strainWithin: 0.008,
        strainAtRoots: 0.01,
        effort: 2e-4,
        stiffness: 1e-4,
        exact: true,
      }),
    );
    if (!solved.ok) throw new Error('the joint must be understood');
    expect(solved.value.estimate).toBe(false);
    expect(solved.value.strain.nominal).toBe(0.01);
    const { effort, widthRatio, modulus } = solved.value.effort;
    expectClose(effort, 2e-4 * widthRatio * modulus, SAME);
    expect(solved.value.travel).toBeUndefined();
  });

  it('gives figures even where no push would get it', () => {
    const a = assessed(pushed(30));
    expect(a.verdict.grade).toBe('fail');
    expect([a.strain.peak, a.effort.effort, a.overBend.hardStop].every(Number.isFinite)).toBe(true);
  });

  it('meets its own curves at the wanted travel', () => {
    const a = assessed(pushed(6));
    expectClose(peakStrainFor(a, {}), a.strain.peak, SAME);
    expectClose(effortAt(a, 6).typical, a.effort.effort, SAME);
    expect(effortAt(a, 0).typical).toBe(0);
    expect(effortAt(a, 9).typical).toBeGreaterThan(a.effort.effort);
  });

  it('is sized within the limits of its kind: at the shortest length and the largest travel it just passes', () => {
    const a = assessed(pushed(3));
    const allowed = allowedPeakStrain(a);
    const FOUND = { rel: 1e-5, because: 'length and travel are found to a nanometre' };
    expectClose(peakStrainFor(a, { length: shortestLength(a) }), allowed, FOUND);
    expectClose(peakStrainFor(a, { amount: largestAmount(a) }), allowed, FOUND);
  });

  it('is offered a longer leaf and a shorter travel on a round figure, and no row', () => {
    const ways = waysOut(assessed(pushed(6)));
    const kinds = ways.flatMap((way) => way.kinds);
    expect(kinds).toEqual(expect.arrayContaining(['lengthen', 'stop earlier']));
    expect(kinds).not.toContain('share the angle');
    const stop = ways.find(({ kinds: [kind, ...more] }) => kind === 'stop earlier' && more.length === 0);
    const amount = stop?.after.movement.amount ?? NaN;
    expectClose(amount * 10, Math.round(amount * 10), { abs: 1e-9, because: 'tenths of a millimetre in binary' });
    expect(stop?.assessment.verdict.grade).toBe('pass');
  });

  it('passing, says how much further it may be pushed', () => {
    const a = assessed(pushed(0.5, { length: 40 }));
    const [travel] = roomToSpare(a);
    expect(travel?.value).toBe('amount');
    const limit = travel?.limit ?? NaN;
    expect(assessed(pushed(limit * 0.999, { length: 40 })).verdict.grade).toBe('pass');
    expect(assessed(pushed(limit * 1.01, { length: 40 })).verdict.grade).not.toBe('pass');
  });

  it('strains less when the part is scaled up and the travel stays', () => {
    const a = assessed({ ...pushed(1), measuredThickness: 0.63 });
    const row = scaleToWhole(a).find(({ count }) => count === 2);
    expectClose(row?.strainRatio ?? NaN, 3 / 4, SAME);
    expectClose(row?.effortRatio ?? NaN, 4 / 3, SAME);
  });
});

describe('a leaf that turns about a pin', () => {
  // A beam whose end turns and moves across as a pin at c·L makes it: T = 4·(1 − 3c + 3c²)·E·I·θ/L.
  it.each([
    [0.5, 1],
    [0, 4],
    [1, 4],
  ])(
    'with the pin at %s of its length takes %s times the torque of a pure moment at a small angle',
    (centre, times) => {
      const free = assessed(changed(LEAF, { sizes: { length: 20 }, movement: { amount: radians(0.1) } }));
      const a = assessed(centred(0.1, { centre }));
      const SMALL_TURN = {
        rel: 0.008,
        because: 'the pin squeezes the leaf, by θ·L/(6·t) = 0.7 % of its bending strain',
      };
      expectClose(
        a.effort.effort / a.effort.widthRatio,
        (times * free.effort.effort) / free.effort.widthRatio,
        SMALL_TURN,
      );
      expectClose(a.strain.nominal, times === 1 ? free.strain.nominal : 4 * free.strain.nominal, SMALL_TURN);
    },
  );

  it('is an estimate, and rolls to no arc', () => {
    expect(assessed(centred(10))).toMatchObject({ estimate: true, travel: undefined });
  });
});

describe('leaves side by side', () => {
  it.each([
    ['turned', LEAF],
    ['pushed', pushed(3)],
    ['centred', centred(5)],
  ])('%s: twelve push twelve times as hard and strain no more', (_, joint) => {
    const [one, twelve] = [assessed(joint), assessed(changed(joint, { sizes: { sideBySide: 12 } }))];
    expectClose(twelve.effort.effort, 12 * one.effort.effort, SAME);
    expectClose(twelve.effort.stiffness, 12 * one.effort.stiffness, SAME);
    expect(twelve.strain).toEqual(one.strain);
    expect(twelve.life).toEqual(one.life);
  });
});
