/**
 * Thin runs of a section: chains of triangles that are thin against what they join at both ends.
 *
 * From the narrowest way across on, all is gathered that can be reached without a way across that is much wider. What leads
 * out of it is a pad where it is twice as wide over an area of its own, else it belongs to the thin part (leaves that cross
 * make such a place). Runs that end nowhere are taken off; what is left, split where three ways meet, are the runs.
 */
import { UnionFind } from '../../geometry/mesh/unionFind.ts';
import type { Mm } from '../../units.ts';
import { areaOf, chordInto, otherSide, widthOf, type Chord } from './chords.ts';
import { lengthOfLine } from './lines.ts';
import type { Triangles } from './triangles.ts';

/** A way across may be so much wider than the narrowest and still belong to the same thin part. */
const SAME_THIN = 1.7;
/** A pad is at least so many times as wide as what it holds, … */
const PAD_WIDTH = 2;
/** … over so many squares of the thin width. */
const PAD_AREA = 4;
/** A run between two places where ways meet that is shorter than this times its width is part of one such place. */
const SAME_MEETING = 3.2;
/** Places where ways meet that hang together in a greater number are a grille or a lattice, whose bars hold one another. */
const MOST_MET = 12;

/** Where a run ends: at a pad, or where it meets other runs. */
export type RunEnd =
  | { readonly kind: 'pad'; readonly triangle: number }
  | { readonly kind: 'meeting'; readonly triangles: readonly number[] };

/** One thin run, its chords in order from the first end to the last. */
export interface Run {
  readonly chords: readonly Chord[];
  readonly triangles: readonly number[];
  readonly ends: readonly [RunEnd, RunEnd];
  readonly least: Mm;
}

const triangleOf = (side: number) => Math.floor(side / 3);

/** What lies beyond a wide way across: a pad, or a blob that is none, with all its triangles. */
function beyond(triangles: Triangles, side: number, width: Mm): { isPad: boolean; blob: readonly number[] } {
  const start = triangles.across[side]!;
  const seen = new Set([start]);
  const queue = [start];
  const limit = SAME_THIN * width;
  let area = 0;
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    let widest = 0;
    for (let s = 3 * t; s < 3 * t + 3; s += 1) {
      const neighbour = triangles.across[s]!;
      if (neighbour < 0) continue;
      const chord = widthOf(triangles, s);
      widest = Math.max(widest, chord);
      if (chord <= limit || seen.has(neighbour)) continue;
      seen.add(neighbour);
      queue.push(neighbour);
    }
    if (widest >= PAD_WIDTH * width) area += areaOf(triangles, t);
    if (area >= PAD_AREA * width * width) return { isPad: true, blob: [] };
  }
  return { isPad: false, blob: [...seen] };
}

/** A thin part: its triangles, and the sides through which it opens into pads. */
interface Part {
  readonly triangles: Set<number>;
  readonly openings: Set<number>;
}

/** Gathers what belongs to one way across, short of runs that were found before: what leads into those is no pad. */
function gather(triangles: Triangles, isRun: Uint8Array, side: number, width: Mm): Part {
  const limit = SAME_THIN * width;
  const part = new Set([triangleOf(side), triangles.across[side]!]);
  const openings = new Set<number>();
  const queue = [...part];
  const take = (t: number) => {
    if (part.has(t)) return;
    part.add(t);
    queue.push(t);
  };
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    for (let s = 3 * t; s < 3 * t + 3; s += 1) {
      const neighbour = triangles.across[s]!;
      if (neighbour < 0 || part.has(neighbour) || openings.has(s)) continue;
      if (isRun[neighbour] === 1) continue;
      if (widthOf(triangles, s) <= limit) take(neighbour);
      else {
        const { isPad, blob } = beyond(triangles, s, width);
        if (isPad) openings.add(s);
        else for (const each of blob) if (isRun[each] === 0) take(each);
      }
    }
  }
  return withoutMouths(triangles, { triangles: part, openings });
}

/** A triangle that opens into a pad at two sides is where the pad begins: it is the pad's, and the way into it the opening. */
function withoutMouths(triangles: Triangles, part: Part): Part {
  const inside = new Set(part.triangles);
  const openings = new Set(part.openings);
  for (const t of part.triangles) {
    const sides = [3 * t, 3 * t + 1, 3 * t + 2];
    const open = sides.filter((s) => part.openings.has(s));
    if (open.length < 2 || inside.size <= 1) continue;
    inside.delete(t);
    for (const s of open) openings.delete(s);
    for (const s of sides) {
      const neighbour = triangles.across[s]!;
      if (neighbour >= 0 && part.triangles.has(neighbour)) openings.add(otherSide(triangles, s));
    }
  }
  return { triangles: inside, openings: new Set([...openings].filter((s) => inside.has(triangleOf(s)))) };
}

/** Sides of a triangle that lead on: into the part, or out into a pad. */
function leads(triangles: Triangles, { triangles: inside, openings }: Part, t: number): readonly number[] {
  return [3 * t, 3 * t + 1, 3 * t + 2].filter(
    (s) => openings.has(s) || (triangles.across[s]! >= 0 && inside.has(triangles.across[s]!)),
  );
}

/** The part without what leads nowhere. */
function pruned(triangles: Triangles, part: Part): Part {
  const inside = new Set(part.triangles);
  const live = { triangles: inside, openings: part.openings };
  const queue = [...inside];
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    if (!inside.has(t)) continue;
    const on = leads(triangles, live, t);
    if (on.length > 1) continue;
    inside.delete(t);
    for (const s of on) if (!part.openings.has(s)) queue.push(triangles.across[s]!);
  }
  return { triangles: inside, openings: new Set([...part.openings].filter((s) => inside.has(triangleOf(s)))) };
}

/** A run as walked: sides entered on the way, each the side of the triangle that is entered. */
interface Walked {
  readonly entered: readonly number[];
  readonly triangles: readonly number[];
  /** Side through which it leaves into a pad, or the triangle at which ways meet. */
  readonly last: { readonly out: number } | { readonly meets: number };
}

/** Walks from a side into its triangle and on until a pad or a place where ways meet. */
function walk(triangles: Triangles, part: Part, side: number): Walked {
  const entered = [side];
  const passed: number[] = [];
  let enter = side;
  for (;;) {
    const t = triangleOf(enter);
    const on = leads(triangles, part, t).filter((s) => s !== enter);
    const [out] = on;
    if (on.length !== 1 || out === undefined || passed.includes(t)) {
      return { entered, triangles: passed, last: { meets: t } };
    }
    passed.push(t);
    if (part.openings.has(out)) {
      return { entered: [...entered, otherSide(triangles, out)], triangles: passed, last: { out } };
    }
    enter = otherSide(triangles, out);
    entered.push(enter);
  }
}

function leastOf(chords: readonly Chord[]): Mm {
  return chords.reduce((least, { width }) => Math.min(least, width), Infinity);
}

function lengthOf(chords: readonly Chord[]): Mm {
  return lengthOfLine(chords.map(({ middle }) => middle));
}

/** All runs of a part, each walked once. */
function runsOf(triangles: Triangles, part: Part): readonly Run[] {
  const opensInto = (s: number): RunEnd => ({ kind: 'pad', triangle: triangles.across[s]! });
  const meetings = [...part.triangles].filter((t) => leads(triangles, part, t).length > 2);
  const runs: Run[] = [];
  const walkedInto = new Set<number>();
  const add = (side: number, first: RunEnd) => {
    if (walkedInto.has(side)) return;
    const { entered, triangles: passed, last } = walk(triangles, part, side);
    const end = entered.at(-1)!;
    // The same run from its other end enters by the other side of its last chord.
    if (triangles.across[end]! >= 0) walkedInto.add(otherSide(triangles, end));
    const chords = entered.map((s) => chordInto(triangles, s));
    const second: RunEnd = 'out' in last ? opensInto(last.out) : { kind: 'meeting', triangles: [last.meets] };
    runs.push({ chords, triangles: passed, ends: [first, second], least: leastOf(chords) });
  };
  for (const s of part.openings) add(s, opensInto(s));
  for (const t of meetings) {
    for (const s of leads(triangles, part, t)) {
      if (!part.openings.has(s)) add(otherSide(triangles, s), { kind: 'meeting', triangles: [t] });
    }
  }
  return withMeetingsJoined(runs, triangles.corners.length / 3);
}

/** Takes short runs between two meetings for one meeting. */
function withMeetingsJoined(runs: readonly Run[], count: number): readonly Run[] {
  const groups = new UnionFind(count);
  const met = new Set(runs.flatMap(({ ends }) => ends.flatMap(trianglesMet)));
  for (const { ends } of runs.filter(isWithinMeeting)) {
    const [first = 0, ...others] = ends.flatMap(trianglesMet);
    for (const other of others) groups.join(first, other);
  }
  const members = new Map<number, number[]>();
  for (const t of met) {
    const root = groups.rootOf(t);
    const known = members.get(root);
    if (known) known.push(t);
    else members.set(root, [t]);
  }
  const joined = (end: RunEnd): RunEnd => {
    const [first] = trianglesMet(end);
    return first === undefined ? end : { kind: 'meeting', triangles: members.get(groups.rootOf(first))! };
  };
  const isOfGrille = ({ ends }: Run) => ends.some((end) => trianglesMet(joined(end)).length > MOST_MET);
  return runs
    .filter((run) => !isWithinMeeting(run) && !isOfGrille(run) && run.chords.length > 1)
    .map((run) => ({ ...run, ends: [joined(run.ends[0]), joined(run.ends[1])] }));
}

function trianglesMet(end: RunEnd): readonly number[] {
  return end.kind === 'meeting' ? end.triangles : [];
}

function isWithinMeeting({ chords, ends, least }: Run): boolean {
  return ends.every(({ kind }) => kind === 'meeting') && lengthOf(chords) < SAME_MEETING * least;
}

/**
 * The thin runs of a section.
 *
 * @param triangles - the section cut into triangles [mm]
 * @param thickest - wider ways across are not looked at [mm], > 0
 * @returns runs between pads or meetings; what is thin but leads nowhere is none
 */
export function thinRuns(triangles: Triangles, thickest: Mm): readonly Run[] {
  const sides: { readonly side: number; readonly width: Mm }[] = [];
  for (let side = 0; side < triangles.corners.length; side += 1) {
    if (triangles.across[side]! <= triangleOf(side)) continue;
    const width = widthOf(triangles, side);
    if (width <= thickest) sides.push({ side, width });
  }
  sides.sort((a, b) => a.width - b.width);
  const isDone = new Uint8Array(triangles.corners.length / 3);
  const isRun = new Uint8Array(isDone.length);
  const runs: Run[] = [];
  for (const { side, width } of sides) {
    if (isDone[triangleOf(side)] === 1 || isDone[triangles.across[side]!] === 1) continue;
    const part = gather(triangles, isRun, side, width);
    const live = pruned(triangles, part);
    const found = live.openings.size >= 2 ? runsOf(triangles, live) : [];
    runs.push(...found);
    for (const t of part.triangles) isDone[t] = 1;
    for (const run of found) for (const t of run.triangles) isRun[t] = 1;
  }
  return runs;
}
