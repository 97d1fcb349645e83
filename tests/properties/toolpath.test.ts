/** Laws of what is told of a toolpath: what is laid does not hang on how it is written, nor on where on the plate it lies. */
import '../support/seed.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlaceAudit } from '../../src/core/inspect/toolpath/audit.ts';
import { auditPlace } from '../../src/core/inspect/toolpath/auditPlace.ts';
import { judgePlace, wantedOfFile } from '../../src/core/inspect/toolpath/judgePlace.ts';
import { runsOf } from '../../src/core/inspect/toolpath/layerRuns.ts';
import type { Near, NearPath } from '../../src/core/inspect/toolpath/near.ts';
import { NearPaths } from '../../src/core/inspect/toolpath/nearPaths.ts';
import { Paths } from '../../src/core/inspect/toolpath/paths.ts';
import type { Place } from '../../src/core/inspect/toolpath/place.ts';
import { DIAMETER, leafPart, type LaidPart, type LeafLayer } from '../support/laidParts.ts';
import { carried, movesOf, nearOf, rolled, split, turned, type Toolpath } from '../support/toolpaths.ts';

/** On a grid of 10 µm, 3 µm beside it: no cut then meets a corner, where two widths would be as true as one another. */
const place = (min: number, max: number) =>
  fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((n) => n / 100 + 0.003);

const layer: fc.Arbitrary<LeafLayer> = fc
  .record({
    width: place(0.3, 0.42),
    isFour: fc.boolean(),
    start: fc.option(place(0.6, 11.4), { nil: undefined }),
    third: fc.option(fc.tuple(place(0, 4), place(4.2, 8), place(8.2, 12), place(0.05, 0.2)), { nil: undefined }),
    isDropped: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
    crossing: fc.option(fc.tuple(place(1, 11), fc.constantFrom(0, 0.4)), { nil: undefined }),
  })
  .map(({ width, isFour, start, third, isDropped, crossing }) => ({
    contours: isFour ? [width / 2, width / 2] : [width],
    ...(start === undefined ? {} : { start }),
    ...(third && !isDropped ? { middle: [[third[0], third[1], third[3]], [third[1] + 0.2, third[2], third[3]]] as const } : {}), // prettier-ignore
    isDropped,
    ...(crossing ? { crossings: [crossing] } : {}),
  }));

const part: fc.Arbitrary<LaidPart> = fc
  .array(layer, { minLength: 3, maxLength: 8 })
  .map((layers) => leafPart({ length: 12, thickness: 1, height: 0.2, layers }));

/** Everything but how paths are numbered, number by number. */
function figuresOf({ length, layers }: PlaceAudit): readonly (number | string)[] {
  return [
    length,
    ...layers.flatMap((one) => [
      one.layer,
      one.z,
      one.height,
      ...Object.values(one.lines),
      ...(one.widths ? [one.widths.least, one.widths.most, one.widths.mean] : ['nothing']),
      one.thickness,
      one.along,
      one.crossings,
      one.lifted,
      ...one.tracks.flatMap(({ at, off, width }) => ['track', ...at, ...off, ...width]),
      ...one.open.flatMap(({ from, to, width, off, kind }) => [kind, from, to, width, off]),
      ...one.starts.flatMap(({ at, off }) => ['start', at, off]),
      ...one.stops.flatMap(({ at, off }) => ['stop', at, off]),
    ]),
  ];
}

/** Round-off of places up to 300 mm off, in their squares. */
const SAME = 1e-9;

function expectAlike(a: PlaceAudit, b: PlaceAudit, within = SAME): void {
  const [these, others] = [figuresOf(a), figuresOf(b)];
  expect(these.length).toBe(others.length);
  const off = these.map((one, i) => {
    const other = others[i]!;
    if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other);
    return one === other ? 0 : Infinity;
  });
  expect(Math.max(0, ...off)).toBeLessThanOrEqual(within);
}

type Layer = PlaceAudit['layers'][number];
const allEnds = ({ starts, stops }: Layer) => [...starts, ...stops].toSorted((a, b) => a.at - b.at || a.off - b.off);

/** A line that begins on the section ends there when it is laid the other way round. */
const endsTogether = ({ length, layers }: PlaceAudit): PlaceAudit => ({
  length,
  layers: layers.map((one) => ({ ...one, starts: allEnds(one), stops: [] })),
});

const counts = ({ layers }: PlaceAudit) =>
  layers.map(({ lines, starts, stops, crossings, open }) => [
    lines,
    starts.length,
    stops.length,
    crossings,
    open.length,
  ]);

const told = (near: Near, at: Place, diameter = DIAMETER) => auditPlace(at, near, diameter);

/** As the program gathers it: only what lies near, stretch by stretch. */
function gathered(toolpath: Toolpath, at: Place): Near {
  const keep = new NearPaths([at]);
  const paths = new Paths(keep, toolpath.diameter);
  movesOf(toolpath, paths);
  paths.end();
  return keep.end()[0]!.near;
}

function reversed(path: NearPath): NearPath {
  const points = new Float64Array(path.points.length);
  const last = points.length / 2 - 1;
  for (let i = 0; i <= last; i += 1) {
    points[2 * i] = path.points[2 * (last - i)]!;
    points[2 * i + 1] = path.points[2 * (last - i) + 1]!;
  }
  return { ...path, points, feeds: path.feeds.toReversed() };
}

describe('what is told of what is laid', () => {
  it('does not change where moves are split', () => {
    fc.assert(
      fc.property(part, place(0.05, 3), ({ toolpath, place: at }, step) => {
        expectAlike(told(nearOf(split(toolpath, step)), at), told(nearOf(toolpath), at));
      }),
      { numRuns: 40 },
    );
  });

  it('does not change where a split toolpath is gathered near the section', () => {
    fc.assert(
      fc.property(part, place(0.05, 3), ({ toolpath, place: at }, step) => {
        expectAlike(told(gathered(split(toolpath, step), at), at), told(gathered(toolpath, at), at));
      }),
      { numRuns: 40 },
    );
  });

  it('does not change with the order and the numbers of paths', () => {
    fc.assert(
      fc.property(part, fc.infiniteStream(fc.nat(1000)), ({ toolpath, place: at }, stream) => {
        const near = nearOf(toolpath);
        const paths = near.paths
          .map((path) => ({ path, key: stream.next().value ?? 0 }))
          .toSorted((a, b) => a.key - b.key)
          .map(({ path }, i) => ({ ...path, path: 3 * i + 7, line: 1000 - i }));
        expectAlike(told({ ...near, paths }, at), told(near, at));
      }),
      { numRuns: 40 },
    );
  });

  it('does not change where paths are laid the other way round, but that ends and begins of open lines change places', () => {
    fc.assert(
      fc.property(part, ({ toolpath, place: at }) => {
        const near = nearOf(toolpath);
        const back = auditPlace(at, { ...near, paths: near.paths.map(reversed) }, DIAMETER);
        expectAlike(endsTogether(back), endsTogether(told(near, at)));
      }),
      { numRuns: 40 },
    );
  });

  it('does not change with the place on the plate, nor with the direction there', () => {
    fc.assert(
      fc.property(part, place(-3, 3), place(-200, 200), place(-200, 200), ({ toolpath, place: at }, angle, x, y) => {
        const to = turned(angle, x, y);
        const moved = { ...at, run: at.run.map(to) };
        expectAlike(told(nearOf(carried(toolpath, to)), moved), told(nearOf(toolpath), at));
      }),
      { numRuns: 40 },
    );
  });

  it('does not change with the filament where as much of it is laid', () => {
    fc.assert(
      fc.property(part, place(1, 3), ({ toolpath, place: at }, diameter) => {
        expectAlike(told(nearOf({ ...toolpath, diameter }), at, diameter), told(nearOf(toolpath), at));
      }),
      { numRuns: 40 },
    );
  });

  it('hardly changes with how finely an arc is chorded', () => {
    const radius = 9;
    fc.assert(
      fc.property(place(0.3, 0.42), place(1, 11), place(0.02, 0.2), place(0.02, 0.2), (width, start, a, b) => {
        const layers = [{ contours: [width], start }, { contours: [width] }];
        const { toolpath, place: at } = leafPart({ length: 12, thickness: 0.84, height: 0.2, layers, isFilled: false });
        const run = Array.from({ length: 241 }, (_, i) => rolled(radius)({ x: i / 20, y: 0 }));
        const arc = (step: number) => told(nearOf(carried(split(toolpath, step), rolled(radius))), { ...at, run });
        // Chords of the run itself are up to 2 µm off, so that of two places in a gap that are as wide either may be the widest.
        expectAlike(arc(a), arc(b), 3e-3);
      }),
      { numRuns: 30 },
    );
  });

  it('takes a run from its other end for the same section', () => {
    fc.assert(
      fc.property(part, ({ toolpath, place: at }) => {
        const audit = auditPlace(at, nearOf(toolpath), DIAMETER);
        const other = auditPlace({ ...at, run: at.run.toReversed() }, nearOf(toolpath), DIAMETER);
        expect(counts(other)).toEqual(counts(audit));
      }),
      { numRuns: 40 },
    );
  });
});

/** Any numbers at all, but finite. */
const wild = fc.oneof(
  fc.double({ min: -30, max: 30, noNaN: true }),
  fc.constantFrom(0, 1, 1e-9, -1e-9, 0.2, 0.42, 5, 12),
);
const wildPath: fc.Arbitrary<NearPath> = fc
  .record({
    path: fc.nat(6),
    z: fc.oneof(fc.constantFrom(0.2, 0.4, 0.6, 0.8), fc.double({ min: 0, max: 2, noNaN: true })),
    height: fc.constantFrom(0.05, 0.1, 0.2, 0.3),
    coordinates: fc.array(fc.tuple(wild, wild), { minLength: 2, maxLength: 12 }),
    feed: fc.array(fc.double({ min: 0, max: 0.3, noNaN: true }), { minLength: 12, maxLength: 12 }),
    isClosed: fc.boolean(),
    begins: fc.boolean(),
    ends: fc.boolean(),
  })
  .map(({ coordinates, feed, ...path }) => ({
    ...path,
    points: Float64Array.from(coordinates.flat()),
    feeds: Float64Array.from(feed.slice(0, coordinates.length - 1)),
    line: 1,
    tool: 0,
  }));
const point = fc.record({ x: wild, y: wild });
const wildNear: fc.Arbitrary<Near> = fc.record({
  paths: fc.array(wildPath, { maxLength: 12 }),
  travels: fc.array(fc.record({ from: point, to: point, z: wild, over: wild, line: fc.constant(1) }), { maxLength: 6 }),
  isCut: fc.boolean(),
});
const wildPlace: fc.Arbitrary<Place> = fc.record({
  number: fc.constant(1),
  from: fc.constantFrom('found', 'carried', 'drawn'),
  lying: fc.constantFrom('flat', 'crease', 'upright'),
  run: fc.array(point, { minLength: 2, maxLength: 6 }),
  thickness: fc.double({ min: 0.1, max: 3, noNaN: true }),
  reach: fc.double({ min: 0.1, max: 10, noNaN: true }),
  bottom: fc.constantFrom(0, 0.1),
  top: fc.constantFrom(0.5, 2),
});

/** Numbers anywhere inside that are none. */
function notNumbers(value: unknown): number {
  if (typeof value === 'number') return Number.isFinite(value) ? 0 : 1;
  if (ArrayBuffer.isView(value)) return [...(value as Float64Array)].filter((one) => !Number.isFinite(one)).length;
  if (typeof value !== 'object' || value === null) return 0;
  return Object.values(value).reduce<number>((sum, one) => sum + notNumbers(one), 0);
}

describe('anything at all near anything', () => {
  it('is told and judged in numbers', () => {
    fc.assert(
      fc.property(wildPlace, wildNear, (at, near) => {
        const audit = auditPlace(at, near, DIAMETER);
        const judged = judgePlace(at, audit, wantedOfFile(audit, at));
        expect(notNumbers(audit)).toBe(0);
        expect(notNumbers({ ...judged, place: undefined })).toBe(0);
        for (const { lines, along, crossings, lifted } of audit.layers) {
          expect(lines.least <= lines.usual && lines.usual <= lines.most).toBe(true);
          expect(along).toBeGreaterThanOrEqual(0);
          expect(along).toBeLessThanOrEqual(1);
          expect(lifted).toBeLessThanOrEqual(crossings);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('puts any layers into runs that hold them all once', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 })), (layers) => {
        const runs = runsOf(layers);
        const all = runs.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => first + i));
        expect(all).toEqual([...new Set(layers)].toSorted((a, b) => a - b));
        for (const [i, [first]] of runs.entries()) if (i > 0) expect(first - runs[i - 1]![1]).toBeGreaterThan(1);
      }),
    );
  });
});
