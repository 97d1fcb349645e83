import { describe, expect, it } from 'vitest';
import { nearestWhole } from '../../../src/core/print/nearestCount.ts';
import { explainLayers, nearestLayers, thicknessOfLayers } from '../../../src/core/print/wholeLayers.ts';
import {
  contourInsets,
  contoursFor,
  explainCount,
  lineWidthFor,
  nearestLines,
  wholeLines,
  type LineSettings,
} from '../../../src/core/print/wholeLines.ts';
import { expectClose } from '../../support/close.ts';

const NOMINAL: LineSettings = { lineWidth: 0.42, layerHeight: 0.2, fitRule: 'nominal' };
const codes = (result: ReturnType<typeof wholeLines> | ReturnType<typeof lineWidthFor>) =>
  (result.ok ? result.notes : result.problems).map(({ code }) => code);

describe('ties', () => {
  it.each([
    { exact: 0.3, count: 1, tie: false },
    { exact: 0.5, count: 1, tie: false },
    { exact: 1.5, count: 1, tie: true },
    { exact: 1.5 + 1e-7, count: 2, tie: false },
    { exact: 2.5, count: 2, tie: true },
    { exact: 3.5, count: 3, tie: true },
    { exact: 2.9999999999, count: 3, tie: false },
  ])('$exact goes to $count', ({ exact, count, tie }) => {
    expect(nearestWhole(exact)).toEqual({ count, tie });
  });

  it('are seen through the round-off of decimals', () => {
    for (const t of [0.63, 1.05, 1.47, 1.89, 2.31]) expect(nearestLines(t, NOMINAL).tie).toBe(true);
  });
});

describe('wholeLines', () => {
  it('takes 0.8 mm as two lines of 0.4 mm, although 0.8/0.4 may fall short of 2', () => {
    for (const n of [1, 2, 3, 6, 7, 12]) {
      const result = wholeLines(n * 0.4, { ...NOMINAL, lineWidth: 0.4 });
      expect(result.ok && result.value.count).toBe(n);
    }
  });

  it.each([
    { target: Number.NaN, code: 'not-a-number' },
    { target: Number.POSITIVE_INFINITY, code: 'not-a-number' },
    { target: 0, code: 'below-minimum' },
    { target: -1, code: 'below-minimum' },
    { target: 0.41, code: 'thinner-than-one-line' },
  ])('refuses $target with $code', ({ target, code }) => {
    const result = wholeLines(target, NOMINAL);
    expect(result.ok).toBe(false);
    expect(codes(result)).toEqual([code]);
  });

  it('notes single and odd counts', () => {
    expect(codes(wholeLines(0.5, NOMINAL))).toEqual(['single-line']);
    expect(codes(wholeLines(1.3, NOMINAL))).toEqual(['odd-lines']);
    expect(codes(wholeLines(1.0, NOMINAL))).toEqual([]);
    expect([1, 2, 3, 4, 5, 6].flatMap((n) => explainCount(n).map(({ code }) => `${n} ${code}`))).toEqual([
      '1 single-line',
      '3 odd-lines',
      '5 odd-lines',
    ]);
  });
});

describe('contours', () => {
  it.each([
    { count: 1, contours: 0, middleLine: true },
    { count: 2, contours: 1, middleLine: false },
    { count: 3, contours: 1, middleLine: true },
    { count: 4, contours: 2, middleLine: false },
  ])('$count lines are $contours contours', ({ count, ...laid }) => {
    expect(contoursFor(count)).toEqual(laid);
  });

  it('of overlapped lines run closer together', () => {
    const [outer, inner] = contourInsets(4, { ...NOMINAL, fitRule: 'overlapped' });
    expectClose(outer ?? Number.NaN, 0.21, { printedTo: 12 });
    expectClose(inner ?? Number.NaN, 0.5870796327, { printedTo: 9 });
  });
});

describe('lineWidthFor', () => {
  it('makes 0.9 mm of two lines of 0.45 mm', () => {
    const result = lineWidthFor(0.9, 2, NOMINAL, 0.4);
    expectClose(result.ok ? result.value : Number.NaN, 0.45, { printedTo: 12 });
    expect(codes(result)).toEqual([]);
  });

  it.each([
    { t: 0.66, n: 2, expected: ['line-narrow-for-nozzle'], ok: true },
    { t: 1.4, n: 2, expected: ['line-wide-for-nozzle'], ok: true },
    { t: 0.72, n: 2, expected: [], ok: true },
    { t: 1.28, n: 2, expected: [], ok: true },
    { t: 0.39, n: 2, expected: ['width-not-layable'], ok: false },
    { t: 2.1, n: 2, expected: ['width-not-layable'], ok: false },
    { t: Number.NaN, n: 2, expected: ['width-not-layable'], ok: false },
  ])('$t mm in $n lines of a 0.4 mm nozzle: $expected', ({ t, n, expected, ok }) => {
    const result = lineWidthFor(t, n, NOMINAL, 0.4);
    expect(result.ok).toBe(ok);
    expect(codes(result)).toEqual(expected);
  });

  it('refuses a line narrower than the layer is high, even where the nozzle could lay it', () => {
    const result = lineWidthFor(0.5, 2, { layerHeight: 0.3, fitRule: 'nominal' }, 0.4);
    expect(codes(result)).toEqual(['width-not-layable']);
  });
});

describe('layers', () => {
  it('counts the first layer by its own height', () => {
    expectClose(thicknessOfLayers(1, { layerHeight: 0.2, firstLayerHeight: 0.28 }), 0.28, { printedTo: 12 });
    expectClose(thicknessOfLayers(4, { layerHeight: 0.2, firstLayerHeight: 0.28 }), 0.88, { printedTo: 12 });
  });

  it('sends ties down and says so', () => {
    const near = nearestLayers(0.38, { layerHeight: 0.2, firstLayerHeight: 0.28 });
    expect(near).toMatchObject({ count: 1, tie: true });
    expectClose(near.thickness, 0.28, { printedTo: 12 });
  });

  it('cautions about a single layer only', () => {
    expect(explainLayers(1).map(({ code }) => code)).toEqual(['single-layer']);
    expect(explainLayers(2)).toEqual([]);
  });
});
