/**
 * The formulas of stages, folds, spirals, arches and toggles as the working writes them, worked out by the computer
 * algebra, against figures from outside this program: rows of checkvalues, the tables of thin rings, arms shot as curves,
 * a right-angled triangle; each as its own reference test cites it ([small-deflection], [end-loaded-elastica], [tie-beam],
 * [unit-load-method], [spiral-arm], [shallow-arch], [two-bar-truss]). Fair, because no figure of the core is looked at here.
 */
import { describe, it } from 'vitest';
import { radians } from '../../src/core/units.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';
import { workedOf } from '../support/workedOf.ts';

/** Compares, and remembers by how much it is off. */
function expectNear(group: string, actual: number, expected: number, rel: number, because: string): void {
  noteResidual(group, actual, expected);
  expectClose(actual, expected, { rel, because });
}

describe('parallel leaves', () => {
  it.each(checkValues('C', 'C-k-'))('$id: two leaves at little travel', (row) => {
    const sizes = { length: input(row, 'L_mm'), depth: input(row, 'b_mm'), spacing: 60, leaves: 2 };
    const worked = workedOf('parallelLeaves', sizes, { drive: 'shifted', amount: 0.1, thickness: input(row, 't_mm') });
    expectRow(row, (worked('n_ℓ') * worked('k_ℓ') * input(row, 'E_MPa')) / worked('E'));
  });

  it.each(checkValues('C', 'C-large-'))('$id: ends free to approach', (row) => {
    const moved = { drive: 'guided', amount: input(row, 'delta_over_L') * 20, thickness: 0.4 };
    const worked = workedOf('parallelLeaves', { length: 20 }, moved);
    const [load = Number.NaN, , moment = Number.NaN, slope = Number.NaN] = row.expected;
    const nine = 'nine places to a piece: ten figures';
    expectNear('load', 4 * worked('a') ** 2, load, 1e-9, nine);
    expectNear('end moment', 2 * worked('m_0'), moment, 1e-9, nine);
    expectNear('slope at mid-length', worked('θ_t'), slope, 1e-9, nine);
  });

  it.each(checkValues('C', 'C-over-'))('$id: ends held at their distance', (row) => {
    const moved = { drive: 'held', amount: input(row, 'delta_over_t'), thickness: 1 };
    const worked = workedOf('parallelLeaves', { length: 150, spacing: 30 }, moved);
    const one = worked('F') / worked('n_ℓ') / (worked('E') * worked('I'));
    expectRow(row, one * worked('L') ** 3, -worked('n_t'));
  });
});

describe('a folded leaf of two short runs', () => {
  const [length, thickness] = [0.5, 0.2];
  const radius = 30;
  /** Give of two legs and half a circle between them that are pulled apart and kept from turning, times E·I, by hand. */
  const give = (leg: number) => {
    const first = leg ** 2 + Math.PI * radius * leg + 2 * radius ** 2;
    const second =
      (2 * leg ** 3) / 3 + Math.PI * radius * leg ** 2 + 4 * leg * radius ** 2 + (Math.PI * radius ** 3) / 2;
    return second - first ** 2 / (2 * leg + Math.PI * radius);
  };

  it('opens as the tables of thin rings say, but for its legs', () => {
    const sizes = { runs: 2, length, spacing: 2 * radius };
    const worked = workedOf('foldedLeaf', sizes, { drive: 'pulled', amount: 0.5, thickness });
    // Either half of a ring carries half of what pulls it.
    const opening = thickness ** 3 / 12 / (2 * worked('p_x') * radius ** 3);
    const alone = opening * (give(0) / give(length));
    noteResidual('ring', alone, 0.1488);
    expectClose(alone, 0.1488, { printedTo: 4 });
  });
});

describe('a hub on spiral arms', () => {
  it.each(checkValues('H', 'H-ex-').filter(({ inputs }) => inputs['arms'] === 1))('$id: one arm', (row) => {
    const sizes = {
      arms: 1,
      hub: 2 * input(row, 'r0_mm'),
      ring: 2 * input(row, 'r1_mm'),
      turns: input(row, 'turns'),
      depth: input(row, 'b_mm'),
    };
    const [amount, thickness] = [radians(input(row, 'theta_deg')), input(row, 't_mm')];
    const worked = workedOf('spiral', sizes, { drive: 'turned', amount, thickness });
    const [length = Number.NaN, , torque = Number.NaN, strain = Number.NaN] = row.expected;
    const steps = 'steps of a 64th of a turn';
    expectNear('arm', worked('C_mm'), length, 1e-6, steps);
    expectNear('torque', (worked('M') * input(row, 'E_MPa')) / worked('E'), torque, 1e-6, steps);
    expectNear('strain', worked('ε'), strain, 1e-6, steps);
  });

  it.each(['centred', 'turned'])('three short arms %s are as stiff as when shot as curves', (drive) => {
    const sizes = { arms: 3, hub: 6, ring: 23, turns: 1.25, depth: 6 };
    const worked = workedOf('spiral', sizes, { drive, amount: 0.1, thickness: 0.84 });
    const stiffness = (worked('M') / worked('θ')) * (2000 / worked('E'));
    expectNear('short arms', stiffness, 35.6, 0.005, 'told to three figures as 35.6 and 35.69');
  });
});

const ARCHES = [
  ...checkValues('I', 'I-double-').map((row) => ({ row, arches: 2, drive: 'guided' })),
  ...checkValues('I', 'I-free-').map((row) => ({ row, arches: 1, drive: 'pressed' })),
];
const ARCH = { span: 204, block: 4, apart: 12 };

describe('an arch', () => {
  it.each(ARCHES)('$row.id: snap, straight branch and return', ({ row, arches, drive }) => {
    const [top, topAt, bottom, bottomAt, slope, intercept] = row.expected as readonly [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const [thickness, rise] = [0.6, 0.6 * input(row, 'Q')];
    const points = [
      [topAt, top],
      [bottomAt, bottom],
      [1.2, intercept + 1.2 * slope],
    ] as const;
    for (const [travel, force] of points) {
      const worked = workedOf('snapArch', { ...ARCH, arches, rise }, { drive, amount: travel * rise, thickness });
      expectNear(drive, worked('Φ'), force, 1e-8, 'the state is found to nine figures');
    }
  });

  it.each(checkValues('I', 'I-eps-'))('$id: strain of the whole way', (row) => {
    const [thickness, rise] = [0.6, 0.6 * input(row, 'Q')];
    const moved = { drive: 'guided', amount: 2 * rise, thickness };
    const worked = workedOf('snapArch', { ...ARCH, arches: 2, rise }, moved);
    const factor = (worked('ε') * worked('L') ** 2) / (thickness * rise);
    const [expected = Number.NaN] = row.expected;
    expectNear('strain of the way', factor, expected, 2e-3, 'the largest of 121 states and 41 places');
  });
});

/** A toggle whose pins stand so, and its push when the middle pin has gone so far. */
function toggleOf(half: number, height: number, travel: number) {
  const hinge = 1;
  const run = half - 1.5 * hinge;
  const sizes = { hinge, link: Math.hypot(run, height), incline: Math.atan2(height, run), pad: 2, spring: 20 };
  const amount = (travel * (run + 0.5 * hinge)) / half;
  return workedOf('toggle', sizes, { drive: 'pressed', amount, thickness: 0.2 });
}

describe('a toggle', () => {
  it('of a right-angled triangle of 5, 12 and 13 is 13 long when it is flat', () => {
    const worked = toggleOf(12, 5, 5);
    const exact = 'round-off of the travel';
    expectNear('triangle', worked('ℓ_0'), 13, 1e-12, exact);
    expectNear('triangle', worked('c'), 13, 1e-12, exact);
    expectNear('triangle', worked('u'), 2, 1e-12, exact);
    expectNear('triangle', worked('χ'), Math.atan(5 / 12), 1e-12, exact);
  });

  it.each(checkValues('I', 'I-vm-'))('$id: its spring snaps as two bars that shorten, for little rise', (row) => {
    // E·A/l of either bar is twice the spring between the outer pins; both are the shallow form to the square of H/a.
    const rise = input(row, 'rise') / input(row, 'half_span');
    const [half, shallow = Number.NaN] = [20, row.expected[2]];
    const worked = toggleOf(half, half * rise, half * rise * (1 - 1 / Math.sqrt(3)));
    const force = worked('F_s') / (2 * worked('k_s') * worked('ℓ_0'));
    expectNear('spring of a toggle', force, shallow, rise ** 2, 'the next term, of the order of (H/a)²');
  });
});
