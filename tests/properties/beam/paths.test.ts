/** Laws that every path of every network keeps to, on small networks drawn at random. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PathAnswer, PathPoint } from '../../../src/core/beam/answer.ts';
import { followPath } from '../../../src/core/beam/solve.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { angle, length } from '../../support/generators.ts';
import { endOf, poseOf, reactionAt } from '../../support/solved.ts';
import { AS_IS, drawn, networkOf } from './legs.ts';

const ASKED = { accuracy: 'refined', parts: 6, second: false } as const;
/** Paths that a motion leads past where the network gives way are told by other laws. */
const isPlain = ({ stopped, points }: PathAnswer) =>
  stopped === undefined && points.length === 7 && points.every(({ unstableWays }) => unstableWays === 0);
const near = (actual: number, expected: number, size: number) =>
  expect(Math.abs(actual - expected)).toBeLessThan(1e-6 * size + 1e-12);
const RUNS = { numRuns: 8 };

/** Forces as one size and moments as another, by which differences are judged. */
const sizeOf = (point: PathPoint) =>
  point.reactions.reduce((most, { x, y, moment }) => Math.max(most, Math.hypot(x, y), Math.abs(moment) / 20), 1e-9);

describe('a whole network moved', () => {
  it('turned: efforts, energies and strains stay', () => {
    fc.assert(
      fc.property(drawn, angle(5, 350), (drawnCase, turn) => {
        const [plain, turned] = [
          followPath(networkOf(drawnCase), ASKED),
          followPath(networkOf(drawnCase, { ...AS_IS, turn }), ASKED),
        ];
        fc.pre(isPlain(plain) && isPlain(turned));
        const [a, b] = [plain.points.at(-1)!, turned.points.at(-1)!];
        near(b.effort, a.effort, Math.abs(a.effort));
        near(b.energy, a.energy, a.energy);
        near(Math.abs(b.peak.strain), Math.abs(a.peak.strain), 30 * Math.abs(a.peak.strain));
      }),
      RUNS,
    );
  });

  it('mirrored: moments change sign, and ways of giving are as many', () => {
    fc.assert(
      fc.property(drawn, (drawnCase) => {
        const plain = followPath(networkOf(drawnCase), { ...ASKED, accuracy: 'interactive' });
        const mirrored = followPath(networkOf(drawnCase, { ...AS_IS, mirror: -1 }), {
          ...ASKED,
          accuracy: 'interactive',
        });
        expect(mirrored.points.map(({ unstableWays }) => unstableWays)).toEqual(
          plain.points.map(({ unstableWays }) => unstableWays),
        );
        fc.pre(isPlain(plain));
        const [a, b] = [plain.points.at(-1)!, mirrored.points.at(-1)!];
        near(reactionAt(b, 'moving').moment, -reactionAt(a, 'moving').moment, 20 * sizeOf(a));
        near(reactionAt(b, 'moving').x, reactionAt(a, 'moving').x, sizeOf(a));
        near(reactionAt(b, 'moving').y, -reactionAt(a, 'moving').y, sizeOf(a));
      }),
      RUNS,
    );
  });

  it('scaled in all lengths by k: forces k², energies k³, strains as they were', () => {
    fc.assert(
      fc.property(drawn, length(0.2, 5), (drawnCase, scale) => {
        const [plain, scaled] = [
          followPath(networkOf(drawnCase), ASKED),
          followPath(networkOf(drawnCase, { ...AS_IS, scale }), ASKED),
        ];
        fc.pre(isPlain(plain) && isPlain(scaled));
        const [a, b] = [plain.points.at(-1)!, scaled.points.at(-1)!];
        near(reactionAt(b, 'moving').x, scale ** 2 * reactionAt(a, 'moving').x, scale ** 2 * sizeOf(a));
        near(b.energy, scale ** 3 * a.energy, scale ** 3 * a.energy);
        near(Math.abs(b.peak.strain), Math.abs(a.peak.strain), 30 * Math.abs(a.peak.strain));
      }),
      RUNS,
    );
  });
});

describe('forces and energy', () => {
  it('balance: what holds the network adds up to nothing, in force and in moment', () => {
    fc.assert(
      fc.property(drawn, (drawnCase) => {
        const { points } = followPath(networkOf(drawnCase), { ...ASKED, accuracy: 'interactive' });
        for (const point of points.slice(1)) {
          const parts = point.reactions.map((reaction) => ({ ...reaction, place: poseOf(point, reaction.at) }));
          const sum = (of: (part: (typeof parts)[number]) => number) =>
            parts.reduce((total, part) => total + of(part), 0);
          near(
            sum(({ x }) => x),
            0,
            sizeOf(point),
          );
          near(
            sum(({ y }) => y),
            0,
            sizeOf(point),
          );
          near(
            sum(({ x, y, moment, place }) => moment + place.x * y - place.y * x),
            0,
            20 * sizeOf(point),
          );
        }
      }),
      RUNS,
    );
  });

  it('what is put in by the way is what is stored, by Simpson’s rule', () => {
    fc.assert(
      fc.property(drawn, (drawnCase) => {
        const answer = followPath(networkOf(drawnCase), { ...ASKED, parts: 40 });
        const { points } = answer;
        fc.pre(answer.stopped === undefined && points.length === 41);
        const work = points.reduce((sum, { effort }, i) => {
          const weight = i === 0 || i === 40 ? 1 : i % 2 === 1 ? 4 : 2;
          return sum + (weight * effort) / 120;
        }, 0);
        expect(Math.abs(work - points.at(-1)!.energy)).toBeLessThan(1e-3 * points.at(-1)!.energy);
      }),
      RUNS,
    );
  });

  it('a state does not depend on how far the path was meant to go', () => {
    fc.assert(
      fc.property(drawn, length(0.2, 0.8), (drawnCase, share) => {
        const shares = [0.25, 0.5, 0.75, 1].map((part) => part * share);
        const far = followPath(networkOf(drawnCase), { ...ASKED, shares });
        const less = { ...drawnCase, y: share * drawnCase.y, turn: share * drawnCase.turn };
        const short = followPath(networkOf(less), ASKED);
        fc.pre(isPlain(short) && far.stopped === undefined);
        const [a, b] = [far.points.at(-1)!, short.points.at(-1)!];
        expect(a.share).toBe(share);
        near(a.effort * share, b.effort, Math.abs(b.effort));
        near(a.energy, b.energy, b.energy);
      }),
      RUNS,
    );
  });

  it('finer meshes differ from coarse ones by no more than about the estimate', () => {
    fc.assert(
      fc.property(drawn, (drawnCase) => {
        const model = networkOf(drawnCase);
        const [coarse, fine] = [4, 16].map((elements) => followPath(model, { ...ASKED, elements }));
        fc.pre(isPlain(coarse!) && isPlain(fine!));
        const [a, b] = [coarse!.points.at(-1)!, fine!.points.at(-1)!];
        const largest = Math.max(...fine!.points.map(({ effort }) => Math.abs(effort)));
        expect(Math.abs(a.effort - b.effort) / largest).toBeLessThanOrEqual(2 * coarse!.error.effort + 1e-9);
      }),
      RUNS,
    );
  });

  it('where loads drive, finer meshes differ in places and turns by no more than about the estimate', () => {
    fc.assert(
      fc.property(drawn, (drawnCase) => {
        const moved = networkOf(drawnCase);
        const { x, y, moment } = reactionAt(followPath(moved, { ...ASKED, parts: 20 }).points.at(-1)!, 'moving');
        const model = { ...moved, motions: [], loads: [{ at: 'moving', x, y, moment }] };
        const [coarse, fine] = [4, 16].map((elements) => followPath(model, { ...ASKED, elements, shapes: true }));
        fc.pre(isPlain(coarse!) && isPlain(fine!));
        const [home, a, b] = [fine!.points[0]!, coarse!.points.at(-1)!, fine!.points.at(-1)!];
        const longest = Math.max(...fine!.shapes.at(-1)!.map(({ along }) => along.at(-1)!));
        // As the estimate weighs them: turns count by the longest member.
        const apart = (p: PathPoint, q: PathPoint) => {
          const [one, other] = [poseOf(p, 'moving'), poseOf(q, 'moving')];
          return Math.max(Math.hypot(one.x - other.x, one.y - other.y), Math.abs(one.turn - other.turn) * longest);
        };
        expect(apart(a, b) / apart(b, home)).toBeLessThanOrEqual(2 * coarse!.error.position + 1e-9);
      }),
      RUNS,
    );
  });
});

describe('a half tied to be like the other', () => {
  it('is the whole arch when it is pressed in its middle', () => {
    fc.assert(
      fc.property(length(1, 4), length(0.5, 1.2), length(0.1, 1), (rise, thickness, push) => {
        const half = { shape: { kind: 'rise', heading: 0 }, thickness, width: 6 } as const;
        const left = { id: 'left', x: 0, y: 0 };
        const middle = { id: 'middle', x: 20, y: rise };
        const motions = [{ at: 'middle', y: -push }];
        const halved = network({
          nodes: [left, middle],
          members: [{ id: 'up', from: 'left', to: 'middle', ...half }],
          supports: [
            { at: 'left', ...HELD },
            { at: 'middle', x: true, turn: true },
          ],
          motions,
        });
        const whole = network({
          nodes: [left, middle, { id: 'twin', x: 20, y: rise }, { id: 'right', x: 40, y: 0 }],
          members: [
            { id: 'up', from: 'left', to: 'middle', ...half },
            { id: 'down', from: 'twin', to: 'right', ...half },
          ],
          supports: [
            { at: 'left', ...HELD },
            { at: 'right', ...HELD },
          ],
          // The two middles move as mirror images of each other.
          ties: [{ at: 'twin', like: 'middle', x: -1, y: 1, turn: -1 }],
          motions: motions.map((motion) => ({ ...motion, x: 0, turn: 0 })),
        });
        const [a, b] = [endOf(halved, ASKED), endOf(whole, ASKED)];
        near(b.effort, 2 * a.effort, Math.abs(a.effort));
        near(b.energy, 2 * a.energy, a.energy);
      }),
      RUNS,
    );
  });
});
