import { describe, expect, it } from 'vitest';
import { loopArea, type Loop } from '../../../src/core/geometry/loop.ts';
import { meshFigures } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { layerOutline, type FlatPath } from '../../../src/core/inspect/toolpath/layerOutline.ts';
import { slabMesh } from '../../../src/core/inspect/toolpath/slabMesh.ts';
import { stack } from '../../../src/core/inspect/toolpath/slabs.ts';
import { expectClose } from '../../support/close.ts';
import { rectangle } from '../../support/solids.ts';

const W = 0.4;
const ROUNDED = 'brushes are round, with chords of 10 µm, and corners of 6 µm are left out';

/** A contour round a rectangle whose outer side this is; the other way round where asked. */
function ring(x: number, y: number, width: number, height: number, turn: 1 | -1 = 1): FlatPath {
  const inner = rectangle(x + W / 2, y + W / 2, width - W, height - W);
  const points = turn > 0 ? [...inner, inner[0]!] : [...inner, inner[0]!].toReversed();
  return { points, widths: new Float64Array(4).fill(W), isClosed: true };
}

/** A contour round a rectangular hole whose side this is, the other way round than those of bodies. */
const holeRing = (x: number, y: number, width: number, height: number) =>
  ring(x - W, y - W, width + 2 * W, height + 2 * W, -1);

const line = (...points: Loop): FlatPath => ({
  points,
  widths: new Float64Array(points.length - 1).fill(W),
  isClosed: false,
});

const areaOf = (loops: readonly Loop[]) => loops.reduce((sum, loop) => sum + loopArea(loop), 0);
/** What the round corners of a brush leave out of a square one. */
const CORNERS = (4 - Math.PI) * (W / 2) ** 2;

describe('what stands in a layer', () => {
  it('is what a contour goes round, be its inside printed sparsely or not at all', () => {
    const sparse = line({ x: 1, y: 1 }, { x: 19, y: 9 });
    for (const paths of [[ring(0, 0, 20, 10)], [ring(0, 0, 20, 10), sparse]]) {
      const found = layerOutline(paths);
      expect(found.length).toBe(1);
      expectClose(areaOf(found), 200 - CORNERS, { abs: 0.3, because: ROUNDED });
    }
  });

  it('has the holes that contours go round the other way', () => {
    const found = layerOutline([ring(0, 0, 20, 10), holeRing(5, 3, 4, 4), line({ x: 12, y: 1 }, { x: 18, y: 9 })]);
    expect(found.length).toBe(2);
    expectClose(areaOf(found), 200 - CORNERS - 16, { abs: 0.4, because: ROUNDED });
  });

  it('has bodies that stand in holes of others', () => {
    const found = layerOutline([ring(0, 0, 20, 20), holeRing(4, 4, 12, 12), ring(8, 8, 4, 4)]);
    expect(found.length).toBe(3);
    expectClose(areaOf(found), 400 - 144 + 16 - 2 * CORNERS, { abs: 0.7, because: ROUNDED });
  });

  it('is solid where two contours leave less than a line between them', () => {
    const found = layerOutline([ring(0, 0, 20, 1.1)]);
    expect(found.length).toBe(1);
    expectClose(areaOf(found), 22 - CORNERS, { abs: 0.3, because: ROUNDED });
  });

  it('is solid where a contour starts and ends a little apart', () => {
    const { points, widths } = ring(0, 0, 20, 10);
    const last = points[3]!;
    const open = { points: [...points.slice(0, 4), { x: last.x, y: last.y - 9 }], widths, isClosed: true };
    const closed = { ...open, points: [...open.points, points[0]!], widths: new Float64Array(5).fill(W) };
    expectClose(areaOf(layerOutline([closed])), 200 - CORNERS, { abs: 0.3, because: ROUNDED });
  });

  it('has single lines that no contour goes round', () => {
    const found = layerOutline([ring(0, 0, 5, 5), line({ x: 4.8, y: 2.5 }, { x: 12, y: 2.5 }), ring(11.8, 0, 5, 5)]);
    expect(found.length).toBe(1);
    expectClose(areaOf(found), 2 * (25 - CORNERS) + 6.8 * W, { abs: 0.4, because: ROUNDED });
  });

  it('is nothing where nothing is laid', () => {
    expect(layerOutline([])).toEqual([]);
  });
});

const square = (size: number) => [rectangle(-size / 2, -size / 2, size, size)];
const layer = (i: number, outlines: readonly Loop[]) => ({ bottom: 0.2 * i, top: 0.2 * (i + 1), outlines });

describe('layers on one another', () => {
  it('that stand alike are one slab, whose middle stands for it', () => {
    const layers = [10.06, 10, 10.02, 9.98].map((size, i) => ({
      bottom: 0.2 * i,
      top: 0.2 * (i + 1),
      outlines: square(size),
    }));
    const slabs = stack(layers);
    expect(slabs.length).toBe(1);
    expect(slabs[0]).toEqual({ bottom: 0, top: 0.8, outlines: square(10.02) });
  });

  it('lose the noise of a single one, and keep what is wider', () => {
    const tongue = rectangle(5, 0, 0.2, 3);
    const noisy = stack([layer(0, square(10)), layer(1, [...square(10), tongue]), layer(2, square(10))]);
    expectClose(areaOf(noisy[1]?.outlines ?? noisy[0]!.outlines), 100, { abs: 0.05, because: 'chords of 20 µm' });
    const crease = rectangle(5, 0, 2, 3);
    const wide = stack([layer(0, square(10)), layer(1, [...square(10), crease]), layer(2, square(10))]);
    expect(wide.length).toBe(3);
    expectClose(areaOf(wide[1]!.outlines), 106, { abs: 0.05, because: 'chords of 20 µm' });
  });

  it('make a solid of the volume that they have, whatever reaches out', () => {
    const slabs = [
      { bottom: 0, top: 1, outlines: [rectangle(0, 0, 10, 10), rectangle(3, 3, 2, 2).toReversed()] },
      { bottom: 1, top: 3, outlines: [rectangle(5, 5, 10, 10)] },
      { bottom: 3, top: 4, outlines: [rectangle(0, 0, 2, 2), rectangle(6, 6, 3, 3)] },
      { bottom: 6, top: 7, outlines: [rectangle(6, 6, 3, 3)] },
    ];
    const { volume, area } = meshFigures(slabMesh(slabs));
    expectClose(volume, 96 + 200 + 13 + 9, { rel: 1e-9, because: 'rounding' });
    // By hand: walls; below and above, each flat that nothing covers. The hole goes on through the first slab only.
    const walls = 40 + 8 + 2 * 40 + 8 + 12 + 12;
    const flats = 96 + 75 + (96 - 25) + (100 - 9) + 4 + 4 + 9 + 9 + 9;
    expectClose(area, walls + flats, { rel: 1e-6, because: 'outlines are kept to 10 nm' });
  });
});
