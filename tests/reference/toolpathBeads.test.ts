/**
 * Source [bead-section]: beads written by the tests' own generator from the area of a rectangle, a circle and an ellipse, with
 * widths, places, heights and ends set by hand. Fair, because the program under test has no part in writing them: it gets
 * moves, or text, and has to come back to the figures that were set.
 */
import { describe, expect, it } from 'vitest';
import type { PlaceAudit } from '../../src/core/inspect/toolpath/audit.ts';
import { auditPlace } from '../../src/core/inspect/toolpath/auditPlace.ts';
import type { Place } from '../../src/core/inspect/toolpath/place.ts';
import { bytesSource } from '../../src/files/gcode/byteSource.ts';
import { checkGcode } from '../../src/files/gcode/checkGcode.ts';
import { expectClose } from '../support/close.ts';
import { creasePart, DIAMETER, leafPart, uprightPart, type LaidPart, type LeafLayer } from '../support/laidParts.ts';
import { carried, gcodeOf, nearOf, rolled, turned, type Writing } from '../support/toolpaths.ts';

const EXACT = { rel: 1e-9, because: 'round-off through a feed and back' } as const;
/** Places are written to a nanometre, of which a layer of 0.2 mm and a line of 0.08 mm feel a hundred-thousandth at most. */
const WRITTEN = { rel: 1e-5, because: 'places that the text is written to' } as const;
const PLACED = { abs: 0.05, because: 'a tenth of a line: enough to find it on the part' } as const;

const plain: LeafLayer = { contours: [0.42] };
const audited = ({ toolpath, place }: LaidPart): PlaceAudit => auditPlace(place, nearOf(toolpath), DIAMETER);

/** From the text, read by the program's own reader. */
async function auditedFromText({ toolpath, place }: LaidPart, writing: Writing): Promise<PlaceAudit> {
  const bytes = new TextEncoder().encode(gcodeOf(toolpath, writing));
  const heard = { alive: () => undefined, say: () => undefined };
  const read = await checkGcode(bytesSource(bytes), { thickest: 2.5, diameter: DIAMETER, boxes: [place] }, heard);
  if (!read.ok) throw new Error(read.problems[0].message);
  const one = read.value.places.at(-1)!;
  return auditPlace(one.place, one.near, read.value.filament.diameter);
}

/** Two lines, four, a squeezed third, a broken one, a wider first layer, a start on it, a dropped neck. */
const MIXED = leafPart({
  length: 12,
  thickness: 0.84,
  height: 0.2,
  layers: [
    { contours: [0.45] },
    plain,
    { contours: [0.38], middle: [[0, 12, 0.08]] },
    { contours: [0.3], middle: [[0, 4, 0.2], [4, 7, 0.24], [8.5, 12, 0.16]] }, // prettier-ignore
    { contours: [0.42], start: 4.3 },
    { contours: [0.42], isDropped: true },
    { contours: [0.42], start: 8.05 },
    { contours: [0.21, 0.21] },
  ],
});

function expectMixed(audit: PlaceAudit, allowance: typeof EXACT | typeof WRITTEN): void {
  const [first, second, squeezed, broken, , dropped, , four] = audit.layers;
  expect(audit.layers.map(({ lines }) => [lines.least, lines.usual, lines.most])).toEqual([
    [2, 2, 2],
    [2, 2, 2],
    [3, 3, 3],
    [2, 3, 3],
    [2, 2, 2],
    [0, 0, 0],
    [2, 2, 2],
    [4, 4, 4],
  ]);
  for (const [i, { z, height }] of audit.layers.entries()) {
    expectClose(z, 0.2 * (i + 1), allowance);
    expectClose(height, 0.2, allowance);
  }
  expectClose(first!.widths!.mean, 0.45, allowance);
  expectClose(second!.widths!.least, 0.42, allowance);
  expectClose(second!.thickness, 0.84, allowance);
  expectClose(squeezed!.widths!.least, 0.08, allowance);
  expectClose(squeezed!.widths!.most, 0.38, allowance);
  expectClose(broken!.widths!.least, 0.16, allowance);
  expectClose(broken!.widths!.most, 0.3, allowance);
  expectClose(four!.widths!.mean, 0.21, allowance);
  expect(dropped!.widths).toBeUndefined();
  expect(audit.layers.flatMap(({ layer, starts }) => (starts.length > 0 ? [layer] : []))).toEqual([5, 7]);
  expectClose(audit.layers[4]!.starts[0]!.at, 4.3, PLACED);
  expectClose(audit.layers[6]!.starts[0]!.at, 8.05, PLACED);
  expect(broken!.stops.map(({ at }) => Number(at.toFixed(3)))).toEqual([7, 8.5]);
}

describe('beads across a leaf', () => {
  it('counts and measures lines, layers, starts and stops from moves', () => {
    expectMixed(audited(MIXED), EXACT);
  });

  it.each<readonly [string, Writing]>([
    ['as it is mostly written', { relativeFeed: true }],
    ['in inches', { inch: true }],
    ['with filament as volume, in pieces, with numbers of lines', { volumetric: true, pieces: 3, numbered: true }],
  ])('comes to the same from text %s', async (_how, writing) => {
    expectMixed(await auditedFromText(MIXED, writing), WRITTEN);
  });

  it('measures gaps square to the run, and where they are to half a step of its cuts', () => {
    const [open, broken] = audited(
      leafPart({
        length: 12,
        thickness: 1,
        height: 0.2,
        layers: [plain, { contours: [0.42], middle: [[0, 5, 0.16], [7, 12, 0.16]] }], // prettier-ignore
      }),
    ).layers;
    const step = { abs: 0.125 + 1e-9, because: 'cut every 0.25 mm' } as const;
    expect(open!.open).toHaveLength(1);
    expectClose(open!.open[0]!.width, 0.16, EXACT);
    expectClose(open!.open[0]!.off, 0, { abs: 1e-9, because: 'round-off' });
    expect([open!.open[0]!.from, open!.open[0]!.to]).toEqual([0, 12]);
    const places = broken!.open.filter(({ width }) => width > 0.159);
    expect(places).toHaveLength(1);
    expectClose(places[0]!.from, 5, step);
    expectClose(places[0]!.to, 7, step);
  });

  it('takes lines that touch as touching, and those that overlap as stadiums do', () => {
    const layers = [plain, { contours: [0.43] }, { contours: [0.405] }];
    const audit = audited(leafPart({ length: 6, thickness: 0.84, height: 0.2, layers }));
    // 0.84 − 2 · 0.405 leaves 0.03 between the two.
    expect(audit.layers.map(({ open }) => open.length)).toEqual([0, 0, 1]);
    expectClose(audit.layers[2]!.open[0]!.width, 0.03, EXACT);
  });

  it('takes the height of a layer from the one below it at the section', () => {
    const part = leafPart({ length: 6, thickness: 0.84, height: 0.2, firstHeight: 0.3, layers: [plain, plain, plain] });
    // Something laid elsewhere at heights in between: told as half as high, which would make lines twice as wide.
    const near = nearOf(part.toolpath);
    const paths = near.paths.map((path) => (path.z > 0.31 ? { ...path, height: 0.11 } : path));
    const audit = auditPlace(part.place, { ...near, paths }, DIAMETER);
    expect(audit.layers.map(({ height }) => Number(height.toFixed(9)))).toEqual([0.3, 0.2, 0.2]);
    for (const { widths } of audit.layers) expectClose(widths!.mean, 0.42, EXACT);
  });

  it('puts in layers in which nothing is laid anywhere near', () => {
    const part = leafPart({ length: 6, thickness: 0.84, height: 0.2, layers: Array.from({ length: 7 }, () => plain) });
    const near = nearOf(part.toolpath);
    const paths = near.paths.filter(({ z }) => z < 0.5 || z > 0.9);
    const audit = auditPlace(part.place, { ...near, paths }, DIAMETER);
    expect(audit.layers.map(({ lines }) => lines.usual)).toEqual([2, 2, 0, 0, 2, 2, 2]);
    expectClose(audit.layers[3]!.z, 0.8, EXACT);
    expectClose(audit.layers[4]!.widths!.mean, 0.42, EXACT);
  });
});

describe('other ways to lie', () => {
  it('measures a leaf that is turned on the plate', () => {
    const place: Place = { ...MIXED.place, run: MIXED.place.run.map(turned(1.1, 40, -7)) };
    expectMixed(audited({ toolpath: carried(MIXED.toolpath, turned(1.1, 40, -7)), place }), EXACT);
  });

  it('measures along an arc', () => {
    const [length, radius] = [12, 9];
    const layers = [plain, { contours: [0.42], start: 5 }];
    const part = leafPart({ length, thickness: 0.84, height: 0.2, layers, isFilled: false });
    const fine = (n: number) => Array.from({ length: n + 1 }, (_, i) => rolled(radius)({ x: (length * i) / n, y: 0 }));
    const beads = part.toolpath.layers.map((layer) => ({
      ...layer,
      beads: layer.beads.map((bead) => ({
        ...bead,
        points: bead.points.flatMap((point, i) => alongTo(point, bead.points[i + 1])),
      })),
    }));
    const toolpath = carried({ ...part.toolpath, layers: beads }, rolled(radius));
    const audit = audited({ toolpath, place: { ...part.place, run: fine(200) } });
    const chords = {
      abs: 1e-3,
      because: 'chords of 0.06 mm on a radius of 9 mm: 2 µm off the arc are left out of the run',
    };
    expectClose(audit.length, length, chords);
    for (const layer of audit.layers) {
      expect([layer.lines.least, layer.lines.most]).toEqual([2, 2]);
      expectClose(layer.widths!.mean, 0.42, EXACT);
      expectClose(layer.thickness, 0.84, {
        abs: 5e-3,
        because: 'chords of the run leave up to 2 µm, its cuts turn by 1° from one to the next',
      });
      expect(layer.open).toEqual([]);
      expect(layer.along).toBeGreaterThan(0.99);
    }
    expectClose(audit.layers[1]!.starts[0]!.at, 5, PLACED);
  });

  it('cuts an upright leaf along its axis', () => {
    const audit = audited(
      uprightPart({ depth: 6, contours: [0.42], thickness: 0.84, padLayers: 3, leafLayers: 5, height: 0.2 }),
    );
    expect(audit.layers).toHaveLength(5);
    for (const layer of audit.layers) {
      expect([layer.lines.least, layer.lines.most]).toEqual([2, 2]);
      expectClose(layer.thickness, 0.84, EXACT);
      expectClose(layer.widths!.mean, 0.42, EXACT);
    }
  });

  it('counts layers through a crease, gaps between its lines, and tells which way they run', () => {
    const size = { length: 3, depth: 10, webLayers: 3, padLayers: 8, height: 0.2, width: 0.42, spacing: 0.42 };
    const over = audited(creasePart({ ...size, runs: 'over', without: [[2, 5]] }));
    expect(over.layers.map(({ lines }) => lines.usual)).toEqual([24, 23, 24]);
    expect(over.layers.map(({ open }) => open.length)).toEqual([0, 1, 0]);
    expectClose(over.layers[1]!.open[0]!.width, 0.42, EXACT);
    expectClose(over.layers[0]!.along, 1, EXACT);
    const fold = audited(creasePart({ ...size, runs: 'along the fold' }));
    expect(fold.layers.map(({ along }) => along)).toEqual([0, 0, 0]);
    expect(fold.layers.every(({ lines, open }) => lines.least > 0 && open.length === 0)).toBe(true);
  });

  it('takes each turn of a spiral as a layer, though its two sides are half a turn apart in height', () => {
    const part = leafPart({ length: 12, thickness: 0.84, height: 0.2, layers: [plain, plain, plain], isFilled: false });
    const paths = nearOf(part.toolpath).paths.flatMap((path) =>
      [2, 8].map((from, side) => ({
        ...path,
        z: path.z - 0.05 + 0.1 * side,
        points: path.points.slice(2 * from, 2 * from + 10),
        feeds: path.feeds.slice(from, from + 4),
        begins: false,
        ends: false,
      })),
    );
    const { layers } = auditPlace(part.place, { paths, travels: [], isCut: false }, DIAMETER);
    expect(layers.map(({ lines }) => [lines.least, lines.most])).toEqual([[2, 2], [2, 2], [2, 2]]); // prettier-ignore
    expect(layers.flatMap(({ starts, stops }) => [...starts, ...stops])).toEqual([]);
    for (const { widths, height } of layers) {
      expectClose(height, 0.2, EXACT);
      expectClose(widths!.mean, 0.42, EXACT);
    }
  });

  it('counts travel across it, and what of that is lifted', () => {
    const crossings = [[3, 0], [5, 0.4], [8, 0.04]] as const; // prettier-ignore
    const [layer] = audited(
      leafPart({ length: 12, thickness: 0.84, height: 0.2, layers: [{ contours: [0.42], crossings }] }),
    ).layers;
    expect([layer!.crossings, layer!.lifted]).toEqual([3, 1]);
  });
});

/** A corner, and points on the way to the next. */
function alongTo(from: { x: number; y: number }, to = from): readonly { x: number; y: number }[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 0.05));
  return Array.from({ length: count }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}
