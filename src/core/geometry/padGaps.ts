/** Gaps between one pad and another. */
import type { Mm } from '../units.ts';
import type { GapPad } from './gapPads.ts';
import type { Point } from './outline.ts';
import type { Ways } from './materialWay.ts';
import { DETOUR, keep, pairOf, take, type Findings, type Pair } from './meetings.ts';
import { depthBetween } from './padDepth.ts';
import { forNear, lengthOf, nearest, newMeeting, type Meeting } from './strand.ts';

/** Pads nearer than this as printed are drawn as touching: as knuckles of a hinge are [mm]. */
const DRAWN_TOUCHING: Mm = 1e-6;

/** Where chords cross, the curves over them are no further apart than this [mm]. */
const NEARLY_CROSSED: Mm = 0.05;

/** Pads further apart than this do not count as near each other [mm]: most are, and to look there would be dear. */
const FURTHEST: Mm = 5;

/** Two pads that may meet, as places in the list of pads. */
export type PadPair = readonly [a: number, b: number];

/**
 * The pads that may meet: of one plane, different, and clear of each other as printed.
 *
 * @param pads - as printed [mm]
 * @returns pairs, by places in the list
 */
export function pairsApart(pads: readonly GapPad[]): readonly PadPair[] {
  return pads.flatMap((a, i) =>
    pads.flatMap((b, j): readonly PadPair[] => {
      const areApart = j > i && a.plane === b.plane && a.what !== b.what && !touch(a, b) && !depthBetween(a, b, true);
      return areApart ? [[i, j]] : [];
    }),
  );
}

function touch(a: GapPad, b: GapPad): boolean {
  const meeting = newMeeting();
  const limit = { gap: DRAWN_TOUCHING };
  let isMet = false;
  forEdges(a, b, limit, (edgeA, i, edgeB, j) => {
    nearest(edgeA, i, edgeB, j, meeting);
    isMet ||= meeting.gap < DRAWN_TOUCHING;
  });
  return isMet;
}

type Edge = GapPad['edges'][number];

function forEdges(
  a: GapPad,
  b: GapPad,
  limit: { readonly gap: Mm },
  visit: (edgeA: Edge, i: number, edgeB: Edge, j: number) => void,
  ways?: Ways,
): void {
  for (const edgeA of a.edges) {
    for (const edgeB of b.edges) {
      const isPassedOver =
        ways &&
        ((i: number, lastI: number, j: number, lastJ: number, clear: Mm) => {
          const [placeA, placeB] = [placeOf(edgeA, i), placeOf(edgeB, j)];
          const stretch = edgeA.along[lastI]! - edgeA.along[i]! + edgeB.along[lastJ]! - edgeB.along[j]!;
          return wayBetween(a, placeA, b, placeB, ways) + stretch < DETOUR * clear;
        });
      forNear(edgeA, edgeB, limit, (i, j) => visit(edgeA, i, edgeB, j), 0, isPassedOver);
    }
  }
}

const placeOf = ({ x, y }: Edge, i: number): Point => ({ x: x[i]!, y: y[i]! });

/**
 * Looks for gaps of less than 5 mm between pads. Where corners of one lie inside the other, how deep the deepest lies is
 * told as a gap below 0; where edges only cross, 0.
 *
 * @param pads - in the state [mm]
 * @param pairs - those that may meet [-]
 * @param ways - through the material from node to node [mm]
 * @param found - where what is found goes [mm]
 */
export function betweenPads(pads: readonly GapPad[], pairs: readonly PadPair[], ways: Ways, found: Findings): void {
  const meeting = newMeeting();
  for (const [a, b] of pairs) {
    const [padA, padB] = [pads[a], pads[b]];
    if (!padA || !padB) throw new RangeError('as many pads are needed as were printed');
    const pair: Pair = { gap: Math.min(pairOf(found).gap, FURTHEST) };
    let isCrossed = false;
    const look = (edgeA: Edge, i: number, edgeB: Edge, j: number) => {
      nearest(edgeA, i, edgeB, j, meeting);
      if (meeting.gap < NEARLY_CROSSED && doCross(edgeA, i, edgeB, j)) {
        isCrossed = true;
        meeting.gap = Math.min(0, meeting.gap);
      }
      if (meeting.gap >= pair.gap || !areAway(padA, padB, meeting, ways)) return;
      keep(pair, meeting, { what: padA.what, strand: edgeA }, { what: padB.what, strand: edgeB });
    };
    forEdges(padA, padB, pair, look, ways);
    const inside = depthBetween(padA, padB, isCrossed);
    if (inside && areAway(padA, padB, inside.meeting, ways)) {
      keep(pair, inside.meeting, { what: padA.what, strand: inside.edgeA }, { what: padB.what, strand: inside.edgeB });
    }
    take(found, pair);
  }
}

/** Whether two chords of edges cross, which arcs over them may not tell of exactly. */
function doCross(a: Edge, i: number, b: Edge, j: number): boolean {
  return areParted(a, i, b, j) && areParted(b, j, a, i);
}

/** Whether the ends of one chord lie on either side of the line through another. */
function areParted(a: Edge, i: number, b: Edge, j: number): boolean {
  const [dx, dy] = [a.x[i + 1]! - a.x[i]!, a.y[i + 1]! - a.y[i]!];
  const side = (k: number) => dx * (b.y[k]! - a.y[i]!) - dy * (b.x[k]! - a.x[i]!);
  return side(j) * side(j + 1) < 0;
}

/** Whether two places on the edges of pads have a gap between them, and not only the material that joins the pads. */
function areAway(a: GapPad, b: GapPad, { ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  return wayBetween(a, { x: ax, y: ay }, b, { x: bx, y: by }, ways) >= DETOUR * lengthOf(bx - ax, by - ay);
}

/** From a place on the edge of a pad through the material to one on that of another. */
function wayBetween(a: GapPad, placeA: Point, b: GapPad, placeB: Point, ways: Ways): Mm {
  const [onA, onB] = [a.printed(placeA), b.printed(placeB)];
  let way = Infinity;
  for (const from of a.nodes) {
    const first = lengthOf(onA.x - from.at.x, onA.y - from.at.y);
    for (const to of b.nodes) {
      way = Math.min(way, first + ways(from.i, to.i) + lengthOf(onB.x - to.at.x, onB.y - to.at.y));
    }
  }
  return way;
}
