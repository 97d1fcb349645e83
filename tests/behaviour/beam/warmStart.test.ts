import { describe, expect, it } from 'vitest';
import type { BeamModel } from '../../../src/core/beam/model.ts';
import { followPath, takenPath, type SolveAsked } from '../../../src/core/beam/solve.ts';
import { solveAt, type StateAsked } from '../../../src/core/beam/solveAt.ts';
import { cantilever, HELD, network } from '../../support/beamModels.ts';
import { expectClose } from '../../support/close.ts';

const leaf = (thickness = 0.84, y = 6) =>
  cantilever({ kind: 'straight' }, { x: 20, y: 0 }, { thickness }, { motions: [{ at: 'tip', y }] });

/** Pressed down in its middle, or loaded there, and free to lean or kept even. */
function arch(thickness: number, acting: Partial<BeamModel>, isEven = false, middle = 20): BeamModel {
  const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: 6 } as const;
  return network({
    nodes: [
      { id: 'left', x: 0, y: 0 },
      { id: 'middle', x: middle, y: 3 },
      { id: 'right', x: 40, y: 0 },
    ],
    members: [
      { id: 'up', from: 'left', to: 'middle', ...half },
      { id: 'down', from: 'middle', to: 'right', ...half },
    ],
    supports: [
      { at: 'left', ...HELD },
      { at: 'right', ...HELD },
      ...(isEven ? [{ at: 'middle', x: true, turn: true }] : []),
    ],
    ...acting,
  });
}
const pressed = (by: number): Partial<BeamModel> => ({ motions: [{ at: 'middle', y: -by }] });
const loaded = (by: number): Partial<BeamModel> => ({ loads: [{ at: 'middle', y: -by }] });

function stateOf(model: BeamModel, asked: StateAsked = {}) {
  const answer = solveAt(model, asked);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}
const keptOf = (model: BeamModel, asked: StateAsked = {}) => stateOf(model, { ...asked, keep: true }).kept!;
const BOTH = { rel: 1e-6, because: 'both are solved to interactive accuracy' };

describe('one state of a network', () => {
  it('is the last of the path that a real part takes', () => {
    const model = arch(0.42, pressed(4));
    const { points } = takenPath(followPath(model, { parts: 20 }));
    expect(stateOf(model).point).toEqual(points.at(-1));
    expect(stateOf(model).shapes).toBe(undefined);
    expect(stateOf(model, { shapes: true }).shapes).toHaveLength(2);
  });

  it('tells why there is none', () => {
    const answer = solveAt(leaf(), { cancelled: () => true });
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.problems[0].code).toBe('cancelled');
  });

  it('is not asked for at rest', () => {
    expect(() => solveAt(leaf(), { share: 0 })).toThrow(RangeError);
  });

  it('keeps nothing unless asked', () => {
    expect(stateOf(leaf()).kept).toBe(undefined);
    expect(followPath(leaf()).kept).toBe(undefined);
  });
});

describe('a state from a neighbour', () => {
  it('takes a few steps, and says so', () => {
    const answer = stateOf(leaf(0.9), { from: keptOf(leaf()) });
    expect(answer.warm).toBe(true);
    expect(answer.iterations).toBeLessThan(6);
    expectClose(answer.point.effort, stateOf(leaf(0.9)).point.effort, BOTH);
  });

  it('crosses to a worker and back', () => {
    const from = structuredClone(keptOf(leaf()));
    expect(stateOf(leaf(0.9), { from }).warm).toBe(true);
  });

  it('can be a neighbour in its turn, but not for ever', () => {
    let from = keptOf(leaf());
    const warm = [0.9, 0.96, 1.02, 1.08, 1.2, 1.3].map((thickness) => {
      const answer = stateOf(leaf(thickness), { from, keep: true });
      from = answer.kept!;
      return answer.warm;
    });
    // Past a third more than the 0.84 that was walked last, it is walked anew, from where it goes on.
    expect(warm).toEqual([true, true, true, true, false, true]);
  });

  it('serves other shares of the same motion', () => {
    const answer = stateOf(leaf(), { from: keptOf(leaf()), share: 0.8 });
    expect(answer.warm).toBe(true);
    expectClose(answer.point.effort, stateOf(leaf(), { share: 0.8 }).point.effort, BOTH);
  });

  it.each([0.42, 0.44])('finds an arch %d thick that leans', (thickness) => {
    const answer = stateOf(arch(thickness, pressed(2.6)), { from: keptOf(arch(0.42, pressed(2.5))) });
    expect(answer.warm).toBe(true);
    expectClose(answer.point.effort, stateOf(arch(thickness, pressed(2.6))).point.effort, BOTH);
  });
});

function walks(model: BeamModel, from: ReturnType<typeof keptOf>, asked: StateAsked = {}): void {
  const answer = stateOf(model, { ...asked, from });
  expect(answer.warm).toBe(false);
  expect(answer.point).toEqual(stateOf(model, asked).point);
}

/** Its middle is not in the middle, so that it leans more easily to one side. */
const lopsided = (thickness: number) => arch(thickness, pressed(2.5), false, 20.2);

describe('a walk from rest after all', () => {
  it('is made for one that is far', () => {
    walks(leaf(1.7), keptOf(leaf()));
    walks(leaf(0.84, 12), keptOf(leaf()));
    walks(leaf(), keptOf(leaf()), { share: 0.01 });
  });

  it('is made for one that is built otherwise', () => {
    const other = leaf();
    walks({ ...other, springs: [{ at: 'tip', y: 1 }] }, keptOf(leaf()));
    walks({ ...other, members: [{ ...other.members[0]!, hinged: 'to' }] }, keptOf(leaf()));
    walks({ ...other, motions: [{ at: 'tip', y: 6, x: 0 }] }, keptOf(leaf()));
  });

  it('is made where one carries what its neighbour could not: an arch loaded past its limit', () => {
    // The neighbour has snapped under this load; the thicker one still stands, and from there would be told snapped.
    const [thin, thick] = [arch(0.8, loaded(18), true), arch(0.9, loaded(18), true)];
    const [snapped, stands] = [stateOf(thin), stateOf(thick)];
    expect(snapped.point.poses['middle']!.y).toBeLessThan(0);
    expect(stands.point.poses['middle']!.y).toBeGreaterThan(0);
    walks(thick, keptOf(thin));
    // And the other way round.
    walks(thin, keptOf(thick));
  });

  it('is made where one leans and its neighbour does not', () => {
    const [even, leaning] = [arch(1.95, pressed(2)), arch(1.6, pressed(2))];
    expect(followPath(even).second).toBe(undefined);
    expect(followPath(leaning).second).toBeDefined();
    walks(leaning, keptOf(even));
    walks(even, keptOf(leaning));
  });

  it('is made where it matters to which side one leans', () => {
    walks(lopsided(0.44), keptOf(lopsided(0.42)));
  });
});

const REFINED = { accuracy: 'refined' } as const;
const even = (from: number, to: number, parts: number) =>
  Array.from({ length: parts }, (_, i) => from + ((to - from) * (i + 1)) / parts);

const asked = (shares: readonly number[], rest: SolveAsked = {}): SolveAsked => ({ ...REFINED, ...rest, shares });
const isLate = ({ share }: { readonly share: number }) => share > 0.4;

describe('a path that goes on from an earlier answer', () => {
  it.each([
    ['a leaf', leaf(0.84, 12)],
    ['an arch that leans, snaps and joins', arch(0.8, pressed(6.15))],
    ['an arch kept even', arch(0.8, pressed(6.15), true)],
  ])('is the rest of one walk: %s', (_, model) => {
    const [early, late] = [even(0, 0.4, 8), even(0.4, 1, 12)];
    const whole = takenPath(followPath(model, asked([...early, ...late])));
    const first = followPath(model, asked(early, { keep: true }));
    const on = followPath(model, asked(late, { from: first.kept! }));
    expect(on.warm).toBe(true);
    expect(on.points[0]!.share).toBe(0.4);
    const room = {
      abs: 1e-9 * Math.max(...whole.points.map(({ effort }) => Math.abs(effort))),
      because: 'what refined accuracy aims at',
    };
    const rest = takenPath(on).points.slice(1);
    for (const share of late) {
      const [a, b] = [rest, whole.points].map((points) =>
        points.find((point) => Math.abs(point.share - share) < 1e-12)!,
      );
      expectClose(a!.effort, b!.effort, room);
      expect(a!.unstableFree).toBe(b!.unstableFree);
    }
    expect(takenPath(on).events.map(({ kind }) => kind)).toEqual(whole.events.filter(isLate).map(({ kind }) => kind));
  });

  it('spares the work of the first part', () => {
    const first = followPath(leaf(), { parts: 40, keep: true });
    const on = followPath(leaf(), { to: 1.1, parts: 4, from: first.kept! });
    expect(on.points.at(-1)!.share).toBe(1.1);
    expect(on.iterations).toBeLessThan(first.iterations / 2);
  });

  it('goes on again from where it ended', () => {
    const first = followPath(leaf(), { to: 0.5, parts: 5, keep: true });
    const on = followPath(leaf(), { to: 0.8, parts: 5, keep: true, from: first.kept! });
    const last = followPath(leaf(), { parts: 5, from: on.kept! });
    expectClose(last.points.at(-1)!.effort, stateOf(leaf()).point.effort, BOTH);
    expect(last.warm).toBe(true);
    expect(stateOf(leaf(0.9), { from: on.kept!, share: 0.8 }).warm).toBe(true);
  });

  it('also past a load that the first part could not carry', () => {
    const model = arch(0.8, loaded(18), true);
    const first = followPath(model, { parts: 20, keep: true });
    const on = followPath(model, { to: 1.5, parts: 5, from: first.kept! });
    expect(on.warm).toBe(true);
    expectClose(on.points.at(-1)!.poses['middle']!.y, stateOf(model, { share: 1.5 }).point.poses['middle']!.y, BOTH);
  });

  it('is walked from rest where its end lies before, or its network is another', () => {
    const from = followPath(leaf(), { parts: 5, keep: true }).kept!;
    for (const again of [followPath(leaf(), { to: 0.5, from }), followPath(leaf(1.7), { to: 1.5, from })]) {
      expect(again.warm).toBe(false);
      expect(again.points[0]!.share).toBe(0);
    }
    expect(followPath(leaf()).warm).toBe(undefined);
  });
});
