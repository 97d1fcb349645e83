import { describe, expect, it } from 'vitest';
import { disc } from '../../../src/core/geometry/disc.ts';
import { bounds, flatten, pathArea, pathLength } from '../../../src/core/geometry/flatten.ts';
import type { Path } from '../../../src/core/geometry/outline.ts';
import { unionOutline } from '../../../src/core/geometry/unionOutline.ts';
import { outlineDxf } from '../../../src/files/dxf.ts';
import { outlineSvg } from '../../../src/files/svg.ts';
import { arcBand, box, polygon, spiralBands, straightBand } from '../../support/bands.ts';
import { expectClose } from '../../support/close.ts';
import { distanceFrom } from '../../support/outlines.ts';

const ORIGIN = { x: 0, y: 0 };
const TOLERANCE = 0.005;
const area = (paths: readonly Path[]) => paths.reduce((sum, path) => sum + pathArea(path), 0);
const around = (paths: readonly Path[]) => paths.reduce((sum, path) => sum + pathLength(path), 0);
/** Straight edges move by the rounding of places alone. */
const straight = (paths: readonly Path[]) =>
  ({ abs: 1e-5 * around(paths), because: 'places are kept to 1e-5 mm all round' }) as const;
/** Chords of pads and of fillets, and corners left out. */
const curved = (length: number) =>
  ({ abs: 1.02 * TOLERANCE * length, because: 'chords within 0.005 mm, corners left out within 0.0001 mm' }) as const;

describe('the outline round pads and bands', () => {
  it('of a leaf between two pads is one loop without the seams', () => {
    const leaf = straightBand({ x: 0, y: 0 }, { x: 12, y: 0 }, 0.84);
    const paths = unionOutline({ pads: [box(-3, -2, 0, 2), box(12, -2, 15, 2)], bands: [leaf], roots: [] });
    expect(paths).toHaveLength(1);
    expect(paths[0]!.pieces).toHaveLength(12);
    expectClose(area(paths), 24 + 12 * 0.84, straight(paths));
  });

  it('of a frame with crossing bars has its holes clockwise, largest first', () => {
    const frame = [box(0, 0, 20, 10), polygon([2, 2], [2, 8], [18, 8], [18, 2])];
    const bars = [straightBand({ x: 2, y: 5 }, { x: 18, y: 5 }, 1), straightBand({ x: 8, y: 2 }, { x: 8, y: 8 }, 1)];
    const paths = unionOutline({ pads: frame, bands: bars, roots: [] });
    expect(paths).toHaveLength(5);
    const areas = paths.map(pathArea);
    expect(areas[0]).toBeGreaterThan(0);
    expect(areas.slice(1).every((each) => each < 0)).toBe(true);
    expect(areas.map(Math.abs)).toEqual(areas.map(Math.abs).toSorted((a, b) => b - a));
    expectClose(area(paths), 200 - 96 + 16 + 6 - 1, straight(paths));
  });

  it('of a ring with spokes holds an annulus, a hub and what the spokes fill between', () => {
    const [hub, ring, outer, t] = [4, 15, 18, 1.2];
    const spokes = [0, 1, 2].map((k) => {
      const [cos, sin] = [Math.cos((2 * Math.PI * k) / 3), Math.sin((2 * Math.PI * k) / 3)];
      return straightBand({ x: hub * cos, y: hub * sin }, { x: ring * cos, y: ring * sin }, t);
    });
    const paths = unionOutline({
      pads: [disc(ORIGIN, hub), disc(ORIGIN, outer), disc(ORIGIN, ring, false)],
      bands: spokes,
      roots: [],
    });
    // A spoke fills between two circles: the area under one arc less that under the other.
    const under = (radius: number) =>
      (t / 2) * Math.sqrt(radius ** 2 - (t / 2) ** 2) + radius ** 2 * Math.asin(t / 2 / radius);
    const filled = under(ring) - under(hub);
    const expected = Math.PI * (hub ** 2 + outer ** 2 - ring ** 2) + 3 * filled;
    expectClose(area(paths), expected, curved(2 * Math.PI * (hub + ring + outer)));
    expect(paths).toHaveLength(4);
    expectClose(pathArea(paths[1]!), pathArea(paths[3]!), curved((2 * Math.PI * (hub + ring)) / 3));
  });

  it('of a folded leaf rounds the outside of its turns and keeps its slots', () => {
    const nodes = [
      [0, 0],
      [0, 10],
      [3, 10],
      [3, 0],
      [6, 0],
    ] as const;
    const legs = nodes.slice(1).map(([x, y], i) => straightBand({ x: nodes[i]![0], y: nodes[i]![1] }, { x, y }, 1));
    const paths = unionOutline({ pads: [box(-2, -3, 2, 0), box(6, -3, 9, 3)], bands: legs, roots: [] }, 1e-4);
    expect(paths).toHaveLength(1);
    // Legs of 10, 3, 10 and 3; each of three turns overlaps in ¼ and gains a quarter of a disc of ½.
    const expected = 12 + 18 + 26 - 3 * 0.25 + 3 * (Math.PI / 16);
    expectClose(area(paths), expected, { abs: 2e-3, because: 'chords within 1e-4 mm, places to 1e-5 mm round 70 mm' });
  });

  it('of a fused crossing is one piece, and of leaves in two planes one piece each', () => {
    const pads = [box(-6, -7, 6, -5), box(-6, 5, 6, 7)];
    const leaves = [
      straightBand({ x: -5, y: -5 }, { x: 5, y: 5 }, 0.8),
      straightBand({ x: 5, y: -5 }, { x: -5, y: 5 }, 0.8),
    ];
    const fused = unionOutline({ pads, bands: leaves, roots: [] });
    // Cut square to themselves leaves at 45° fill parallelograms: 0.8·√2 wide, 10 high, less their crossing of 0.8².
    expectClose(area(fused), 48 + 2 * 8 * Math.SQRT2 - 0.64, straight(fused));
    for (const leaf of leaves) {
      const alone = unionOutline({ pads, bands: [leaf], roots: [] });
      expect(alone).toHaveLength(1);
      expectClose(area(alone), 48 + 8 * Math.SQRT2, straight(alone));
    }
  });

  it('of a band bent tighter than half its thickness has no holes', () => {
    const hook = arcBand(ORIGIN, 0.3, 0, Math.PI, 1, 24);
    const paths = unionOutline({ pads: [], bands: [hook], roots: [] });
    expect(paths).toHaveLength(1);
    // Half a disc of 0.8 and, past the centre, the other half of one of 0.2.
    expectClose(area(paths), (Math.PI / 2) * (0.64 + 0.04), {
      abs: 0.012,
      because: 'half circles of 24 chords: 0.3 %, and what the two ends sweep',
    });
  });

  it('of nothing is nothing', () => {
    expect(unionOutline({ pads: [], bands: [], roots: [] })).toEqual([]);
  });
});

const rootsOf = (fillet: number) => [0, 12].map((x) => ({ at: { x, y: 0 }, fillet }));

describe('root fillets', () => {
  const pads = [box(-3, -5, 0, 5), box(12, -5, 15, 5)];
  const leaf = straightBand({ x: 0, y: 0 }, { x: 12, y: 0 }, 0.84);
  const plain = area(unionOutline({ pads, bands: [leaf], roots: [] }));

  it.each([0.3, 0.8, 2])('of %d mm add r²(1 − π/4) in every square corner', (fillet) => {
    const paths = unionOutline({ pads, bands: [leaf], roots: rootsOf(fillet) });
    const corner = fillet ** 2 * (1 - Math.PI / 4);
    // The chords of a fillet lie on its filled side: up to two thirds of the tolerance along a quarter circle.
    const room = (2 / 3) * TOLERANCE * ((Math.PI / 2) * fillet) + 1e-5 * around(paths);
    expectClose((area(paths) - plain) / 4, corner, { abs: room, because: 'chords within 0.005 mm of the arcs' });
  });

  it('come to the true area as the tolerance is made finer', () => {
    const paths = unionOutline({ pads, bands: [leaf], roots: rootsOf(2) }, 1e-4);
    expectClose(area(paths) - plain, 4 * 4 * (1 - Math.PI / 4), {
      abs: 4 * Math.PI * 1.2e-4 + 1e-5 * around(paths),
      because: 'chords within 1e-4 mm along four quarter circles of 2 mm, places to 1e-5 mm',
    });
  });

  it('are left out where none is asked for, and at places where nothing ends', () => {
    expect(area(unionOutline({ pads, bands: [leaf], roots: rootsOf(0) }))).toBe(plain);
    const nowhere = [{ at: { x: 6, y: 0 }, fillet: 0.8 }];
    expect(area(unionOutline({ pads, bands: [leaf], roots: nowhere }))).toBe(plain);
  });

  it('fill no narrow gap that is not in the corner of a root', () => {
    // Two leaves 0.5 mm apart, with fillets of 1 mm: each corner is filled as if it were alone.
    const pair = [0, 1.34].map((y) => straightBand({ x: 0, y }, { x: 12, y }, 0.84));
    const outer = unionOutline({
      pads,
      bands: pair,
      roots: [0, 12].flatMap((x) => [0, 1.34].map((y) => ({ at: { x, y }, fillet: 1 }))),
    });
    const slot = outer.slice(1);
    expect(slot).toHaveLength(1);
    // The slot keeps its width over all but the fillets, of which two overlap at each end.
    const { left, right, bottom, top } = bounds(slot);
    expectClose(top - bottom, 0.5, { abs: 2e-5, because: 'places are kept to 1e-5 mm' });
    // Where two quarter circles of 1 mm from both sides meet half-way up a slot of 0.5: 1 − √(1 − 0.75²).
    expectClose(left, 1 - Math.sqrt(1 - 0.75 ** 2), { abs: 0.01, because: 'chords within 0.005 mm, met at a slant' });
    expectClose(right, 12 - left, { abs: 0.01, because: 'the same at the other end' });
  });

  it('leave the corners of a frame sharp', () => {
    const frame = [box(0, 0, 20, 10), polygon([2, 2], [2, 8], [18, 8], [18, 2])];
    const bar = straightBand({ x: 2, y: 5 }, { x: 18, y: 5 }, 1);
    const paths = unionOutline({
      pads: frame,
      bands: [bar],
      roots: [2, 18].map((x) => ({ at: { x, y: 5 }, fillet: 0.7 })),
    });
    for (const corner of [
      { x: 2, y: 2 },
      { x: 18, y: 8 },
    ]) {
      const nearest = Math.min(...paths.map((path) => distanceFrom(corner, flatten(path, TOLERANCE))));
      expect(nearest).toBeLessThan(1e-5);
    }
  });

  it('are smaller in the sharp side of a slanting root, and full in the blunt one', () => {
    // A leaf 20° off its pad: the blunt corner of 160° adds r²(cot 80° − 10° in rad).
    const lean = Math.PI / 9;
    const end = { x: 20 * Math.cos(lean), y: 20 * Math.sin(lean) };
    const slanting = straightBand(ORIGIN, end, 0.84);
    const floor = [box(-10, -3, 30, 0)];
    const bare = area(unionOutline({ pads: floor, bands: [slanting], roots: [] }, 1e-3));
    const full = area(unionOutline({ pads: floor, bands: [slanting], roots: [{ at: ORIGIN, fillet: 1 }] }, 1e-3));
    const blunt = 1 / Math.tan((80 * Math.PI) / 180) - Math.PI / 18;
    // In the sharp one the fillet ends 4 mm from the corner: r = 4·tan 10°, and r²(cot 10° − 80° in rad) is added.
    const small = 4 * Math.tan(Math.PI / 18);
    const sharp = small ** 2 * (1 / Math.tan(Math.PI / 18) - (80 * Math.PI) / 180);
    expectClose(full - bare, blunt + sharp, { rel: 0.03, because: 'the radius that fits is found to a hundredth' });
  });
});

describe('a spiral in its ring', () => {
  const spiral = { hub: 4, ring: 15, turns: 1.25, arms: 3, thickness: 0.84 };
  const bands = spiralBands(spiral);
  const pads = [disc(ORIGIN, 4), disc(ORIGIN, 17), disc(ORIGIN, 15, false)];
  const roots = bands.flatMap(({ x, y }) => [0, 120].map((i) => ({ at: { x: x[i]!, y: y[i]! }, fillet: 0.8 })));
  const paths = unionOutline({ pads, bands, roots });

  it('is one piece with a slot for each arm', () => {
    expect(paths.map((path) => Math.sign(pathArea(path)))).toEqual([1, -1, -1, -1]);
    const slots = paths.slice(1).map(pathArea);
    expectClose(Math.max(...slots), Math.min(...slots), {
      rel: 2e-3,
      because: 'the chords of hub and ring do not fall alike for all arms',
    });
  });

  it('keeps its slots open between the arms, fillets or not', () => {
    const open = unionOutline({ pads, bands, roots: [] });
    // What fillets add is small and near the roots: 2 corners × 6 roots, each within 4 radii of its corner.
    const added = area(paths) - area(open);
    expect(added).toBeGreaterThan(0);
    expect(added).toBeLessThan(12 * 0.8 ** 2);
    const middles = bands.flatMap(({ x, y }) => [40, 50, 60, 70, 80].map((i) => ({ x: x[i]!, y: y[i]! })));
    for (const point of middles) {
      const off = Math.min(...paths.map((path) => distanceFrom(point, flatten(path, TOLERANCE))));
      expectClose(off, 0.42, {
        abs: 0.02,
        because: 'chords of 0.6 mm on radii from 7 mm: 0.007 mm, met off the samples',
      });
    }
  });

  it('goes into drawing files', () => {
    expect(outlineSvg(paths, 'spiral').match(/<path /g)).toHaveLength(4);
    expect(outlineDxf(paths).match(/LWPOLYLINE/g)?.length).toBeGreaterThanOrEqual(4);
  });
});
