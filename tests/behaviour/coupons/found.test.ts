/** Our own search for thin sections in part files, which knows nothing of how pieces are made, finds their strips in the written file. */
import { describe, expect, it } from 'vitest';
import type { PieceId, PiecesAsked, Strip } from '../../../src/core/coupons/piece.ts';
import type { Flexure } from '../../../src/core/inspect/flexure.ts';
import { checkPart, mendPart } from '../../../src/core/inspect/checkPart.ts';
import { pieceFile } from '../../../src/files/mesh/pieceFiles.ts';
import { expectClose } from '../../support/close.ts';
import { ASKED, lyingAs, made } from '../../support/coupons.ts';
import { readPart } from '../../support/readPart.ts';

function found(
  id: PieceId,
  asked: PiecesAsked,
): { readonly strips: readonly Strip[]; readonly flexures: readonly Flexure[] } {
  const piece = made(id, asked);
  const part = mendPart(readPart(pieceFile(piece, '3mf')));
  const { flexures } = checkPart(part, 3.5).findings;
  return { strips: piece.strips, flexures };
}

/** Where a strip is half-way along it, from above. */
const middleOf = ({ from, to }: Strip) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });

const CASES: readonly (readonly [PieceId, PiecesAsked])[] = [
  ['comb', ASKED],
  ['comb', lyingAs('crease', { ...ASKED, count: 4 })],
  ['comb', lyingAs('upright')],
  ['ladder', ASKED],
  ['radii', ASKED],
  ['radii', lyingAs('crease', { ...ASKED, count: 3 })],
  ['radii', lyingAs('upright')],
  ['bar', ASKED],
  ['hold', ASKED],
  ['creases', ASKED],
];

describe.each(CASES)('the strips of %s', (id, asked) => {
  it(`lying ${asked.profile.lying} are found, all of them and nothing else, as thick, as long and as deep`, () => {
    const { strips, flexures } = found(id, asked);
    expect(flexures.length).toBe(strips.length);
    for (const strip of strips) {
      const { x, y } = middleOf(strip);
      const nearest = flexures.toSorted(
        (a, b) => Math.hypot(a.centre.x - x, a.centre.y - y) - Math.hypot(b.centre.x - x, b.centre.y - y),
      )[0]!;
      expect(nearest.kind === 'crease').toBe(strip.countOf === 'layers');
      expectClose(nearest.thickness.least, strip.thickness, {
        rel: 2e-3,
        because: 'the grid of 1 µm moves each wall by half of one',
      });
      expectClose(nearest.length, strip.length, { rel: 0.1, because: 'what is asked of the finder' });
      expectClose(nearest.depth, strip.depth, { rel: 0.02, because: 'what is asked of the finder' });
    }
  });
});

describe('tongues of the ladder that lies as a crease', () => {
  it('end freely, so that they are no flexures', () => {
    const { flexures } = found('ladder', lyingAs('crease'));
    expect(flexures).toEqual([]);
  });
});
