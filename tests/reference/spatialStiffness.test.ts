/**
 * Source [unit-load-method]: closed forms of linear bars. Straight bars with shear (slope-deflection with
 * Φ = 12·EI/(κGA·L²)), radial arms, the quarter ring by Castigliano's theorem as in texts on strength of materials
 * (π/4·PR³/EI and (3π/4 − 2)·PR³/EI, from memory; all other terms integrated by hand beside them), and figures of
 * checkvalues C, D, F, G and H that were computed outside this program. Fair, because each is the same linear theory of
 * bars reached by another way; where a closed form leaves out shear or stretch, the row says how much that is.
 * Source [crossed-leaves]: two leaves crossing at a fraction of their length. Source [saint-venant-torsion]: the twist of
 * a rectangle. Source [spiral-arm]: a coiled arm under a pure torque.
 */
import { describe, expect, it } from 'vitest';
import { spatialStiffness } from '../../src/core/beam/spatialStiffness.ts';
import type { Point } from '../../src/core/geometry/outline.ts';
import { radians } from '../../src/core/units.ts';
import { between, cantilever, sectionOfFirst } from '../support/beamModels.ts';
import { checkValues, input } from '../support/checkValues.ts';
import { expectClose, type Allowance } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';

const ROUND_OFF = { rel: 1e-9, because: 'round-off of a quadrature and of two inversions' } as const;
const STRAIGHT = { kind: 'straight' } as const;
type Matrix = readonly (readonly number[])[];

/** Compares with a figure from outside and remembers the residual. */
function expectOutside(group: string, actual: number, expected: number, allowance: Allowance = ROUND_OFF): void {
  noteResidual(group, actual, expected);
  expectClose(actual, expected, allowance);
}

/** Compares S with C⁻¹ by S·C = 1, each entry against the size that its units give it. */
function expectInverse(stiffness: Matrix, compliance: Matrix): void {
  const off = stiffness.flatMap((row, i) =>
    compliance.map((_, j) => {
      const entry = row.reduce((sum, s, k) => sum + s * compliance[k]![j]!, 0);
      return (entry - (i === j ? 1 : 0)) * Math.sqrt(compliance[i]![i]! / compliance[j]![j]!);
    }),
  );
  const worst = Math.max(...off.map(Math.abs));
  noteResidual('S·C', 1 + worst, 1);
  expectClose(worst, 0, { abs: 1e-10, because: 'round-off, times how much stiffer one direction is than another' });
}

function mirrored(upper: Matrix): number[][] {
  return upper.map((row, i) => row.map((_, j) => upper[Math.min(i, j)]![Math.max(i, j)]!));
}

describe('a straight cantilever', () => {
  const model = cantilever(STRAIGHT, { x: 12, y: 0 }, { widthRatio: 1.1 });
  const { length: L, EA, kGA, EI: narrow, EIo, GJ } = sectionOfFirst(model);
  const EI = 1.1 * narrow;
  const { matrix, free, held } = spatialStiffness(model, 'tip');

  it('gives under each load and couples moves with turns as the closed forms say', () => {
    const bend = (stiffness: number) => L ** 3 / (3 * stiffness) + L / kGA;
    const compliance = mirrored([
      [L / EA, 0, 0, 0, 0, 0],
      [0, bend(EI), 0, 0, 0, L ** 2 / (2 * EI)],
      [0, 0, bend(EIo), 0, -(L ** 2) / (2 * EIo), 0],
      [0, 0, 0, L / GJ, 0, 0],
      [0, 0, 0, 0, L / EIo, 0],
      [0, 0, 0, 0, 0, L / EI],
    ]);
    expectInverse(matrix, compliance);
    Object.values(free).forEach((stiffness, i) => expectOutside('free', stiffness, 1 / compliance[i]![i]!));
  });

  it('with everything else held is as stiff as slope-deflection with shear says', () => {
    const rigid = (stiffness: number) => {
      const phi = (12 * stiffness) / (kGA * L ** 2);
      return {
        move: (12 * stiffness) / L ** 3 / (1 + phi),
        couple: (-6 * stiffness) / L ** 2 / (1 + phi),
        turn: (((4 + phi) / (1 + phi)) * stiffness) / L,
      };
    };
    const [flat, across] = [rigid(EI), rigid(EIo)];
    const expected = { x: EA / L, y: flat.move, z: across.move, turnX: GJ / L, turnY: across.turn, turnZ: flat.turn };
    expectClose(matrix[1]![5]!, flat.couple, ROUND_OFF);
    expectClose(matrix[2]![4]!, -across.couple, ROUND_OFF);
    for (const name of Object.keys(expected) as (keyof typeof expected)[]) {
      expectClose(held[name], expected[name], ROUND_OFF);
    }
  });
});

describe('a quarter ring held at one end, by Castigliano’s theorem', () => {
  it.each([20, 5])('of radius %d', (R) => {
    const model = cantilever({ kind: 'arc', turn: Math.PI / 2 }, { x: R, y: R });
    const { EA, kGA, EI, EIo, GJ } = sectionOfFirst(model);
    const q = Math.PI / 4;
    const stretch = (q * R) / EA + (q * R) / kGA;
    const compliance = mirrored([
      [(q * R ** 3) / EI + stretch, -(R ** 3) / (2 * EI) + (R / 2) * (1 / EA - 1 / kGA), 0, 0, 0, -(R ** 2) / EI],
      [0, ((3 * q - 2) * R ** 3) / EI + stretch, 0, 0, 0, ((2 * q - 1) * R ** 2) / EI],
      [
        0,
        0,
        R ** 3 * ((3 * q - 2) / GJ + q / EIo) + (2 * q * R) / kGA,
        (R ** 2 / 2) * (1 / GJ + 1 / EIo),
        R ** 2 * ((1 - q) / GJ - q / EIo),
        0,
      ],
      [0, 0, 0, R * q * (1 / GJ + 1 / EIo), (R / 2) * (1 / GJ - 1 / EIo), 0],
      [0, 0, 0, 0, R * q * (1 / GJ + 1 / EIo), 0],
      [0, 0, 0, 0, 0, (2 * q * R) / EI],
    ]);
    const { matrix, free } = spatialStiffness(model, 'tip');
    expectInverse(matrix, compliance);
    Object.values(free).forEach((stiffness, i) => expectOutside('free', stiffness, 1 / compliance[i]![i]!));
  });
});

function polar(radius: number, turns: number): Point {
  const angle = 2 * Math.PI * turns;
  return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
}

/** Arms from a ring of radius r1 to a hub of radius r0, so many turns on. */
function arms(count: number, r0: number, r1: number, turns: number) {
  return Array.from({ length: count }, (_, i) => ({
    from: polar(r1, i / count),
    to: polar(r0, i / count + turns),
    shape: { kind: 'spiral', centre: { x: 0, y: 0 }, turns } as const,
  }));
}

describe('straight radial arms between a hub and a ring', () => {
  const [hub, L] = [3, 30];
  const model = between(
    [0, 1, 2].map((i) => ({ from: polar(hub + L, i / 3), to: polar(hub, i / 3) })),
    { x: 0, y: 0 },
  );
  const { EA, kGA, EI, EIo } = sectionOfFirst(model);
  const { free, held } = spatialStiffness(model, 'moving');
  const phi = (stiffness: number) => 1 + (12 * stiffness) / (kGA * L ** 2);

  it('three give 36·E·I/L³ along the axis, less what they shear', () => {
    const noShear = (36 * EIo) / L ** 3;
    expectClose(free.z, noShear / phi(EIo), ROUND_OFF);
    expectClose(free.z, noShear, {
      rel: 0.12,
      because: 'the closed form leaves out shear, 11 % of arms five times as long as wide',
    });
    expectClose(free.z, held.z, { rel: 1e-12, because: 'by symmetry nothing else follows' });
  });

  it('in the plane stretch and bend, and turn about a point off their ends', () => {
    const move = (12 * EI) / L ** 3 / phi(EI);
    expectClose(free.x, 1.5 * (EA / L + move), ROUND_OFF);
    expectClose(free.y, free.x, ROUND_OFF);
    const end = ((4 + phi(EI) - 1) / phi(EI)) * (EI / L);
    expectClose(free.turnZ, 3 * (end + move * L * hub + move * hub ** 2), ROUND_OFF);
  });
});

describe('a stage on two parallel leaves', () => {
  it.each(checkValues('C', 'C-k-'))('$id', (row) => {
    const [E, b, t, L] = ['E_MPa', 'b_mm', 't_mm', 'L_mm'].map((name) => input(row, name)) as [
      number,
      number,
      number,
      number,
    ];
    const leaves = [0, 20].map((y) => ({ from: { x: 0, y }, to: { x: L, y } }));
    const model = between(leaves, { x: L, y: 10 }, { thickness: t, width: b }, { modulus: E });
    const { kGA, EI } = sectionOfFirst(model);
    const { held, free } = spatialStiffness(model, 'moving');
    const [expected] = row.expected as [number];
    expectClose(held.y, expected / (1 + (12 * EI) / (kGA * L ** 2)), ROUND_OFF);
    const because =
      'the row leaves out shear, 3.24·(t/L)², and that the stage rocks on leaves that stretch, (t/spacing)²';
    expectOutside('C-k', free.y, expected, { rel: 4 * (t / L) ** 2 + 1.1 * (t / 20) ** 2, because });
  });
});

describe('a straight bar in twist', () => {
  it.each(checkValues('F', 'F-ex-'))('$id', (row) => {
    const [G, b, t, L] = ['G_MPa', 'b_mm', 't_mm', 'L_mm'].map((name) => input(row, name)) as [
      number,
      number,
      number,
      number,
    ];
    const material = { modulus: 2 * 1.35 * G, poisson: 0.35 };
    const { free } = spatialStiffness(
      cantilever(STRAIGHT, { x: L, y: 0 }, { thickness: t, width: b }, material),
      'tip',
    );
    expectOutside('F-ex', free.turnX * radians(input(row, 'theta_deg')), row.expected[0]!);
  });

  it.each(checkValues('F', 'F-').filter(({ id }) => /^F-[1-8]/.test(id)))('$id, laid either way', (row) => {
    const ratio = input(row, 'b_over_t');
    for (const [thickness, width] of [
      [1, ratio],
      [ratio, 1],
    ] as const) {
      const model = cantilever(STRAIGHT, { x: 20, y: 0 }, { thickness, width }, { modulus: 2, poisson: 0 });
      expectOutside('F', (spatialStiffness(model, 'tip').free.turnX * 20) / ratio, row.expected[0]!);
    }
  });
});

describe('crossed leaves under a pure moment, at any angle between them', () => {
  const L = 20;
  const pair = (share: number, half: number) => {
    const leaf = (sign: 1 | -1) => {
      const way = { x: sign * Math.sin(half) * L, y: Math.cos(half) * L };
      return {
        from: { x: -share * way.x, y: -share * way.y },
        to: { x: (1 - share) * way.x, y: (1 - share) * way.y },
        plane: sign,
      };
    };
    return between([leaf(1), leaf(-1)], { x: 0, y: 0 }, { thickness: 0.002 });
  };
  it.each(checkValues('G', 'G-k-'))('$id', (row) => {
    for (const halfDeg of [20, 45, 70]) {
      const model = pair(input(row, 'lam'), radians(halfDeg));
      const { EI } = sectionOfFirst(model);
      const because = 'the row takes leaves as unstretched; these are 10 000 times as long as thick';
      expectOutside('G-k', (spatialStiffness(model, 'moving').free.turnZ * L) / EI, row.expected[0]!, {
        rel: 1e-6,
        because,
      });
    }
  });
});

describe('spiral arms', () => {
  it.each(checkValues('H', 'H-ex-'))('$id under a pure torque', (row) => {
    const [E, b, t, r0, r1, turns, count] = ['E_MPa', 'b_mm', 't_mm', 'r0_mm', 'r1_mm', 'turns', 'arms'].map((name) =>
      input(row, name),
    ) as [number, number, number, number, number, number, number];
    const section = { thickness: t, width: b };
    const one = spatialStiffness(between(arms(1, r0, r1, turns), { x: 0, y: 0 }, section, { modulus: E }), 'moving');
    expectOutside('H-ex', one.free.turnZ * count, row.expected[1]!);
    // Several arms hold the hub in the middle, which a single one does not: the closed form is a lower bound.
    const all = spatialStiffness(
      between(arms(count, r0, r1, turns), { x: 0, y: 0 }, section, { modulus: E }),
      'moving',
    );
    expect(all.free.turnZ).toBeGreaterThan(row.expected[1]! * (1 - 1e-9));
    expect(all.free.turnZ).toBeLessThan(row.expected[1]! * 1.1);
    expect(one.held.turnZ).toBeGreaterThan(one.free.turnZ);
  });

  it('of little more than a turn are stiffer in turn, as unstretched arms computed elsewhere are', () => {
    const section = { thickness: 0.84, width: 6 };
    const model = between(arms(3, 3, 11.5, 1.25), { x: 0, y: 0 }, section, { modulus: 2000, poisson: 0.38 });
    const { free } = spatialStiffness(model, 'moving');
    // 35.69 N·mm/rad: a design study of this project, curves without stretch summed up by the trapezoid rule.
    expectOutside('spiral study', free.turnZ, 35.69, {
      rel: 2e-3,
      because: 'the study leaves out stretch and shear, of the order of (t/r)²',
    });
  });
});

describe('a notch under a pure moment', () => {
  it.each(checkValues('D', 'D-circ-'))('$id', (row) => {
    const t = input(row, 't_over_R');
    const notch = { kind: 'notch', least: t, deep: 1, part: 'whole' } as const;
    const model = cantilever(STRAIGHT, { x: 2, y: 0 }, { thickness: notch, width: 6 });
    const { free } = spatialStiffness(model, 'tip');
    expectOutside('D-circ', (2000 * 6 * t ** 2) / free.turnZ, row.expected[0]!);
  });
});
