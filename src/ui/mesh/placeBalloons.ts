/** Balloons beside what they number: on clear paper, near, and never on one another [px]. */
import type { Point } from '../../core/geometry/outline.ts';
import { grown, overlap, type Box } from '../drawing/lettering.ts';

export interface Spot {
  readonly number: number;
  readonly box: Box;
}

export interface PlacedBalloon extends Point {
  readonly number: number;
  /** The leader: from the edge of the balloon to the box. */
  readonly from: { readonly balloon: Point; readonly box: Point };
  /** Where its thickness is written, if there is room. */
  readonly thick: (Point & { readonly anchor: 'start' | 'end' }) | undefined;
}

const REACH = 10;
const FIGURE = { width: 28, height: 12 };
/** How far from its box a balloon may be, nearest first, and in which directions: up and down before the corners. */
const DISTANCES = [18, 26, 38, 54, 76, 110, 150];
const DIRECTIONS = [-90, 90, -60, -120, 60, 120, -30, 210, 0, 180, 30, 150].map((degrees) => (degrees * Math.PI) / 180);

const around = ({ x, y }: Point): Box => ({ x: x - REACH, y: y - REACH, width: 2 * REACH, height: 2 * REACH });
const isWithin = (box: Box, room: Box) =>
  box.x >= room.x &&
  box.y >= room.y &&
  box.x + box.width <= room.x + room.width &&
  box.y + box.height <= room.y + room.height;

/** Corners and middle of a box. */
const probes = ({ x, y, width, height }: Box): readonly Point[] =>
  [0, 0.5, 1].flatMap((u) => [0, 0.5, 1].map((v) => ({ x: x + u * width, y: y + v * height })));

/** Where a line from the middle of a box leaves it. */
function edgeOf({ x, y, width, height }: Box, to: Point): Point {
  const [cx, cy] = [x + width / 2, y + height / 2];
  const [dx, dy] = [to.x - cx, to.y - cy];
  const share = Math.min(width / 2 / Math.abs(dx || 1e-9), height / 2 / Math.abs(dy || 1e-9), 1);
  return { x: cx + share * dx, y: cy + share * dy };
}

interface Paper {
  readonly room: Box;
  readonly taken: Box[];
  readonly isPlastic: (point: Point) => boolean;
}

/** How much speaks against a place: plastic under it, then distance. */
function costOf(at: Point, distance: number, { room, taken, isPlastic }: Paper): number | undefined {
  const box = around(at);
  if (!isWithin(box, room) || taken.some((other) => overlap(grown(box, 2), other))) return undefined;
  const covered = probes(box).filter(isPlastic).length;
  const figure = freeFigure(at, { room, taken, isPlastic }) ? 0 : 64;
  return distance + figure + 60 * covered;
}

/** Anywhere on the paper where there is room, the nearer the better. */
function nearestFree(to: Point, paper: Paper): Point {
  const { room } = paper;
  let best: { readonly at: Point; readonly cost: number } | undefined;
  for (let y = room.y + REACH; y <= room.y + room.height - REACH; y += REACH) {
    for (let x = room.x + REACH; x <= room.x + room.width - REACH; x += REACH) {
      const cost = costOf({ x, y }, Math.hypot(x - to.x, y - to.y), paper);
      if (cost !== undefined && cost < (best?.cost ?? Infinity)) best = { at: { x, y }, cost };
    }
  }
  return best?.at ?? to;
}

function bestPlace({ box }: Spot, paper: Paper): Point {
  const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2];
  let best: { readonly at: Point; readonly cost: number } | undefined;
  for (const distance of DISTANCES) {
    for (const direction of DIRECTIONS) {
      const [dx, dy] = [Math.cos(direction), Math.sin(direction)];
      const out = Math.min(box.width / 2 / Math.abs(dx || 1e-9), box.height / 2 / Math.abs(dy || 1e-9));
      const at = { x: cx + (out + distance) * dx, y: cy + (out + distance) * dy };
      const cost = costOf(at, distance, paper);
      if (cost !== undefined && cost < (best?.cost ?? Infinity)) best = { at, cost };
    }
    if (best && best.cost < distance + 64) return best.at;
  }
  return best?.at ?? nearestFree({ x: cx, y: cy }, paper);
}

function freeFigure(at: Point, { room, taken, isPlastic }: Paper) {
  const boxes = [
    { anchor: 'start', x: at.x + REACH + 5, box: { x: at.x + REACH + 4, y: at.y - 7, ...FIGURE } },
    { anchor: 'end', x: at.x - REACH - 5, box: { x: at.x - REACH - 4 - FIGURE.width, y: at.y - 7, ...FIGURE } },
  ] as const;
  return boxes.find(
    ({ box }) => isWithin(box, room) && !taken.some((other) => overlap(box, other)) && !probes(box).some(isPlastic),
  );
}

function figureAt(at: Point, paper: Paper): PlacedBalloon['thick'] {
  const free = freeFigure(at, paper);
  if (!free) return undefined;
  paper.taken.push(free.box);
  return { x: free.x, y: at.y + 4, anchor: free.anchor };
}

/** A place for each; in the order in which they are given, and off what is drawn beside the part. */
export function placeBalloons(
  spots: readonly Spot[],
  room: Box,
  isPlastic: (point: Point) => boolean,
  beside: readonly Box[] = [],
): readonly PlacedBalloon[] {
  const paper: Paper = { room, taken: [...beside, ...spots.map(({ box }) => box)], isPlastic };
  const placed = spots.map((spot) => {
    const at = bestPlace(spot, paper);
    paper.taken.push(around(at));
    const box = edgeOf(spot.box, at);
    const length = Math.hypot(box.x - at.x, box.y - at.y) || 1;
    const balloon = { x: at.x + (REACH * (box.x - at.x)) / length, y: at.y + (REACH * (box.y - at.y)) / length };
    return { number: spot.number, ...at, from: { balloon, box } };
  });
  return placed.map((one) => ({ ...one, thick: figureAt(one, paper) }));
}
