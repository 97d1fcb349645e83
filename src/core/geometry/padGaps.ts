/** Gaps between one pad and another. */
import type { Mm } from '../units.ts';
import type { GapPad } from './gapPads.ts';
import type { Ways } from './materialWay.ts';
import { DETOUR, keep, pairOf, take, type Findings, type Pair } from './meetings.ts';
import { forNear, lengthOf, nearest, newMeeting, type Meeting } from './strand.ts';

/** Pads nearer than this as printed touch there, and are drawn so: as knuckles of a hinge are [mm]. */
const TOUCHING: Mm = 1e-6;

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
      const areApart = j > i && a.plane === b.plane && a.what !== b.what && !touch(a, b);
      return areApart ? [[i, j]] : [];
    }),
  );
}

function touch(a: GapPad, b: GapPad): boolean {
  const meeting = newMeeting();
  const limit = { gap: TOUCHING };
  let isMet = false;
  forEdges(a, b, limit, (edgeA, i, edgeB, j) => {
    nearest(edgeA, i, edgeB, j, meeting);
    isMet ||= meeting.gap < TOUCHING;
  });
  return isMet;
}

type Edge = GapPad['edges'][number];

function forEdges(
  a: GapPad,
  b: GapPad,
  limit: { readonly gap: Mm },
  visit: (edgeA: Edge, i: number, edgeB: Edge, j: number) => void,
): void {
  for (const edgeA of a.edges) {
    for (const edgeB of b.edges) forNear(edgeA, edgeB, limit, (i, j) => visit(edgeA, i, edgeB, j));
  }
}

/**
 * Looks for gaps of less than 5 mm between pads.
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
    forEdges(padA, padB, pair, (edgeA, i, edgeB, j) => {
      nearest(edgeA, i, edgeB, j, meeting);
      if (meeting.gap >= pair.gap || !areAway(padA, padB, meeting, ways)) return;
      keep(pair, meeting, { what: padA.what, strand: edgeA }, { what: padB.what, strand: edgeB });
    });
    take(found, pair);
  }
}

/** Whether two places on the edges of pads have a gap between them, and not only the material that joins the pads. */
function areAway(a: GapPad, b: GapPad, { ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  const [onA, onB] = [a.printed({ x: ax, y: ay }), b.printed({ x: bx, y: by })];
  let way = Infinity;
  for (const from of a.nodes) {
    const first = lengthOf(onA.x - from.at.x, onA.y - from.at.y);
    for (const to of b.nodes) {
      way = Math.min(way, first + ways(from.i, to.i) + lengthOf(onB.x - to.at.x, onB.y - to.at.y));
    }
  }
  return way >= DETOUR * lengthOf(bx - ax, by - ay);
}
