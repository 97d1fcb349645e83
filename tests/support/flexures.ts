/** Thin sections as the finder would tell them, made by hand: their fields follow from a few sizes. */
import fc from 'fast-check';
import type { Box3, Point3 } from '../../src/core/geometry/mesh/triangleMesh.ts';
import type { CentreLine, Flexure, FlexureKind } from '../../src/core/inspect/flexure.ts';
import type { AskedOfAll, PrintedAs } from '../../src/core/inspect/judged.ts';
import { asRad, radians, type Mm } from '../../src/core/units.ts';
import { length } from './generators.ts';
import { LEAF } from './joints.ts';
import { integral } from './quadrature.ts';

export const X: Point3 = { x: 1, y: 0, z: 0 };
export const Y: Point3 = { x: 0, y: 1, z: 0 };
export const Z: Point3 = { x: 0, y: 0, z: 1 };

export interface MadeFrom {
  readonly number?: number;
  readonly kind?: FlexureKind;
  readonly thickness?: Mm;
  /** From pad to pad, fillets in it. */
  readonly length?: Mm;
  readonly depth?: Mm;
  readonly fillet?: Mm;
  readonly shoulder?: Mm;
  readonly centre?: Point3;
  readonly along?: Point3;
  readonly across?: Point3;
  readonly axis?: Point3;
  readonly isInLoop?: boolean;
}

/** ∫(t_least/t)³ ds of an even leaf with quarter-circle fillets at its ends, by quadrature. */
export function bendingLengthOf(thickness: Mm, between: Mm, fillet: Mm): Mm {
  // By the angle round the fillet, so that the slope at its end does not spoil the rule.
  const slice = (angle: number) => {
    const high = thickness + 2 * fillet * (1 - Math.cos(angle));
    return (thickness / high) ** 3 * fillet * Math.cos(angle);
  };
  return between - 2 * fillet + 2 * integral(slice, 0, Math.PI / 2, 2000);
}

function straightLine(between: Mm): CentreLine {
  return {
    points: [
      { x: -between / 2, y: 0 },
      { x: between / 2, y: 0 },
    ],
    length: between,
    chord: between,
    rise: 0,
    turn: radians(0),
  };
}

/** A straight leaf along x, thin along y, bending about z, unless said otherwise. */
export function straight(made: MadeFrom = {}): Flexure {
  const { thickness = 0.84, length: between = 8, depth = 6, fillet = 0.8, shoulder = 10 } = made;
  const root = { fillet, joins: { kind: 'pad', pad: 1 }, shoulder } as const;
  return {
    number: made.number ?? 1,
    kind: made.kind ?? 'leaf',
    isCurved: false,
    centre: made.centre ?? { x: 14.5, y: 5, z: 3 },
    along: made.along ?? X,
    across: made.across ?? Y,
    axis: made.axis ?? Z,
    thickness: { least: thickness, mean: thickness },
    length: between,
    bendingLength: bendingLengthOf(thickness, between, fillet),
    depth,
    roots: [root, { ...root, joins: { kind: 'pad', pad: 2 } }],
    isInLoop: made.isInLoop ?? false,
    centreLine: straightLine(between),
    walls: [[], []],
    section: 0,
  };
}

export const neckOf = (made: MadeFrom = {}): Flexure =>
  straight({ kind: 'neck', length: 2, fillet: 0.6, shoulder: 6, ...made });

/** A web on the plate, thin in the build direction of the file. */
export const creaseOf = (made: MadeFrom = {}): Flexure =>
  straight({
    kind: 'crease',
    thickness: 0.4,
    length: 3,
    depth: 20,
    fillet: 0,
    shoulder: 2,
    centre: { x: 20, y: 10, z: 0.2 },
    across: Z,
    axis: Y,
    ...made,
  });

/** A round arc of a leaf that turns by an angle between its roots, its straight line along x. */
export function curved(turnDeg: number, made: MadeFrom = {}): Flexure {
  const { length: between = 16 } = made;
  const turn = radians(turnDeg);
  const radius = between / turn;
  const points = Array.from({ length: 33 }, (_, i) => {
    const angle = turn * (i / 32 - 0.5);
    return { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
  });
  const chord = 2 * radius * Math.sin(turn / 2);
  const rise = radius * (1 - Math.cos(turn / 2));
  const even = straight({ fillet: 0, length: between, ...made });
  return { ...even, isCurved: true, centreLine: { points, length: between, chord, rise, turn: asRad(turn) } };
}

export const archOf = (made: MadeFrom = {}): Flexure => {
  const arc = curved(60, { kind: 'arch', thickness: 1.26, length: 41, ...made });
  return { ...arc, isInLoop: made.isInLoop ?? true };
};

export const spiralRunOf = (made: MadeFrom = {}): Flexure =>
  curved(200, { kind: 'spiral run', length: 30, isInLoop: true, ...made });

/** The part of the look notes: three leaves of 0.42, 0.84 and 1.26 mm, 5 mm from pad to pad, fillets of 0.6 mm. */
export const THREE_LEAVES: readonly Flexure[] = [0.42, 0.84, 1.26].map((thickness, i) =>
  straight({ number: i + 1, thickness, length: 5, fillet: 0.6, centre: { x: 14.5 + 17 * i, y: 5, z: 3 } }),
);
export const THREE_LEAVES_BOX: Box3 = { min: { x: 0, y: 0, z: 0 }, max: { x: 63, y: 10, z: 6 } };
export const THREE_LEAVES_FILE = 'syn-leaves-042-084-126.stl';

/** As the look notes print it: 0.56 mm lines of PETG. */
export const AS_DROPPED: PrintedAs = { scale: 1, up: '+z', profile: { ...LEAF.profile, lineWidth: 0.56 } };
export const ASKED: AskedOfAll = { ways: 'one way', turn: radians(15), cycles: 5000, chance: 0.95, held: false };

export const BOX: Box3 = { min: { x: 0, y: 0, z: 0 }, max: { x: 60, y: 40, z: 12 } };

/** Flexures of every kind with sizes of a desktop print, numbered from 1. */
export const anyFlexures = (most: number): fc.Arbitrary<readonly Flexure[]> => {
  const makers = [straight, neckOf, creaseOf, (made: MadeFrom) => curved(80, made), archOf, spiralRunOf];
  const one = fc.record({
    maker: fc.constantFrom(...makers),
    thickness: length(0.2, 2.4),
    length: length(3, 20),
    depth: length(1, 12),
    fillet: fc.constantFrom(0, 0.3, 0.6, 1),
    isUpright: fc.boolean(),
  });
  return fc.array(one, { minLength: 1, maxLength: most }).map((made) =>
    made.map(({ maker, isUpright, ...sizes }, i) => {
      const standing = isUpright && maker === straight ? { along: Z, across: X, axis: Y } : {};
      return maker({ ...sizes, ...standing, number: i + 1 });
    }),
  );
};
