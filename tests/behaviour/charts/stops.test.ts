import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cycleStops, evenStops, movedTo, moveOf, snapped, type Move } from '../../../src/ui/charts/stops.ts';
import { length } from '../../support/generators.ts';

describe('stops of a reading cursor', () => {
  it('are whole steps inside the span, free of binary dust', () => {
    expect(evenStops([0.3, 0.72], 0.1)).toEqual([0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(evenStops([4, 30], 0.5)).toHaveLength(53);
  });

  it('are ten a decade of cycles, each said in two figures', () => {
    const stops = cycleStops([10, 1e7]);
    expect(stops).toHaveLength(61);
    expect(stops.slice(0, 11)).toEqual([10, 12, 16, 20, 25, 30, 40, 50, 60, 80, 100]);
    expect(stops.at(-1)).toBe(1e7);
  });

  it('snap to the nearest step and stay within the limits', () => {
    expect(snapped(12.3, 0.5, [4, 30])).toBe(12.5);
    expect(snapped(2, 0.5, [4, 30])).toBe(4);
    expect(snapped(0.33, 0.1, [0, 1])).toBe(0.3);
  });
});

describe('keys on a reading cursor', () => {
  const stops = evenStops([4, 30], 0.5);
  const pressed = (key: string, shift: boolean, from: number) => movedTo(stops, from, moveOf(key, shift) as Move);

  it('go one step, ten with Shift, and to the ends', () => {
    expect(pressed('ArrowRight', false, 12)).toBe(12.5);
    expect(pressed('ArrowLeft', true, 12)).toBe(7);
    expect(pressed('PageUp', false, 12)).toBe(17);
    expect(pressed('Home', false, 12)).toBe(4);
    expect(pressed('End', false, 12)).toBe(30);
  });

  it('go from between two stops to the next one that way, and no further than the ends', () => {
    expect(pressed('ArrowRight', false, 12.2)).toBe(12.5);
    expect(pressed('ArrowRight', false, 12.4)).toBe(12.5);
    expect(pressed('ArrowLeft', false, 12.4)).toBe(12);
    expect(pressed('ArrowRight', true, 29)).toBe(30);
  });

  it('leave other keys to the page', () => {
    expect(moveOf('Tab', false)).toBeUndefined();
    expect(moveOf('a', false)).toBeUndefined();
  });

  it('always move the way they point', () => {
    fc.assert(
      fc.property(length(4.001, 29.999), (from) => {
        expect(pressed('ArrowRight', false, from)).toBeGreaterThan(from);
        expect(pressed('ArrowLeft', false, from)).toBeLessThan(from);
      }),
    );
  });
});
