import type { Mm } from '../units.ts';
import type { MiddleLine } from './band.ts';
import { padOf, type GapBody, type GapPad, type PadPose } from './gapPads.ts';
import { grownStretch, openStretch, type Stretch } from './growingOut.ts';
import { DETOUR, keep, LOCAL, newFindings, pairOf, take, told, type Findings, type Gaps } from './meetings.ts';
import { materialWays, type JoinedNetwork, type Ways } from './materialWay.ts';
import type { Point } from './outline.ts';
import { betweenPads, pairsApart } from './padGaps.ts';
import {
  alongAt,
  angleAt,
  bandStrand,
  forNear,
  halfAt,
  lengthOf,
  nearest,
  newMeeting,
  type Meeting,
  type Strand,
} from './strand.ts';

/** Where material joins them, places face each other when the way across is this close to square to both [-], a cosine. */
const FACING = 0.1;

/** One side of a gap: a member or pad, and the place on its surface [mm]. */
export interface GapSide {
  readonly what: string;
  readonly at: Point;
}

/** The least clear distance of two parts [mm], below 0 where they overlap, and where it is. */
export interface Gap {
  readonly gap: Mm;
  readonly a: GapSide;
  readonly b: GapSide;
}

/** Gaps of one state, from the shapes of the members in their order and where the pads have gone. */
export type GapFinder = (shapes: readonly MiddleLine[], poses: Readonly<Record<string, PadPose>>) => Gaps;

/**
 * What finds the gaps between bands and pads of a network in any state.
 *
 * Surfaces of one plane are compared: bands with each other, each with itself, and each with all pads, and pads with each
 * other up to 5 mm apart, but for those that touch as printed. Two places count as apart when the way between them through
 * the material is longer than four thicknesses, where a band is one of them, and than 1½ times the way across, which passes
 * over square corners and runs of members, and when two places on bands face each other. What of a band lies inside its own
 * pad does not count, nor for that pad what is still growing out of it: as long as the clearance rises by 0.01 mm in three
 * thicknesses. Where middle lines cross, the overlap told is half of both thicknesses; where edges of pads cross, it is
 * nothing.
 *
 * Distances are taken between middle lines that bend evenly from sample to sample; with forty samples to half a turn
 * they are good to thousandths of a millimetre. Where the thickness changes, a gap may be told too wide by a quarter of
 * the change from one sample to the next.
 *
 * @param network - nodes, members and pads as printed [mm]
 * @param bodies - outlines of the pads as printed [mm]
 * @param printed - middle lines as printed, in the order of the members [mm] and [rad]
 * @param within - gaps below this are all told [mm], ≥ 0
 * @returns a function from shapes and poses to the least gap and those below
 */
export function gapFinder(
  network: JoinedNetwork,
  bodies: readonly GapBody[],
  printed: readonly MiddleLine[],
  within: Mm = 0,
): GapFinder {
  const { nodes, members } = network;
  const ways = materialWays(
    network,
    printed.map((line) => bandStrand(line).along.at(-1) ?? 0),
  );
  const padsIn = bodies.map((body) => ({ id: body.pad, at: padOf(body, network) }));
  const padPairs = pairsApart(padsIn.map(({ at }) => at()));
  const places = new Map(nodes.map(({ id }, i) => [id, i]));
  const endsOf = members.map(({ from, to }) => [places.get(from) ?? -1, places.get(to) ?? -1] as const);
  return (shapes, poses) => {
    const pads = padsIn.map(({ id, at }) => at(poses[id]));
    const bands = members.map(({ id, plane = 0 }, i) => {
      const shape = shapes[i];
      if (!shape) throw new RangeError(`no shape for the member ${id}`);
      return bandOf(id, plane, endsOf[i] ?? [-1, -1], bandStrand(shape), pads);
    });
    const found = newFindings(within);
    // Pads first, whose few edges are soon looked through: what they come to bounds what is looked for between bands.
    betweenPads(pads, padPairs, ways, found);
    betweenBands(bands, ways, found);
    for (const pad of pads) againstPad(bands, pad, ways, found);
    return told(found);
  };
}

/** A member in a state; its stretch is what lies in the open. */
interface Band extends Stretch {
  readonly what: string;
  readonly plane: number;
  /** Its first and last node, as places in the list of nodes. */
  readonly ends: readonly [number, number];
  readonly strand: Strand;
  readonly heldBy: readonly [readonly GapPad[], readonly GapPad[]];
}

function bandOf(
  what: string,
  plane: number,
  ends: readonly [number, number],
  strand: Strand,
  pads: readonly GapPad[],
): Band {
  const holding = (end: number) => pads.filter((pad) => pad.plane === plane && pad.nodes.some(({ i }) => i === end));
  const heldBy = [holding(ends[0]), holding(ends[1])] as const;
  return { what, plane, ends, strand, heldBy, ...openStretch({ strand, heldBy }) };
}

const isOpen = ({ first, last }: Stretch, segment: number) => segment >= first && segment < last;

function betweenBands(bands: readonly Band[], ways: Ways, found: Findings): void {
  const meeting = newMeeting();
  for (const [k, a] of bands.entries()) {
    for (const b of bands.slice(k)) {
      if (a.plane !== b.plane) continue;
      const nearestPair = pairOf(found);
      const look = (i: number, j: number) => {
        if (!isOpen(a, i) || !isOpen(b, j)) return;
        nearest(a.strand, i, b.strand, j, meeting);
        if (meeting.gap < nearestPair.gap && areApart(a, b, meeting, ways)) keep(nearestPair, meeting, a, b);
      };
      // Pairs of one band that are surely local need no look: there are very many of them.
      const apart = LOCAL * 2 * Math.min(...a.strand.half);
      forNear(a.strand, b.strand, nearestPair, look, apart, (i, lastI, j, lastJ, clear) =>
        areJoined(a, i, lastI, b, j, lastJ, clear, ways),
      );
      take(found, nearestPair);
    }
  }
}

/** Whether no place on one stretch is away from one on another: no way round is much longer than any way across. */
function areJoined(
  a: Band,
  i: number,
  lastI: number,
  b: Band,
  j: number,
  lastJ: number,
  clear: Mm,
  ways: Ways,
): boolean {
  const [sa, sb] = [a.strand.along[i]!, b.strand.along[j]!];
  const longest = wayByNodes(a, sa, b, sb, ways) + a.strand.along[lastI]! - sa + b.strand.along[lastJ]! - sb;
  return longest < DETOUR * clear;
}

/** Whether two places on bands have a gap between them, and not only material. */
function areApart(a: Band, b: Band, { i, u, j, v, ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  const sa = alongAt(a.strand, i, u);
  const sb = alongAt(b.strand, j, v);
  const across = lengthOf(bx - ax, by - ay);
  const thickness = 2 * Math.max(halfAt(a.strand, i, u), halfAt(b.strand, j, v));
  const least = Math.max(LOCAL * thickness, DETOUR * across);
  // Asked first, since it settles the very many pairs of one band.
  if (a === b && Math.abs(sa - sb) < least) return false;
  const way = wayByNodes(a, sa, b, sb, ways);
  if (way < least) return false;
  if ((way === Infinity && a !== b) || across === 0) return true;
  const direction = { x: (bx - ax) / across, y: (by - ay) / across };
  const back = { x: -direction.x, y: -direction.y };
  return faces(a.strand, i, u, direction) && faces(b.strand, j, v, back);
}

/** Whether a way leaves a band square to it, or straight on over its end. */
function faces(strand: Strand, i: number, u: number, way: Point): boolean {
  const angle = angleAt(strand, i, u);
  const ahead = way.x * Math.cos(angle) + way.y * Math.sin(angle);
  if (Math.abs(ahead) <= FACING) return true;
  return ahead > 0 ? i === strand.count - 1 && u === 1 : i === 0 && u === 0;
}

function wayByNodes(a: Band, sa: Mm, b: Band, sb: Mm, ways: Ways): Mm {
  const restA = a.strand.along[a.strand.count]! - sa;
  const restB = b.strand.along[b.strand.count]! - sb;
  return Math.min(
    sa + ways(a.ends[0], b.ends[0]) + sb,
    sa + ways(a.ends[0], b.ends[1]) + restB,
    restA + ways(a.ends[1], b.ends[0]) + sb,
    restA + ways(a.ends[1], b.ends[1]) + restB,
  );
}

function againstPad(bands: readonly Band[], pad: GapPad, ways: Ways, found: Findings): void {
  const meeting = newMeeting();
  for (const band of bands) {
    if (band.plane !== pad.plane) continue;
    const nearestPair = pairOf(found);
    const grown = grownStretch(band, pad, nearestPair.gap);
    for (const strand of pad.edges) {
      const look = (i: number, j: number) => {
        if (!isOpen(band, i) || !isOpen(grown, i)) return;
        nearest(band.strand, i, strand, j, meeting);
        if (meeting.gap >= nearestPair.gap || !isAway(band, pad, meeting, ways)) return;
        keep(nearestPair, meeting, band, { what: pad.what, strand });
      };
      forNear(band.strand, strand, nearestPair, look, 0, (i, lastI, j, lastJ, clear) => {
        const { along } = band.strand;
        const way = wayToPad(band, along[i]!, pad, { x: strand.x[j]!, y: strand.y[j]! }, ways);
        return way + along[lastI]! - along[i]! + strand.along[lastJ]! - strand.along[j]! < DETOUR * clear;
      });
    }
    take(found, nearestPair);
  }
}

/** Whether a place on a band and one on the edge of a pad have a gap between them, and not only material. */
function isAway(band: Band, pad: GapPad, { i, u, ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  const way = wayToPad(band, alongAt(band.strand, i, u), pad, { x: bx, y: by }, ways);
  return way >= LOCAL * 2 * halfAt(band.strand, i, u) && way >= DETOUR * lengthOf(bx - ax, by - ay);
}

/** From a place along a band through the material to one on the edge of a pad. */
function wayToPad({ ends, strand }: Band, along: Mm, pad: GapPad, place: Point, ways: Ways): Mm {
  const rest = strand.along[strand.count]! - along;
  const edge = pad.printed(place);
  let way = Infinity;
  for (const { i: node, at } of pad.nodes) {
    const onPad = lengthOf(edge.x - at.x, edge.y - at.y);
    way = Math.min(way, onPad + along + ways(ends[0], node), onPad + rest + ways(ends[1], node));
  }
  return way;
}
