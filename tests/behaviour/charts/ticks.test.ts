import { describe, expect, it } from 'vitest';
import {
  angleTicks,
  cycleTicks,
  lengthTicks,
  logStrainTicks,
  strainTicks,
  type Tick,
} from '../../../src/ui/charts/ticks.ts';
import { NO_BREAK, THIN } from '../../../src/ui/text/numbers.ts';

const words = (ticks: readonly Tick[]) => ticks.map(({ text }) => text);
const plain = (ticks: readonly Tick[]) =>
  words(ticks).map((text) => text.replaceAll(THIN, ' ').replaceAll(NO_BREAK, ' '));

describe('figures on the axes', () => {
  it('names decades of cycles, with M from a million on', () => {
    expect(plain(cycleTicks([10, 1e7], false))).toEqual(['10', '100', '1 000', '10 000', '100 000', '1 M', '10 M']);
  });

  it('leaves out every second figure on narrow paper, never the last, and keeps its marks', () => {
    const ticks = cycleTicks([10, 1e7], true);
    expect(plain(ticks)).toEqual(['10', '', '1 000', '', '100 000', '', '10 M']);
    expect(ticks).toHaveLength(7);
    expect(words(angleTicks(30, true)).at(-1)).toBe('30°');
  });

  it('puts the unit on the top figure only', () => {
    expect(plain(logStrainTicks([0.003, 0.3]))).toEqual(['0.3', '1', '3', '10', '30 %']);
    expect(plain(strainTicks(0.08))).toEqual(['0', '2', '4', '6', '8 %']);
    expect(plain(strainTicks(0.02))).toEqual(['0', '0.5', '1', '1.5', '2 %']);
    expect(plain(angleTicks(60, false))).toEqual(['0', '10', '20', '30', '40', '50', '60°']);
  });

  it('ends every angle axis on a figure', () => {
    for (const top of [30, 60, 90, 120, 150, 180, 210, 240, 420]) expect(angleTicks(top, false).at(-1)?.at).toBe(top);
  });

  it('has round millimetres, or round inches that lie where they belong', () => {
    expect(plain(lengthTicks([4, 30], 'mm', false))).toEqual(['5', '10', '15', '20', '25', '30']);
    const inches = lengthTicks([4, 30], 'inch', false);
    expect(plain(inches)).toEqual(['0.2', '0.4', '0.6', '0.8', '1']);
    expect(inches[4]?.at).toBeCloseTo(25.4, 9);
  });
});
