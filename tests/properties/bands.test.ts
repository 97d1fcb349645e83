import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandOutline, type MiddleLine } from '../../src/core/geometry/band.ts';
import { disc } from '../../src/core/geometry/disc.ts';
import { flatten, pathArea, pathLength } from '../../src/core/geometry/flatten.ts';
import { isInside, pathLoop } from '../../src/core/geometry/loop.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';
import { unionOutline } from '../../src/core/geometry/unionOutline.ts';
import { arcBand, box, movedBand, movedPath, spiralBands, straightBand, type Motion } from '../support/bands.ts';
import { expectClose } from '../support/close.ts';
import { endOf, gapOn, spiralBench } from '../support/gaps.ts';
import { angle, count, length } from '../support/generators.ts';
import { distanceFrom } from '../support/outlines.ts';

const ORIGIN = { x: 0, y: 0 };
const TOLERANCE = 0.005;
const area = (paths: readonly Path[]) => paths.reduce((sum, path) => sum + pathArea(path), 0);
const around = (paths: readonly Path[]) => paths.reduce((sum, path) => sum + pathLength(path), 0);

const motion: fc.Arbitrary<Motion> = fc.record({
  x: length(0, 80),
  y: length(0, 80),
  turn: angle(-180, 180),
  mirrored: fc.boolean(),
});

const leaf = fc.record({ long: length(4, 60), thickness: length(0.3, 2), fillet: length(0, 2), lean: angle(-20, 20) });

const arc = fc
  .record({
    x: length(0, 30),
    y: length(0, 30),
    radius: length(2, 20),
    from: angle(0, 360),
    turn: angle(20, 150),
    thickness: length(0.2, 1),
  })
  .map(({ x, y, radius, from, turn, thickness }) => arcBand({ x, y }, radius, from, from + turn, thickness, 60));

const spiral = fc
  .record({ hub: length(3, 8), ring: length(15, 25), turns: length(0.8, 2), arms: count(4), share: length(0.2, 0.7) })
  .map(({ share, ...sizes }) => {
    const pitch = (sizes.ring - sizes.hub) / sizes.turns / sizes.arms;
    return { ...sizes, thickness: Math.min(2, share * pitch) };
  });

/** A leaf that leans between two pads, with fillets at both roots. */
function leafParts({
  long,
  thickness,
  fillet,
  lean,
}: {
  long: number;
  thickness: number;
  fillet: number;
  lean: number;
}) {
  const end = { x: long, y: long * Math.tan(lean) };
  const reach = Math.abs(end.y) + 10;
  return {
    pads: [box(-4, -reach, 0, reach), box(long, -reach, long + 4, reach)],
    bands: [straightBand(ORIGIN, end, thickness)],
    roots: [ORIGIN, end].map((at) => ({ at, fillet: Math.min(fillet, long / 6) })),
  };
}

describe('the outline round pads and bands', () => {
  it('is the same wherever it lies, however it is turned and mirrored', () => {
    fc.assert(
      fc.property(leaf, motion, (sizes, by) => {
        const parts = leafParts(sizes);
        const still = unionOutline(parts);
        const [near, far] = [
          endOf(movedBand(parts.bands[0]!, by), 'from'),
          endOf(movedBand(parts.bands[0]!, by), 'to'),
        ];
        const moved = unionOutline({
          pads: parts.pads.map((path) => movedPath(path, by)),
          bands: parts.bands.map((band) => movedBand(band, by)),
          roots: [near, far].map((at) => ({ at, fillet: parts.roots[0]!.fillet })),
        });
        expect(moved).toHaveLength(still.length);
        const room = 1.2e-4 * around(still) + 8 * sizes.fillet * TOLERANCE;
        expectClose(area(moved), area(still), {
          abs: room,
          because: 'places to 1e-5 mm, corners left out within 1e-4 mm, chords of fillets',
        });
        expectClose(around(moved), around(still), { rel: 1e-3, because: 'chords of fillets and corners left out' });
      }),
      { numRuns: 40 },
    );
  });

  it('holds all its parts, and no more than their areas and the fillets', () => {
    fc.assert(
      fc.property(spiral, length(0, 1), (sizes, fillet) => {
        const bands = spiralBands(sizes, 60);
        const pads = [disc(ORIGIN, sizes.hub), disc(ORIGIN, sizes.ring + 2), disc(ORIGIN, sizes.ring, false)];
        const roots = bands.flatMap((band) => [endOf(band, 'from'), endOf(band, 'to')]).map((at) => ({ at, fillet }));
        const paths = unionOutline({ pads, bands, roots });
        const loops = paths.map((path) => pathLoop(path, TOLERANCE));
        const edges = paths.map((path) => flatten(path, TOLERANCE));
        for (const { x, y } of bands) {
          for (let i = 0; i < x.length; i += 5) {
            const at = { x: x[i]!, y: y[i]! };
            expect(isInside(loops, at)).toBe(true);
            expect(Math.min(...edges.map((edge) => distanceFrom(at, edge)))).toBeGreaterThan(
              sizes.thickness / 2 - 0.05,
            );
          }
        }
        const parts = area(pads) + bands.reduce((sum, band) => sum + pathArea(bandOutline(band)), 0);
        // A fillet lies within 4 radii of its corner and is thinner there than 2.
        expect(area(paths)).toBeLessThan(parts + bands.length * 4 * 8 * fillet ** 2 + TOLERANCE * around(paths));
      }),
      { numRuns: 15 },
    );
  });
});

/** Points of the middle line as close as 0.01 mm, each with half the thickness. */
function dense(band: MiddleLine, radius: number, centre: Point): readonly Point[] {
  const [a, b] = [endOf(band, 'from'), endOf(band, 'to')];
  const from = Math.atan2(a.y - centre.y, a.x - centre.x);
  const turn = (Math.atan2(b.y - centre.y, b.x - centre.x) - from + 2 * Math.PI) % (2 * Math.PI);
  return Array.from({ length: 401 }, (_, i) => ({
    x: centre.x + radius * Math.cos(from + (turn * i) / 400),
    y: centre.y + radius * Math.sin(from + (turn * i) / 400),
  }));
}

describe('the least gap', () => {
  it('is what trying all places against each other finds', () => {
    const given = fc.record({
      x: length(0, 25),
      y: length(0, 25),
      radii: fc.tuple(length(3, 12), length(3, 12)),
      from: fc.tuple(angle(0, 360), angle(0, 360)),
      turn: fc.tuple(angle(20, 150), angle(20, 150)),
      thickness: length(0.2, 1),
    });
    fc.assert(
      fc.property(given, ({ x, y, radii, from, turn, thickness }) => {
        const centres = [ORIGIN, { x, y }] as const;
        const bands = ([0, 1] as const).map((k) =>
          arcBand(centres[k], radii[k], from[k], from[k] + turn[k], thickness, 60),
        );
        const [a, b] = bands.map((band, k) => dense(band, radii[k]!, centres[k]!));
        const tried = Math.min(...a!.map((place) => distanceFrom(place, b!))) - thickness;
        const found = gapOn({ bands })?.gap ?? Number.NaN;
        // Where middle lines cross, trying finds the crossing only to half a step.
        const step = Math.max(radii[0] * turn[0], radii[1] * turn[1]) / 400;
        expectClose(found, tried, { abs: tried < 0 ? step / 2 + 1e-3 : 3e-3, because: 'steps of trying, and chords' });
      }),
      { numRuns: 60 },
    );
  });

  it('is the same wherever the bands lie, however they are turned and mirrored, in either order', () => {
    fc.assert(
      fc.property(arc, arc, motion, (a, b, by) => {
        const gap = gapOn({ bands: [a, b] })?.gap ?? Number.NaN;
        const moved = gapOn({ bands: [movedBand(b, by), movedBand(a, by)] })?.gap ?? Number.NaN;
        expectClose(moved, gap, { abs: 1e-9, because: 'round-off' });
      }),
    );
  });

  it('of bands apart falls by just what their thickness grows by', () => {
    fc.assert(
      fc.property(arc, arc, length(0, 1), (a, b, more) => {
        const thicker = (band: MiddleLine) => ({ ...band, thickness: Array.from(band.thickness, (t) => t + more) });
        const gap = gapOn({ bands: [a, b] })?.gap ?? Number.NaN;
        const less = gapOn({ bands: [thicker(a), thicker(b)] })?.gap ?? Number.NaN;
        expectClose(less, gap - more, { abs: 1e-9, because: 'round-off' });
      }),
    );
  });

  it('of a spiral falls as its arms grow thicker, and lies on surfaces as far apart as it says', () => {
    fc.assert(
      fc.property(spiral, length(0.01, 0.3), (sizes, more) => {
        fc.pre(sizes.arms > 1 || sizes.turns > 1.2);
        const found = gapOn(spiralBench(sizes));
        const less = gapOn(spiralBench({ ...sizes, thickness: sizes.thickness + more }));
        expect(found).toBeDefined();
        expect(less!.gap).toBeLessThan(found!.gap);
        const apart = Math.hypot(found!.a.at.x - found!.b.at.x, found!.a.at.y - found!.b.at.y);
        expectClose(apart, Math.abs(found!.gap), { abs: 1e-9, because: 'round-off' });
      }),
      { numRuns: 40 },
    );
  });
});
