import { describe, expect, it } from 'vitest';
import type { LaidFinding, LayerRun } from '../../../src/core/inspect/toolpath/judgedPlace.ts';
import { NOMINAL_PX_PER_MM } from '../../../src/ui/drawing/sheet.ts';
import { bracketNumbers } from '../../../src/ui/toolpath/brackets.ts';
import { staveBrackets } from '../../../src/ui/toolpath/figures/staveBrackets.ts';
import { foundLayers, layerForKey } from '../../../src/ui/toolpath/figures/staveKeys.ts';
import { LANE, layerAtY, rowOfLayer, stavePlan } from '../../../src/ui/toolpath/figures/stavePlan.ts';
import { joinedRows, singleRows } from '../../../src/ui/toolpath/figures/staveRows.ts';
import { expectClose } from '../../support/close.ts';
import { LAID_SAMPLES, laidLeaf, type LaidSample } from '../../support/laidSamples.ts';

const WIDTHS = [300, 328, 385, 560, 760];

function plan({ judged }: LaidSample, width: number) {
  const numbered = bracketNumbers(judged.findings);
  return stavePlan({ judged, numbered, width, screenPxPerMm: NOMINAL_PX_PER_MM, unit: 'mm' });
}

const finding = (layers: readonly LayerRun[]): LaidFinding => ({
  kind: 'open-places',
  grade: 'caution',
  layers,
  count: layers.reduce((sum, [first, last]) => sum + last - first + 1, 0),
});

describe.each(Object.entries(LAID_SAMPLES))('the stave of %s', (_name, sample) => {
  const one = sample();
  const { layers } = one.judged.audit;

  it('has every layer in one row, from the bottom up', () => {
    for (const width of WIDTHS) {
      const { rows } = plan(one, width);
      expect(rows.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, i) => first + i))).toEqual(
        layers.map(({ layer }) => layer),
      );
    }
  });

  it('stays on its paper, at a height that needs no scrolling', () => {
    for (const width of WIDTHS) {
      const { rows, height, section, lines, widths, starts, brackets, laneAt } = plan(one, width);
      expect(height).toBeLessThan(800);
      for (const { y, high } of rows) {
        expect(y).toBeGreaterThan(0);
        expect(y + high).toBeLessThan(height);
        expect(high).toBeGreaterThanOrEqual(7);
      }
      expect(section.right).toBeLessThan(lines.left);
      expect(lines.right).toBeLessThan(widths.left);
      expect(widths.right).toBeLessThanOrEqual(starts.left);
      expect(lines.right - lines.left).toBeGreaterThan(20);
      for (const { lane } of brackets) expect(laneAt(lane) + LANE).toBeLessThanOrEqual(width);
    }
  });

  it('keeps counts and widths within their tracks', () => {
    for (const width of WIDTHS) {
      const { rows, lines, widths } = plan(one, width);
      for (const row of rows) {
        expect(lines.x(row.lines.most)).toBeLessThanOrEqual(lines.right);
        if (row.widths) expect(widths.x(row.widths.most)).toBeLessThanOrEqual(widths.right);
      }
    }
  });

  it('is pressed where its rows are', () => {
    const whole = plan(one, 385);
    for (const { layer } of layers) {
      const row = rowOfLayer(whole, layer)!;
      const share = (row.last - layer + 0.5) / (row.last - row.first + 1);
      expect(layerAtY(whole, row.y + share * row.high)).toBe(layer);
    }
    expect(layerAtY(whole, -100)).toBe(layers.length);
    expect(layerAtY(whole, 10_000)).toBe(1);
  });
});

describe('a stave', () => {
  it('is at true scale while it has room: y is height', () => {
    const { isTrue, scale, rows, pxPerMm } = plan(laidLeaf(30), 385);
    expect({ isTrue, scale }).toEqual({ isTrue: true, scale: 20 });
    for (const { high } of rows) expectClose(high, 0.2 * pxPerMm, { rel: 1e-6, because: 'rounding' });
  });

  it('drops to half that for more layers, and joins neighbours for very many', () => {
    expect(plan(laidLeaf(60), 385).scale).toBe(10);
    const many = plan(laidLeaf(400, 0.12), 385);
    expect(many.isTrue).toBe(false);
    expect(many.rows.length).toBeLessThan(400);
    expect(many.rows.some(({ first, last }) => last > first)).toBe(true);
  });

  it('cuts beads as wide as the audit says', () => {
    const { judged } = laidLeaf(4);
    const [, second] = singleRows(judged.audit);
    expect(second!.beads.map(({ width }) => Number(width.toFixed(4)))).toEqual([0.42, 0.16, 0.42]);
  });
});

describe('joined rows', () => {
  const { judged } = laidLeaf(200, 0.12);
  const numbered = bracketNumbers(judged.findings);

  it('hold all layers between them, however few they must be', () => {
    for (const most of [200, 60, 28, 3]) {
      const rows = joinedRows(judged.audit, numbered, most);
      expect(rows.length).toBeLessThanOrEqual(most);
      expect(rows.reduce((sum, { first, last }) => sum + last - first + 1, 0)).toBe(200);
    }
  });

  it('span all that they stand for', () => {
    const [row] = joinedRows(judged.audit, numbered, 1);
    const widths = judged.audit.layers.flatMap((layer) => layer.widths ?? []);
    expect(row!.widths!.least).toBe(Math.min(...widths.map(({ least }) => least)));
    expect(row!.widths!.most).toBe(Math.max(...widths.map(({ most }) => most)));
    expect(row!.starts).toBe(judged.audit.layers.reduce((sum, { starts }) => sum + starts.length, 0));
  });
});

/** Rows of 10 px, from 600 px up. */
const place = (first: number, last: number) => [600 - 10 * last, 600 - 10 * (first - 1)] as const;

describe('brackets', () => {
  it('never lie on one another in a lane', () => {
    const numbered = new Map([
      [finding([[1, 6]]), 1],
      [finding([[3, 9]]), 2],
      [finding([[10, 10], [12, 12], [30, 40]]), 3], // prettier-ignore
    ]);
    const found = staveBrackets(numbered, place, 60, 3);
    expect(new Set(found.map(({ number }) => number))).toEqual(new Set([1, 2, 3]));
    for (const [i, a] of found.entries())
      for (const b of found.slice(i + 1)) if (a.lane === b.lane) expect(Math.abs(a.y - b.y)).toBeGreaterThanOrEqual(20);
    expect(found[0]!.lane).not.toBe(found[1]!.lane);
  });

  it('tie runs together that are too near for a balloon each', () => {
    const found = staveBrackets(new Map([[finding([[10, 10], [12, 12]]), 1]]), place, 60, 2); // prettier-ignore
    expect(found).toHaveLength(1);
    expect(found[0]!.runs).toHaveLength(2);
  });

  it('leave a finding out rather than tie it to some of its layers', () => {
    const numbered = new Map([
      [finding([[1, 6]]), 1],
      [finding([[3, 9], [30, 40]]), 2], // prettier-ignore
    ]);
    expect(staveBrackets(numbered, place, 60, 1).map(({ number }) => number)).toEqual([1]);
  });
});

describe('keys of the stave', () => {
  const found = new Set([3, 9]);
  it.each([
    ['ArrowUp', 5, 6],
    ['ArrowDown', 5, 4],
    ['PageUp', 5, 10],
    ['PageDown', 5, 1],
    ['Home', 5, 1],
    ['End', 5, 12],
    ['n', 5, 9],
    ['p', 5, 3],
    ['n', 9, 9],
    ['ArrowUp', 12, 12],
    ['ArrowDown', 1, 1],
  ])('%s goes from layer %i to %i', (key, from, to) => {
    expect(layerForKey(key, from, 12, found)).toBe(to);
  });

  it('are no others', () => {
    expect(layerForKey('x', 5, 12, found)).toBeUndefined();
    expect(layerForKey('Tab', 5, 12, found)).toBeUndefined();
  });

  it('pass by what holds on every layer while something holds on some', () => {
    const [every, some] = [finding([[1, 12]]), finding([[4, 5]])];
    expect(foundLayers(new Map([[every, 1], [some, 2]]), 12)).toEqual(new Set([4, 5])); // prettier-ignore
    expect(foundLayers(new Map([[every, 1]]), 12).size).toBe(12);
  });
});
