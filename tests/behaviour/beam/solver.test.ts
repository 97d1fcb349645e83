import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PathAnswer } from '../../../src/core/beam/answer.ts';
import { checkModel } from '../../../src/core/beam/checkModel.ts';
import type { BeamModel, Member } from '../../../src/core/beam/model.ts';
import { followPath, takenPath } from '../../../src/core/beam/solve.ts';
import { neckNetwork } from '../../../src/core/flexures/neckNetwork.ts';
import { cantilever, HELD, network, sectionOfFirst } from '../../support/beamModels.ts';
import { mutilated } from '../../support/networkGenerators.ts';
import { length } from '../../support/generators.ts';
import { expectClose } from '../../support/close.ts';
import { endOf, poseOf, reactionAt } from '../../support/solved.ts';

const leaf = (rest: Partial<BeamModel>, member: Partial<Member> = {}) =>
  cantilever({ kind: 'straight' }, { x: 20, y: 0 }, member, rest);

describe('a path that cannot be followed to its end', () => {
  it.each(['from', 'both'] as const)('is an answer where a member swings freely, hinged at %s', (hinged) => {
    const { points, stopped } = followPath(leaf({ loads: [{ at: 'tip', y: 1 }] }, { hinged }));
    expect(points.every(({ share }) => share === 0)).toBe(true);
    expect(stopped?.code).toBe('no-convergence');
    expect(stopped?.message).toMatch(/move freely|No equilibrium was found beyond 0 %/);
    expect(stopped?.value).toBe(0);
  });

  it('keeps the points up to where it was stopped as asked', () => {
    let steps = 0;
    const cancelled = () => (steps += 1) > 8;
    const { points, stopped } = followPath(leaf({ motions: [{ at: 'tip', y: 5 }] }), { cancelled });
    expect(stopped?.code).toBe('cancelled');
    expect(stopped?.message).toMatch(/Stopped as asked; the last good point is at \d/);
    expect(points.length).toBeGreaterThan(2);
    expect(points.at(-1)!.share).toBeLessThan(1);
    expect(Number(stopped?.value)).toBeGreaterThanOrEqual(points.at(-1)!.share);
  });

  it('keeps to its budget', () => {
    const { stopped, iterations, points } = followPath(leaf({ motions: [{ at: 'tip', y: 5 }] }), { budget: 12 });
    expect(stopped?.code).toBe('over-budget');
    expect(stopped?.message).toContain('ask for a shorter movement');
    expect(iterations).toBeLessThan(12 + 15);
    expect(points.length).toBeGreaterThan(0);
  });

  it('stretches a leaf to ten times its length as if nothing broke', () => {
    const model = leaf({ motions: [{ at: 'tip', x: 180 }] });
    const { points, stopped } = followPath(model, { parts: 5, elements: 4 });
    expect(stopped).toBe(undefined);
    expect(points.every(isFinitePoint)).toBe(true);
    expect(points.at(-1)!.effort / 180).toBeCloseTo(9 * sectionOfFirst(model).EA, 3);
  });
});

/** Two leaves side by side. */
const two = (springs: BeamModel['springs'], loads: BeamModel['loads']) =>
  network({
    nodes: [
      { id: 'a', x: 0, y: 0 },
      { id: 'b', x: 20, y: 0 },
      { id: 'c', x: 0, y: 10 },
      { id: 'd', x: 20, y: 10 },
    ],
    members: [
      { id: 'one', from: 'a', to: 'b', shape: { kind: 'straight' }, thickness: 0.84, width: 6 },
      { id: 'two', from: 'c', to: 'd', shape: { kind: 'straight' }, thickness: 0.84, width: 6 },
    ],
    supports: [
      { at: 'a', ...HELD },
      { at: 'c', ...HELD },
    ],
    springs,
    loads,
  });

describe('what acts on a network', () => {
  it('springs pull back by their stiffness, to the ground', () => {
    const { EI } = sectionOfFirst(leaf({}));
    const k = (3 * EI) / 20 ** 3;
    const force = (1e-4 * EI) / 400;
    const free = poseOf(endOf(leaf({ loads: [{ at: 'tip', y: force }] })), 'tip').y;
    const sprung = poseOf(endOf(leaf({ loads: [{ at: 'tip', y: force }], springs: [{ at: 'tip', y: k }] })), 'tip').y;
    // A spring as stiff as the leaf halves the movement; shear makes the leaf a little softer than k.
    expect(sprung / free).toBeGreaterThan(0.49);
    expect(sprung / free).toBeLessThan(0.5);
  });

  it('springs between two pads resist only how far they part', () => {
    const spring = [{ at: 'b', to: 'd', x: 5, y: 5, turn: 50 }];
    const alike = [
      { at: 'b', y: 0.3 },
      { at: 'd', y: 0.3 },
    ];
    const [without, withIt] = [endOf(two([], alike)), endOf(two(spring, alike))];
    expect(poseOf(withIt, 'b').y).toBeCloseTo(poseOf(without, 'b').y, 8);
    const one = [{ at: 'b', y: 0.3 }];
    const pulled = endOf(two(spring, one));
    expect(poseOf(pulled, 'd').y).toBeGreaterThan(0.1 * poseOf(pulled, 'b').y);
    expect(poseOf(endOf(two([], one)), 'd').y).toBeCloseTo(10, 12);
  });

  it('hinged ends carry no moment', () => {
    const end = endOf(
      leaf(
        {
          motions: [{ at: 'tip', y: 4 }],
          supports: [
            { at: 'root', ...HELD },
            { at: 'tip', turn: true },
          ],
        },
        { hinged: 'to' },
      ),
    );
    expect(Math.abs(reactionAt(end, 'tip').moment)).toBeLessThan(1e-8);
    expect(Math.abs(reactionAt(end, 'root').moment)).toBeGreaterThan(1);
  });

  it('a force that follows ends elsewhere than one that keeps its direction', () => {
    const { EI } = sectionOfFirst(leaf({}));
    const y = (4 * EI) / 400;
    const [dead, follower] = [false, true].map((turns) =>
      poseOf(endOf(leaf({ loads: [{ at: 'tip', y, follower: turns }] })), 'tip'),
    );
    expect(follower!.turn).toBeGreaterThan(dead!.turn + 0.3);
  });

  it('loads and motions grow together', () => {
    const [point] = followPath(leaf({ motions: [{ at: 'tip', y: 2 }], loads: [{ at: 'tip', x: 3 }] }), {
      parts: 4,
    }).points.slice(2);
    expect(point!.share).toBe(0.5);
    expect(poseOf(point!, 'tip').y).toBeCloseTo(1, 12);
    expect(reactionAt(point!, 'root').x).toBeCloseTo(-1.5, 6);
  });
});

const strut = (y: number) =>
  leaf({
    motions: [{ at: 'tip', x: -0.5, ...(y === 0 ? {} : { y }), turn: 0 }],
    supports: [{ at: 'root', ...HELD }],
  });

describe('a second path', () => {
  it('is not looked for when it is not wanted', () => {
    expect(followPath(strut(0)).second).toBeDefined();
    expect(followPath(strut(0), { second: false }).second).toBe(undefined);
  });

  it('begins where the first is left, and what is taken goes on from there', () => {
    const answer = followPath(strut(0));
    const taken = takenPath(answer);
    const { leaves } = answer.second!;
    expect(taken.points.filter(({ share }) => share < leaves)).toEqual(
      answer.points.filter(({ share }) => share < leaves),
    );
    expect(taken.points.at(-1)!.unstableWays).toBe(0);
    expect(answer.points.at(-1)!.unstableWays).toBeGreaterThan(0);
    expect(taken.points.at(-1)!.energy).toBeLessThan(answer.points.at(-1)!.energy);
  });

  it('is not there where something leans from the start', () => {
    expect(followPath(leaf({ motions: [{ at: 'tip', x: -0.5, y: 1 }] })).second).toBe(undefined);
  });
});

function isFinitePoint({
  share,
  effort,
  energy,
  reactions,
  poses,
  peak,
  residual,
}: PathAnswer['points'][number]): boolean {
  const all = [
    share,
    effort,
    energy,
    residual,
    peak.strain,
    peak.along,
    ...reactions.flatMap(({ x, y, moment }) => [x, y, moment]),
    ...Object.values(poses).flatMap(({ x, y, turn }) => [x, y, turn]),
  ];
  return all.every(Number.isFinite);
}

/** Two to four members end to end between places drawn at random, driven far at the last. */
const chain: fc.Arbitrary<BeamModel> = fc
  .record({
    places: fc.array(fc.record({ x: length(-30, 30), y: length(-30, 30) }), { minLength: 2, maxLength: 4 }),
    bends: fc.array(length(-3, 3), { minLength: 4, maxLength: 4 }),
    hinged: fc.array(fc.constantFrom(null, null, null, 'from', 'to', 'both'), { minLength: 4, maxLength: 4 }),
    thickness: length(0.05, 8),
    far: fc.record({ x: length(-60, 60), y: length(-60, 60), turn: length(-8, 8) }),
    isPushed: fc.boolean(),
    follower: fc.boolean(),
  })
  .map(({ places, bends, hinged, thickness, far, isPushed, follower }) => {
    const last = `n${places.length - 1}`;
    return network({
      nodes: places.map((place, i) => ({ id: `n${i}`, ...place })),
      members: places.slice(1).map((_, i): Member => ({
        id: `m${i}`,
        from: `n${i}`,
        to: `n${i + 1}`,
        shape: i % 2 === 0 ? { kind: 'arc', turn: bends[i]! } : { kind: 'wave', rise: bends[i]! },
        thickness,
        width: 6,
        ...(hinged[i] ? { hinged: hinged[i] } : {}),
      })),
      supports: [{ at: 'n0', ...HELD }],
      ...(isPushed
        ? { loads: [{ at: last, x: far.x, y: far.y, moment: far.turn, follower }] }
        : { motions: [{ at: last, ...far }] }),
    });
  });

describe('any network that passes its checks', () => {
  it('is answered without throwing, in finite figures and within its budget', () => {
    fc.assert(
      fc.property(fc.oneof(mutilated, chain), (model) => {
        fc.pre(checkModel(model).ok);
        const budget = 400;
        // One mesh: how it is made finer is told elsewhere, and wild paths are not worth it.
        const answer = followPath(model, { budget, parts: 5, elements: 4 });
        expect(answer.points.every(isFinitePoint)).toBe(true);
        expect(answer.iterations).toBeLessThan(budget + 150);
        for (const { share, effort, energy } of answer.events)
          expect([share, effort, energy].every(Number.isFinite)).toBe(true);
        if (answer.stopped) expect(['no-convergence', 'over-budget']).toContain(answer.stopped.code);
      }),
      { numRuns: 40 },
    );
  });
});

describe('an arch loaded past its limit', () => {
  it.each([46, 48])('by %d N, is followed round both limits and not told from where Newton’s method fell', (load) => {
    // Kept even, and thick enough not to give sideways first; about twice the load of its limit.
    const half = { shape: { kind: 'rise', heading: 0 }, thickness: 1.18, width: 6 } as const;
    const model = network({
      nodes: [
        { id: 'left', x: 0, y: 0 },
        { id: 'middle', x: 20, y: 2.24 },
        { id: 'right', x: 40, y: 0 },
      ],
      members: [
        { id: 'up', from: 'left', to: 'middle', ...half },
        { id: 'down', from: 'middle', to: 'right', ...half },
      ],
      supports: [
        { at: 'left', ...HELD },
        { at: 'right', ...HELD },
        { at: 'middle', x: true, turn: true },
      ],
      loads: [{ at: 'middle', y: -load }],
    });
    const { points, events, stopped } = followPath(model, { parts: 20 });
    expect(stopped).toBe(undefined);
    expect(events.map(({ kind }) => kind)).toEqual(['limit', 'limit']);
    expect(points.at(-1)!.share).toBe(1);
    const places = points.map(({ poses }) => poses['middle']!.y);
    expect(places.at(-1)).toBeLessThan(0);
    // Half its rise at a step would be a jump.
    for (const [i, place] of places.slice(1).entries()) expect(places[i]! - place).toBeLessThan(1.12);
  });
});

describe('a strip too thin for its length', () => {
  it('is told to be so where the path that leaves sideways is lost, soon', () => {
    const thickness = 5e-5 * 40;
    const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: 6 } as const;
    const model = network({
      modulus: 1,
      nodes: [
        { id: 'left', x: 0, y: 0 },
        { id: 'middle', x: 20, y: 8 * thickness },
        { id: 'right', x: 40, y: 0 },
      ],
      members: [
        { id: 'up', from: 'left', to: 'middle', ...half },
        { id: 'down', from: 'middle', to: 'right', ...half },
      ],
      supports: [
        { at: 'left', ...HELD },
        { at: 'right', ...HELD },
        { at: 'middle', turn: true },
      ],
      motions: [{ at: 'middle', y: -2.1 * 8 * thickness }],
    });
    const { second, iterations } = followPath(model);
    expect(second?.path.stopped?.message).toContain('make them thicker or shorter');
    // A tenth of the budget; each takes some 100 µs.
    expect(iterations).toBeLessThan(2000);
  });
});

describe('thin necks between parts that are hundreds of times thicker', () => {
  const USUAL = { lines: 1, depth: 6, sideBySide: 1 };
  /** As a joint is asked for: close together up to a fifth of the way. */
  const shares = [...Array(24).keys()].map((i) => (i + 1) / 120).concat([...Array(12).keys()].map((i) => (i + 4) / 15));

  it.each([
    [{ ...USUAL, along: 11.57, deep: 33.6, straight: 61.88, inRow: 7 }, 0.71],
    [{ ...USUAL, along: 1.979, deep: 16.78, straight: 8.898, inRow: 11 }, 0.99],
    [{ ...USUAL, along: 0.397, deep: 4.882, straight: 12.18, inRow: 16 }, 0.42],
  ])('stay on the one path that a moment has: %o', (sizes, amount) => {
    const { model } = neckNetwork.network(sizes, 0.42, { drive: 'turned', amount, widthRatio: 1 });
    const { points, events, second } = followPath({ ...model, modulus: 1, poisson: 0.38 }, { shares });
    expect(second).toBe(undefined);
    expect(events).toEqual([]);
    // One moment everywhere turns every part in proportion to it: the effort is a straight line.
    const end = points.at(-1)!.effort;
    for (const { share, effort } of points) {
      expectClose(effort, share * end, { abs: 1e-5 * end, because: 'Newton’s last step' });
    }
  });
});
