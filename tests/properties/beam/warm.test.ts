/** A state found from a neighbour's is the one that a walk from rest comes to, or it says that it was walked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BeamModel } from '../../../src/core/beam/model.ts';
import { followPath } from '../../../src/core/beam/solve.ts';
import { solveAt, type StateAnswer, type StateAsked } from '../../../src/core/beam/solveAt.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { expectClose } from '../../support/close.ts';
import { length } from '../../support/generators.ts';
import { drawn, networkOf } from './legs.ts';

/** How much each kind of size of a neighbour differs, as a part of itself. */
const nudge = fc.record({
  along: length(-0.05, 0.05),
  across: length(-0.05, 0.05),
  thickness: length(-0.1, 0.1),
  amount: length(-0.1, 0.1),
  modulus: length(-0.1, 0.1),
});
type Nudge = typeof nudge extends fc.Arbitrary<infer T> ? T : never;

function neighbourOf(model: BeamModel, { along, across, thickness, amount, modulus }: Nudge): BeamModel {
  const moved = <T extends { readonly x: number; readonly y: number }>(at: T): T => ({
    ...at,
    x: at.x * (1 + along),
    y: at.y * (1 + across),
  });
  const times = (value: number | undefined) => (value === undefined ? {} : value * (1 + amount));
  return {
    ...model,
    modulus: model.modulus * (1 + modulus),
    nodes: model.nodes.map(moved),
    pads: model.pads.map((pad) => (pad.at ? { ...pad, at: moved(pad.at) } : pad)),
    members: model.members.map((member) => ({ ...member, thickness: Number(member.thickness) * (1 + thickness) })),
    motions: model.motions.map(({ at, x, y, turn }) => ({
      at,
      ...(x === undefined ? {} : { x: Number(times(x)) }),
      ...(y === undefined ? {} : { y: Number(times(y)) }),
      ...(turn === undefined ? {} : { turn: Number(times(turn)) }),
    })),
  };
}

/** The answer of one that has a stable state there. */
function answerOf(model: BeamModel, asked: StateAsked): StateAnswer | undefined {
  const answer = solveAt(model, asked);
  return answer.ok ? answer.value : undefined;
}

const room = (abs: number) => ({ abs, because: 'both are solved to the accuracy asked for' });

function expectSame(warm: StateAnswer, cold: StateAnswer, size: number, part: number): void {
  expectClose(warm.point.effort, cold.point.effort, room(part * size));
  expectClose(warm.point.energy, cold.point.energy, room(part * Math.max(cold.point.energy, size)));
  expect(warm.point.unstableWays).toBe(cold.point.unstableWays);
  expect(warm.point.unstableFree).toBe(cold.point.unstableFree);
  expect(warm.point.share).toBe(cold.point.share);
}

describe('legs of a neighbour', () => {
  it('come to the same, to 1e-9, nearly always without a walk', () => {
    let [asked, found] = [0, 0];
    fc.assert(
      fc.property(drawn, nudge, (drawnCase, by) => {
        const model = networkOf(drawnCase);
        const next = neighbourOf(model, by);
        const refined = { accuracy: 'refined' } as const;
        const before = answerOf(model, { ...refined, keep: true });
        fc.pre(before !== undefined && before.point.unstableWays === 0);
        const from = before.kept!;
        const [warm, cold] = [answerOf(next, { ...refined, from }), answerOf(next, refined)];
        fc.pre(warm !== undefined && cold !== undefined);
        asked += 1;
        found += warm.warm ? 1 : 0;
        expect(cold.warm).toBe(false);
        expectSame(warm, cold, Math.abs(cold.point.effort), 1e-9);
        expect(warm.point.residual).toBeLessThan(1e-9);
        expect(warm.error.effort).toBeLessThanOrEqual(1e-9);
        if (warm.warm) expect(warm.iterations).toBeLessThan(cold.iterations);
      }),
      { numRuns: 6 },
    );
    expect(found).toBeGreaterThan(asked / 2);
  });
});

const arch = fc.record({
  rise: length(1, 6),
  slenderness: length(1, 9),
  travel: length(0.1, 2.2),
  tilt: fc.constantFrom(0, 0, 0.2),
  isGuided: fc.boolean(),
});
type Arch = typeof arch extends fc.Arbitrary<infer T> ? T : never;

/** An arch pressed in its middle, which leans, snaps and comes back to even, or not, by its rise over its thickness. */
function archOf({ rise, slenderness, travel, tilt, isGuided }: Arch): BeamModel {
  const half = { shape: { kind: 'rise', heading: 0 }, thickness: rise / slenderness, width: 6 } as const;
  return network({
    nodes: [
      { id: 'left', x: 0, y: 0 },
      { id: 'middle', x: 20 + tilt, y: rise },
      { id: 'right', x: 40, y: 0 },
    ],
    members: [
      { id: 'up', from: 'left', to: 'middle', ...half },
      { id: 'down', from: 'middle', to: 'right', ...half },
    ],
    supports: [{ at: 'left', ...HELD }, { at: 'right', ...HELD }, ...(isGuided ? [{ at: 'middle', turn: true }] : [])],
    motions: [{ at: 'middle', y: -travel * rise }],
  });
}

describe('arches of a neighbour', () => {
  it('are where a walk from rest comes to, also where they lean or have snapped', () => {
    fc.assert(
      fc.property(arch, nudge, (drawnArch, by) => {
        const before = answerOf(archOf(drawnArch), { keep: true });
        fc.pre(before !== undefined);
        const next = neighbourOf(archOf(drawnArch), { ...by, along: 0 });
        const warm = answerOf(next, { from: before.kept! });
        fc.pre(warm?.warm === true);
        const cold = answerOf(next, {});
        expect(cold).toBeDefined();
        // Efforts pass through nothing at rests, so they are weighed against the largest on the way.
        const { points } = followPath(next, { parts: 20, second: false });
        const size = Math.max(...points.map(({ effort }) => Math.abs(effort)));
        expectSame(warm, cold!, size, 1e-6);
      }),
      { numRuns: 8 },
    );
  });
});
