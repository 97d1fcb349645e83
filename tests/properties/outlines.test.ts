import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crease, type CreaseSizes } from '../../src/core/flexures/crease.ts';
import { padLength } from '../../src/core/flexures/commonSizes.ts';
import { isRefusal } from '../../src/core/flexures/checkSizes.ts';
import { straightLeaf, type LeafSizes } from '../../src/core/flexures/straightLeaf.ts';
import { bounds, flatten, pathArea, pathLength } from '../../src/core/geometry/flatten.ts';
import { inset } from '../../src/core/geometry/inset.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';
import { expectClose } from '../support/close.ts';
import { creased, leaf, length } from '../support/generators.ts';
import { arcs, distanceFrom, nodes, sampled } from '../support/outlines.ts';

const ROUND_OFF = { abs: 1e-8, because: 'round-off of coordinates up to a few hundred mm' } as const;
const only = (paths: readonly Path[]): Path => {
  expect(paths).toHaveLength(1);
  return paths[0]!;
};
const leafOutline = (sizes: LeafSizes, thickness: number) => only(straightLeaf.outline?.(sizes, thickness) ?? []);
const creaseOutline = (sizes: CreaseSizes, thickness: number) => only(crease.outline?.(sizes, thickness) ?? []);
const isNear = (p: Point) => (q: Point) => Math.hypot(p.x - q.x, p.y - q.y) < 1e-8;
/** What a square corner holds beyond its rounding, over the radius squared. */
const CORNER = 1 - Math.PI / 4;

describe('outline of a straight leaf', () => {
  it('is not refused by its family, closes, and is its own mirror image both ways', () => {
    fc.assert(
      fc.property(leaf, ({ sizes, thickness }) => {
        expect(straightLeaf.check(sizes, thickness, { lineWidth: 0.42, layerHeight: 0.2 }).filter(isRefusal)).toEqual(
          [],
        );
        const path = leafOutline(sizes, thickness);
        expect(path.pieces.at(-1)?.to).toEqual(path.start);
        const all = nodes(path);
        for (const { x, y } of all) {
          expect(all.some(isNear({ x, y: -y }))).toBe(true);
          if (y !== 0) expect(all.some(isNear({ x: sizes.length - x, y }))).toBe(true);
        }
      }),
    );
  });

  it('holds the pads, the leaf and four fillets, less what rounds the corners of the pads', () => {
    fc.assert(
      fc.property(leaf, ({ sizes, thickness }) => {
        const path = leafOutline(sizes, thickness);
        const { fillet, pad } = sizes;
        const pads = 2 * padLength(thickness) * pad;
        const rounded = arcs(path).filter(({ counterClockwise }) => counterClockwise);
        const cut = rounded.reduce(
          (sum, { to, centre }) => sum + CORNER * ((to.x - centre.x) ** 2 + (to.y - centre.y) ** 2),
          0,
        );
        const area = pads + (sizes.length + 2 * fillet) * thickness + 4 * CORNER * fillet ** 2 - cut;
        expectClose(pathArea(path), area, { rel: 1e-9, because: 'round-off of sums' });
        const far = fillet + padLength(thickness);
        const { left, right, bottom, top } = bounds([path]);
        expectClose(left, -far, ROUND_OFF);
        expectClose(right, sizes.length + far, ROUND_OFF);
        expectClose(top, pad / 2, ROUND_OFF);
        expectClose(bottom, -pad / 2, ROUND_OFF);
      }),
    );
  });
});

describe('outline of a crease', () => {
  it('is not refused by its family, closes, and lies flush with the plate over its whole length', () => {
    fc.assert(
      fc.property(creased, ({ sizes, thickness }) => {
        expect(crease.check(sizes, thickness, { lineWidth: 0.42, layerHeight: 0.2 }).filter(isRefusal)).toEqual([]);
        const path = creaseOutline(sizes, thickness);
        expect(path.pieces.at(-1)?.to).toEqual(path.start);
        const { bottom, top } = bounds([path]);
        expectClose(bottom, -thickness / 2, ROUND_OFF);
        expectClose(top, sizes.pad - thickness / 2, ROUND_OFF);
        const area = 2 * padLength(thickness) * sizes.pad + (sizes.length + 2 * sizes.fillet) * thickness;
        expectClose(pathArea(path), area + 2 * CORNER * sizes.fillet ** 2, { rel: 1e-9, because: 'round-off of sums' });
        expect(arcs(path).every(({ counterClockwise }) => !counterClockwise)).toBe(true);
      }),
    );
  });
});

describe('flattening', () => {
  it('keeps every chord within the tolerance of its arc, and length and area below the true ones by little', () => {
    fc.assert(
      fc.property(leaf, length(0.001, 0.1), ({ sizes, thickness }, tolerance) => {
        const path = leafOutline(sizes, thickness);
        const fine = flatten(path, tolerance / 100);
        const coarse = flatten(path, tolerance);
        for (const point of fine) expect(distanceFrom(point, coarse)).toBeLessThanOrEqual(tolerance);
        const chords = coarse
          .slice(1)
          .reduce((sum, b, i) => sum + Math.hypot(b.x - coarse[i]!.x, b.y - coarse[i]!.y), 0);
        expect(chords).toBeLessThanOrEqual(pathLength(path) + 1e-9);
        const straight = { start: coarse[0]!, pieces: coarse.slice(1).map((to) => ({ kind: 'line', to }) as const) };
        const off = Math.abs(pathArea(straight) - pathArea(path));
        expect(off).toBeLessThanOrEqual(tolerance * pathLength(path));
      }),
      { numRuns: 40 },
    );
  });
});

/** Flattening the outline and its inset each to this leaves room for twice it. */
const FINE = 1e-3;
const share = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 100);

function expectMoved(path: Path, moved: Path, by: number, exact: boolean): void {
  const original = flatten(path, FINE);
  for (const point of sampled(flatten(moved, FINE), 1)) {
    const away = distanceFrom(point, original);
    expect(away).toBeGreaterThan(by - 2 * FINE);
    if (exact) expect(away).toBeLessThan(by + 2 * FINE);
  }
}

describe('inset', () => {
  it('of a leaf lies the distance inside everywhere, up to half its thickness', () => {
    fc.assert(
      fc.property(leaf, share(1, 99), ({ sizes, thickness }, part) => {
        const path = leafOutline(sizes, thickness);
        const by = (part * thickness) / 2;
        const moved = inset(path, by);
        expect(moved).toBeDefined();
        // A sharp inner corner is mitred, so its tip alone lies further off.
        expectMoved(path, moved!, by, sizes.fillet > 0);
        expect(pathArea(moved!)).toBeLessThan(pathArea(path));
        expect(moved!.pieces.at(-1)?.to).toEqual(moved!.start);
      }),
      { numRuns: 40 },
    );
  });

  it('of a leaf collapses from half its thickness on', () => {
    fc.assert(
      fc.property(leaf, share(100, 400), ({ sizes, thickness }, part) => {
        expect(inset(leafOutline(sizes, thickness), (part * thickness) / 2)).toBeUndefined();
      }),
    );
  });

  it('of a crease lies the distance inside everywhere', () => {
    fc.assert(
      fc.property(creased, share(1, 99), ({ sizes, thickness }, part) => {
        const path = creaseOutline(sizes, thickness);
        const by = (part * thickness) / 2;
        const moved = inset(path, by);
        expect(moved).toBeDefined();
        expectMoved(path, moved!, by, sizes.fillet > 0);
      }),
      { numRuns: 40 },
    );
  });

  it('outwards and back inwards is the outline again, as long as no fillet is used up', () => {
    fc.assert(
      fc.property(leaf, share(1, 99), ({ sizes, thickness }, part) => {
        fc.pre(sizes.fillet > 0);
        const path = leafOutline(sizes, thickness);
        const by = part * sizes.fillet;
        const out = inset(path, -by);
        expect(out).toBeDefined();
        const back = inset(out!, by);
        expect(back).toBeDefined();
        expectClose(pathArea(back!), pathArea(path), { rel: 1e-9, because: 'round-off of there and back' });
      }),
    );
  });
});
