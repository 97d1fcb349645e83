/** Parts with one thin section, laid with known beads: a leaf that lies flat, one that stands upright, and a crease. */
import type { Point } from '../../src/core/geometry/outline.ts';
import type { Place } from '../../src/core/inspect/toolpath/place.ts';
import type { Bead, Hop, Layer, Toolpath } from './toolpaths.ts';

/** What is laid in one layer of a leaf that runs along x, its middle at y = 0. */
export interface LeafLayer {
  /** Widths of its contours from the outside in; each lays two lines. The outer side of the first is where the leaf is drawn. */
  readonly contours: readonly number[];
  /** Where its outer contour starts: on the upper side of the leaf so far from the first root [mm]; else on the far face of a pad. */
  readonly start?: number;
  /** A line along the middle: from, to and width of each piece [mm], in order; apart where they do not meet. */
  readonly middle?: readonly (readonly [from: number, to: number, width: number])[];
  /** The leaf is left out: contours go round the pads alone. */
  readonly isDropped?: boolean;
  /** Travel across it, so far from the first root, lifted by so much [mm]. */
  readonly crossings?: readonly (readonly [at: number, lifted: number])[];
}

export interface Leaf {
  readonly length: number;
  readonly thickness: number;
  readonly layers: readonly LeafLayer[];
  readonly height: number;
  readonly firstHeight?: number;
  readonly diameter?: number;
  /** Filling lines in the pads. */
  readonly isFilled?: boolean;
}

export interface LaidPart {
  readonly toolpath: Toolpath;
  readonly place: Place;
}

const PAD = { long: 4, half: 3 };
export const DIAMETER = 1.75;

/** The whole of a pad with the leaf's upper and lower side at ± `y`, `off` inside the outline; from the far face round. */
function padRound(off: number, y: number): readonly Point[] {
  const [far, near, half] = [off - PAD.long, -off, PAD.half - off];
  const upper = [
    { x: far, y: 0 },
    { x: far, y: half },
    { x: near, y: half },
    { x: near, y },
  ];
  return upper;
}

const below = ({ x, y }: Point): Point => ({ x, y: -y });

/** A contour `off` inside the outline of both pads and the leaf, clockwise from the far face of the first pad. */
function contourAt(off: number, length: number, thickness: number): readonly Point[] {
  const left = padRound(off, thickness / 2 - off);
  const right = left.map(({ x, y }) => ({ x: length - x, y })).toReversed();
  const upper = [...left, ...right];
  return [...upper, ...upper.slice(1, -1).toReversed().map(below), upper[0]!];
}

/** Round each pad alone. */
function aroundPads(off: number, length: number): readonly (readonly Point[])[] {
  const [far, near, half] = [off - PAD.long, -off, PAD.half - off];
  const left = [
    { x: far, y: -half },
    { x: far, y: half },
    { x: near, y: half },
    { x: near, y: -half },
    { x: far, y: -half },
  ];
  return [left, left.map(({ x, y }) => ({ x: length - x, y }))];
}

/** The same contour from a point on its upper side along the leaf. */
function startingAt(points: readonly Point[], at: number): readonly Point[] {
  const start = { x: at, y: points[3]!.y };
  return [start, ...points.slice(4, -1), ...points.slice(0, 4), start];
}

function contours({ contours: widths, start, isDropped }: LeafLayer, { length, thickness }: Leaf): readonly Bead[] {
  return widths.flatMap((width, i) => {
    const off = widths.slice(0, i).reduce((sum, one) => sum + one, 0) + width / 2;
    if (isDropped) return aroundPads(off, length).map((points) => ({ points, widths: width }));
    const points = contourAt(off, length, thickness);
    return [{ points: i === 0 && start !== undefined ? startingAt(points, start) : points, widths: width }];
  });
}

/** Pieces that meet are one bead. */
function middle(pieces: LeafLayer['middle'] = []): readonly Bead[] {
  const beads: { points: Point[]; widths: number[] }[] = [];
  for (const [from, to, width] of pieces) {
    const last = beads.at(-1);
    if (last && Math.abs(last.points.at(-1)!.x - from) < 1e-9) {
      last.points.push({ x: to, y: 0 });
      last.widths.push(width);
    } else {
      beads.push({
        points: [
          { x: from, y: 0 },
          { x: to, y: 0 },
        ],
        widths: [width],
      });
    }
  }
  return beads;
}

/** Lines up and down in both pads, clear of the contours. */
function filling({ contours: widths }: LeafLayer, { length }: Leaf): readonly Bead[] {
  const width = widths[0]!;
  const off = widths.reduce((sum, one) => sum + one, 0) + width / 2;
  const count = Math.floor((PAD.long - 2 * off) / width);
  const points = Array.from({ length: count }, (_, i) => {
    const x = off - PAD.long + i * width;
    const ends = [off - PAD.half, PAD.half - off].map((y) => ({ x, y }));
    return i % 2 === 0 ? ends : ends.toReversed();
  }).flat();
  const right = points.map(({ x, y }) => ({ x: length - x, y }));
  return count === 0 ? [] : [points, right].map((line) => ({ points: line, widths: width }));
}

const hops = ({ crossings = [] }: LeafLayer): readonly Hop[] =>
  crossings.map(([at, lifted]) => ({ from: { x: at, y: -2 }, to: { x: at, y: 2 }, lifted }));

/** A leaf between two pads that bends in the plane of the plate: root to root from x = 0, its middle at y = 0. */
export function leafPart(leaf: Leaf): LaidPart {
  const { length, thickness, height, firstHeight = height, diameter = DIAMETER, isFilled = true } = leaf;
  const layers = leaf.layers.map((layer, i): Layer => ({
    z: firstHeight + i * height,
    height: i === 0 ? firstHeight : height,
    beads: [...contours(layer, leaf), ...middle(layer.middle), ...(isFilled ? filling(layer, leaf) : [])],
    hops: hops(layer),
  }));
  const place: Place = {
    number: 1,
    from: 'drawn',
    lying: 'flat',
    run: [
      { x: 0, y: 0 },
      { x: length, y: 0 },
    ],
    thickness,
    reach: thickness,
    bottom: 0,
    top: layers.at(-1)?.z ?? height,
  };
  return { toolpath: { diameter, layers }, place };
}

/** A leaf that stands between two plates, thin along y, its axis along x. */
export interface Upright {
  readonly depth: number;
  readonly contours: readonly number[];
  readonly thickness: number;
  readonly padLayers: number;
  readonly leafLayers: number;
  readonly height: number;
}

function rectangle(halfX: number, halfY: number): readonly Point[] {
  return [
    { x: -halfX, y: -halfY },
    { x: halfX, y: -halfY },
    { x: halfX, y: halfY },
    { x: -halfX, y: halfY },
    { x: -halfX, y: -halfY },
  ];
}

export function uprightPart(upright: Upright): LaidPart {
  const { depth, thickness, padLayers, leafLayers, height, contours: widths } = upright;
  const box = (halfX: number, halfY: number): readonly Bead[] =>
    widths.map((width, i) => {
      const off = widths.slice(0, i).reduce((sum, one) => sum + one, 0) + width / 2;
      return { points: rectangle(halfX - off, halfY - off), widths: width };
    });
  const layers = Array.from({ length: 2 * padLayers + leafLayers }, (_, i): Layer => {
    const isLeaf = i >= padLayers && i < padLayers + leafLayers;
    return { z: (i + 1) * height, height, beads: box(depth / 2, isLeaf ? thickness / 2 : PAD.half) };
  });
  const place: Place = {
    number: 1,
    from: 'drawn',
    lying: 'upright',
    run: [
      { x: -depth / 2, y: 0 },
      { x: depth / 2, y: 0 },
    ],
    thickness,
    reach: thickness,
    bottom: padLayers * height,
    top: (padLayers + leafLayers) * height,
  };
  return { toolpath: { diameter: DIAMETER, layers }, place };
}

/** A thin web between two thick plates: root to root along x from 0, its axis along y. */
export interface Crease {
  readonly length: number;
  readonly depth: number;
  readonly webLayers: number;
  readonly padLayers: number;
  readonly height: number;
  readonly width: number;
  /** Spacing of the lines [mm]. */
  readonly spacing: number;
  /** Whether lines of the web run from plate to plate, or along its axis. */
  readonly runs: 'over' | 'along the fold';
  /** Lines of the web that are left out, by layer and number. */
  readonly without?: readonly (readonly [layer: number, line: number])[];
}

/** Parallel lines in a rectangle, each a bead of its own, inside its sides by half a width. */
function hatching(
  from: Point,
  to: Point,
  { width, spacing }: Pick<Crease, 'width' | 'spacing'>,
  isAlongX: boolean,
): readonly Bead[] {
  const size = isAlongX ? to.y - from.y : to.x - from.x;
  const count = 1 + Math.round((size - width) / spacing);
  return Array.from({ length: count }, (_, i) => {
    const at = width / 2 + i * spacing;
    const points = isAlongX
      ? [
          { x: from.x + width / 2, y: from.y + at },
          { x: to.x - width / 2, y: from.y + at },
        ]
      : [
          { x: from.x + at, y: from.y + width / 2 },
          { x: from.x + at, y: to.y - width / 2 },
        ];
    return { points, widths: width };
  });
}

export function creasePart(crease: Crease): LaidPart {
  const { length, depth, webLayers, padLayers, height, runs, without = [] } = crease;
  const isOver = runs === 'over';
  const half = depth / 2;
  const layers = Array.from({ length: padLayers }, (_, i): Layer => {
    const isWeb = i < webLayers;
    const web = isWeb
      ? hatching({ x: -PAD.long, y: -half }, { x: length + PAD.long, y: half }, crease, isOver)
      : [
          ...hatching({ x: -PAD.long, y: -half }, { x: 0, y: half }, crease, true),
          ...hatching({ x: length, y: -half }, { x: length + PAD.long, y: half }, crease, true),
        ];
    const left = without.filter(([layer]) => layer === i + 1).map(([, line]) => line);
    return { z: (i + 1) * height, height, beads: web.filter((_bead, line) => !left.includes(line)) };
  });
  const place: Place = {
    number: 1,
    from: 'drawn',
    lying: 'crease',
    run: [
      { x: 0, y: 0 },
      { x: length, y: 0 },
    ],
    thickness: webLayers * height,
    reach: depth,
    bottom: 0,
    top: webLayers * height,
  };
  return { toolpath: { diameter: DIAMETER, layers }, place };
}
