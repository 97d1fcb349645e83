/** Small networks drawn at random: one to three legs between a held pad and one that is moved. */
import fc from 'fast-check';
import type { BeamModel, Member, Shape } from '../../../src/core/beam/model.ts';
import type { Point } from '../../../src/core/geometry/outline.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { length } from '../../support/generators.ts';

interface Leg {
  readonly kind: 'straight' | 'arc' | 'wave';
  readonly bend: number;
  readonly from: Point;
  readonly to: Point;
  readonly thickness: number;
  readonly hinged: 'from' | null;
}

const leg: fc.Arbitrary<Leg> = fc.record({
  kind: fc.constantFrom('straight', 'arc', 'wave'),
  bend: length(-1, 1),
  from: fc.record({ x: length(-25, -18), y: length(-12, 12) }),
  to: fc.record({ x: length(5, 10), y: length(-12, 12) }),
  thickness: length(0.6, 1.2),
  hinged: fc.constantFrom(null, null, 'from'),
});

/** One to three legs between a held pad and one that is moved, partly let free. */
export interface Case {
  readonly legs: readonly Leg[];
  readonly y: number;
  readonly turn: number;
}
export const drawn: fc.Arbitrary<Case> = fc.record({
  // The first leg is never hinged, so that nothing is loose.
  legs: fc.tuple(leg, fc.array(leg, { maxLength: 2 })).map(([first, more]) => [{ ...first, hinged: null }, ...more]),
  y: length(-0.6, 0.6),
  turn: length(-0.03, 0.03),
});

export interface Way {
  readonly scale: number;
  readonly turn: number;
  readonly mirror: 1 | -1;
}
export const AS_IS: Way = { scale: 1, turn: 0, mirror: 1 };

function moved({ x, y }: Point, { scale, turn, mirror }: Way): Point {
  const [c, s] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { x: c * x - s * mirror * y, y: s * x + c * mirror * y };
}

function shapeOf({ kind, bend }: Leg, { scale, mirror }: Way): Shape {
  if (kind === 'arc') return { kind, turn: 1.5 * mirror * bend };
  return kind === 'wave' ? { kind, rise: 4 * scale * mirror * bend } : { kind };
}

export function networkOf({ legs, y, turn }: Case, way: Way = AS_IS): BeamModel {
  const to = moved({ x: 0, y }, way);
  const at = moved({ x: 8, y: 0 }, way);
  return network({
    nodes: legs.flatMap(({ from, to: end }, i) => [
      { id: `f${i}`, ...moved(from, way) },
      { id: `m${i}`, ...moved(end, way) },
    ]),
    members: legs.map((each, i): Member => ({
      id: `leg${i}`,
      from: `f${i}`,
      to: `m${i}`,
      shape: shapeOf(each, way),
      thickness: way.scale * each.thickness,
      width: way.scale * 6,
      plane: i,
      ...(each.hinged ? { hinged: each.hinged } : {}),
    })),
    pads: [
      { id: 'fixed', nodes: legs.map((_, i) => `f${i}`), at: moved({ x: -20, y: 0 }, way) },
      { id: 'moving', nodes: legs.map((_, i) => `m${i}`), at },
    ],
    supports: [{ at: 'fixed', ...HELD }],
    motions: [{ at: 'moving', x: to.x, y: to.y, turn: way.mirror * turn }],
  });
}
