/** Whether every part of a network is held against floating away as a whole. */
import type { Point } from '../geometry/outline.ts';
import type { Problem } from '../problems.ts';
import { namedFrames } from './frames.ts';
import { groupsOf } from './groups.ts';
import type { BeamModel } from './model.ts';
import { problem, quoted } from './modelProblems.ts';

const DIRECTIONS = ['x', 'y', 'turn'] as const;
type Direction = (typeof DIRECTIONS)[number];

/** Columns of the movements of parts (three each: along x, along y, turning), as pairs of column and coefficient. */
type Row = readonly (readonly [column: number, times: number])[];

/**
 * Parts of a network that can move as a whole. Each part, whatever its members and hinges, is taken as one rigid body:
 * what moves then can never be solved, and what moves by its hinges alone is left to the solver.
 *
 * @param model - network whose numbers, names and shapes have been checked [mm]
 * @returns one problem [-] for each part that something leaves free
 */
export function checkHeld(model: BeamModel): readonly Problem[] {
  const { names, places, ofNode } = namedFrames(model);
  const parts = groupsOf(
    names.length,
    model.members.map(({ from, to }) => [ofNode.get(from)!, ofNode.get(to)!] as const),
  );
  const rows = holdsOf(model, names, places, parts);
  if (rows.length === 0) {
    return [problem('network-loose', 'supports', 'Nothing holds the network; give a support for a pad or a free node')];
  }
  const isJoined = new Set(model.members.flatMap(({ from, to }) => [ofNode.get(from)!, ofNode.get(to)!]));
  const free = freeColumns(rows, 3 * parts.length);
  return parts.flatMap((part, p) => {
    const loose = DIRECTIONS.filter((_, d) => free.has(3 * p + d));
    return loose.length === 0
      ? []
      : [
          floats(
            names[part[0]!]!,
            loose,
            part.some((frame) => isJoined.has(frame)),
          ),
        ];
  });
}

function floats(name: string, loose: readonly Direction[], isJoined: boolean): Problem {
  if (!isJoined) {
    const message = `No member joins ${quoted(name)}, and nothing holds it; join it, hold it or leave it out`;
    return problem('network-loose', 'members', message, { value: name });
  }
  const ways = loose.map((direction) => (direction === 'turn' ? 'turning' : `moving along ${direction}`)).join(' and ');
  const message = `Nothing keeps ${quoted(name)} and what hangs together with it from ${ways}; give a support, a motion or a spring`;
  return problem('network-loose', 'supports', message, { value: name });
}

/** What supports, motions, springs and ties demand of the movements of the parts. */
function holdsOf(
  { supports, motions, springs, ties }: BeamModel,
  names: readonly string[],
  places: readonly Point[],
  parts: readonly (readonly number[])[],
): readonly Row[] {
  const move = movementOf(names, places, parts);
  const ofGround = [
    ...supports.map((support) => ({ at: support.at, is: (d: Direction) => support[d] === true })),
    ...motions.map((motion) => ({ at: motion.at, is: (d: Direction) => motion[d] !== undefined })),
  ].flatMap(({ at, is }) => DIRECTIONS.filter(is).map((d) => move(at, d)));
  const ofSprings = springs.flatMap((spring) => {
    const pulls = (d: Direction) => (spring[d] ?? 0) + (d === 'turn' ? (spring.twist ?? 0) : 0) > 0;
    const other = (d: Direction) => (spring.to === undefined ? [] : scaled(move(spring.to, d), -1));
    return DIRECTIONS.filter(pulls).map((d) => [...move(spring.at, d), ...other(d)]);
  });
  const ofTies = ties.flatMap((tie) =>
    DIRECTIONS.flatMap((d) => {
      const times = tie[d];
      return times === undefined ? [] : [[...move(tie.at, d), ...scaled(move(tie.like, d), -times)]];
    }),
  );
  return [...ofGround, ...ofSprings, ...ofTies];
}

function scaled(row: Row, times: number): Row {
  return row.map(([column, value]) => [column, times * value] as const);
}

/** How a pad or free node moves with its part; lengths are counted in the size of the network, so that a turn weighs as much. */
function movementOf(names: readonly string[], places: readonly Point[], parts: readonly (readonly number[])[]) {
  const index = new Map(names.map((name, i) => [name, i] as const));
  const partOf = new Map(parts.flatMap((part, p) => part.map((frame) => [frame, p] as const)));
  const middle = {
    x: places.reduce((sum, { x }) => sum + x, 0) / places.length,
    y: places.reduce((sum, { y }) => sum + y, 0) / places.length,
  };
  const size = Math.max(1e-3, ...places.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y)));
  return (at: string, direction: Direction): Row => {
    const frame = index.get(at)!;
    const first = 3 * partOf.get(frame)!;
    const place = places[frame]!;
    if (direction === 'turn') return [[first + 2, 1]];
    if (direction === 'x')
      return [
        [first, 1],
        [first + 2, -(place.y - middle.y) / size],
      ];
    return [
      [first + 1, 1],
      [first + 2, (place.x - middle.x) / size],
    ];
  };
}

/** Less than this of a demand left over by others is rounding. */
const NOTHING_LEFT = 1e-9;

/** Columns that elimination finds nothing for. */
function freeColumns(rows: readonly Row[], columns: number): ReadonlySet<number> {
  const full = rows.map((row) => {
    const dense = new Float64Array(columns);
    for (const [column, value] of row) dense[column] = dense[column]! + value;
    return dense;
  });
  const free = new Set<number>();
  let used = 0;
  for (let column = 0; column < columns; column += 1) {
    const best = largestFrom(full, used, column);
    const pivot = full[best]?.[column] ?? 0;
    if (!(Math.abs(pivot) > NOTHING_LEFT)) {
      free.add(column);
      continue;
    }
    [full[used], full[best]] = [full[best]!, full[used]!];
    const row = full[used]!;
    used += 1;
    for (const target of full.slice(used)) {
      const share = target[column]! / pivot;
      if (share !== 0) for (let j = column; j < columns; j += 1) target[j] = target[j]! - share * row[j]!;
    }
  }
  return free;
}

function largestFrom(rows: readonly Float64Array[], first: number, column: number): number {
  let best = first;
  for (let i = first + 1; i < rows.length; i += 1) {
    if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
  }
  return best;
}
