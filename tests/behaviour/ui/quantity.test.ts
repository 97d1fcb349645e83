import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readQuantity, type QuantityKind } from '../../../src/ui/controls/quantity.ts';
import type { LengthUnit } from '../../../src/ui/text/numbers.ts';

const DEGREE = Math.PI / 180;

async function valueOf(text: string, kind: QuantityKind = 'length', unit: LengthUnit = 'mm'): Promise<number | string> {
  const reading = await readQuantity(text, kind, unit, 'Leaf length');
  return reading.ok ? reading.value : reading.problems[0].message;
}

describe('a value is read as a person means it', () => {
  it.each([
    ['12', 12],
    ['+12', 12],
    ['-3', -3],
    ['−3', -3],
    ['12.5', 12.5],
    ['12.', 12],
    ['.5', 0.5],
    ['0,5', 0.5],
    ['12,500', 12.5],
    ['5 000', 5000],
    ['5\u2009000', 5000],
    ['5\u00a0000', 5000],
    ['5\u202f000,5', 5000.5],
    ['1,234,567', 1234567],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1e1', 10],
    ['12 mm', 12],
    ['12mm', 12],
    ['12 MM', 12],
    ['1.2 cm', 12],
    ['0.012 m', 12],
    ['1 in', 25.4],
    ['0.5"', 12.7],
    ['0.5 inch', 12.7],
    ['1 ft', 304.8],
    ["1'", 304.8],
    ['\u200e12\u200f', 12],
    ['3/8 in', 9.525],
    ['3/8"', 9.525],
    ['3/8 in + 2', 11.525],
    ['2 + 3/8 in', 11.525],
    ['1 3/8 in', 34.925],
    ['1 3/8"', 34.925],
    ['-1 1/2', -1.5],
    ['½ in', 12.7],
    ['1½ in', 38.1],
    ['¾', 0.75],
    ['2*0.42', 0.84],
    ['2 × 0.42', 0.84],
    ['2x0,42', 0.84],
    ['10 − 2.5', 7.5],
    ['(1 + 2) * 3 mm', 9],
    ['2 * (1 mm + 1)', 4],
    ['12 / 2 mm', 6],
    ['6 mm * 2 mm / 3 mm', 4],
    ['2^3', 8],
    ['--5', 5],
    ['10 - 2 - 3', 5],
    ['12 ÷ 4', 3],
  ])('%s is %d mm', async (text, expected) => {
    expect(await valueOf(text)).toBeCloseTo(expected, 10);
  });

  it('a bare number is in the chosen unit, in a sum too', async () => {
    expect(await valueOf('0.5', 'length', 'inch')).toBeCloseTo(12.7, 10);
    expect(await valueOf('1 + 2 mm', 'length', 'inch')).toBeCloseTo(27.4, 10);
  });

  it.each([
    ['35', 35 * DEGREE],
    ['35°', 35 * DEGREE],
    ['35 deg', 35 * DEGREE],
    ['0.5 rad', 0.5],
    ['90/2', 45 * DEGREE],
    ['30 + 0.1 rad', 30 * DEGREE + 0.1],
  ])('%s is %d rad', async (text, expected) => {
    expect(await valueOf(text, 'angle')).toBeCloseTo(expected, 12);
  });

  it.each([
    ['5 000', 5000],
    ['5,000', 5000],
    ['5.000', 5000],
    ['1,000,000', 1000000],
    ['2*2500', 5000],
    ['30*0.1', 3],
  ])('the count %s is %d', async (text, expected) => {
    expect(await valueOf(text, 'count')).toBe(expected);
  });
});

describe('shares, forces and torques', () => {
  it.each([
    ['50', 'share', 0.5],
    ['12.7 %', 'share', 0.127],
    ['100/4', 'share', 0.25],
    ['25 % + 10', 'share', 0.35],
    ['20', 'force', 20],
    ['0,5 kN', 'force', 500],
    ['15 N + 5', 'force', 20],
    ['30 N·mm', 'torque', 30],
    ['3 Ncm', 'torque', 30],
    ['0.03 N*m', 'torque', 30],
    // A pound-force is 4.4482216152605 N by its definition.
    ['2 lbf', 'force', 8.896443230521],
  ] as const)('%s as a %s', async (text, kind, value) => {
    expect(await valueOf(text, kind)).toBeCloseTo(value, 9);
  });
});

describe('what cannot be read is refused with the field, the fault and a remedy', () => {
  it.each([
    ['35 deg', 'length', /^Leaf length cannot be in “deg”, which is a unit of angle; use mm, cm, m, in or ft$/],
    ['35°', 'length', /unit of angle/],
    ['3 mm', 'angle', /unit of length; use deg or rad/],
    ['3 mm', 'count', /use no unit/],
    ['20 N', 'length', /unit of force; use mm/],
    ['20 N·mm', 'force', /unit of torque; use N, kN or lbf/],
    ['20 N', 'torque', /unit of force; use N·mm/],
    ['2 N * 3 N', 'force', /comes out as a square of a force/],
    ['50 mm', 'share', /unit of length; use %/],
    ['2.5', 'count', /^Leaf length must be whole, not 2.5; write 2 or 3$/],
    ['', 'length', /^Leaf length needs a number, such as 12, 2\*0\.42 or 3\/8 in$/],
    ['   ', 'length', /needs a number/],
    ['mm', 'length', /needs a number/],
    ['2 mm 3', 'length', /two values side by side/],
    ['2 3', 'length', /cannot be read/],
    ['2(3)', 'length', /two values side by side/],
    ['2 mm * 3 mm', 'length', /comes out as a square of a length/],
    ['2 mm + 3 mm * 2 mm', 'length', /different units/],
    ['1/0', 'length', /divided by nothing/],
    ['9^9^9', 'length', /power over 12/],
    ['2^(3 mm)', 'length', /power that has a unit/],
    ['(2 mm)^0.5', 'length', /broken power/],
    ['1e400', 'length', /cannot be as large/],
    ['1.2.3', 'length', /“1\.2\.3” is not one number/],
    ['zeros(9e9,9e9)', 'length', /“zeros” is not a unit here/],
    ['import({a:1})', 'length', /“import” is not a unit here/],
    ['a=3', 'length', /“a” is not a unit here/],
    ['cos.constructor("return 1")()', 'length', /“cos” is not a unit here/],
    ['f(x)=x', 'length', /“f” is not a unit here/],
    ['createUnit("x")', 'length', /is not a unit here/],
    ['__proto__', 'length', /“_” has no meaning here/],
    ['constructor', 'length', /is not a unit here/],
    ['[1,2]', 'length', /“\[” has no meaning here/],
    ['1:9e9', 'length', /“:” has no meaning here/],
    ['"a"', 'length', /cannot be read/],
    ['5!', 'length', /“!” has no meaning here/],
    ['5 %', 'length', /“%” has no meaning here/],
    ['🙂', 'length', /“🙂” has no meaning here/],
    ['2²', 'length', /“²” has no meaning here/],
    ['9'.repeat(10_000), 'length', /more than 120 characters/],
    ['('.repeat(119), 'length', /needs a number/],
    [`${'('.repeat(59)}1${')'.repeat(59)}`, 'length', /too many brackets/],
    [`${'-'.repeat(119)}1`, 'length', /too many brackets or signs/],
    ['1+'.repeat(59), 'length', /cannot be read as a sum/],
    ['1 mm mm', 'length', /./],
    ['*3', 'length', /cannot be read as a sum/],
    ['3 in in', 'length', /./],
  ] as const)('%s as %s', async (text, kind, message) => {
    expect(await valueOf(text, kind)).toMatch(message);
  });
});

describe('laws of reading', () => {
  const kinds = fc.constantFrom<QuantityKind>('length', 'angle', 'count', 'number');
  const units = fc.constantFrom<LengthUnit>('mm', 'inch');
  const pieces = fc.constantFrom(
    '1',
    '3',
    '0.42',
    '8',
    ' ',
    '/',
    '*',
    '+',
    '-',
    '^',
    '(',
    ')',
    'mm',
    ' in',
    '"',
    '½',
    '°',
    'rad',
    '1e9',
    ',',
    '9e99',
  );

  it.each([
    ['any text', fc.oneof(fc.string({ maxLength: 200 }), fc.string({ unit: 'binary', maxLength: 200 }))],
    ['any heap of numbers, signs and units', fc.array(pieces, { maxLength: 40 }).map((parts) => parts.join(''))],
  ])('%s gives a finite value or a message', async (_, texts) => {
    await fc.assert(
      fc.asyncProperty(texts, kinds, units, async (text, kind, unit) => {
        const reading = await readQuantity(text, kind, unit);
        if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
        else expect(reading.problems[0].message).toMatch(/^The \w+ .*[^.]$/su);
      }),
      { numRuns: 400 },
    );
  });

  it('a number with a sign means the same in a sum as alone', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: -5_000_000, max: 5_000_000 }), async (thousandths) => {
        const alone = await valueOf(String(thousandths / 1000));
        expect(await valueOf(`(${thousandths / 1000}) * 1`)).toBe(alone);
      }),
    );
  });
});
