/**
 * Source [reissner-rod]: the solver against an integrator. The same rod, which stretches, shears and bends, is solved a second
 * time in tests/support/rodByShooting.ts: its equations written anew, integrated with the extrapolation method of E. Hairer
 * and G. Wanner (package odex) at a tolerance of 1e-13, and shot for what its end should be. Both solve exactly the same
 * equations for exactly the same rod, so that places, forces, moments and energies agree as far as both are solved:
 * 1e-8 is asked of `refined`.
 */
import { describe, expect, it } from 'vitest';
import type { BeamModel, Member, Shape } from '../../src/core/beam/model.ts';
import { radians } from '../../src/core/units.ts';
import { cantilever, HELD, network } from '../support/beamModels.ts';
import { expectClose } from '../support/close.ts';
import { noteResidual } from '../support/residuals.ts';
import { shoot, type Rod, type Solved } from '../support/rodByShooting.ts';
import { endOf, poseOf, reactionAt } from '../support/solved.ts';

const [E, NU, B, L] = [2000, 0.35, 6, 20];

/** Stiffness of a rectangle b × t, written out a second time; `stiffer` makes the stretch alone so many times harder. */
function rectangle(t: number, stiffer = 1) {
  const axial = E * B * t;
  return { axial: stiffer * axial, shear: (5 / 6) * (E / (2 + 2 * NU)) * B * t, bending: (E * B * t ** 3) / 12 };
}

function straightRod(t: (u: number) => number, stiffer = 1): Rod {
  return { speed: () => L, curvature: () => 0, stiffness: (u) => rectangle(t(u), stiffer) };
}

const ROOT = { x: 0, y: 0, angle: 0 };
const scaleOf = (t: number) => ({ force: (E * B * t ** 3) / 12 / L ** 2, moment: (E * B * t ** 3) / 12 / L });

/** Compares the root's reaction and the end's place with those of the rod that was shot. */
function expectSame(model: BeamModel, rod: Solved, t: number, turned = rod.angle): void {
  const end = endOf(model, { accuracy: 'refined' });
  const { x, y, turn } = poseOf(end, 'tip');
  const root = reactionAt(end, 'root');
  const { force, moment } = scaleOf(t);
  const pairs = [
    ['place', (x - rod.x) / L],
    ['place', (y - rod.y) / L],
    ['turn', turn - turned],
    ['force', (root.x + rod.forceX) / force],
    ['force', (root.y + rod.forceY) / force],
    ['moment', (root.moment + rod.rootMoment) / moment],
    ['energy', (end.energy - rod.energy) / moment],
  ] as const;
  for (const [what, off] of pairs) {
    noteResidual(`${what} (as a difference)`, off, 0);
    expectClose(off, 0, { abs: 1e-8, because: 'both solve the same equations; in units of L, E·I/L² and E·I/L' });
  }
}

const leaf = (
  member: Partial<Member>,
  rest: Partial<BeamModel>,
  shape: Shape = { kind: 'straight' },
  tip = { x: L, y: 0 },
) => cantilever(shape, tip, { width: B, ...member }, { modulus: E, poisson: NU, ...rest });

/** A leaf whose end turns about a fixed centre on its line, in steps: the force along it grows with the square of the angle. */
function turnedAbout(centre: number, angle: number, t: number, stiffer: number): Solved {
  const steps = 24;
  let found: Solved | undefined;
  for (let i = 1; i <= steps; i += 1) {
    const now = (angle * i) / steps;
    const at = { x: centre + (L - centre) * Math.cos(now), y: (L - centre) * Math.sin(now) };
    const misses = (end: Solved) => [(end.x - at.x) / L, (end.y - at.y) / L, end.angle - now] as const;
    found = shoot(
      straightRod(() => t, stiffer),
      ROOT,
      misses,
      scaleOf(t),
      [found?.forceX ?? 0, found?.forceY ?? 0, found?.rootMoment ?? 0],
    );
  }
  return found!;
}

describe('the rod by shooting', () => {
  it('bent by a force at its end: thick, so that stretch and shear count', () => {
    const t = 4;
    const { force, moment } = scaleOf(t);
    const [x, y] = [-2 * force, 3 * force];
    const rod = shoot(
      straightRod(() => t),
      ROOT,
      (end) => [(end.forceX - x) / force, (end.forceY - y) / force, end.moment / moment],
      scaleOf(t),
      [x, y, 0],
    );
    expectSame(leaf({ thickness: t }, { loads: [{ at: 'tip', x, y }] }), rod, t);
    // Without stretch and shear the tip would be elsewhere, so the agreement says something about both.
    const stiff = { axial: 1e12, shear: 1e12, bending: rectangle(t).bending };
    const unstretched = shoot(
      { speed: () => L, curvature: () => 0, stiffness: () => stiff },
      ROOT,
      (end) => [(end.forceX - x) / force, (end.forceY - y) / force, end.moment / moment],
      scaleOf(t),
      [x, y, 0],
    );
    expect(Math.abs(unstretched.y - rod.y) / L).toBeGreaterThan(0.01);
  });

  it('rolled by a moment to about 270° while a force pulls', () => {
    const t = 0.84;
    const { force, moment } = scaleOf(t);
    const [y, m] = [0.4 * force, 1.5 * Math.PI * moment];
    const rod = shoot(
      straightRod(() => t),
      ROOT,
      (end) => [end.forceX / force, (end.forceY - y) / force, (end.moment - m) / moment],
      scaleOf(t),
      [0, y, m],
    );
    expect(Math.abs(rod.angle)).toBeGreaterThan(radians(250));
    expectSame(leaf({ thickness: t }, { loads: [{ at: 'tip', y, moment: m }] }), rod, t);
  });

  it('turned by 5° about a fixed centre, where an unstretchable rod is wrong by a factor of two', () => {
    const [t, centre, angle] = [0.84, 0.5 * L, radians(5)];
    const at = { x: centre + (L - centre) * Math.cos(angle), y: (L - centre) * Math.sin(angle) };
    const rod = turnedAbout(centre, angle, t, 1);
    const model = network({
      modulus: E,
      poisson: NU,
      nodes: [
        { id: 'foot', x: 0, y: 0 },
        { id: 'head', x: L, y: 0 },
      ],
      members: [{ id: 'leaf', from: 'foot', to: 'head', shape: { kind: 'straight' }, thickness: t, width: B }],
      pads: [
        { id: 'root', nodes: ['foot'] },
        { id: 'tip', nodes: ['head'], at: { x: centre, y: 0 } },
      ],
      supports: [
        { at: 'root', ...HELD },
        { at: 'tip', x: true, y: true },
      ],
      motions: [{ at: 'tip', turn: angle }],
    });
    expectSame(model, { ...rod, x: centre, y: 0 }, t);
    const torqueOf = ({ moment, forceX, forceY }: Solved) => moment + (at.x - centre) * forceY - at.y * forceX;
    const end = endOf(model, { accuracy: 'refined' });
    expectClose(end.effort / angle, torqueOf(rod), { rel: 1e-8, because: 'both solve the same equations' });
    const unstretchable = torqueOf(turnedAbout(centre, angle, t, 100));
    console.log(
      `torque about the fixed centre ${torqueOf(rod).toFixed(4)}, of a leaf that stretches a hundred times less ${unstretchable.toFixed(4)} N·mm`,
    );
    expectClose(unstretchable / torqueOf(rod), 2, { abs: 0.1, because: 'told as a factor of two' });
  });

  it('printed as an arc, its end moved across and turned', () => {
    const [t, turn] = [1, 2];
    const chord = (2 * L * Math.sin(turn / 2)) / turn;
    const rod: Rod = { speed: () => L, curvature: () => turn / L, stiffness: () => rectangle(t) };
    const to = { x: 0.7 * chord, y: 0.2 * chord, turn: 0.5 };
    const end = shoot(
      rod,
      { x: 0, y: 0, angle: -turn / 2 },
      ({ x, y, angle }) => [(x - to.x) / L, (y - to.y) / L, angle - turn / 2 - to.turn],
      scaleOf(t),
    );
    const motions = [{ at: 'tip', x: to.x - chord, y: to.y, turn: to.turn }];
    const model = leaf({ thickness: t }, { motions }, { kind: 'arc', turn }, { x: chord, y: 0 });
    expectSame(model, end, t, to.turn);
  });

  it('tapered, bent by a force', () => {
    const [from, to] = [1.4, 0.5];
    const { force, moment } = scaleOf(1);
    const y = 2 * force;
    const rod = shoot(
      straightRod((u) => from + (to - from) * u),
      ROOT,
      (end) => [end.forceX / force, (end.forceY - y) / force, end.moment / moment],
      scaleOf(1),
      [0, y, 0],
    );
    expectSame(leaf({ thickness: { kind: 'taper', from, to } }, { loads: [{ at: 'tip', y }] }), rod, 1);
  });

  it('bent by a force that turns with its end', () => {
    const t = 1;
    const { force, moment } = scaleOf(t);
    const load = 4 * force;
    const rod = shoot(
      straightRod(() => t),
      ROOT,
      ({ angle, forceX, forceY, moment: m }) => [
        (forceX + load * Math.sin(angle)) / force,
        (forceY - load * Math.cos(angle)) / force,
        m / moment,
      ],
      scaleOf(t),
      [-load, load, 0],
    );
    expect(rod.angle).toBeGreaterThan(1);
    expectSame(leaf({ thickness: t }, { loads: [{ at: 'tip', y: load, follower: true }] }), rod, t);
  });

  it('printed as a spiral, its hub turned by 35° about its fixed centre', () => {
    const [t, inner, outer, turns, angle] = [0.84, 3, 11.5, 1.25, radians(35)];
    const sweep = 2 * Math.PI * turns;
    const growth = (outer - inner) / sweep;
    const radius = (u: number) => inner + growth * sweep * u;
    const rod: Rod = {
      speed: (u) => sweep * Math.sqrt(radius(u) ** 2 + growth ** 2),
      curvature: (u) => (radius(u) ** 2 + 2 * growth ** 2) / (radius(u) ** 2 + growth ** 2) ** 1.5,
      stiffness: () => rectangle(t),
    };
    const heading = Math.atan2(inner, growth);
    const away = { x: outer * Math.cos(sweep), y: outer * Math.sin(sweep), angle: heading + sweep };
    // The direction gains on the ray what the pitch loses: at the ring the angle between them is another.
    const ring = { ...away, angle: Math.atan2(outer, growth) + sweep };
    const hub = { x: inner * Math.cos(angle), y: inner * Math.sin(angle), angle: heading + angle };
    const shot = shoot(
      rod,
      hub,
      (end) => [(end.x - ring.x) / L, (end.y - ring.y) / L, end.angle - ring.angle],
      scaleOf(t),
    );
    const model = network({
      modulus: E,
      poisson: NU,
      nodes: [
        { id: 'in', x: inner, y: 0 },
        { id: 'out', x: away.x, y: away.y },
      ],
      members: [
        {
          id: 'arm',
          from: 'in',
          to: 'out',
          shape: { kind: 'spiral', centre: { x: 0, y: 0 }, turns },
          thickness: t,
          width: B,
        },
      ],
      pads: [
        { id: 'hub', nodes: ['in'], at: { x: 0, y: 0 } },
        { id: 'ring', nodes: ['out'] },
      ],
      supports: [
        { at: 'ring', ...HELD },
        { at: 'hub', x: true, y: true },
      ],
      motions: [{ at: 'hub', turn: angle }],
    });
    const end = endOf(model, { accuracy: 'refined' });
    const held = reactionAt(end, 'hub');
    const { force, moment } = scaleOf(t);
    const torque = -(shot.rootMoment + hub.x * shot.forceY - hub.y * shot.forceX);
    const offs = [
      ['force', (held.x + shot.forceX) / force],
      ['force', (held.y + shot.forceY) / force],
      ['moment', (held.moment - torque) / moment],
      ['energy', (end.energy - shot.energy) / moment],
    ] as const;
    for (const [what, off] of offs) {
      noteResidual(`${what} (as a difference)`, off, 0);
      expectClose(off, 0, { abs: 1e-8, because: 'both solve the same equations; in units of E·I/L² and E·I/L' });
    }
  });
});
