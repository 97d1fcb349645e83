/** Pieces made smaller for the plate that they are printed on. */
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/core/coupons/layOut.ts';
import { fitsOn } from '../../../src/core/coupons/onPlate.ts';
import { PIECE_IDS, type Piece, type PieceId, type PiecesAsked } from '../../../src/core/coupons/piece.ts';
import { solidOf } from '../../../src/core/coupons/solidOf.ts';
import { common, offset } from '../../../src/core/geometry/clipping.ts';
import { loopArea } from '../../../src/core/geometry/loop.ts';
import { mendMesh } from '../../../src/core/geometry/mesh/mend.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { ASKED, lyingAs, made, notesOf, refusedPiece } from '../../support/coupons.ts';

const on = (side: number, asked: PiecesAsked = ASKED): PiecesAsked => ({ ...asked, plate: { x: side, y: side } });

/** Fewer of these tell too little to be worth printing. */
const FEWEST: Readonly<Record<PieceId, number>> = { ladder: 3, comb: 3, radii: 2, bar: 1, hold: 1, creases: 3 };

const outlineOf = (body: Piece['bodies'][number]) =>
  body.flatMap(({ region }) => region.filter((loop) => loopArea(loop) > 0));

describe.each(LYINGS)('pieces that lie %s', (lying) => {
  it.each([100, 120, 150, 180, 220])('all fit a plate of %i mm, sound, with strips enough', (side) => {
    for (const id of PIECE_IDS) {
      const piece = made(id, on(side, lyingAs(lying)));
      expect([id, fitsOn(piece.size, { x: side, y: side })]).toEqual([id, true]);
      expect(piece.strips.length).toBeGreaterThanOrEqual(FEWEST[id]);
      for (const body of piece.bodies) expect(mendMesh(solidOf(body)).damage).toEqual([]);
      // Grown by half of the 8 mm between bodies, less what rounding takes, two that far apart do not meet.
      const grown = piece.bodies.map((body) => offset(outlineOf(body), 4 - 0.01, 0.005));
      for (const [i, one] of grown.entries())
        for (const other of grown.slice(i + 1)) expect(common(one, other)).toEqual([]);
    }
  });

  it('are laid on plates of 100 mm', () => {
    const pieces = PIECE_IDS.map((id) => made(id, on(100, lyingAs(lying))));
    expect(layOut(pieces, { x: 100, y: 100 }).ok).toBe(true);
  });
});

describe('a piece', () => {
  it('is of full size wherever that fits, turned or not', () => {
    for (const id of PIECE_IDS) expect(made(id, on(220))).toEqual(made(id));
    const { size } = made('bar');
    const narrow = { ...ASKED, plate: { x: 40, y: size.x + 12 } };
    expect(made('bar', narrow)).toEqual(made('bar'));
  });

  it('says by how much it would be larger', () => {
    const { size } = made('creases');
    const notes = notesOf('creases', on(100)).map(({ message }) => message);
    expect(notes.some((said) => said.includes(`${size.x} × ${size.y} mm, more than the plate of 100 × 100 mm`))).toBe(
      true,
    );
  });

  it('keeps its kinds of strain in fewer strips: the comb its shortest, the ladder its thinnest', () => {
    const [full, less] = [made('comb'), made('comb', on(90))];
    expect(less.strips.length).toBeLessThan(full.strips.length);
    expect(less.strips[0]!.length).toBe(full.strips[0]!.length);
    expect(made('ladder', on(90)).strips.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });

  it('is not made for a plate of no size', () => {
    expect(refusedPiece('bar', { ...ASKED, plate: { x: 20, y: Number.NaN } }).map(({ field }) => field)).toEqual([
      'plate.x',
      'plate.y',
    ]);
  });
});
