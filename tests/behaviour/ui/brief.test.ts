/** The brief as it reads, for each way in which a joint is moved. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { familyOf, findFamily } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { briefParts, type BriefPart } from '../../../src/ui/joints/briefSpecs.ts';
import { kindText } from '../../../src/ui/text/kindText.ts';
import type { LengthUnit } from '../../../src/ui/text/numbers.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';

const PUSHED = changed(LEAF, { movement: { drive: 'pushed', amount: 3 } });
const SWINGS = changed(LEAF, { movement: { ways: 'between', least: radians(10) } });
const CENTRED = changed(LEAF, { movement: { drive: 'centred', amount: radians(8) } });

function partsOf(joint: Joint, unit: LengthUnit = 'mm', puts: { next: Joint; said: string }[] = []) {
  const { brief, details } = kindText(joint.family);
  const put = (next: Joint, said: string) => {
    puts.push({ next, said });
    return undefined;
  };
  const of = { joint, family: familyOf(joint), unit, put };
  return { brief: briefParts(brief, of), details: briefParts(details(joint.movement.drive, joint.sizes), of) };
}

function spoken(part: BriefPart): string {
  if (part.is === 'text') return part.text;
  const { spec, stop } = part;
  if (part.is === 'value') return `${part.spec.figure}${part.spec.suffix}${stop}`;
  return `${part.spec.options.find(({ value }) => value === spec.value)?.text}${stop}`;
}

const read = (parts: readonly BriefPart[]) =>
  parts
    .map(spoken)
    .join('')
    .replaceAll(/[\u00a0\u2009]/g, ' ');

describe('the brief', () => {
  it.each([
    ['a turned leaf', LEAF, 'mm', 'Bends 35° one way, 5 000 times, in PETG, 6 mm deep'],
    ['a crease, which knows one way only', CREASE, 'mm', 'Bends 100° one way, 600 times'],
    ['a pushed leaf', PUSHED, 'mm', 'Is pushed at the tip by 3 mm one way, 5 000 times'],
    ['a pushed leaf in inches', PUSHED, 'inch', 'Is pushed at the tip by 0.1181 in one way'],
    ['a leaf that never comes to rest', SWINGS, 'mm', 'Bends 35° and back as far as 10°, 5 000 times, in PETG'],
    ['a leaf about a pin', CENTRED, 'mm', 'Turns about a pin 8° one way'],
  ] as const)('of %s', (_, joint, unit, begins) => {
    expect(read(partsOf(joint, unit).brief).startsWith(begins)).toBe(true);
  });

  it('reads on in the small where the choice is not the first word', () => {
    const joint = { ...PUSHED, measuredThickness: 0.8 };
    const of = { joint, family: familyOf(joint), unit: 'mm', put: () => undefined } as const;
    expect(read(briefParts(kindText('straightLeaf').measuredBrief, of))).toContain(
      'long: is pushed at the tip by 3 mm',
    );
  });

  it('asks for the sizes of its drive, and for how many are side by side in every one', () => {
    expect(read(partsOf(LEAF).details)).toContain('into pads 4 mm thick, 1 in a row, 1 side by side.');
    expect(read(partsOf(PUSHED).details)).toContain('the tip 100 % as thick as the root, 1 side by side.');
    expect(read(partsOf(CENTRED).details)).toContain('the pin 50 % of the way along the leaf, 1 side by side.');
    expect(read(partsOf(CREASE).details)).toContain('1 in a row, 1 side by side.');
  });

  it('takes another drive as far as is usual, or as far as before where it measures the same', () => {
    const puts: { next: Joint; said: string }[] = [];
    const choice = partsOf(changed(LEAF, { movement: { effortAtMost: 40 } }), 'mm', puts).brief.find(
      (part) => part.is === 'choice' && part.spec.key === 'drive',
    );
    if (choice?.is !== 'choice') throw new Error('the drive must be a choice');
    choice.spec.take('pushed');
    choice.spec.take('centred');
    expect(puts[0]?.next.movement).toEqual({ ...LEAF.movement, drive: 'pushed', amount: 2 });
    expect(puts[1]?.next.movement).toEqual({ ...LEAF.movement, drive: 'centred', effortAtMost: 40 });
    expect(puts[0]?.said).toBe('Made so that it is pushed at the tip, was: bends');
  });

  it('says of what snaps how far it comes back apart from how far it goes', () => {
    const arch = findFamily('snapArch');
    if (!arch) throw new Error('no arch');
    const joint = newJoint(arch, 'Button');
    const back = changed(joint, { movement: { ways: 'between', least: -1 } });
    expect(read(partsOf(back).details)).toContain('It is moved back as far as −1 mm and let go');
  });
});

type Put = { next: Joint; said: string };

function fieldOf(joint: Joint, key: string, puts: Put[]) {
  const part = partsOf(joint, 'mm', puts).brief.find((one) => one.is !== 'text' && one.spec.key === key);
  if (part?.is !== 'value') throw new Error(`${key} must be a value`);
  return part.spec;
}

function waysOf(joint: Joint, puts: Put[]) {
  const part = partsOf(joint, 'mm', puts).brief.find((one) => one.is === 'choice' && one.spec.key === 'ways');
  if (part?.is !== 'choice') throw new Error('the ways must be a choice');
  return part.spec;
}

describe('a swing that comes back only so far', () => {
  it('begins where it came back to before, and is dropped with its figure', () => {
    const puts: Put[] = [];
    waysOf(changed(LEAF, { movement: { ways: 'both ways' } }), puts).take('between');
    waysOf(LEAF, puts).take('between');
    waysOf(SWINGS, puts).take('one way');
    expect(puts.map(({ next }) => next.movement.least)).toEqual([-LEAF.movement.amount, 0, undefined]);
    expect(puts.map(({ said }) => said)).toEqual([
      'Bends back as far as −35°, was both ways',
      'Bends back as far as 0°, was one way',
      'Bends one way, was back as far as 10°',
    ]);
  });

  it('is said in the past tense with the old figure, and stops a step short of the amount', () => {
    const puts: Put[] = [];
    const least = fieldOf(SWINGS, 'least', puts);
    least.take(radians(-5), least.value);
    expect(puts[0]?.said).toBe('Made to come back as far as −5°, was 10');
    expect(least.max).toBeCloseTo(radians(34), 12);
    expect(least.min).toBe(-SWINGS.movement.amount);
  });

  it('follows an amount that is made smaller, and the slip says so', () => {
    const puts: Put[] = [];
    const far = changed(SWINGS, { movement: { least: radians(20) } });
    fieldOf(far, 'amount', puts).take(radians(15), far.movement.amount);
    fieldOf(changed(SWINGS, { movement: { least: radians(-20) } }), 'amount', puts).take(radians(15), radians(35));
    fieldOf(SWINGS, 'amount', puts).take(radians(15), radians(35));
    expect(puts.map(({ said }) => said)).toEqual([
      'Angle made 15°, was 35; comes back as far as 14° now',
      'Angle made 15°, was 35; comes back as far as −15° now',
      'Angle made 15°, was 35',
    ]);
    expect(puts[0]?.next.movement.least).toBeCloseTo(radians(14), 12);
    expect(puts[1]?.next.movement.least).toBe(radians(-15));
    expect(puts[2]?.next.movement.least).toBe(radians(10));
  });

  it('and smaller movements are let go where another drive measures otherwise', () => {
    const puts: Put[] = [];
    const also = [{ amount: radians(4), ways: 'one way', cycles: 1000 }] as const;
    const choice = partsOf(changed(SWINGS, { movement: { also } }), 'mm', puts).brief.find(
      (part) => part.is === 'choice' && part.spec.key === 'drive',
    );
    if (choice?.is !== 'choice') throw new Error('the drive must be a choice');
    choice.spec.take('pushed');
    choice.spec.take('centred');
    expect(puts[0]?.next.movement).not.toHaveProperty('also');
    expect(puts[0]?.next.movement).not.toHaveProperty('least');
    expect(puts[1]?.next.movement).toMatchObject({ also, least: radians(10) });
  });
});
