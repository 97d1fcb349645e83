import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bounds } from '../../src/core/geometry/flatten.ts';
import type { Path } from '../../src/core/geometry/outline.ts';
import { layeredSvg, outlineSvg } from '../../src/files/svg.ts';
import { expectClose } from '../support/close.ts';
import { anyOutline, BY_HAND } from '../support/drawnOutlines.ts';

const MARGIN = 1;
const square = BY_HAND[0]?.path as Path;

interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * The chord's centre by the rules of the SVG recommendation (implementation notes on arcs, endpoint to centre, for a
 * circle), in the picture's own axes with y down; shares nothing with the writer, which starts from the centre.
 */
function arcArea(a: Spot, radius: number, large: number, clockwise: number, b: Spot): number {
  const half = { x: (a.x - b.x) / 2, y: (a.y - b.y) / 2 };
  const quarter = half.x ** 2 + half.y ** 2;
  const root = Math.sqrt(Math.max(0, (radius ** 2 - quarter) / quarter)) * (large === clockwise ? -1 : 1);
  const from = { x: half.x - root * half.y, y: half.y + root * half.x };
  const to = { x: -half.x - root * half.y, y: -half.y + root * half.x };
  let swept = Math.atan2(to.y, to.x) - Math.atan2(from.y, from.x);
  if (clockwise === 1 && swept < 0) swept += 2 * Math.PI;
  if (clockwise === 0 && swept > 0) swept -= 2 * Math.PI;
  return (radius ** 2 / 2) * (swept - Math.sin(swept));
}

/** Area inside the paths as a viewer sees it; counter-clockwise as seen is negative where y runs down, so it is turned. */
function areaOf(svg: string): number {
  const paths = [...svg.matchAll(/<path d="([^"]*)"/g)].map((match) => match[1] ?? '');
  return paths.reduce((sum, path) => {
    const numbers = [...path.matchAll(/([MLA]) ([-\d. ]+)/g)].map(([, kind, rest]) => ({
      kind,
      figures: (rest ?? '').trim().split(' ').map(Number),
    }));
    let at: Spot = { x: 0, y: 0 };
    let area = 0;
    for (const { kind, figures } of numbers) {
      const [x = Number.NaN, y = Number.NaN] = figures.slice(-2);
      if (kind !== 'M') area += (at.x * y - x * at.y) / 2;
      if (kind === 'A') area += arcArea(at, figures[0] ?? 0, figures[3] ?? 0, figures[4] ?? 0, { x, y });
      at = { x, y };
    }
    return sum - area;
  }, 0);
}

describe('an SVG file', () => {
  it('of a square, whole', () => {
    expect(outlineSvg([square], 'A square')).toBe(
      [
        '<?xml version="1.0" encoding="UTF-8"?>',
        '<svg xmlns="http://www.w3.org/2000/svg" width="12mm" height="12mm" viewBox="-1 -11 12 12"',
        '  fill="none" stroke="#000" stroke-width="0.1">',
        '  <title>A square</title>',
        '  <path d="M 0 0 L 10 0 L 10 -10 L 0 -10 L 0 0 Z"/>',
        '</svg>',
        '',
      ].join('\n'),
    );
  });

  it('has its user unit at one mm and the whole outline inside', () => {
    fc.assert(
      fc.property(anyOutline, ({ paths }) => {
        const svg = outlineSvg(paths, 'x');
        const [, width, height, box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg) ?? [];
        const [x = 0, y = 0, wide = 0, high = 0] = (box ?? '').split(' ').map(Number);
        expect([Number(width), Number(height)]).toEqual([wide, high]);
        const { left, right, bottom, top } = bounds(paths);
        const rounded = { abs: 1e-6, because: 'figures are written to 1e-6 mm' };
        expectClose(x, left - MARGIN, rounded);
        expectClose(y, -(top + MARGIN), rounded);
        expectClose(wide, right - left + 2 * MARGIN, rounded);
        expectClose(high, top - bottom + 2 * MARGIN, rounded);
      }),
    );
  });

  it.each(BY_HAND)('of $name encloses its area', ({ path, area }) => {
    expectClose(areaOf(outlineSvg([path], 'x')), area, { abs: 1e-4, because: 'figures are written to 1e-6 mm' });
  });

  it('of any joint encloses the area of the outline, arcs as true arcs', () => {
    fc.assert(
      fc.property(anyOutline, ({ paths, area }) => {
        const svg = outlineSvg(paths, 'x');
        const { left, right, bottom, top } = bounds(paths);
        const girth = 4 * (right - left + top - bottom);
        const moved = 'figures are written to 1e-6 mm: an edge moved by that all round';
        expectClose(areaOf(svg), area, { abs: girth * 1e-6, because: moved });
        const arcs = paths.flatMap(({ pieces }) => pieces).filter(({ kind }) => kind === 'arc');
        expect((svg.match(/A /g) ?? []).length).toBeGreaterThanOrEqual(arcs.length);
      }),
    );
  });

  it('writes no exponent, no minus zero and nothing that is not a number', () => {
    const tiny: Path = {
      start: { x: -1e-9, y: 0 },
      pieces: [
        { kind: 'line', to: { x: 1e-7, y: 1e-9 } },
        { kind: 'line', to: { x: 1.5, y: 100 } },
      ],
    };
    const svg = outlineSvg([tiny], '');
    expect(svg).toContain('M 0 0 L 1.5 -100');
    expect(svg).not.toMatch(/-0[ "]|\de-|NaN/);
  });

  it('leaves a path open that does not end where it starts', () => {
    expect(outlineSvg([{ start: { x: 0, y: 0 }, pieces: [{ kind: 'line', to: { x: 1, y: 0 } }] }], '')).not.toContain(
      'Z',
    );
  });

  it('carries any title as text and never as marks', () => {
    expect(outlineSvg([square], `<script>"&'\u0000\u0007\uD800`)).toContain(
      '<title>&lt;script&gt;&quot;&amp;&apos;\uFFFD\uFFFD\uFFFD</title>',
    );
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (title) => {
        const inside = /<title>([\s\S]*)<\/title>/.exec(outlineSvg([square], title))?.[1] ?? '';
        expect(inside).not.toMatch(/[<>"']|&(?!(amp|lt|gt|quot|apos);)/);
        expect(inside).not.toMatch(/[\p{Cc}\p{Cs}]/u);
      }),
    );
  });

  it('of several planes holds a group for each, over each other at true size', () => {
    const moved = BY_HAND[3]?.path as Path;
    const svg = layeredSvg(
      [
        { name: 'plane-1', paths: [square] },
        { name: 'plane-2', paths: [moved] },
      ],
      'Two planes',
    );
    const groups = [...svg.matchAll(/<g id="([^"]+)">\n((?: {4}<path d="[^"]*"\/>\n)+) {2}<\/g>/g)];
    expect(groups.map(([, name]) => name)).toEqual(['plane-1', 'plane-2']);
    const rounded = { abs: 1e-4, because: 'figures are written to 1e-6 mm' };
    groups.forEach(([, , inside], i) =>
      expectClose(areaOf(inside ?? ''), [100, BY_HAND[3]?.area ?? 0][i] ?? 0, rounded),
    );
    expect(svg).toContain('viewBox="-1 -11 12 12"');
  });

  it('of no outline is a mistake of the caller', () => {
    expect(() => outlineSvg([], 'x')).toThrow(RangeError);
    expect(() => layeredSvg([{ name: 'plane-1', paths: [] }], 'x')).toThrow(RangeError);
  });
});
