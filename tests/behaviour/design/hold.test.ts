/**
 * Held bent. Source [common-practice]: a power of time, whose losses after an hour and a day the collection of data beside the rows
 * works out by itself (`stressLossHour`, `stressLossDay`).
 */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { feltAt } from '../../../src/core/design/feltEffort.ts';
import { holdAnswer } from '../../../src/core/design/hold.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

function heldIn(joint: Joint) {
  const answer = holdAnswer(assessed(joint));
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return { ...answer.value, notes: answer.notes };
}

const LITTLE = changed(LEAF, { movement: { amount: radians(8), held: true } });

const heldAt = (temperatureC: number) =>
  holdAnswer(assessed({ ...LITTLE, surroundings: { temperatureC, moisture: 'damp' } }));

describe('a joint that is held bent', () => {
  it.each(FILAMENTS.map(({ id }) => id).filter((id) => id !== 'pp-moulded'))(
    'of %s keeps what the row says of an hour and a day',
    (id) => {
      const joint = changed(LITTLE, { profile: { filament: id } });
      const { at } = heldIn(joint);
      const { stressLossHour, stressLossDay } = wholeRow(assessed(joint).filament).properties;
      for (const [hours, loss] of [
        [1, stressLossHour],
        [24, stressLossDay],
      ] as const) {
        const { left } = at(hours);
        const printed = { abs: 0.06, because: 'losses stand in the row to a tenth of a per cent' } as const;
        expectClose(100 * (1 - left.typical), loss.typical, printed);
        expectClose(100 * (1 - left.high), loss.low!, printed);
        expectClose(100 * (1 - left.low), loss.high!, printed);
      }
    },
  );

  it('pushes back as hard as the answer says in the first minute, and less and less after', () => {
    const a = assessed(LITTLE);
    const { at, curve } = heldIn(LITTLE);
    expect(at(1 / 60).effort).toEqual({ typical: a.effort.effort, low: a.effort.low, high: a.effort.high });
    expect(curve[0]!.hours).toBeCloseTo(1 / 60, 12);
    expect(curve.at(-1)!.hours).toBeCloseTo(87_600, 6);
    const pushes = curve.map(({ effort }) => effort.typical);
    expect(pushes).toEqual(pushes.toSorted((x, y) => y - x));
    expect(curve.every(({ left }) => left.low <= left.typical && left.typical <= left.high)).toBe(true);
  });

  it('pushes as it does where it is held, not as on the way there: a snap arch past its snap', () => {
    const button = demoPart().joints.find(({ name }) => name === 'Mode button')!;
    const a = assess(button, bySolver());
    if (!a.ok) throw new Error(a.problems[0].message);
    const answer = holdAnswer(a.value);
    if (!answer.ok) throw new Error(answer.problems[0].message);
    const { typical } = answer.value.at(1 / 60).effort;
    expectClose(typical, Math.abs(feltAt(a.value, button.movement.amount)), { rel: 1e-12, because: 'round-off' });
    expect(typical).toBeLessThan(a.value.effort.effort / 4);
  });

  it('stays bent after a day by what the row says, and by more after longer', () => {
    const { amount } = LITTLE.movement;
    const { setAfterDayHeld } = wholeRow(assessed(LITTLE).filament).properties;
    const { held, at } = heldIn(LITTLE);
    expect(held.hours).toBe(24);
    expectClose(held.stays.typical, (amount * setAfterDayHeld.typical) / 100, { rel: 1e-12, because: 'round-off' });
    expect(at(240).stays.typical).toBeGreaterThan(held.stays.typical);
    expect(at(1 / 60).stays.typical).toBe(assessed(LITTLE).set.amount);
    expect(heldIn(changed(LITTLE, { movement: { heldHours: 3 } })).held.hours).toBe(3);
  });

  it('of what hardly relaxes, or not at all, stays bent by the limit: as the logarithm of time', () => {
    const a = assessed(LITTLE);
    const heldWith = (typical: number) => {
      const row = wholeRow(a.filament);
      const relaxationExponent = { typical, unit: '', direction: 'any', provenance: { kind: 'memory' } } as const;
      const answer = holdAnswer(a, { ...row, properties: { ...row.properties, relaxationExponent } });
      if (!answer.ok) throw new Error(answer.problems[0].message);
      return answer.value.at(240);
    };
    const day = heldIn(LITTLE).held.stays.typical;
    for (const exponent of [0, 1e-300, 1e-12]) {
      const { left, stays } = heldWith(exponent);
      expectClose(left.typical, 1, { rel: 1e-10, because: 'a power of 1e-12 over ten days takes that much' });
      const wanted = (day * Math.log(240 * 60)) / Math.log(24 * 60);
      expectClose(stays.typical, wanted, { rel: 1e-10, because: 'the next term of the series is as small' });
    }
  });

  it('never stays less than one bend leaves at once, nor more than it is bent', () => {
    const far = changed(LEAF, { movement: { amount: radians(300) } });
    const { set, joint } = assessed(far);
    for (const { stays } of heldIn(far).curve) {
      expect(stays.typical).toBeGreaterThanOrEqual(set.amount);
      expect(stays.low).toBeLessThanOrEqual(stays.typical);
      expect(stays.high).toBeGreaterThanOrEqual(stays.typical);
      expect(stays.high).toBeLessThanOrEqual(joint.movement.amount);
    }
  });

  it('is told to be past what the power of time is for where it is strained past yield', () => {
    expect(heldIn(LITTLE).notes).toEqual([]);
    const far = changed(LEAF, { movement: { amount: radians(90) } });
    expect(heldIn(far).notes).toMatchObject([{ code: 'held-past-yield', field: 'movement.held' }]);
  });

  it('is not answered near where its filament softens', () => {
    expect(heldAt(50).ok).toBe(true);
    expect(heldAt(51)).toMatchObject({
      ok: false,
      problems: [{ code: 'too-warm-to-hold', field: 'surroundings.temperatureC', value: 51, limit: 51 }],
    });
  });

  it('of TPU sags by half again and more in a day under a load that stays on (common practice, no source)', () => {
    const { sags } = heldIn(changed(LITTLE, { profile: { filament: 'tpu95a' } }));
    expectClose(sags.typical, 1440 ** 0.06 - 1, { rel: 1e-12, because: 'round-off' });
    expect(sags.typical).toBeGreaterThan(0.5);
    expect([sags.low, sags.high]).toEqual(
      [sags.low, sags.typical, sags.high].toSorted((x, y) => x - y).filter((_, i) => i !== 1),
    );
  });
});
