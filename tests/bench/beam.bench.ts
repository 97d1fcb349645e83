/**
 * The solver: converged points a second. One run of a bench is a whole path of 100 points, so that points a second are
 * 100 times its runs a second; an arch is its whole way on both paths, in milliseconds.
 */
import { bench, describe } from 'vitest';
import type { BeamModel } from '../../src/core/beam/model.ts';
import { followPath } from '../../src/core/beam/solve.ts';
import { solveAt } from '../../src/core/beam/solveAt.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import { assess } from '../../src/core/design/assess.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { newJoint } from '../../src/store/newJoint.ts';

const EMPTY = { modulus: 1500, poisson: 0.38, pads: [], loads: [], springs: [], ties: [], motions: [] } as const;

const leaf = (motion: BeamModel['motions'][number], thickness = 0.84): BeamModel => ({
  ...EMPTY,
  nodes: [
    { id: 'root', x: 0, y: 0 },
    { id: 'tip', x: 12, y: 0 },
  ],
  members: [{ id: 'leaf', from: 'root', to: 'tip', shape: { kind: 'straight' }, thickness, width: 6 }],
  supports: [{ at: 'root', x: true, y: true, turn: true }],
  motions: [motion],
});

function at(radius: number, angle: number) {
  return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
}

function spiral(thickness = 0.84): BeamModel {
  const arms = [0, 1, 2].map((k) => (k * 2 * Math.PI) / 3);
  const turns = 1.25;
  return {
    ...EMPTY,
    nodes: arms.flatMap((angle, k) => [
      { id: `hub${k}`, ...at(3, angle) },
      { id: `ring${k}`, ...at(11.5, angle + 2 * Math.PI * turns) },
    ]),
    members: arms.map((_, k) => ({
      id: `arm${k}`,
      from: `hub${k}`,
      to: `ring${k}`,
      shape: { kind: 'spiral', centre: { x: 0, y: 0 }, turns },
      thickness,
      width: 6,
    })),
    pads: [
      { id: 'hub', nodes: arms.map((_, k) => `hub${k}`), at: { x: 0, y: 0 } },
      { id: 'ring', nodes: arms.map((_, k) => `ring${k}`), at: { x: 0, y: 0 } },
    ],
    supports: [
      { at: 'ring', x: true, y: true, turn: true },
      { at: 'hub', x: true, y: true },
    ],
    motions: [{ at: 'hub', turn: (35 * Math.PI) / 180 }],
  };
}

/** One arch that may lean, pushed through from its first rest past its second. */
function arch(thickness = 0.42): BeamModel {
  const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: 6 } as const;
  const held = { x: true, y: true, turn: true } as const;
  return {
    ...EMPTY,
    nodes: [
      { id: 'left', x: 0, y: 0 },
      { id: 'middle', x: 20, y: 3 },
      { id: 'right', x: 40, y: 0 },
    ],
    members: [
      { id: 'rising', from: 'left', to: 'middle', ...half },
      { id: 'falling', from: 'middle', to: 'right', ...half },
    ],
    supports: [
      { at: 'left', ...held },
      { at: 'right', ...held },
    ],
    motions: [{ at: 'middle', y: -6.15 }],
  };
}

const POINTS = { parts: 100 } as const;

describe('converged points, 100 a run, with an estimate of error for the path', () => {
  bench('one leaf bent 90° by a moment', () => void followPath(leaf({ at: 'tip', turn: Math.PI / 2 }), POINTS));
  bench('one leaf pushed half its length at the tip', () => void followPath(leaf({ at: 'tip', y: 6 }), POINTS));
  bench('a three-arm spiral turned 35°', () => void followPath(spiral(), POINTS));
});

describe('whole ways', () => {
  bench('an arch, both paths, 40 points', () => void followPath(arch(), {}));
  for (const family of FAMILIES) {
    const joint = newJoint(family, family.id);
    bench(`${family.id}, as the worker answers it`, () => void assess(joint, bySolver()));
  }
});

/** Each and its neighbour 5 % thicker, found from it and walked from rest. */
const NEIGHBOURS = [
  ['a leaf', leaf({ at: 'tip', y: 6 }), leaf({ at: 'tip', y: 6 }, 0.88)],
  ['a spiral', spiral(), spiral(0.88)],
  ['an arch past its second rest', arch(), arch(0.44)],
] as const;

describe.each(NEIGHBOURS)('one state of %s', (_, model, neighbour) => {
  const before = solveAt(model, { keep: true });
  const from = before.ok ? before.value.kept : undefined;
  const found = from ? solveAt(neighbour, { from }) : before;
  if (!from || !found.ok || !found.value.warm) throw new Error('nothing is warm');
  bench('from its neighbour', () => void solveAt(neighbour, { from }));
  bench('by a walk from rest', () => void solveAt(neighbour));
});
