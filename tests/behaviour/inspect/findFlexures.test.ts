import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { unite } from '../../../src/core/geometry/clipping.ts';
import type { Point } from '../../../src/core/geometry/outline.ts';
import { findFlexures } from '../../../src/core/inspect/findFlexures.ts';
import type { PartFindings } from '../../../src/core/inspect/flexure.ts';
import { expectClose } from '../../support/close.ts';
import { boxMesh } from '../../support/meshes.ts';
import { arc, leafOutline, placedMesh, pulledUp, rectangle, together } from '../../support/solids.ts';

const UP = { x: 0, y: 0, z: 1 };
const find = (mesh: TriangleMesh, thickest = 3.4): PartFindings => findFlexures(mesh, { thickest, build: UP });
const LEAF = { thickness: 0.84, length: 6, fillet: 1, pad: 12, height: 12, facets: 8 };

/** A box with walls and a floor, open at the top: one outline for the floor, one with a hole for the walls, as one body. */
function tray(wall: number, floor: number): TriangleMesh {
  const outer = rectangle(0, 0, 50, 30);
  const inner = rectangle(wall, wall, 50 - 2 * wall, 30 - 2 * wall).toReversed();
  return together(pulledUp(outer, 0, floor), pulledUp(outer, floor, 20, [inner]));
}

/** A hollow box: its inside is a box that looks inwards. */
function hollow(wall: number): TriangleMesh {
  const outside = boxMesh(40, 30, 20);
  const inside = boxMesh(40 - 2 * wall, 30 - 2 * wall, 20 - 2 * wall);
  const turned = {
    points: inside.points.map((value) => value + wall),
    corners: inside.corners.map((_, i) => inside.corners[3 * Math.floor(i / 3) + [0, 2, 1][i % 3]!]!),
  };
  return together(outside, turned);
}

/** Clockwise, as a hole is. */
const circle = (x: number, y: number, r: number) => arc(x, y, r, 0, -2 * Math.PI, 32).slice(0, -1);

const stop = () => {
  throw new Error('enough');
};

describe('what is no flexure', () => {
  it.each<[string, TriangleMesh]>([
    ['a block', boxMesh(40, 20, 10)],
    ['a plate', boxMesh(80, 60, 2)],
    ['a rod', boxMesh(60, 2, 2)],
    ['a thin-walled tray', tray(1.2, 1.2)],
    ['a thin-walled tray on a thick floor', tray(1.2, 5)],
    ['a thin-walled hollow box', hollow(1.2)],
    ['a tube', pulledUp(circle(0, 0, 10).toReversed(), 0, 30, [circle(0, 0, 9)])],
    ['a thick plate with a slot', pulledUp(rectangle(0, 0, 60, 20), 0, 6, [rectangle(10, 9.6, 40, 0.8).toReversed()])],
    ['a slit open at one end', pulledUp(slit(), 0, 6)],
    [
      'two bodies with a gap between them',
      together(boxMesh(20, 12, 8), placedMesh(boxMesh(20, 12, 8), { axis: [0, 0, 1], angle: 0, shift: [20.5, 0, 0] })),
    ],
    ['a screw hole near the edge of a bracket', pulledUp(rectangle(0, 0, 40, 12), 0, 5, [circle(34, 6, 4.2)])],
    ['an eye', pulledUp(rectangle(0, 0, 40, 12), 0, 5, [circle(33.5, 6, 4.6)])],
    ['a grille in a frame', grille(9, 8)],
    ['a fin on a block', pulledUp(fin(), 0, 8)],
    ['a wall with fillets at its foot', pulledUp(fin(), 0, 8)],
  ])('%s', (_, mesh) => {
    const { flexures, isCut } = find(mesh);
    expect(flexures).toEqual([]);
    expect(isCut).toBe(false);
  });

  it('a fine grille in a frame, though it does not look at every bar', () => {
    expect(find(grille(3, 20)).flexures).toEqual([]);
  });

  it('says what it passed over, and why', () => {
    const { passedOver } = find(pulledUp(fin(), 0, 8));
    expect(passedOver.map(({ why }) => why)).toEqual(['free-end']);
    expectClose(passedOver[0]!.thickness, 1, { rel: 0.02, because: 'what is asked of the finder' });
    expect(find(tray(1.2, 5)).passedOver.map(({ why }) => why)).toContain('held-at-side');
    expect(
      find(pulledUp(rectangle(0, 0, 40, 12), 0, 5, [circle(34, 6, 4.2)])).passedOver.map(({ why }) => why),
    ).toContain('ring');
  });
});

/** Bars 0.8 mm thick that cross every so many millimetres, in a frame 10 mm wide. */
function grille(pitch: number, count: number): TriangleMesh {
  const size = pitch * count;
  const holes = Array.from({ length: count ** 2 }, (_, i) =>
    rectangle(pitch * (i % count), pitch * Math.floor(i / count), pitch - 0.8, pitch - 0.8).toReversed(),
  );
  return pulledUp(rectangle(-10, -10, size + 19.2, size + 19.2), 0, 3, holes);
}

/** A block with a slit that comes in from one side. */
function slit(): readonly Point[] {
  return [
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 20 },
    { x: 0, y: 20 },
    { x: 0, y: 10.4 },
    { x: 40, y: 10.4 },
    { x: 40, y: 9.6 },
    { x: 0, y: 9.6 },
  ];
}

/** A block that carries a wall 1 mm thick and 10 mm high. */
function fin(): readonly Point[] {
  return [
    { x: 0, y: 0 },
    { x: 30, y: 0 },
    { x: 30, y: 10 },
    { x: 15.5, y: 10 },
    { x: 15.5, y: 20 },
    { x: 14.5, y: 20 },
    { x: 14.5, y: 10 },
    { x: 0, y: 10 },
  ];
}

describe('kinds', () => {
  it('calls two round notches a neck, its length that of both notches', () => {
    const r = 3;
    const t = 0.8;
    const y = t / 2 + r;
    const outline = [
      { x: -15, y: -8 },
      { x: -r, y: -8 },
      ...arc(0, -y, r, Math.PI, 0, 32),
      { x: r, y: -8 },
      { x: 15, y: -8 },
      { x: 15, y: 8 },
      { x: r, y: 8 },
      ...arc(0, y, r, 0, -Math.PI, 32),
      { x: -r, y: 8 },
      { x: -15, y: 8 },
    ];
    const { flexures } = find(pulledUp(outline, 0, 5));
    expect(flexures.map(({ kind, isCurved }) => [kind, isCurved])).toEqual([['neck', false]]);
    const [neck] = flexures;
    expectClose(neck!.thickness.least, t, { rel: 0.02, because: 'what is asked of the finder' });
    expectClose(neck!.length, 2 * r, { rel: 0.1, because: 'what is asked of the finder' });
    for (const root of neck!.roots) expectClose(root.fillet, r, { rel: 0.05, because: 'facets are chords' });
  });

  it('calls what winds by more than a third of a turn a spiral run', () => {
    const turns = 1.25;
    const [inner, outer] = [5, 15];
    const radius = (a: number) => inner + ((outer - inner) * a) / (2 * Math.PI * turns);
    const steps = 200;
    const side = (off: number) =>
      Array.from({ length: steps + 1 }, (_, i) => {
        const a = (2 * Math.PI * turns * i) / steps;
        const r = radius(a) + off;
        return { x: r * Math.cos(a), y: r * Math.sin(a) };
      });
    // The hub reaches a little into the run, the rim likewise: overlapping bodies are one.
    const run = pulledUp([...side(0.5), ...side(-0.5).toReversed()], 0, 5);
    const hub = pulledUp(arc(0, 0, 5.2, 0, 2 * Math.PI, 48).slice(0, -1), 0, 5);
    const rim = pulledUp(arc(0, 0, 22, 0, 2 * Math.PI, 48).slice(0, -1), 0, 5, [
      arc(0, 0, 14.9, 0, -2 * Math.PI, 96).slice(0, -1),
    ]);
    const { flexures } = find(together(run, hub, rim));
    expect(flexures.map(({ kind, isCurved }) => [kind, isCurved])).toEqual([['spiral run', true]]);
    // It is 1 mm thick along the radius; square to the run that is less, least where it leaves the hub.
    const slope = (outer - inner) / (2 * Math.PI * turns);
    const least = Math.cos(Math.atan(slope / 5.6));
    expectClose(flexures[0]!.thickness.least, least, { rel: 0.01, because: 'the hub is left between radii 5.2 and 6' });
  });

  it('finds two grooves that nearly meet, as long as they are no more than twice as thick', () => {
    const outline = [
      { x: -15, y: -5 },
      { x: -4, y: -5 },
      { x: 0, y: -0.4 },
      { x: 4, y: -5 },
      { x: 15, y: -5 },
      { x: 15, y: 5 },
      { x: 4, y: 5 },
      { x: 0, y: 0.4 },
      { x: -4, y: 5 },
      { x: -15, y: 5 },
    ];
    const { flexures } = find(pulledUp(outline, 0, 10));
    expect(flexures.map(({ kind }) => kind)).toEqual(['neck']);
    expectClose(flexures[0]!.thickness.least, 0.8, { rel: 1e-4, because: 'the distance of two corners' });
    // Each wall climbs 4.6 in 4, so that it has gained 0.4 after 0.348.
    expectClose(flexures[0]!.length, (2 * 0.4 * 4) / 4.6, { rel: 0.02, because: 'straight walls' });
  });

  it('measures leaves that cross at a sharp angle up to where they meet, and no neck between', () => {
    for (const half of [Math.PI / 6, 0.22]) {
      const lean = (side: 1 | -1) => {
        const [dx, dy] = [Math.sin(half) * side, Math.cos(half)];
        return [
          [-16, -0.42],
          [16, -0.42],
          [16, 0.42],
          [-16, 0.42],
        ].map(([s = 0, t = 0]) => ({ x: s * dx + t * dy, y: s * dy - t * dx }));
      };
      const loops = unite([
        rectangle(-20, -22, 40, 10),
        rectangle(-20, 12, 40, 10),
        lean(1).toReversed(),
        lean(-1).toReversed(),
      ]);
      const [outer, ...holes] = loops.toSorted((a, b) => b.length - a.length);
      const { flexures } = find(pulledUp(outer!, 0, 6, holes));
      expect(flexures.length).toBe(4);
      for (const { thickness, length, kind } of flexures) {
        expect(kind).toBe('leaf');
        expectClose(thickness.least, 0.84, { rel: 0.02, because: 'what is asked of the finder' });
        expectClose(length, 12 / Math.cos(half), { rel: 0.1, because: 'what is asked of the finder' });
      }
    }
  });

  it('takes a folded leaf for one that runs on, as thick in its bends as between them', () => {
    const path = [
      [0, 5],
      [4, 5],
      [4, 25],
      [8, 25],
      [8, 5],
      [12, 5],
      [12, 25],
      [16, 25],
    ] as const;
    const bands = path.slice(1).map(([x, y], i) => {
      const [px, py] = path[i]!;
      const [left, low] = [Math.min(x, px) - 0.42, Math.min(y, py) - 0.42];
      return rectangle(left, low, Math.abs(x - px) + 0.84, Math.abs(y - py) + 0.84);
    });
    const [outline] = unite([rectangle(-10, 0, 10, 30), rectangle(16, 0, 10, 30), ...bands]);
    const { flexures } = find(pulledUp(outline!, 0, 6));
    expect(flexures.map(({ kind, isCurved }) => [kind, isCurved])).toEqual([['leaf', true]]);
    expectClose(flexures[0]!.thickness.least, 0.84, { rel: 0.02, because: 'what is asked of the finder' });
    expectClose(flexures[0]!.length, 76, { rel: 0.1, because: 'what is asked of the finder' });
  });

  it('finds every bridge of a panel of cells', () => {
    const cells = [0, 1, 2, 3].flatMap((i) => [0, 1, 2].map((j) => rectangle(10 * i, 10 * j, 6, 6)));
    const across = [0, 1, 2].flatMap((i) => [0, 1, 2].map((j) => rectangle(10 * i + 5.9, 10 * j + 2.6, 4.2, 0.84)));
    const up = [0, 1, 2, 3].flatMap((i) => [0, 1].map((j) => rectangle(10 * i + 2.6, 10 * j + 5.9, 0.84, 4.2)));
    const [outer, ...holes] = unite([...cells, ...across, ...up]).toSorted((a, b) => b.length - a.length);
    const { flexures, pads } = find(pulledUp(outer!, 0, 3, holes));
    expect(pads).toBe(12);
    expect(flexures.length).toBe(17);
    for (const { length } of flexures) expectClose(length, 4, { rel: 0.02, because: 'sharp roots' });
  });

  it('finds both parts of a hinge that is broken off and goes on, stubby as they are', () => {
    const pads = [rectangle(-21, -6, 20.1, 12), rectangle(0.9, -6, 20.1, 12)].map((pad) => pulledUp(pad, 0, 30));
    const strips = [0, 20].map((low) => pulledUp(rectangle(-1, -0.4, 2, 0.8), low, low + 10));
    const { flexures, pads: count } = find(together(...pads, ...strips));
    expect(count).toBe(2);
    expect(flexures.length).toBe(2);
    for (const { depth, isInLoop } of flexures) {
      expectClose(depth, 10, { rel: 0.02, because: 'what is asked of the finder' });
      expect(isInLoop).toBe(true);
    }
  });

  it('calls what is thin in the build direction a crease, and the same part on its side a leaf', () => {
    const flat = placedMesh(pulledUp(leafOutline(LEAF), 0, 8), {
      axis: [1, 0, 0],
      angle: Math.PI / 2,
      shift: [0, 0, 0],
    });
    expect(find(flat).flexures.map(({ kind }) => kind)).toEqual(['crease']);
    expect(find(pulledUp(leafOutline(LEAF), 0, 8)).flexures.map(({ kind }) => kind)).toEqual(['leaf']);
  });
});

describe('what it joins', () => {
  it('tells sharp roots from fillets, and how thick the pads are', () => {
    const [leaf] = find(pulledUp(leafOutline({ ...LEAF, fillet: 0 }), 0, 8)).flexures;
    expect(leaf!.roots.map(({ fillet }) => fillet)).toEqual([0, 0]);
    for (const root of leaf!.roots) expectClose(root.shoulder, 12, { rel: 1e-6, because: 'plain walls' });
    expect(leaf!.roots.map(({ joins }) => joins)).toEqual([
      { kind: 'pad', pad: 0 },
      { kind: 'pad', pad: 1 },
    ]);
  });

  it('tells each root by itself', () => {
    const [leaf] = find(
      pulledUp(
        [
          { x: -16, y: -5 },
          { x: -4, y: -5 },
          ...arc(-3, -1.42, 1, Math.PI, Math.PI / 2, 8),
          { x: 4, y: -0.42 },
          { x: 4, y: -5 },
          { x: 16, y: -5 },
          { x: 16, y: 5 },
          { x: 4, y: 5 },
          { x: 4, y: 0.42 },
          ...arc(-3, 1.42, 1, -Math.PI / 2, -Math.PI, 8),
          { x: -4, y: 5 },
          { x: -16, y: 5 },
        ],
        0,
        6,
      ),
    ).flexures;
    expectClose(leaf!.roots[0].fillet, 1, { rel: 0.05, because: 'facets of a fillet are chords of it' });
    expect(leaf!.roots[1].fillet).toBe(0);
    expectClose(leaf!.length, 8, { rel: 0.02, because: 'one fillet is cut at 75°' });
  });

  it('leaves out what is thicker than asked, and says so of what shows beside a thinner one', () => {
    const thin = pulledUp(leafOutline({ ...LEAF, thickness: 0.5 }), 0, 8);
    const thick = placedMesh(pulledUp(leafOutline(LEAF), 0, 8), { axis: [0, 0, 1], angle: 0, shift: [0, 30, 0] });
    const { flexures, passedOver } = find(together(thin, thick), 0.7);
    expect(flexures.length).toBe(1);
    expectClose(flexures[0]!.thickness.least, 0.5, { rel: 0.02, because: 'what is asked of the finder' });
    expect(passedOver.map(({ why }) => why)).toEqual(['too-thick']);
    expect(find(thick, 0.5).flexures).toEqual([]);
  });

  it('gives nothing for an empty mesh, and stops when told to', () => {
    const nothing = { points: new Float64Array(0), corners: new Uint32Array(0) };
    expect(find(nothing)).toEqual({ flexures: [], passedOver: [], sections: [], pads: 0, isCut: false });
    expect(() => findFlexures(boxMesh(1, 2, 3), { thickest: 1, build: UP }, stop)).toThrow('enough');
  });
});
