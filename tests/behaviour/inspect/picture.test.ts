import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import type { Point } from '../../../src/core/geometry/outline.ts';
import { PLATE_UPS } from '../../../src/core/inspect/judged.ts';
import { drawPart } from '../../../src/core/inspect/picture/drawPart.ts';
import { INSIDE_TONE, type PartPicture, type PictureOptions } from '../../../src/core/inspect/picture/picture.ts';
import { toPicture } from '../../../src/core/inspect/picture/placing.ts';
import { simplerLine } from '../../../src/core/inspect/picture/simplerLine.ts';
import { expectClose } from '../../support/close.ts';
import { boxMesh, looseMesh } from '../../support/meshes.ts';
import { arc, placedMesh, pulledUp, rectangle, together } from '../../support/solids.ts';

const ROOM = { width: 150, height: 100 };
const draw = (mesh: TriangleMesh, options: Partial<PictureOptions> = {}) =>
  drawPart(mesh, '+z', { room: ROOM, ...options }, () => undefined);
const shifted = (mesh: TriangleMesh, x: number, y: number, z: number) =>
  placedMesh(mesh, { axis: [0, 0, 1], angle: 0, shift: [x, y, z] });

/** Straight pieces of lines of one kind. */
const pieces = ({ lines }: PartPicture, kind?: string): readonly (readonly [Point, Point])[] =>
  lines
    .filter((line) => kind === undefined || line.kind === kind)
    .flatMap(({ points }) => points.slice(1).map((to, i) => [points[i]!, to] as const));
const lengths = (all: readonly (readonly [Point, Point])[]): readonly number[] =>
  all.map(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y)).toSorted((a, b) => a - b);
/** Whether a line of the picture passes within a distance of a point [mm on paper]. */
const passes = (picture: PartPicture, { x, y }: Point, within = 0.1): boolean =>
  pieces(picture).some(([a, b]) => {
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(a.x + share * dx - x, a.y + share * dy - y) < within;
  });
const toneAt = ({ tones }: PartPicture, { x, y }: Point): number =>
  tones.pixels[
    Math.floor(y * tones.pixelsPerMm + tones.margin) * tones.width + Math.floor(x * tones.pixelsPerMm + tones.margin)
  ]!;

const stop = () => {
  throw new Error('enough');
};
/** Zigzags on the top of a box, each a little longer than the one before. */
const zigzag = (row: number) =>
  Array.from({ length: 251 }, (_, i) => ({ x: 0.2 + (0.3 + row / 5000) * i, y: 0.2 + 0.3 * row + (i % 2), z: 10 }));

const ON_GRID = {
  abs: 0.03,
  because: 'ends of lines are found to a fraction of a pixel of 1/6 mm, and kept within 0.02 mm',
};

/*
 * By hand, from memory of ISO 5456-3: axes at 7° and 42° to the horizontal, lengths full, half and, upwards, full. A box of
 * 40 × 20 × 10 at 2 : 1 has edges of 80, 20 and 20 mm on paper; it is 80 cos 7° + 20 cos 42° wide and
 * 80 sin 7° + 20 sin 42° + 20 high.
 */
describe('the picture of a box', () => {
  const picture = draw(boxMesh(40, 20, 10));
  const [seven, fortyTwo] = [(7 * Math.PI) / 180, (42 * Math.PI) / 180];

  it('is drawn at the largest recommended scale that has room', () => {
    expect(picture.placing.scale).toBe(2);
    expectClose(picture.placing.width, 80 * Math.cos(seven) + 20 * Math.cos(fortyTwo), { printedTo: 9 });
    expectClose(picture.placing.height, 80 * Math.sin(seven) + 20 * Math.sin(fortyTwo) + 20, { printedTo: 9 });
    expect(draw(boxMesh(40, 20, 10), { room: { width: 90, height: 60 } }).placing.scale).toBe(1);
    expect(draw(boxMesh(400, 20, 10), { room: { width: 90, height: 60 } }).placing.scale).toBe(0.2);
  });

  it('has nine edges: six round it, three inside', () => {
    const six = lengths(pieces(picture, 'silhouette'));
    const three = lengths(pieces(picture, 'edge'));
    [20, 20, 20, 20, 80, 80].forEach((length, i) => expectClose(six[i]!, length, ON_GRID));
    [20, 20, 80].forEach((length, i) => expectClose(three[i]!, length, ON_GRID));
    expect([six.length, three.length]).toEqual([6, 3]);
    expect(picture.lines[0]?.points[0]).toEqual(picture.lines[0]?.points.at(-1));
  });

  it('runs along its axes: down to the right at 7°, up to the right at 42°, and upright', () => {
    const slopes = pieces(picture).map(([a, b]) => Math.atan2(b.y - a.y, b.x - a.x));
    const axes = [seven, -fortyTwo, Math.PI / 2].flatMap((angle) => [angle, angle - Math.PI, angle + Math.PI]);
    for (const slope of slopes) {
      const off = Math.min(...axes.map((axis) => Math.abs(slope - axis)));
      expectClose(off, 0, { abs: 0.003, because: 'ends of lines of 20 mm are kept within 0.02 mm each' });
    }
  });

  it('places points: the near upper corner lies where its three inner edges meet', () => {
    const corner = toPicture(picture.placing, { x: 40, y: 0, z: 10 });
    expectClose(corner.x, 80 * Math.cos(seven), { printedTo: 9 });
    expectClose(corner.y, 20 * Math.sin(fortyTwo) + 80 * Math.sin(seven), { printedTo: 9 });
    const ends = pieces(picture, 'edge').flat();
    expect(ends.filter(({ x, y }) => Math.hypot(x - corner.x, y - corner.y) < 0.05)).toHaveLength(3);
  });

  it('has its top lightest and its right side darkest, and paper round it', () => {
    const at = (x: number, y: number, z: number) => toneAt(picture, toPicture(picture.placing, { x, y, z }));
    const [top, front, right] = [at(20, 10, 10), at(20, 0, 5), at(40, 10, 5)];
    expect(top).toBe(1);
    expect(front).toBeGreaterThan(top);
    expect(right).toBeGreaterThan(front);
    expect(toneAt(picture, { x: 1, y: 1 })).toBe(0);
  });

  it('lies with its longer side across, turned and not mirrored', () => {
    const deep = draw(boxMesh(20, 40, 10));
    expect(lengths(pieces(deep)).map(Math.round)).toEqual(lengths(pieces(picture)).map(Math.round));
    // Its side at x = 20 is in front now, so that y runs to the right and x towards the eye.
    expect(toPicture(deep.placing, { x: 20, y: 0, z: 10 }).x).toBeCloseTo(0, 9);
    expect(deep.marks).toEqual([]);
  });

  it.each(PLATE_UPS)('stands with %s upwards', (up) => {
    const standing = drawPart(boxMesh(40, 20, 10), up, { room: ROOM }, () => undefined);
    const upright = { x: 10, y: 20, z: 10, ['+z']: 10, ['-z']: 10, ['+x']: 40, ['-x']: 40, ['+y']: 20, ['-y']: 20 }[up];
    const plumb = pieces(standing).filter(([a, b]) => Math.abs(a.x - b.x) < 0.03);
    expect(plumb).toHaveLength(3);
    for (const length of lengths(plumb)) expectClose(length, upright * standing.placing.scale, ON_GRID);
    expect(pieces(standing)).toHaveLength(9);
  });
});

describe('what is hidden', () => {
  const plate = rectangle(0, 0, 40, 2);

  it('is not drawn: a block behind a plate', () => {
    const wall = pulledUp(plate, 0, 30);
    const picture = draw(together(wall, shifted(boxMesh(6, 4, 6), 10, 4, 5)));
    expect(pieces(picture)).toHaveLength(9);
    for (const [x, y, z] of [
      [13, 4, 11],
      [16, 6, 11],
      [13, 4, 5],
      [10, 4, 8],
    ] as const) {
      expect(passes(picture, toPicture(picture.placing, { x, y, z }))).toBe(false);
    }
  });

  it('is cut off where it goes behind, to a fraction of a line', () => {
    // A rod behind a plate comes out above its upper edge.
    const picture = draw(together(pulledUp(plate, 0, 20), shifted(boxMesh(4, 4, 40), 10, 4, 0)));
    const plumb = pieces(picture).filter(([a, b]) => Math.abs(a.x - b.x) < 0.03);
    const { placing } = picture;
    // The front left edge of the rod, and the upper edge of the plate's back, which it meets on paper.
    const x = toPicture(placing, { x: 10, y: 4, z: 0 }).x;
    const back = [toPicture(placing, { x: 0, y: 2, z: 20 }), toPicture(placing, { x: 40, y: 2, z: 20 })] as const;
    const meets = back[0].y + ((x - back[0].x) / (back[1].x - back[0].x)) * (back[1].y - back[0].y);
    const edge = plumb.flat().filter((point) => Math.abs(point.x - x) < 0.03);
    expectClose(Math.max(...edge.map(({ y }) => y)), meets, {
      abs: 0.02,
      because: 'the end is halved eight times between places 1/8 mm apart, and the line kept within 0.02 mm',
    });
  });

  it('shows through a hole, and not beside it', () => {
    const frame = pulledUp(rectangle(0, 0, 40, 40), 0, 2, [rectangle(10, 10, 20, 20).toReversed()]);
    const picture = draw(together(frame, shifted(boxMesh(16, 16, 1), 12, 12, -2)));
    const at = (x: number, y: number, z: number) => passes(picture, toPicture(picture.placing, { x, y, z }));
    // The far edge of the block below lies under the hole; its near one under the frame.
    expect(at(20, 28, -1)).toBe(true);
    expect(at(20, 12, -1)).toBe(false);
  });

  it('is told of marks, which may lie within the part', () => {
    const wall = pulledUp(plate, 0, 30);
    const { marks } = draw(wall, {
      marks: [
        { at: { x: 20, y: 0, z: 15 }, within: 0 },
        { at: { x: 20, y: 2, z: 15 }, within: 0 },
        { at: { x: 20, y: 1, z: 15 }, within: 2 },
        { at: { x: 20, y: 20, z: 15 }, within: 2 },
      ],
    });
    expect(marks.map(({ isHidden }) => isHidden)).toEqual([false, true, false, true]);
    const { placing } = draw(wall);
    expect(marks[0]).toMatchObject(toPicture(placing, { x: 20, y: 0, z: 15 }));
  });

  it('leaves two sides of a line round a box', () => {
    const trace = [
      { x: 0, y: 0, z: 5 },
      { x: 40, y: 0, z: 5 },
      { x: 40, y: 20, z: 5 },
      { x: 0, y: 20, z: 5 },
      { x: 0, y: 0, z: 5 },
    ];
    const picture = draw(boxMesh(40, 20, 10), { traces: [trace, [], [trace[0]!]] });
    const seen = lengths(pieces(picture, 'trace'));
    expect(seen).toHaveLength(2);
    [20, 80].forEach((length, i) => expectClose(seen[i]!, length, ON_GRID));
  });
});

describe('the picture of', () => {
  it('a round pin has its outline and the rim of its top, and no lines between its facets', () => {
    const sides = 60;
    const picture = draw(pulledUp(arc(0, 0, 10, 0, 2 * Math.PI, sides).slice(0, sides), 0, 30));
    const plumb = pieces(picture).filter(([a, b]) => Math.abs(a.x - b.x) < 0.03 && Math.abs(a.y - b.y) > 10);
    expect(plumb).toHaveLength(2);
    expect(pieces(picture, 'edge').length).toBeLessThan(sides);
  });

  it('an open tray shows its inside, in a tone of its own, and its rim', () => {
    const box = boxMesh(40, 20, 10);
    const tray = { points: box.points, corners: box.corners.filter((_, i) => i < 6 || i >= 12) };
    const picture = draw(tray);
    expect(toneAt(picture, toPicture(picture.placing, { x: 20, y: 20, z: 6 }))).toBe(INSIDE_TONE);
    expect(lengths(pieces(picture, 'silhouette')).filter((length) => length > 79)).toHaveLength(3);
  });

  it('a sharp edge through slivers is drawn as through none', () => {
    // The upper front edge of a box, with a flat triangle let in.
    const box = boxMesh(40, 20, 10);
    const corners = [...box.corners].flatMap((c, i) =>
      i === 15 ? [0, 5, 8, 8, 5, 4, 0, 8, 4] : i > 15 && i < 18 ? [] : [c],
    );
    const split = { points: Float64Array.from([...box.points, 20, 0, 5]), corners: Uint32Array.from(corners) };
    expect(pieces(draw(split))).toHaveLength(9);
  });

  it('nothing is empty paper', () => {
    const none = draw({ points: new Float64Array(), corners: new Uint32Array() });
    expect([none.lines, none.isCut, none.tones.pixels.some((tone) => tone > 0)]).toEqual([[], false, false]);
  });

  it('a part seen on edge, or a single point, is no more than a line', () => {
    expect(draw(looseMesh([1, 1, 1, 1, 1, 1, 1, 1, 1])).lines).toEqual([]);
    expect(() => draw(looseMesh([0, 0, 0, 9, 0, 0, 4, 0, 0]))).not.toThrow();
  });
});

/** A ball of so many rings, with twice as many facets round. */
const ball = (rings: number): TriangleMesh => {
  const ring = (i: number) =>
    arc(0, 0, 50 * Math.sin((Math.PI * i) / rings), 0, 2 * Math.PI, 2 * rings).slice(0, 2 * rings);
  const points = Array.from({ length: rings - 1 }, (_, i) =>
    ring(i + 1).flatMap(({ x, y }) => [x, y, 50 * Math.cos((Math.PI * (i + 1)) / rings)]),
  ).flat();
  const at = (i: number, j: number) => 2 * rings * i + (j % (2 * rings));
  const corners = Array.from({ length: rings - 2 }, (_, i) =>
    Array.from({ length: 2 * rings }, (_ignored, j) =>
      [
        [at(i, j), at(i + 1, j), at(i + 1, j + 1)],
        [at(i, j), at(i + 1, j + 1), at(i, j + 1)],
      ].flat(),
    ),
  ).flat(2);
  return { points: Float64Array.from(points), corners: Uint32Array.from(corners) };
};

describe('drawing', () => {
  it('takes a fine ball for the ellipse that it looks like', () => {
    const picture = draw(ball(100));
    const outline = picture.lines.filter(({ kind }) => kind === 'silhouette');
    expect(outline[0]!.points.length).toBeLessThan(300);
    expect(pieces(picture, 'edge')).toEqual([]);
  });

  it('gives signs of life, and gives up where told to', () => {
    let signs = 0;
    drawPart(ball(100), '+z', { room: ROOM }, () => (signs += 1));
    expect(signs).toBeGreaterThan(5);
    expect(() => drawPart(ball(20), '+z', { room: ROOM }, stop)).toThrow('enough');
  });

  it('draws no more than a picture can hold, the longest first, and says so', () => {
    const { isCut, lines } = draw(boxMesh(100, 100, 10), {
      traces: Array.from({ length: 300 }, (_, row) => zigzag(row)),
    });
    const corners = lines.reduce((sum, { points }) => sum + points.length, 0);
    expect([isCut, corners <= 60_000, corners > 59_000]).toEqual([true, true, true]);
    const traces = lines.filter(({ kind }) => kind === 'trace').map(({ points }) => points.at(-1)!.x - points[0]!.x);
    expect(traces.every((length, i) => i === 0 || length < traces[i - 1]!)).toBe(true);
  });

  it('draws loose triangles without a name for what is in and out', () => {
    const soup = looseMesh(
      ...Array.from({ length: 1000 }, (_, i) => [...Array(9).keys()].map((k) => (i * 7919 * (k + 3) ** 2) % 97)),
    );
    expect(draw(soup).lines.length).toBeGreaterThan(100);
  });

  it('lays a grid no finer than it can hold', () => {
    const { tones } = draw(boxMesh(40, 20, 10), { pixelsPerMm: 1000 });
    expect(tones.pixels.length).toBeLessThan(2.2e6);
    expect(tones.pixels.length).toBe(tones.width * tones.height);
  });
});

describe('a simpler line', () => {
  it('keeps what is farther from the chord than it may be', () => {
    const line = [0, 1, 2, 3, 4].map((x) => ({ x, y: [0, 0.501, 1, 0.499, 0][x]! }));
    expect(simplerLine(line, 0.01).map(({ x }) => x)).toEqual([0, 2, 4]);
    expect(simplerLine(line, 2).map(({ x }) => x)).toEqual([0, 4]);
    expect(simplerLine(line, 0)).toHaveLength(5);
  });

  it('of a closed way stays closed', () => {
    const square = [0, 1, 2, 3, 0].map((i) => ({ x: [0, 1, 1, 0][i]!, y: [0, 0, 1, 1][i]! }));
    expect(simplerLine(square, 0.1)).toHaveLength(5);
  });
});
