import type { MiddleLine } from '../../src/core/geometry/band.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';

/** Turned about the origin, then moved; mirrored in the x axis before both where asked. */
export interface Motion extends Point {
  readonly turn: number;
  readonly mirrored?: boolean;
}

function line(count: number, at: (share: number) => Point & { readonly angle: number }, thickness: number): MiddleLine {
  const samples = Array.from({ length: count + 1 }, (_, i) => at(i / count));
  return {
    x: samples.map(({ x }) => x),
    y: samples.map(({ y }) => y),
    angle: samples.map(({ angle }) => angle),
    thickness: samples.map(() => thickness),
  };
}

export function straightBand(from: Point, to: Point, thickness: number, count = 12): MiddleLine {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const at = (share: number) => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
    angle,
  });
  return line(count, at, thickness);
}

/** Round a centre from one bearing to another, counter-clockwise when it grows. */
export function arcBand(
  centre: Point,
  radius: number,
  from: number,
  to: number,
  thickness: number,
  count = 40,
): MiddleLine {
  const at = (share: number) => {
    const bearing = from + share * (to - from);
    return {
      x: centre.x + radius * Math.cos(bearing),
      y: centre.y + radius * Math.sin(bearing),
      angle: bearing + (Math.sign(to - from) * Math.PI) / 2,
    };
  };
  return line(count, at, thickness);
}

export interface Spiral {
  readonly hub: number;
  readonly ring: number;
  readonly turns: number;
  readonly arms: number;
  readonly thickness: number;
}

/** Arms about the origin whose radius grows evenly with the angle. */
export function spiralBands({ hub, ring, turns, arms, thickness }: Spiral, count = 120): readonly MiddleLine[] {
  const sweep = 2 * Math.PI * turns;
  const rise = (ring - hub) / sweep;
  return Array.from({ length: arms }, (_, k) =>
    line(
      count,
      (share) => {
        const [radius, bearing] = [hub + share * (ring - hub), share * sweep + (2 * Math.PI * k) / arms];
        return {
          x: radius * Math.cos(bearing),
          y: radius * Math.sin(bearing),
          angle: bearing + Math.PI / 2 - Math.atan2(rise, radius),
        };
      },
      thickness,
    ),
  );
}

export function polygon(...corners: readonly (readonly [number, number])[]): Path {
  const points = corners.map(([x, y]) => ({ x, y }));
  const [start, ...rest] = points;
  return { start: start!, pieces: [...rest, start!].map((to) => ({ kind: 'line', to })) };
}

export const box = (left: number, bottom: number, right: number, top: number): Path =>
  polygon([left, bottom], [right, bottom], [right, top], [left, top]);

function movedPoint({ x, y }: Point, { turn, mirrored, ...by }: Motion): Point {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const up = mirrored ? -y : y;
  return { x: by.x + cos * x - sin * up, y: by.y + sin * x + cos * up };
}

export function movedBand(band: MiddleLine, motion: Motion): MiddleLine {
  const points = Array.from({ length: band.x.length }, (_, i) => movedPoint({ x: band.x[i]!, y: band.y[i]! }, motion));
  return {
    x: points.map(({ x }) => x),
    y: points.map(({ y }) => y),
    angle: Array.from(band.angle, (angle) => (motion.mirrored ? -angle : angle) + motion.turn),
    thickness: Array.from(band.thickness),
  };
}

/** A mirrored path runs the other way round, so it is turned back to keep its sense. */
export function movedPath(path: Path, motion: Motion): Path {
  const move = (point: Point) => movedPoint(point, motion);
  const moved: Path = {
    start: move(path.start),
    pieces: path.pieces.map((piece) =>
      piece.kind === 'line'
        ? { kind: 'line', to: move(piece.to) }
        : {
            kind: 'arc',
            to: move(piece.to),
            centre: move(piece.centre),
            counterClockwise: piece.counterClockwise !== (motion.mirrored ?? false),
          },
    ),
  };
  return motion.mirrored ? reversed(moved) : moved;
}

function reversed(path: Path): Path {
  const starts = path.pieces.map((_, i) => path.pieces[i - 1]?.to ?? path.start);
  const pieces = path.pieces.map((piece, i) =>
    piece.kind === 'line'
      ? ({ kind: 'line', to: starts[i]! } as const)
      : ({ ...piece, to: starts[i]!, counterClockwise: !piece.counterClockwise } as const),
  );
  return { start: path.pieces.at(-1)!.to, pieces: pieces.toReversed() };
}
