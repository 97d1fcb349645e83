import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BETWEEN, layOut } from '../../src/core/coupons/layOut.ts';
import { MARGIN } from '../../src/core/coupons/onPlate.ts';
import type { Piece, PlacedPiece } from '../../src/core/coupons/piece.ts';
import { length } from '../support/generators.ts';
import '../support/seed.ts';

/** Of a piece only its size counts here. */
const piece = fc.record({ x: length(5, 150), y: length(5, 150) }).map(({ x, y }): Piece => {
  return { id: 'comb', size: { x, y, z: 5 }, bodies: [], strips: [], corners: [], volume: 0 };
});
const asked = fc.record({ pieces: fc.array(piece, { maxLength: 9 }), x: length(60, 250), y: length(60, 250) });

const ROUND_OFF = 1e-5;
const areApart = (a: PlacedPiece, b: PlacedPiece) =>
  (['x', 'y'] as const).some(
    (side) =>
      a.at[side] + a.piece.size[side] + BETWEEN <= b.at[side] + ROUND_OFF ||
      b.at[side] + b.piece.size[side] + BETWEEN <= a.at[side] + ROUND_OFF,
  );
const sidesOf = ({ size }: Piece) => [size.x, size.y].toSorted((a, b) => a - b);

const all = (list: readonly Piece[]) => list.map((each) => sidesOf(each).join(' ')).toSorted();

describe('pieces that are laid out', () => {
  it('stand inside their plate and apart, each of them once; or one of them is larger than the plate', () => {
    fc.assert(
      fc.property(asked, ({ pieces, x, y }) => {
        const result = layOut(pieces, { x, y });
        const fits = pieces.map((each) => {
          const [short, long] = sidesOf(each) as [number, number];
          return short <= Math.min(x, y) - 2 * MARGIN && long <= Math.max(x, y) - 2 * MARGIN;
        });
        expect(result.ok).toBe(fits.every(Boolean));
        if (!result.ok) {
          expect(result.problems.length).toBe(fits.filter((each) => !each).length);
          return;
        }
        const placed = result.value.flat();
        for (const { at, piece: each } of placed) {
          expect(Math.min(at.x, at.y)).toBeGreaterThanOrEqual(MARGIN);
          expect(at.x + each.size.x).toBeLessThanOrEqual(x - MARGIN + ROUND_OFF);
          expect(at.y + each.size.y).toBeLessThanOrEqual(y - MARGIN + ROUND_OFF);
        }
        for (const plate of result.value) {
          expect(plate.length).toBeGreaterThan(0);
          for (const [i, one] of plate.entries())
            for (const other of plate.slice(i + 1)) expect(areApart(one, other)).toBe(true);
        }
        expect(all(placed.map((each) => each.piece))).toEqual(all(pieces));
      }),
    );
  });
});
