/**
 * Source [dxf-parser 1.1.2]: an independent reader of DXF files, which shares no code with the package that writes
 * them. Compared are units, kinds, vertices and bulges as read; area and extent are worked out here from the
 * vertices and bulges alone, so nothing of the core's geometry can hide a fault in the file.
 */
import Parser, { type ILwpolylineEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slitPanelPlan } from '../../src/core/flexures/slitPanelPlan.ts';
import { bounds, pathArea } from '../../src/core/geometry/flatten.ts';
import type { Path } from '../../src/core/geometry/outline.ts';
import { layeredDxf, outlineDxf } from '../../src/files/dxf.ts';
import { expectClose } from '../support/close.ts';
import { BY_HAND, jointOutline } from '../support/drawnOutlines.ts';

interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

const ROUNDED = 'coordinates are written to 1e-6 mm, half of which may be lost at each end of a chord';

function parse(paths: readonly Path[]) {
  const file = new Parser().parseSync(outlineDxf(paths));
  if (!file) throw new Error('the file must be readable');
  return { header: file.header, polylines: file.entities as ILwpolylineEntity[] };
}

/** Every side of a closed polyline, with its chord and the radius that the bulge gives: r = c·(1 + b²)/(4·|b|). */
function sidesOf(vertices: readonly Vertex[]) {
  return vertices.map((a, index) => {
    const b = vertices[(index + 1) % vertices.length] ?? a;
    const bulge = a.bulge ?? 0;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    return { a, b, bulge, chord, radius: bulge === 0 ? 0 : (chord * (1 + bulge ** 2)) / (4 * Math.abs(bulge)) };
  });
}

/** Shoelace plus one circular segment a bulge: r²/2·(φ − sin φ), φ = 4·atan b, with the sign of the bulge. */
function areaOf(vertices: readonly Vertex[]): number {
  return sidesOf(vertices).reduce((sum, { a, b, bulge, radius }) => {
    const swept = 4 * Math.atan(bulge);
    return sum + (a.x * b.y - b.x * a.y) / 2 + (radius ** 2 / 2) * (swept - Math.sin(swept));
  }, 0);
}

/** Points along every side, found by halving arcs: the middle lies off the chord's middle by b·c/2, to its right. */
function pointsOn({ a, b, bulge }: { a: Vertex; b: Vertex; bulge: number }, depth: number): Vertex[] {
  if (bulge === 0 || depth === 0) return [a, b];
  const middle = { x: (a.x + b.x) / 2 + (bulge * (b.y - a.y)) / 2, y: (a.y + b.y) / 2 - (bulge * (b.x - a.x)) / 2 };
  const half = Math.tan(Math.atan(bulge) / 2);
  return [...pointsOn({ a, b: middle, bulge: half }, depth - 1), ...pointsOn({ a: middle, b, bulge: half }, depth - 1)];
}

describe('a DXF file', () => {
  const square = BY_HAND[0]?.path as Path;

  it('says that it is in mm', () => {
    const { header } = parse([square]);
    expect(header['$INSUNITS']).toBe(4);
    expect(header['$MEASUREMENT']).toBe(1);
    expect(header['$EXTMIN']).toMatchObject({ x: 0, y: 0 });
    expect(header['$EXTMAX']).toMatchObject({ x: 10, y: 10 });
  });

  it('holds one closed polyline an outline and nothing else', () => {
    fc.assert(
      fc.property(jointOutline, ({ paths }) => {
        const { polylines } = parse(paths);
        expect(polylines.map(({ type, shape }) => ({ type, shape }))).toEqual(
          paths.map(() => ({ type: 'LWPOLYLINE', shape: true })),
        );
      }),
    );
  });

  it('holds the corners where they were drawn, y up', () => {
    expect(parse([square]).polylines[0]?.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
  });

  it('leaves a path open that does not end where it starts', () => {
    const open: Path = { start: { x: 0, y: 0 }, pieces: [{ kind: 'line', to: { x: 5, y: 2 } }] };
    const [polyline] = parse([open]).polylines;
    expect(polyline).toMatchObject({ shape: false });
    expect(polyline?.vertices.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [5, 2],
    ]);
  });

  it.each(BY_HAND)('of $name has its area and extent', ({ path, area, extent }) => {
    const vertices = parse([path]).polylines[0]?.vertices ?? [];
    expectClose(areaOf(vertices), area, { abs: 1e-4, because: `${ROUNDED}; times a girth of some 20 mm` });
    const points = sidesOf(vertices).flatMap((side) => pointsOn(side, 8));
    const flat = { abs: 1e-4, because: 'an arc halved eight times stays within r·(1 − cos(φ/512)) of its summit' };
    expectClose(Math.min(...points.map(({ x }) => x)), extent[0].x, flat);
    expectClose(Math.min(...points.map(({ y }) => y)), extent[0].y, flat);
    expectClose(Math.max(...points.map(({ x }) => x)), extent[1].x, flat);
    expectClose(Math.max(...points.map(({ y }) => y)), extent[1].y, flat);
  });

  it('never bulges past half a turn', () => {
    for (const { path } of BY_HAND) {
      for (const { bulge } of parse([path]).polylines[0]?.vertices ?? []) {
        expect(Math.abs(bulge ?? 0)).toBeLessThanOrEqual(1 + 1e-6);
      }
    }
  });

  it('of any joint has arcs of exactly the fillet, in both senses where both are drawn', () => {
    fc.assert(
      fc.property(
        jointOutline.filter(({ fillet }) => fillet > 0.01),
        ({ paths, fillet }) => {
          const sides = parse(paths).polylines.flatMap(({ vertices }) => sidesOf(vertices));
          // Fillets turn into the material: clockwise on an outline that runs counter-clockwise.
          const fillets = sides.filter(({ bulge }) => bulge < 0);
          expect(fillets.length).toBeGreaterThanOrEqual(2);
          for (const { radius } of fillets) expectClose(radius, fillet, { abs: 2e-6, because: ROUNDED });
        },
      ),
    );
  });

  it('of a sheet with slits has its outline and each slit once, and what they leave of its area', () => {
    const sizes = { layers: 6, rows: 4, pitch: 3, slitWidth: 0.8, slit: 20, bridge: 2, depth: 66 };
    const { polylines } = parse(slitPanelPlan(sizes));
    expect(polylines.map(({ vertices }) => areaOf(vertices) > 0)).toEqual([
      true,
      ...Array.from({ length: 10 }, () => false),
    ]);
    const round = (4 - Math.PI) * 0.4 ** 2;
    const left = 12 * 66 - 10 * (0.8 * 20 - round) - 4 * (0.8 * 10 - round / 2);
    const told = polylines.reduce((sum, { vertices }) => sum + areaOf(vertices), 0);
    expectClose(told, left, { abs: 700 * 1e-6, because: `${ROUNDED}; a girth of some 700 mm` });
  });

  it('of any joint has the area and the extent of the outline', () => {
    fc.assert(
      fc.property(jointOutline, ({ paths }) => {
        const { polylines, header } = parse(paths);
        const girth = polylines.flatMap(({ vertices }) => sidesOf(vertices)).reduce((sum, { chord }) => sum + chord, 0);
        const area = polylines.map(({ vertices }) => areaOf(vertices)).reduce((sum, one) => sum + one, 0);
        const drawn = paths.map(pathArea).reduce((sum, one) => sum + one, 0);
        expectClose(area, drawn, { abs: girth * 1e-6, because: `${ROUNDED}; an edge moved by that all round` });
        const points = polylines.flatMap(({ vertices }) => sidesOf(vertices)).flatMap((side) => pointsOn(side, 6));
        const { left, right, bottom, top } = bounds(paths);
        const rounded = { abs: 1e-6, because: ROUNDED };
        expectClose(Math.min(...points.map(({ x }) => x)), left, rounded);
        expectClose(Math.max(...points.map(({ x }) => x)), right, rounded);
        expectClose(Math.min(...points.map(({ y }) => y)), bottom, rounded);
        expectClose(Math.max(...points.map(({ y }) => y)), top, rounded);
        expect(header['$EXTMIN']).toMatchObject({ z: 0 });
      }),
    );
  });

  it('is the same text for the same outline', () => {
    expect(outlineDxf([square])).toBe(outlineDxf([square]));
  });

  it('of several planes holds a layer for each, with the polylines of that plane', () => {
    const disc = BY_HAND[2]?.path as Path;
    const file = new Parser().parseSync(
      layeredDxf([
        { name: 'plane-1', paths: [square] },
        { name: 'plane-2', paths: [disc] },
      ]),
    );
    const polylines = (file?.entities ?? []) as ILwpolylineEntity[];
    expect(Object.keys(file?.tables.layer?.layers ?? {})).toEqual(expect.arrayContaining(['plane-1', 'plane-2']));
    expect(polylines.map(({ type, layer, shape }) => ({ type, layer, shape }))).toEqual([
      { type: 'LWPOLYLINE', layer: 'plane-1', shape: true },
      { type: 'LWPOLYLINE', layer: 'plane-2', shape: true },
    ]);
    const rounded = { abs: 1e-4, because: `${ROUNDED}; times a girth of some 20 mm` };
    expectClose(areaOf(polylines[1]?.vertices ?? []), BY_HAND[2]?.area ?? 0, rounded);
    expect(file?.header['$INSUNITS']).toBe(4);
  });

  it('of no outline is a mistake of the caller', () => {
    expect(() => outlineDxf([])).toThrow(RangeError);
    expect(() => layeredDxf([])).toThrow(RangeError);
  });
});
