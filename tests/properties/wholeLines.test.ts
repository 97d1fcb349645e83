import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contourInsets,
  contoursFor,
  exactLines,
  lineWidthFor,
  nearestLines,
  thicknessOfLines,
  wholeLines,
} from '../../src/core/print/wholeLines.ts';
import { exactLayers, nearestLayers, thicknessOfLayers } from '../../src/core/print/wholeLayers.ts';
import { expectClose } from '../support/close.ts';
import { count, length, lineSettings } from '../support/generators.ts';

const ROUND_OFF = { abs: 1e-9, because: 'round-off of sums of a few mm' } as const;
const layers = fc.record({ layerHeight: length(0.04, 0.6), firstLayerHeight: length(0.05, 0.6) });

describe('whole lines', () => {
  it('the nearest count is within half a line, and no count is nearer', () => {
    fc.assert(
      fc.property(length(0.05, 20), lineSettings, (t, settings) => {
        const { exact, count: n, thickness, tie } = nearestLines(t, settings);
        expectClose(thickness, thicknessOfLines(n, settings), ROUND_OFF);
        if (n === 1 && exact < 1) return;
        expect(Math.abs(exact - n)).toBeLessThanOrEqual(0.5 + 1e-9);
        const off = Math.abs(t - thickness);
        expect(Math.abs(t - thicknessOfLines(n + 1, settings))).toBeGreaterThanOrEqual(off - 1e-9);
        if (n > 1) expect(Math.abs(t - thicknessOfLines(n - 1, settings))).toBeGreaterThanOrEqual(off - 1e-9);
        if (tie) expect(thickness).toBeLessThan(t);
      }),
    );
  });

  it('whole lines are never thicker than the target, and one line more is', () => {
    fc.assert(
      fc.property(length(0.05, 20), lineSettings, (t, settings) => {
        const result = wholeLines(t, settings);
        if (!result.ok) {
          expect(result.problems[0].code).toBe('thinner-than-one-line');
          expect(t).toBeLessThan(settings.lineWidth);
          return;
        }
        expect(result.value.thickness).toBeLessThanOrEqual(t + 1e-8);
        expect(thicknessOfLines(result.value.count + 1, settings)).toBeGreaterThan(t);
      }),
    );
  });

  it('as many lines lie in n lines as n', () => {
    fc.assert(
      fc.property(count(40), lineSettings, (n, settings) => {
        expectClose(exactLines(thicknessOfLines(n, settings), settings), n, {
          rel: 1e-9,
          because: 'round-off through a thickness and back',
        });
      }),
    );
  });

  it('thickness and exact count rise together', () => {
    fc.assert(
      fc.property(length(0.05, 20), length(0.001, 5), lineSettings, (t, more, settings) => {
        expect(exactLines(t + more, settings)).toBeGreaterThan(exactLines(t, settings));
      }),
    );
  });

  it('overlapped lines are never thicker than nominal ones, and a single line is the same', () => {
    fc.assert(
      fc.property(count(40), lineSettings, (n, settings) => {
        const nominal = thicknessOfLines(n, { ...settings, fitRule: 'nominal' });
        const overlapped = thicknessOfLines(n, { ...settings, fitRule: 'overlapped' });
        expect(overlapped).toBeLessThanOrEqual(nominal + 1e-12);
        if (n > 1) expect(overlapped).toBeLessThan(nominal);
        else expectClose(overlapped, nominal, ROUND_OFF);
      }),
    );
  });

  it('the line width found for a count gives that thickness back', () => {
    fc.assert(
      fc.property(length(0.1, 8), count(12), lineSettings, length(0.2, 1), (t, n, settings, nozzle) => {
        const found = lineWidthFor(t, n, settings, nozzle);
        if (!found.ok) return;
        expectClose(thicknessOfLines(n, { ...settings, lineWidth: found.value }), t, ROUND_OFF);
        expect(found.value).toBeGreaterThanOrEqual(settings.layerHeight - 1e-9);
        expect(found.value / nozzle).toBeGreaterThanOrEqual(0.5 - 1e-9);
        expect(found.value / nozzle).toBeLessThanOrEqual(2.5 + 1e-9);
      }),
    );
  });

  it('contours and their middle line lay every line once, centred', () => {
    fc.assert(
      fc.property(count(40), lineSettings, (n, settings) => {
        const { contours, middleLine } = contoursFor(n);
        expect(2 * contours + (middleLine ? 1 : 0)).toBe(n);
        const insets = contourInsets(n, settings);
        expect(insets).toHaveLength(contours);
        // Innermost contour: its two lines lie one pitch apart, or two with a line between them.
        const thickness = thicknessOfLines(n, settings);
        const pitch = thicknessOfLines(2, settings) - settings.lineWidth;
        const last = insets.at(-1);
        if (last !== undefined) expectClose(thickness - 2 * last, middleLine ? 2 * pitch : pitch, ROUND_OFF);
      }),
    );
  });
});

describe('whole layers', () => {
  it('the nearest count is within half a layer, and as many layers lie in n layers as n', () => {
    fc.assert(
      fc.property(length(0.05, 10), count(20), layers, (t, n, settings) => {
        const near = nearestLayers(t, settings);
        if (near.exact >= 1) expect(Math.abs(near.exact - near.count)).toBeLessThanOrEqual(0.5 + 1e-9);
        else expect(near.count).toBe(1);
        expectClose(exactLayers(thicknessOfLayers(n, settings), settings), n, {
          rel: 1e-9,
          because: 'round-off through a thickness and back',
        });
      }),
    );
  });
});
