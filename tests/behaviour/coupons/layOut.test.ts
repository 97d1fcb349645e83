import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/core/coupons/layOut.ts';
import { PIECE_IDS, type Piece } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { turnPiece } from '../../../src/core/coupons/turnPiece.ts';
import { boxOf, meshFigures } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { expectClose } from '../../support/close.ts';
import { ASKED, lyingAs, made } from '../../support/coupons.ts';

const ALL = PIECE_IDS.map((id) => made(id));

function plates(pieces: readonly Piece[], x: number, y = x) {
  const result = layOut(pieces, { x, y });
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

describe('laying out', () => {
  it('puts all six pieces on a plate of 220 mm, and on two of 180 mm at most', () => {
    for (const lying of LYINGS) {
      const pieces = PIECE_IDS.map((id) => made(id, lyingAs(lying)));
      expect(plates(pieces, 220).length).toBe(1);
      expect(plates(pieces, 180).length).toBeLessThanOrEqual(2);
    }
  });

  it('draws the usual six together, as wide as the column that shows them life size, wherever the plate leaves them room', () => {
    const [laid] = plates(ALL, 220);
    const far = (side: 'x' | 'y') => Math.max(...laid!.map(({ at, piece }) => at[side] + piece.size[side]));
    expect(Math.max(far('x'), far('y'))).toBeLessThanOrEqual(203);
    expect(plates(ALL, 400)).toEqual(plates(ALL, 300));
  });

  it('puts one on each plate where no two fit, turned where only that fits', () => {
    const bar = made('bar');
    const [one] = plates([bar], 40, 120);
    expect(one![0]!.piece.size).toEqual({ x: bar.size.y, y: bar.size.x, z: bar.size.z });
    expect(plates([bar, made('bar', { ...ASKED, depth: 7 })], 40, 120).length).toBe(2);
  });

  it('gives no plate for nothing', () => {
    expect(plates([], 200)).toEqual([]);
  });

  it('names each piece that is larger than the plate, its size and what would help', () => {
    const result = layOut(ALL, { x: 90, y: 90 });
    if (result.ok) throw new Error('laid out');
    const said = result.problems.map(({ message }) => message);
    expect(
      said.some((message) =>
        /“radii” is \d+(\.\d+)? × \d+(\.\d+)? mm .* plate of 90 × 90 mm .*choose a larger plate/.test(message),
      ),
    ).toBe(true);
    for (const { code, field, unit } of result.problems)
      expect([code, field, unit]).toEqual(['above-maximum', 'plate', 'mm']);
  });

  it('refuses plates of no size', () => {
    for (const [x, y, field] of [
      [Number.NaN, 200, 'plate.x'],
      [200, 5, 'plate.y'],
      [9000, 200, 'plate.x'],
    ] as const) {
      // prettier-ignore
      const result = layOut(ALL, { x, y });
      expect(result.ok ? undefined : result.problems[0].field).toBe(field);
    }
  });
});

describe('a piece turned a quarter', () => {
  it.each(PIECE_IDS)('%s is the same solid, its strips and corners turned with it', (id) => {
    const piece = made(id);
    const turned = turnPiece(piece);
    const [before, after] = [piece, turned].map(({ bodies }) =>
      bodies.map((body) => meshFigures(solidOf(body)).volume),
    );
    for (const [i, volume] of after!.entries())
      expectClose(volume, before![i]!, { rel: 1e-6, because: 'the grid may lead edges another way' });
    const { min, max } = boxOf(solidOf(turned.bodies[0]!));
    expect(min.x).toBeGreaterThanOrEqual(0);
    expect(min.y).toBeGreaterThanOrEqual(0);
    expect(max.x).toBeLessThanOrEqual(piece.size.y + 1e-9);
    expect(
      turnPiece(turnPiece(turnPiece(turned))).strips.map(({ from }) => [from.x.toFixed(6), from.y.toFixed(6)]),
    ).toEqual(piece.strips.map(({ from }) => [from.x.toFixed(6), from.y.toFixed(6)]));
  });
});
