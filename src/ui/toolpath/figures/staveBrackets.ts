/** Brackets beside the stave that tie runs of layers to the findings that speak of them [px]. */
import type { LaidFinding } from '../../../core/inspect/toolpath/judgedPlace.ts';

export interface Bracket {
  readonly number: number;
  /** Middle of its balloon, from the top; and how many lanes to the right it stands. */
  readonly y: number;
  readonly lane: number;
  /** From top to bottom of each run of layers that it ties together. */
  readonly runs: readonly (readonly [top: number, bottom: number])[];
}

/** A balloon takes this much of a lane [px]. */
const BALLOON = 20;

type Run = readonly [top: number, bottom: number];

/** Where a run of layers stands, its top edge and its bottom edge. */
export type RunPlace = (first: number, last: number) => Run;

/** Runs of one finding that lie too near for a balloon each are tied together. */
function clusters(runs: readonly Run[]): readonly (readonly Run[])[] {
  const found: Run[][] = [];
  for (const run of runs.toSorted((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    const before = last?.at(-1);
    const middles = last && before ? (run[0] + run[1]) / 2 - (last[0]![0] + before[1]) / 2 : Infinity;
    if (last && middles < BALLOON + 2) last.push(run);
    else found.push([run]);
  }
  return found;
}

interface Spread {
  readonly from: number;
  readonly to: number;
}

function spreadOf(runs: readonly Run[]): Spread {
  const [from, to] = [runs[0]![0], runs.at(-1)![1]];
  const middle = (from + to) / 2;
  return { from: Math.min(from, middle - BALLOON / 2), to: Math.max(to, middle + BALLOON / 2) };
}

/** Every cluster of a finding in the first lane in which it is clear; nothing unless all of them find one. */
function placed(runs: readonly Run[], number: number, lanes: readonly (readonly Spread[])[]): readonly Bracket[] {
  const taken = lanes.map((lane) => [...lane]);
  const found: Bracket[] = [];
  for (const tied of clusters(runs)) {
    const spread = spreadOf(tied);
    const lane = taken.findIndex((own) => own.every(({ from, to }) => spread.to <= from || spread.from >= to));
    if (lane < 0) return [];
    taken[lane]!.push(spread);
    found.push({ number, y: (tied[0]![0] + tied.at(-1)![1]) / 2, lane, runs: tied });
  }
  return found;
}

/**
 * Findings of some layers come first, then those of all, which say least here.
 *
 * @param most - lanes there is room for; a finding that finds none is left out, and is said of a layer by the slider
 */
export function staveBrackets(
  numbered: ReadonlyMap<LaidFinding, number>,
  place: RunPlace,
  count: number,
  most: number,
): readonly Bracket[] {
  const isOfAll = (finding: LaidFinding) => finding.count >= count;
  const order = [...numbered].toSorted((a, b) => Number(isOfAll(a[0])) - Number(isOfAll(b[0])) || a[1] - b[1]);
  const lanes: Spread[][] = Array.from({ length: most }, () => []);
  const all: Bracket[] = [];
  for (const [{ layers }, number] of order) {
    const runs = layers.map(([first, last]) => place(first, last));
    for (const bracket of placed(runs, number, lanes)) {
      lanes[bracket.lane]!.push(spreadOf(bracket.runs));
      all.push(bracket);
    }
  }
  return all;
}

/** How many lanes are in use. */
export function lanesOf(brackets: readonly Bracket[]): number {
  return Math.max(0, ...brackets.map(({ lane }) => lane + 1));
}
