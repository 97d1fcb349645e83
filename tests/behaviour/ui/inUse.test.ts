/** “In use”: where a joint is used, how long it is held, and the smaller movements beside its own. */
import { describe, expect, it } from 'vitest';
import { A_ROOM, type Joint, type Swing } from '../../../src/core/design/joint.ts';
import { MOVEMENT_LIMITS } from '../../../src/core/design/movementLimits.ts';
import { assess } from '../../../src/core/design/assess.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { swingsOf, withAnother, without } from '../../../src/ui/life/swings.ts';
import { hoursSpec, moistureSpec, swingSpec, swingWaysSpec, temperatureSpec } from '../../../src/ui/life/useSpecs.ts';
import { putting } from '../../../src/ui/joints/putting.ts';
import '../../../src/ui/text/problemText.ts';
import { spanText } from '../../../src/ui/text/countText.ts';
import { swingAndCycles, inDays } from '../../../src/ui/text/useText.ts';
import { changed, LEAF } from '../../support/joints.ts';

const SMALL: Swing = { amount: radians(10), ways: 'one way', cycles: 100_000 };
const plain = (text: string | undefined) => text?.replaceAll(/[\u00a0\u2009]/g, ' ');

/** A joint with what puts a change of it in force; what was put is kept. */
function of(joint: Joint) {
  const family = familyOf(joint);
  const puts: { next: Joint; said: string | undefined }[] = [];
  const put = putting(joint, family, 'mm', (next, said) => puts.push({ next, said: plain(said) }));
  return { joint, family, unit: 'mm', put, puts } as const;
}

const withSwings = (also: readonly Swing[], movement: Partial<Joint['movement']> = {}) =>
  changed(LEAF, { movement: { ...movement, also } });

describe('surroundings', () => {
  it('are left out of a joint where they are those of a room', () => {
    const warm = of(LEAF);
    temperatureSpec(warm).take(40, 23);
    expect(warm.puts[0]?.next.surroundings).toEqual({ temperatureC: 40, moisture: 'damp' });
    expect(warm.puts[0]?.said).toBe('Used at 40 °C at most, was 23');
    const back = of({ ...LEAF, surroundings: { ...A_ROOM, temperatureC: 40 } });
    temperatureSpec(back).take(23, 40);
    expect(Object.keys(back.puts[0]?.next ?? {})).not.toContain('surroundings');
  });

  it('keep one of their values when the other is changed', () => {
    const cold = of({ ...LEAF, surroundings: { ...A_ROOM, temperatureC: -5 } });
    moistureSpec(cold).take('dry');
    expect(cold.puts[0]?.next.surroundings).toEqual({ temperatureC: -5, moisture: 'dry' });
    expect(cold.puts[0]?.said).toBe('Used in dry air, was damp air');
    expect(temperatureSpec(cold).figure).toBe('−5');
  });

  it('are refused with the value and its limit', () => {
    const cold = of(LEAF);
    expect(plain(temperatureSpec(cold).take(-80, 23))).toBe(
      'Warmest that it gets in use cannot be under −40 °C; −80 °C is.',
    );
    expect(cold.puts).toEqual([]);
  });

  it('hold for a day where nothing is said, and for as many hours as are', () => {
    const held = of(changed(LEAF, { movement: { held: true } }));
    expect(plain(`${hoursSpec(held).figure}${hoursSpec(held).suffix}`)).toBe('24 h');
    hoursSpec(held).take(720, 24);
    expect(held.puts[0]?.next.movement.heldHours).toBe(720);
    expect(held.puts[0]?.said).toBe('Held bent for 720 h at a time, was 24');
  });
});

describe('another movement', () => {
  it.each(FAMILIES.map((family) => [family.id, family] as const))('of a %s is one that it allows', (_, family) => {
    for (const drive of family.drives) {
      const joint = newJoint(family, 'New', undefined, drive);
      for (const ways of [
        { ways: 'one way' },
        { ways: 'both ways' },
        { ways: 'between', least: drive.typical / 2 },
      ] as const) {
        const asked = withAnother(changed(joint, { movement: ways }), drive.step, MOVEMENT_LIMITS.cycles.max);
        expect(assess(asked).ok, `${drive.id} ${ways.ways}`).toBe(true);
      }
    }
  });

  it('is a third of the joint’s own and ten times as often, and never more often than can be asked', () => {
    const [first] = swingsOf(withAnother(changed(LEAF, { movement: { cycles: 5e8 } }), radians(1), 1e9));
    expect(first).toMatchObject({ ways: 'one way', cycles: 1e9 });
    expect(first?.amount).toBeCloseTo(radians(12), 12);
    expect(plain(swingAndCycles(SMALL, 'turn', 'mm'))).toBe('10° one way, 100 000 times');
  });

  it('leaves no trace when the last is taken out', () => {
    const two = withSwings([SMALL, { ...SMALL, cycles: 7 }]);
    expect(swingsOf(without(two, 0))).toEqual([{ ...SMALL, cycles: 7 }]);
    expect(without(without(two, 0), 0)).toEqual(LEAF);
  });

  it('is changed in each of its values, in the past tense with the old one', () => {
    const one = of(withSwings([SMALL]));
    swingSpec(one, 0, 'amount').take(radians(12), radians(10));
    swingSpec(one, 0, 'cycles').take(50_000, 100_000);
    swingWaysSpec(one, 0).take('between');
    expect(one.puts.map(({ said }) => said)).toEqual([
      'Movement 2 made 12°, was 10',
      'Movement 2 made 50 000 times, was 100 000',
      'Movement 2 made back as far as 0°, was one way',
    ]);
    expect(one.puts.map(({ next }) => swingsOf(next)[0])).toEqual([
      { ...SMALL, amount: radians(12) },
      { ...SMALL, cycles: 50_000 },
      { ...SMALL, ways: 'between', least: 0 },
    ]);
  });

  it('is refused where it goes farther than the joint’s own, on either side', () => {
    const one = of(withSwings([SMALL]));
    expect(plain(swingSpec(one, 0, 'amount').take(radians(40), radians(10)))).toBe(
      'How far movement 2 goes cannot be over 35°; 40° is.',
    );
    expect(plain(swingWaysSpec(one, 0).take('both ways'))).toBe(
      'How far movement 2 comes back cannot be under 0°; −10° is.',
    );
    expect(one.puts).toEqual([]);
  });

  it('stops by steps at the ends of the joint’s own', () => {
    const between: Swing = { ...SMALL, ways: 'between', least: radians(-2) };
    const one = of(withSwings([between], { ways: 'between', least: radians(-5) }));
    expect(swingSpec(one, 0, 'least').min).toBe(radians(-5));
    expect(swingSpec(one, 0, 'least').max).toBeCloseTo(radians(9), 12);
    expect(swingSpec(one, 0, 'amount').max).toBe(LEAF.movement.amount);
  });
});

describe('times', () => {
  it.each([
    [1 / 60, '1 min'],
    [1 / 6, '10 min'],
    [1, '1 h'],
    [6, '6 h'],
    [24, 'a day'],
    [72, '3 days'],
    [168, 'a week'],
    [720, 'a month'],
    [8760, 'a year'],
    [87_600, '10 years'],
  ])('%d h are %s', (hours, said) => {
    expect(plain(spanText(hours))).toBe(said);
  });

  it('long ones are told in days too', () => {
    expect(inDays(24)).toBe('');
    expect(plain(inDays(720))).toBe(', 30 days,');
  });
});
