/**
 * What the thin runs of a part join, and which of them are no flexures after all: the bridges beside a hole, eyes and rings
 * join a pad to itself, or two pads so rigidly that nothing can move.
 */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { dot3, from3, length3, squareTo } from '../../geometry/mesh/vector3.ts';
import { UnionFind } from '../../geometry/mesh/unionFind.ts';
import type { Mm } from '../../units.ts';
import type { FlexureRoot } from '../flexure.ts';
import { isIn, type Draft } from './draft.ts';
import { direction3 } from './flexureOf.ts';
import type { MeasuredRun } from './measureRun.ts';
import { joinedPads, nodeOf, staysWhole, type PadPlace } from './partPads.ts';
import { padsOf } from './padsOf.ts';
import { inSpace, type Section } from './sectionAt.ts';
import type { Solid } from './solid.ts';

/** What leads back to the pad that it leaves can only be bent in its middle: it must be so slender, in its thickness. */
const SLENDER = 8;
/**
 * Three bodies on three hinges cannot move, nor two on two: what is stubbier than this, in its thickness, is a hinge that
 * others hold fast which …
 */
const STUBBY = 3.2;
/** … are no longer than this; a longer one is as good as two hinges. */
const HINGE = 4;
const FAST_RING = 3;
/** Axes that differ by less than 8°, and lie nearer than this share of the length, are one line. */
const ONE_LINE = Math.cos((8 * Math.PI) / 180);
const IN_LINE = 0.7;
/** Leaving some out joins pads that were apart: so many times that is looked at again. */
const ROUNDS = 5;
/** How far past its end what a run joins is measured, in its thickness. */
const PAST = 1.5;

export interface Hanging {
  readonly kept: readonly Draft[];
  /** Of each that is kept. */
  readonly roots: readonly (readonly [FlexureRoot, FlexureRoot])[];
  readonly isInLoop: readonly boolean[];
  readonly pads: number;
  readonly rings: readonly Draft[];
}

/** Thickness of what a run joins, a little way past its end. */
function shoulderOf(solid: Solid, { plane }: Section, run: MeasuredRun, which: 0 | 1): Mm {
  const at = which === 0 ? run.centreLine[0]! : run.centreLine.at(-1)!;
  const { direction } = run.ends[which];
  const past = PAST * run.least;
  const point = inSpace(plane, { x: at.x + past * direction.x, y: at.y + past * direction.y });
  return solid.thickness(point, direction3(plane, { x: -direction.y, y: direction.x })) ?? run.least;
}

/** The pads of all sections, with the number of each triangle that runs end at. */
function padsOfAll(solid: Solid, sections: readonly Section[], drafts: readonly Draft[]) {
  const places: PadPlace[] = [];
  const placeOf = new Map<string, number>();
  for (const index of new Set(drafts.map(({ section }) => section))) {
    const section = sections[index]!;
    const runs = drafts.filter((draft) => draft.section === index).map(({ run }) => run);
    for (const pad of padsOf(section.triangles, runs)) {
      for (const t of pad.triangles) placeOf.set(`${index} ${t}`, places.length);
      places.push({ at: inSpace(section.plane, pad.at) });
    }
  }
  const shortest = drafts.reduce((least, { run }) => Math.min(least, run.length), Infinity);
  const isThin = (place: Point3) => drafts.some((draft) => isIn(sections, draft, place, 0));
  const { numbers, count } = joinedPads(solid, places, isThin, shortest / 2);
  const padAt = (section: number, triangle: number) => {
    const place = placeOf.get(`${section} ${triangle}`);
    return place === undefined ? undefined : numbers[place];
  };
  return { padAt, count };
}

function once(solid: Solid, sections: readonly Section[], drafts: readonly Draft[]) {
  const { padAt, count } = padsOfAll(solid, sections, drafts);
  const roots = drafts.map(({ run, section }): readonly [FlexureRoot, FlexureRoot] => {
    const root = (which: 0 | 1): FlexureRoot => {
      const { joins, fillet } = run.ends[which];
      const pad = joins.kind === 'pad' ? padAt(section, joins.triangle) : undefined;
      return {
        fillet,
        joins: pad === undefined ? { kind: 'flexure' } : { kind: 'pad', pad },
        shoulder: shoulderOf(solid, sections[section]!, run, which),
      };
    };
    return [root(0), root(1)];
  });
  return { roots, pads: count };
}

/** Whether two bodies are joined by no more than so many of these ways. */
function areJoinedWithin(
  ways: readonly (readonly [string, string])[],
  from: string,
  to: string,
  most: number,
): boolean {
  let reached = new Set([from]);
  for (let step = 0; step < most; step += 1) {
    reached = new Set([...reached, ...ways.flatMap(([a, b]) => (reached.has(a) ? [b] : reached.has(b) ? [a] : []))]);
  }
  return reached.has(to);
}

/** Whether a run ends where others met it that are no longer there. */
function isLoose(drafts: readonly Draft[], { run, section }: Draft): boolean {
  return run.ends.some(({ joins }) => {
    if (joins.kind !== 'meeting') return false;
    const meets = drafts.filter(
      (other) =>
        other.section === section &&
        other.run.ends.some(
          (end) => end.joins.kind === 'meeting' && end.joins.triangles.some((t) => joins.triangles.includes(t)),
        ),
    );
    return meets.length < 2;
  });
}

/** Whether two bend about one line, as the parts of a hinge do that is broken off and goes on. */
function isInLine({ space: a, run }: Draft, { space: b }: Draft): boolean {
  if (Math.abs(dot3(a.axis, b.axis)) < ONE_LINE) return false;
  return length3(squareTo(a.axis, from3(a.centre, b.centre))) < IN_LINE * run.length;
}

/** The two bodies that each run joins. */
function waysOf(drafts: readonly Draft[], roots: Hanging['roots']): readonly (readonly [string, string])[] {
  return drafts.map(({ run, section }, i) => {
    const node = (which: 0 | 1) => nodeOf(roots[i]![which], run.ends[which].joins, section);
    return [node(0), node(1)];
  });
}

function isPad(node: string): boolean {
  return node.startsWith('pad');
}

function isByItself([a, b]: readonly [string, string]): boolean {
  return isPad(a) && isPad(b);
}

/** To how many pads each way leads, through others that meet it; 2 where it leads from a pad to a pad by itself. */
function padsReached(ways: readonly (readonly [string, string])[]): readonly number[] {
  const numbers = new Map([...new Set(ways.flat())].map((node, i) => [node, i]));
  const groups = new UnionFind(numbers.size);
  // Meetings are joined by the ways between them; pads end a network, and are counted.
  for (const [a, b] of ways) if (!isPad(a) && !isPad(b)) groups.join(numbers.get(a)!, numbers.get(b)!);
  const pads = new Map<number, Set<string>>();
  const networkOf = ([a, b]: readonly [string, string]) => groups.rootOf(numbers.get(isPad(a) ? b : a)!);
  for (const way of ways.filter((each) => !isByItself(each))) {
    const reached = pads.get(networkOf(way)) ?? new Set();
    for (const node of way) if (isPad(node)) reached.add(node);
    pads.set(networkOf(way), reached);
  }
  return ways.map((way) => (isByItself(way) ? 2 : (pads.get(networkOf(way))?.size ?? 0)));
}

/** Whether nothing can move about each run. */
function areFast(drafts: readonly Draft[], roots: Hanging['roots']): readonly boolean[] {
  const ways = waysOf(drafts, roots);
  const slender = drafts.map(({ run, space }) => run.bendingLength / space.least);
  const padsOfNetwork = padsReached(ways);
  return drafts.map((draft, i) => {
    const [from, to] = ways[i]!;
    if (isLoose(drafts, draft) || padsOfNetwork[i]! < 2) return true;
    if (from === to) return slender[i]! < SLENDER;
    const others = ways.filter((_way, j) => j !== i && slender[j]! < HINGE && !isInLine(draft, drafts[j]!));
    return slender[i]! < STUBBY && areJoinedWithin(others, from, to, FAST_RING - 1);
  });
}

/** Tells what thin runs join, and takes out what joins nothing that could move. */
export function hangTogether(solid: Solid, sections: readonly Section[], drafts: readonly Draft[]): Hanging {
  let kept = drafts;
  const rings: Draft[] = [];
  let hanging = once(solid, sections, kept);
  for (let round = 0; round < ROUNDS; round += 1) {
    const isFast = areFast(kept, hanging.roots);
    if (!isFast.includes(true)) break;
    rings.push(...kept.filter((_, i) => isFast[i]));
    kept = kept.filter((_, i) => !isFast[i]);
    hanging = once(solid, sections, kept);
  }
  const isInLoop = staysWhole(waysOf(kept, hanging.roots));
  return { kept, roots: hanging.roots, isInLoop, pads: hanging.pads, rings };
}
