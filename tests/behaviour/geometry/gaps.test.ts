import { describe, expect, it } from 'vitest';
import type { MiddleLine } from '../../../src/core/geometry/band.ts';
import { disc } from '../../../src/core/geometry/disc.ts';
import { gapFinder } from '../../../src/core/geometry/gaps.ts';
import { arcBand, box, movedBand, polygon, straightBand } from '../../support/bands.ts';
import { expectClose } from '../../support/close.ts';
import { gapOn, gapsOn, spiralBench } from '../../support/gaps.ts';

const EXACT = { abs: 1e-12, because: 'round-off of a few operations on small numbers' } as const;
const ORIGIN = { x: 0, y: 0 };
const at = (x: number, y: number) => ({ x, y });
const chain = (thickness: number, ...corners: readonly (readonly [number, number])[]): readonly MiddleLine[] =>
  corners.slice(1).map(([x, y], i) => straightBand(at(corners[i]![0], corners[i]![1]), at(x, y), thickness));

describe('the gap between two bands', () => {
  it('that run side by side is their distance less both halves', () => {
    const found = gapOn({ bands: [straightBand(at(0, 0), at(20, 0), 1), straightBand(at(3, 5), at(17, 5), 2, 7)] });
    expectClose(found?.gap ?? Number.NaN, 3.5, EXACT);
    expect([found?.a.what, found?.b.what]).toEqual(['band0', 'band1']);
    expectClose(found?.a.at.y ?? Number.NaN, 0.5, EXACT);
    expectClose(found?.b.at.y ?? Number.NaN, 4, EXACT);
    expectClose((found?.a.at.x ?? 0) - (found?.b.at.x ?? 1), 0, EXACT);
  });

  it('on circles about one centre is the difference of their radii less both halves', () => {
    const [inner, outer] = [arcBand(ORIGIN, 8, 0, 3, 0.8), arcBand(ORIGIN, 10, 0.2, 2.9, 1.2, 33)];
    expectClose(gapOn({ bands: [inner, outer] })?.gap ?? Number.NaN, 1, {
      abs: 2e-5,
      because: 'between samples arcs are cubics: their chords turn by 0.08, so r·0.08⁴/384 and what comes of it',
    });
  });

  it('is where an end points at a side', () => {
    const found = gapOn({ bands: [straightBand(at(0, 0), at(20, 0), 1), straightBand(at(7, 9), at(7, 3), 1)] });
    // The end of a member counts as round, half a thickness beyond its node.
    expectClose(found?.gap ?? Number.NaN, 3 - 1, EXACT);
    expectClose(found?.a.at.x ?? Number.NaN, 7, EXACT);
  });

  it('is below 0 where they overlap, by both halves where they cross', () => {
    const level = straightBand(at(0, 0), at(20, 0), 1);
    expectClose(gapOn({ bands: [level, straightBand(at(0, 0.7), at(20, 0.7), 1)] })?.gap ?? 0, -0.3, EXACT);
    expectClose(gapOn({ bands: [level, straightBand(at(9, -5), at(9.5, 5), 2)] })?.gap ?? 0, -1.5, EXACT);
  });

  it('does not count between planes', () => {
    const bands = [straightBand(at(0, 0), at(10, 10), 1), straightBand(at(0, 10), at(10, 0), 1)];
    expect(gapOn({ bands, planes: [0, 1] })).toBeUndefined();
    expectClose(gapOn({ bands })?.gap ?? 0, -1, EXACT);
  });

  it('of a taper follows its thickness', () => {
    const taper = { x: [0, 10], y: [0, 0], angle: [0, 0], thickness: [1, 3] };
    const found = gapOn({ bands: [taper, straightBand(at(0, 4), at(10, 4), 1)] });
    expectClose(found?.gap ?? Number.NaN, 4 - 0.5 - 1.5, EXACT);
    expectClose(found?.a.at.x ?? Number.NaN, 10, EXACT);
  });
});

describe('what is joined is not taken for a gap', () => {
  it('at square turns, though the slots between the legs count', () => {
    const folded = chain(1, [0, 0], [0, 20], [4, 20], [4, 0], [9, 0], [9, 20]);
    expectClose(gapOn({ bands: folded })?.gap ?? Number.NaN, 3, EXACT);
    expect(gapOn({ bands: folded.slice(0, 2) })).toBeUndefined();
  });

  it('in a straight run of members of any length, thickness and number', () => {
    const run = [
      straightBand(at(0, 0), at(0.5, 0), 6),
      straightBand(at(0.5, 0), at(1, 0), 0.4),
      straightBand(at(1, 0), at(2, 0), 6),
      straightBand(at(2, 0), at(30, 0), 0.8),
    ];
    expect(gapOn({ bands: run })).toBeUndefined();
  });

  it('at a fused crossing, wide or narrow', () => {
    for (const half of [Math.PI / 4, Math.PI / 8]) {
      const arms = [half, Math.PI - half, Math.PI + half, -half].map((angle) =>
        straightBand(ORIGIN, at(10 * Math.cos(angle), 10 * Math.sin(angle)), 0.8),
      );
      expect(gapOn({ bands: arms })).toBeUndefined();
    }
  });

  it('in one band that bends by less than half a turn', () => {
    expect(gapOn({ bands: [arcBand(ORIGIN, 3, 0, 2.9, 1)] })).toBeUndefined();
  });

  it('but is where one band comes round to itself', () => {
    // A whole turn less a bit, closing up to a slot between its own ends.
    const gap = gapOn({ bands: [arcBand(ORIGIN, 5, 0.1, 2 * Math.PI - 0.1, 0.6, 120)] });
    expectClose(gap?.gap ?? Number.NaN, 10 * Math.sin(0.1) - 0.6, { rel: 1e-9, because: 'round-off' });
    const hairpin = [
      ...chain(1, [0, 0], [20, 0]),
      arcBand(at(20, 2), 2, -Math.PI / 2, Math.PI / 2, 1),
      ...chain(1, [20, 4], [0, 4]),
    ];
    expectClose(gapOn({ bands: hairpin })?.gap ?? Number.NaN, 3, {
      rel: 0.005,
      because: 'places that face each other within a cosine of 0.1 count: 1 − √(1 − 0.1²) into the turn',
    });
  });
});

describe('the gap between bands and pads', () => {
  const fixed = { id: 'fixed', nodes: ['from0'], outlines: [box(-4, -6, 0, 6)] };
  const leaf = straightBand(at(0, 0), at(12, 0), 0.8);

  it('is none where a band grows straight out of its pad', () => {
    expect(gapOn({ bands: [leaf], pads: [fixed] })).toBeUndefined();
    const between = { id: 'moving', nodes: ['to0'], outlines: [box(12, -6, 16, 6)] };
    expect(gapOn({ bands: [leaf], pads: [fixed, between] })).toBeUndefined();
    // Nor between both pads, as long as the way round by the leaf is hardly longer than the way across.
    const [near, low] = [straightBand(at(0, 0), at(4, 0), 0.8), box(4, -0.9, 8, 0.9)];
    expect(
      gapOn({
        bands: [near],
        pads: [
          { ...fixed, outlines: [box(-4, -0.9, 0, 0.9)] },
          { ...between, outlines: [low] },
        ],
      }),
    ).toBeUndefined();
  });

  it('is none where it grows out at a slant, even along the edge', () => {
    for (const lean of [0.6, 0.2, 0.1]) {
      const slanting = straightBand(at(0, -5), at(40 * Math.sin(lean), 40 * Math.cos(lean) - 5), 0.8, 80);
      expect(gapOn({ bands: [slanting], pads: [{ ...fixed, outlines: [box(-4, -6, 0, 60)] }] })).toBeUndefined();
    }
  });

  it('is that to a wall beside it', () => {
    const wall = [box(-4, -6, 0, 6), box(0, 2, 12, 6)];
    const found = gapOn({ bands: [leaf], pads: [{ ...fixed, outlines: wall }] });
    expectClose(found?.gap ?? Number.NaN, 2 - 0.4, EXACT);
    expect(found?.b.what).toBe('fixed');
  });

  it('counts again where the band turns back to the pad it grew out of', () => {
    const hook = [
      leaf,
      arcBand(at(12, 2.5), 2.5, -Math.PI / 2, Math.PI / 2, 0.8),
      straightBand(at(12, 5), at(1.5, 5), 0.8),
    ];
    const found = gapOn({ bands: hook, pads: [fixed] });
    expectClose(found?.gap ?? Number.NaN, 1.5 - 0.4, EXACT);
    expect([found?.a.what, found?.b.what]).toEqual(['band2', 'fixed']);
  });

  it('moves and turns with the pad', () => {
    const other = { id: 'moving', nodes: ['from1'], outlines: [polygon([20, -1], [22, -1], [22, 1], [20, 1])] };
    const far = straightBand(at(22, 0), at(40, 0), 0.8);
    const look = (pose: { x: number; y: number; turn: number }) =>
      gapOn({
        bands: [leaf, far],
        pads: [fixed, other],
        poses: { moving: pose },
        bent: [leaf, straightBand(at(60, 60), at(70, 60), 0.8)],
      });
    // Its reference point is its node at (22, 0); turned by half a turn it reaches from there to the right.
    expectClose(look({ x: 10, y: 5, turn: Math.PI })?.gap ?? Number.NaN, 4 - 0.4, EXACT);
    expectClose(look({ x: 10, y: 5, turn: Math.PI / 2 })?.gap ?? Number.NaN, 3 - 0.4, EXACT);
  });

  it('is exact to a round pad', () => {
    const post = {
      id: 'post',
      nodes: ['from1'],
      outlines: [
        { start: at(9, 6), pieces: [{ kind: 'arc', to: at(9, 6), centre: at(6, 6), counterClockwise: true } as const] },
      ],
    };
    const found = gapOn({ bands: [leaf, straightBand(at(9, 6), at(30, 6), 0.8)], pads: [fixed, post] });
    expectClose(found?.gap ?? Number.NaN, 3 - 0.4, { abs: 2e-3, because: 'looked for on chords 0.005 mm off' });
    expectClose(found?.b.at.x ?? Number.NaN, 6, { abs: 0.2, because: 'the same: the edge is level there' });
  });

  it('leaves out what lies inside its own pads', () => {
    const stem = straightBand(at(-3, 0), at(-0.2, 0), 1);
    const found = gapOn({ bands: [stem, straightBand(at(5, -4), at(5, 4), 1)], pads: [fixed] });
    expectClose(found?.gap ?? Number.NaN, 5 - 0.5, EXACT);
    expect([found?.a.what, found?.b.what]).toEqual(['band1', 'fixed']);
  });
});

/** A pad turned about the place on its face where its leaf ends. */
const turned = (turn: number) => ({ moving: { x: 4, y: 0, turn } });

describe('the gap between one pad and another', () => {
  const leaf = straightBand(at(0, 0), at(4, 0), 0.8);
  const fixed = { id: 'fixed', nodes: ['from0'], outlines: [box(-4, -6, 0, 6)] };
  const moving = { id: 'moving', nodes: ['to0'], outlines: [box(4, -6, 8, 6)] };
  const joined = { bands: [leaf], pads: [fixed, moving] };
  it('is that of their faces, however they are joined', () => {
    const found = gapOn(joined);
    expectClose(found?.gap ?? Number.NaN, 4, EXACT);
    expect([found?.a.what, found?.b.what]).toEqual(['fixed', 'moving']);
  });

  it('is where a corner comes near as one of them turns, and below 0 by how deep it lies in the other', () => {
    // A corner 6 below the place it turns about is 6·sin θ nearer, and as far from the face as it then lies ahead of it.
    for (const turn of [0.2, 0.5, 1]) {
      const { gap } = gapOn({ ...joined, poses: turned(-turn), bent: [straightBand(at(0, 20), at(4, 20), 0.8)] }) ?? {};
      expectClose(gap ?? Number.NaN, 4 - 6 * Math.sin(turn), EXACT);
    }
  });

  it('is below 0 where one lies inside the other, and 0 where only their edges cross', () => {
    const bent = [straightBand(at(0, 20), at(4, 20), 0.8)];
    const small = { ...moving, outlines: [box(4, -1, 6, 1)] };
    // 2 by 2 mm, all of it between 0.5 and 2.5 mm in from a face whose pad is 4 mm deep: its far corners lie 1.5 mm in.
    const inside = gapOn({ ...joined, pads: [fixed, small], bent, poses: { moving: { x: -2.5, y: 0, turn: 0 } } });
    expectClose(inside?.gap ?? Number.NaN, -1.5, EXACT);
    expect([inside?.a.what, inside?.b.what]).toEqual(['fixed', 'moving']);
    const long = { ...moving, outlines: [box(4, -1, 16, 1)] };
    const across = gapOn({ ...joined, pads: [fixed, long], bent, poses: { moving: { x: -8, y: 0, turn: 0 } } });
    expectClose(across?.gap ?? Number.NaN, 0, EXACT);
  });

  it('is never above 0 past contact, round corners or not', () => {
    const round = { ...moving, outlines: [disc(at(6, 0), 2)] };
    for (let x = 0.02; x > -6; x -= 0.173) {
      const bent = [straightBand(at(0, 20), at(4, 20), 0.8)];
      const found = gapOn({ ...joined, pads: [fixed, round], bent, poses: { moving: { x, y: 0, turn: 0.1 } } });
      // The disc turns about the place where its leaf ends, so that its middle lies 2·cos 0.1 further on.
      const reaches = x + 2 * Math.cos(0.1) - 2;
      const because = 'chords lie up to 0.005 mm inside their arcs, and corners are where chords meet';
      // Half-way through the other face is as near.
      if (x > -1.9) expectClose(found?.gap ?? Number.NaN, reaches, { abs: 0.03, because });
      expect(found?.gap).toBeLessThanOrEqual(Math.max(0, reaches + 0.03));
    }
  });

  it('is not told from 5 mm on, where nobody asks for it', () => {
    const far = { ...joined, bands: [straightBand(at(0, 0), at(5.5, 0), 0.8)] };
    const apart = { ...moving, outlines: [box(5.5, -6, 9, 6)] };
    expect(gapOn({ ...far, pads: [fixed, apart] })).toBeUndefined();
  });

  it('does not count where they touch as printed', () => {
    const knuckle = { ...moving, outlines: [box(0, 2, 8, 6)] };
    expect(gapOn({ ...joined, pads: [fixed, knuckle] })?.a.what).toBe('band0');
  });

  it('counts between pads that nothing joins, down to the last bit', () => {
    const loose = { id: 'loose', nodes: ['from1'], outlines: [box(8.25, -6, 9, 6)] };
    const bands = [leaf, straightBand(at(9, 0), at(20, 0), 0.8)];
    const found = gapOn({ bands, pads: [fixed, moving, loose] });
    expectClose(found?.gap ?? Number.NaN, 0.25, EXACT);
    expect([found?.a.what, found?.b.what]).toEqual(['moving', 'loose']);
  });
});

/** Bands one above the other. */
const rows = (count: number, apart: number) =>
  Array.from({ length: count }, (_, k) => straightBand(at(0, k * (1 + apart)), at(20, k * (1 + apart)), 1));

describe('all that is near', () => {
  it('is told two by two, the least first', () => {
    const bands = [...rows(3, 0.3), straightBand(at(0, 3.7), at(20, 3.7), 1)];
    const { least, near } = gapsOn({ bands, within: 0.5 });
    expect(near.map(({ a, b }) => `${a.what} ${b.what}`)).toEqual(['band2 band3', 'band0 band1', 'band1 band2']);
    near.forEach(({ gap }, i) => expectClose(gap, [0.1, 0.3, 0.3][i] ?? Number.NaN, EXACT));
    expect(near[0]).toEqual(least);
  });

  it('is nothing where the least gap is wider, and twelve at most', () => {
    expect(gapsOn({ bands: rows(3, 0.6), within: 0.5 })).toMatchObject({ near: [], least: { a: {}, b: {} } });
    expect(gapsOn({ bands: rows(20, 0.3), within: 0.5 }).near).toHaveLength(12);
    expect(gapsOn({ bands: rows(1, 0.3), within: 0.5 })).toEqual({ near: [] });
  });

  it('has the same least gap as is told without it', () => {
    const spiral = spiralBench({ hub: 4, ring: 15, turns: 1.25, arms: 3, thickness: 2 });
    const all = gapsOn({ ...spiral, within: 3 });
    expect(all.near.length).toBeGreaterThan(2);
    expectClose(all.least?.gap ?? 0, gapOn(spiral)?.gap ?? 1, EXACT);
  });
});

describe('a spiral', () => {
  const spiral = { hub: 4, ring: 15, turns: 1.25, arms: 3, thickness: 0.84 };
  const gap = (given: Partial<typeof spiral>, count?: number) =>
    gapOn(spiralBench({ ...spiral, ...given }, count))?.gap ?? Number.NaN;

  it.each([
    [4, 1.25, 0.84, 3],
    [3, 2.5, 0.42, 3],
    [6, 1, 1.6, 2],
    [5, 0.9, 0.84, 4],
  ])(
    'from a hub of %d mm in %d turns has the radial pitch less the thickness, as it leans',
    (hub, turns, thickness, arms) => {
      const rise = (spiral.ring - hub) / (2 * Math.PI * turns);
      const pitch = (2 * Math.PI * rise) / arms;
      const found = gap({ hub, turns, thickness, arms });
      // A spiral leans by atan(rise/r) against the circle, so the way across is shorter by the cosine: most at the hub,
      // but the innermost place that faces an arm further out is up to a pitch away from it.
      const narrowest = pitch * Math.cos(Math.atan(rise / hub)) - thickness;
      const next = pitch * Math.cos(Math.atan(rise / (hub + pitch))) - thickness;
      expect(found).toBeGreaterThan(narrowest);
      expect(found).toBeLessThan(next);
      expect(next).toBeLessThan(pitch - thickness);
    },
  );

  it('is told alike from few samples and from many', () => {
    expectClose(gap({}, 30), gap({}, 480), { abs: 1e-3, because: 'chords of 2.5 mm turn by 0.26 near the hub' });
    expectClose(gap({}), gap({}, 480), { abs: 1e-3, because: 'where the gap is least falls between samples' });
  });

  it('touches itself when its arms are thick', () => {
    expect(gap({ thickness: 3 })).toBeLessThan(0);
  });

  it('is the same when it turns as one', () => {
    const bench = spiralBench(spiral);
    const motion = { x: 3, y: -2, turn: 0.7 };
    const moved = gapOn({
      ...bench,
      bent: bench.bands.map((band) => movedBand(band, motion)),
      poses: Object.fromEntries(
        bench.pads!.map(({ id }, k) => {
          const { x, y } = k === 0 ? at(4, 0) : at(0, 15);
          const [cos, sin] = [Math.cos(0.7), Math.sin(0.7)];
          return [id, { x: 3 + cos * x - sin * y, y: -2 + sin * x + cos * y, turn: 0.7 }];
        }),
      ),
    });
    expectClose(moved?.gap ?? Number.NaN, gap({}), { abs: 1e-9, because: 'round-off' });
  });
});

describe('a network that does not hold together', () => {
  const nodes = [
    { id: 'a', x: 0, y: 0 },
    { id: 'b', x: 9, y: 0 },
  ];
  const band = straightBand(at(0, 0), at(9, 0), 1);

  it('is a mistake of the caller', () => {
    const member = { id: 'm', from: 'a', to: 'b' };
    expect(() => gapFinder({ nodes, members: [{ ...member, to: 'c' }], pads: [] }, [], [band])).toThrow(RangeError);
    expect(() => gapFinder({ nodes, members: [member], pads: [] }, [{ pad: 'p', outlines: [] }], [band])).toThrow(
      RangeError,
    );
    expect(() => gapFinder({ nodes, members: [member], pads: [] }, [], [band])([], {})).toThrow(RangeError);
  });
});
