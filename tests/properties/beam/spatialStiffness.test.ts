import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BeamModel, BeamNode, Member, Shape } from '../../../src/core/beam/model.ts';
import { spatialStiffness } from '../../../src/core/beam/spatialStiffness.ts';
import type { Point } from '../../../src/core/geometry/outline.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { angle, length } from '../../support/generators.ts';

/** A member between two places that turn and rise by shares of a chord along x, so that it can be turned and scaled. */
type Kind = 'straight' | 'arc' | 'wave' | 'rise' | 'spiral';
interface Leg {
  readonly kind: Kind;
  readonly bend: number;
  readonly from: Point;
  readonly to: Point;
  readonly thickness: number;
  readonly hinged: Member['hinged'] | null;
  /** Whether it comes to the moving pad by way of a free node. */
  readonly viaNode: Point | null;
}

const place = (xMin: number, xMax: number) => fc.record({ x: length(xMin, xMax), y: length(-20, 20) });
const leg: fc.Arbitrary<Leg> = fc.record({
  kind: fc.constantFrom<Kind>('straight', 'arc', 'wave', 'rise', 'spiral'),
  bend: length(-1, 1),
  from: place(-25, -15),
  to: place(5, 10),
  thickness: length(0.4, 2),
  hinged: fc.constantFrom(null, null, 'from', 'to', 'both'),
  viaNode: fc.option(place(15, 25)),
});
const legs = fc.array(leg, { minLength: 1, maxLength: 4 });

/** Scale, turn [rad] and mirror (about the x axis) of a whole network. */
interface Way {
  readonly scale: number;
  readonly turn: number;
  readonly mirror: 1 | -1;
}
const AS_IS: Way = { scale: 1, turn: 0, mirror: 1 };

function moved({ x, y }: Point, { scale, turn, mirror }: Way): Point {
  const [c, s] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { x: c * x - s * mirror * y, y: s * x + c * mirror * y };
}

function shapeOf({ kind, bend, from, to }: Leg, way: Way): Shape {
  switch (kind) {
    case 'straight':
      return { kind };
    case 'arc':
      return { kind, turn: way.mirror * 3 * bend };
    case 'wave':
      return { kind, rise: way.mirror * way.scale * 8 * bend };
    case 'rise':
      return { kind, heading: way.turn };
    case 'spiral': {
      // About a centre to the side of the chord, so that both radii are well above 0.
      const centre = { x: (from.x + to.x) / 2, y: 40 * (bend < 0 ? -1 : 1) };
      const seen = (p: Point) => Math.atan2(p.y - centre.y, p.x - centre.x);
      const turns = (seen(to) - seen(from)) / (2 * Math.PI);
      return { kind, centre: moved(centre, way), turns: way.mirror * (turns - Math.round(turns)) };
    }
  }
}

function built(list: readonly Leg[], way: Way = AS_IS, modulus = 2000): BeamModel {
  const free = list.map(({ viaNode }, i) => (viaNode ? [{ id: `v${i}`, ...moved(viaNode, way) }] : []));
  const plain = (id: string, from: string, to: string, each: Leg) => ({
    id,
    from,
    to,
    shape: { kind: 'straight' } as const,
    thickness: way.scale * each.thickness,
    width: way.scale * 4,
  });
  const at = moved({ x: 3, y: 2 }, way);
  return network({
    modulus,
    nodes: list.flatMap((each, i) => [
      { id: `f${i}`, ...moved(each.from, way) },
      { id: `m${i}`, ...moved(each.to, way) },
      ...free[i]!,
    ]),
    members: list.flatMap((each, i) => [
      {
        ...plain(`leg${i}`, `f${i}`, `m${i}`, each),
        shape: shapeOf(each, way),
        ...(each.hinged ? { hinged: each.hinged } : {}),
      },
      ...(each.viaNode ? [plain(`a${i}`, `f${i}`, `v${i}`, each), plain(`b${i}`, `v${i}`, `m${i}`, each)] : []),
    ]),
    pads: [
      { id: 'fixed', nodes: list.map((_, i) => `f${i}`), at },
      { id: 'moving', nodes: list.map((_, i) => `m${i}`), at },
    ],
    supports: [{ at: 'fixed', ...HELD }],
  });
}

type Matrix = readonly (readonly number[])[];
const matrixOf = (model: BeamModel, pad = 'moving') => spatialStiffness(model, pad).matrix;

/** Each entry is judged by the diagonal of its row and column, which carries their units. */
function expectSame(actual: Matrix, expected: Matrix, within = 1e-7): void {
  expected.forEach((row, i) =>
    row.forEach((value, j) => {
      const size = Math.sqrt(Math.abs(expected[i]![i]! * expected[j]![j]!)) + 1e-9;
      expect(Math.abs(actual[i]![j]! - value) / size).toBeLessThan(within);
    }),
  );
}

/** Wᵀ·K·W */
function inWaysOf(matrix: Matrix, way: Matrix): Matrix {
  const times = (a: Matrix, b: Matrix) =>
    a.map((row) => b[0]!.map((_, j) => row.reduce((s, v, k) => s + v * b[k]![j]!, 0)));
  const across = way[0]!.map((_, j) => way.map((row) => row[j]!));
  return times(across, times(matrix, way));
}

const diagonal = (values: readonly number[]): Matrix => values.map((v, i) => values.map((_, j) => (i === j ? v : 0)));

/** Each case solves a network of up to twelve curved members twice. */
const RUNS = { numRuns: 50 };

describe('the stiffness of a pad in space', () => {
  it('is symmetric and never helps a movement along', () => {
    fc.assert(
      fc.property(legs, fc.array(length(-1, 1), { minLength: 6, maxLength: 6 }), (list, way) => {
        const matrix = matrixOf(built(list));
        expect(matrix).toEqual(matrix.map((row, i) => row.map((_, j) => matrix[j]![i]!)));
        // Movements are weighed by what resists them, so that a soft one is not lost in the rounding of a stiff one.
        const move = way.map((w, i) => (matrix[i]![i]! > 0 ? w / Math.sqrt(matrix[i]![i]!) : 0));
        const work = move.reduce((sum, a, i) => sum + move.reduce((part, b, j) => part + a * matrix[i]![j]! * b, 0), 0);
        expect(work).toBeGreaterThan(-1e-10);
      }),
      RUNS,
    );
  });

  it('free is never above held, and neither is below 0', () => {
    fc.assert(
      fc.property(legs, (list) => {
        const { free, held } = spatialStiffness(built(list), 'moving');
        for (const name of Object.keys(free) as (keyof typeof free)[]) {
          expect(free[name]).toBeGreaterThanOrEqual(0);
          expect(free[name]).toBeLessThanOrEqual(held[name] * (1 + 1e-12));
        }
      }),
      RUNS,
    );
  });

  it('is that of the other pad when that one is let go instead: action is reaction', () => {
    fc.assert(
      fc.property(legs, (list) => {
        const model = built(list);
        const other = { ...model, supports: [{ at: 'moving', ...HELD }] };
        expectSame(matrixOf(other, 'fixed'), matrixOf(model));
      }),
      RUNS,
    );
  });

  it('does not depend on which end of a member is called the first', () => {
    fc.assert(
      fc.property(legs, (list) => {
        const model = built(list);
        const ends = { from: 'to', to: 'from', both: 'both' } as const;
        const turned = model.members.map((member): Member => {
          const { shape, hinged } = member;
          const back: Shape =
            shape.kind === 'arc'
              ? { ...shape, turn: -shape.turn }
              : shape.kind === 'wave'
                ? { ...shape, rise: -shape.rise }
                : shape.kind === 'rise'
                  ? { ...shape, heading: shape.heading + Math.PI }
                  : shape.kind === 'spiral'
                    ? { ...shape, turns: -shape.turns }
                    : shape;
          const swapped = { ...member, from: member.to, to: member.from, shape: back };
          return hinged ? { ...swapped, hinged: ends[hinged] } : swapped;
        });
        expectSame(matrixOf({ ...model, members: turned }), matrixOf(model));
      }),
      RUNS,
    );
  });

  it('turns with the network', () => {
    fc.assert(
      fc.property(legs, angle(-180, 180), (list, turn) => {
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const back = [
          [c, s, 0, 0, 0, 0],
          [-s, c, 0, 0, 0, 0],
          [0, 0, 1, 0, 0, 0],
          [0, 0, 0, c, s, 0],
          [0, 0, 0, -s, c, 0],
          [0, 0, 0, 0, 0, 1],
        ];
        expectSame(matrixOf(built(list, { ...AS_IS, turn })), inWaysOf(matrixOf(built(list)), back));
      }),
      RUNS,
    );
  });

  it('is mirrored with the network: a move across and turns about the other two axes change sign', () => {
    fc.assert(
      fc.property(legs, (list) => {
        const image = inWaysOf(matrixOf(built(list)), diagonal([1, -1, 1, -1, 1, -1]));
        expectSame(matrixOf(built(list, { ...AS_IS, mirror: -1 })), image);
      }),
      RUNS,
    );
  });

  it('grows with the modulus, and with the size: moves by it, couplings by its square, turns by its cube', () => {
    fc.assert(
      fc.property(legs, length(0.2, 5), length(0.1, 10), (list, scale, stiffer) => {
        const root = Math.sqrt(scale * stiffer);
        const sizes = diagonal([1, 1, 1, scale, scale, scale].map((turn) => root * turn));
        const larger = built(list, { ...AS_IS, scale }, 2000 * stiffer);
        expectSame(matrixOf(larger), inWaysOf(matrixOf(built(list)), sizes));
      }),
      RUNS,
    );
  });

  it('about another point is the same body seen from there', () => {
    fc.assert(
      fc.property(legs, place(-30, 30), (list, at) => {
        const model = built(list);
        const [fixed, moving] = model.pads;
        const other = { ...model, pads: [fixed!, { ...moving!, at }] };
        // A move of the new point in terms of moves and turns at the old one.
        const [dx, dy] = [3 - at.x, 2 - at.y];
        const carried = [
          [1, 0, 0, 0, 0, -dy],
          [0, 1, 0, 0, 0, dx],
          [0, 0, 1, dy, -dx, 0],
          ...diagonal([1, 1, 1, 1, 1, 1]).slice(3),
        ];
        expectSame(matrixOf(other), inWaysOf(matrixOf(model), carried));
      }),
      RUNS,
    );
  });

  it('does not change where a straight member is cut by a free node', () => {
    fc.assert(
      fc.property(leg, length(0.1, 0.9), (each, share) => {
        const model = built([{ ...each, kind: 'straight', hinged: null, viaNode: null }]);
        const [from, to] = model.nodes as readonly [BeamNode, BeamNode];
        const cut = { id: 'cut', x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
        const [member] = model.members as readonly [Member];
        const halves = [
          { ...member, to: 'cut' },
          { ...member, id: 'second', from: 'cut' },
        ];
        expectSame(matrixOf({ ...model, nodes: [...model.nodes, cut], members: halves }), matrixOf(model));
      }),
      RUNS,
    );
  });

  it('of members side by side is the sum of theirs', () => {
    fc.assert(
      fc.property(legs, legs, (some, others) => {
        const [a, b] = [matrixOf(built(some)), matrixOf(built(others))];
        expectSame(
          matrixOf(built([...some, ...others])),
          a.map((row, i) => row.map((v, j) => v + b[i]![j]!)),
        );
      }),
      RUNS,
    );
  });
});
