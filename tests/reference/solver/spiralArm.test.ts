/**
 * Source [spiral-arm]: flat spiral of even pitch as a long leaf under a pure moment. checkvalues/H.json, computed outside
 * this program.
 *
 * A moment alone is the same all along an arm, whatever its shape: an arm whose hub is turned and otherwise free keeps
 * to the rows exactly, at any angle, and so many arms are so many times as stiff. A hub that is kept central is another
 * matter. There the rows hold in the limit of many turns only, and short arms are compared with figures of a second
 * program that was made for the design of the program's pages: arms as unstretched curves, shot from the ring with 160 steps
 * of Runge and Kutta's rule.
 */
import { describe, expect, it } from 'vitest';
import { spiralLength } from '../../../src/core/closedForms/spiralArm.ts';
import { radians } from '../../../src/core/units.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { noteResidual } from '../../support/residuals.ts';
import { endOf, expectSolved, thinLimit } from '../../support/solved.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { followPath } from '../../../src/core/beam/solve.ts';

interface Spiral {
  readonly inner: number;
  readonly outer: number;
  readonly turns: number;
  readonly arms: number;
  readonly thickness: number;
  readonly width?: number;
  readonly modulus?: number;
  readonly angle: number;
  readonly hub: 'central' | 'free';
}

const on = (radius: number, at: number) => ({ x: radius * Math.cos(at), y: radius * Math.sin(at) });

function spiral({ inner, outer, turns, arms, thickness, width = 6, modulus = 2000, angle, hub }: Spiral) {
  const each = Array.from({ length: arms }, (_, i) => i);
  const ray = (i: number) => (2 * Math.PI * i) / arms;
  return network({
    modulus,
    nodes: each.flatMap((i) => [
      { id: `hub${i}`, ...on(inner, ray(i)) },
      { id: `ring${i}`, ...on(outer, ray(i) + 2 * Math.PI * turns) },
    ]),
    members: each.map((i) => ({
      id: `arm${i}`,
      from: `hub${i}`,
      to: `ring${i}`,
      shape: { kind: 'spiral', centre: { x: 0, y: 0 }, turns },
      thickness,
      width,
    })),
    pads: [
      { id: 'hub', nodes: each.map((i) => `hub${i}`), at: { x: 0, y: 0 } },
      { id: 'ring', nodes: each.map((i) => `ring${i}`), at: { x: 0, y: 0 } },
    ],
    supports: [{ at: 'ring', ...HELD }, ...(hub === 'central' ? [{ at: 'hub', x: true, y: true }] : [])],
    motions: [{ at: 'hub', turn: angle }],
  });
}

describe('one arm whose hub is turned and otherwise free', () => {
  it.each(checkValues('H', 'H-L-'))('$id: length', (row) => {
    const [inner, outer, turns] = [input(row, 'r0_mm'), input(row, 'r1_mm'), input(row, 'turns')];
    const model = spiral({ inner, outer, turns, arms: 1, thickness: 0.84, angle: 0.01, hub: 'free' });
    const { shapes } = followPath(model, { shapes: true, parts: 1 });
    expectSolved(row, { rel: 1e-9, because: 'what refined accuracy aims at' }, shapes[0]![0]!.along.at(-1)!);
  });

  it.each(checkValues('H', 'H-ex-'))('$id: length, stiffness, torque and strain', (row) => {
    const [angle, arms] = [radians(input(row, 'theta_deg')), input(row, 'arms')];
    const sizes = { inner: input(row, 'r0_mm'), outer: input(row, 'r1_mm'), turns: input(row, 'turns') };
    const rest = { thickness: input(row, 't_mm'), width: input(row, 'b_mm'), modulus: input(row, 'E_MPa') };
    const model = spiral({ ...sizes, ...rest, arms: 1, angle, hub: 'free' });
    const { points, shapes } = followPath(model, { accuracy: 'refined', shapes: true, parts: 4 });
    const end = points.at(-1)!;
    const torque = (arms * end.effort) / angle;
    const length = shapes[0]![0]!.along.at(-1)!;
    const aim = { rel: 1e-9, because: 'what refined accuracy aims at' };
    expectSolved(row, aim, length, torque / angle, torque, Math.abs(end.peak.strain));
  });
});

/** Torque and largest strain over those of arms under a moment alone. */
function overLaw(asked: Omit<Spiral, 'hub'>): readonly [number, number] {
  const length = spiralLength(asked.inner, asked.outer, asked.turns);
  const inertia = (6 * asked.thickness ** 3) / 12;
  const end = endOf(spiral({ ...asked, hub: 'central' }), { accuracy: 'refined', parts: 5 });
  const torque = end.effort / asked.angle;
  const law = (asked.arms * 2000 * inertia * asked.angle) / length;
  return [torque / law, Math.abs(end.peak.strain) / ((asked.thickness * Math.abs(asked.angle)) / (2 * length))];
}

describe('a hub that is kept central', () => {
  it('keeps to the law of many turns the nearer the more turns there are', () => {
    const offs = [5, 10, 20].map((turns) =>
      overLaw({ inner: 5, outer: 45, turns, arms: 1, thickness: 0.3, angle: Math.PI / 2 }).map((ratio) => ratio - 1),
    ) as [number, number][];
    const [five, ten, twenty] = offs as [[number, number], [number, number], [number, number]];
    console.log(
      `over the law at 5, 10, 20 turns: ${offs.map((pair) => pair.map((off) => off.toFixed(5)).join(' and ')).join('; ')}`,
    );
    // The torque is off by a share of 1/turns², the strain of 1/turns: with those taken off, nothing is left.
    expectClose(twenty[0] - (ten[0] - twenty[0]) / 3, 0, { abs: 1e-4, because: 'the next power of 1/turns' });
    expectClose(twenty[1] - (ten[1] - twenty[1]), 0, { abs: 5e-3, because: 'the next power of 1/turns' });
    expect(five[0] > ten[0] && ten[0] > twenty[0] && twenty[0] > 0 && twenty[0] < 1e-3).toBe(true);
  });

  /** Angle, torque and strain over the law of many turns, for hubs of 6 mm in rings of 23 mm. */
  const SHORT = [
    [1.25, 35, 1.173494, 1.6251],
    [1.25, -35, 1.166281, 1.66527],
    [0.9, 35, 1.677197, 2.26475],
    [0.9, -35, 1.255939, 1.84595],
  ] as const;

  it.each(SHORT)('on arms of %d turns turned by %d°', (turns, angleDeg, torque, strain) => {
    const arms = { inner: 3, outer: 11.5, turns, arms: 3, angle: radians(angleDeg) };
    const [t = NaN, e = NaN] = thinLimit((slenderness) => overLaw({ ...arms, thickness: 60 * slenderness }), 1e-3);
    noteResidual('short arms, torque', t, torque);
    noteResidual('short arms, strain', e, strain);
    expectClose(t, torque, { rel: 1e-6, because: 'printed to six places' });
    expectClose(e, strain, { rel: 1e-3, because: 'the largest of 160 places along the arm' });
  });

  it('on arms of 1.25 turns has 17 % more torque and 1.66 times the strain of the law, stretch and shear counted', () => {
    const both = [35, -35].map((angleDeg) =>
      overLaw({ inner: 3, outer: 11.5, turns: 1.25, arms: 3, thickness: 0.84, angle: radians(angleDeg) }),
    );
    for (const [torque] of both) expectClose(torque, 1.17, { printedTo: 2 });
    const worst = Math.max(...both.map(([, strain]) => strain));
    expectClose(worst, 1.66, { abs: 0.02, because: 'told to two places, without stretch, which adds 0.4 %' });
  });
});
