/** Pieces as they are drawn, before they are moved to the origin and made into slabs. */
import { loopArea, type Loop } from '../geometry/loop.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import type { Piece, PieceId, RoundCorner, Slab, Strip } from './piece.ts';
import { slabsOf, toGrid, type Body, type Part } from './slabs.ts';

/** Bodies, strips and corners in one set of axes. */
export interface Draft {
  readonly bodies: readonly Body[];
  readonly strips: readonly Strip[];
  readonly corners: readonly RoundCorner[];
}

export const NOTHING: Draft = { bodies: [], strips: [], corners: [] };

/** One body and the strips in it. */
export function draftOf(body: Body, strips: readonly Strip[]): Draft {
  return { bodies: [body], strips, corners: [] };
}

export function together(...drafts: readonly Draft[]): Draft {
  return {
    bodies: drafts.flatMap(({ bodies }) => bodies),
    strips: drafts.flatMap(({ strips }) => strips),
    corners: drafts.flatMap(({ corners }) => corners),
  };
}

/** Moved in the plane of the plate, perhaps turned a quarter counter-clockwise about the origin before that. */
export interface Move {
  readonly x: Mm;
  readonly y: Mm;
  readonly isTurned?: boolean;
}

export function movedPoint({ x, y }: Point, move: Move): Point {
  return move.isTurned === true ? { x: move.x - y, y: move.y + x } : { x: move.x + x, y: move.y + y };
}

const movedLoop = (loop: Loop, move: Move): Loop => loop.map((point) => movedPoint(point, move));

export function movedStrip(strip: Strip, move: Move): Strip {
  return { ...strip, from: movedPoint(strip.from, move), to: movedPoint(strip.to, move) };
}

export function movedCorner(corner: RoundCorner, move: Move): RoundCorner {
  return { ...corner, centre: movedPoint(corner.centre, move) };
}

export function movedSlab(slab: Slab, move: Move): Slab {
  return { ...slab, region: slab.region.map((loop) => movedLoop(loop, move)) };
}

export function moved({ bodies, strips, corners }: Draft, move: Move): Draft {
  const all = (parts: readonly Part[]) => parts.map((part) => ({ ...part, loop: movedLoop(part.loop, move) }));
  return {
    bodies: bodies.map(({ parts, cuts }) => ({ parts: all(parts), cuts: all(cuts) })),
    strips: strips.map((strip) => movedStrip(strip, move)),
    corners: corners.map((corner) => movedCorner(corner, move)),
  };
}

/** Least and greatest places of a draft. */
export function boxOfDraft({ bodies }: Draft): { readonly min: Point; readonly max: Point } {
  const points = bodies.flatMap(({ parts }) => parts.flatMap(({ loop }) => loop));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { min: { x: Math.min(...xs), y: Math.min(...ys) }, max: { x: Math.max(...xs), y: Math.max(...ys) } };
}

/** One draft with its least corner at a place. */
export function placedAt(draft: Draft, { x, y }: Point): Draft {
  const { min } = boxOfDraft(draft);
  return moved(draft, { x: x - min.x, y: y - min.y });
}

/** mm³, by regions whose loops do not overlap. */
function volumeOf(slabs: readonly Slab[]): number {
  return slabs.reduce((sum, { from, to, region }) => sum + (to - from) * region.reduce((all, loop) => all + loopArea(loop), 0), 0); // prettier-ignore
}

type Extras = Pick<Piece, 'slotTurn' | 'slotRadius' | 'arm' | 'grams'>;

/** The finished piece, its least corner at the origin. */
export function pieceFrom(id: PieceId, draft: Draft, extras: Extras = {}): Piece {
  const { bodies, strips, corners } = placedAt(draft, { x: 0, y: 0 });
  const slabs = bodies.map(slabsOf);
  const points = slabs.flat().flatMap(({ region }) => region.flat());
  return {
    id,
    size: {
      x: toGrid(Math.max(...points.map(({ x }) => x))),
      y: toGrid(Math.max(...points.map(({ y }) => y))),
      z: Math.max(...slabs.flat().map(({ to }) => to)),
    },
    bodies: slabs,
    strips,
    corners,
    volume: slabs.reduce((sum, body) => sum + volumeOf(body), 0),
    ...extras,
  };
}
