import { describe, expect, it } from 'vitest';
import { filamentOf } from '../../../src/core/inspect/toolpath/filamentOf.ts';
import {
  FEED,
  FLAGS,
  JUMP,
  LAID,
  LENGTH,
  LINE,
  MOVE_SIZE,
  TOOL,
  X,
  Y,
  Z,
} from '../../../src/core/inspect/toolpath/moves.ts';
import { Paths, type LaidPath, type Travel } from '../../../src/core/inspect/toolpath/paths.ts';
import { Steps } from '../../../src/core/inspect/toolpath/steps.ts';
import { beadArea } from '../../../src/core/print/bead.ts';
import { expectClose } from '../../support/close.ts';

const FILAMENT = (Math.PI * 1.75 ** 2) / 4;
const FEED_PER_MM = beadArea(0.45, 0.2) / FILAMENT;

interface Move {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
  /** Filament per length, as laid; below 0 a retraction on the way. */
  readonly feed?: number;
  readonly tool?: number;
  readonly jump?: boolean;
}

type Kept = Omit<LaidPath, 'x' | 'y' | 'z' | 'feed'> & {
  readonly corners: readonly (readonly [number, number, number])[];
};

function run(moves: readonly Move[], pitch?: number) {
  const paths: Kept[] = [];
  const travels: Travel[] = [];
  const heights: number[] = [];
  const sink = new Paths(
    {
      path: ({ x, y, z, feed, ...rest }) => {
        expect(feed.length).toBeGreaterThanOrEqual(rest.count - 1);
        paths.push({ ...rest, corners: Array.from({ length: rest.count }, (_one, i) => [x[i]!, y[i]!, z[i]!]) });
      },
      travel: (travel) => travels.push(travel),
      height: (z) => heights.push(z),
    },
    1.75,
    pitch,
  );
  let [x, y, z] = [0, 0, 0];
  for (const [i, move] of moves.entries()) {
    const row = new Float64Array(MOVE_SIZE);
    const to = { x: move.x, y: move.y, z: move.z ?? z };
    const length = Math.hypot(to.x - x, to.y - y, to.z - z);
    row[X] = to.x;
    row[Y] = to.y;
    row[Z] = to.z;
    row[LENGTH] = move.jump ? 0 : length;
    row[FEED] = (move.feed ?? 0) * length;
    row[LAID] = Math.max(0, row[FEED]);
    row[FLAGS] = (move.jump ? JUMP : 0) + TOOL * (move.tool ?? 0);
    row[LINE] = i + 1;
    sink.take(row, 1);
    ({ x, y, z } = to);
  }
  sink.end();
  return { paths, travels, heights };
}

const at = (x: number, y: number, z?: number): Move => ({ x, y, ...(z !== undefined && { z }) });
const laid = (x: number, y: number, more: Partial<Move> = {}): Move => ({ x, y, feed: FEED_PER_MM, ...more });
const square = (z: number, apart = 0): readonly Move[] => [
  at(0, 0, z),
  laid(10, 0),
  laid(10, 10),
  laid(0, 10),
  laid(0, apart),
];

describe('paths', () => {
  it('go on until the nozzle moves without laying, changes its height or tool, or is homed', () => {
    const { paths } = run([
      at(0, 0, 0.2),
      laid(5, 0),
      laid(5, 5),
      at(8, 8),
      laid(9, 9),
      laid(10, 9, { tool: 1 }),
      at(10, 9, 0.4),
      laid(0, 9, { tool: 1 }),
      { x: 0, y: 0, z: 0.4, jump: true },
      laid(3, 0),
    ]);
    expect(paths.map(({ count }) => count)).toEqual([3, 2, 2, 2, 2]);
    expect(paths.map(({ line }) => line)).toEqual([2, 5, 6, 8, 10]);
    expect(paths.map(({ tool }) => tool)).toEqual([0, 0, 1, 1, 0]);
    expect(paths.every(({ isClosed }) => !isClosed)).toBe(true);
  });

  it('are closed where they end less than some widths from where they began', () => {
    for (const [apart, isClosed] of [
      [0, true],
      [0.3, true],
      [0.62, true],
      [0.7, false],
      [2, false],
    ] as const) {
      expect(run(square(0.2, apart)).paths.map((path) => path.isClosed)).toEqual([isClosed]);
    }
  });

  it('are not closed by being short', () => {
    const { paths } = run([at(0, 0, 0.2), laid(0.5, 0), laid(0.5, 0.5), laid(0, 0.4)]);
    expect(paths.map(({ isClosed }) => isClosed)).toEqual([false]);
  });

  it('count heights by what is laid, not by where the nozzle goes', () => {
    const { heights, travels, paths } = run([
      ...square(0.3),
      at(0, 0, 5),
      at(20, 0, 5),
      at(20, 0, 0.3),
      laid(30, 0),
      ...square(0.5),
    ]);
    expect(heights).toEqual([0.3, 0.5]);
    expect(travels.some(({ z }) => z === 5)).toBe(true);
    expect(travels.every(({ over }) => over <= 0.3)).toBe(true);
    expectClose(paths.at(-1)!.height, 0.2, { abs: 1e-9, because: 'rounding' });
  });

  it('of a spiral are handed on turn by turn, with one beginning and one end', () => {
    const turns = 4;
    const steps = 64;
    const moves = Array.from({ length: turns * steps + 1 }, (_, i) => {
      const angle = (2 * Math.PI * i) / steps;
      const where = { x: 10 * Math.cos(angle), y: 10 * Math.sin(angle), z: 0.2 + (0.3 * i) / steps };
      return i === 0 ? { ...where } : { ...where, feed: FEED_PER_MM };
    });
    const { paths } = run(moves, 0.3);
    expect(paths.map(({ count }) => count)).toEqual([65, 65, 65, 65]);
    expect(paths.map(({ begins }) => begins)).toEqual([true, false, false, false]);
    expect(paths.map(({ isClosed }) => isClosed)).toEqual([true, true, true, true]);
    expect(paths.every(({ height }) => height === 0.3)).toBe(true);
  });
});

const heightsOf = (...zs: readonly number[]) => {
  const steps = new Steps();
  return zs.map((z) => {
    steps.at(z);
    return Number(steps.height.toFixed(6));
  });
};

describe('heights', () => {
  it('are over what was laid last, lower down', () => {
    expect(heightsOf(0.2, 0.4, 0.4, 0.7)).toEqual([0.2, 0.2, 0.2, 0.3]);
  });

  it('begin on the plate again where the next part of the plate begins', () => {
    expect(heightsOf(0.2, 0.4, 0.6, 0.2, 0.4, 0.6)).toEqual([0.2, 0.2, 0.2, 0.2, 0.2, 0.2]);
    expect(heightsOf(0.3, 0.6, 0.2, 0.5)).toEqual([0.3, 0.3, 0.2, 0.3]);
  });

  it('are not upset by a line that was laid higher at first, to fill the nozzle', () => {
    expect(heightsOf(0.3, 0.2, 0.4)).toEqual([0.3, 0.2, 0.2]);
  });
});

/** A line 0.42 wide and 0.2 high, of a filament. */
const layers = (diameter: number) => [
  { length: 100, laid: (100 * beadArea(0.42, 0.2)) / ((Math.PI * diameter ** 2) / 4), height: 0.2 },
];

const figures = (diameter: number) => ({ layers: layers(diameter) }) as unknown as Parameters<typeof filamentOf>[0];

describe('the filament', () => {
  it('is the one with which lines are at least as wide as high', () => {
    expect(filamentOf(figures(1.75))).toEqual({ diameter: 1.75, by: 'sized' });
    expect(filamentOf(figures(2.85))).toEqual({ diameter: 2.85, by: 'sized' });
    expect(filamentOf(figures(2.85), 1.75)).toEqual({ diameter: 1.75, by: 'told' });
    expect(filamentOf({ layers: [] })).toEqual({ diameter: 1.75, by: 'sized' });
  });
});
