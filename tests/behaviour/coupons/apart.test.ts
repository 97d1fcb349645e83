/** What lets pieces be printed and told apart: feet, room between bodies, marks that a nozzle can lay. */
import { describe, expect, it } from 'vitest';
import { makingOf } from '../../../src/core/coupons/making.ts';
import { kindBars, numberCuts } from '../../../src/core/coupons/marks.ts';
import { PIECE_IDS, type Piece } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { common, offset } from '../../../src/core/geometry/clipping.ts';
import { loopArea, type Loop } from '../../../src/core/geometry/loop.ts';
import { boxOf } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { cutByPlane } from '../../../src/core/geometry/mesh/planeSection.ts';
import { planeAt } from '../../../src/core/inspect/thin/sectionAt.ts';
import { ASKED, ASKED_WAYS, CASES, made } from '../../support/coupons.ts';

const areaOf = (loops: readonly Loop[]) => loops.reduce((sum, loop) => sum + loopArea(loop), 0);
const outlineOf = (body: Piece['bodies'][number]) =>
  body.flatMap(({ region }) => region.filter((loop) => loopArea(loop) > 0));

describe('bodies', () => {
  it.each(CASES)('of %s lying %s stand on 40 mm² at least and 8 mm apart: %s', (id, _lying, _name, asked) => {
    const { bodies } = made(id, asked);
    // Grown by half of the distance, less what rounding takes, two outlines that far apart do not meet.
    const grown = bodies.map((body) => offset(outlineOf(body), 4 - 0.01, 0.005));
    for (const [i, body] of bodies.entries()) {
      expect(areaOf(body[0]!.region)).toBeGreaterThanOrEqual(40);
      for (const other of grown.slice(i + 1)) expect(common(grown[i]!, other)).toEqual([]);
    }
  });
});

describe('marks', () => {
  it('are cut and raised by 0.8 mm at least, as wide and as far apart', () => {
    for (const [, asked] of ASKED_WAYS) {
      const making = makingOf(asked);
      const { lineWidth } = asked.profile;
      for (const number of [1, 2, 3, 4, 5, 6, 7, 8]) {
        const cuts = numberCuts(number, { x: 0, y: 0 }, { x: 0, y: 1 }, making);
        const long = cuts.filter(({ loop }) => Math.max(...loop.map(({ y }) => y)) > 2);
        expect(5 * long.length + (cuts.length - long.length)).toBe(number);
        const spans = cuts
          .map(({ loop }) => loop.map(({ x }) => x))
          .map((xs) => [Math.min(...xs), Math.max(...xs)] as const);
        const sorted = spans.toSorted((a, b) => a[0] - b[0]);
        for (const [i, [left, right]] of sorted.entries()) {
          expect(right - left).toBeGreaterThanOrEqual(0.8);
          // Two lines stand between neighbours.
          if (i > 0) expect(left - sorted[i - 1]![1]).toBeGreaterThanOrEqual(Math.max(0.8, 2 * lineWidth));
        }
      }
      for (const [i, id] of PIECE_IDS.entries()) {
        const bars = kindBars(id, { x: 0, y: 0 }, 5, making);
        expect(bars.length).toBe(i + 1);
        for (const { from, to } of bars) expect(to - from).toBeGreaterThanOrEqual(0.8 - 1e-9);
      }
    }
  });

  it('of the comb are there in the solid: a cut through the side of each grip falls into one piece more than notches', () => {
    const piece = made('comb', ASKED);
    const solid = solidOf(piece.bodies[0]!);
    for (const { number, from } of piece.strips) {
      const loopsAt = (inward: number) => {
        const plane = planeAt({ x: from.x + 4 - inward, y: 0, z: 0 }, { x: 1, y: 0, z: 0 });
        return cutByPlane(solid, plane).loops.length;
      };
      // The spine is one of the pieces.
      expect(loopsAt(0.6)).toBe(Math.floor(number / 5) + (number % 5) + 2);
      expect(loopsAt(2)).toBe(Math.floor(number / 5) + 2);
    }
  });

  it('of the kind stand up from every piece but the bar, which is clamped', () => {
    for (const [i, id] of PIECE_IDS.entries()) {
      const { bodies, size } = made(id);
      const solid = bodies.map(solidOf).toSorted((a, b) => boxOf(b).max.z - boxOf(a).max.z)[0]!;
      const { loops } = cutByPlane(solid, planeAt({ x: 0, y: 0, z: size.z - 0.1 }, { x: 0, y: 0, z: 1 }));
      const bars = loops.filter((loop) => Math.abs(loopArea(loop) - 4) < 0.1);
      expect(bars.length).toBe(id === 'bar' ? 0 : i + 1);
    }
  });
});
