import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { cyclesStep, settled, stepIn } from '../../../src/ui/controls/settle.ts';

describe('a value is put in force as it can be shown', () => {
  it('keeps a micrometre, a ten-thousandth of an inch, a hundredth of a degree', () => {
    expect(settled(11.5254999, 'length', 'mm')).toBe(11.525);
    expect(settled(9.5251, 'length', 'inch')).toBeCloseTo(9.525, 12);
    expect(settled(radians(35.004), 'angle', 'mm')).toBe(radians(35));
    expect(settled(5000, 'count', 'mm')).toBe(5000);
  });

  it.each([
    [0.01, 0.0005],
    [0.02, 0.001],
    [0.1, 0.005],
    [0.5, 0.02],
  ])('a step of %d mm is %d inch', (mm, inches) => {
    expect(stepIn('inch', mm)).toBeCloseTo(inches * 25.4, 10);
  });

  it.each([
    [5, true, 1],
    [5, false, 1],
    [40, true, 5],
    [600, true, 50],
    [1000, true, 500],
    [1000, false, 50],
    [5000, true, 500],
    [200_000, false, 50_000],
  ])('%d flexes, up %s, step by %d', (cycles, up, step) => {
    expect(cyclesStep(cycles, up)).toBe(step);
  });
});
