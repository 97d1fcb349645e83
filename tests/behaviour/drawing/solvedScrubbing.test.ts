import { describe, expect, it } from 'vitest';
import { degrees, radians } from '../../../src/core/units.ts';
import { amountScale } from '../../../src/ui/drawing/solved/amountScale.ts';
import { markWords } from '../../../src/ui/drawing/solved/markWords.ts';
import { scrubbed } from '../../../src/ui/drawing/solved/scrubKeys.ts';
import { amountShown, type Travelled } from '../../../src/ui/drawing/solved/travelled.ts';
import { stateText } from '../../../src/ui/text/solvedDrawingText.ts';
import { expectClose } from '../../support/close.ts';

const ARCH: Travelled = {
  from: 0,
  to: 6,
  wanted: 5,
  marks: [
    { kind: 'snap', amount: 1.06, effort: 0.0063 },
    { kind: 'balanced', amount: 4, effort: 0 },
    { kind: 'return', amount: 5.15, effort: -0.0025 },
    { kind: 'rest', amount: 5.63, effort: 0 },
  ],
};
const SPIRAL: Travelled = { from: radians(-35), to: radians(35), wanted: radians(35), marks: [] };

const rounding = { abs: 1e-9, because: 'round-off of steps' };

describe('the scale of the scrubber', () => {
  it.each([
    ['mm one way', { from: 0, to: 6 }, 'travel', ['0\u2009mm', '1', '2', '3', '4', '5', '6']],
    ['degrees both ways', SPIRAL, 'turn', ['−30', '−20', '−10', '0°', '10', '20', '30']],
    ['half a millimetre', { from: 0, to: 0.5 }, 'travel', ['0\u2009mm', '0.1', '0.2', '0.3', '0.4', '0.5']],
  ] as const)('in %s has figures that do not run into each other', (_, way, measure, figures) => {
    const scale = amountScale(way, 437, measure, 'mm');
    expect(scale.figures.map(({ text }) => text)).toEqual(figures);
    expectClose(scale.x(way.from), 0, rounding);
    expectClose(scale.x(way.to), 437, rounding);
  });

  it('counts in inches where those are asked for', () => {
    const scale = amountScale({ from: 0, to: 25.4 }, 437, 'travel', 'inch');
    expect(scale.figures.at(-1)?.text).toBe('1');
  });

  it('has words for the marked states that never run into each other, rests first', () => {
    const { x } = amountScale(ARCH, 300, 'travel', 'mm');
    const words = markWords(ARCH, x, 300);
    expect(words[0]?.text).toBe('rests');
    expect(words.map(({ text }) => text)).toContain('balanced');
    const [first, second] = words.toSorted((p, q) => p.x - q.x);
    expect(second!.x).toBeGreaterThan(first!.x);
  });
});

const press = (key: string, amount: number, way = ARCH, measure: 'turn' | 'travel' = 'travel', isShifted = false) =>
  scrubbed(key, isShifted, amount, way, measure);

describe('the keys of the scrubber', () => {
  it('step 0.05 mm, ten times as much with Shift, and stop at the ends', () => {
    expectClose(press('ArrowRight', 1) ?? 0, 1.05, rounding);
    expectClose(press('ArrowLeft', 1, ARCH, 'travel', true) ?? 0, 0.5, rounding);
    expect(press('ArrowRight', 6)).toBe(6);
    expect(press('ArrowLeft', 0)).toBe(0);
  });

  it('land on whole steps from between them', () => {
    expectClose(press('ArrowRight', 1.06) ?? 0, 1.1, rounding);
    expectClose(press('ArrowLeft', 1.06) ?? 0, 1.05, rounding);
  });

  it('step a degree, and half a degree over a short turn', () => {
    expectClose(degrees(radians(degrees(press('ArrowRight', 0, SPIRAL, 'turn') as never))), 1, rounding);
    const short: Travelled = { ...SPIRAL, from: 0, to: radians(12), wanted: radians(12) };
    expectClose(degrees(press('ArrowRight', 0, short, 'turn') as never), 0.5, rounding);
  });

  it('go to the ends', () => {
    expect(press('Home', 0, SPIRAL, 'turn')).toBe(SPIRAL.from);
    expect(press('End', 0, SPIRAL, 'turn')).toBe(SPIRAL.to);
  });

  it('go from mark to mark with N, and round again', () => {
    const stops: number[] = [];
    let at = 0;
    for (let i = 0; i < 7; i++) {
      at = press('n', at) ?? Number.NaN;
      stops.push(at);
    }
    expect(stops).toEqual([1.06, 4, 5, 5.15, 5.63, 6, 0]);
  });

  it('leave every other key alone', () => {
    for (const key of ['Tab', 'Enter', 'a', 'Escape']) expect(press(key, 1)).toBeUndefined();
  });
});

describe('the amount that is shown', () => {
  it('is never one that the joint does not go to, whatever was shown before', () => {
    expect(amountShown(ARCH, -0.6)).toBe(0);
    expectClose(amountShown(ARCH, 1.1), 5.5, rounding);
    expectClose(amountShown(ARCH, 3), 6, rounding);
    expectClose(amountShown(SPIRAL, -0.6), radians(-21), rounding);
    expectClose(amountShown(SPIRAL, 1.2), radians(35), rounding);
  });
});

describe('what the scrubber says', () => {
  it('is amount, strain, effort, and the state that it stands on', () => {
    expect(stateText({ amount: 2, strain: 0.025, effort: 7.94 }, 5, 'travel', 'mm')).toBe(
      '2.00\u00a0mm of 5\u00a0mm, strain 2.50\u00a0%, effort 7.94\u00a0N',
    );
    expect(stateText({ amount: 5.63, strain: 0.0175, effort: 0, mark: 'rest' }, 5, 'travel', 'mm')).toContain(
      ', second rest',
    );
  });

  it('says that it pulls where it goes on by itself, either way', () => {
    expect(stateText({ amount: 4.5, strain: 0.02, effort: -3.4 }, 5, 'travel', 'mm')).toContain('it pulls 3.40\u00a0N');
    expect(stateText({ amount: radians(-20), strain: 0.01, effort: 12 }, radians(35), 'turn', 'mm')).toBe(
      '−20.0° of 35°, strain 1.00\u00a0%, effort 12.0\u00a0N·mm',
    );
  });
});
